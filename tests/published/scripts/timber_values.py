"""Values for laminates, metal beside wood, holes and bars of wood, from general-purpose libraries for numbers.

Nothing of Stringloft takes part, and other ways lead to the numbers: laminates by turning tensors of the fourth order,
sections by adding up a fine grid, slip by finite differences, tones of bars by finite elements of Timoshenko's beam.
Needs Python 3 with NumPy and SciPy; writes `tests/published/timber_values.json`:

    python tests/published/scripts/timber_values.py
"""

import json
import pathlib

import numpy
import scipy
from scipy.linalg import eigh, solve_banded

# Thickness mm, angle degrees, moduli along, across and in shear GPa, Poisson's ratio.
LAMINATES = {
    "three maple planks, the middle one crossed": [
        (20.0, 0.0, 12.6, 0.9, 1.1, 0.37), (12.0, 90.0, 12.6, 0.9, 1.1, 0.37), (20.0, 0.0, 12.6, 0.9, 1.1, 0.37),
    ],
    "maple with slanting veneers of birch": [
        (1.5, 30.0, 13.9, 0.7, 1.0, 0.37), (1.5, -30.0, 13.9, 0.7, 1.0, 0.37), (34.0, 0.0, 12.6, 0.9, 1.1, 0.37),
        (1.5, -30.0, 13.9, 0.7, 1.0, 0.37), (1.5, 30.0, 13.9, 0.7, 1.0, 0.37),
    ],
    "two woods, one on each side": [
        (22.0, 0.0, 12.6, 0.9, 1.1, 0.37), (18.0, 15.0, 8.9, 0.5, 1.1, 0.35),
    ],
}

# Breadth and depth of the wood, thickness and height of the plates, mm; both sides; moduli of wood and metal, GPa.
PLATED = [
    (40.0, 80.0, 3.0, 60.0, True, 12.0, 210.0),
    (40.0, 80.0, 3.0, 60.0, False, 12.0, 210.0),
    (52.0, 90.0, 2.0, 90.0, True, 12.6, 100.0),
    (36.0, 70.0, 5.0, 40.0, False, 10.3, 70.0),
]

# Half of the wood's height, thickness of the flanges, mm; modulus of both, GPa; width mm; spacing mm, slip N/mm; length mm.
SLIPS = [
    (20.0, 3.0, 12.0, 210.0, 60.0, 50.0, 3000.0, 900.0),
    (26.0, 2.0, 12.6, 100.0, 90.0, 30.0, 4500.0, 1400.0),
    (18.0, 5.0, 10.3, 70.0, 40.0, 80.0, 2000.0, 500.0),
]

# Breadth and depth mm, and holes: off the middle, diameter, share of the breadth.
HOLED = [
    (48.0, 68.0, [(16.0, 5.5, 1.0), (-19.0, 3.0, 1.0)]),
    (70.0, 100.0, [(13.0, 6.5, 1.0), (-31.0, 3.0, 0.3)]),
    (40.0, 80.0, [(10.0, 8.0, 0.6), (12.0, 8.0, 1.0)]),
]

# Length, width, height mm; density kg/m3; modulus along the grain GPa, E/G.
BARS = [
    (600.0, 40.0, 20.0, 450.0, 11.0, 16.0),
    (400.0, 30.0, 20.0, 620.0, 13.9, 16.0),
    (800.0, 50.0, 12.0, 700.0, 12.6, 16.0),
    (300.0, 25.0, 15.0, 7850.0, 206.0, 2.0),
]


def turned(stiff, angle):
    """A plane tensor of the fourth order, turned about the normal."""
    c, s = numpy.cos(angle), numpy.sin(angle)
    r = numpy.array([[c, -s], [s, c]])
    return numpy.einsum("ia,jb,kc,ld,abcd->ijkl", r, r, r, r, stiff)


def plane(e1, e2, g, nu):
    """Plane stress of a wood as a tensor, by inverting its compliance."""
    soft = numpy.array([[1 / e1, -nu / e1, 0], [-nu / e1, 1 / e2, 0], [0, 0, 1 / g]])
    q = numpy.linalg.inv(soft)
    tensor = numpy.zeros((2, 2, 2, 2))
    at = {(0, 0): 0, (1, 1): 1, (0, 1): 2, (1, 0): 2}
    for (i, j), row in at.items():
        for (k, l), column in at.items():
            tensor[i, j, k, l] = q[row, column]
    return tensor


def laminates():
    rows = []
    for name, layers in LAMINATES.items():
        whole = sum(layer[0] for layer in layers)
        z, a, b, d = -whole / 2, 0, 0, 0
        for t, deg, e1, e2, g, nu in layers:
            tensor = turned(plane(e1, e2, g, nu), numpy.radians(deg))
            q = numpy.array([[tensor[i, j, k, l] for k, l in ((0, 0), (1, 1), (0, 1))] for i, j in ((0, 0), (1, 1), (0, 1))])
            a, b, d = a + q * t, b + q * ((z + t) ** 2 - z**2) / 2, d + q * ((z + t) ** 3 - z**3) / 3
            z += t
        # The whole as one matrix of six: what it gives under one force or one moment.
        soft = numpy.linalg.inv(numpy.block([[a, b], [b, d]]))
        apart = numpy.linalg.inv(a)
        rows.append({
            "name": name, "layers": layers, "along": 1 / (whole * apart[0, 0]), "across": 1 / (whole * apart[1, 1]),
            "shear": 1 / (whole * apart[2, 2]), "sideways": 12 / (whole**3 * soft[3, 3]),
        })
    return rows


