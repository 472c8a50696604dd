"""Reads the sample templates with general-purpose libraries and notes what was found.

    python audit.py FOLDER > ../audited.json

FOLDER is where `cargo test --test templates` wrote the samples. Needs ezdxf, svgelements, pypdf.
Every fault is told on the error output and counted.
"""

import csv
import json
import math
import sys
import zlib
from pathlib import Path

import ezdxf
import pypdf
import svgelements
from ezdxf import recover

NEAR = 0.001  # mm
FLAT = 0.01  # mm, a curve of lines
EDGE = 5.0
MM = 72 / 25.4
folder = Path(sys.argv[1])
faults = 0


def fault(words):
    global faults
    faults += 1
    print(words, file=sys.stderr)


def near(a, b, what, room=NEAR):
    if len(a) != len(b) or any(abs(x - y) > room for x, y in zip(a, b)):
        fault(f"{what}: {a} is not {b}")


def cubic(p, t):
    u = 1 - t
    return [
        u**3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t**3 * d
        for a, b, c, d in zip(*p)
    ]


def from_line(p, a, b):
    (px, py), (ax, ay), (bx, by) = p, a, b
    dx, dy = bx - ax, by - ay
    long = dx * dx + dy * dy
    t = 0 if long == 0 else max(0, min(1, ((px - ax) * dx + (py - ay) * dy) / long))
    return math.hypot(px - ax - t * dx, py - ay - t * dy)


model = []
for line in (folder / "sample.txt").read_text().splitlines():
    layer, kind, *numbers = line.split()
    model.append((layer, kind, [float(n) for n in numbers]))


def pairs(numbers):
    return list(zip(numbers[::2], numbers[1::2]))


def check_dxf():
    path = folder / "sample.dxf"
    strict = ezdxf.readfile(path)
    doc, auditor = recover.readfile(path)
    for found in [strict.audit(), auditor]:
        for error in found.errors + found.fixes:
            fault(f"DXF: {error.message}")
    if doc.header["$INSUNITS"] != 4:
        fault("DXF: the unit is not the millimetre")
    space = strict.modelspace()
    read = list(space)
    counts = {}
    for entity in read:
        name = entity.dxf.layer
        if not strict.layers.has_entry(name):
            fault(f"DXF: no layer {name}")
        counts.setdefault(name, {}).setdefault(entity.dxftype(), 0)
        counts[name][entity.dxftype()] += 1
    box = [strict.header["$EXTMIN"], strict.header["$EXTMAX"]]
    at = iter(read)
    for layer, kind, numbers in model:
        what = f"DXF {layer} {kind}"
        entity = next(at)
        if entity.dxf.layer != layer.upper():
            fault(f"{what}: in the layer {entity.dxf.layer}")
        if kind == "line":
            near([*entity.dxf.start][:2] + [*entity.dxf.end][:2], numbers, what)
        elif kind == "cross":
            x, y, arm = numbers
            other = next(at)
            near([*entity.dxf.start][:2] + [*entity.dxf.end][:2], [x - arm, y, x + arm, y], what)
            near([*other.dxf.start][:2] + [*other.dxf.end][:2], [x, y - arm, x, y + arm], what)
        elif kind == "circle":
            near([*entity.dxf.center][:2] + [entity.dxf.radius], numbers, what)
        elif kind in ("polyline", "polygon"):
            points = [v for p in entity.points() for v in [p.x, p.y]]
            near(points, numbers, what)
            if entity.is_closed != (kind == "polygon"):
                fault(f"{what}: closed is wrong")
        elif kind == "bezier":
            points = [(p.x, p.y) for p in entity.points()]
            if entity.is_closed != (numbers[:2] == numbers[-2:]):
                fault(f"{what}: closed is wrong")
            if entity.is_closed:
                points.append(points[0])
            near(points[0], numbers[:2], what)
            near(points[-1], numbers[-2:], what)
            nodes = pairs(numbers)
            worst = 0
            for i in range(0, len(nodes) - 1, 3):
                for step in range(101):
                    p = cubic(nodes[i : i + 4], step / 100)
                    off = min(from_line(p, a, b) for a, b in zip(points, points[1:]))
                    worst = max(worst, off)
            if worst > FLAT:
                fault(f"{what}: off by {worst}")
        elif kind == "text":
            x, y, height, angle = numbers
            place = entity.dxf.align_point if entity.dxf.halign else entity.dxf.insert
            near([place.x, place.y, entity.dxf.height], [x, y, height], what)
            near([entity.dxf.rotation], [angle % 360], what)
        for point in [] if kind != "circle" else [numbers]:
            x, y, r = point
            if not (box[0][0] <= x - r and x + r <= box[1][0] and box[0][1] <= y - r and y + r <= box[1][1]):
                fault(f"{what}: outside the extents")
    if next(at, None) is not None:
        fault("DXF: more entities than shapes")
    return counts


