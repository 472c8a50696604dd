"""Values for crossed layers that roll, for what holds metal beside wood, and for rims of holes.

Nothing of Stringloft takes part. Rims of holes and ends of glued plates come from plane finite elements of scikit-fem,
twisted layers from finite elements of Prandtl's stress function, layers under a shear force from adding up a fine grid, and
rows of screws from OpenSees, with every screw as a spring between two beams. Needs Python 3 with NumPy, SciPy, scikit-fem and
openseespy; writes `tests/published/held_values.json`:

    python tests/published/scripts/held_values.py
"""

import json
import pathlib

import numpy
import openseespy.opensees as ops
import scipy
import scipy.sparse
import scipy.sparse.linalg
import skfem
from skfem import Basis, BilinearForm, CellBasis, ElementQuad2, ElementVector, FacetBasis, LinearForm, MeshQuad, condense, solve

# Breadth and depth mm; layers from face to face: thickness, and whether it is crossed; moduli along and across, GPa; of the
# shear modulus of wood that rolls, over that along the grain.
LAYERED = [
    (50.0, 85.0, [(20, 0), (10, 1), (20, 0)], 12.6, 0.9, 0.1),
    (50.0, 85.0, [(10, 0), (10, 1), (10, 0), (10, 1), (10, 0)], 12.6, 0.9, 0.2),
    (36.0, 70.0, [(4, 0), (4, 1), (4, 0), (4, 1), (4, 0), (4, 1), (4, 0), (4, 1), (4, 0)], 10.3, 0.7, 0.33),
    (60.0, 90.0, [(6, 1), (24, 0), (24, 0), (6, 1)], 12.6, 0.9, 0.1),
]
# Moduli along, across and in shear, GPa; Poisson's ratio.
RIMS = [
    (200.0, 200.0, 200.0 / 2.6, 0.3),
    (13.86, 0.901, 0.873, 0.37),
    (11.9, 0.512, 0.726, 0.37),
    (9.33, 8.2, 0.62, 0.05),
]
# Breadth of the wood and thickness of the plates, mm; of the wood along, across and in shear, and of the metal, GPa.
LAPS = [
    (40.0, 2.0, 12.0, 0.8, 0.9, 210.0),
    (50.0, 3.0, 12.6, 0.9, 0.9, 100.0),
    (36.0, 5.0, 10.3, 0.6, 0.8, 70.0),
    (60.0, 1.0, 12.6, 0.9, 0.9, 210.0),
]
# Breadth and depth of the wood, thickness and height of the plates, mm; moduli GPa; spacing mm, slip N/mm, screws.
ROWS = [
    (40.0, 80.0, 2.0, 60.0, 12.0, 210.0, 50.0, 2500.0, 16),
    (52.0, 90.0, 3.0, 70.0, 12.6, 100.0, 30.0, 4000.0, 30),
    (36.0, 70.0, 4.0, 40.0, 10.3, 70.0, 80.0, 1500.0, 9),
    (40.0, 80.0, 2.0, 60.0, 12.0, 210.0, 60.0, 100000.0, 14),
]


def plane(e1, e2, g, nu):
    return numpy.linalg.inv(numpy.array([[1 / e1, -nu / e1, 0], [-nu / e1, 1 / e2, 0], [0, 0, 1 / g]]))


def stretching(stiff):
    """Work of plane strains; `stiff` by element where there are several materials."""
    @BilinearForm
    def form(u, v, w):
        one = [u.grad[0, 0], u.grad[1, 1], u.grad[0, 1] + u.grad[1, 0]]
        other = [v.grad[0, 0], v.grad[1, 1], v.grad[0, 1] + v.grad[1, 0]]
        return sum(stiff[i, j] * one[j] * other[i] for i in range(3) for j in range(3))

    return form


