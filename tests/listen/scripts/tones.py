"""Tones of strings, made with NumPy, and what the tuner and a general estimator of pitch make of them.

Nothing of Stringloft takes part in the tones: the partials of a stiff string, their decays, hum and noise are written
here once more. The same tones are heard by the tuner, through its door for scripts, and by an estimator that knows
nothing of strings: the autocorrelation of Praat. Needs Python 3 with NumPy and praat-parselmouth, and

    cargo build --release --example listen

Then this writes `tests/listen/tones.json`, what each tone is and what each made of it; it takes some minutes:

    python tests/listen/scripts/tones.py

`tests/listen.rs` makes the tones again from their numbers and must hear the same in them.
"""

import concurrent.futures
import csv
import importlib.metadata
import io
import json
import math
import pathlib
import subprocess
import sys
import tempfile

import numpy
import parselmouth

SEED = 16
ROOT = pathlib.Path(__file__).parents[3]
LISTEN = ROOT / "target" / "release" / "examples" / "listen"
LETTERS = "CDEFGAB"
SEMITONES = dict(zip(LETTERS, (0, 2, 4, 5, 7, 9, 11)))
RATES = (16_000, 22_050, 32_000, 44_100, 48_000, 96_000)
# What sets the tones apart, and how many there are of each.
KINDS = {"plain": 130, "weak_first": 60, "two_strings": 80, "decay": 65, "hum": 65}
NOISES_DB = (40, 20, 10)
# Semitones from the louder string to the quieter one. Never to a string of which the louder one would be a partial.
INTERVALS = (-17, -10, -9, -8, -7, -5, -4, -3, -2, 2, 3, 4, 5, 7, 9, 12, 16, 19, 24)
# No string of a table is less stiff.
LEAST_B = 1e-7
LEAD_S = 0.25
SECONDS = 1.5
MOST_PARTIALS = 40
# Full scale is 1; the tone has this root of the mean square over its first second.
LOUDNESS = 0.1
# Harmonics of the mains and how strong each is, as rectifiers make them. From memory.
HUM = ((1, 1.0), (2, 0.6), (3, 0.5), (4, 0.2), (5, 0.35), (7, 0.2))


def key_hz(key):
    """Pitch of a key number, A4 = 440 Hz, twelve equal steps."""
    return 440.0 * 2.0 ** ((key - 69) / 12)


def strings():
    """Note, key number: the white keys from G7 down to C1."""
    names = [(f"{letter}{octave}", 12 * (octave + 1) + SEMITONES[letter]) for octave in range(1, 8) for letter in LETTERS]
    return [(name, key) for name, key in reversed(names) if key <= 103]


def drawn(rng, number, kind):
    rate = int(rng.choice(RATES))
    noise_db = int(NOISES_DB[number % 3])
    name, key = strings()[int(rng.integers(0, 47))]
    b = 0.0 if rng.random() < 0.1 else float(10 ** rng.uniform(-6, -3))
    tone = {
        "kind": kind,
        "rate": rate,
        "seed": number + 1,
        "string": name,
        "first_hz": key_hz(key) * 2.0 ** (float(rng.uniform(-45, 45)) / 1200),
        "b": b,
        # The design is as far off as modulus and gauge are.
        "b_design": b * float(numpy.clip(1 + 0.12 * rng.standard_normal(), 0.7, 1.3)),
        "pluck": float(rng.uniform(0.12, 0.48)),
        # Decibels for each octave of the partials, beyond the plucked string's own.
        "tilt_db": float(rng.uniform(0, 6)),
        # Decays in 1/s: of the first partial, and more with the square of the number.
        "decay": float(rng.uniform(0.4, 1.5)) * (key_hz(key) / 110.0) ** 0.5,
        "decay_n2": float(rng.uniform(0.002, 0.03)),
        "weak_first_db": 0.0,
        "other_hz": 0.0,
        "other_db": 0.0,
        "hum_hz": 0.0,
        "hum_db": 0.0,
        "noise_db": noise_db,
    }
    if kind == "weak_first":
        # A small soundbox: the first partials of the bass are hardly there, down to not at all.
        name, key = strings()[int(rng.integers(17, 47))]
        tone |= {"string": name, "weak_first_db": float(rng.choice([20.0, 30.0, 200.0])), "pluck": float(rng.uniform(0.1, 0.35))}
        tone["first_hz"] = key_hz(key) * 2.0 ** (float(rng.uniform(-45, 45)) / 1200)
    elif kind == "two_strings":
        other = key + int(rng.choice(INTERVALS))
        while not 24 <= other <= 103:
            other = key + int(rng.choice(INTERVALS))
        tone |= {"other_hz": key_hz(other) * 2.0 ** (float(rng.uniform(-20, 20)) / 1200), "other_db": float(rng.uniform(-20, -8))}
    elif kind == "decay":
        tone |= {"decay": float(rng.uniform(2.0, 6.0)), "decay_n2": float(rng.uniform(0.02, 0.2))}
    elif kind == "hum":
        tone |= {"hum_hz": float(rng.choice([50.0, 60.0])), "hum_db": float(rng.uniform(-30, -20))}
    return {name: rounded(value) for name, value in tone.items()}


