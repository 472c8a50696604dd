"""Values for the checks of neck, pillar and sections, from general-purpose libraries.

Nothing of Stringloft takes part. PyNite solves the frames as beams in space, with each string on a stiff arm of its
own; SciPy finds roots and solves the torsion of a rectangle by finite differences. Needs Python 3 with PyNiteFEA and
SciPy; writes `tests/published/frame_values.json`:

    python tests/published/scripts/frame_values.py
"""

import importlib.metadata
import json
import math
import pathlib

import numpy
import scipy
from Pynite import FEModel3D
from scipy.optimize import brentq
from scipy.sparse import diags, identity, kron
from scipy.sparse.linalg import spsolve

# Invented harps: the middle line of the neck, the foot of the pillar (both mm), breadth and depth (mm), and where
# the strings meet the neck, over it or under it.
NECKS = {
    "curved": {
        "axis": [(0, 0), (90, -25), (190, -35), (310, -5), (430, 60), (540, 150), (640, 240), (720, 290)],
        "foot": (770, -1150),
        "top": (720, 290),
        "held": "shoulder",
    },
    "level": {
        "axis": [(0, 0), (700, 0)],
        "foot": (700, -1200),
        "top": (700, 0),
        "held": "both",
    },
    # The pillar meets the neck beside its middle line, and the shoulder is the first point of it.
    "beside": {
        "axis": [(0, 0), (200, -40), (450, 30), (700, 200)],
        "foot": (735, -1100),
        "top": (715, 185),
        "held": "shoulder",
    },
}
STRINGS = 36
OFFSET_MM = 32.0
# The neck of the sample of 36 strings: its middle line, the foot of its pillar, and the places and pulls of its
# strings, to a thousandth of a millimetre and a tenth of a millinewton. One string, which hangs within a hundredth of
# a millimetre of a corner, is moved along by 0.4 mm, as a beam so short is lost in the digits of the solver.
SAMPLE = json.loads((pathlib.Path(__file__).parent / "sample_neck.json").read_text())
NECKS["sample"] = {
    "axis": SAMPLE["axis"],
    "foot": SAMPLE["foot"],
    "top": SAMPLE["axis"][-1],
    "held": "shoulder",
    "pulls": SAMPLE["strings"],
}


def strings(neck):
    """Place (mm), pull (N): every string from near the middle line to a slanting board."""
    axis = neck["axis"]
    lengths = [math.dist(a, b) for a, b in zip(axis, axis[1:])]
    total = sum(lengths)
    for i in range(STRINGS):
        # Off the corners, so that the nearest place of the middle line is plain.
        s = (0.04 + 0.92 * i / (STRINGS - 1)) * total
        k = 0
        while s > lengths[k]:
            s -= lengths[k]
            k += 1
        (x0, y0), (x1, y1) = axis[k], axis[k + 1]
        share = min(max(s / lengths[k], 0.06), 0.94)
        tx, ty = (x1 - x0) / lengths[k], (y1 - y0) / lengths[k]
        aside = 10.0 * math.sin(1.3 * i)
        x = x0 + share * (x1 - x0) - aside * ty
        y = y0 + share * (y1 - y0) + aside * tx
        pull = 45.0 + 4.2 * i
        slant = 0.05 + 0.002 * i
        yield round(x, 3), round(y, 3), round(-pull * math.sin(slant), 4), round(-pull * math.cos(slant), 4)


def nearest(axis, x, y):
    """Piece and share of the nearest place on the middle line."""
    best = None
    for k, (a, b) in enumerate(zip(axis, axis[1:])):
        a, way = numpy.array(a, float), numpy.array(b, float) - numpy.array(a, float)
        share = float(numpy.clip(numpy.dot(numpy.array((x, y)) - a, way) / numpy.dot(way, way), 0, 1))
        gap = float(numpy.hypot(*(a + share * way - (x, y))))
        if best is None or gap < best[0]:
            best = (gap, k, share)
    return best[1], best[2]


