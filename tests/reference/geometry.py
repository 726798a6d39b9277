"""Geometry beside shapely and plain numpy: distances, ties, lines and their sides, stations and offsets."""

from fractions import Fraction

import numpy as np
from scipy.optimize import brentq
from shapely import LinearRing, LineString, Point, Polygon
from shapely.affinity import rotate

from batch import FOOT, METRE, Case, back, listed, metres, near, refused


def place(rng, reach=300):
    """A place within so many feet, in whole counts."""
    return rng.integers(-reach * FOOT, reach * FOOT, 2)


def distances(rng, many):
    """How far apart, and paced shares of the way."""
    for _ in range(many):
        one, other = place(rng), place(rng)
        apart = Point(one).distance(Point(other))
        yield Case("distance", {"from": listed(one), "to": listed(other)}, near(distance=(apart, 1)))
        of = int(rng.integers(1, 40))
        paces = int(rng.integers(1, of + 1))
        at = LineString([one, other]).interpolate(paces / of, normalized=True)
        inputs = {"from": listed(one), "to": listed(other), "paces": paces, "of": of}
        yield Case("paced", inputs, near(place=([at.x, at.y], 1)))


def tie(first, second, tapes):
    """Both places lie a tape from each hub, the left one to the left; the angle is the one between the tapes there."""

    def judge(answer):
        if "error" in answer:
            return f"refused: {answer['error']}"
        out = answer["outputs"]
        for side in ("left", "right"):
            at = np.array(back(out[side]), dtype=float)
            for hub, tape in zip((first, second), tapes):
                off = abs(np.linalg.norm(at - hub) - tape)
                if off > 2:
                    return f"the {side} place is off its tape by {off} counts"
            walk = LinearRing([first, second, at])
            if walk.length and Polygon(walk).area > 1e9 and walk.is_ccw != (side == "left"):
                return f"the {side} place lies on the other side"
            ways = [np.subtract(hub, at) / np.linalg.norm(np.subtract(hub, at)) for hub in (first, second)]
            angle = np.degrees(np.arccos(np.clip(np.dot(*ways), -1, 1)))
            # A count of rounding moves a flat angle by the root of its share of the tape.
            allowed = 2e-4 if 1 < angle < 179 else 0.2
            if abs(angle - out["angle_degrees"]) > allowed:
                return f"the angle is {angle}, the hub says {out['angle_degrees']}"
            if abs(angle - 30) > 0.01 and abs(angle - 150) > 0.01:
                weak = "no" if 30 < angle < 150 else "yes"
                if out["weak"] != weak:
                    return f"weak is {weak} at {angle}, the hub says {out['weak']}"
        return None

    return judge


def ties(rng, many):
    """Swing ties that meet, and tapes that do not."""
    for _ in range(many):
        first, second = place(rng), place(rng)
        base = np.linalg.norm(first - second)
        one, other = rng.integers(FOOT, 400 * FOOT, 2)
        inputs = {
            "first": listed(first),
            "first_tape": metres(one),
            "second": listed(second),
            "second_tape": metres(other),
        }
        # Whether two circles meet, by the distance of their centres alone.
        if one + other < base - 100:
            yield Case("swing_tie", inputs, refused("too short"))
        elif abs(one - other) > base + 100:
            yield Case("swing_tie", inputs, refused("too long"))
        elif one + other > base + 100 and abs(one - other) < base - 100:
            yield Case("swing_tie", inputs, tie(first, second, (one, other)))


def walked(rng, many):
    """A line whose corners go ever farther east: left of it is above it, however far it is extended."""
    steps = np.cumsum(rng.integers(FOOT, 60 * FOOT, many))
    return np.column_stack([steps, rng.integers(-80 * FOOT, 80 * FOOT, many)])


def beside_lines(rng, many):
    """Signed distances from open lines, which go on straight beyond their ends, and from rings."""
    for number in range(many):
        if number % 2:
            corners = walked(rng, int(rng.integers(2, 8)))
            line = LineString(corners)
            far = 1e4
            before = corners[0] + (corners[0] - corners[1]) * far
            past = corners[-1] + (corners[-1] - corners[-2]) * far
            sky = 1e13
            left = Polygon([before, *corners, past, (past[0], sky), (before[0], sky)])
            at = place(rng)
        else:
            # A star around a middle, walked to the left: its inside is the left.
            count = int(rng.integers(3, 10))
            angles = np.sort(rng.uniform(0, 2 * np.pi, count))
            if np.max(np.diff(np.append(angles, angles[0] + 2 * np.pi))) > 3:
                continue
            out = rng.uniform(20, 200, count) * FOOT
            corners = np.column_stack([out * np.cos(angles), out * np.sin(angles)]).astype(int)
            corners = np.vstack([corners, corners[:1]])
            line, left = LinearRing(corners), Polygon(corners)
            at = place(rng, 250)
        apart = line.distance(Point(at))
        if apart < 10:
            continue
        keep = "left" if rng.integers(2) else "right"
        signed = apart if left.contains(Point(at)) == (keep == "left") else -apart
        inputs = {"corners": listed(corners), "keep": keep, "at": listed(at)}
        yield Case("distance_from_line", inputs, near(distance=(signed, 1.01)))


