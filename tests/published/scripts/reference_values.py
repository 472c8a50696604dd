"""Values for the checks of the engine, from general-purpose libraries for numbers.

Nothing of Stringloft takes part: each figure is worked out from the physics that is stated with it.
Needs Python 3 with NumPy, SciPy and mpmath; writes `tests/published/reference_values.json`:

    python tests/published/scripts/reference_values.py
"""

import json
import pathlib
import platform

import mpmath
import numpy
import scipy
from mpmath import mp, mpf
from scipy.integrate import quad, solve_ivp
from scipy.linalg import eigh
from scipy.optimize import brentq, minimize_scalar

mp.dps = 50

# Density kg/m3, modulus at no stress GPa, its rise with the stress, strength MPa, and the modulus in GPa with
# which a lever stretches it. Figures of the kind that strings have, chosen for the checks.
MATERIALS = {
    "steel": (7850.0, 206.0, 0.0, 2200.0, 206.0),
    "gut": (1300.0, 6.0, 0.0, 300.0, 5.5),
    "nylon": (1140.0, 4.5, 39.0, 310.0, 5.0),
    "bronze": (8860.0, 110.0, 0.0, 931.0, 110.0),
}

# Material, diameter mm, vibrating length mm, pitch Hz: over the compass of a harp.
STRINGS = [
    ("nylon", 0.55, 70.0, 2637.0204),
    ("nylon", 0.64, 110.0, 1396.9129),
    ("nylon", 1.0, 448.0, 440.0),
    ("nylon", 1.4, 800.0, 174.61412),
    ("gut", 0.6, 200.0, 880.0),
    ("gut", 1.5, 700.0, 220.0),
    ("gut", 2.5, 1000.0, 110.0),
    ("steel", 0.3, 70.0, 3135.9635),
    ("steel", 0.3048, 200.0, 1046.5023),
    ("steel", 0.5, 500.0, 440.0),
    ("steel", 0.9, 1400.0, 110.0),
    ("bronze", 0.4, 300.0, 392.0),
    ("bronze", 0.7, 900.0, 130.81278),
    ("bronze", 1.0, 1400.0, 65.406391),
]


def digits(value):
    """A number as it goes into the file: the nearest double."""
    return float(mpmath.nstr(mpf(value), 20))


def geometry(diameter_mm):
    d = mpf(diameter_mm) / 1000
    return mp.pi * d**2 / 4, mp.pi * d**4 / 64


def stiff_pull(rho, base, rise, diameter_mm, length, hz):
    """The pull at which the first partial of a stiff pinned string is at pitch, by a search for the root of
    f1 = sqrt(T/mu)/(2L) sqrt(1 + B), B = pi^2 E I/(T L^2), E = base + rise T/A. With mu and B."""
    area, inertia = geometry(diameter_mm)
    mu = rho * area

    def b(pull):
        return mp.pi**2 * (base + rise * pull / area) * inertia / (pull * length**2)

    def first(pull):
        return mp.sqrt(pull / mu) / (2 * length) * mp.sqrt(1 + b(pull))

    flexible = mu * (2 * length * hz) ** 2
    # For a secant the pitch is taken to the square: nearly a straight line in the pull.
    pull = mpmath.findroot(lambda t: first(t) ** 2 - hz**2, (flexible, flexible * mpf("0.99")))
    return pull, mu, b(pull)


