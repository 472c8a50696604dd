"""Values for the checks of boards whose thickness is given from place to place, from a general-purpose library of finite
elements.

Nothing of Stringloft takes part. scikit-fem bends half of each board of `mapped_boards.json` (mm, N, MPa), which nobody
built, on triangles of fifth degree with continuous slopes (Argyris); lines of the mesh lie where the thickness turns. The
stress is the greatest at the surface from middle to side, among 400 places. Needs Python 3 with scikit-fem; writes
`tests/published/mapped_values.json`:

    python tests/published/scripts/mapped_values.py
"""

import importlib.metadata
import json
import pathlib
import re

import numpy as np
from skfem import Basis, BilinearForm, ElementTriArgyris, FacetBasis, LinearForm, MeshTri, solve
from skfem.helpers import dd, dot, grad

HERE = pathlib.Path(__file__).parent
# As stiff as a wall: N/m for each metre of edge, and N·m for each radian and metre.
WALL = 1e13
FIRM = 1e9
ALONG, ACROSS, SAMPLES = 36, 8, 400


class Board:
    def __init__(self, given):
        mm = 1e-3
        self.length = given["length_mm"] * mm
        self.width = np.array(given["width_mm"]) * mm
        self.clamped = given["edges"] == "clamped"
        self.e1, self.e2, self.g = (given[key] * 1e6 for key in ("across_mpa", "along_mpa", "shear_mpa"))
        self.nu = given["poisson"]
        rows = np.array(given["rows_percent_mm"])
        self.places, self.rows = rows[:, 0] / 100 * self.length, rows[:, 1:] * mm
        self.rib, self.strip = (np.array(given[key]) * mm for key in ("rib_mm", "strip_mm"))
        self.rib_e = given["rib_mpa"] * 1e6
        self.line = given["line_n_per_m"]

    def half(self, y):
        return 0.5 * (self.width[0] + (self.width[1] - self.width[0]) * y / self.length)

    def thickness(self, x, y):
        middle, halfway, side = (np.interp(y, self.places, self.rows[:, at]) for at in range(3))
        share = np.abs(x) / self.half(y)
        inner = middle + 2 * share * (halfway - middle)
        return np.where(share < 0.5, inner, halfway + (2 * share - 1) * (side - halfway))

    def bending(self, x, y):
        cube = self.thickness(x, y) ** 3 / 12
        locked = 1 - self.nu**2 * self.e2 / self.e1
        across, along = self.e1 * cube / locked, self.e2 * cube / locked
        return across, self.nu * along, along, self.g * cube

    def beam(self, y):
        """Rib, strip and the board between them, by the parallel-axis rule."""
        t = self.thickness(0 * y, y)
        (b, h), (cap, high) = self.rib, self.strip
        parts = [
            (self.rib_e * b * h, -(t + h) / 2, h),
            (self.rib_e * cap * high, (t + high) / 2, high),
            (self.e2 * max(b, cap) * t, 0 * t, 0),
        ]
        whole = sum(ea for ea, _, _ in parts)
        axis = sum(ea * z for ea, z, _ in parts) / np.where(whole > 0, whole, 1)
        return sum(ea * ((z - axis) ** 2 + own**2 / 12) for ea, z, own in parts)


def bends(board):
    x = np.linspace(0, 1, ACROSS + 1)
    y = np.unique(np.round(np.concatenate([np.linspace(0, board.length, ALONG + 1), board.places]), 9))
    mesh = MeshTri.init_tensor(x, y)
    points = mesh.p.copy()
    points[0] *= board.half(points[1])
    mesh = MeshTri(points, mesh.t)
    element = ElementTriArgyris()
    basis = Basis(mesh, element, intorder=12)

    @BilinearForm
    def sheet(u, v, w):
        across, both, along, twist = board.bending(*w.x)
        a, b = dd(u), dd(v)
        return (
            across * a[0][0] * b[0][0]
            + both * (a[0][0] * b[1][1] + a[1][1] * b[0][0])
            + along * a[1][1] * b[1][1]
            + 4 * twist * a[0][1] * b[0][1]
        )

    rib = BilinearForm(lambda u, v, w: 0.5 * board.beam(w.x[1]) * dd(u)[1][1] * dd(v)[1][1])
    wall = BilinearForm(lambda u, v, w: WALL * u * v)
    firm = BilinearForm(lambda u, v, w: FIRM * dot(grad(u), w.n) * dot(grad(v), w.n))
    lift = LinearForm(lambda v, w: 0.5 * board.line * v)

    def facets(where):
        return FacetBasis(mesh, element, facets=mesh.facets_satisfying(where), intorder=12)

    near = 1e-9
    middle = facets(lambda p: np.abs(p[0]) < near)
    side = facets(lambda p: np.abs(p[0] - board.half(p[1])) < near)
    ends = [facets(lambda p, at=at: np.abs(p[1] - at) < near) for at in (0.0, board.length)]
    matrix = sheet.assemble(basis) + firm.assemble(middle) + rib.assemble(middle)
    for edge in [side, *ends]:
        matrix = matrix + wall.assemble(edge)
        if board.clamped:
            matrix = matrix + firm.assemble(edge)
    answer = solve(matrix, lift.assemble(middle))

    def at(places):
        """Rise, and its bends across and along."""
        cells = mesh.element_finder()(*places)
        local = mesh.mapping().invF(places[:, :, None], tind=cells)
        value = np.zeros((3, places.shape[1]))
        for function in range(basis.element_dofs.shape[0]):
            field = element.gbasis(mesh.mapping(), local, function, tind=cells)[0]
            parts = np.array([field.value, field.hess[0][0], field.hess[1][1]]).reshape(3, -1)
            value += answer[basis.element_dofs[function, cells]] * parts
        return value

    rows = []
    for of in range(1, 10):
        # Off the lines of the mesh, on which the bends of two cells meet.
        y = board.length * of / 10 + 1e-6
        x = board.half(y) * np.clip(np.linspace(0, 1, SAMPLES + 1), 1e-7, 1 - 1e-7)
        rise, one, other = at(np.array([x, y + 0 * x]))
        across, both, _, _ = board.bending(x, y + 0 * x)
        moments = -(across * one + both * other)
        stress = 6 * np.abs(moments) / board.thickness(x, y + 0 * x) ** 2
        rows.append(
            [
                round(1e3 * y, 3),
                round(1e3 * rise[0], 5),
                round(moments[0], 4),
                round(moments[-1], 4),
                round(float(-board.beam(np.array(y)) * other[0]), 4),
                round(1e-6 * stress.max(), 5),
            ]
        )
    return rows


def main():
    boards = json.loads((HERE / "mapped_boards.json").read_text())
    solved = [{"name": given["name"], "places": bends(Board(given))} for given in boards]
    values = {"versions": {"scikit_fem": importlib.metadata.version("scikit-fem")}, "boards": solved}
    text = json.dumps(values, indent=1)
    text = re.sub(r"\[\s+([-\d.e]+(?:,\s+[-\d.e]+)*)\s+\]", lambda m: "[" + re.sub(r"\s+", " ", m[1]) + "]", text)
    (HERE.parent / "mapped_values.json").write_text(text + "\n")


if __name__ == "__main__":
    main()
