"""Values for the checks of boards, from a general-purpose library of finite elements.

Nothing of Stringloft takes part. scikit-fem bends half of each board of `sample_boards.json` (mm, N, MPa) on triangles
of fifth degree with continuous slopes (Argyris), three times as many along as Stringloft has patches; rib and strip are
a beam along the middle line. Needs Python 3 with scikit-fem; writes `tests/published/board_values.json`:

    python tests/published/scripts/board_values.py
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
ALONG, ACROSS = 72, 6


class Board:
    def __init__(self, given):
        mm = 1e-3
        self.below = given["below_mm"] * mm
        self.strings = given["strings_mm"] * mm
        self.length = self.below + self.strings + given["above_mm"] * mm
        self.width_mm, self.thickness_mm = given["width_mm"], given["thickness_mm"]
        self.e1, self.e2, self.g = (given[key] * 1e6 for key in ("across_mpa", "along_mpa", "shear_mpa"))
        self.nu = given["poisson"]
        self.rib, self.strip = given["rib_mm"], given["strip_mm"]
        self.rib_e = given["rib_mpa"] * 1e6
        self.lifts = [(self.below + at * mm, over * mm, n) for at, over, n in given["lifts_mm_n"]]

    def between(self, pair, y):
        return 1e-3 * (pair[0] + (pair[1] - pair[0]) * (y - self.below) / self.strings)

    def half_rib(self):
        return 0.5e-3 * max(self.rib[0], self.strip[0])

    def half(self, y):
        return 0.5 * self.between(self.width_mm, y)

    def thickness(self, y):
        return self.between(self.thickness_mm, y)

    def bending(self, y):
        cube = self.thickness(y) ** 3 / 12
        locked = 1 - self.nu**2 * self.e2 / self.e1
        across, along = self.e1 * cube / locked, self.e2 * cube / locked
        return across, self.nu * along, along, self.g * cube

    def beam(self, y):
        """Rib below, board between and strip above, by the parallel-axis rule."""
        t = self.thickness(y)
        (b, h), (cap, high) = (np.array(size) * 1e-3 for size in (self.rib, self.strip))
        parts = [
            (self.rib_e * b * h, -(t + h) / 2, h),
            (self.rib_e * cap * high, (t + high) / 2, high),
            (self.e2 * max(b, cap) * t, 0 * t, 0),
        ]
        axis = sum(ea * z for ea, z, _ in parts) / sum(ea for ea, _, _ in parts)
        return sum(ea * ((z - axis) ** 2 + own**2 / 12) for ea, z, own in parts)

    def load(self, y):
        """Newtons for each metre of the middle line."""
        total = np.zeros_like(y)
        for at, over, n in self.lifts:
            total += np.where(np.abs(y - at) <= over / 2, n / over, 0)
        return total


def bends(board, with_rib, clamped, ends_alone=False):
    x, y = np.linspace(0, 1, ACROSS + 1), np.linspace(0, board.length, ALONG + 1)
    if ends_alone:
        near = board.half_rib() * np.array([0.2, 0.4, 0.6, 0.8, 1.2, 1.4, 1.6, 2.0, 2.4])
        x = np.sort(np.append(x, [x[1] / 2, x[1] / 4, x[1] / 8, x[1] / 16]))
        inner = y[(y > 1.1 * near[-1]) & (y < board.length - 1.1 * near[-1])]
        y = np.sort(np.concatenate([[0, board.length], inner, near, board.length - near]))
    mesh = MeshTri.init_tensor(x, y)
    points = mesh.p.copy()
    points[0] *= board.half(points[1])
    mesh = MeshTri(points, mesh.t)
    element = ElementTriArgyris()
    basis = Basis(mesh, element, intorder=10)

    @BilinearForm
    def sheet(u, v, w):
        across, both, along, twist = board.bending(w.x[1])
        a, b = dd(u), dd(v)
        return (
            across * a[0][0] * b[0][0]
            + both * (a[0][0] * b[1][1] + a[1][1] * b[0][0])
            + along * a[1][1] * b[1][1]
            + 4 * twist * a[0][1] * b[0][1]
        )

    @BilinearForm
    def rib(u, v, w):
        return 0.5 * board.beam(w.x[1]) * dd(u)[1][1] * dd(v)[1][1]

    @BilinearForm
    def wall(u, v, w):
        return WALL * u * v

    @BilinearForm
    def firm(u, v, w):
        return FIRM * dot(grad(u), w.n) * dot(grad(v), w.n)

    @LinearForm
    def lift(v, w):
        return 0.5 * board.load(w.x[1]) * v

    def facets(where):
        return FacetBasis(mesh, element, facets=mesh.facets_satisfying(where), intorder=12)

    near = 1e-9
    middle = facets(lambda p: np.abs(p[0]) < near)
    side = facets(lambda p: np.abs(p[0] - board.half(p[1])) < near)
    ends = [facets(lambda p, at=at: np.abs(p[1] - at) < near) for at in (0.0, board.length)]
    matrix = sheet.assemble(basis) + firm.assemble(middle)
    if with_rib:
        matrix = matrix + rib.assemble(middle)
    for edge in [side, *ends]:
        matrix = matrix + wall.assemble(edge)
        if clamped:
            matrix = matrix + firm.assemble(edge)
    # The load steps from string to string, so that it is summed in small steps.
    fine = FacetBasis(mesh, element, facets=middle.find, intorder=30)
    answer = solve(matrix, lift.assemble(fine))

    def at(place, across):
        inside = np.array([[(1 - 1e-9) * across + 1e-9], [place]])
        cells = mesh.element_finder()(*inside)
        local = mesh.mapping().invF(inside[:, :, None], tind=cells)
        value = np.zeros(3)
        for function in range(basis.element_dofs.shape[0]):
            field = element.gbasis(mesh.mapping(), local, function, tind=cells)[0]
            parts = [field.value, field.hess[0][0], field.hess[1][1]]
            value += answer[basis.element_dofs[function, cells[0]]] * np.array([part.item() for part in parts])
        return value

    if ends_alone:
        return [shear(board, at, end) for end in (0.0, board.length)]
    rows = []
    for share in range(1, 10):
        place = board.below + board.strings * share / 10
        across, both, along, _ = board.bending(place)
        rise, x, y = at(place, 0.0)
        _, side_x, side_y = at(place, board.half(place) * (1 - 1e-7))
        rows.append(
            [
                round(1e3 * place, 3),
                round(1e3 * rise, 5),
                round(-(across * x + both * y), 4),
                round(-(across * side_x + both * side_y), 4),
                round(-board.beam(place) * y, 4) if with_rib else 0.0,
            ]
        )
    return rows


def shear(board, at, end):
    """Shear of the rib half its breadth from an end: the slope there of a cubic through its moments."""
    inwards = board.half_rib() if end == 0 else -board.half_rib()
    shares = np.linspace(0.81, 1.19, 9)
    moments = [-board.beam(end + inwards * share) * at(end + inwards * share, 0.0)[2] for share in shares]
    return round(float(np.polyfit(shares - 1, moments, 3)[-2] / inwards), 2)


def main():
    boards = json.loads((HERE / "sample_boards.json").read_text())
    solved = []
    for given in boards:
        for with_rib in (False, True):
            for clamped in (True, False):
                rows = bends(Board(given), with_rib, clamped)
                ends = bends(Board(given), with_rib, clamped, ends_alone=True) if with_rib else []
                case = {"name": given["name"], "rib": with_rib, "clamped": clamped, "places": rows}
                solved.append({**case, "shear_near_ends": ends})
    values = {"versions": {"scikit_fem": importlib.metadata.version("scikit-fem")}, "boards": solved}
    text = json.dumps(values, indent=1)
    text = re.sub(r"\[\s+([-\d.e]+(?:,\s+[-\d.e]+)*)\s+\]", lambda m: "[" + re.sub(r"\s+", " ", m[1]) + "]", text)
    (HERE.parent / "board_values.json").write_text(text + "\n")


if __name__ == "__main__":
    main()
