"""Elevations on planes beside exact fractions, and on triangles beside scipy's linear interpolator."""

from fractions import Fraction

import numpy as np
import shapely
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

from batch import FOOT, Case, listed, metres, near, refused


def planes(rng, many):
    """A plane's elevation, worked in fractions."""
    for _ in range(many):
        through, at = rng.integers(-500 * FOOT, 500 * FOOT, 2), rng.integers(-500 * FOOT, 500 * FOOT, 2)
        elevation = int(rng.integers(0, 900 * FOOT))
        east, north = (f"{rng.uniform(-0.5, 0.5):.6f}" for _ in range(2))
        exact = elevation + Fraction(east) * int(at[0] - through[0]) + Fraction(north) * int(at[1] - through[1])
        inputs = {
            "through": listed(through),
            "elevation": metres(elevation),
            "rise_east": east,
            "rise_north": north,
            "at": listed(at),
        }
        yield Case("plane", inputs, near(dig_to=(float(exact), 0.51)))


def profiles(rng, many):
    """A profile with vertical curves: its elevation is the integral of a grade that changes evenly along each curve."""
    for _ in range(many):
        count = int(rng.integers(2, 7))
        places = np.cumsum(rng.integers(100 * FOOT, 400 * FOOT, count))
        up = rng.integers(280 * FOOT, 300 * FOOT, count)
        curves = np.zeros(count, dtype=int)
        curves[1:-1] = rng.integers(0, 45 * FOOT, max(count - 2, 0)) * 2
        grades = np.diff(up) / np.diff(places)
        # Where the grade is known: at the ends, and where each curve begins and ends.
        knots, known = [places[0]], [grades[0]]
        for number in range(1, count - 1):
            half = curves[number] // 2
            # A curve of no length is a corner: two grades a hair apart.
            knots += [places[number] - max(half, 1e-3), places[number] + max(half, 1e-3)]
            known += [grades[number - 1], grades[number]]
        knots, known = np.array([*knots, places[-1]], dtype=float), np.array([*known, grades[-1]])
        at = int(rng.integers(places[0], places[-1]))
        till = np.append(knots[knots < at], at)
        rise = np.trapezoid(np.interp(till, knots, known), till)
        inputs = {
            "stations": listed(places),
            "elevations": listed(up),
            "curves": listed(curves),
            "at": metres(at),
        }
        expected = near(elevation=(up[0] + rise, 2), grade=(np.interp(at, knots, known), 1e-9))
        yield Case("profile", inputs, expected)


def surfaces(rng, many):
    """Places on a surface with holes torn into it: the same elevation on it, a refusal beside it."""
    for _ in range(many):
        count = int(rng.integers(4, 60))
        points = rng.integers(0, 200 * FOOT, (count, 2))
        up = rng.integers(280 * FOOT, 320 * FOOT, count)
        net = Delaunay(points)
        kept = net.simplices[rng.random(len(net.simplices)) > 0.15]
        if not len(kept):
            continue
        reference = LinearNDInterpolator(net, up.astype(float))
        there = shapely.union_all(shapely.polygons(points[kept]))
        given = {
            "points": listed(np.column_stack([points, up])),
            "triangles": "; ".join(str(number) for number in np.ravel(kept)),
        }
        at = rng.integers(-10 * FOOT, 210 * FOOT, (40, 2))
        off_edge = shapely.distance(there.boundary, shapely.points(at)) > 100
        inside = shapely.contains_xy(there, at)
        on, beside = at[off_edge & inside], at[off_edge & ~inside]
        if len(on):
            yield Case("triangles", {**given, "at": listed(on)}, near(elevations=(reference(on), 1.01)))
        for at in beside[:2]:
            yield Case("triangles", {**given, "at": listed(at)}, refused("off the surface's edge"))


def cases(rng):
    """All of them."""
    yield from planes(rng, 1000)
    yield from profiles(rng, 500)
    yield from surfaces(rng, 250)
