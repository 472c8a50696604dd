"""Drawn logs of settling strings fitted by SciPy, and strings weighed by ear.

Nothing of Stringloft takes part: the law of the logs, the pitch of a stiff string and the partials are written here once
more. Needs Python 3 with NumPy and SciPy; writes `tests/settling/fitted.json`:

    python tests/settling/scripts/logs.py

Each log is fitted by `lstsq` with a column for each tuning and one for the law, its bounds are from Student's distribution,
and the moment from which a string holds is a root found by `brentq`. Two loads are solved by `fsolve`, their errors by 200,000
draws; partials by `curve_fit` on the curve itself.
"""

import json
import math
import pathlib

import numpy as np
import scipy
from scipy.linalg import lstsq
from scipy.optimize import brentq, curve_fit, fsolve
from scipy.stats import t as student

rng = np.random.default_rng(29)
DAY = 1440.0
WEEK = 7 * DAY


def law(tunings, minutes):
    return sum(s * math.log10(1 + (minutes - at)) for at, s in tunings if minutes > at)


def drawn_log():
    """A log with one to four tunings, the later ones back to the pitch that was meant."""
    b, noise = -rng.uniform(2, 25), rng.uniform(0.1, 1.5)
    tunings, lines, now, left = [], [], 0.0, float(rng.uniform(-2, 20))
    for turn in range(rng.integers(1, 5)):
        before = lines[-1][1] if lines else None
        share = 1.0 if before is None else 1 - 2 ** (2 * (before - left) / 1200)
        tunings.append((now, share))
        begun = law(tunings, now)
        lines.append([now, left, True])
        for step in np.cumsum(rng.uniform(0.1, 1.2, rng.integers(3, 9))):
            at = now + 3 * 10 ** step - 2
            lines.append([at, left + b * (law(tunings, at) - begun) + noise * rng.standard_normal(), False])
        now = lines[-1][0] + rng.uniform(1, 30)
        left = float(rng.uniform(-1, 1))
    return tunings, lines


def fitted(tunings, lines):
    known, rows, side, turn = [], [], [], -1
    for at, cents, is_tuning in lines:
        if is_tuning:
            turn += 1
            known.append(tunings[turn])
        row = np.zeros(len(tunings) + 1)
        row[turn], row[-1] = 1.0, law(known, at)
        rows.append(row)
        side.append(cents)
    rows, side = np.array(rows), np.array(side)
    found = lstsq(rows, side)[0]
    free = len(side) - len(tunings) - 1
    scatter = math.sqrt(np.sum((side - rows @ found) ** 2) / free)
    error = student.ppf(0.975, free) * scatter * math.sqrt(np.linalg.inv(rows.T @ rows)[-1, -1])
    b, last = found[-1], lines[-1][0]
    rate = (law(tunings, last + 0.5) - law(tunings, last - 0.5)) * b * DAY
    week = lambda at, size: size * (law(tunings, at + WEEK) - law(tunings, at)) - 5
    end = tunings[0][0] + 10 * (last - tunings[0][0]) - WEEK

    def holds(size):
        if last > end:
            return None
        if week(last, size) <= 0:
            return last
        return brentq(lambda at: week(at, size), last, end, xtol=1e-9) if week(end, size) <= 0 else None

    return {
        "per_decade_cents": b,
        "error_cents": error,
        "scatter_cents": scatter,
        "level_cents": found[-2] + b * law(tunings, tunings[-1][0]),
        "cents_per_day": rate,
        "holds_min": [holds(abs(b)), holds(abs(b) + error)],
    }