def rims():
    """A quarter of a wide plate with a hole of radius 1, pulled along the grain at a side 60 radii away."""
    size, rings, parts = 60.0, 90, 96
    turn, way = numpy.linspace(0, numpy.pi / 2, parts + 1), numpy.linspace(0, 1, rings + 1)
    edge = size / numpy.maximum(numpy.cos(turn), numpy.sin(turn))
    spots = []
    for share in (numpy.exp(6 * way) - 1) / (numpy.exp(6) - 1):
        r = 1 + (edge - 1) * share
        spots.append(numpy.array([r * numpy.cos(turn), r * numpy.sin(turn)]))
    at = lambda i, j: i * (parts + 1) + j
    cells = [[at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)] for i in range(rings) for j in range(parts)]
    mesh, element = MeshQuad(numpy.concatenate(spots, axis=1), numpy.array(cells).T), ElementVector(ElementQuad2())
    basis = Basis(mesh, element)
    side = FacetBasis(mesh, element, facets=mesh.facets_satisfying(lambda x: abs(x[0] - size) < 1e-6))
    pull = LinearForm(lambda v, w: v[0]).assemble(side)
    held = numpy.concatenate([
        basis.get_dofs(lambda x: abs(x[0]) < 1e-9).all(["u^1"]), basis.get_dofs(lambda x: abs(x[1]) < 1e-9).all(["u^2"]),
    ])
    rows = []
    for given in RIMS:
        stiff = plane(*given)
        moved = solve(*condense(stretching(stiff).assemble(basis), pull, D=held))

        def stress(cell, corner):
            spot = CellBasis(mesh, element, elements=numpy.array([cell]), quadrature=(numpy.array(corner), numpy.array([1.0])))
            g = spot.interpolate(moved).grad[:, :, 0, 0]
            return stiff @ numpy.array([g[0, 0], g[1, 1], g[0, 1] + g[1, 0]])

        beside, ahead = stress(parts - 1, [[0.0], [1.0]]), stress(0, [[0.0], [0.0]])
        rows.append({"given": given, "along": float(beside[0]), "across": float(-ahead[1])})
    return rows


def laps():
    """Half of a bar with plates on both faces that begin at 0, pulled by 1 kN for each mm of its half breadth: what the plate
    has taken over 5 mm from its end, for each mm, and where it bears its whole share."""
    rows = []
    for given in LAPS:
        b, t, along, across, shear, metal = given
        x = numpy.unique(numpy.concatenate([numpy.linspace(-150, -30, 25), numpy.linspace(-30, 60, 181), numpy.linspace(60, 300, 61)]))
        z = numpy.concatenate([numpy.linspace(0, b / 2, 41), b / 2 + numpy.linspace(0, t, 5)[1:]])
        mesh = MeshQuad.init_tensor(x, z)
        middle = mesh.p[:, mesh.t].mean(axis=1)
        mesh = mesh.remove_elements(numpy.nonzero((middle[1] > b / 2) & (middle[0] < 0))[0])
        in_wood = mesh.p[:, mesh.t].mean(axis=1)[1] < b / 2
        element = ElementVector(ElementQuad2())
        basis = Basis(mesh, element)
        of_wood, of_metal = plane(along, across, shear, 0.37), plane(metal, metal, metal / 2.6, 0.3)
        stiff = numpy.where(in_wood[None, None, :], of_wood[:, :, None], of_metal[:, :, None])[..., None]
        end = FacetBasis(mesh, element, facets=mesh.facets_satisfying(lambda x: abs(x[0] + 150) < 1e-6))
        pull = LinearForm(lambda v, w: -v[0]).assemble(end)
        held = numpy.concatenate([
            basis.get_dofs(lambda x: abs(x[0] - 300) < 1e-6).all(["u^1"]), basis.get_dofs(lambda x: abs(x[1]) < 1e-9).all(["u^2"]),
        ])
        moved = solve(*condense(stretching(stiff).assemble(basis), pull, D=held))
        grown = basis.interpolate(moved).grad
        stress = of_metal[0, 0] * grown[0, 0] + of_metal[0, 1] * grown[1, 1]
        taken = {}
        for cell in numpy.nonzero(~in_wood)[0]:
            low, high = mesh.p[0, mesh.t[:, cell]].min(), mesh.p[0, mesh.t[:, cell]].max()
            taken[low, high] = taken.get((low, high), 0.0) + float((stress[cell] * basis.dx[cell]).sum()) / (high - low)
        spots = sorted(taken)
        force = [taken[spot] for spot in spots]
        within = numpy.interp(5.0, [(low + high) / 2 for low, high in spots], force) / 5
        rows.append({"given": given, "shear": float(within), "whole": float(force[-1])})
    return rows


