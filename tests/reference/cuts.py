"""Cuts and buried lines beside shapely and scipy: daylight, layers, wedges, critical heights, the shovel's stretches."""

import numpy as np
from scipy.optimize import brentq, minimize_scalar
from shapely import LineString, Point, Polygon

from batch import FOOT, Case, back, listed, metres, near

SLOPES = {"rock": 0.0, "a": 0.75, "b": 1.0, "c": 1.5}


def face_at(out, toe, runs, tops):
    """The face's elevation so far out, feet: the corners of its pieces, joined."""
    corners = [(0.0, toe)]
    for run, top in zip(runs, [*tops, toe + 1e4]):
        at, up = corners[-1]
        if top > up:
            corners.append((at + run * (top - up), top))
    return np.interp(out, *np.array(corners).T)


def daylights(rng, many):
    """Where random faces come out of random planes, by a root of ground less face."""
    for _ in range(many):
        start = rng.uniform(-100, 100, 2)
        heading = rng.uniform(0, 2 * np.pi)
        along = np.array([np.cos(heading), np.sin(heading)])
        length = rng.uniform(3, 60)
        end = start + length * along
        bank = str(rng.choice(["left", "right"]))
        out = np.array([-along[1], along[0]]) * (1 if bank == "left" else -1)
        rises = rng.uniform(-0.3, 0.3, 2)
        base = rng.uniform(80, 400)
        level = np.array([base + rises @ place for place in (start, end)])
        toes = level - rng.uniform(0.5, 19, 2)
        pieces = int(rng.integers(1, 4))
        runs = [float(run) for run in rng.choice([0.5, 0.75, 1.0, 1.5, 2.0], pieces)]
        tops = sorted(float(min(toes) + lift) for lift in rng.uniform(1, 15, pieces - 1))
        counts = np.rint(np.array([*start, toes[0], *end, toes[1]]) * FOOT).astype(np.int64)
        tops = [round(top * FOOT) / FOOT for top in tops]
        base = round(base * FOOT) / FOOT
        (x0, y0, z0, x1, y1, z1) = counts / FOOT
        places, runs_out = [], []
        for share in (0.0, 1.0):
            at = np.array([x0, y0]) + share * np.array([x1 - x0, y1 - y0])
            toe = z0 + share * (z1 - z0)

            def above(far, at=at, toe=toe):
                return base + rises @ (at + far * out) - face_at(far, toe, runs, tops)

            far = 0.0 if above(0.0) <= 0 else brentq(above, 0.0, 900.0, xtol=1e-10)
            runs_out.append(far * FOOT)
            places.extend((at + far * out) * FOOT)
        inputs = {
            "toe": listed(counts),
            "bank": bank,
            "runs": "; ".join(map(repr, runs)),
            "ground": metres(round(base * FOOT)),
            "rise_east": repr(float(rises[0])),
            "rise_north": repr(float(rises[1])),
            "every": "100 ft",
        }
        if tops:
            inputs["tops"] = listed([round(top * FOOT) for top in tops])
        # Ground lookups are whole counts: a shallow meeting feels a few of them.
        yield Case("daylight_line", inputs, near(places=(places, 60), runs=(runs_out, 60)))


def layers(rng, many):
    """Layers from the top down: the flattest of itself and all below, by numpy."""
    for _ in range(many):
        names = [str(name) for name in rng.choice(list(SLOPES), int(rng.integers(1, 6)))]
        flattest = np.maximum.accumulate([SLOPES[name] for name in names][::-1])[::-1]
        words = "; ".join(f"{run:g}" for run in flattest)
        yield Case("layered_slopes", {"classes": "; ".join(names)}, near(runs=(words, 0)))


def wedges(rng, many):
    """The wedge between a face and a flatter plane, as a polygon's area."""
    for _ in range(many):
        height = int(rng.integers(FOOT, 20 * FOOT))
        steep, flat = sorted(rng.uniform(0, 2, 2))
        feet = height / FOOT
        area = Polygon([(0, 0), (feet * steep, feet), (feet * flat, feet)]).area
        inputs = {
            "height": metres(height),
            "steep": repr(float(steep)),
            "flat": repr(float(flat)),
            "length": "1 ft",
        }
        yield Case("wedge", inputs, near(square_feet=(area, 1e-9)))


