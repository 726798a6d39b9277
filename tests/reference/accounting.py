"""Volumes, landings, aims, paces and gravel beside numpy, scipy and shapely; surfaces on an open elevation model."""

import importlib.util
import itertools
from pathlib import Path

import numpy as np
import shapely
from scipy.spatial import Delaunay
from scipy.stats import chi2, norm, theilslopes

from batch import FOOT, Case, listed, metres, near


def numbers(values):
    """Plain numbers in a list, with every digit."""
    return "; ".join(repr(float(one)) for one in np.ravel(values))


def net(points, triangles):
    """A net of triangles as the hub reads it."""
    return listed(points), "; ".join(str(int(one)) for one in np.ravel(triangles))


def over_polygon(polygon, plane):
    """The integral of a plane (a, b, c: a·x + b·y + c) over a polygon: its value at the centroid by the area."""
    if polygon.is_empty or polygon.area == 0:
        return 0.0
    middle = polygon.centroid
    return polygon.area * (plane[0] * middle.x + plane[1] * middle.y + plane[2])


def split(polygon, plane):
    """Cut and fill of a plane over a polygon, clipped where the plane is zero."""
    corners = np.asarray(polygon.exterior.coords)[:-1]
    heights = corners @ plane[:2] + plane[2]
    if (heights >= 0).all():
        return over_polygon(polygon, plane), 0.0
    if (heights <= 0).all():
        return 0.0, -over_polygon(polygon, plane)
    kept = []
    for here, there, low, high in zip(corners, np.roll(corners, -1, 0), heights, np.roll(heights, -1)):
        if low >= 0:
            kept.append(here)
        if low * high < 0:
            kept.append(here + (there - here) * low / (low - high))
    above = over_polygon(shapely.Polygon(kept), plane)
    return above, above - over_polygon(polygon, plane)


def planes(points, triangles):
    """The plane over each triangle, in feet."""
    corners = points[triangles] / FOOT
    ones = np.concatenate([corners[:, :, :2], np.ones(corners.shape[:2] + (1,))], axis=2)
    return np.linalg.solve(ones, corners[:, :, 2:])[:, :, 0]


def between(there, wanted):
    """Cut, fill and common area of two nets, by shapely's intersections."""
    (points, triangles), (others, other_triangles) = there, wanted
    own, other = planes(points, triangles), planes(others, other_triangles)
    shapes = [shapely.Polygon(one) for one in points[triangles][:, :, :2] / FOOT]
    other_shapes = [shapely.Polygon(one) for one in others[other_triangles][:, :, :2] / FOOT]
    tree = shapely.STRtree(other_shapes)
    cut = fill = area = 0.0
    for number, shape in enumerate(shapes):
        for found in tree.query(shape):
            common = shape.intersection(other_shapes[found])
            if common.geom_type != "Polygon" or common.area == 0:
                continue
            more, less = split(common, own[number] - other[found])
            cut, fill, area = cut + more, fill + less, area + common.area
    return cut, fill, area


def relief():
    """An open elevation model that matplotlib ships (United States Geological Survey): metres, rows from the north."""
    spec = importlib.util.find_spec("matplotlib")
    folder = Path(spec.origin).parent / "mpl-data" / "sample_data"
    return np.load(folder / "jacksboro_fault_dem.npz")["elevation"].astype(float)


def tile(rng, model, side):
    """A piece of the model as a net of scattered points, in counts: 30 ft from cell to cell, a tenth as high."""
    row, column = rng.integers(0, model.shape[0] - side), rng.integers(0, model.shape[1] - side)
    piece = model[row : row + side, column : column + side]
    east, north = np.meshgrid(np.arange(side) * 30.0, np.arange(side) * 30.0)
    shaken = [one + rng.uniform(-5, 5, one.shape) for one in (east, north)]
    feet = np.column_stack([shaken[0].ravel(), shaken[1].ravel(), piece.ravel() / 3.048])
    counts = np.round(feet * FOOT).astype(np.int64)
    return counts, Delaunay(counts[:, :2] / FOOT).simplices


def surfaces(rng, many):
    """Pieces of the model against a level, and against a coarse net of a graded pad."""
    model = relief()
    for number in range(many):
        points, triangles = tile(rng, model, int(rng.integers(6, 40 if number % 10 == 0 else 14)))
        level = int(np.median(points[:, 2]))
        flat = planes(points, triangles) - [0, 0, level / FOOT]
        parts = [
            split(shapely.Polygon(corners), plane)
            for corners, plane in zip(points[triangles][:, :, :2] / FOOT, flat)
        ]
        cut, fill = np.sum(parts, axis=0)
        allowed = 1e-9 * (cut + fill) + 1e-6
        there, there_triangles = net(points, triangles)
        inputs = {"there": there, "there_triangles": there_triangles, "level": metres(level)}
        yield Case("surface_to_level", inputs, near(cut_cf=(cut, allowed), fill_cf=(fill, allowed)))
        corners = np.column_stack([rng.uniform(-50, 400, (9, 2)) * FOOT, level + rng.uniform(-9, 9, 9) * FOOT])
        pad = np.round(corners).astype(np.int64)
        pad_triangles = Delaunay(pad[:, :2] / FOOT).simplices
        cut, fill, area = between((points, triangles), (pad, pad_triangles))
        if area < 100:
            continue
        wanted, wanted_triangles = net(pad, pad_triangles)
        inputs = {
            "there": there,
            "there_triangles": there_triangles,
            "wanted": wanted,
            "wanted_triangles": wanted_triangles,
        }
        allowed = 1e-7 * (cut + fill) + 1e-3
        expected = near(cut_cf=(cut, allowed), fill_cf=(fill, allowed), area_sf=(area, 1e-6 * area))
        yield Case("surface_volume", inputs, expected)