def rounded(value):
    """A shorter number, for a shorter file."""
    return float(f"{value:.9g}") if isinstance(value, float) else value


def hashed(seed, count):
    """So many whole numbers of 64 bits: the mixing of SplitMix64 (G. L. Steele and others, 2014; from memory)."""
    with numpy.errstate(over="ignore"):
        z = numpy.uint64(seed) * numpy.uint64(0xD1342543DE82EF95)
        z = z + (numpy.arange(count, dtype=numpy.uint64) + numpy.uint64(1)) * numpy.uint64(0x9E3779B97F4A7C15)
        z = (z ^ (z >> numpy.uint64(30))) * numpy.uint64(0xBF58476D1CE4E5B9)
        z = (z ^ (z >> numpy.uint64(27))) * numpy.uint64(0x94D049BB133111EB)
        return z ^ (z >> numpy.uint64(31))


def noise(seed, count):
    """Nearly normal noise of standard deviation 1: the sum of four even numbers of 16 bits."""
    bits = hashed(seed, count)
    parts = [((bits >> numpy.uint64(shift)) & numpy.uint64(0xFFFF)).astype(float) for shift in (0, 16, 32, 48)]
    return (sum(parts) / 65_536.0 - 2.0 + 2.0 / 65_536.0) * math.sqrt(3.0)


def phase(seed, n):
    return 2 * math.pi * float(hashed(seed, n)[n - 1]) / 2.0**64


def string(tone, first_hz, weak_first_db, seed, t):
    """A plucked stiff string from t = 0 on."""
    b = tone["b"]
    sound = numpy.zeros_like(t)
    for n in range(1, MOST_PARTIALS + 1):
        hz = n * first_hz * math.sqrt((1 + b * n * n) / (1 + b))
        if hz > 0.45 * tone["rate"]:
            break
        amplitude = math.sin(n * math.pi * tone["pluck"]) / n * 10 ** (-tone["tilt_db"] * math.log2(n) / 20)
        if n == 1:
            amplitude *= 10 ** (-weak_first_db / 20)
        decay = tone["decay"] + tone["decay_n2"] * n * n
        sound += amplitude * numpy.exp(-decay * t) * numpy.sin(2 * math.pi * hz * t + phase(seed, n))
    return sound


def loudness(sound, rate):
    return math.sqrt(float(numpy.mean(sound[:rate] ** 2)))


def made(tone):
    """The samples of a tone."""
    rate, seed = tone["rate"], tone["seed"]
    lead, count = round(LEAD_S * rate), round((LEAD_S + SECONDS) * rate)
    t = numpy.arange(count - lead) / rate
    ramp = 1 - numpy.exp(-t / 0.002)
    sound = ramp * string(tone, tone["first_hz"], tone["weak_first_db"], 1_000 * seed, t)
    sound *= LOUDNESS / loudness(sound, rate)
    if tone["other_hz"]:
        other = ramp * string(tone, tone["other_hz"], 0.0, 1_000 * seed + 500, t)
        sound += other * LOUDNESS * 10 ** (tone["other_db"] / 20) / loudness(other, rate)
    samples = numpy.concatenate([numpy.zeros(lead), sound])
    if tone["hum_hz"]:
        t = numpy.arange(count) / rate
        hum = sum(a * numpy.sin(2 * math.pi * n * tone["hum_hz"] * t + n) for n, a in HUM)
        size = math.sqrt(0.5 * sum(a * a for _, a in HUM))
        samples += hum * LOUDNESS * 10 ** (tone["hum_db"] / 20) / size
    return samples + LOUDNESS * 10 ** (-tone["noise_db"] / 20) * noise(seed, count)


def wav(samples, rate):
    """A file of 32-bit floating-point samples."""
    data = samples.astype("<f4").tobytes()
    head = b"RIFF" + (36 + len(data)).to_bytes(4, "little") + b"WAVEfmt " + (16).to_bytes(4, "little")
    form = (3).to_bytes(2, "little") + (1).to_bytes(2, "little") + rate.to_bytes(4, "little")
    form += (4 * rate).to_bytes(4, "little") + (4).to_bytes(2, "little") + (32).to_bytes(2, "little")
    return head + form + b"data" + len(data).to_bytes(4, "little") + data


def table(tone):
    """A harp whose strings all have the inharmonicity of the design, as a table of measurements."""
    lines = ["note,length_mm,material,diameter_mm,density_kg_m3,modulus_gpa,strength_mpa"]
    b, density = max(tone["b_design"], LEAST_B), 8000
    for name, key in strings():
        # B = pi^2 E I / (T L^2), with T = rho A (2 L f)^2 / (1 + B) and I / A = d^2 / 16.
        length, diameter = 90.0 / key_hz(key), 0.5e-3
        modulus = b / (1 + b) * density * 64 * (length * key_hz(key)) ** 2 * length**2 / (math.pi**2 * diameter**2)
        held = min(max(modulus, 1e7), 1e12)
        diameter, modulus = diameter * math.sqrt(modulus / held), held
        lines.append(f"{name},{1e3 * length!r},own {name},{1e3 * diameter!r},{density},{modulus / 1e9!r},1000")
    return "\n".join(lines) + "\n"


