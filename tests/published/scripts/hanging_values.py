"""Values for the checks of boards that hang, bow and have bars, from a general-purpose library of finite elements.

Nothing of Stringloft takes part. scikit-fem bends half of each board of `hanging_boards.json` (mm, N, MPa) on triangles of
fifth degree with continuous slopes (Argyris) and stretches it in its plane on triangles of second degree, with displacements
and not with a stress function; both together after von Karman, by Newton's way with the whole tangent. Bars lie on lines of
the mesh. A push along the board is worked out as an eigenvalue. Needs Python 3 with scikit-fem and SciPy; writes
`tests/published/hanging_values.json`:

    python tests/published/scripts/hanging_values.py
"""

import importlib.metadata
import json
import pathlib
import re

import numpy as np
import scipy.sparse as sparse
from scipy.sparse.linalg import eigsh, spsolve
from skfem import (
    Basis,
    BilinearForm,
    ElementTriArgyris,
    ElementTriP2,
    ElementVector,
    FacetBasis,
    InteriorFacetBasis,
    LinearForm,
    MeshTri,
)
from skfem.helpers import dd, dot, grad

HERE = pathlib.Path(__file__).parent
WALL, FIRM = 1e13, 1e9
ALONG, ACROSS = 36, 6


class Board:
    def __init__(self, given):
        mm = 1e-3
        self.name, self.length = given["name"], given["length_mm"] * mm
        self.width, self.t = (np.array(given[key]) * mm for key in ("width_mm", "thickness_mm"))
        self.side = given["side_ratio"]
        self.e1, self.e2, self.g = (given[key] * 1e6 for key in ("across_mpa", "along_mpa", "shear_mpa"))
        self.nu = given["poisson"]
        self.rib_e = given["rib_mpa"] * 1e6
        self.rib, self.strip = (np.array(given[key]) * mm for key in ("rib_mm", "strip_mm"))
        self.crosses = [at * mm for at in given["crosses_mm"]]
        self.cross, self.pair = (np.array(given[key]) * mm for key in ("cross_mm", "pair_mm"))
        self.pairs, self.bar_e = given["pair_shares"], given["bars_mpa"] * 1e6
        self.edges, self.sides_n, self.held = given["edges"], given["sides_n"], given["held"]
        self.line, self.times = given["line_n_per_m"], given["times"]
        self.shortened = given["shortened"]

    def along(self, pair, y):
        return pair[0] + (pair[1] - pair[0]) * y / self.length

    def half(self, y):
        return 0.5 * self.along(self.width, y)

    def thickness(self, x, y):
        return self.along(self.t, y) * (1 - np.abs(x) / self.half(y) * (1 - self.side))

    def bending(self, x, y):
        cube = self.thickness(x, y) ** 3 / 12
        locked = 1 - self.nu**2 * self.e2 / self.e1
        across, along = self.e1 * cube / locked, self.e2 * cube / locked
        return across, self.nu * along, along, self.g * cube

    def beam(self, below, above, modulus, board, x, y):
        """Bar below, board between and strip above, by the parallel-axis rule."""
        t = self.thickness(x, y)
        (b, h), (cap, high) = below, above
        parts = [
            (modulus * b * h, -(t + h) / 2, h),
            (modulus * cap * high, (t + high) / 2, high),
            (board * max(b, cap) * t, 0 * t, 0),
        ]
        whole = sum(ea for ea, _, _ in parts)
        axis = sum(ea * z for ea, z, _ in parts) / np.where(whole > 0, whole, 1)
        return sum(ea * ((z - axis) ** 2 + own**2 / 12) for ea, z, own in parts)


def lines(board):
    """Lines of the mesh in x (0 to 1) and y, with one for each bar."""
    x = sorted(set(np.round(np.linspace(0, 1, ACROSS + 1), 9)) | set(np.round(board.pairs, 9)))
    y = np.linspace(0, board.length, ALONG + 1)
    for at in board.crosses:
        y[np.argmin(np.abs(y - at))] = at
    return np.array(x), y