def string_by_ear(name, mass_g_per_m, gpa, mm, length_mm, pulls_n):
    """A plain string under two pulls: its pitches, what they say, and how far off that may be by draws."""
    i = math.pi * (mm / 1e3) ** 4 / 64
    length, mu, ei = length_mm / 1e3, mass_g_per_m / 1e3, gpa * 1e9 * i

    def pitch(pull, mu, ei, length):
        return math.sqrt((pull + math.pi**2 * ei / length**2) / mu) / (2 * length)

    pitches = [pitch(pull, mu, ei, length) for pull in pulls_n]
    errors = {"length_mm": 0.5, "pull_n": [0.002 * p for p in pulls_n], "cents": 0.5, "diameter_mm": 0.005}
    count = 200_000
    draw = lambda value, error: value + error * rng.standard_normal(count)
    l = draw(length_mm, errors["length_mm"]) / 1e3
    t, u = (draw(p, e) for p, e in zip(pulls_n, errors["pull_n"]))
    f, g = (p * 2 ** (draw(0, errors["cents"]) / 1200) for p in pitches)
    masses = (u - t) / (4 * l**2 * (g**2 - f**2))
    rigid = (4 * l**2 * masses * f**2 - t) * l**2 / math.pi**2
    moduli = 64 * rigid / (math.pi * (draw(mm, errors["diameter_mm"]) / 1e3) ** 4)
    single = t / (2 * l * f) ** 2
    both = lambda x: [
        (pitch(pull, x[0] * mu, x[1] * ei, length) - found) / found for pull, found in zip(pulls_n, pitches)
    ]
    solved = fsolve(both, [1.01, 0.9], xtol=1e-12)
    return {
        "name": name,
        "length_mm": length_mm,
        "diameter_mm": mm,
        "pulls_n": pulls_n,
        "pitches_hz": pitches,
        "errors": errors,
        "mass_g_per_m": solved[0] * mass_g_per_m,
        "modulus_gpa": solved[1] * gpa,
        "mass_error_g_per_m": 1e3 * float(np.std(masses)),
        "modulus_error_gpa": float(np.std(moduli)) / 1e9,
        "one_load_mass_g_per_m": 1e3 * pulls_n[0] / (2 * length * pitches[0]) ** 2,
        "one_load_error_g_per_m": 1e3 * float(np.std(single)),
    }


def partials(b, first, cents):
    numbers = np.arange(1, 13)
    exact = first * numbers * np.sqrt((1 + b * numbers**2) / (1 + b))
    heard = exact * 2 ** (cents * rng.standard_normal(len(numbers)) / 1200)
    curve = lambda n, f, b: np.sqrt(1 + b * n**2) * f
    (_, found), spread = curve_fit(curve, numbers, heard / numbers, p0=[first, 1e-5], method="trf", x_scale=[first, 1e-4], xtol=1e-14, ftol=1e-14)
    return {
        "hertz": heard.tolist(),
        "b": float(found),
        "error": float(student.ppf(0.975, len(numbers) - 2) * math.sqrt(spread[1, 1])),
    }


logs = []
for _ in range(40):
    tunings, lines = drawn_log()
    logs.append({"lines": lines, **fitted(tunings, lines)})
frees = [*range(1, 31), 40, 60, 120, 1000]
out = {
    "scipy": scipy.__version__,
    "logs": logs,
    "students_t": [[free, float(student.ppf(0.975, free))] for free in frees],
    "strings": [
        string_by_ear("steel 0.5 mm, 250 mm", 1.541, 205.0, 0.5, 250.0, [60.0, 120.0]),
        string_by_ear("nylon 1.5 mm, 300 mm", 2.0, 5.0, 1.5, 300.0, [60.0, 120.0]),
        string_by_ear("gut 2.4 mm, 400 mm", 5.9, 6.5, 2.4, 400.0, [80.0, 200.0]),
    ],
    "partials": [partials(b, f, c) for b, f, c in [(1e-4, 220, 0.3), (8e-4, 98, 0.5), (2e-5, 523, 0.1)]],
}
path = pathlib.Path(__file__).parent.parent / "fitted.json"
path.write_text(json.dumps(out, indent=1) + "\n")
