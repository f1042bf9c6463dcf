#!/usr/bin/env python3
"""Writes forecast_reference.json beside itself: what finished shafts are, worked out another way.

Sections 2 and 5 of docs/contract.md by mpmath's tanh-sinh rule with 30 digits, straight from their
words; the derivative by the diameter by a difference quotient; the cut by exact fractions, every
crossing of every two lines tried; the first free-free frequency by shooting (Runge-Kutta over
y, y', M, V from end to end until both free-end conditions hold), which knows no elements.
Needs Python 3 and mpmath. The cases are invented; the first is the contract's own example.
"""
import json
import math
import os
import random
from fractions import Fraction

import mpmath as mp

mp.mp.dps = 30
HERE = os.path.dirname(os.path.abspath(__file__))


def line(xs, ys, x):
    i = 0
    while i < len(xs) - 2 and x >= xs[i + 1]:
        i += 1
    return ys[i] + (ys[i + 1] - ys[i]) * (x - xs[i]) / (xs[i + 1] - xs[i])


def core(h, R, lib=mp):
    """Area and second moment of |y|, |z| <= h inside a circle of radius R."""
    pi = lib.pi
    if h >= R:
        return pi * R * R, pi * R**4 / 4
    if 2 * h * h <= R * R:
        return 4 * h * h, 4 * h**4 / 3
    a = lib.acos(h / R)
    s, c = lib.sin(a), h / R
    area = pi * R * R - 4 * R * R * (a - s * c)
    second = (pi * R**4 / 4 - R**4 / 2 * (a - s * c + 2 * s**3 * c)
              - R**4 / 6 * (3 * a - 3 * s * c - 2 * s**3 * c))
    return area, second


def core_by_strips(h, R):
    """The same by quadrature over strips, to check the closed form."""
    width = lambda y: 2 * min(h, mp.sqrt(R * R - y * y))
    top = min(h, R)
    cuts = sorted({mp.mpf(0), top} | ({mp.sqrt(R * R - h * h)} if h < R < h * mp.sqrt(2) else set()))
    return (2 * mp.quad(width, cuts), 2 * mp.quad(lambda y: y * y * width(y), cuts))


for h in (0, 4, 10, 10.3, 12, 14.4, 14.5, 16):
    for one, other in zip(core(mp.mpf(h), mp.mpf(14.5)), core_by_strips(mp.mpf(h), mp.mpf(14.5))):
        assert abs(one - other) < 1e-15 * (1 + abs(one)), h


