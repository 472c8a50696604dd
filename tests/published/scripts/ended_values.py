"""Values for the check of what the glue at the end of a bar gives up as it opens.

Nothing of Stringloft takes part. Plane finite elements of scikit-fem: a board lies on a block that does not give, glued to it,
and goes on over a bar that is glued to its same face and begins where the block ends; the far end of bar and board turns by
1 rad, without a force along them. How much moment that takes, with the glue whole and with half a thickness of the board of it
open, says what opening frees on the average, for each mm of breadth. Needs Python 3 with NumPy, SciPy and scikit-fem; writes
`tests/published/ended_values.json`:

    python tests/published/scripts/ended_values.py
"""

import json
import pathlib

import numpy
import scipy
import scipy.sparse
import scipy.sparse.linalg
import skfem
from skfem import Basis, BilinearForm, ElementQuad2, ElementVector, MeshQuad

LENGTH, BLOCK = 200.0, 80.0
# Thickness of the board and height of the bar, mm; moduli along, through and in shear, GPa, of the board and of the bar.
# Boards along which a bar runs across the grain, whose wood rolls little and much; bars across that run with its grain; one
# material that is alike every way.
CASES = [
    (10.0, 12.0, (0.93, 0.51, 0.036), (12.6, 1.8, 1.5)),
    (4.0, 12.0, (0.93, 0.51, 0.036), (12.6, 1.8, 1.5)),
    (17.0, 18.0, (0.93, 0.51, 0.074), (12.6, 1.8, 1.5)),
    (9.0, 10.0, (1.1, 0.52, 0.13), (12.6, 1.8, 1.5)),
    (5.0, 12.0, (11.9, 0.51, 0.73), (11.9, 0.93, 0.76)),
    (3.0, 8.0, (9.8, 0.58, 1.21), (9.8, 1.25, 1.21)),
    (10.0, 12.0, (10.0, 10.0, 10.0 / 2.6), (10.0, 10.0, 10.0 / 2.6)),
]


def plane(e1, e2, g, nu=0.3):
    return 1e3 * numpy.linalg.inv(numpy.array([[1 / e1, -nu / e1, 0], [-nu / e1, 1 / e2, 0], [0, 0, 1 / g]]))


def takes(case, open_mm):
    """The moment, N·mm for each mm of breadth, with the glue open so far from the end."""
    t, h, of_board, of_bar = case
    fine = numpy.geomspace(t / 40, 2.5 * t, 18)
    x = [-BLOCK, -BLOCK / 2, *-fine, 0.0, *fine, *(open_mm + fine), *(open_mm - fine[fine < open_mm]), open_mm]
    x = numpy.unique(numpy.round([*x, *numpy.geomspace(3 * t + open_mm, LENGTH, 14)], 6))
    x = x[numpy.append(True, numpy.diff(x) > t / 90) | (x == 0.0) | (x == open_mm) | (x == LENGTH)]
    z = numpy.unique(numpy.round([*numpy.linspace(-t, 0, 13), *numpy.geomspace(t / 40, h, 14)], 6))
    mesh = MeshQuad.init_tensor(x, z)
    middle = mesh.p[:, mesh.t].mean(axis=1)
    mesh = mesh.remove_elements(numpy.nonzero((middle[1] > 0) & (middle[0] < 0))[0])
    points, cells = mesh.p, mesh.t.copy()
    # Nodes of the bar along the open glue are its own.
    on = numpy.nonzero((abs(points[1]) < 1e-9) & (points[0] > -1e-9) & (points[0] < open_mm - 1e-9))[0]
    twin = {node: points.shape[1] + at for at, node in enumerate(on)}
    above = numpy.nonzero(points[:, cells].mean(axis=1)[1] > 0)[0]
    for cell in above:
        cells[:, cell] = [twin.get(node, node) for node in cells[:, cell]]
    mesh = MeshQuad(numpy.hstack([points, points[:, on]]), cells)
    basis = Basis(mesh, ElementVector(ElementQuad2()))
    in_board = mesh.p[:, mesh.t].mean(axis=1)[1] < 0
    stiff = numpy.where(in_board[None, None, :], plane(*of_board)[:, :, None], plane(*of_bar)[:, :, None])[..., None]

    @BilinearForm
    def stretching(u, v, w):
        one = [u.grad[0, 0], u.grad[1, 1], u.grad[0, 1] + u.grad[1, 0]]
        other = [v.grad[0, 0], v.grad[1, 1], v.grad[0, 1] + v.grad[1, 0]]
        return sum(stiff[i, j] * one[j] * other[i] for i in range(3) for j in range(3))

    matrix = stretching.assemble(basis)
    at = basis.doflocs
    along = numpy.zeros(basis.N, bool)
    along[basis.get_dofs(elements=True).all("u^1")] = True
    # The corner itself belongs to the bar.
    held = (at[0] < -1e-9) & (abs(at[1]) < 1e-9)
    end = (abs(at[0] - LENGTH) < 1e-9) & along
    free = numpy.nonzero(~(held | end))[0]
    way = scipy.sparse.lil_matrix((basis.N, len(free) + 1))
    way[free, numpy.arange(len(free))] = 1
    way[numpy.nonzero(end)[0], len(free)] = 1
    way = way.tocsc()
    turned = numpy.where(end, at[1], 0.0)
    moved = way @ scipy.sparse.linalg.spsolve((way.T @ matrix @ way).tocsc(), -way.T @ (matrix @ turned)) + turned
    return float(moved @ (matrix @ moved))


def main():
    rows = []
    for case in CASES:
        whole, opened = takes(case, 0.0), takes(case, 0.5 * case[0])
        freed = 0.5 * (whole - opened) / (0.5 * case[0])
        rows.append({"given": case, "moment": round(whole, 3), "freed": round(freed, 4)})
    versions = {"numpy": numpy.__version__, "scipy": scipy.__version__, "skfem": skfem.__version__}
    inner = ",\n".join(f"  {json.dumps(row)}" for row in rows)
    text = f'{{\n"versions": {json.dumps(versions)},\n"length_mm": {LENGTH},\n"ends": [\n{inner}\n]\n}}\n'
    (pathlib.Path(__file__).parent.parent / "ended_values.json").write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