def heard(tone, samples):
    """The first note that the tuner finds: its string, its pitch, and how many there are."""
    with tempfile.TemporaryDirectory() as folder:
        harp, sound = pathlib.Path(folder) / "harp.csv", pathlib.Path(folder) / "tone.wav"
        harp.write_text(table(tone))
        sound.write_bytes(wav(samples, tone["rate"]))
        done = subprocess.run([LISTEN, harp, sound], capture_output=True, text=True, check=True)
    rows = list(csv.DictReader(io.StringIO(done.stdout)))
    notes = [row for row in rows if row["kind"] == "note"]
    return {"note": notes[0]["note"], "hz": float(notes[0]["hertz"]), "notes": len(notes)} if notes else None


def estimated(tone, samples):
    """The middle of what the estimator makes of the tone once it has settled, in hertz; 0 where it hears no pitch."""
    rate = tone["rate"]
    settled = samples[round((LEAD_S + 0.15) * rate) :]
    pitch = parselmouth.Sound(settled, rate).to_pitch_ac(pitch_floor=30, pitch_ceiling=3500)
    hz = pitch.selected_array["frequency"]
    return float(numpy.median(hz[hz > 0])) if (hz > 0).any() else 0.0


def cents(hz, tone):
    return 1200 * math.log2(hz / tone["first_hz"])


def row(tone):
    samples = made(tone)
    ours, praat = heard(tone, samples), estimated(tone, samples)
    return tone | {
        "heard_note": ours and ours["note"],
        "notes": ours["notes"] if ours else 0,
        "heard_cents": ours and round(cents(ours["hz"], tone), 4),
        "praat_cents": round(cents(praat, tone), 2) if praat else None,
    }


def drawn_all():
    rng = numpy.random.default_rng(SEED)
    kinds = [kind for kind, count in KINDS.items() for _ in range(count)]
    return [drawn(rng, number, kind) for number, kind in enumerate(kinds)]


def errors(rows, name):
    """The middle and the worst error in cents of those within 50 cents, and how many are not."""
    off = numpy.array([abs(row[name]) if row[name] is not None else math.inf for row in rows])
    near = off[off <= 50]
    return f"{numpy.median(near):.3f} | {near.max():.3f} | {len(off) - len(near)}"


def told(rows, versions):
    """What each made of the tones, as a table."""
    lines = [
        "# 400 tones, and what the tuner and a general estimator make of them",
        "",
        "Written by `scripts/tones.py`, which says how the tones are made: plucked stiff strings from C1 to G7, `B` from 0 to",
        "10⁻³, up to 45 cents off their targets, at rates from 16,000 to 96,000 samples a second. Errors are in cents, the middle",
        "and the worst of those that are not lost; lost is what is more than 50 cents off or not heard: octaves and other strings.",
        f"The estimator is the autocorrelation of Praat ({', '.join(f'{name} {version}' for name, version in versions.items())}), asked for",
        "30 to 3,500 Hz; it knows nothing of strings, and the first partial of a stiff string is not what it looks for.",
        "In the tones of two strings the quieter one is never an octave, a twelfth or two octaves below the louder, whose partials",
        "would then all be its own: that would sound as one string.",
        "",
        "| tones | above noise | count | tuner: middle | worst | lost | Praat: middle | worst | lost |",
        "| --- | --- | --- | --- | --- | --- | --- | --- | --- |",
    ]
    groups = [(kind, noise_db) for kind in KINDS for noise_db in NOISES_DB] + [("all", noise_db) for noise_db in NOISES_DB]
    for kind, noise_db in groups:
        own = [row for row in rows if row["noise_db"] == noise_db and kind in (row["kind"], "all")]
        ours, praat = errors(own, "heard_cents"), errors(own, "praat_cents")
        lines.append(f"| {kind.replace('_', ' ')} | {noise_db} dB | {len(own)} | {ours} | {praat} |")
    return "\n".join(lines) + "\n"


def main():
    with concurrent.futures.ProcessPoolExecutor(2) as pool:
        rows = list(pool.map(row, drawn_all()))
    versions = {name: importlib.metadata.version(name) for name in ("numpy", "praat-parselmouth")}
    lines = ",\n".join("  " + json.dumps(row) for row in rows)
    text = f'{{\n "versions": {json.dumps(versions)},\n "tones": [\n{lines}\n ]\n}}\n'
    (pathlib.Path(__file__).parents[1] / "tones.json").write_text(text)
    (pathlib.Path(__file__).parents[1] / "README.md").write_text(told(rows, versions))
    lost = [row for row in rows if row["heard_cents"] is None or abs(row["heard_cents"]) > 50]
    print(f"lost: {[(row['seed'], row['kind'], row['string'], row['heard_cents']) for row in lost]}", file=sys.stderr)


if __name__ == "__main__":
    main()