def critical_heights(rng, many):
    """The height at which some plane through the toe would slide: the least over all planes, by scipy."""
    for _ in range(many):
        cohesion, weight = rng.uniform(5, 60), rng.uniform(14, 22)
        friction = rng.uniform(0, 35)
        face = rng.uniform(friction + 15, 90)
        phi, beta = np.radians(friction), np.radians(face)

        def height(plane):
            opening = 1 / np.tan(plane) - 1 / np.tan(beta)
            drive = np.sin(plane) - np.cos(plane) * np.tan(phi)
            return 2 * cohesion / (weight * np.sin(plane) * opening * drive)

        edge = 1e-3 * (beta - phi)
        least = minimize_scalar(
            height, bounds=(phi + edge, beta - edge), method="bounded", options={"xatol": 1e-12}
        )
        inputs = {
            "cohesion": repr(float(cohesion)),
            "unit_weight": repr(float(weight)),
            "friction": repr(float(friction)),
            "face": repr(float(face)),
        }
        yield Case("critical_height", inputs, near(height=(least.fun, 1e-5 * least.fun)))


def stretch(run, line, half):
    """Each end of a stretch lies on the band's edge or at an end of the run, inside and outside are what they say."""

    def judge(answer):
        if "error" in answer:
            return f"refused: {answer['error']}"
        ends = back(answer["outputs"]["stretches"])
        way, buried = LineString(run), LineString(line)
        off = abs(back(answer["outputs"]["away"]) - Point(run[0]).distance(buried))
        if off > 2:
            return f"the start is off by {off}"
        edges = [0, *ends, way.length]
        for number, (low, high) in enumerate(zip(edges, edges[1:])):
            if high - low < 1e4:
                continue
            for share in np.linspace(0.02, 0.98, 25):
                away = way.interpolate(low + share * (high - low)).distance(buried)
                inside = number % 2 == 1
                if (away < half - 50) != inside and abs(away - half) > 50:
                    return f"{away / FOOT} ft away between {low} and {high}, said inside {inside}"
        for end in ends:
            away = way.interpolate(end).distance(buried)
            if abs(away - half) > 1e3 and 2 < end < way.length - 2:
                return f"a stretch ends {away / FOOT} ft away"
        return None

    return judge


def hand_digs(rng, many):
    """Stretches of runs near random buried lines."""
    for _ in range(many):
        line = rng.integers(-60 * FOOT, 60 * FOOT, (int(rng.integers(2, 6)), 2))
        run = rng.integers(-80 * FOOT, 80 * FOOT, (2, 2))
        outside, zone = int(rng.integers(0, 3 * FOOT)), int(rng.integers(FOOT, 3 * FOOT))
        inputs = {
            "outside": metres(outside),
            "zone": metres(zone),
            "line": listed(line),
            "from": listed(run[0]),
            "to": listed(run[1]),
        }
        yield Case("hand_dig", inputs, stretch(run, line, zone + outside / 2))


def crossings(rng, many):
    """Two bands of height: the gap, or below zero the least that they lie one in the other."""
    for _ in range(many):
        one, other = (np.sort(rng.integers(0, 30 * FOOT, 2)) for _ in range(2))
        gap = max(other[0] - one[1], one[0] - other[1])
        inputs = {
            "bottom": metres(one[0]),
            "top": metres(one[1]),
            "line_bottom": metres(other[0]),
            "line_top": metres(other[1]),
        }
        yield Case("crossing", inputs, near(clearance=(gap, 0)))


def cases(rng):
    """All of them."""
    yield from daylights(rng, 1500)
    yield from layers(rng, 200)
    yield from wedges(rng, 300)
    yield from critical_heights(rng, 400)
    yield from hand_digs(rng, 1500)
    yield from crossings(rng, 300)
