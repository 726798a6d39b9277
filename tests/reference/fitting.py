"""Least squares beside numpy and scipy: found pins, levelling lines that miss, the level's own slant."""

import numpy as np
from scipy.optimize import least_squares

from batch import FOOT, Case, back, listed, metres, near


def pins(rng, many):
    """The rigid motion that fits best, by the singular value decomposition of the pairs."""
    for number in range(many):
        count = int(rng.integers(2, 9))
        plan = rng.integers(0, 400 * FOOT, (count, 2))
        # Big plan numbers, which only whole counts carry; the reference works without them.
        far = rng.integers(0, 10**6, 2) * FOOT
        turn = rng.uniform(-np.pi, np.pi)
        left = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
        middle = plan.mean(axis=0)
        site = (plan - middle) @ left.T + rng.uniform(0, 500, 2) * FOOT
        # Pins that stand apart: two at one place fix no turn.
        if np.ptp(plan, axis=0).max() < FOOT:
            continue
        site = np.rint(site + rng.normal(0, 0.03, site.shape) * FOOT).astype(int)
        on_plan, on_site = plan - middle, site - site.mean(axis=0)
        u, _, v = np.linalg.svd(on_site.T @ on_plan)
        best = u @ np.diag([1, np.sign(np.linalg.det(u @ v))]) @ v
        angle = np.degrees(np.arctan2(best[1, 0], best[0, 0]))
        fitted = on_plan @ best.T + site.mean(axis=0)
        residuals = np.linalg.norm(fitted - site, axis=1)
        scale = np.linalg.norm(on_site, axis=1).sum() / np.linalg.norm(on_plan, axis=1).sum()
        at = plan + rng.integers(0, 50 * FOOT, 2)
        lie = (at - middle) @ best.T + site.mean(axis=0)
        expected = near(
            residuals=(residuals, 2),
            scale=(scale, 1e-8),
            turn_degrees=(angle, 1e-9),
            places=(lie, 2),
        )
        inputs = {"plan": listed(plan + far), "site": listed(site), "at": listed(at + far)}
        yield Case("found_pins", inputs, expected)
        if number % 20 == 0:
            yield Case("found_pins", inputs, no_better(on_plan / FOOT, on_site / FOOT))


def no_better(plan, site):
    """Nothing that scipy finds from the hub's own fit fits better; lengths in feet."""

    def judge(answer):
        out = answer["outputs"]
        ours = sum((one / FOOT) ** 2 for one in back(out["residuals"]))

        def off(tried):
            turn, east, north = tried
            left = np.array([[np.cos(turn), -np.sin(turn)], [np.sin(turn), np.cos(turn)]])
            return np.ravel(plan @ left.T + [east, north] - site)

        best = 2 * least_squares(off, [np.radians(out["turn_degrees"]), 0, 0], xtol=1e-15, ftol=1e-15).cost
        if ours > best + 1e-7:
            return f"the squares sum to {ours}, scipy finds {best}"
        return None

    return judge