def stiff():
    rows = []
    for name, d_mm, l_mm, hz in STRINGS:
        rho, gpa, rise, mpa, _ = MATERIALS[name]
        area, _ = geometry(d_mm)
        length = mpf(l_mm) / 1000
        pull, mu, b = stiff_pull(mpf(rho), mpf(gpa) * 10**9, mpf(rise), d_mm, length, mpf(hz))
        load = mpf(mpa) * 10**6 * area
        # As far as the pitch of a flexible string rises until the pull is the breaking load.
        semitones = 12 * mpmath.log(mp.sqrt(load / pull), 2)
        partials = [1200 * mpmath.log(mp.sqrt((1 + b * n * n) / (1 + b)), 2) for n in range(1, 13)]
        # The finger in the middle of two slopes: T (1/a + 1/b).
        a = length * mpf("0.4")
        rows.append(
            {
                "material": name, "kg_per_m3": rho, "gpa": gpa, "rise": rise, "mpa": mpa,
                "d_mm": d_mm, "length_mm": l_mm, "hz": hz,
                "g_per_m": digits(mu * 1000), "pull_n": digits(pull), "stress_mpa": digits(pull / area / 10**6),
                "b": digits(b), "partial_cents": [digits(c) for c in partials],
                "load_n": digits(load), "semitones": digits(semitones),
                "kg_per_s": digits(mp.sqrt(pull * mu)),
                "feel_n_per_m": digits(pull * (1 / a + 1 / (length - a))),
            }
        )
    return rows


def losses():
    """Loss factor of the partials when the modulus of bending is E (1 + i eta): imaginary over real part of
    the square of the frequency."""
    rows = []
    for b, eta in [(1e-5, 0.02), (8e-5, 0.0006), (2e-4, 0.05), (1e-3, 0.03)]:
        for n in (1, 4, 8, 12):
            square = 1 + mpf(b) * n * n * (1 + mpmath.mpc(0, eta))
            rows.append({"b": b, "eta": eta, "partial": n, "loss": digits(square.imag / square.real)})
    return rows


def stepped():
    """Partials of an ideal string, bare core at both ends and wound between: roots of the determinant of the
    conditions at the four points. Length, pull and wound mass are 1; each partial over that of the wound string."""
    rows = []
    for near, far, ratio in [
        (0.02, 0.02, 0.3), (0.01, 0.03, 0.2), (0.0, 0.05, 0.6), (0.004, 0.011, 0.12), (0.2, 0.1, 0.04),
        (0.06, 0.015, 0.45),
    ]:
        a, c, r = mpf(near), mpf(far), mpf(ratio)
        middle = 1 - a - c

        def determinant(omega):
            k1, k2 = omega * mp.sqrt(r), omega
            # Shapes: sin k1 x; p cos k2 (x - a) + q sin k2 (x - a); s sin k1 (1 - x). Unknowns 1, p, q, s.
            # Deflection and slope go on at both joints.
            rows = [
                [mp.sin(k1 * a), -1, 0, 0],
                [k1 * mp.cos(k1 * a), 0, -k2, 0],
                [0, mp.cos(k2 * middle), mp.sin(k2 * middle), -mp.sin(k1 * c)],
                [0, -k2 * mp.sin(k2 * middle), k2 * mp.cos(k2 * middle), k1 * mp.cos(k1 * c)],
            ]
            return mpmath.det(mpmath.matrix(rows))

        found, at, step = [], mpf("0.05"), mpf("0.05")
        before = determinant(at)
        while len(found) < 12:
            after = determinant(at + step)
            if before * after <= 0:
                found.append(mpmath.findroot(determinant, (at, at + step), solver="anderson", tol=1e-40))
            at, before = at + step, after
        shares = [root / (n * mp.pi) for n, root in enumerate(found, 1)]
        rows.append({"near": near, "far": far, "ratio": ratio, "over_uniform": [digits(s) for s in shares]})
    return rows


def beam_partials(pieces, rigidity, pull, count):
    """Partials of a pinned beam under a pull, in Hz: cubic Hermite elements and the symmetric eigenproblem of
    LAPACK. `pieces`: length in m, kg/m, elements."""
    elements = [(l / n, mu) for l, mu, n in pieces for _ in range(n)]
    size = 2 * (len(elements) + 1)
    stiffness, mass = numpy.zeros((size, size)), numpy.zeros((size, size))
    for i, (h, mu) in enumerate(elements):
        bending = rigidity / h**3 * numpy.array(
            [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h],
             [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]])
        stretching = pull / (30 * h) * numpy.array(
            [[36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h],
             [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h]])
        inertia = mu * h / 420 * numpy.array(
            [[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h],
             [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]])
        place = slice(2 * i, 2 * i + 4)
        stiffness[place, place] += bending + stretching
        mass[place, place] += inertia
    free = [i for i in range(size) if i not in (0, size - 2)]
    # Mass over stiffness: the lowest partials are then the greatest values, and keep their digits.
    last = len(free) - 1
    values = eigh(mass[numpy.ix_(free, free)], stiffness[numpy.ix_(free, free)],
                  eigvals_only=True, subset_by_index=[last - count + 1, last])
    return 1 / (2 * numpy.pi * numpy.sqrt(values[::-1]))