class Shaft:
    """A finished shaft; grow is added to every diameter, spliced moduli may be replaced."""

    def __init__(self, case, grow=0, lib=mp):
        num = mp.mpf if lib is mp else float
        self.lib = lib
        f = case["order"]["finish"]
        self.L = num(f["lengthMm"])
        self.xs = [num(k["xMm"]) for k in f["taper"]]
        self.ds = [num(k["diameterMm"]) + grow for k in f["taper"]]
        self.splice = f.get("splice")
        self.ferrule = f.get("ferrule")
        self.weights = f.get("weights", [])
        self.extras = f.get("extras", [])
        self.E = num(case["modulusMPa"])
        self.r = num(case["modulusToShearRatio"])
        if self.splice:
            self.from_ = num(self.splice["fromMm"])
            self.butt = num(self.splice["coreHalfAtButtMm"])
            self.Es = num(self.splice["modulusMPa"])
        self.num = num
        density = case.get("densityKgM3")
        self.rho = None if density is None else num(density) / 1000000

    def R(self, x):
        return line(self.xs, self.ds, x) / 2

    def h(self, x):
        start = self.R(self.from_)
        return start + (self.butt - start) * (x - self.from_) / (self.L - self.from_)

    def parts(self, x, R):
        """Areas and second moments (core, splice) within radius R."""
        A, I = self.lib.pi * R * R, self.lib.pi * R**4 / 4
        if not self.splice or x <= self.from_:
            return A, A * 0, I, I * 0
        a, i = core(self.h(x), R, self.lib)
        return a, A - a, i, I - i

    def EI(self, x):
        _, _, ic, is_ = self.parts(x, self.R(x))
        return self.E * ic + (self.Es * is_ if self.splice else 0)

    def perMm(self, x):
        R = self.R(x)
        if self.ferrule and x < self.ferrule["lengthMm"]:
            b = self.num(self.ferrule["boreMm"]) / 2
            return self.lib.pi * (self.rho * b * b
                                  + self.num(self.ferrule["densityKgM3"]) / 1000000 * (R * R - b * b))
        rs = self.num(self.splice["densityKgM3"]) / 1000000 if self.splice else 0
        ac, as_, _, _ = self.parts(x, R)
        m = self.rho * ac + rs * as_
        for w in self.weights:
            if w["fromMm"] < x < w["toMm"]:
                q = self.num(w["diameterMm"]) / 2
                ac, as_, _, _ = self.parts(x, q)
                m += self.num(w["densityKgM3"]) / 1000000 * self.lib.pi * q * q - self.rho * ac - rs * as_
        return m

    def cuts(self, radii=()):
        cuts = set(self.xs)
        if self.splice and self.from_ < self.L:
            cuts.add(self.from_)
            stops = sorted({self.from_, self.L} | {x for x in self.xs if x > self.from_})
            wanted = [lambda x: self.R(x), lambda x: self.R(x) * self.lib.sqrt(self.num(1) / 2)]
            for q in radii:
                wanted += [lambda x, q=q: q, lambda x, q=q: q * self.lib.sqrt(self.num(1) / 2)]
            for a, b in zip(stops, stops[1:]):
                for w in wanted:
                    # just inside a, since line() takes the piece behind a knot
                    ua, ub = self.h(a) - w(a), self.h(b) - w(b)
                    if (ua < 0) != (ub < 0) and ua != ub:
                        cuts.add(a + (b - a) * ua / (ua - ub))
        return cuts

    def flexibility(self, setup, what="F"):
        a, b, c, g = (self.num(setup[k]) for k in ("supportAMm", "supportBMm", "loadMm", "gaugeMm"))
        S = b - a
        M = lambda x, at: (b - at) * (x - a) / S if x <= at else (at - a) * (b - x) / S
        V = lambda x, at: (b - at) / S if x <= at else -(at - a) / S
        kappa = self.num(10) / 9

        def integrand(x):
            A = self.lib.pi * self.R(x) ** 2
            _, _, ic, is_ = self.parts(x, self.R(x))
            D = self.E * ic + (self.Es * is_ if self.splice else 0)
            mm, vv = M(x, c) * M(x, g), kappa * self.r * V(x, c) * V(x, g) / A
            if what == "F":
                return mm / D + vv / self.E
            if what == "E":
                return -mm * ic / D**2 - vv / self.E**2
            return -mm * is_ / D**2

        stops = sorted({a, b, c, g} | {x for x in self.cuts() if a < x < b})
        return mp.quad(integrand, stops)

    def mass(self):
        radii = [self.num(w["diameterMm"]) / 2 for w in self.weights]
        stops = {self.num(0), self.L} | self.cuts(radii)
        if self.ferrule:
            stops.add(self.num(self.ferrule["lengthMm"]))
        for w in self.weights:
            stops |= {self.num(w["fromMm"]), self.num(w["toMm"])}
        stops = sorted(stops)
        m = mp.quad(self.perMm, stops)
        m1 = mp.quad(lambda x: x * self.perMm(x), stops)
        for e in self.extras:
            m += self.num(e["massG"])
            m1 += self.num(e["massG"]) * self.num(e["xMm"])
        return m, self.L - m1 / m

    def breaks(self):
        radii = [w["diameterMm"] / 2 for w in self.weights]
        stops = {0.0, self.L} | self.cuts(radii) | {e["xMm"] for e in self.extras}
        if self.ferrule:
            stops.add(self.ferrule["lengthMm"])
        for w in self.weights:
            stops |= {w["fromMm"], w["toMm"]}
        stops = sorted(stops)
        return [s for i, s in enumerate(stops) if i == 0 or s - stops[i - 1] > 1e-9]

    def shoot(self, table, w2):
        """What is left of the conditions M = V = 0 at the butt, as a determinant."""
        ends = []
        for y in ((1.0, 0.0, 0.0, 0.0), (0.0, 1.0, 0.0, 0.0)):
            y = list(y)
            for part in table:
                if part[0] == "point":
                    y[3] += w2 * part[1] * y[0]
                    continue
                _, dx, samples = part
                for (k0, m0), (k1, m1), (k2, m2) in samples:
                    a = (y[1], y[2] * k0, y[3], w2 * m0 * y[0])
                    z = [p + dx / 2 * q for p, q in zip(y, a)]
                    b = (z[1], z[2] * k1, z[3], w2 * m1 * z[0])
                    z = [p + dx / 2 * q for p, q in zip(y, b)]
                    c = (z[1], z[2] * k1, z[3], w2 * m1 * z[0])
                    z = [p + dx * q for p, q in zip(y, c)]
                    d = (z[1], z[2] * k2, z[3], w2 * m2 * z[0])
                    y = [p + dx / 6 * (e + 2 * f + 2 * g + h) for p, e, f, g, h in zip(y, a, b, c, d)]
            ends.append(y)
        return ends[0][2] * ends[1][3] - ends[1][2] * ends[0][3]

    def table(self, step):
        table, stops = [], self.breaks()
        points = {}
        for e in self.extras:
            at = min(stops, key=lambda s: abs(s - e["xMm"]))
            points[at] = points.get(at, 0.0) + e["massG"]
        for a, b in zip(stops, stops[1:]):
            if a in points:
                table.append(("point", points[a]))
            n = max(2, math.ceil((b - a) / step))
            dx = (b - a) / n
            at = lambda x: (1 / self.EI(x), self.perMm(x))
            eps = 1e-12 * (b - a)
            grid = [at(min(max(a + dx * i / 2, a + eps), b - eps)) for i in range(2 * n + 1)]
            table.append(("run", dx, [(grid[2 * i], grid[2 * i + 1], grid[2 * i + 2]) for i in range(n)]))
        if stops[-1] in points:
            table.append(("point", points[stops[-1]]))
        return table

    def hz(self):
        w2 = lambda f: (2 * math.pi * f) ** 2 / 1e6
        coarse = self.table(5.0)
        f = 3.0
        before = self.shoot(coarse, w2(f))
        while True:
            now = self.shoot(coarse, w2(f * 1.05))
            if (now < 0) != (before < 0):
                break
            f, before = f * 1.05, now
        fine = self.table(0.5)
        a, b = f * 0.99, f * 1.06
        ya, yb = self.shoot(fine, w2(a)), self.shoot(fine, w2(b))
        assert (ya < 0) != (yb < 0)
        for _ in range(60):
            c = (a * yb - b * ya) / (yb - ya)
            yc = self.shoot(fine, w2(c))
            if (yc < 0) != (yb < 0):
                a, ya = b, yb
            else:
                ya /= 2  # Illinois
            b, yb = c, yc
            if abs(b - a) < 1e-11 * b or yc == 0:
                break
        return b