def solve(neck):
    model = FEModel3D()
    model.add_material("wood", 12e9, 1e9, 0.3, 600)
    model.add_section("neck", 3e-3, 1e-6, 1e-6, 1e-6)
    axis, pulls = neck["axis"], neck.get("pulls") or list(strings(neck))
    places, corners = [[] for _ in axis[1:]], {}
    for i, (x, y, _, _) in enumerate(pulls):
        k, share = nearest(axis, x, y)
        if share <= 0 or share >= 1:
            corners.setdefault(k + round(share), []).append(i)
        else:
            places[k].append((share, i))

    def hang(i, name):
        x, y, fx, fy = pulls[i]
        model.add_node(f"p{i}", x / 1e3, y / 1e3, OFFSET_MM / 1e3)
        model.add_member(f"a{i}", name, f"p{i}", "wood", "neck")
        model.add_node_load(f"p{i}", "FX", fx)
        model.add_node_load(f"p{i}", "FY", fy)

    model.add_node("v0", axis[0][0] / 1e3, axis[0][1] / 1e3, 0)
    last, cuts = "v0", []
    for k, (a, b) in enumerate(zip(axis, axis[1:])):
        for share, i in sorted(places[k]):
            name = f"s{i}"
            model.add_node(name, (a[0] + share * (b[0] - a[0])) / 1e3, (a[1] + share * (b[1] - a[1])) / 1e3, 0)
            model.add_member(f"m{len(cuts)}", last, name, "wood", "neck")
            cuts.append(f"m{len(cuts)}")
            last = name
            hang(i, name)
        model.add_node(f"v{k + 1}", b[0] / 1e3, b[1] / 1e3, 0)
        model.add_member(f"m{len(cuts)}", last, f"v{k + 1}", "wood", "neck")
        cuts.append(f"m{len(cuts)}")
        last = f"v{k + 1}"
    for corner, hung in corners.items():
        for i in hung:
            hang(i, f"v{corner}")
    top = last
    if neck["top"] != axis[-1]:
        model.add_node("top", neck["top"][0] / 1e3, neck["top"][1] / 1e3, 0)
        model.add_member("arm", last, "top", "wood", "neck")
        top = "top"
    model.add_node("foot", neck["foot"][0] / 1e3, neck["foot"][1] / 1e3, 0)
    model.add_member("pillar", "foot", top, "wood", "neck")
    model.def_releases("pillar", Rxi=True, Ryi=True, Rzi=True, Ryj=True, Rzj=True)
    model.def_support("foot", True, True, True, True, True, True)
    # A pin in the plane; out of it the shoulder holds the neck, and at both ends only against twist.
    both = neck["held"] == "both"
    model.def_support("v0", True, True, True, True, True, False)
    if both:
        model.def_support(last, False, False, False, True, False, False)
    # The sample has short beams beside long ones, and the rest of the solution is above the solver's own bound; the
    # test says how far it is from statics.
    model.analyze(check_statics=False, check_stability=False)
    shoulder = model.nodes["v0"]
    rows = []
    for name in cuts:
        member = model.members[name]
        forces = numpy.array(member.f("Combo 1")).flatten()
        turn = numpy.array(member.T())[:3, :3]
        to_plane = turn.T  # Columns: the member's axes in those of the harp.
        along = to_plane[:, 0]
        left = numpy.array((-along[1], along[0], 0.0))
        for end, node in ((0, member.i_node), (6, member.j_node)):
            sign = 1 if end else -1  # At its beginning a member gets the forces of the part before it.
            force = sign * to_plane @ forces[end : end + 3]
            moment = sign * to_plane @ forces[end + 3 : end + 6]
            parts = force @ along, force @ left, moment[2], moment @ along, moment @ left
            rows.append([node.X * 1e3, node.Y * 1e3, *map(float, parts)])
    pillar = numpy.array(model.members["pillar"].f("Combo 1")).flatten()
    neck = {key: value for key, value in neck.items() if key != "pulls"}
    return {
        **neck,
        "offset_mm": OFFSET_MM,
        "strings": pulls,
        "pillar_n": float(pillar[0]),
        "shoulder_n": [float(shoulder.RxnFX["Combo 1"]), float(shoulder.RxnFY["Combo 1"])],
        # x and y in mm, axial force and shear in N, bending, torque and sideways bending in N m.
        "cuts": rows,
    }


