"""The rivals' side of `cargo site bench core`: NumPy, SciPy and ngspice answer the questions
and say how long each answer took.

    python rivals.py QUESTIONS.toml

prints a JSON object a line: {"question", "seconds", "answers"}. Each question is answered
as one who knows the program would write it: NumPy without loops over points, SciPy with a
good start and no more digits than are asked for. Times are the least of many batches, as
on the core's side.
"""

import json
import pathlib
import struct
import subprocess
import sys
import tempfile
import time
import tomllib

import numpy
from scipy import optimize

BATCH = 2e-3
BATCHES = 60

# ngspice tells its own analysis time in whole milliseconds: so many sweeps a telling.
NGSPICE_SWEEPS = 100
NGSPICE_RUNS = 5


def least_seconds(work):
    """Seconds that a piece of work takes: the least of many batches."""

    def batch(times):
        started = time.perf_counter()
        for _ in range(times):
            work()
        return time.perf_counter() - started

    times = 1
    while batch(times) < BATCH:
        times *= 2
    # A slow answer is not asked for longer than a second or two in all.
    batches = BATCHES if times > 1 else 20
    return min(batch(times) for _ in range(batches)) / times


def say(question, seconds, answers):
    answers = [float(answer) for answer in numpy.ravel(answers)]
    print(json.dumps({"question": question, "seconds": seconds, "answers": answers}), flush=True)


def hertz_of(sweep):
    return sweep["first"] + sweep["step"] * numpy.arange(sweep["points"])


def pair(hertz, l1, c1, r1, load1, l2, c2, r2, load2, k):
    """Transfer impedance of an exact pair, as node equations give it."""
    jw = 2j * numpy.pi * hertz
    z1 = r1 + jw * l1
    z2 = r2 + jw * l2
    zm = jw * (k * numpy.sqrt(l1 * l2))
    delta = z1 * z2 - zm**2
    y1 = z2 / delta + jw * c1 + 1 / load1
    y2 = z1 / delta + jw * c2 + 1 / load2
    across = zm / delta
    return across / (y1 * y2 - across**2)


def decibels_under(volts, centre):
    decibels = 20 * numpy.log10(numpy.abs(volts))
    return decibels[centre] - decibels


def curve(asked, sweep):
    hertz = hertz_of(sweep)
    centre = int(numpy.flatnonzero(hertz == asked["centre"])[0])

    def answer():
        volts = pair(hertz, *asked["pairs"][0])
        for parts in asked["pairs"][1:]:
            volts = volts * pair(hertz, *parts)
        return decibels_under(volts, centre)

    say(f"curve-{sweep['points']}", least_seconds(answer), answer())


def netlist(asked, sweep, sweeps, writes):
    """The same chain for ngspice: each pair drives the next through a valve of 1 S."""
    lines = ["* a chain of exact pairs", "I1 0 p1 DC 0 AC 1"]
    for number, (l1, c1, r1, load1, l2, c2, r2, load2, k) in enumerate(asked["pairs"], 1):
        p, s = f"p{number}", f"s{number}"
        if number > 1:
            lines.append(f"G{number} 0 {p} s{number - 1} 0 1")
        for side, node, l, c, r, load in (("P", p, l1, c1, r1, load1), ("S", s, l2, c2, r2, load2)):
            lines += [
                f"C{side}{number} {node} 0 {c!r}",
                f"RA{side}{number} {node} 0 {load!r}",
                f"L{side}{number} {node} {node}m {l!r}",
                f"R{side}{number} {node}m 0 {r!r}",
            ]
        lines.append(f"K{number} LP{number} LS{number} {k!r}")
    last = sweep["first"] + sweep["step"] * (sweep["points"] - 1)
    analysis = f"ac lin {sweep['points']} {sweep['first']!r} {last!r}"
    lines += [".control", "set filetype=binary", f"repeat {sweeps}", analysis]
    lines += [f"write out.raw v(s{len(asked['pairs'])})"] if writes else ["destroy all"]
    return "\n".join([*lines, "end", "rusage totaltime", "rusage", "quit 0", ".endc", ".end", ""])


def ngspice(text):
    """What ngspice prints, and the raw file where it writes one."""
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        (folder / "chain.cir").write_text(text)
        done = subprocess.run(["ngspice", "-b", "chain.cir"], cwd=folder, capture_output=True, text=True, check=True)
        raw = folder / "out.raw"
        return done.stdout, raw.read_bytes() if raw.exists() else b""