def check_svg():
    path = folder / "sample.svg"
    # At 25.4 dots in an inch a dot is a millimetre; the view then only moves.
    svg = svgelements.SVG.parse(str(path), ppi=25.4, reify=True)
    head = path.read_text().split("viewBox=\"")[1].split('"')[0]
    left, top, wide, high = [float(n) for n in head.split()]
    near([svg.width, svg.height], [wide, high], "SVG size", 0.01)
    shapes = [e for e in svg.elements() if isinstance(e, (svgelements.Shape, svgelements.Text))]
    up = lambda p: [p.x + left, -(p.y + top)]
    counts = {}
    at = iter(shapes)
    for layer, kind, numbers in model:
        what = f"SVG {layer} {kind}"
        shape = next(at)
        counts[layer] = counts.get(layer, 0) + 1
        if kind in ("line", "cross"):
            ends = up(shape.point(0)) + up(shape.point(1))
            if kind == "line":
                near(ends, numbers, what)
            else:
                x, y, arm = numbers
                other = next(at)
                near(ends, [x - arm, y, x + arm, y], what)
                near(up(other.point(0)) + up(other.point(1)), [x, y - arm, x, y + arm], what)
        elif kind == "circle":
            near(up(svgelements.Point(shape.cx, shape.cy)) + [shape.rx], numbers, what)
        elif kind in ("polyline", "polygon"):
            near([v for p in shape.points for v in up(p)], numbers, what)
        elif kind == "bezier":
            path_points = []
            for part in shape:
                if isinstance(part, svgelements.Move):
                    path_points += up(part.end)
                elif isinstance(part, svgelements.CubicBezier):
                    path_points += up(part.control1) + up(part.control2) + up(part.end)
            near(path_points, numbers, what)
        elif kind == "text":
            x, y = numbers[:2]
            place = shape.transform.point_in_matrix_space((shape.x, shape.y))
            near(up(place), [x, y], what)
    if next(at, None) is not None:
        fault("SVG: more shapes than in the drawing")
    return counts


def check_pdf(name, sizes):
    reader = pypdf.PdfReader(folder / name, strict=True)
    if reader.trailer["/Root"]["/ViewerPreferences"]["/PrintScaling"] != "/None":
        fault(f"{name}: the print may be scaled")
    boxes = [[float(v) / MM for v in page.mediabox] for page in reader.pages]
    for box in boxes:
        if sizes and not any(abs(box[2] - w) < NEAR and abs(box[3] - h) < NEAR for w, h in sizes):
            fault(f"{name}: a page of {box}")
    return [f"{w:.1f} x {h:.1f} mm" for _, _, w, h in boxes]


def check_csv():
    with open(folder / "sample.csv", newline="") as file:
        rows = list(csv.reader(file))
    if {len(row) for row in rows} != {10}:
        fault("CSV: rows of different lengths")
    return len(rows)


report = {
    "libraries": {
        "ezdxf": ezdxf.__version__,
        "svgelements": svgelements.svgelements.SVGELEMENTS_VERSION
        if hasattr(svgelements.svgelements, "SVGELEMENTS_VERSION")
        else "1.9",
        "pypdf": pypdf.__version__,
    },
    "entities in the DXF": check_dxf(),
    "shapes in the SVG": check_svg(),
    "rows in the CSV": check_csv(),
    "pages": {
        "a4.pdf": check_pdf("a4.pdf", [(210, 297), (297, 210)]),
        "letter.pdf": check_pdf("letter.pdf", [(215.9, 279.4), (279.4, 215.9)]),
        "single.pdf": check_pdf("single.pdf", None),
    },
    "files": {
        name: f"{zlib.crc32((folder / name).read_bytes()):08x}"
        # The bytes of a PDF change with the library that packs them.
        for name in ["sample.dxf", "sample.svg", "sample.csv", "sample.txt"]
    },
    "faults": faults,
}
print(json.dumps(report, indent=2, sort_keys=True))
