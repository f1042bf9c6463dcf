#!/usr/bin/env python3
"""Three-dimensional finite-element models of shafts on two supports, for CalculiX (ccx).

Standard library only. See README.md beside this file.

    shaft_fe.py deck CASE MESH > NAME.inp     write a deck
    ccx NAME                                  solve it: NAME.dat
    shaft_fe.py read CASE MESH NAME.dat       print its row of results.csv
    shaft_fe.py all FOLDER > results.csv      all of it, decks and solutions in FOLDER

Axes: x along the shaft from its tip end, y the way the load pushes, z across. N, mm, MPa.
"""
import math
import os
import subprocess
import sys

# Where the core's half width is less than this share of the radius the mesh follows the core's
# faces; where it is more, elements that the faces cut take their modulus by share of area.
FOLLOWED_SHARE = 0.6
PLAIN_SHARE = 0.5

# rounds: (x, diameter); woods: along the grain E, and r = E_core/G; poisson along the grain.
ONE_WOOD = dict(rounds=[(0.0, 12.5), (1490.0, 31.0)], core=12340.0, splice=None)
SPLICED = dict(rounds=[(0.0, 9.5), (1473.0, 29.0)], splice=(1030.0, 4.0))
ISOTROPIC = dict(ratio=2.6, poisson=0.3, across=1.0)
WOOD = dict(ratio=14.0, poisson=0.4, across=0.1)
CASES = {
    "taper-isotropic": dict(ONE_WOOD, **ISOTROPIC, a=100.0, b=1100.0, c=600.0),
    "taper-wood": dict(ONE_WOOD, **WOOD, a=100.0, b=1100.0, c=600.0),
    "taper-wood-short": dict(ONE_WOOD, **WOOD, a=1100.0, b=1450.0, c=1300.0),
    "splice-isotropic": dict(
        SPLICED, **ISOTROPIC, core=10000.0, other=20000.0, a=900.0, b=1450.0, c=1250.0),
    "splice-wood": dict(
        SPLICED, **WOOD, core=12340.0, other=18500.0, a=900.0, b=1450.0, c=1250.0),
}
# (elements along half a side of the inner square, rings, longest element in mm)
MESHES = {"coarse": (1, 1, 25.0), "fine": (2, 3, 12.5)}
OVERHANG_MM = 40.0
HEADER = "case,mesh,supportAMm,supportBMm,loadMm,coreMPa,spliceMPa,ratio,elements,nodes,mmPerN"


def radius(case, x):
    (x0, d0), (x1, d1) = case["rounds"]
    return (d0 + (d1 - d0) * (x - x0) / (x1 - x0)) / 2


def core_half(case, x):
    """The core's half width, None ahead of the splice."""
    if not case["splice"] or x < case["splice"][0]:
        return None
    start, at_butt = case["splice"]
    end = case["rounds"][-1][0]
    full = radius(case, start)
    return full + (at_butt - full) * (x - start) / (end - start)


def inner_half(case, x):
    """The half side of the square in the middle of the mesh."""
    if not case["splice"]:
        return PLAIN_SHARE * radius(case, x)
    half = core_half(case, x)
    limit = FOLLOWED_SHARE * radius(case, x)
    return limit if half is None else min(half, limit)