class Course:
    """An alignment as its own parameter: place and heading at each distance from the start, by numpy alone."""

    def __init__(self, rng):
        self.start = place(rng).astype(float)
        self.parts, self.words, self.length = [], [], 0.0
        at, heading = self.start, rng.uniform(0, 2 * np.pi)
        for _ in range(int(rng.integers(1, 5))):
            ahead = np.array([np.cos(heading), np.sin(heading)])
            if rng.integers(2):
                long = rng.uniform(20, 200) * FOOT
                self.parts.append((self.length, long, at, heading, 0.0))
                at = at + ahead * long
                self.words.append(f"line; {listed(np.rint(at))}")
            else:
                radius, swept = rng.uniform(60, 300) * FOOT, rng.uniform(0.2, 2.5)
                turn = 1 if rng.integers(2) else -1  # 1 turns left
                long = radius * swept
                centre = at + turn * radius * np.array([-ahead[1], ahead[0]])
                self.parts.append((self.length, long, at, heading, turn / radius))
                heading += turn * swept
                at = centre - turn * radius * np.array([-np.sin(heading), np.cos(heading)])
                word = "left" if turn == 1 else "right"
                self.words.append(f"{word}; {listed(np.rint(centre))}; {listed(np.rint(at))}")
            self.length += long

    def at(self, along):
        """Place and heading."""
        before, _, start, heading, bend = next(
            part for part in reversed(self.parts) if part[0] <= along or part is self.parts[0]
        )
        along -= before
        if bend == 0:
            return start + along * np.array([np.cos(heading), np.sin(heading)]), heading
        turned = heading + bend * along
        way = np.array([np.sin(turned) - np.sin(heading), np.cos(heading) - np.cos(turned)])
        return start + way / bend, turned

    def beside(self, along, right):
        """The place at an offset, positive to the right."""
        at, heading = self.at(along)
        return at + right * np.array([np.sin(heading), -np.cos(heading)])

    def nearest(self, at):
        """Every distance along at which the way to the place stands square to the line, and how far it is."""

        def square(along):
            on, heading = self.at(along)
            return (at - on) @ np.array([np.cos(heading), np.sin(heading)])

        looks = np.linspace(0, self.length, 400)
        seen = [square(look) for look in looks]
        found = []
        for low, high, one, other in zip(looks, looks[1:], seen, seen[1:]):
            if one > 0 >= other:
                along = brentq(square, low, high, xtol=1e-3)
                on, heading = self.at(along)
                right = (at - on) @ np.array([np.sin(heading), -np.cos(heading)])
                found.append((abs(right), along, right))
        return sorted(found)


def stations(rng, many):
    """Stations and offsets beside lines and arcs, both ways. Ends of arcs are rounded, which a long arc feels."""
    for _ in range(many):
        course = Course(rng)
        first = int(rng.integers(0, 5000 * FOOT))
        along, right = rng.uniform(0, course.length), rng.uniform(-50, 50) * FOOT
        given = {"start": listed(course.start), "first": metres(first), "pieces": " | ".join(course.words)}
        there = np.rint(course.beside(along, right))
        inputs = {**given, "station": metres(first + round(along)), "offset": metres(round(right))}
        yield Case("place_beside", inputs, near(place=(there, 12)))
        feet = course.nearest(there)
        # The ends are nearest too, where the line bends back on itself: those places say little.
        ends = min(np.linalg.norm(there - course.at(end)[0]) for end in (0, course.length))
        if not feet or ends < feet[0][0] + 1e3 or (len(feet) > 1 and feet[1][0] - feet[0][0] < 1e3):
            continue
        _, found, offset = feet[0]
        yield Case(
            "station_offset",
            {**given, "at": listed(there)},
            near(station=(first + found, 40), offset=(offset, 12), last=(first + course.length, 40)),
        )


def corners(rng, many):
    """Corners by three tapes."""
    for _ in range(many):
        one, other = rng.integers(3 * FOOT, 100 * FOOT, 2)
        angle = rng.uniform(5, 175)
        turned = np.radians(angle)
        between = np.linalg.norm(np.array([one, 0]) - other * np.array([np.cos(turned), np.sin(turned)]))
        inputs = {"one": metres(one), "other": metres(other), "between": metres(round(between))}
        yield Case("corner", inputs, near(degrees=(angle, 1e-4)))


def frames(rng, many):
    """A plan's big numbers on the site: the difference in fractions, then turned by shapely."""
    units = {"foot": Fraction(FOOT), "survey_foot": Fraction(1200 * METRE, 3937), "metre": Fraction(METRE)}
    for _ in range(many):
        unit = str(rng.choice(list(units)))
        origin = [f"{rng.uniform(1e5, 3e6):.4f}" for _ in range(2)]
        at = [f"{float(one) + rng.uniform(-2000, 2000):.4f}" for one in origin]
        turn = float(rng.choice([0.0, rng.uniform(-180, 180)]))
        from_origin = [float((Fraction(one) - Fraction(zero)) * units[unit]) for one, zero in zip(at, origin)]
        # The site's x axis is turned left of east, so its places are turned right.
        there = rotate(Point(from_origin), -turn, origin=(0, 0))
        inputs = {
            "unit": unit,
            "origin_east": origin[0],
            "origin_north": origin[1],
            "turn": repr(turn),
            "east": at[0],
            "north": at[1],
        }
        yield Case("site_frame", inputs, near(x=(there.x, 2), y=(there.y, 2)))


def cases(rng):
    """All of them."""
    yield from frames(rng, 500)
    yield from distances(rng, 500)
    yield from ties(rng, 2500)
    yield from beside_lines(rng, 3000)
    yield from stations(rng, 800)
    yield from corners(rng, 300)
