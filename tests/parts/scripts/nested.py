"""Looks with shapely whether pieces on boards overlap, lie off their board, or nearer to each other than the kerf.

    python nested.py FOLDER > ../nested.json

FOLDER is where `cargo test --test parts` wrote the cutting lists. Needs shapely. Every fault is told and counted; for each
harp the share of the boards that is left over is worked out again from the pieces, and the least number of boards that
their area needs.
"""

import csv
import io
import json
import math
import sys
import zlib
from collections import defaultdict
from pathlib import Path

import shapely
from shapely.geometry import box
from shapely.strtree import STRtree

NEAR = 0.11  # the list has tenths of a millimetre
folder = Path(sys.argv[1])
report = {"libraries": {"shapely": shapely.__version__}, "faults": 0, "files": {}, "pieces": 0}


def fault(text):
    report["faults"] += 1
    print(text, file=sys.stderr)


for path in sorted(folder.glob("*.csv")):
    text = path.read_text()
    kerf, text = text.split("\n", 1)
    kerf = float(kerf)
    tables = [list(csv.DictReader(io.StringIO(t))) for t in text.split("\n\n")]
    boards, pieces = tables[1], tables[2]
    sizes = {(b["wood"], b["thickness_mm"]): b for b in boards}
    on = defaultdict(list)
    for p in pieces:
        x, y, w, h = (float(p[k]) for k in ("from_end_mm", "from_edge_mm", "length_mm", "width_mm"))
        on[p["wood"], p["thickness_mm"], p["board"]].append((p["part"], box(x, y, x + w, y + h)))
        report["pieces"] += 1
    for (wood, thick, number), all_ in on.items():
        size = sizes[wood, thick]
        whole = box(0, 0, float(size["board_length_mm"]), float(size["board_width_mm"]))
        for name, piece in all_:
            if not whole.buffer(NEAR).contains(piece):
                fault(f"{path.stem}: {name} lies off board {number} of {wood} {thick}")
        tree = STRtree([piece for _, piece in all_])
        for i, (name, piece) in enumerate(all_):
            for j in tree.query(piece.buffer(kerf)):
                if j > i and piece.distance(all_[j][1]) < kerf - 2 * NEAR:
                    fault(f"{path.stem}: {name} and {all_[j][0]} lie within the kerf on {wood} {thick}")
    left = {}
    for key, size in sizes.items():
        area = float(size["board_length_mm"]) * float(size["board_width_mm"])
        own = [piece for (w, t, _), all_ in on.items() for _, piece in all_ if (w, t) == key]
        used = sum(piece.area for piece in own)
        count = int(size["boards"])
        least = math.ceil(used / area - 1e-6)
        if count < least or int(size["at_least"]) < least:
            fault(f"{path.stem}: {key} on {count} boards, at least {size['at_least']}, by area {least}")
        left["{} {}".format(*key)] = round(100 * (1 - used / (area * count)), 1)
        if abs(left["{} {}".format(*key)] - float(size["waste_percent"])) > 0.11:
            fault(f"{path.stem}: {key} leaves {left} and not {size['waste_percent']}")
    report["files"][path.stem] = {"sum": f"{zlib.crc32((str(kerf) + chr(10) + text).encode()):08x}", "left_percent": left}
print(json.dumps(report, indent=1, sort_keys=True))