def sheared(b, layers, along, across):
    """The greatest shear in a crossed layer for each unit of V/A, by adding up a fine grid over the breadth."""
    count = 40_000
    z = (numpy.arange(count) + 0.5) / count * b
    ends = numpy.cumsum([t for t, _ in layers]) / sum(t for t, _ in layers) * b
    crossed = numpy.array([bool(c) for _, c in layers])[numpy.searchsorted(ends, z).clip(max=len(layers) - 1)]
    e = numpy.where(crossed, across, along)
    off = z - (e * z).sum() / e.sum()
    flow = numpy.abs(numpy.cumsum(e * off)) * b / count
    rigid = (e * off**2).sum() * b / count
    return float((flow * b / rigid)[crossed].max())


def twisted(b, h, layers, rolls):
    """The greatest shear over the faces of a crossed layer at the edge, of a bar of layers and of one of one piece, for a
    torque of 1, by Prandtl's stress function in cells of linear elements both ways."""
    across, down = 240, 400
    dz, dy = b / across, h / down
    ends = numpy.cumsum([t for t, _ in layers]) / sum(t for t, _ in layers) * b
    z = (numpy.arange(across) + 0.5) * dz
    crossed = numpy.array([bool(c) for _, c in layers])[numpy.searchsorted(ends, z).clip(max=len(layers) - 1)]
    slope, even = numpy.array([[1, -1], [-1, 1]]), numpy.array([[2, 1], [1, 2]]) / 6

    def edge(softer):
        over = numpy.where(crossed, softer, 1.0)
        rows, columns, values = [], [], []
        number = lambda i, j: (i - 1) * (down - 1) + j - 1
        for i in range(across):
            cell = numpy.kron(slope / dz, even * dy) + numpy.kron(even * dz, slope / dy) / over[i]
            for a in range(4):
                for c in range(4):
                    one, other = i + a // 2, i + c // 2
                    if not (0 < one < across and 0 < other < across):
                        continue
                    y, w = numpy.arange(down) + a % 2, numpy.arange(down) + c % 2
                    inside = (y > 0) & (y < down) & (w > 0) & (w < down)
                    rows.append(number(one, y[inside]))
                    columns.append(number(other, w[inside]))
                    values.append(numpy.full(inside.sum(), cell[a, c]))
        size = (across - 1) * (down - 1)
        places = (numpy.concatenate(rows), numpy.concatenate(columns))
        matrix = scipy.sparse.csc_matrix((numpy.concatenate(values), places), shape=(size, size))
        phi = numpy.zeros((across + 1, down + 1))
        phi[1:-1, 1:-1] = scipy.sparse.linalg.spsolve(matrix, numpy.full(size, 2 * dz * dy)).reshape(across - 1, down - 1)
        torque = 2 * dz * dy * phi[1:-1, 1:-1].sum()
        mid = (phi[:-1] + phi[1:]) / 2 / torque
        stress = numpy.maximum(abs(4 * mid[:, 1] - mid[:, 2]) / (2 * dy), (abs(numpy.diff(mid, axis=1)) / dy).max(axis=1))
        return stress

    return float(edge(rolls)[crossed].max()), float(edge(1.0).max())


def layered():
    rows = []
    for b, h, layers, along, across, rolls in LAYERED:
        own, whole = twisted(b, h, layers, rolls)
        rows.append({"given": [b, h, layers, along, across], "sheared": sheared(b, layers, along, across),
                     "twisted": own, "of_one_piece": whole})
    return rows