def stepped_stiff():
    """Wound strings with a stiff core and bare ends; cents of the partials against the first."""
    rows = []
    for gpa, core_mm, g_per_m, ratio, l_mm, near_mm, far_mm, pull in [
        (206.0, 0.6, 6.9, 0.32, 1200.0, 10.0, 10.0, 170.0),
        (206.0, 0.6, 6.9, 0.32, 1200.0, 20.0, 20.0, 170.0),
        (206.0, 0.5, 6.83, 0.226, 1000.0, 5.0, 12.0, 190.0),
        (206.0, 0.8, 14.0, 0.282, 1400.0, 8.0, 25.0, 240.0),
        (206.0, 0.4, 2.8, 0.352, 800.0, 6.0, 15.0, 110.0),
        (5.0, 1.2, 8.0, 0.161, 1100.0, 8.0, 20.0, 140.0),
    ]:
        length, near, far = l_mm / 1e3, near_mm / 1e3, far_mm / 1e3
        mu = g_per_m / 1e3
        rigidity = gpa * 1e9 * numpy.pi * (core_mm / 1e3) ** 4 / 64
        pieces = [(near, mu * ratio, 10), (length - near - far, mu, 100), (far, mu * ratio, 10)]
        partials = beam_partials(pieces, rigidity, pull, 12)
        cents = 1200 * numpy.log2(partials / (numpy.arange(1, 13) * partials[0]))
        rows.append(
            {
                "gpa": gpa, "core_mm": core_mm, "g_per_m": g_per_m, "ratio": ratio, "length_mm": l_mm,
                "near_mm": near_mm, "far_mm": far_mm, "pull_n": pull,
                "first_hz": round(float(partials[0]), 7), "cents": [round(float(c), 5) for c in cents],
            }
        )
    return rows


def contact(upper, raised_by, target_cents):
    """Where a contact raises the string by the cents asked, on the branch where the pitch rises with the
    distance; None where the push alone gives more."""
    def over(x):
        return raised_by(x) - target_cents
    lowest = minimize_scalar(over, bounds=(1e-9, upper), method="bounded", options={"xatol": 1e-12})
    if lowest.fun > 0:
        return None
    return brentq(over, lowest.x, upper, xtol=1e-15, rtol=1e-15, maxiter=200)


def room(raised_by, place, upper, asked, error):
    """The shortest way along the string from the place to where the pitch is off by the error, either side."""
    lowest = minimize_scalar(raised_by, bounds=(1e-9, upper), method="bounded", options={"xatol": 1e-12}).x
    ways = []
    for cents in (asked - error, asked + error):
        for low, high in ((1e-9, lowest), (lowest, place), (place, upper)):
            if (raised_by(low) - cents) * (raised_by(high) - cents) < 0:
                ways.append(abs(brentq(lambda x: raised_by(x) - cents, low, high, xtol=1e-15, rtol=1e-15) - place))
    return min(ways)