def grids(rng, many):
    """The borrow-pit rule as an integral of the bilinear surface; strips as integrals."""
    for _ in range(many):
        rows, columns = (int(one) for one in rng.integers(2, 7, 2))
        devs = rng.integers(-FOOT, FOOT, (rows, columns))
        along, across = (int(one) for one in rng.integers(FOOT, 50 * FOOT, 2))
        integral = np.trapezoid(np.trapezoid(devs / FOOT, dx=along / FOOT, axis=1), dx=across / FOOT)
        inputs = {
            "along": metres(along),
            "across": metres(across),
            "columns": columns,
            "corners": listed(devs),
        }
        yield Case("borrow_pit", inputs, near(net_cf=(integral, 1e-7)))
        length, width = (int(one) for one in rng.integers(FOOT, 90 * FOOT, 2))
        first, last = (int(one) for one in rng.integers(-FOOT, FOOT, 2))
        strip = shapely.box(0, 0, length / FOOT, width / FOOT)
        cut, fill = split(strip, np.array([(last - first) / length, 0, first / FOOT]))
        inputs = {
            "length": metres(length),
            "width": metres(width),
            "first": metres(first),
            "last": metres(last),
        }
        yield Case("strip_volume", inputs, near(cut_cf=(cut, 1e-7), fill_cf=(fill, 1e-7)))
        bottoms, depths = (rng.integers(FOOT, 9 * FOOT, 2) for _ in range(2))
        out = rng.uniform(0, 2, 2)
        at = np.linspace(0, 1, 2001)
        run = lambda ends: ends[0] + (ends[1] - ends[0]) * at  # noqa: E731
        areas = (run(bottoms / FOOT) + run(out) * run(depths / FOOT)) * run(depths / FOOT)
        inputs = {
            "length": "100 ft",
            "bottoms": listed(bottoms),
            "depths": listed(depths),
            "out_per_up": numbers(out),
        }
        rough = 50 * (areas[0] + areas[-1])
        # Where the sides' slope stays, the section is a square in the station: the prismoid is exact.
        if rng.random() < 0.5:
            inputs["out_per_up"] = numbers([out[0], out[0]])
            areas = (run(bottoms / FOOT) + out[0] * run(depths / FOOT)) * run(depths / FOOT)
            fine = 100 * np.trapezoid(areas, at)
            judge = near(prismoidal_cf=(fine, 1e-3), average_cf=(50 * (areas[0] + areas[-1]), 1e-6))
        else:
            judge = near(average_cf=(rough, 1e-6))
        yield Case("trench_volume", inputs, judge)


def low(mean, sd):
    """E[(−e)₊] by the normal law."""
    return sd * norm.pdf(mean / sd) - mean * norm.cdf(-mean / sd)


