#!/usr/bin/env python3
"""Makes survey_reference.csv: a survey worked out apart, with SciPy's quad and least_squares.

Run: python3 survey_reference.py > survey_reference.csv        (NumPy, SciPy)

An invented shaft of five stations, seven set-ups, a stiffness for each. Every derivative is a
central difference, every integral scipy.integrate.quad with its kinks named. Formulas:
docs/contract.md, sections 2, 3, 4 and 8.
"""
import math

import numpy as np
from scipy.integrate import quad
from scipy.optimize import least_squares, minimize_scalar

X = [0.0, 400.0, 800.0, 1200.0, 1490.0]
DEPTH = [12.50, 17.40, 22.60, 27.50, 31.00]
WIDTH = [12.48, 17.50, 22.50, 27.60, 31.10]
LENGTH = 1490.0
SETUPS = [(100, 1100, 600, 600), (50, 1450, 700, 700), (50, 650, 350, 330), (700, 1450, 1050, 1050),
          (400, 1000, 700, 700), (60, 460, 260, 260), (1000, 1450, 1200, 1230)]
K = [4.0091, 1.8733, 9.4628, 27.972, 24.559, 23.769, 136.66]
FRAME, RATIO, POSITION_U, DIAMETER_U, SHARE = 0.002, 14.0, 0.5, 0.02, 0.5
LOAD_U, GAUGE_U, LOAD_SCALE, GAUGE_SCALE = 0.02, 0.005, 0.001, 0.0005
PAIRS = 9


def straight(y, x):
    return np.interp(x, X, y)


def J(setup, depth, width, inverse_modulus=lambda x: 1.0, ratio=RATIO, breaks=()):
    a, b, c, g = setup
    L = b - a

    def moment(x, at):
        return (b - at) * (x - a) / L if x <= at else (at - a) * (b - x) / L

    def shear(x, at):
        return (b - at) / L if x <= at else -(at - a) / L

    def f(x):
        d, w = straight(depth, x), straight(width, x)
        bending = moment(x, c) * moment(x, g) / (math.pi * w * d**3 / 64)
        shearing = 10 / 9 * ratio * shear(x, c) * shear(x, g) / (math.pi * d * w / 4)
        return (bending + shearing) * inverse_modulus(x)

    cuts = sorted({a, b, c, g, *[x for x in [*X, *breaks] if a < x < b]})
    return sum(quad(f, p, q, epsabs=0, epsrel=1e-12)[0] for p, q in zip(cuts, cuts[1:]))


def modulus(i, setup, depth, width, k=None):
    return J(setup, depth, width) / (1 / (k or K[i]) - FRAME)


def slope(f, h):
    return (f(h) - f(-h)) / (2 * h)


n = len(SETUPS)
E = np.array([modulus(i, SETUPS[i], DEPTH, WIDTH) for i in range(n)])
own = np.zeros(n)
for i, s in enumerate(SETUPS):
    deflections = np.linspace(0, 8, PAIRS)
    weight = 1 / (LOAD_U**2 + K[i]**2 * GAUGE_U**2)
    u_line = 1 / math.sqrt(weight * np.sum((deflections - deflections.mean())**2))
    parts = [slope(lambda h: modulus(i, s, DEPTH, WIDTH, K[i] + h), 1e-4) * u_line]
    for j in range(4):
        parts.append(POSITION_U * slope(
            lambda h: modulus(i, tuple(p + (h if q == j else 0) for q, p in enumerate(s)), DEPTH, WIDTH), 0.01))
    own[i] = math.sqrt(sum(p * p for p in parts))

effects = []
sums = np.zeros(n)
for table in ('depth', 'width'):
    for j in range(len(X)):
        effect = np.zeros(n)
        for i, s in enumerate(SETUPS):
            def moved(h):
                d = [v + (h if table == 'depth' and q == j else 0) for q, v in enumerate(DEPTH)]
                w = [v + (h if table == 'width' and q == j else 0) for q, v in enumerate(WIDTH)]
                return modulus(i, s, d, w)
            effect[i] = slope(moved, 1e-3)
        sums += effect
        effects.append(DIAMETER_U * math.sqrt(1 - SHARE) * effect)
effects.append(DIAMETER_U * math.sqrt(SHARE) * sums)
per_scale = np.array([slope(lambda h: modulus(i, s, DEPTH, WIDTH, K[i] * (1 + h)), 1e-5) for i, s in enumerate(SETUPS)])
effects.append(LOAD_SCALE * per_scale)
effects.append(GAUGE_SCALE * per_scale)
V = np.diag(own**2) + sum(np.outer(e, e) for e in effects)
even = np.array([J(s, DEPTH, WIDTH) for s in SETUPS])


def fitted(shown, start):
    r = least_squares(lambda p: (E - shown(p)) / own, start, x_scale=np.abs(start), xtol=1e-15, ftol=1e-15, gtol=1e-15)
    p = r.x
    jac = np.array([(shown(p + d) - shown(p - d)) / (2 * d.max()) for d in np.diag(np.abs(p) * 1e-4)]).T
    w = np.diag(1 / own**2)
    rows = np.linalg.solve(jac.T @ w @ jac, jac.T @ w)
    return p, np.sqrt(np.diag(rows @ V @ rows.T)), float(np.sum(((E - shown(p)) / own)**2))


def one(p):
    return np.full(n, p[0])


def ratio(p):
    return np.array([even[i] / J(s, DEPTH, WIDTH, ratio=p[1]) * p[0] for i, s in enumerate(SETUPS)])


def tip_to_butt(p):
    return np.array([even[i] / J(s, DEPTH, WIDTH, lambda x: 1 / (p[0] + (p[1] - p[0]) * x / LENGTH))
                     for i, s in enumerate(SETUPS)])


def two_pieces(border):
    near = np.array([J(s, DEPTH, WIDTH, lambda x: 1.0 * (x < border), breaks=[border]) for s in SETUPS])
    return lambda p: even / (near / p[0] + (even - near) / p[1])


print('# made by survey_reference.py')
for i in range(n):
    print(f'run,{i},{E[i]:.12g},{own[i]:.12g}')
for name, shown, start in (('one', one, [E.mean()]), ('ratio', ratio, [E.mean(), 14.0]),
                           ('straight', tip_to_butt, [E.mean(), E.mean()])):
    p, u, chi = fitted(shown, np.array(start))
    print(f'{name},chiSquared,{chi:.10g}')
    for j in range(len(p)):
        print(f'{name},{j},{p[j]:.10g},{u[j]:.8g}')
grid = np.linspace(200, 1300, 56)
best = min(grid, key=lambda b: fitted(two_pieces(b), np.array([E.mean()] * 2))[2])
border = minimize_scalar(lambda b: fitted(two_pieces(b), np.array([E.mean()] * 2))[2],
                         bounds=(best - 20, best + 20), method='bounded', options={'xatol': 1e-3}).x
p, u, chi = fitted(two_pieces(border), np.array([E.mean()] * 2))
print(f'pieces,chiSquared,{chi:.10g}')
print(f'pieces,border,{border:.6g}')
for j in range(2):
    print(f'pieces,{j},{p[j]:.10g}')