def levers():
    """A contact pushes the string aside by d at x from the bridge pin: (0, 0) to (x, d) to (L, 0); or two discs,
    (0, 0) to (x1, d) to (x2, d) to (L, 0). What the path is longer is shared by all the string between its
    fixings; the part from the last contact to (L, 0) sounds, as a stiff pinned string under the greater pull."""
    rows = []
    for name, d_mm, l_mm, hz in STRINGS:
        rho, gpa, rise, _, stretch_gpa = MATERIALS[name]
        length = l_mm / 1e3
        area, inertia = (float(v) for v in geometry(d_mm))
        base = gpa * 1e9
        pull, mu, _ = (
            float(v) for v in stiff_pull(mpf(rho), mpf(base), mpf(rise), d_mm, mpf(length), mpf(hz))
        )
        between_mm = round(1.04 * l_mm + 70.0, 3)
        rigidity_n = stretch_gpa * 1e9 * area

        def first(pull, sounding):
            modulus = base + rise * pull / area
            b = numpy.pi**2 * modulus * inertia / (pull * sounding**2)
            return numpy.sqrt(pull / mu) / (2 * sounding) * numpy.sqrt(1 + b)

        open_hz = first(pull, length)
        for push_mm in (0.5, 1.0, 1.5):
            d = push_mm / 1e3

            def cents(x, natural=None):
                last = numpy.hypot(length - x, d)
                if natural is None:
                    path = numpy.hypot(x, d) + last
                else:
                    path = numpy.hypot(natural, d) + (x - natural) + last
                raised = pull + rigidity_n * (path - length) / (between_mm / 1e3)
                return 1200 * numpy.log2(first(raised, last) / open_hz)

            upper = 0.3 * length
            one = contact(upper, cents, 100.0)
            two = contact(upper, cents, 200.0)
            # Beyond the natural disc the pitch rises all the way.
            sharp = None
            if one is not None and cents(one, one) < 200.0:
                sharp = brentq(lambda x: cents(x, one) - 200.0, one, upper, xtol=1e-15, rtol=1e-15)
            mm = [None if x is None else float(x) * 1e3 for x in (one, two, sharp)]
            at_one = None
            if one is not None:
                nominal = length * (1 - 2 ** (-1 / 12))
                step = 1e-4 * one
                longer = numpy.hypot(one, d) + numpy.hypot(length - one, d) - length
                at_one = {
                    "cents_per_mm": float(
                        (8 * (cents(one + step) - cents(one - step)) - cents(one + 2 * step) + cents(one - 2 * step))
                        / (12 * step) * 1e-3),
                    "pull_n": float(pull + rigidity_n * longer / (between_mm / 1e3)),
                    "nominal_error_cents": float(cents(nominal) - 100.0),
                    "room_mm": float(room(cents, one, upper, 100.0, 2.0)) * 1e3,
                }
            rows.append(
                {
                    "material": name, "gpa": gpa, "rise": rise, "d_mm": d_mm, "length_mm": l_mm,
                    "pull_n": pull, "rigidity_n": rigidity_n, "between_mm": between_mm, "push_mm": push_mm,
                    "one_mm": mm[0], "two_mm": mm[1], "sharp_mm": mm[2],
                    "at_one": at_one,
                }
            )
    return rows


def helices():
    """Mass per metre of a winding: the arc of the helix on the mean diameter, integrated."""
    rows = []
    for rho, core_mm, thick_mm, width_mm, packing, is_round in [
        (8930.0, 0.5, 0.3, 0.3, 1.0, True), (8930.0, 0.4, 0.15, 0.15, 1.0, True),
        (8930.0, 1.0, 0.5, 0.5, 1.0, True), (8860.0, 0.6, 0.25, 0.25, 0.8, True),
        (10360.0, 0.35, 0.8, 0.8, 0.9, True), (8860.0, 0.7, 0.15, 0.6, 1.0, False),
        (8860.0, 0.8, 0.12, 1.2, 0.95, False),
    ]:
        radius, pitch = (core_mm + thick_mm) / 2, width_mm / packing
        turn, _ = quad(
            lambda t: numpy.sqrt(
                (radius * numpy.sin(t)) ** 2 + (radius * numpy.cos(t)) ** 2 + (pitch / (2 * numpy.pi)) ** 2),
            0, 2 * numpy.pi, epsabs=0, epsrel=1e-13)
        section = numpy.pi / 4 * thick_mm**2 if is_round else thick_mm * width_mm
        rows.append(
            {
                "kg_per_m3": rho, "core_mm": core_mm, "thick_mm": thick_mm, "width_mm": width_mm,
                "packing": packing, "round": is_round, "g_per_m": float(rho * section * turn / pitch / 1e3),
            }
        )
    return rows