def lesser(stations, length):
    """The lesser of depth and width as knots in exact fractions, from end to end."""
    F = Fraction
    xs = [F(s["xMm"]) for s in stations]
    d = [F(s["depthMm"]) for s in stations]
    w = [F(s.get("widthMm", s["depthMm"])) for s in stations]
    at = lambda ys, x: line(xs, ys, x)
    places = sorted({F(0), F(length)} | set(xs))
    for a, b in list(zip(places, places[1:])):
        ua, ub = at(d, a) - at(w, a), at(d, b) - at(w, b)
        if ua * ub < 0:
            places.append(a + (b - a) * ua / (ua - ub))
    places.sort()
    return places, [min(at(d, x), at(w, x)) for x in places]


def spare(blank, finish, cut):
    (bx, by), (fx, fy) = blank, finish
    places = sorted({x for x in fx} | {b - cut for b in bx if 0 <= b - cut <= fx[-1]})
    out = lambda x: x + cut >= bx[-1] and cut + fx[-1] > bx[-1]
    values = [(0 if out(x) else line(bx, by, x + cut)) - line(fx, fy, x) for x in places]
    least = min(values)
    return least, places[values.index(least)]


def best_cut(blank, finish):
    (bx, by), (fx, fy) = blank, finish
    last = bx[-1] - fx[-1]
    if last < 0:
        return Fraction(0)
    passes = sorted({Fraction(0), last} | {b - f for b in bx for f in fx if 0 < b - f < last})
    tried = set(passes)
    for a, b in zip(passes, passes[1:]):
        middle = (a + b) / 2
        lines = [(line(bx, by, x + a) - y, line(bx, by, x + b) - y) for x, y in zip(fx, fy)]
        lines += [(y - line(fx, fy, x - a), y - line(fx, fy, x - b))
                  for x, y in zip(bx, by) if 0 <= x - middle <= fx[-1]]
        for i, p in enumerate(lines):
            for q in lines[:i]:
                u, v = p[0] - q[0], p[1] - q[1]
                if u * v < 0:
                    tried.add(a + (b - a) * u / (u - v))
    values = [(spare(blank, finish, c)[0], -c) for c in tried]
    return -max(values)[1]


