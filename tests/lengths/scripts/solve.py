"""Best lengths of drawn harps, by the bounded least squares of SciPy.

Nothing of Stringloft takes part: the pull of a stiff string, its pluck stiffness, the sum and the bounds are written
here once more, from the formulas. Needs Python 3 with NumPy and SciPy; writes `tests/lengths/solved.json`:

    python tests/lengths/scripts/solve.py

Harps of flexible strings are linear in the logarithm of the length and solved by `lsq_linear`; harps of stiff strings
by `least_squares`, and `lsq_linear` over its tangents from there. Every answer must meet the conditions of Karush, Kuhn and Tucker.
"""

import json
import math
import pathlib

import numpy
import scipy
from scipy.optimize import least_squares, lsq_linear

SEED = 20
PLUCK_RATIO = 0.4
REACH_M = (1e-4, 1e3)
FROM_NOTHING = 1.01
DIFFERENCE = {1: [-1, 1], 2: [1, -2, 1], 3: [-1, 3, -3, 1]}
# Semitones from one string of a diatonic scale down to the next.
STEPS = [2, 2, 1, 2, 2, 2, 1]


def pull_n(s, m):
    """Pull of a stiff string at a length: Mersenne's law less the bending of the core."""
    flexible = 4 * m * m * s["hz"] ** 2 * s["kg_per_m"]
    if not s["modulus_pa"]:
        return flexible
    d = s["diameter_m"]
    inertia, area = math.pi * d**4 / 64, math.pi * d * d / 4
    bend = math.pi**2 * inertia / (m * m)
    return (flexible - s["modulus_pa"] * bend) / (1 + s["per_stress"] * bend / area)


def ratio(s, x):
    """Logarithm of the figure over its target."""
    m = math.exp(x)
    pull = pull_n(s, m)
    if s["aim"] == "tension":
        return math.log(pull / s["target"])
    return math.log(pull / (m * PLUCK_RATIO * (1 - PLUCK_RATIO)) / s["target"])


def length_at(s, pull):
    """Length at a pull, by halving the interval in the logarithm."""
    low, high = math.log(1e-6), math.log(1e6)
    for _ in range(200):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if pull_n(s, math.exp(middle)) < pull else (low, middle)
    return math.exp(0.5 * (low + high))


def bounds(s):
    low, high = REACH_M
    if s["hz"]:
        low = max(low, FROM_NOTHING * length_at(s, 0.0))
        if s["least_share"]:
            low = max(low, length_at(s, s["least_share"] / 100 * s["breaking_n"]))
        if s["most_share"]:
            high = min(high, length_at(s, s["most_share"] / 100 * s["breaking_n"]))
    if s["least_m"]:
        low = max(low, s["least_m"])
    if s["most_m"]:
        high = min(high, s["most_m"])
    return math.log(low), math.log(high)


def rounded(value, digits=7):
    """A shorter number, for a shorter file."""
    return float(f"{value:.{digits}g}") if isinstance(value, float) else value


def drawn(rng, number):
    """A harp with bounds, some strings locked, some without a target."""
    count = int(rng.integers(5, 48))
    is_stiff = number % 2 == 1
    semitones = numpy.cumsum([0] + [STEPS[i % 7] for i in range(count - 1)])
    top_hz = float(rng.uniform(1200, 3000))
    usual_n = float(rng.uniform(60, 160))
    how = ["tension", "stiffness", "both"][number % 3]
    strings = []
    for i in range(count):
        hz = top_hz * 2 ** (-float(semitones[i]) / 12)
        usual_m = 0.09 * (1.5 / 0.09) ** ((i / 46) ** 0.85)
        # About as heavy as the usual pull asks at the usual length, in gauges that step.
        kg_per_m = usual_n / (4 * usual_m**2 * hz**2)
        diameter_m = round(math.sqrt(4 * kg_per_m / (math.pi * 1140)) * 1e3 / 0.15) * 0.15e-3 + 1e-4
        string = {
            "hz": hz,
            "kg_per_m": math.pi / 4 * diameter_m**2 * 1140,
            "diameter_m": diameter_m,
            "modulus_pa": 4.5e9 if is_stiff else 0.0,
            "per_stress": 39.0 if is_stiff else 0.0,
            "breaking_n": 350e6 * math.pi / 4 * diameter_m**2,
            "present_m": usual_m * float(rng.uniform(0.99, 1.01)),
            "aim": how if how != "both" else ["tension", "stiffness"][int(rng.integers(2))],
            "weight": float(rng.choice([1.0, 1.0, 0.5, 3.0])),
            "locked": bool(rng.random() < 0.08),
            "least_m": None,
            "most_m": None,
            "least_share": None,
            "most_share": None,
        }
        # Near what the usual length gives, in a wave, and off it by a step of the gauge.
        figure = pull_n(string, usual_m)
        if string["aim"] == "stiffness":
            figure /= usual_m * PLUCK_RATIO * (1 - PLUCK_RATIO)
        string["target"] = figure * math.exp(0.1 * math.sin(0.3 * i) + float(rng.normal(0, 0.08)))
        if rng.random() < 0.25:
            string["most_m"] = usual_m * float(rng.uniform(0.9, 1.05))
        if rng.random() < 0.25:
            string["least_m"] = usual_m * float(rng.uniform(0.75, 0.9))
        if rng.random() < 0.5:
            string["most_share"] = float(rng.uniform(35, 60))
        if rng.random() < 0.5:
            string["least_share"] = float(rng.uniform(3, 12))
        low, high = bounds(string)
        if low > high:
            string["least_m"] = string["least_share"] = None
        # Between its neighbours, so that the curve need not run on.
        if 1 < i < count - 2 and rng.random() < 0.08:
            string["aim"] = None
            string["target"] = None
            if rng.random() < 0.5:
                string["hz"] = None
        strings.append({key: rounded(value) for key, value in string.items()})
    waves = float(rng.choice([4.0, 7.0, 14.0, 28.0]))
    return strings, waves


