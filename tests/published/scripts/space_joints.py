"""The frames of harps in space with joints and soundboxes of their sizes, solved by OpenSees.

Nothing of Stringloft takes part but the measures in `space_joints_frames.json`. Bars, strings and the way round the frame
are those of `space_values.py`; here the joints are springs between two nodes at one place, half as stiff as their sizes
say, and the soundbox is a tube of thin walls of several materials. All of that is worked out here from the sizes. Needs
Python 3 with openseespy; writes `tests/published/space_joints.json`:

    python tests/published/scripts/space_joints.py
"""

import json
import math
import pathlib

import openseespy.opensees as ops
import space_values as plain

HERE = pathlib.Path(__file__).parent
BOX_BARS = plain.BOX_BARS
SOFTER = 0.5
PRESSED = 1e10


def spring(joint, face, wood):
    """Stiffness along, in shear both ways, in twist, sideways and in the plane."""
    (b, h), (e, density) = face, wood
    twist = side = plane = 0.0
    if joint["tenon"]:
        t, l = joint["tenon"]
        glue, pressed = e / 160 / (t / 4), e / 15 / (t / 2)
        twist += pressed * l * h**3 / 12
        side += pressed * h * l**3 / 12
        plane += glue * (h * l**3 + l * h**3) / 6
    if joint["fasteners"]:
        kind, n, d, l, apart, across = (joint["fasteners"][k] for k in ("kind", "count", "d", "l", "apart", "across"))
        slip = 1e3 * density**1.5 * 1e3 * d / 23
        if joint["plate"]:
            between = b + joint["plate"]
            twist += n * slip * between**2 / 2
            side += n * slip * between**2 / 2
            plane += 2 * slip * sum(((i - (n - 1) / 2) * apart) ** 2 for i in range(n))
        else:
            rows = 2 if across > 0 and n > 1 else 1
            each = n // rows
            places = [((r - (rows - 1) / 2) * across, (i - (each - 1) / 2) * apart) for r in range(rows) for i in range(each)]
            steel = 1e3 * 0.5 * 210e3 * math.pi * (1e3 * d) ** 2 / 4 / (2e3 * l)
            axial = steel if kind == "bolts" else 1e3 * 25 * 1e6 * d * l
            twist += slip * sum(z * z + y * y for z, y in places)
            side += axial * sum(max(z + b / 4, 0) ** 2 for z, y in places)
            plane += axial * sum(max(y + h / 4, 0) ** 2 for z, y in places)
    return [SOFTER * k for k in (PRESSED, PRESSED, PRESSED, twist, side, plane)]


def tube(box, up, b, length):
    """Where its axis lies behind the board; the stiffness along, both bendings, twist, both shears."""
    even = lambda pair: pair[0] + up * (pair[1] - pair[0])
    h, board = even(box["depth"]), even(box["board"])
    side, back = box["side"], box["back"]
    lw, lh = box["liner"]
    n, hole_length, hole = box["holes"]
    hole = min(hole, 0.9 * b) if n or box["slotted"] else 0.0
    net = b - hole
    rows = [
        # Modulus, breadth, height and middle of each rectangle, from the board, and how often; then from the middle plane.
        (box["board_along"], b, board, 0.0, 1, 0.0),
        (side["along"], side["t"], h, h / 2, 2, b / 2),
        (side["along"], lw, lh, lh / 2, 2, (b - lw) / 2),
        (side["along"], lw, lh, h - lh / 2, 2, (b - lw) / 2),
    ]
    ea = sum(e * w * t * k for e, w, t, z, k, y in rows) + back["along"] * net * back["t"]
    axis = (sum(e * w * t * k * z for e, w, t, z, k, y in rows) + back["along"] * net * back["t"] * h) / ea
    plane = sum(e * k * (w * t**3 / 12 + w * t * (z - axis) ** 2) for e, w, t, z, k, y in rows)
    plane += back["along"] * net * (back["t"] ** 3 / 12 + back["t"] * (h - axis) ** 2)
    # The walls' own thickness sideways is left out, as is that of the liners.
    aside = sum(e * k * w * t * y * y for e, w, t, z, k, y in rows[1:]) + box["board_along"] * board * b**3 / 12
    aside += back["along"] * back["t"] * (b**3 - hole**3) / 12
    if box["slotted"]:
        shears = 0.0
    elif n:
        pitch, strip = length / n, net / 2
        bridge, apart = pitch - hole_length, b - strip
        inertia = lambda depth: back["t"] * depth**3 / 12
        gives = hole_length**3 / (24 * back["along"] * inertia(strip)) / pitch
        gives += pitch * hole / (12 * back["across"] * inertia(bridge))
        gives += 1 / (back["shear"] * back["t"] * apart)
        shears = min(1 / (gives * apart * back["shear"]), back["t"])
    else:
        shears = back["t"]
    strips = b * box["board_shear"] * board**3 + 2 * h * side["shear"] * side["t"] ** 3 + net * back["shear"] * back["t"] ** 3
    twist = strips / 3
    if shears:
        around = b / (box["board_shear"] * board) + 2 * h / (side["shear"] * side["t"]) + b / (back["shear"] * shears)
        twist = max(twist, 4 * (b * h) ** 2 / around)
    down = 2 * h * side["shear"] * side["t"]
    across = b * (box["board_shear"] * board + back["shear"] * shears)
    return axis, (ea, plane, aside, twist, down, across)


