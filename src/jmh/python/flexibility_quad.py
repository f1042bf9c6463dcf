"""The shaft of BeamBenchmark by SciPy's adaptive quadrature: its flexibility, and how long one takes.

python3 src/jmh/python/flexibility_quad.py (needs NumPy and SciPy)
"""
import math
import time

import numpy as np
from scipy.integrate import quad

STATION_MM = np.array([0.0, 1490.0])
DEPTH_MM = np.array([12.50, 31.0])
WIDTH_MM = np.array([12.48, 31.0])


def unit_load(x, at, a, b):
    """Bending moment and shear of one newton on supports at a and b."""
    if x <= at:
        return (b - at) / (b - a) * (x - a), (b - at) / (b - a)
    return (at - a) / (b - a) * (b - x), -(at - a) / (b - a)


def flexibility(a, b, load, gauge, ratio, turn_degrees=0.0):
    """J of docs/contract.md, section 2, in 1/mm, for an ellipse."""
    cos2 = math.cos(math.radians(turn_degrees)) ** 2

    def integrand(x):
        d = np.interp(x, STATION_MM, DEPTH_MM)
        w = np.interp(x, STATION_MM, WIDTH_MM)
        moment, shear = unit_load(x, load, a, b)
        moment_g, shear_g = unit_load(x, gauge, a, b)
        inverse = 64 / math.pi * (cos2 / (w * d**3) + (1 - cos2) / (d * w**3))
        return moment * moment_g * inverse + 10 / 9 * ratio * shear * shear_g * 4 / (math.pi * d * w)

    ends = sorted({a, load, gauge, b})
    return sum(quad(integrand, p, q, epsabs=0, epsrel=1e-12)[0] for p, q in zip(ends, ends[1:]))


def microseconds(repeats=100, rounds=20):
    """Processor time of one call, the least of some rounds."""
    best = math.inf
    for _ in range(rounds):
        start = time.process_time()
        for _ in range(repeats):
            flexibility(100.0, 1100.0, 600.0, 600.0, 14.0)
        best = min(best, (time.process_time() - start) / repeats)
    return 1e6 * best


if __name__ == "__main__":
    print(f"{flexibility(100.0, 1100.0, 600.0, 600.0, 14.0):.15g} 1/mm, {microseconds():.0f} us")
