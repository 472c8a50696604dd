"""Compares unrolled backs with the surfaces they become: the length of both ends, and the area.

    python bent.py FOLDER > ../bent.json

FOLDER is where `cargo test --test parts` wrote them. Needs numpy, scipy, shapely. The surface is worked out in space from
the half chords, the length and the rise alone: cross-sections are arcs over the chord, whose rise keeps its share of it.
"""

import json
import sys
import zlib
from pathlib import Path

import numpy as np
import scipy
import shapely
from scipy.integrate import dblquad, quad
from shapely.geometry import Polygon

report = {"libraries": {"scipy": scipy.__version__, "shapely": shapely.__version__}}
for path in sorted(Path(sys.argv[1]).glob("*.json")):
    text = path.read_text()
    given = json.loads(text)
    low, high, long, rise = (given[k] for k in ("low", "high", "long", "rise"))
    share = rise / low

    def height(t, s):
        """Over the chord, t from -1 to 1 across, at s along."""
        half = low + (high - low) * s / long
        h = share * half
        r = (half**2 + h**2) / (2 * h)
        return np.sqrt(r**2 - (t * half) ** 2) - (r - h)

    def place(t, s):
        half = low + (high - low) * s / long
        return np.array([s, t * half, height(t, s)])

    def slope(f, x, d=1e-6):
        return (f(x + d) - f(x - d)) / (2 * d)

    # t = sin(u) / sin(U) keeps clear of the steep ends of an arc.
    reach = 2 * np.arctan(share)
    at = lambda u, s: place(np.sin(u) / np.sin(reach), s)
    area, _ = dblquad(
        lambda u, s: np.linalg.norm(np.cross(slope(lambda x: at(x, s), u), slope(lambda x: at(u, x), s))),
        0, long, -reach, reach, epsabs=1e-8,
    )
    ends = [quad(lambda u: np.linalg.norm(slope(lambda x: at(x, s), u)), -reach, reach)[0] for s in (0, long)]
    sheet = np.array(given["outline"])
    count = len(sheet) // 2
    along = lambda piece: np.hypot(*np.diff(piece, axis=0).T).sum()
    off = lambda one, other: float(f"{abs(one / other - 1):.3e}")
    report[path.stem] = {
        "sum": f"{zlib.crc32(text.encode()):08x}",
        "area_off": off(Polygon(sheet).area, area),
        "low_end_off": off(along(sheet[:count]), ends[0]),
        "high_end_off": off(along(sheet[count:]), ends[1]),
    }
print(json.dumps(report, indent=1, sort_keys=True))
