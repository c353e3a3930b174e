"""General solvers of SciPy on the questions that the core answers in closed form.

    python3 solvers.py --out FOLDER

three-points.csv   f1, f2, f3, IF, signal coil, arrangement (0 across the coil, 1 across the
                   gang), padder, trimmer, inductance: scipy.optimize.fsolve on the three
                   equations "resonates at dial + IF", in SI units
best-points.csv    low end, high end, IF, what is least (0 error over dial, 1 error in hertz),
                   the least greatest error: scipy.optimize.minimize (Nelder-Mead) over the
                   three points, error taken on 20 001 dial settings
pair-curve.csv     hertz, decibels under the centre of three exact pairs: NumPy, a matrix of
                   nodes and meshes solved at each frequency
"""

import argparse
import pathlib

import numpy
from scipy import optimize

SEED = 20_261_125


def oscillator(parts, gang, arrangement):
    """The resonance of the oscillator circuit."""
    padder, trimmer, coil = parts
    if arrangement == 0:
        whole = trimmer + gang * padder / (gang + padder)
    else:
        whole = (gang + trimmer) * padder / (gang + trimmer + padder)
    return 1 / (2 * numpy.pi * numpy.sqrt(coil * whole))


def solved(points, middle, signal, arrangement):
    """Padder, trimmer and inductance, or None: unknown are the logarithms of what each is
    of a likely value, started from several places as a general solver wants."""
    gang = 1 / (4 * numpy.pi**2 * signal * points**2)
    likely = numpy.array([gang[0], gang[2], signal * (points[1] / (points[1] + middle)) ** 2])

    def off(x):
        return (oscillator(likely * numpy.exp(x), gang, arrangement) / (points + middle)) - 1

    for padder in (0.5, 1, 2, 5, 10):
        for trimmer in (0.1, 0.5, 2):
            start = numpy.log([padder, trimmer, 1])
            x, _, fine, _ = optimize.fsolve(off, start, xtol=1e-15, full_output=True)
            if numpy.max(numpy.abs(off(x))) < 4e-15:
                return likely * numpy.exp(x)
    return None


def three_points(draw):
    """Sets of a broadcast receiver's kind, each solved in both arrangements."""
    for _ in range(24):
        low = draw.uniform(150e3, 2e6)
        points = low * numpy.array([1.0, draw.uniform(1.3, 1.7), draw.uniform(1.9, 2.6)])
        middle = draw.uniform(120e3, 900e3)
        signal = draw.uniform(100e-6, 2e-3)
        for arrangement in (0, 1):
            parts = solved(points, middle, signal, arrangement)
            if parts is None:
                raise SystemExit(f"not solved: {points} {middle} {signal} {arrangement}")
            yield (*points, middle, signal, arrangement, *parts)


def error_of(points, middle, dials):
    """Tracking error in hertz at dial settings: the closed curve, as in the books."""
    a, c = points.sum(), points.prod()
    b = points[0] * points[1] + points[0] * points[2] + points[1] * points[2]
    d = a + 2 * middle
    l2 = (b * d - c) / (2 * middle)
    m2 = l2 + middle**2 + a * d - b
    n2 = (c * d + middle**2 * l2) / m2
    return numpy.sqrt(m2 * (dials**2 + n2) / (dials**2 + l2)) - dials - middle


def best_points():
    """The least greatest error over four bands, both ways of counting it."""
    for low, high, middle in [(540e3, 1600e3, 455e3), (540e3, 1600e3, 465e3), (525e3, 1605e3, 470e3), (150e3, 300e3, 470e3)]:
        dials = numpy.linspace(low, high, 20_001)
        for weight in (dials, 1.0):
            greatest = lambda x: numpy.max(numpy.abs(error_of(low + (high - low) * numpy.sort(x), middle, dials) / weight))
            found = min(
                (optimize.minimize(greatest, start, method="Nelder-Mead", options={"xatol": 1e-12, "fatol": 1e-14, "maxiter": 20_000, "maxfev": 20_000})
                 for start in ([0.06, 0.44, 0.92], [0.04, 0.36, 0.88], [0.1, 0.5, 0.9])),
                key=lambda result: result.fun,
            )
            yield low, high, middle, float(weight is not dials), found.fun


def pair_curve():
    """Three alike pairs, 455 kHz, Q 100, critical coupling, one solved system a frequency."""
    omega0 = 2 * numpy.pi * 455e3
    c, q, k = 200e-12, 100.0, 0.01
    inductance = 1 / (omega0**2 * c)
    r = omega0 * inductance / q
    hertz = numpy.linspace(425e3, 485e3, 401)
    volts = []
    for omega in 2j * numpy.pi * hertz:
        mutual = k * inductance
        # Unknown: voltages of both sides, currents of both coils.
        system = numpy.array([
            [omega * c, 0, 1, 0],
            [0, omega * c, 0, 1],
            [1, 0, -(r + omega * inductance), -omega * mutual],
            [0, 1, -omega * mutual, -(r + omega * inductance)],
        ])
        volts.append(abs(numpy.linalg.solve(system, [1, 0, 0, 0])[1]) ** 3)
    centre = volts[200]
    return zip(hertz, 20 * numpy.log10(centre / numpy.array(volts)))


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--out", type=pathlib.Path, required=True)
    folder = asked.parse_args().out
    folder.mkdir(parents=True, exist_ok=True)
    draw = numpy.random.default_rng(SEED)
    for name, rows in [("three-points", three_points(draw)), ("best-points", best_points()), ("pair-curve", pair_curve())]:
        lines = [",".join(repr(float(cell)) for cell in row) for row in rows]
        (folder / f"{name}.csv").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