def lines(rng, many):
    """A line between two known points: equal weights by set-up, and weights by distance."""
    for _ in range(many):
        count = int(rng.integers(2, 12))
        start = int(rng.integers(100 * FOOT, 400 * FOOT))
        back_, ahead = (rng.integers(FOOT, 12 * FOOT, count) for _ in range(2))
        rises = back_ - ahead
        misses = int(rng.integers(-FOOT // 20, FOOT // 20))
        end = start + int(rises.sum()) - misses
        adjusted = adjust(start, end, rises, np.ones(count))
        yield Case(
            "level_line",
            {
                "start": metres(start),
                "backsights": listed(back_),
                "foresights": listed(ahead),
                "end": metres(end),
                "allowed": "0.05 ft",
            },
            near(misclosure=(misses, 0), closes=("yes", 0), adjusted=(adjusted, 0.6)),
        )
        parts = rng.integers(20 * FOOT, 300 * FOOT, count)
        distances = np.cumsum(parts)
        found = adjust(0, -misses, np.zeros(count), 1 / parts)
        yield Case(
            "adjust_by_distance",
            {"misclosure": metres(misses), "distances": listed(distances), "total": metres(distances[-1])},
            near(corrections=(found, 0.6)),
        )


def adjust(start, end, rises, weights):
    """Elevations by weighted least squares on the observed rises, both ends held."""
    count = len(rises)
    design, wanted = np.zeros((count, count - 1)), np.array(rises, dtype=float)
    for number in range(count):
        if number < count - 1:
            design[number, number] = 1
        else:
            wanted[number] -= end - start
        if number > 0:
            design[number, number - 1] = -1
    root = np.sqrt(weights / np.max(weights))
    above = np.linalg.lstsq(design * root[:, None], wanted * root, rcond=None)[0]
    return np.append(above + start, end)


def pegs(rng, many):
    """The two-peg test as two equations: how much higher b stands than a, and the slant."""
    for _ in range(many):
        near_peg, far_peg = (int(one) for one in (rng.uniform(5, 30) * FOOT, rng.uniform(100, 250) * FOOT))
        higher, slant = rng.uniform(-3, 3) * FOOT, rng.uniform(-2e-3, 2e-3)
        half = 80 * FOOT
        seen = {
            "middle_a": round(5 * FOOT + slant * half),
            "middle_b": round(5 * FOOT - higher + slant * half),
            "far_a": round(6 * FOOT + slant * near_peg),
            "far_b": round(6 * FOOT - higher + slant * far_peg),
        }
        # a − b = higher + slant · (distance of a − distance of b), seen from the middle and from beyond a.
        design = np.array([[1.0, 0.0], [1.0, (near_peg - far_peg) / FOOT]])
        wanted = np.array([seen["middle_a"] - seen["middle_b"], seen["far_a"] - seen["far_b"]]) / FOOT
        difference, found = np.linalg.solve(design, wanted)
        inputs = {name: metres(value) for name, value in seen.items()}
        inputs |= {"distance_a": metres(near_peg), "distance_b": metres(far_peg)}
        expected = near(
            true_difference=(difference * FOOT, 1),
            slant=(found, 1e-12),
            corrected_a=(seen["far_a"] - found * near_peg, 1),
            corrected_b=(seen["far_b"] - found * far_peg, 1),
        )
        yield Case("two_peg", inputs, expected)


def arcs(rng, many):
    """The circle nearest to walked places, by scipy's least squares on the distances themselves."""
    for _ in range(many):
        radius, middle = rng.uniform(40, 400), rng.uniform(-500, 500, 2)
        angles = np.sort(rng.uniform(0, rng.uniform(0.8, 3), int(rng.integers(5, 30)))) + rng.uniform(0, 6)
        walked = middle + radius * np.column_stack([np.cos(angles), np.sin(angles)])
        walked = np.rint((walked + rng.normal(0, 0.05, walked.shape)) * FOOT).astype(int)
        if np.ptp(angles) < 0.5:
            continue
        feet = walked / FOOT

        def off(tried):
            return np.hypot(feet[:, 0] - tried[0], feet[:, 1] - tried[1]) - tried[2]

        found = least_squares(off, [*middle, radius], xtol=1e-15, ftol=1e-15, gtol=1e-15).x
        expected = near(
            radius=(found[2] * FOOT, 300),
            centre=(found[:2] * FOOT, 300),
            most_off=(np.max(np.abs(off(found))) * FOOT, 300),
        )
        inputs = {"east": listed(walked[:, 0]), "north": listed(walked[:, 1])}
        yield Case("fitted_arc", inputs, expected)


def cases(rng):
    """All of them."""
    yield from arcs(rng, 300)
    yield from pins(rng, 600)
    yield from lines(rng, 600)
    yield from pegs(rng, 300)