class Section:
    """A mesh of the circle: a square of quadratic quadrilaterals within rings of them."""

    def __init__(self, m, rings):
        self.m, self.rings = m, rings
        self.keys, self.quads, self.in_square = {}, [], []
        side = 4 * m
        for i in range(0, side, 2):
            for j in range(0, side, 2):
                self._quad(lambda u, v: ("s", i + u, j + v), True)
        for p in range(0, 4 * side, 2):
            for q in range(0, 2 * rings, 2):
                self._quad(lambda u, v: self._ring_key(q + u, (p + v) % (4 * side)), False)

    def _ring_key(self, q, p):
        if q > 0:
            return ("r", q, p)
        side = 4 * self.m
        s, k = divmod(p, side)
        return [("s", side, k), ("s", side - k, side), ("s", 0, side - k), ("s", k, 0)][s]

    def _quad(self, key, in_square):
        around = [(0, 0), (2, 0), (2, 2), (0, 2), (1, 0), (2, 1), (1, 2), (0, 1)]
        ids = []
        for u, v in around:
            ids.append(self.keys.setdefault(key(u, v), len(self.keys)))
        self.quads.append(ids)
        self.in_square.append(in_square)

    def places(self, full, half):
        """(y, z) of each node where the radius is `full` and the square's half side `half`."""
        side = 4 * self.m
        out = [None] * len(self.keys)
        for key, at in self.keys.items():
            if key[0] == "s":
                out[at] = (half * (2 * key[1] / side - 1), half * (2 * key[2] / side - 1))
                continue
            _, q, p = key
            s, k = divmod(p, side)
            t = 2 * k / side - 1
            corner = [(1, t), (-t, 1), (-1, -t), (t, -1)][s]
            angle = math.pi / 2 * s + math.pi / 4 * t
            w = q / (2 * self.rings)
            out[at] = tuple(
                (1 - w) * half * e + w * full * f
                for e, f in zip(corner, (math.cos(angle), math.sin(angle))))
        return out

    def weights(self, places):
        """The share of an even traction on the section that falls to each node; their sum is 1."""
        weights = [0.0] * len(places)
        for quad in self.quads:
            for n, area, _, _ in samples(quad, places, GAUSS):
                for node, share in zip(quad, n):
                    weights[node] += share * area
        total = sum(weights)
        return [w / total for w in weights]


G = math.sqrt(0.6)
GAUSS = [(-G, 5 / 9), (0.0, 8 / 9), (G, 5 / 9)]
MIDPOINTS = [((2 * i + 1) / 12 - 1, 2 / 12) for i in range(12)]


def shape(u, v):
    """Shape functions of the eight-node quadrilateral and their derivatives by u and v."""
    n, nu, nv = [], [], []
    for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1)):
        n.append((1 + a * u) * (1 + b * v) * (a * u + b * v - 1) / 4)
        nu.append(a * (1 + b * v) * (2 * a * u + b * v) / 4)
        nv.append(b * (1 + a * u) * (a * u + 2 * b * v) / 4)
    for a, b in ((0, -1), (1, 0), (0, 1), (-1, 0)):
        if a == 0:
            n.append((1 - u * u) * (1 + b * v) / 2)
            nu.append(-u * (1 + b * v))
            nv.append(b * (1 - u * u) / 2)
        else:
            n.append((1 + a * u) * (1 - v * v) / 2)
            nu.append(a * (1 - v * v) / 2)
            nv.append(-v * (1 + a * u))
    return n, nu, nv


def samples(quad, places, rule):
    for u, wu in rule:
        for v, wv in rule:
            n, nu, nv = shape(u, v)
            y, z, yu, yv, zu, zv = (0.0,) * 6
            for k, node in enumerate(quad):
                py, pz = places[node]
                y, z = y + n[k] * py, z + n[k] * pz
                yu, yv = yu + nu[k] * py, yv + nv[k] * py
                zu, zv = zu + nu[k] * pz, zv + nv[k] * pz
            area = (yu * zv - yv * zu) * wu * wv
            if area <= 0:
                raise SystemExit("an element of the section is folded")
            yield n, area, y, z


def layers(case, longest):
    """Ends of the layers of elements, with one at every place that matters."""
    from_x = case["a"] - OVERHANG_MM
    to_x = min(case["b"] + OVERHANG_MM, case["rounds"][-1][0])
    breaks = {from_x, case["a"], case["c"], case["b"], to_x}
    if case["splice"]:
        breaks.add(case["splice"][0])
        breaks.add(followed_from(case))
    ends = []
    places = sorted(x for x in breaks if from_x <= x <= to_x)
    for x0, x1 in zip(places, places[1:]):
        n = max(1, math.ceil((x1 - x0) / longest - 1e-9))
        ends += [x0 + (x1 - x0) * i / n for i in range(n)]
    return ends + [to_x]


