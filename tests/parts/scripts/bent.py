"""Compares bent backs with shells worked out anew: volume, middle, the surface outside, and the length of both ends.

    python bent.py FOLDER > ../bent.json

FOLDER is where `cargo test --test parts` wrote them. Needs numpy, scipy, shapely, trimesh, manifold3d. From the planes of the
flat harp, the rise and the thickness alone: the back slopes up over side and liner and is an arc between, tangent to the
slope, whose rise is the same share of its chord everywhere. The arc has COUNT steps, and the outside stands off along the
surface's own square.
"""

import json
import sys
import zlib
from pathlib import Path

import manifold3d
import numpy as np
import scipy
import shapely
import trimesh
from scipy.optimize import brentq
from shapely.geometry import Polygon
from shapely.ops import unary_union

COUNT = 2000
MM = 1000.0
Z = np.array([0.0, 0.0, 1.0])


def meet(*planes):
    return np.linalg.solve([p[:3] for p in planes], [p[3] for p in planes])


report = {"libraries": {"scipy": scipy.__version__, "shapely": shapely.__version__, "trimesh": trimesh.__version__}}
for path in sorted(Path(sys.argv[1]).glob("*.json")):
    text = path.read_text()
    given = json.loads(text)
    flat, low, high, side, rests = (np.array(given[k]) for k in ("inside", "low", "high", "side", "rests"))
    thick = given["thick"]
    out = flat[:3]
    origin = meet(flat, low, np.array([0, 0, 1, 0]))
    up = np.cross(Z, out)
    up = up if up[1] > 0 else -up
    own = lambda at: np.array([(at - origin) @ up, at[2], (at - origin) @ out])
    one, two = own(meet(flat, low, side)), own(meet(flat, high, side))
    falls = (one[1] - two[1]) / (two[0] - one[0])
    place = lambda u, v, w: origin + u * up + v * Z + w * out

    def arcs(angle):
        """Half chord at the lower end, and how high the ends of the arcs lie."""
        square = out + np.tan(angle) * (falls * up + Z)
        slope = np.append(square, square @ place(*one))
        u, v, w = own(meet(slope, rests, low))
        return v + falls * u, w

    def rise(angle):
        half, w = arcs(angle)
        return w + half * np.tan(angle / 2)

    angle = brentq(lambda a: rise(a) - given["rise"], 1e-6, 1.2, xtol=1e-14)
    half, level = arcs(angle)
    chord = lambda u: half - falls * u

    def inside(u, a):
        r = chord(u) / np.sin(angle)
        return place(u, r * np.sin(a), level + r * (np.cos(a) - np.cos(angle)))

    def square(a):
        along = inside(1e-3, a) - inside(0.0, a)
        over = place(0, np.cos(a), -np.sin(a)) - origin
        n = np.cross(along, over)
        n = n / np.linalg.norm(n)
        return n if n @ out > 0 else -n

    steps = np.linspace(-angle, angle, COUNT + 1)
    # Lines along the back: two places of the inside, and the square there. Beyond the arcs the slope goes on past the side.
    lines = [(inside(0.0, a), inside(1.0, a) if chord(1.0) > 0 else inside(0.3, a), square(a)) for a in steps]
    for end, at in ((0, -angle), (-1, angle)):
        p, q, n = lines[end]
        over = np.cross(n, q - p)
        over = over / np.linalg.norm(over) * np.sign(at * over[2])
        lines.insert(0 if end == 0 else len(lines), (p + 0.1 * over, q + 0.1 * over, n))
    cut = lambda p, q, plane: p + (plane[3] - plane[:3] @ p) / (plane[:3] @ (q - p)) * (q - p)
    far = lambda plane, by: plane + np.array([0, 0, 0, by])
    grid = []
    for deep in (0.0, thick):
        for plane in (far(low, 0.1), far(high, 0.02)):
            grid.append(np.array([cut(p + deep * n, q + deep * n, plane) for p, q, n in lines]))
    m = len(lines)
    points = MM * np.vstack(grid)  # inside low, inside high, outside low, outside high
    faces = []
    for i in range(m - 1):
        a, b, c, d = i, i + m, i + 2 * m, i + 3 * m
        for w, x, y, z in ((a, b, b + 1, a + 1), (c, c + 1, d + 1, d), (a, a + 1, c + 1, c), (b, d, d + 1, b + 1)):
            faces += [[w, x, y], [w, y, z]]
    for i in (0, m - 1):
        w, x, y, z = i, i + m, i + 3 * m, i + 2 * m
        faces += [[w, x, y], [w, y, z]] if i else [[w, y, x], [w, z, y]]
    shell = trimesh.Trimesh(points, faces, process=True)
    shell.fix_normals()
    assert shell.is_volume, path.stem
    mirror = side * np.array([1, 1, -1, 1])
    solid = manifold3d.Manifold(manifold3d.Mesh64(shell.vertices, shell.faces.astype(np.uint64)))
    for plane in (low, high, side, mirror):
        # All planes point outward.
        solid = solid.trim_by_plane(-plane[:3], -MM * plane[3])
    cut_off = solid.to_mesh64()
    shell = trimesh.Trimesh(cut_off.vert_properties[:, :3], cut_off.tri_verts, process=False)
    assert shell.is_volume, path.stem
    # The outside from end to end, its two edges on the sides.
    ends = []
    for plane in (low, high):
        ends.append(np.array([cut(p + thick * n, q + thick * n, plane) for p, q, n in lines]))
        for i, j, wall in ((0, 1, mirror), (-1, -2, side)):
            ends[-1][i] = cut(ends[-1][i], ends[-1][j], wall)
    tri = lambda a, b, c: 0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1).sum()
    area = tri(ends[0][:-1], ends[1][:-1], ends[1][1:]) + tri(ends[0][:-1], ends[1][1:], ends[0][1:])
    along = lambda places: np.linalg.norm(np.diff(places, axis=0), axis=1).sum()
    strips = np.array(given["strips"])
    sheet = unary_union([Polygon(s).buffer(1e-9, join_style="mitre") for s in strips])
    assert sheet.geom_type == "Polygon", path.stem
    off = lambda one, other: float(f"{abs(one / other - 1):.3e}")
    report[path.stem] = {
        "sum": f"{zlib.crc32(text.encode()):08x}",
        "volume_off": off(given["volume"], shell.volume / MM**3),
        "middle_off_m": float(f"{np.abs(np.array(given['middle']) - shell.center_mass / MM).max():.3e}"),
        "area_off": off(sheet.area, area),
        "low_end_off": off(np.linalg.norm(strips[:, 0] - strips[:, 3], axis=1).sum(), along(ends[0])),
        "high_end_off": off(np.linalg.norm(strips[:, 1] - strips[:, 2], axis=1).sum(), along(ends[1])),
        "radius_m": half / np.sin(angle),
    }
print(json.dumps(report, indent=1, sort_keys=True))