def landings(rng, many):
    """Mean, scatter, its bounds, capability and what low spots take."""
    for _ in range(many):
        errors = rng.integers(-FOOT // 5, FOOT // 5, int(rng.integers(2, 60)))
        mean, sd = np.mean(errors) / FOOT, np.std(errors, ddof=1) / FOOT
        chance = rng.uniform(0.5, 0.99)
        free, tail = len(errors) - 1, (1 - chance) / 2
        bounds = sd * np.sqrt(free / chi2.isf([tail, 1 - tail], free))
        inputs = {"errors": listed(errors), "chance": repr(chance)}
        expected = near(
            mean_ft=(mean, 1e-12),
            sd_ft=(sd, 1e-12),
            sd_low_ft=(bounds[0], 1e-8 * bounds[0]),
            sd_high_ft=(bounds[1], 1e-6 * bounds[1]),
        )
        yield Case("landings", inputs, expected)
        mean, sd = rng.normal(0, 0.1), rng.uniform(0.005, 0.2)
        yield Case("expected_low", {"mean": repr(mean), "sd": repr(sd)}, near(low=(low(mean, sd), 1e-12)))
        high, deep = (int(one) for one in rng.integers(FOOT // 50, FOOT // 3, 2))
        limits = np.array([-deep, high]) / FOOT
        within = np.diff(norm.cdf((limits - mean) / sd))[0]
        near_limit = min(limits[1] - mean, mean - limits[0]) / (3 * sd)
        inputs = {"count": 9, "mean": repr(mean), "sd": repr(sd), "high": metres(high), "low": metres(deep)}
        expected = near(cp=((limits[1] - limits[0]) / (6 * sd), 1e-9), cpk=(near_limit, 1e-9), within=(within, 1e-11))
        yield Case("capability", inputs, expected)


def aims(rng, many):
    """The cheapest mean on the grid of hundredths, found among all of them."""
    for _ in range(many):
        sd, area, gravel = rng.uniform(0.02, 0.09), rng.uniform(10, 200), rng.uniform(0.5, 6)
        shallow, deep = rng.uniform(0, 400), rng.uniform(0, 200)
        high, bottom, guard = 0.10, 0.20, 0.02
        means = np.arange(-20, 11) / 100
        means = means[(means >= -bottom + 1.5 * sd - 1e-9) & (means <= high - guard + 1e-9)]
        costs = (
            area * gravel * low(means, sd)
            + shallow * norm.sf((high - guard - means) / sd)
            + deep * norm.cdf((-bottom - means) / sd)
        )
        order = np.sort(costs)
        if len(order) > 1 and order[1] - order[0] < 1e-9:
            continue
        inputs = {
            "count": 10,
            "mean": "0",
            "sd": repr(sd),
            "high": "0.10 ft",
            "low": "0.20 ft",
            "guard": "0.02 ft",
            "spot_sf": repr(area),
            "gravel_cf": repr(gravel),
            "shallow": repr(shallow),
            "too_deep": repr(deep),
        }
        best = round(float(means[np.argmin(costs)]) * 100) * FOOT // 100
        yield Case("aim", inputs, near(mean=(best, 0), cost=(costs.min(), 1e-8)))


def paces(rng, many):
    """Theil–Sen slopes by scipy, percentiles by numpy."""
    for _ in range(many):
        count = int(rng.integers(2, 12))
        minutes = np.sort(rng.uniform(0, 90, count))
        devs = np.round((2 - 0.05 * minutes + rng.normal(0, 0.1, count)) * FOOT).astype(np.int64)
        slope = -theilslopes(devs / FOOT, minutes).slope
        if slope <= 1e-6:
            continue
        pairs = [
            (devs[i] - devs[j]) / FOOT / (minutes[j] - minutes[i])
            for i, j in itertools.combinations(range(count), 2)
        ]
        slow, fast = np.percentile(pairs, [20, 80])
        inputs = {"minutes": numbers(minutes), "differences": listed(devs)}
        allowed = 1e-9 * (1 + max(abs(slow), abs(fast)))
        expected = near(ft_per_min=(slope, allowed), slow=(slow, allowed), fast=(fast, allowed))
        yield Case("pace", inputs, expected)


def visits(rng, many):
    """The cheapest order of visits by their ratio, which is what every order tried must come to."""
    for _ in range(many):
        count = int(rng.integers(1, 6))
        rates, minutes = rng.uniform(0.1, 5, count), rng.uniform(1, 9, count)
        order = np.argsort(-rates / minutes)
        cost = float(np.sum(rates[order] * np.cumsum(minutes[order])))
        inputs = {"per_minute": numbers(rates), "minutes": numbers(minutes)}
        said = " ".join(str(one + 1) for one in order)
        yield Case("visits", inputs, near(order=(said, 0), cost=(cost, 1e-9)))


def gravels(rng, many):
    """Mean and scatter of gravel, the parts added in squares."""
    for _ in range(many):
        count, patches = int(rng.integers(1, 4)), rng.uniform(0, 2, int(rng.integers(1, 4)))
        areas, thick = rng.uniform(50, 900, count), rng.integers(FOOT // 10, FOOT, count)
        mean, sd, landed = rng.normal(-0.02, 0.03), rng.uniform(0.01, 0.09), int(rng.integers(8, 50))
        pcf = rng.uniform(110, 150)
        nominal = float(areas @ (thick / FOOT)) / 27
        taken = areas.sum() * low(mean, sd) / 27
        all_of_it = nominal + taken + patches.sum()
        scatter = np.linalg.norm([sd / np.sqrt(landed) * areas.sum() / 27, 0.015 * areas.sum() / 27, 0.04 * all_of_it])
        enough = norm.ppf(0.9, all_of_it, scatter)
        inputs = {
            "areas_sf": numbers(areas),
            "thicknesses": listed(thick),
            "patches_cy": numbers(patches),
            "landing_mean": repr(mean),
            "landing_sd": repr(sd),
            "landings": landed,
            "pcf": repr(pcf),
        }
        expected = near(
            mean_cy=(all_of_it, 1e-9),
            sd_cy=(scatter, 1e-9),
            enough_cy=(enough, 1e-8),
            enough_tons=(enough * 27 * pcf / 2000, 1e-7),
        )
        yield Case("gravel_order", inputs, expected)


def cases(rng):
    """All of them."""
    yield from surfaces(rng, 60)
    yield from grids(rng, 300)
    yield from landings(rng, 300)
    yield from aims(rng, 300)
    yield from paces(rng, 300)
    yield from visits(rng, 200)
    yield from gravels(rng, 200)