def contract_case():
    return {
        "name": "contract", "modulusMPa": 12340.0, "modulusUncertaintyMPa": 54.929218933393294,
        "modulusToShearRatio": 14.0,
        "shaft": {"lengthMm": 1490.0, "massG": 405.0,
                  "stations": [{"xMm": 0, "depthMm": 12.50, "widthMm": 12.48}, {"xMm": 1490, "depthMm": 31.0}]},
        "order": {
            "finish": {
                "lengthMm": 1473.0, "diameterUncertaintyMm": 0.05,
                "taper": [{"xMm": 0, "diameterMm": 9.5}, {"xMm": 1473, "diameterMm": 29.0}],
                "cutFromMm": 8.0,
                "ferrule": {"lengthMm": 9.5, "boreMm": 8.0, "densityKgM3": 8500},
                "splice": {"fromMm": 1030.0, "coreHalfAtButtMm": 4.0, "densityKgM3": 1120,
                           "modulusMPa": 15500, "modulusUncertaintyPercent": 0},
                "weights": [{"fromMm": 1400, "toMm": 1450, "diameterMm": 12, "densityKgM3": 11340}],
                "extras": [{"name": "joint", "xMm": 740, "massG": 38}]},
            "ask": {"setup": {"supportAMm": 100, "supportBMm": 1100, "loadMm": 600, "gaugeMm": 600},
                    "stiffnessNPerMm": 2.25, "tolerancePercent": 5.0},
            "alsoAsked": [{"setup": {"supportAMm": 700, "supportBMm": 1450, "loadMm": 1075, "gaugeMm": 1075},
                           "stiffnessNPerMm": 21.5, "tolerancePercent": 8}]}}


def invented(i):
    rnd = random.Random(1000 + i)
    u = lambda a, b, n=1: round(rnd.uniform(a, b), n)
    L = u(1380, 1500)
    tip, butt = u(8.5, 11, 2), u(27, 31, 2)
    knots = [(0, tip), (L, butt)]
    if i % 3:
        x = u(300, 800)
        knots.insert(1, (x, round(tip + (butt - tip) * x / L + rnd.uniform(-0.8, 0.8), 2)))
    if i % 4 == 1:  # a waist in the butt: the radius falls, then grows faster than the core shrinks
        x = u(1080, 1200)
        knots.insert(-1, (x, u(20, 23, 2)))
        knots.insert(-1, (u(1250, 1330), u(29, 31, 2)))
    taper = [{"xMm": x, "diameterMm": d} for x, d in knots]
    finish = {"lengthMm": L, "taper": taper}
    if i % 5 != 4:
        finish["diameterUncertaintyMm"] = u(0, 0.1, 3)
    if i % 2:
        finish["ferrule"] = {"lengthMm": u(8, 12), "boreMm": round(tip - 1.3, 2), "densityKgM3": 8500.0}
    if i % 6 != 5:
        start = u(900, 1250)
        half = [u(2, 9, 2), u(9, 12, 2), 0.0, round(butt / 2, 4), u(12, 13.4, 2)][i % 5]
        finish["splice"] = {"fromMm": start, "coreHalfAtButtMm": half, "densityKgM3": u(900, 1250, 0),
                            "modulusMPa": u(9000, 19000, 0), "modulusUncertaintyPercent": u(0, 8)}
    if i % 3 != 1:
        a = u(1150, 1300)
        finish["weights"] = [{"fromMm": a, "toMm": u(a + 5, L - 30), "diameterMm": u(9, 19),
                              "densityKgM3": 11340.0}]
        if i % 2:
            end = finish["weights"][0]["toMm"]
            finish["weights"].append({"fromMm": end, "toMm": L, "diameterMm": u(6, 12), "densityKgM3": 7850.0})
    if i % 4 == 2:
        finish["extras"] = [{"name": "joint", "xMm": u(700, 1100), "massG": u(10, 60)},
                            {"name": "plate", "xMm": L, "massG": u(1, 9)}]
    blank_length = round(L + rnd.uniform(-0.5, 60), 1)
    d = [round(rnd.uniform(0.6, 2.5), 2) for _ in range(4)]
    stations = [{"xMm": u(0, 40), "depthMm": tip + d[0], "widthMm": tip + d[1]},
                {"xMm": u(400, 900), "depthMm": 21.0 + d[2], "widthMm": 21.0 + d[3]},
                {"xMm": u(blank_length - 60, blank_length), "depthMm": butt + d[1], "widthMm": butt + d[3]}]
    if i % 3 == 2:
        del stations[1]
    for s in stations:
        s["depthMm"], s["widthMm"] = round(s["depthMm"], 2), round(s["widthMm"], 2)
    if i % 7 == 3:
        for s in stations:
            del s["widthMm"]
    ask = lambda a, b, c, g: {"setup": {"supportAMm": a, "supportBMm": b, "loadMm": c, "gaugeMm": g},
                              "stiffnessNPerMm": 2.2, "tolerancePercent": 5.0}
    asks = [ask(100, 1100, 600, 600), ask(u(600, 1000), u(L - 60, L), 1150.5, 1120.25),
            ask(0, u(600, 900), u(200, 500), u(200, 500))]
    rnd.shuffle(asks)
    if i % 4 == 0 and "splice" in finish:  # a support that stands just behind the splice's start
        asks.append(ask(round(finish["splice"]["fromMm"] + 0.01, 2), L, round(L - 100, 1), round(L - 120, 1)))
    if i % 3 == 0:
        finish["cutFromMm"] = u(0, 30)
    return {"name": "invented %d" % i, "modulusMPa": u(9000, 15000, 1), "modulusUncertaintyMPa": u(20, 200, 1),
            "modulusToShearRatio": u(8, 20), "shaft": {"lengthMm": blank_length, "massG": u(380, 640), "stations": stations},
            "order": {"finish": finish, "ask": asks[0], "alsoAsked": asks[1:]}}


