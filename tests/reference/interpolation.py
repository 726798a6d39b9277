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
    yield from surfaces(rng, 250)