def followed_from(case):
    """Where the core's half width falls below FOLLOWED_SHARE of the radius: both run straight."""
    low, high = case["splice"][0], case["rounds"][-1][0]
    for _ in range(80):
        x = (low + high) / 2
        low, high = (x, high) if core_half(case, x) > FOLLOWED_SHARE * radius(case, x) else (low, x)
    return high


def splice_percent(case, section, at, in_square, x0, x1):
    """How much of an element is splice wood, to a whole percent."""
    if not case["splice"] or x1 <= case["splice"][0] or in_square:
        return 0
    splice = whole = 0.0
    for g, w in GAUSS:
        x = (x0 + x1) / 2 + g * (x1 - x0) / 2
        half = core_half(case, x)
        places = section.places(radius(case, x), inner_half(case, x))
        if half <= FOLLOWED_SHARE * radius(case, x):
            return 100
        for _, area, y, z in samples(section.quads[at], places, MIDPOINTS):
            whole += w * area
            splice += w * area if max(abs(y), abs(z)) > half else 0.0
    return round(100 * splice / whole)


class Model:
    def __init__(self, name, mesh):
        self.case = case = CASES[name]
        m, rings, longest = MESHES[mesh]
        self.section = Section(m, rings)
        self.ends = layers(case, longest)
        corners = sorted({n for quad in self.section.quads for n in quad[:4]})
        self.number, self.nodes = {}, []
        for k in range(2 * len(self.ends) - 1):
            x = self.ends[k // 2]
            if k % 2:
                x = (x + self.ends[k // 2 + 1]) / 2
            places = self.section.places(radius(case, x), inner_half(case, x))
            for n in corners if k % 2 else range(len(places)):
                self.number[k, n] = len(self.nodes) + 1
                self.nodes.append((x,) + places[n])
        self.elements = []
        for layer in range(len(self.ends) - 1):
            for at, quad in enumerate(self.section.quads):
                k = 2 * layer
                ids = [self.number[k, n] for n in quad[:4]]
                ids += [self.number[k + 2, n] for n in quad[:4]]
                ids += [self.number[k, n] for n in quad[4:]]
                ids += [self.number[k + 2, n] for n in quad[4:]]
                ids += [self.number[k + 1, n] for n in quad[:4]]
                percent = splice_percent(
                    case, self.section, at, self.section.in_square[at],
                    self.ends[layer], self.ends[layer + 1])
                self.elements.append((percent, ids))

    def weighted(self, x):
        """Node number to weight, on the section at x."""
        k = 2 * min(range(len(self.ends)), key=lambda i: abs(self.ends[i] - x))
        places = self.section.places(radius(self.case, x), inner_half(self.case, x))
        return {self.number[k, n]: w for n, w in enumerate(self.section.weights(places))}

    def on_axis(self, x, z_share):
        """The node at y = 0 and so far out on z (0 the axis, 1 the edge of the inner square)."""
        k = 2 * min(range(len(self.ends)), key=lambda i: abs(self.ends[i] - x))
        m = self.section.m
        return self.number[k, self.section.keys["s", 2 * m, 2 * m + 2 * m * z_share]]

    def forces(self):
        """Node number to force in y: 1 N at the load, its reactions at the supports."""
        a, b, c = (self.case[k] for k in "abc")
        out = {}
        for x, force in ((a, -(b - c) / (b - a)), (b, -(c - a) / (b - a)), (c, 1.0)):
            for node, weight in self.weighted(x).items():
                out[node] = out.get(node, 0.0) + force * weight
        return out

    def deck(self, title):
        case = self.case
        out = ["*HEADING", title, "*NODE, NSET=ALL"]
        out += ["%d,%.9g,%.9g,%.9g" % ((i + 1,) + p) for i, p in enumerate(self.nodes)]
        for percent in sorted({p for p, _ in self.elements}):
            out.append("*ELEMENT, TYPE=C3D20R, ELSET=S%d" % percent)
            for i, (p, ids) in enumerate(self.elements):
                if p == percent:
                    out.append(",".join(str(v) for v in [i + 1] + ids[:10]) + ",")
                    out.append(",".join(str(v) for v in ids[10:]))
        for percent in sorted({p for p, _ in self.elements}):
            along = case["core"]
            if percent:
                along += percent / 100 * (case["other"] - case["core"])
            out += ["*MATERIAL, NAME=M%d" % percent] + elastic(case, along)
            out.append("*SOLID SECTION, ELSET=S%d, MATERIAL=M%d" % (percent, percent))
        a, b = case["a"], case["b"]
        out += ["*BOUNDARY", "%d,1,3" % self.on_axis(a, 0), "%d,2,3" % self.on_axis(b, 0)]
        out.append("%d,2,2" % self.on_axis(a, 1))
        out += ["*STEP", "*STATIC", "*CLOAD"]
        out += ["%d,2,%.12g" % pair for pair in sorted(self.forces().items())]
        out.append("*NSET, NSET=READ")
        out += ["%d," % node for node in sorted(self.forces())]
        out += ["*NODE PRINT, NSET=READ", "U", "*END STEP", ""]
        return "\n".join(out)

    def mm_per_n(self, dat):
        """How far the loaded section goes down against the straight line between the supports."""
        moved = {}
        with open(dat, encoding="ascii") as lines:
            for line in lines:
                words = line.split()
                if len(words) == 4 and words[0].isdigit():
                    moved[int(words[0])] = float(words[2])
        a, b, c = (self.case[k] for k in "abc")
        at = [sum(w * moved[n] for n, w in self.weighted(x).items()) for x in (a, b, c)]
        return at[2] - (at[0] * (b - c) + at[1] * (c - a)) / (b - a)


def elastic(case, along):
    """The shear modulus is that of the shaft wood everywhere, but for isotropic material."""
    nu = case["poisson"]
    if case["across"] == 1.0:
        return ["*ELASTIC", "%.9g,%.9g" % (along, nu)]
    across = case["across"] * case["core"]
    shear = case["core"] / case["ratio"]
    rolling = across / (2 * (1 + nu))
    return [
        "*ELASTIC, TYPE=ENGINEERING CONSTANTS",
        "%.9g,%.9g,%.9g,%.9g,%.9g,%.9g,%.9g,%.9g"
        % (along, across, across, nu, nu, nu, shear, shear),
        "%.9g" % rolling,
    ]


def row(name, mesh, model, dat):
    c = model.case
    other = "%g" % c["other"] if c["splice"] else ""
    return "%s,%s,%g,%g,%g,%g,%s,%g,%d,%d,%.6e" % (
        name, mesh, c["a"], c["b"], c["c"], c["core"], other, c["ratio"],
        len(model.elements), len(model.nodes), model.mm_per_n(dat))


def everything(folder):
    print(HEADER)
    for name in CASES:
        for mesh in MESHES:
            model = Model(name, mesh)
            stem = "%s-%s" % (name, mesh)
            with open(os.path.join(folder, stem + ".inp"), "w", encoding="ascii") as out:
                out.write(model.deck(stem))
            subprocess.run(["ccx", stem], cwd=folder, check=True, stdout=subprocess.DEVNULL)
            print(row(name, mesh, model, os.path.join(folder, stem + ".dat")), flush=True)


if __name__ == "__main__":
    if sys.argv[1:2] == ["all"]:
        everything(sys.argv[2])
    elif sys.argv[1:2] == ["deck"]:
        sys.stdout.write(Model(*sys.argv[2:4]).deck("-".join(sys.argv[2:4])))
    elif sys.argv[1:2] == ["read"]:
        print(row(*sys.argv[2:4], Model(*sys.argv[2:4]), sys.argv[4]))
    else:
        sys.exit(__doc__)
