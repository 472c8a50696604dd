"""The frames of harps as beams in space, solved by OpenSees, for the check of the program's own solver.

Nothing of Stringloft takes part but the measures in `space_frames.json`: the middle line of the neck with its sections,
the strings, pillar, board, and moduli. From these this script builds its own frame, by the rules of the page "Loads on
the frame": bars with bending both ways, shear and twist between all places where something hangs; strings as forces
with their moments; a soundbox of twelve bars, 0.6 times as deep as wide with walls of a fiftieth, half of its depth
behind the board and in the plane of the strings. Needs Python 3 with openseespy; writes
`tests/published/space_values.json`:

    python tests/published/scripts/space_values.py
"""

import json
import math
import pathlib

import openseespy.opensees as ops

HERE = pathlib.Path(__file__).parent
BOX_BARS = 12


def rectangle(b, h):
    """Area, bending over the depth and over the breadth, and torsion by its series; b across, h in the plane."""
    long, short = max(b, h), min(b, h)
    series = sum(math.tanh(n * math.pi * long / (2 * short)) / n**5 for n in range(1, 200, 2))
    torsion = long * short**3 / 3 * (1 - 192 * short / (math.pi**5 * long) * series)
    return b * h, b * h**3 / 12, h * b**3 / 12, torsion, 5 / 6 * b * h, 5 / 6 * b * h


def tube(b):
    """The same of a closed tube whose walls are a fiftieth of its width, by the rules of thin walls."""
    h, t = 0.6 * b, b / 50
    bends = lambda b, h: 2 * b * t * (h / 2) ** 2 + 2 * t * h**3 / 12
    around = 2 * (b + h) / t
    return 2 * t * (b + h), bends(b, h), bends(h, b), 4 * (b * h) ** 2 / around, 2 * h * t, 2 * b * t


def nearest(axis, x, y):
    """Piece and share of the nearest place of the middle line; of equals the first."""
    best = None
    for k, (a, b) in enumerate(zip(axis, axis[1:])):
        wx, wy = b[0] - a[0], b[1] - a[1]
        share = min(max(((x - a[0]) * wx + (y - a[1]) * wy) / (wx * wx + wy * wy), 0.0), 1.0)
        gap = math.hypot(a[0] + share * wx - x, a[1] + share * wy - y)
        if best is None or gap < best[0]:
            best = (gap, k, share)
    return best[1], best[2]