def turns():
    """String on a tuning pin, turn beside turn: the arc of a helix that climbs one gauge in a turn, integrated."""
    rows = []
    for count, pin_mm, gauge_mm in [(3.0, 5.5, 0.5), (2.5, 6.0, 1.0), (4.0, 5.0, 0.3), (1.5, 6.5, 2.5)]:
        radius, climb = (pin_mm + gauge_mm) / 2, gauge_mm / (2 * numpy.pi)
        arc, _ = quad(
            lambda t: numpy.sqrt((radius * numpy.sin(t)) ** 2 + (radius * numpy.cos(t)) ** 2 + climb**2),
            0, 2 * numpy.pi * count, epsabs=0, epsrel=1e-13)
        rows.append({"turns": count, "pin_mm": pin_mm, "gauge_mm": gauge_mm, "wound_mm": float(arc)})
    return rows


def strains():
    """Strain from slack to a stress, the tangent modulus rising with the stress: d sigma/(E0 + k sigma) integrated."""
    rows = []
    for gpa, rise, mpa in [
        (206.0, 0.0, 1200.0), (6.0, 0.0, 120.0), (2.0, 0.0, 100.0), (4.5, 39.0, 170.0), (1.5, 12.0, 200.0),
        (3.0, -9.0, 150.0), (0.5, 200.0, 300.0), (110.0, 1e-6, 500.0),
    ]:
        strain, _ = quad(lambda s: 1 / (gpa * 1e3 + rise * s), 0, mpa, epsabs=0, epsrel=1e-13)
        rows.append({"gpa": gpa, "rise": rise, "mpa": mpa, "strain": float(strain)})
    return rows


def plucks():
    """Force that holds a point of the string aside by h, the point free to give along the string: the least
    energy of the two straight parts, each T0 dl + EA dl^2/(2 l0), with their true lengths."""
    rows = []
    for name, d_mm, l_mm, hz in STRINGS:
        if l_mm < 150.0:
            continue
        rho, gpa, rise, _, _ = MATERIALS[name]
        length = l_mm / 1e3
        area = float(geometry(d_mm)[0])
        pull = float(stiff_pull(mpf(rho), mpf(gpa * 1e9), mpf(rise), d_mm, mpf(length), mpf(hz))[0])
        rigidity_n = gpa * 1e9 * area + rise * pull
        for share in (0.5, 0.3):
            a = share * length
            b = length - a
            for h_mm in (2.0, 4.0, 8.0):
                h = h_mm / 1e3

                def parts(u):
                    return numpy.hypot(a + u, h), numpy.hypot(b - u, h)

                def energy(u):
                    return sum(
                        pull * (l - l0) + rigidity_n * (l - l0) ** 2 / (2 * l0)
                        for l, l0 in zip(parts(u), (a, b)))

                def pulls(u):
                    return [pull + rigidity_n * (l - l0) / l0 for l, l0 in zip(parts(u), (a, b))]

                def along(u):
                    (l1, l2), (t1, t2) = parts(u), pulls(u)
                    return t1 * (a + u) / l1 - t2 * (b - u) / l2

                reach = h
                least = minimize_scalar(energy, bounds=(-reach, reach), method="bounded",
                                        options={"xatol": 1e-12})
                u = brentq(along, -reach, reach, xtol=1e-16, rtol=1e-15)
                assert abs(least.x - u) < 1e-6 * length, (least.x, u)
                (l1, l2), (t1, t2) = parts(u), pulls(u)
                rows.append(
                    {
                        "material": name, "length_mm": l_mm, "pull_n": pull, "rigidity_n": rigidity_n,
                        "share": share, "h_mm": h_mm, "force_n": float(t1 * h / l1 + t2 * h / l2),
                        "mean_pull_n": float((t1 * a + t2 * b) / length),
                    }
                )
    return rows


