"""Measures the partials of strings that Stringloft played, and works out by itself what they should be.

    python measure.py FOLDER > ../measured.json

FOLDER is where `cargo test --test sound` wrote the sounds and, beside them, `strings.json` with what each string is.
Needs Python 3 with NumPy and SciPy. Nothing of Stringloft takes part: tension, stiffness, bare ends, drag of the air and
losses are worked out here from the sizes of the strings, the drag by Bessel functions; the sounds are read with
Python's own `wave` and measured by FFT.
"""

import json
import platform
import sys
import wave
from math import pi, sqrt
from pathlib import Path

import numpy as np
import scipy
from scipy.optimize import brentq
from scipy.special import kv

AIR, NU = 1.204, 1.51e-5  # kg/m3 and m2/s: dry air at 20 degrees
FRAME, HOP = 4096, 512
FLOOR = 2e-3  # of the first frame of a partial: below it, steps of 16 bits and other partials tell

folder = Path(sys.argv[1])


def drag(diameter, hz):
    """Stokes' oscillating cylinder, exactly: what is in step with the velocity, over the mass of the air.

    G. G. Stokes 1850, in Bessel functions as by J. T. Stuart 1963: 1 + 4 K1(z)/(z K0(z)) with z = r sqrt(i w/nu).
    """
    z = 0.5 * diameter * np.sqrt(2j * pi * hz / NU)
    force = 1 + 4 * kv(1, z) / (z * kv(0, z))
    return abs(force.imag)


def stretched(string):
    """Tension and stiffness of what sounds, by the pitch of the stiff string pinned at both ends."""
    length, mu = string["length_m"], string["kg_per_m"]
    core, (base, per) = string["core_m"], string["modulus"]
    area, inertia = pi / 4 * core**2, pi / 64 * core**4

    def pitch(tension):
        bend = pi**2 * (base + per * tension / area) * inertia / length**2
        return sqrt((tension + bend) / mu) / (2 * length)

    tension = brentq(lambda t: pitch(t) - string["hz"], 1e-6, 1e4, xtol=1e-12)
    modulus = base + per * tension / area
    return tension, pi**2 * modulus * inertia / (tension * length**2)


def steps(string, count):
    """How far bare ends raise each partial of a flexible string, and what part of its energy the ends see: by a scan
    for the places where a shape that begins at one end comes to nothing at the other, and by sums over the shape."""
    near, far = (bare / string["length_m"] for bare in string["bare_m"])
    if near + far == 0:
        return [(1.0, 1.0)] * count
    ratio = string["core_kg_per_m"] / string["kg_per_m"]
    pieces = [(ratio, near), (1.0, 1 - near - far), (ratio, far)]

    def shot(w):
        y, slope = 0.0, 1.0
        for mass, long in pieces:
            k = w * sqrt(mass)
            c, s = np.cos(k * long), np.sin(k * long)
            y, slope = y * c + slope * s / k, slope * c - y * k * s
        return y

    found, w, pace = [], 1e-3, 0.01
    while len(found) < count:
        if shot(w) * shot(w + pace) < 0:
            found.append(brentq(shot, w, w + pace, xtol=1e-13))
        w += pace
    out = []
    for n, w in enumerate(found, 1):
        y, slope, energy = 0.0, 1.0, 0.0
        for mass, long in pieces:
            k, x = w * sqrt(mass), np.linspace(0, long, 20001)
            shape = y * np.cos(k * x) + slope / k * np.sin(k * x)
            energy += mass * np.trapezoid(shape**2, x)
            c, s = np.cos(k * long), np.sin(k * long)
            y, slope = y * c + slope * s / k, slope * c - y * k * s
        out.append((w / (n * pi), 0.5 / (energy * w**2)))
    return out


def expected(string, count):
    tension, b = stretched(string)
    rows, first = [], None
    for n, (raised, seen) in enumerate(steps(string, count), 1):
        first = first or raised
        hz = string["hz"] * n * raised / first * sqrt((1 + b * n * n) / (1 + b))
        bending = string["loss"] * b * n * n / (1 + b * n * n)
        air = AIR * pi / 4 * string["gauge_m"] ** 2 / string["kg_per_m"] * drag(string["gauge_m"], hz)
        board = string["board"] * tension / string["length_m"] * (1 + b * n * n) * seen
        rows.append((n, hz, 1 / (pi * hz * (bending + air) + board)))
    return rows


def read(path):
    with wave.open(str(path)) as file:
        assert (file.getnchannels(), file.getsampwidth()) == (1, 2)
        return np.frombuffer(file.readframes(file.getnframes()), "<i2") / 32767.0, file.getframerate()


def window(count):
    """Four terms by Blackman and Harris: what is four bins away is 92 dB down."""
    turn = 2 * pi * np.arange(count) / count
    return 0.35875 - 0.48829 * np.cos(turn) + 0.14128 * np.cos(2 * turn) - 0.01168 * np.cos(3 * turn)


def partial(sound, rate, near, begin_s=0.006):
    """Pitch and decay of the partial next to a pitch, from the bin of a row of FFTs that it lies in."""
    start = round(begin_s * rate)
    bin_at = round(near * FRAME / rate)
    rows, w = [], window(FRAME)
    while start + FRAME <= len(sound) - rate // 2:
        line = np.fft.rfft(sound[start : start + FRAME] * w)
        rows.append(line[bin_at])
        if abs(rows[-1]) < FLOOR * abs(rows[0]) or abs(rows[-1]) < 2e-3:
            break
        start += HOP
    rows = np.array(rows)
    if len(rows) < 8:
        return None
    time = np.arange(len(rows)) * HOP / rate
    slope = np.polyfit(time, np.log(abs(rows)), 1)[0]
    # The phase between two frames, but for whole turns, which the bin tells.
    turn = 2 * pi * bin_at / FRAME * HOP
    phase = np.unwrap(np.angle(rows) - turn * np.arange(len(rows)))
    hz = (np.polyfit(time, phase, 1)[0] + 2 * pi * bin_at / FRAME * rate) / (2 * pi)
    return hz, -1 / slope


def main():
    strings = json.loads((folder / "strings.json").read_text())
    out = {
        "made_by": "tests/sound/scripts/measure.py",
        "python": platform.python_version(),
        "numpy": np.__version__,
        "scipy": scipy.__version__,
        "strings": [],
    }
    for string in strings:
        sound, rate = read(folder / f"{string['name']}.wav")
        rows = []
        for n, hz, decay in expected(string, string["partials"]):
            got = partial(sound, rate, hz)
            if got is None or abs(np.sin(n * pi * string["at"])) < 0.05:
                continue
            rows.append(
                {
                    "n": n,
                    "hz": hz,
                    "decay_s": decay,
                    "measured_hz": got[0],
                    "measured_decay_s": got[1],
                }
            )
        out["strings"].append({"name": string["name"], "partials": rows})
    numbers = [0.6, 0.8, 1.0, 1.353, 2.0, 4.0, 10.0, 30.0]
    # M = (r/2) sqrt(w/nu), so |z| = 2 M.
    out["drag"] = [[m, drag(4 * m * sqrt(NU / (2 * pi)), 1.0)] for m in numbers]
    json.dump(out, sys.stdout, indent=1)
    print()


main()
