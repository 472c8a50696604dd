"""Cuts the parts of the samples as solids and notes volume, middle, and what lies in each other.

    python solids.py FOLDER > ../solids.json

FOLDER is where `cargo test --test parts` wrote the samples. Needs numpy, scipy, shapely, trimesh, manifold3d.
Every cell is rebuilt from its corners alone, holes are cylinders and openings prisms, and all is cut by booleans.
"""

import json
import sys
from itertools import combinations
from pathlib import Path

import numpy as np
import trimesh
from trimesh.creation import cylinder, triangulate_polygon
from shapely.geometry import Polygon

ROUND = 256  # corners of a circle
MM = 1000.0  # all is worked in millimetres, as the library takes what lies within 1e-8 for one
AIR = 20.0
folder = Path(sys.argv[1])


def solid(cell):
    near, far = MM * np.array(cell["near"]), MM * np.array(cell["far"])
    n = len(near)
    # The near face in a plane of its own, for cutting it into triangles.
    u = near[1] - near[0]
    square = sum(np.cross(near[i] - near[0], near[i + 1] - near[0]) for i in range(1, n - 1))
    u, w = u / np.linalg.norm(u), square / np.linalg.norm(square)
    v = np.cross(w, u)
    plane = np.column_stack([(near - near[0]) @ u, (near - near[0]) @ v])
    points, three = triangulate_polygon(Polygon(plane), engine="earcut")
    index = [int(np.argmin(np.hypot(*(plane - p).T))) for p in points]
    three = [[index[i] for i in t] for t in three]
    faces = [t[::-1] for t in three] + [[i + n for i in t] for t in three]
    for i in range(n):
        j = (i + 1) % n
        faces += [[i, j, j + n], [i, j + n, i + n]]
    mesh = trimesh.Trimesh(np.vstack([near, far]), faces, process=True)
    mesh.fix_normals()
    assert mesh.is_volume, "no closed solid"
    return mesh


def drill(hole):
    at, way = MM * np.array(hole["at"]), np.array(hole["way"])
    spare = AIR if hole["through"] else 0.0
    # Before the face there is air; beyond it only where the hole goes through.
    start, end = at - AIR * way, at + (MM * hole["deep"] + spare) * way
    return cylinder(MM * hole["radius"], segment=[start, end], sections=ROUND)


def opening(corners, into):
    if isinstance(corners, dict):
        return solid(corners)
    corners, into = np.array(corners), np.array(into)
    return solid({"near": corners - AIR / MM * into, "far": corners + 2 * AIR / MM * into})


def part(given):
    whole = trimesh.boolean.union([solid(c) for c in given["cells"]], engine="manifold")
    away = [solid(c) for c in given["cuts"]]
    away += [drill(h) for h in given["holes"]]
    away += [opening(o, given["into"]) for o in given["openings"]]
    if away:
        whole = trimesh.boolean.difference([whole] + away, engine="manifold")
    return whole


def box_apart(a, b):
    return (a.bounds[1] < b.bounds[0]).any() or (b.bounds[1] < a.bounds[0]).any()


report = {
    "libraries": {"trimesh": trimesh.__version__, "numpy": np.__version__},
}
for path in sorted(folder.glob("*.json")):
    found, meshes = {}, {}
    for given in json.loads(path.read_text()):
        mesh = part(given)
        meshes[given["name"]] = mesh
        found[given["name"]] = {
            "volume_m3": float(f"{mesh.volume / MM**3:.9e}"),
            "middle_m": [round(float(x) / MM, 7) for x in mesh.center_mass],
        }
    clashes = 0
    for one, other in combinations(meshes, 2):
        a, b = meshes[one], meshes[other]
        if not box_apart(a, b):
            shared = trimesh.boolean.intersection([a, b], engine="manifold")
            if shared.volume > 1.0:
                clashes += 1
                print(f"{path.stem}: {one} and {other} share {shared.volume:.3f} mm3", file=sys.stderr)
    found["clashes"] = clashes
    report[path.stem] = found
print(json.dumps(report, indent=1, sort_keys=True))