def swings(rows_of_plucks):
    """How sharp a plucked string begins while it swings in one plane, without loss: thirty modes from the triangle
    of the pluck, all under the same pull T0 + (EA/2L) times the integral of the square of the slope, integrated
    over ten periods. The cents are those of the first mode against its pitch at rest."""
    rows, modes, periods = [], 30, 10
    n = numpy.arange(1, modes + 1)
    for row in rows_of_plucks:
        if row["h_mm"] != 4.0 or row["length_mm"] not in (448.0, 700.0, 500.0, 900.0):
            continue
        # In units of the length and of the wave speed at rest: the period is 2.
        k, share, h = n * numpy.pi, row["share"], row["h_mm"] / row["length_mm"]
        start = 2 * h * numpy.sin(k * share) / (k**2 * share * (1 - share))
        ratio = row["rigidity_n"] / row["pull_n"]

        def motion(_, state):
            q, speed = state[:modes], state[modes:]
            return numpy.concatenate([speed, -(1 + ratio / 4 * numpy.sum((k * q) ** 2)) * k**2 * q])

        solved = solve_ivp(motion, (0, 2 * periods), numpy.concatenate([start, 0 * start]), method="DOP853",
                           rtol=1e-9, atol=1e-13, events=lambda _, state: state[0])
        zeros = solved.t_events[0]
        half_period = numpy.polyfit(numpy.arange(len(zeros)), zeros, 1)[0]
        rows.append(
            {key: row[key] for key in ("material", "length_mm", "pull_n", "rigidity_n", "share", "h_mm")}
            | {"cents": round(float(-1200 * numpy.log2(half_period)), 3)}
        )
    return rows


def tuning():
    """Cents for a degree of the pin and for a kelvin: the slope of the pitch of a flexible string, by mpmath."""
    pins, warmth = [], []
    for gpa, mpa, pin_mm, gauge_mm, between_mm in [
        (206.0, 800.0, 4.6, 0.4, 700.0), (6.0, 120.0, 5.5, 1.1, 900.0), (2.5, 90.0, 6.0, 0.8, 450.0),
    ]:
        def by_degree(angle):
            wound = mp.pi * (mpf(pin_mm) + mpf(gauge_mm)) * angle / 360
            return 600 * mpmath.log(1 + mpf(gpa) * 1000 / mpf(mpa) * wound / mpf(between_mm), 2)

        pins.append({"gpa": gpa, "mpa": mpa, "pin_mm": pin_mm, "gauge_mm": gauge_mm, "between_mm": between_mm,
                     "cents": digits(mpmath.diff(by_degree, 0))})
    for gpa, mpa, own, frame in [
        (206.0, 1000.0, 11.5e-6, 0.0), (206.0, 500.0, 12e-6, 4e-6), (110.0, 500.0, 17.8e-6, 4e-6),
        (110.0, 400.0, 19.9e-6, 23e-6),
    ]:
        def by_kelvin(warmer):
            return 600 * mpmath.log(1 - mpf(gpa) * 1000 / mpf(mpa) * (mpf(own) - mpf(frame)) * warmer, 2)

        warmth.append({"gpa": gpa, "mpa": mpa, "per_k": own, "frame_per_k": frame,
                       "cents": digits(mpmath.diff(by_kelvin, 0))})
    return pins, warmth


def main():
    pins, warmth = tuning()
    pulled = plucks()
    groups = {
        "stiff": stiff(), "losses": losses(), "stepped": stepped(), "stepped_stiff": stepped_stiff(),
        "levers": levers(), "helices": helices(), "turns": turns(), "strains": strains(), "plucks": pulled, "swings": swings(pulled),
        "pins": pins, "warmth": warmth,
    }
    versions = {
        "python": platform.python_version(), "numpy": numpy.__version__,
        "scipy": scipy.__version__, "mpmath": mpmath.__version__,
    }
    # One row a line.
    lines = [f'"versions": {json.dumps(versions)}']
    for name, rows in groups.items():
        inner = ",\n".join(f"  {json.dumps(row)}" for row in rows)
        lines.append(f'"{name}": [\n{inner}\n]')
    path = pathlib.Path(__file__).parent.parent / "reference_values.json"
    path.write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8")


if __name__ == "__main__":
    main()