def solve(harp, gives):
    """The frame with a soundbox that gives, or without one."""
    ops.wipe()
    ops.model("basic", "-ndm", 3, "-ndf", 6)
    axis, strings, e = harp["axis"], harp["strings"], harp["offset"]
    places, hung, bars = [], [], []
    found = [nearest(axis, x, y) for x, y, _, _ in strings]
    for k, (a, b) in enumerate(zip(axis, axis[1:])):
        here = sorted({share for piece, share in found if piece == k and 0 < share < 1})
        cuts = [0.0, *here, 1.0]
        between = lambda share: [p + share * (q - p) for p, q in zip(a, b)]
        for one, other in zip(cuts, cuts[1:]):
            places.append(between(one))
            bars.append([(p + q) / 2 for p, q in zip(between(one), between(other))][2:])
            hung.append([i for i, at in enumerate(found) if at == (k, one) or (one == 0 and at == (k - 1, 1.0))])
    places.append(axis[-1])
    hung.append([i for i, at in enumerate(found) if at == (len(axis) - 2, 1.0)])

    def bar(tag, nodes, moduli, section, arms=None):
        area, plane, side, torsion, shear_plane, shear_side = section
        if arms:
            # These bars take no offsets of their own, so that stiff links lead to their ends.
            ends = [10000 + 10 * tag, 10001 + 10 * tag]
            for end, node, arm in zip(ends, nodes, arms):
                ops.node(end, *(p + q for p, q in zip(ops.nodeCoord(node), arm)))
                ops.rigidLink("beam", node, end)
            nodes = ends
        # The local x-z plane holds the vector: the local z lies across the harp.
        ops.geomTransf("Linear", tag, 0.0, 0.0, 1.0)
        ops.element(
            "ElasticTimoshenkoBeam", tag, *nodes, *moduli, area, torsion, side, plane, shear_plane, shear_side, tag
        )

    first = 100
    for i, place in enumerate(places):
        ops.node(first + i, place[0], place[1], 0.0)
    for i, section in enumerate(bars):
        bar(first + i, (first + i, first + i + 1), harp["neck"], rectangle(*section))
    top, foot = first + len(bars), 5000
    ops.node(foot, *harp["foot"], 0.0)
    ops.fix(foot, 1, 1, 1, 1, 1, 1)
    width, depth = harp["pillar_section"]
    bar(foot, (top, foot), harp["pillar"], rectangle(depth, width))

    low, high = harp["board"]
    way = (high[0] - low[0], high[1] - low[1])
    length = math.hypot(*way)
    on = lambda share: (low[0] + share * way[0], low[1] + share * way[1])
    # Behind the board: away from the top of the neck.
    behind = (-way[1] / length, way[0] / length)
    if behind[0] * (places[-1][0] - low[0]) + behind[1] * (places[-1][1] - low[1]) > 0:
        behind = (-behind[0], -behind[1])
    if gives:
        first_string, span = harp["strings_on_board"]
        bass, treble = harp["width"]
        for i in range(BOX_BARS):
            ops.node(1 + i, *on(i / BOX_BARS), 0.0)
        ops.fix(1, 1, 1, 1, 1, 1, 1)
        for i in range(BOX_BARS):
            up = min(max(((i + 0.5) / BOX_BARS * length - first_string) / span, 0.0), 1.0)
            b = bass + up * (treble - bass)
            arm = [0.3 * b * behind[0], 0.3 * b * behind[1], e]
            last = i + 1 == BOX_BARS
            gap = [high[0] - places[0][0], high[1] - places[0][1], 0.0] if last else [0.0] * 3
            arms = (arm, [p + q for p, q in zip(arm, gap)])
            bar(1 + i, (1 + i, first if last else 2 + i), (6e9, 0.6e9), tube(b), arms)
    else:
        ops.fix(first, 1, 1, 1, 1, 1, 1)

    ops.timeSeries("Constant", 1)
    ops.pattern("Plain", 1, 1)

    def force(node, place, at, fx, fy):
        dx, dy = at[0] - place[0], at[1] - place[1]
        ops.load(node, fx, fy, 0.0, -e * fy, e * fx, dx * fy - dy * fx)

    for i, strung in enumerate(hung):
        for x, y, fx, fy in (strings[s] for s in strung):
            force(first + i, places[i], (x, y), fx, fy)
    if gives:
        for x, y, fx, fy in strings:
            cross = lambda a, b: a[0] * b[1] - a[1] * b[0]
            share = cross((x - low[0], y - low[1]), (fx, fy)) / cross(way, (fx, fy))
            node = min(max(round(share * BOX_BARS), 0), BOX_BARS - 1)
            force(1 + node, on(node / BOX_BARS), on(share), -fx, -fy)
    ops.system("UmfPack")
    ops.numberer("RCM")
    ops.constraints("Transformation")
    ops.integrator("LoadControl", 1.0)
    ops.algorithm("Linear")
    ops.analysis("Static")
    assert ops.analyze(1) == 0

    def ends(tag):
        """Both ends in the bar's axes, as the part beyond gives them: along, in the plane, across; twist, sideways, plane."""
        forces = ops.eleResponse(tag, "localForce")
        return [[-force for force in forces[:6]], list(forces[6:])]

    neck = [cut for i in range(len(bars)) for cut in ends(first + i)]
    pillar = ends(foot)
    box = [cut for i in range(BOX_BARS) for cut in ends(1 + i)] if gives else []
    return {"neck": neck, "pillar": pillar, "soundbox": box, "top": ops.nodeDisp(top)}


def lines(value, depth=0):
    """JSON with a list of numbers on one line."""
    inner, outer = "\n" + " " * (depth + 1), "\n" + " " * depth
    if isinstance(value, dict):
        parts = (json.dumps(key) + ": " + lines(item, depth + 1) for key, item in value.items())
        return "{" + inner + ("," + inner).join(parts) + outer + "}"
    if isinstance(value, (list, tuple)) and any(isinstance(item, (list, tuple, dict)) for item in value):
        return "[" + inner + ("," + inner).join(lines(item, depth + 1) for item in value) + outer + "]"
    if isinstance(value, float):
        return f"{value:.9g}"
    if isinstance(value, (list, tuple)):
        return "[" + ", ".join(lines(item) for item in value) + "]"
    return json.dumps(value)


def main():
    harps = json.loads((HERE / "space_frames.json").read_text())
    values = {
        "opensees": ops.version(),
        "harps": [{"name": harp["name"], "stiff": [solve(harp, False), solve(harp, True)]} for harp in harps],
    }
    (HERE.parent / "space_values.json").write_text(lines(values) + "\n")


if __name__ == "__main__":
    main()