def solve(harp):
    ops.wipe()
    ops.model("basic", "-ndm", 3, "-ndf", 6)
    axis, strings, offset = harp["axis"], harp["strings"], harp["offset"]
    places, hung, bars = [], [], []
    found = [plain.nearest(axis, x, y) for x, y, _, _ in strings]
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

    def bar(tag, nodes, stiff, arms=None):
        ea, plane, side, twist, down, across = stiff
        if arms:
            ends = [10000 + 10 * tag, 10001 + 10 * tag]
            for end, node, arm in zip(ends, nodes, arms):
                ops.node(end, *(p + q for p, q in zip(ops.nodeCoord(node), arm)))
                ops.rigidLink("beam", node, end)
            nodes = ends
        ops.geomTransf("Linear", tag, 0.0, 0.0, 1.0)
        # With moduli of 1 the areas are the stiffness.
        ops.element("ElasticTimoshenkoBeam", tag, *nodes, 1.0, 1.0, ea, twist, side, plane, down, across, tag)

    def solid(moduli, section):
        (e, g), (area, plane, side, torsion, down, across) = moduli, section
        return e * area, e * plane, e * side, g * torsion, g * down, g * across

    materials = iter(range(1, 1000))

    def joint(tag, nodes, along, stiff):
        tags = []
        for k in stiff:
            tags.append(next(materials))
            ops.uniaxialMaterial("Elastic", tags[-1], k)
        size = math.hypot(*along)
        x = [along[0] / size, along[1] / size, 0.0]
        # The local y lies in the plane, to the left.
        ops.element("zeroLength", tag, *nodes, "-mat", *tags, "-dir", 1, 2, 3, 4, 5, 6, "-orient", *x, -x[1], x[0], 0.0)

    first = 100
    for i, place in enumerate(places):
        ops.node(first + i, place[0], place[1], 0.0)
    for i, section in enumerate(bars):
        bar(first + i, (first + i, first + i + 1), solid(harp["neck"], plain.rectangle(*section)))
    top, head, foot, ground = first + len(bars), 5001, 5002, 5003
    ops.node(head, places[-1][0], places[-1][1], 0.0)
    ops.node(foot, *harp["foot"], 0.0)
    ops.node(ground, *harp["foot"], 0.0)
    ops.fix(ground, 1, 1, 1, 1, 1, 1)
    width, depth = harp["pillar_section"]
    bar(foot, (head, foot), solid(harp["pillar"], plain.rectangle(depth, width)))

    low, high = harp["board"]
    way = (high[0] - low[0], high[1] - low[1])
    length = math.hypot(*way)
    on = lambda share: (low[0] + share * way[0], low[1] + share * way[1])
    behind = (-way[1] / length, way[0] / length)
    if behind[0] * (places[-1][0] - low[0]) + behind[1] * (places[-1][1] - low[1]) > 0:
        behind = (-behind[0], -behind[1])
    first_string, span = harp["strings_on_board"]
    bass, treble = harp["width"]
    shoulder = 1 + BOX_BARS
    for i in range(BOX_BARS):
        ops.node(1 + i, *on(i / BOX_BARS), 0.0)
    ops.node(shoulder, places[0][0], places[0][1], 0.0)
    ops.fix(1, 1, 1, 1, 1, 1, 1)
    for i in range(BOX_BARS):
        up = min(max(((i + 0.5) / BOX_BARS * length - first_string) / span, 0.0), 1.0)
        at, stiff = tube(harp["soundbox"], up, bass + up * (treble - bass), length)
        arm = [at * behind[0], at * behind[1], offset]
        gap = [high[0] - places[0][0], high[1] - places[0][1], 0.0] if i + 1 == BOX_BARS else [0.0] * 3
        bar(1 + i, (1 + i, 2 + i), stiff, (arm, [p + q for p, q in zip(arm, gap)]))

    faces = [joint["face"] for joint in harp["joints"]]
    faces[0] = faces[0] or axis[0][2:]
    faces[1] = faces[1] or [min(depth, axis[-1][2]), width]
    faces[2] = faces[2] or [depth, width]
    down = [harp["foot"][i] - places[-1][i] for i in (0, 1)]
    ways = [[places[1][i] - places[0][i] for i in (0, 1)], down, down]
    ends = [(shoulder, first), (top, head), (foot, ground)]
    for i in range(3):
        wood = harp["woods"][i]
        joint(6000 + i, ends[i], ways[i], spring(harp["joints"][i], faces[i], wood))

    ops.timeSeries("Constant", 1)
    ops.pattern("Plain", 1, 1)

    def force(node, place, at, fx, fy):
        dx, dy = at[0] - place[0], at[1] - place[1]
        ops.load(node, fx, fy, 0.0, -offset * fy, offset * fx, dx * fy - dy * fx)

    cross = lambda a, b: a[0] * b[1] - a[1] * b[0]
    for i, strung in enumerate(hung):
        for x, y, fx, fy in (strings[s] for s in strung):
            force(first + i, places[i], (x, y), fx, fy)
    for x, y, fx, fy in strings:
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

    def ends_of(tag):
        forces = ops.eleResponse(tag, "localForce")
        return [[-force for force in forces[:6]], list(forces[6:])]

    neck = [cut for i in range(len(bars)) for cut in ends_of(first + i)]
    kept = {*range(0, len(neck), 9), len(neck) - 1}
    return {
        "neck": [[i, *neck[i]] for i in sorted(kept)],
        "pillar": ends_of(foot),
        "soundbox": [cut for i in range(BOX_BARS) for cut in ends_of(1 + i)],
        "top": ops.nodeDisp(top),
    }


def main():
    harps = json.loads((HERE / "space_joints_frames.json").read_text())
    values = {
        "opensees": ops.version(),
        "harps": [{"name": harp["name"], **solve(harp)} for harp in harps],
    }
    (HERE.parent / "space_joints.json").write_text(plain.lines(values) + "\n")


if __name__ == "__main__":
    main()