def plated():
    rows = []
    for b, h, t, high, both, wood, metal in PLATED:
        # Across the harp and along the depth, in cells of a fraction of a millimetre.
        cell_z, cell_y = 0.05, 0.25
        z = numpy.arange(-b / 2 - t + cell_z / 2, b / 2 + t, cell_z)[:, None]
        y = numpy.arange(-h / 2 + cell_y / 2, h / 2, cell_y)[None, :]
        in_wood = (abs(z) < b / 2) & (abs(y) < h / 2)
        side = abs(z) if both else z
        in_metal = (side > b / 2) & (abs(y) < high / 2)
        e = 1e3 * (wood * in_wood + metal * in_metal)
        area = cell_z * cell_y
        axial = float((e * area).sum())
        aside = float((e * z * area).sum() / axial)
        in_plane = float((e * y**2 * area).sum())
        sideways = float((e * (z - aside) ** 2 * area).sum())
        edge = float(abs(numpy.where(in_wood, z - aside, 0)).max()) + cell_z / 2
        outer = float(abs(numpy.where(in_metal, z - aside, 0)).max()) + cell_z / 2
        rows.append({
            "given": [b, h, t, high, both, wood, metal],
            "wood_mpa": [1e3 * wood / axial, 1e3 * wood * h / 2 / in_plane, 1e3 * wood * edge / sideways],
            "metal_mpa": [1e3 * metal / axial, 1e3 * metal * high / 2 / in_plane, 1e3 * metal * outer / sideways],
        })
    return rows


def slips():
    """The share of the flanges' stretching that goes with the web, from the slip of a beam under a sine load."""
    rows = []
    for half, t, wood, metal, width, spacing, slip, length in SLIPS:
        stretch, arm, held = 1e3 * metal * t * width, half + t / 2, slip / spacing
        # E A u'' = k (u - z w') for a flange that is held to a web bent as w = sin: solved by finite differences.
        count = 4001
        x = numpy.linspace(0, length, count)
        step = x[1] - x[0]
        slope = arm * numpy.pi / length * numpy.cos(numpy.pi * x / length)
        upper = numpy.full(count, stretch / step**2)
        lower, middle = upper.copy(), numpy.full(count, -2 * stretch / step**2 - held)
        # No force at the ends: the neighbour beyond is the one before.
        upper[1] *= 2
        lower[-2] *= 2
        u = solve_banded((1, 1), numpy.array([upper, middle, lower]), -held * slope)
        strain = numpy.gradient(u, step)[count // 2]
        bent = -arm * (numpy.pi / length) ** 2
        rows.append({"given": [half, t, wood, metal, width, spacing, slip, length], "gamma": float(strain / bent)})
    return rows


def holed():
    rows = []
    for b, h, holes in HOLED:
        cell = 0.01
        y = numpy.arange(-h / 2 + cell / 2, h / 2, cell)
        left = numpy.full(len(y), b)
        for off, wide, deep in holes:
            inside = abs(y - off) < wide / 2
            left[inside] = numpy.minimum(left[inside], b * (1 - deep))
        area = float((left * cell).sum())
        middle = float((left * y * cell).sum() / area)
        inertia = float((left * (y - middle) ** 2 * cell).sum())
        edge = h / 2 + abs(middle)
        rows.append({"given": [b, h, holes], "axial": b * h / area, "bending": b * h**2 / 6 * edge / inertia,
                     "shift_mm": middle})
    return rows


def bars():
    """The first tone of a free bar of Timoshenko's, by finite elements with linear shear and the middle rule."""
    rows = []
    for length, width, height, density, gpa, over in BARS:
        e, g, k = gpa * 1e9, gpa * 1e9 / over, 1 / 1.2
        l, b, h = length / 1e3, width / 1e3, height / 1e3
        area, inertia = b * h, b * h**3 / 12

        def tone(count):
            step = l / count
            stiff, mass = numpy.zeros((2 * count + 2,) * 2), numpy.zeros((2 * count + 2,) * 2)
            bend = e * inertia / step * numpy.array([[1, -1], [-1, 1]])
            row = numpy.array([-1 / step, -0.5, 1 / step, -0.5])
            shear = k * g * area * step * numpy.outer(row, row)
            own = step / 6 * numpy.array([[2, 1], [1, 2]])
            for at in range(count):
                w, turn = [2 * at, 2 * at + 2], [2 * at + 1, 2 * at + 3]
                both = [2 * at, 2 * at + 1, 2 * at + 2, 2 * at + 3]
                stiff[numpy.ix_(turn, turn)] += bend
                stiff[numpy.ix_(both, both)] += shear
                mass[numpy.ix_(w, w)] += density * area * own
                mass[numpy.ix_(turn, turn)] += density * inertia * own
            rates = eigh(stiff, mass, eigvals_only=True, subset_by_index=[0, 4])
            return float(numpy.sqrt(rates[2]) / 2 / numpy.pi)

        # Two meshes, and what they tend to as the square of the step goes to nothing.
        coarse, fine = tone(100), tone(200)
        rows.append({"given": [length, width, height, density, gpa, over], "hz": fine + (fine - coarse) / 3})
    return rows


def main():
    groups = {"laminates": laminates(), "plated": plated(), "slips": slips(), "holed": holed(), "bars": bars()}
    versions = {"numpy": numpy.__version__, "scipy": scipy.__version__}
    lines = [f'"versions": {json.dumps(versions)}']
    for name, rows in groups.items():
        inner = ",\n".join(f"  {json.dumps(row)}" for row in rows)
        lines.append(f'"{name}": [\n{inner}\n]')
    path = pathlib.Path(__file__).parent.parent / "timber_values.json"
    path.write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8")


if __name__ == "__main__":
    main()