def solve(board):
    x, y = lines(board)
    mesh = MeshTri.init_tensor(x, y)
    points = mesh.p.copy()
    points[0] *= board.half(points[1])
    mesh = MeshTri(points, mesh.t)
    bent = Basis(mesh, ElementTriArgyris(), intorder=10)
    flat = Basis(mesh, ElementVector(ElementTriP2()), intorder=10)
    near = 1e-9

    def facets(element, where, order=12):
        return FacetBasis(mesh, element, facets=mesh.facets_satisfying(where), intorder=order)

    def on(share):
        return facets(ElementTriArgyris(), lambda p: np.abs(p[0] - share * board.half(p[1])) < near)

    def at_y(place):
        return facets(ElementTriArgyris(), lambda p: np.abs(p[1] - place) < near)

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

    @BilinearForm
    def wall(u, v, w):
        return WALL * u * v

    def turns(held):
        return BilinearForm(lambda u, v, w: held * dot(grad(u), w.n) * dot(grad(v), w.n))

    middle, side = on(0.0), on(1.0)
    ends = [at_y(0.0), at_y(board.length)]
    none = np.zeros(2)
    rib = BilinearForm(
        lambda u, v, w: 0.5
        * board.beam(board.rib, board.strip, board.rib_e, board.e2, *w.x)
        * dd(u)[1][1]
        * dd(v)[1][1]
    )
    pair = BilinearForm(
        lambda u, v, w: 0.5 * board.beam(board.pair, none, board.bar_e, board.e2, *w.x) * dd(u)[1][1] * dd(v)[1][1]
    )
    cross = BilinearForm(
        lambda u, v, w: 0.5 * board.beam(board.cross, none, board.bar_e, board.e1, *w.x) * dd(u)[0][0] * dd(v)[0][0]
    )
    bare = sheet.assemble(bent) + rib.assemble(middle)
    # Facets inside belong to two triangles and count from each.
    for share in board.pairs:
        for facing in (0, 1):
            found = mesh.facets_satisfying(lambda p: np.abs(p[0] - share * board.half(p[1])) < near)
            inside = inside_of(mesh, found, facing)
            bare = bare + pair.assemble(inside)
    for place in board.crosses:
        for facing in (0, 1):
            found = mesh.facets_satisfying(lambda p: np.abs(p[1] - place) < near)
            bare = bare + cross.assemble(inside_of(mesh, found, facing))
    edges = bare
    for edge in [side, *ends]:
        edges = edges + wall.assemble(edge)
    if board.edges == "springs":
        edges = edges + turns(board.sides_n).assemble(side)
    elif board.edges == "clamped":
        for edge in [side, *ends]:
            edges = edges + turns(FIRM).assemble(edge)
    alike = edges + turns(FIRM).assemble(middle)
    odd = edges + wall.assemble(middle)

    load = LinearForm(lambda v, w: 0.5 * board.line * v).assemble(middle)
    rises = []
    fixed = np.zeros(flat.N, dtype=bool)
    sums = flat.doflocs
    at_side = np.abs(sums[0] - board.half(sums[1])) < near
    at_end = (np.abs(sums[1]) < near) | (np.abs(sums[1] - board.length) < near)
    is_x = np.zeros(flat.N, dtype=bool)
    is_x[flat.get_dofs(elements=True).all("u^1")] = True
    fixed[(np.abs(sums[0]) < near) & is_x] = True
    if board.held == "any way":
        fixed[at_side | at_end] = True
    elif board.held == "along":
        # Sides and ends slide square to themselves alone.
        fixed[at_side & ~is_x] = True
        fixed[at_end & is_x] = True
    else:
        fixed[np.flatnonzero((np.abs(sums[0]) < near) & (np.abs(sums[1]) < near) & ~is_x)[:1]] = True
    free = np.flatnonzero(~fixed)
    # A patch is so stiff in its plane.
    locked = 1 - board.nu**2 * board.e2 / board.e1

    def pulls(exx, eyy, gxy, w):
        t = board.thickness(*w.x)
        nx = t / locked * (board.e1 * exx + board.nu * board.e2 * eyy)
        ny = t / locked * (board.e2 * eyy + board.nu * board.e2 * exx)
        return nx, ny, board.g * t * gxy

    def strain(u):
        g = grad(u)
        return g[0][0], g[1][1], g[0][1] + g[1][0]

    def bow(w):
        g = grad(w)
        return 0.5 * g[0] ** 2, 0.5 * g[1] ** 2, g[0] * g[1]

    def bow_by(w, v):
        g, h = grad(w), grad(v)
        return g[0] * h[0], g[1] * h[1], g[0] * h[1] + g[1] * h[0]

    def inner(n, e):
        return n[0] * e[0] + n[1] * e[1] + n[2] * e[2]

    now_w, now_u = np.zeros(bent.N), np.zeros(flat.N)
    for times in board.times:
        for _ in range(30):
            w0, u0 = bent.interpolate(now_w), flat.interpolate(now_u)

            def whole(w):
                e, b = strain(w.u0), bow(w.w0)
                return pulls(e[0] + b[0], e[1] + b[1], e[2] + b[2], w)

            kuu = BilinearForm(lambda u, v, w: inner(pulls(*strain(u), w), strain(v))).assemble(flat)
            kuw = BilinearForm(
                lambda u, v, w: inner(pulls(*bow_by(w.w0, u), w), strain(v))
            ).assemble(bent, flat, w0=w0)
            kww = BilinearForm(
                lambda u, v, w: inner(pulls(*bow_by(w.w0, u), w), bow_by(w.w0, v)) + inner(whole(w), bow_by(u, v))
            ).assemble(bent, w0=w0, u0=u0)
            fu = LinearForm(lambda v, w: inner(whole(w), strain(v))).assemble(flat, w0=w0, u0=u0)
            fw = LinearForm(lambda v, w: inner(whole(w), bow_by(w.w0, v))).assemble(bent, w0=w0, u0=u0)
            left = np.concatenate([times * load - alike @ now_w - fw, -fu[free]])
            tangent = sparse.bmat([[alike + kww, kuw.T[:, free]], [kuw[free], kuu[free][:, free]]]).tocsc()
            step = spsolve(tangent, left)
            now_w += step[: bent.N]
            now_u[free] += step[bent.N :]
            if np.abs(step[: bent.N]).max() < 1e-9:
                break
        inside = np.array([[near], [0.5 * board.length]])
        rises.append([times, round(float(1e3 * probe(bent, mesh, now_w, inside)), 5)])

    # Bowing: nothing but the push counts.
    push = BilinearForm(
        lambda u, v, w: board.e2 * board.thickness(*w.x) * board.shortened * grad(u)[1] * grad(v)[1]
    ).assemble(bent)
    area = board.rib[0] * board.rib[1] + board.strip[0] * board.strip[1]
    push = push + BilinearForm(
        lambda u, v, w: 0.5 * board.rib_e * area * board.shortened * grad(u)[1] * grad(v)[1]
    ).assemble(middle)
    bar = board.bar_e * board.pair[0] * board.pair[1] * board.shortened
    for share in board.pairs:
        found = mesh.facets_satisfying(lambda p: np.abs(p[0] - share * board.half(p[1])) < near)
        for facing in (0, 1):
            pushed = BilinearForm(lambda u, v, w: 0.5 * bar * grad(u)[1] * grad(v)[1])
            push = push + pushed.assemble(inside_of(mesh, found, facing))
    least = []
    for matrix in (alike, odd):
        turned = eigsh(push.tocsc(), k=1, M=matrix.tocsc(), which="LA", return_eigenvectors=False)
        least.append(1 / float(turned[0]))
    return {"name": board.name, "rises_mm": rises, "bows_at": [round(of, 5) for of in least]}


def inside_of(mesh, found, facing):
    return InteriorFacetBasis(mesh, ElementTriArgyris(), facets=found, side=facing, intorder=12)


def probe(basis, mesh, answer, place):
    cells = mesh.element_finder()(*place)
    local = mesh.mapping().invF(place[:, :, None], tind=cells)
    value = 0.0
    for function in range(basis.element_dofs.shape[0]):
        field = basis.elem.gbasis(mesh.mapping(), local, function, tind=cells)[0]
        value += answer[basis.element_dofs[function, cells[0]]] * field.value.item()
    return value


def main():
    boards = json.loads((HERE / "hanging_boards.json").read_text())
    solved = [solve(Board(given)) for given in boards]
    values = {"versions": {"scikit_fem": importlib.metadata.version("scikit-fem")}, "boards": solved}
    text = json.dumps(values, indent=1)
    text = re.sub(r"\[\s+([-\d.e]+(?:,\s+[-\d.e]+)*)\s+\]", lambda m: "[" + re.sub(r"\s+", " ", m[1]) + "]", text)
    (HERE.parent / "hanging_values.json").write_text(text + "\n")


if __name__ == "__main__":
    main()