def torsion(ratio, cells):
    """c2 of a rectangle: Poisson's equation by finite differences, sides 1 and ratio."""
    rows, columns = cells, round(cells * ratio)

    def second(n, h):
        return diags([1.0, -2.0, 1.0], [-1, 0, 1], shape=(n - 1, n - 1)) / h**2

    h, k = 1.0 / rows, ratio / columns
    laplace = kron(second(rows, h), identity(columns - 1)) + kron(identity(rows - 1), second(columns, k))
    stress = spsolve(laplace.tocsc(), -2.0 * numpy.ones((rows - 1) * (columns - 1)))
    return 2.0 * stress.sum() * h * k / ratio


def extrapolated(ratio):
    """Errors of the differences go with the square of the step."""
    coarse, fine, finest = (torsion(ratio, n) for n in (40, 80, 160))
    one, two = (4 * fine - coarse) / 3, (4 * finest - fine) / 3
    return (16 * two - one) / 15


def stability(alpha, c):
    """The lesser root of c x^2 - (1 + alpha) x + alpha = 0, on which the column curve of the standard rests."""
    return brentq(lambda x: c * x * x - (1 + alpha) * x + alpha, 0.0, min(1.0, alpha), xtol=1e-16, rtol=1e-14)


def secant_load(breadth, depth, length, modulus, eccentricity, limit):
    """Millimetres, newtons, MPa; the strut bends over its depth."""
    area, inertia = breadth * depth, breadth * depth**3 / 12
    euler = math.pi**2 * modulus * inertia / length**2

    def over(load):
        grown = 1 / math.cos(0.5 * length * math.sqrt(load / (modulus * inertia)))
        return load / area * (1 + eccentricity * 0.5 * depth * area / inertia * grown) - limit

    return brentq(over, 0.0, euler * (1 - 1e-12), xtol=1e-12, rtol=1e-14)


def main():
    struts = [(60, 45, 1100, 12600, 5, 20), (50, 50, 1300, 10300, 15, 12), (70, 40, 900, 7000, 1, 30)]
    values = {
        "versions": {"pynite": importlib.metadata.version("PyNiteFEA"), "scipy": scipy.__version__},
        "necks": [{"name": name, **solve(neck)} for name, neck in NECKS.items()],
        "torsion": [[ratio, extrapolated(ratio)] for ratio in (1.0, 1.25, 1.5, 2.0, 3.0, 5.0)],
        "stability": [[a, c, stability(a, c)] for a in (0.05, 0.3, 0.7, 1.0, 2.5, 20.0) for c in (0.8, 0.9)],
        "secant": [[*row, secant_load(*row)] for row in struts],
    }
    path = pathlib.Path(__file__).parent.parent / "frame_values.json"
    path.write_text(lines(values) + "\n")


def lines(value, depth=0):
    """JSON with a list of numbers on one line."""
    inner, outer = "\n" + " " * (depth + 1), "\n" + " " * depth
    if isinstance(value, dict):
        parts = (json.dumps(key) + ": " + lines(item, depth + 1) for key, item in value.items())
        return "{" + inner + ("," + inner).join(parts) + outer + "}"
    if isinstance(value, (list, tuple)) and any(isinstance(item, (list, tuple, dict)) for item in value):
        return "[" + inner + ("," + inner).join(lines(item, depth + 1) for item in value) + outer + "]"
    return json.dumps(value)


main()
