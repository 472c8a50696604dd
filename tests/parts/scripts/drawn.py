"""Reads the templates of the parts with ezdxf and notes what was found.

    python drawn.py FOLDER > ../drawn.json

FOLDER is where `cargo test --test parts` wrote them. Needs ezdxf, shapely. Outlines must be closed, cross nowhere, and hold
the area that the schedule says; every circle must be where it says, to 0.01 mm, and so must the ends of every bore of a guide. Every fault is told and counted.
"""

import json
import sys
import zlib
from pathlib import Path

import ezdxf
from ezdxf import recover
from shapely.geometry import Point, Polygon

NEAR = 0.01
folder = Path(sys.argv[1])
faults, read, circles, outlines, lines, files = 0, 0, 0, 0, 0, {}


def fault(words):
    global faults
    faults += 1
    print(words, file=sys.stderr)


for path in sorted(folder.glob("*.dxf")):
    name = path.stem
    files[name] = f"{zlib.crc32(path.read_bytes()):08x}"
    read += 1
    strict = ezdxf.readfile(path)
    _, auditor = recover.readfile(path)
    for found in [strict.audit(), auditor]:
        for error in found.errors + found.fixes:
            fault(f"{name}: {error.message}")
    if strict.header["$INSUNITS"] != 4:
        fault(f"{name}: the unit is not the millimetre")
    space = strict.modelspace()
    areas, round_, bores = {}, {}, {}
    first = None
    many = name.endswith(("-overview", "-guides_board", "-guides_neck"))
    for line in path.with_suffix(".txt").read_text().splitlines():
        layer, *numbers = line.split()
        numbers = [float(n) for n in numbers]
        {1: areas, 3: round_, 4: bores}[len(numbers)].setdefault(layer.upper(), []).append(numbers)
    for layer, wanted in areas.items():
        found = [e for e in space.query("POLYLINE") if e.dxf.layer == layer]
        if len(found) < len(wanted) or (many and len(found) != len(wanted)):
            fault(f"{name}: {len(found)} lines in {layer}, {len(wanted)} wanted")
        for (area,), entity in zip(wanted, found):
            outlines += 1
            if not entity.is_closed:
                fault(f"{name}: a line in {layer} is open")
            shape = Polygon([(p.x, p.y) for p in entity.points()])
            if not shape.is_valid:
                fault(f"{name}: a line in {layer} crosses itself")
            # A curve of lines that are 0.005 mm off at most.
            room = 0.005 * shape.length + 1e-6
            if abs(shape.area - area) > room:
                fault(f"{name}: {layer} holds {shape.area}, not {area}")
            if layer == "OUTLINE" and first is None and not many:
                first = shape
    for layer, wanted in round_.items():
        found = [e for e in space.query("CIRCLE") if e.dxf.layer == layer]
        if len(found) != len(wanted):
            fault(f"{name}: {len(found)} circles in {layer}, {len(wanted)} wanted")
        for (x, y, r), entity in zip(wanted, found):
            circles += 1
            off = max(abs(entity.dxf.center.x - x), abs(entity.dxf.center.y - y), abs(entity.dxf.radius - r))
            if off > NEAR:
                fault(f"{name}: a circle in {layer} is off by {off}")
            if first is not None and not first.buffer(0.01).contains(Point(x, y)):
                fault(f"{name}: a circle in {layer} lies outside the part")
    for layer, wanted in bores.items():
        found = [e for e in space.query("LINE") if e.dxf.layer == layer]
        if len(found) != len(wanted):
            fault(f"{name}: {len(found)} bores in {layer}, {len(wanted)} wanted")
        for (x0, y0, x1, y1), entity in zip(wanted, found):
            lines += 1
            a, b = entity.dxf.start, entity.dxf.end
            off = max(abs(a.x - x0), abs(a.y - y0), abs(b.x - x1), abs(b.y - y1))
            if off > NEAR:
                fault(f"{name}: a bore in {layer} is off by {off}")
report = {
    "libraries": {"ezdxf": ezdxf.__version__},
    "read": read,
    "outlines": outlines,
    "circles": circles,
    "bores": lines,
    "faults": faults,
    "files": files,
}
print(json.dumps(report, indent=1, sort_keys=True))