def volume(shaft):
    xs = [mp.mpf(s["xMm"]) for s in shaft["stations"]]
    d = [mp.mpf(s["depthMm"]) for s in shaft["stations"]]
    w = [mp.mpf(s.get("widthMm", s["depthMm"])) for s in shaft["stations"]]
    stops = sorted({mp.mpf(0), mp.mpf(shaft["lengthMm"])} | set(xs))
    return mp.quad(lambda x: mp.pi / 4 * line(xs, d, x) * line(xs, w, x), stops)


def expected(case):
    density = case["shaft"]["massG"] / volume(case["shaft"]) * 1000000
    case["densityKgM3"] = density
    shaft = Shaft(case)
    finish = case["order"]["finish"]
    asks = []
    for ask in [case["order"]["ask"]] + case["order"]["alsoAsked"]:
        setup = ask["setup"]
        k = 1 / shaft.flexibility(setup)
        eps = mp.mpf("1e-13")
        by_d = (1 / Shaft(case, eps).flexibility(setup) - 1 / Shaft(case, -eps).flexibility(setup)) / (2 * eps)
        parts = [-k * k * shaft.flexibility(setup, "E") * case["modulusUncertaintyMPa"],
                 by_d * mp.mpf(finish.get("diameterUncertaintyMm", 0.05))]
        if shaft.splice:
            parts.append(-k * k * shaft.flexibility(setup, "S") * shaft.Es
                         * mp.mpf(shaft.splice["modulusUncertaintyPercent"]) / 100)
        asks.append({"stiffnessNPerMm": k, "stiffnessStdUncertaintyNPerMm": mp.sqrt(sum(p * p for p in parts))})
    mass, balance = shaft.mass()
    blank = lesser(case["shaft"]["stations"], case["shaft"]["lengthMm"])
    round_ = ([Fraction(k["xMm"]) for k in finish["taper"]], [Fraction(k["diameterMm"]) for k in finish["taper"]])
    cut = Fraction(finish["cutFromMm"]) if "cutFromMm" in finish else best_cut(blank, round_)
    least, at = spare(blank, round_, cut)
    floats = dict(case, densityKgM3=float(density))
    numbers = lambda d: {k: float(v) for k, v in d.items()}
    del case["densityKgM3"]
    return dict(numbers({"cutFromMm": cut, "leastSpareMm": least, "leastSpareAtMm": at, "massG": mass,
                         "balanceFromButtMm": balance, "firstBendingHz": Shaft(floats, lib=math).hz()}),
                asks=[numbers(a) for a in asks])


def main():
    cases = [contract_case()] + [invented(i) for i in range(24)]
    for case in cases:
        case["expected"] = expected(case)
        print(case["name"], case["expected"]["firstBendingHz"], flush=True)
    with open(os.path.join(HERE, "forecast_reference.json"), "w") as out:
        out.write("[\n" + ",\n".join(json.dumps(c) for c in cases) + "\n]\n")


if __name__ == "__main__":
    main()