def solved(strings, waves):
    count = len(strings)
    locked = numpy.array([s["locked"] for s in strings])
    pulls = [i for i, s in enumerate(strings) if s["aim"] and not s["locked"]]
    order = min(3, len(set(pulls) | set(numpy.flatnonzero(locked).tolist())))
    stiff = (2 * math.sin(math.pi / waves)) ** -order
    bends = numpy.zeros((count - order, count))
    for i in range(count - order):
        bends[i, i : i + order + 1] = [stiff * c for c in DIFFERENCE[order]]
    x = numpy.log([s["present_m"] for s in strings])
    low, high = numpy.array([bounds(s) for s in strings]).T
    free = ~locked
    power = [2.0 if strings[i]["aim"] == "tension" else 1.0 for i in pulls]
    share = numpy.array([math.sqrt(strings[i]["weight"]) / p for i, p in zip(pulls, power)])

    def whole(part):
        all_of_it = x.copy()
        all_of_it[free] = part
        return all_of_it

    def off(part):
        at = whole(part)
        own = share * numpy.array([ratio(strings[i], at[i]) for i in pulls])
        return numpy.concatenate([own, bends @ at])

    def slope(part):
        at = whole(part)
        rows = numpy.zeros((len(pulls), count))
        for row, i in enumerate(pulls):
            step = 1e-6
            rise = ratio(strings[i], at[i] + step) - ratio(strings[i], at[i] - step)
            rows[row, i] = share[row] * rise / (2 * step)
        return numpy.concatenate([rows, bends])[:, free]

    low, high = low[free], high[free]
    if all(not s["modulus_pa"] for s in strings):
        part = numpy.clip(x[free], low, high)
    else:
        start = numpy.clip(x[free], low + 1e-6, high - 1e-6)
        part = least_squares(
            off, start, slope, (low, high), method="dogbox", ftol=1e-15, xtol=1e-15, gtol=1e-13, max_nfev=5000
        ).x
    # Flexible strings are linear, and once would do; of stiff ones this is what Gauss and Newton do.
    for _ in range(8):
        a = slope(part)
        part = lsq_linear(a, a @ part - off(part), (low, high), method="bvls", tol=1e-15, max_iter=10000).x
    # It stops when the sum hardly falls any more. So once more over the strings that lie at no bound, whose best
    # places are exact; that the others belong at their bounds is what the conditions below tell.
    at_low, at_high = part <= low + 1e-12, part >= high - 1e-12
    part = numpy.where(at_low, low, numpy.where(at_high, high, part))
    inside = ~(at_low | at_high)
    for _ in range(5):
        step = numpy.linalg.lstsq(slope(part)[:, inside], -off(part), rcond=None)[0]
        part[inside] += step
    assert (part >= low).all() and (part <= high).all()
    gradient = slope(part).T @ off(part)
    bend = (slope(part) ** 2).sum(axis=0)
    still = numpy.clip(part - gradient / bend, low, high) - part
    assert abs(still).max() < 1e-9, abs(still).max()
    at_bound = int((~inside).sum())
    values = off(part)
    return numpy.exp(whole(part)).tolist(), float(values @ values), order, at_bound


def main():
    rng = numpy.random.default_rng(SEED)
    harps = []
    for number in range(40):
        strings, waves = drawn(rng, number)
        lengths, total, order, at_bound = solved(strings, waves)
        print(number, len(strings), "strings,", at_bound, "at a bound,", f"sum {total:.6f}")
        harps.append(
            {"waves": waves, "strings": strings, "lengths_m": [rounded(m, 12) for m in lengths], "sum": total, "at_bound": at_bound}
        )
    values = {
        "versions": {"numpy": numpy.__version__, "scipy": scipy.__version__},
        "pluck_ratio": PLUCK_RATIO,
        "harps": harps,
    }
    path = pathlib.Path(__file__).parent.parent / "solved.json"
    path.write_text(json.dumps(values, separators=(",", ":")).replace('{"waves"', '\n{"waves"') + "\n")


main()
