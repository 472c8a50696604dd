"""How far strings fall while the others come up, by the frames of `space_joints.py`, solved by OpenSees.

Nothing of Stringloft takes part but the measures in `space_joints_frames.json`. Each string in turn pulls with 1 N, and what
that moves at the ends of all others is the work that their own newton does on it. The strings come up from the longest to the
shortest, once each, and those that are up keep what is wound on. Each is taken to be 5 mm longer at pitch than slack; the
board itself does not give here. Needs Python 3 with NumPy and openseespy; writes `tests/published/space_giving.json`:

    python tests/published/scripts/space_giving.py
"""

import json
import math
import pathlib

import numpy
import openseespy.opensees as ops
import space_joints as frame
import space_values as plain

HERE = pathlib.Path(__file__).parent
NAMES = ["floor-36", "travel-26", "floor-36, closed", "wire-22, open"]
STRETCH = 5e-3
# So that strings without a pull still have a direction.
NEARLY_NOTHING = 1e-9


def gives(harp):
    """What each string moves at the ends of each other, in m/N."""
    strings, plain_load = harp["strings"], ops.load
    forces, moves = [], []
    for pulled in range(len(strings)):
        hung = []
        for at, (x, y, fx, fy) in enumerate(strings):
            size = math.hypot(fx, fy) / (1.0 if at == pulled else NEARLY_NOTHING)
            hung.append([x, y, fx / size, fy / size])
        loads = {}

        def load(node, *parts):
            loads[node] = loads.get(node, 0.0) + numpy.array(parts)
            plain_load(node, *parts)

        ops.load = load
        frame.solve({**harp, "strings": hung})
        ops.load = plain_load
        forces.append(loads)
        moves.append({node: numpy.array(ops.nodeDisp(node)) for node in loads})
    return numpy.array([[sum(float(force @ move[node]) for node, force in load.items()) for move in moves] for load in forces])


def falls(matrix, tensions):
    """What each string has left of its tension when all have come up once, the longest first."""
    soft = matrix + numpy.diag(STRETCH / tensions)
    left = numpy.zeros(len(tensions))
    for up in reversed(range(len(tensions))):
        before = list(range(up + 1, len(tensions)))
        if before:
            left[before] -= numpy.linalg.solve(soft[numpy.ix_(before, before)], matrix[before, up] * tensions[up])
        left[up] = tensions[up]
    return left


def main():
    harps = {harp["name"]: harp for harp in json.loads((HERE / "space_joints_frames.json").read_text())}
    found = []
    for name in NAMES:
        matrix = gives(harps[name])
        tensions = numpy.array([math.hypot(fx, fy) for _, _, fx, fy in harps[name]["strings"]])
        found.append({
            "name": name,
            "own": [float(of) for of in numpy.diag(matrix)],
            "next": [float(of) for of in numpy.diag(matrix, 1)],
            "of_the_first": [float(of) for of in matrix[0]],
            "left_n": [float(of) for of in falls(matrix, tensions)],
        })
    values = {"opensees": ops.version(), "harps": found}
    (HERE.parent / "space_giving.json").write_text(plain.lines(values) + "\n")


if __name__ == "__main__":
    main()