def row(given, forces):
    """Wood between two plates that are shorter by half a spacing at both ends, as beams in a plane with a spring for every
    screw: the forces along, across, and a moment in the plane of the depth, then a moment over the faces; in N and N·mm."""
    b, h, t, high, wood, metal, spacing, slip, count = given
    pull, shear, moment, aside = forces

    def solved(arm, own, stiffness):
        # One plate stands for both in the plane; over the faces there are two, at their arms.
        ops.wipe()
        ops.model("basic", "-ndm", 2, "-ndf", 3)
        ops.geomTransf("Linear", 1)
        ops.uniaxialMaterial("Elastic", 1, slip * stiffness)
        ops.uniaxialMaterial("Elastic", 2, 1e9 if arm else slip * stiffness)
        plates = [0.0] if not arm else [arm, -arm]
        parts = 4
        total = (count - 1) * parts
        step = spacing / parts
        for i in range(total + 1):
            ops.node(i, i * step, 0.0)
            for k, off in enumerate(plates, 1):
                ops.node(10_000 * k + i, i * step, off)
        inertia = h * b**3 / 12 if arm else b * h**3 / 12
        for i in range(total):
            ops.element("elasticBeamColumn", i + 1, i, i + 1, b * h, 1e3 * wood, inertia, 1)
            for k in range(1, len(plates) + 1):
                ops.element("elasticBeamColumn", 10_000 * k + i, 10_000 * k + i, 10_000 * k + i + 1, own[0], 1e3 * metal, own[1], 1)
        springs = []
        for n in range(count):
            for k, off in enumerate(plates, 1):
                i, tag = n * parts, 1_000_000 * k + n
                ops.node(tag, i * step, off)
                if arm:
                    ops.element("elasticBeamColumn", tag, i, tag, 1e6, 1e7, 1e7, 1)
                else:
                    ops.equalDOF(i, tag, 1, 2, 3)
                ops.element("zeroLength", 3_000_000 + tag, tag, 10_000 * k + i, "-mat", 1, 2, "-dir", 1, 2)
                springs.append(3_000_000 + tag)
        ops.fix(0, 1, 1, 1)
        ops.timeSeries("Constant", 1)
        ops.pattern("Plain", 1, 1)
        if arm:
            ops.load(total, 0.0, 0.0, aside)
        else:
            ops.load(total, pull, shear, moment)
        for command in (("system", "UmfPack"), ("numberer", "RCM"), ("constraints", "Transformation"),
                        ("integrator", "LoadControl", 1.0), ("algorithm", "Linear"), ("analysis", "Static")):
            getattr(ops, command[0])(*command[1:])
        assert ops.analyze(1) == 0
        return numpy.array([ops.eleResponse(tag, "force")[:2] for tag in springs])

    own = (2 * t * high, 2 * t * high**3 / 12)
    alone = (t * high, high * t**3 / 12)
    plane = solved(0.0, own, 2.0) / 2
    faces = solved((b + t) / 2, alone, 1.0)
    # At the loaded end.
    return [float(numpy.hypot(*plane[-1])), float(abs(faces[-1][0]))]


def rows_of_screws():
    rows = []
    for given in ROWS:
        found = {}
        for name, forces in {
            "along": (1000.0, 0.0, 0.0, 0.0), "shear": (0.0, 1000.0, 0.0, 0.0), "moment": (0.0, 0.0, 1e5, 0.0),
            "aside": (0.0, 0.0, 0.0, 1e5),
        }.items():
            plane, faces = row(given, forces)
            found[name] = faces if name == "aside" else plane
        rows.append({"given": given, **found})
    return rows


def main():
    groups = {"layered": layered(), "rims": rims(), "laps": laps(), "rows": rows_of_screws()}
    versions = {"numpy": numpy.__version__, "scipy": scipy.__version__, "skfem": skfem.__version__, "opensees": ops.version()}
    lines = [f'"versions": {json.dumps(versions)}']
    for name, found in groups.items():
        inner = ",\n".join(f"  {json.dumps(one)}" for one in found)
        lines.append(f'"{name}": [\n{inner}\n]')
    path = pathlib.Path(__file__).parent.parent / "held_values.json"
    path.write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8")


if __name__ == "__main__":
    main()