def analysis_seconds(said):
    """ngspice's own figure for its analyses: no reading, no writing, no start."""
    line = next(line for line in said.splitlines() if line.startswith("Total analysis time"))
    return float(line.split("=")[1])


def ngspice_curve(asked, sweep):
    _, raw = ngspice(netlist(asked, sweep, 1, writes=True))
    _, _, body = raw.partition(b"Binary:\n")
    # Frequency and one voltage, both complex.
    rows = numpy.array(struct.unpack(f"<{4 * sweep['points']}d", body)).reshape(-1, 4)
    volts = rows[:, 2] + 1j * rows[:, 3]
    centre = int(numpy.flatnonzero(hertz_of(sweep) == asked["centre"])[0])
    text = netlist(asked, sweep, NGSPICE_SWEEPS, writes=False)
    times = [analysis_seconds(ngspice(text)[0]) for _ in range(NGSPICE_RUNS)]
    say(f"ngspice-{sweep['points']}", min(times) / NGSPICE_SWEEPS, decibels_under(volts, centre))


def tracking(asked):
    """Padder, trimmer and coil as the unknowns of three resonances, as logarithms."""
    settings, middle, coil = numpy.array(asked["settings"]), asked["if"], asked["signal-coil"]
    gang = 1 / (4 * numpy.pi**2 * coil * settings**2)
    wanted = settings + middle
    # A padder like the gang's largest, a trimmer like its least, a coil for the middle.
    start = numpy.log([gang[0], gang[2], coil * (settings[1] / wanted[1]) ** 2])

    def off(logarithms):
        padder, trimmer, inductance = numpy.exp(logarithms)
        whole = trimmer + gang * padder / (gang + padder)
        return 1 / (2 * numpy.pi * numpy.sqrt(inductance * whole)) / wanted - 1

    def answer():
        # The same digits as are compared.
        return numpy.exp(optimize.fsolve(off, start, xtol=1e-12))

    say("tracking", least_seconds(answer), answer())


def error_of(settings, middle, dials):
    """Tracking error in hertz at dial settings: the closed curve, as in the books."""
    f1, f2, f3 = settings
    a = f1 + f2 + f3
    b = f1 * f2 + f1 * f3 + f2 * f3
    c = f1 * f2 * f3
    d = a + 2 * middle
    l2 = (b * d - c) / (2 * middle)
    m2 = l2 + middle**2 + a * d - b
    n2 = (c * d + middle**2 * l2) / m2
    square = dials * dials
    return numpy.sqrt(m2 * (square + n2) / (square + l2)) - dials - middle


def best_points(asked):
    """The least greatest error over the dial: a simplex over the three settings, the error
    looked at on 2 001 places of the dial."""
    low, high, middle = asked["low"], asked["high"], asked["if"]
    dials = numpy.linspace(low, high, 2_001)
    width = high - low

    def greatest(shares):
        return numpy.abs(error_of(low + width * shares, middle, dials) / dials).max()

    def answer():
        # From the places where a cubic would be level.
        start = [0.067, 0.5, 0.933]
        return optimize.minimize(greatest, start, method="Nelder-Mead", options={"xatol": 1e-7, "fatol": 1e-10}).fun

    say("best-points", least_seconds(answer), answer())


def card(asked):
    """Oscillator, image, image rejection, IF rejection, tracking error and loss, each of
    every channel."""
    dials = asked["first"] + asked["step"] * numpy.arange(asked["channels"])
    middle, q, circuits = asked["if"], asked["q"], asked["circuits"]

    def selectivity(f, f0, circuits):
        y = (f - f0) * (f + f0) / (f * f0)
        return 10 * circuits * numpy.log10(1 + (q * y) ** 2)

    def answer():
        oscillator = dials + middle
        image = dials + 2 * middle
        image_rejection = selectivity(image, dials, circuits)
        if_rejection = selectivity(middle, dials, circuits)
        error = error_of(asked["settings"], middle, dials)
        loss = selectivity(dials + error, dials, 1)
        return oscillator, image, image_rejection, if_rejection, error, loss

    say("card", least_seconds(answer), numpy.transpose(answer()))


def main():
    with open(sys.argv[1], "rb") as file:
        questions = tomllib.load(file)
    asked = questions["curve"]
    for sweep in asked["sweeps"]:
        curve(asked, sweep)
    ngspice_curve(asked, asked["sweeps"][-1])
    tracking(questions["tracking"])
    best_points(questions["best-points"])
    card(questions["card"])


if __name__ == "__main__":
    main()
