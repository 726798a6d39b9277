"""Chances, guard bands and verdicts beside scipy.stats and exact fractions."""

from fractions import Fraction

import numpy as np
from scipy.stats import norm

from batch import FOOT, Case, listed, metres, near

READING = {"fine": 0.005, "coarse": 0.010, "by_eye": 0.02, "muddy": 0.03}
GROUND = {"trimmed": 0.012, "tooth_marked": 0.03, "hard_or_rock": 0.05}


def chances(rng, many):
    """The chance between limits, one of them left out now and then."""
    for _ in range(many):
        value, doubt = rng.normal(0, 0.3), rng.uniform(0.001, 0.2)
        low, high = np.sort(rng.normal(0, 0.3, 2))
        inputs = {"value": repr(float(value)), "uncertainty": repr(float(doubt))}
        chance = 1.0
        if rng.random() < 0.8:
            inputs["high"] = repr(float(high))
            chance = norm.cdf((high - value) / doubt)
        if rng.random() < 0.8:
            inputs["low"] = repr(float(low))
            chance -= norm.cdf((low - value) / doubt)
        yield Case("chance", inputs, near(chance=(chance, 1e-12)))


def guards(rng, many):
    """Uncertainties in squares, and the guard band k·u rounded up."""
    for _ in range(many):
        reading, ground = rng.choice(list(READING)), rng.choice(list(GROUND))
        shots, coarse = int(rng.integers(1, 6)), bool(rng.integers(2))
        mark, slant = rng.integers(0, FOOT // 50, 2)
        near_by, far = rng.integers(0, 300 * FOOT, 2)
        k = float(rng.uniform(0.5, 3))
        at = lambda distance: slant / FOOT * distance / FOOT / 100  # noqa: E731
        typed = max(0.03 if coarse else 0.0, READING[reading])
        set_up = np.linalg.norm([mark / FOOT, READING[reading], at(near_by)])
        shot = np.linalg.norm([typed, at(far), GROUND[ground]])
        doubt = np.hypot(set_up, shot / np.sqrt(shots))
        inputs = {
            "benchmark_doubt": metres(mark),
            "reading": str(reading),
            "coarse_text": "yes" if coarse else "no",
            "surface": str(ground),
            "laser_per_100_ft": metres(slant),
            "backsight_distance": metres(near_by),
            "foresight_distance": metres(far),
            "shots": shots,
            "k": repr(k),
        }
        yield Case("guard_band", inputs, near(uncertainty_ft=(doubt, 1e-14), guard=(k * doubt * FOOT + 0.5, 0.51)))


def verdicts(rng, many):
    """The verdict on a mean, in fractions; and what it promises, by the normal law."""
    for _ in range(many):
        high, low = (int(one) for one in rng.integers(0, FOOT // 3, 2))
        doubt, k = rng.uniform(0.002, 0.06), rng.uniform(1, 2.5)
        guard = int(np.ceil(k * doubt * FOOT))
        many_shots = int(rng.integers(1, 6))
        shots = [int(one) for one in rng.integers(-FOOT // 2, FOOT // 2, many_shots)]
        if rng.random() < 0.3:
            # At the very edge, and a count beside it.
            edge = int(rng.choice([high + guard, high - guard, -low - guard, -low + guard]))
            shots = [edge + int(rng.integers(-1, 2))]
        mean = Fraction(sum(shots), len(shots))
        if mean > high + guard:
            said = "high"
        elif mean < -low - guard:
            said = "low"
        elif high + low > 2 * guard and -low + guard <= mean <= high - guard:
            said = "on"
        else:
            said = "too_close_low" if mean < Fraction(high - low, 2) else "too_close_high"
        inputs = {
            "differences": listed(shots),
            "high": metres(high),
            "low": metres(low),
            "guard": metres(guard),
        }
        provable = "yes" if high + low > 2 * guard else "no"
        expected = near(verdict=(said, 0), provable=(provable, 0))
        yield Case("verdict", inputs, promised(expected, mean, high, low, doubt, k))


def promised(judge, mean, high, low, doubt, k):
    """ON is wrong at each limit by no more than the chance beyond k; HIGH and LOW are wrong by no more than it."""

    def all_of_it(answer):
        wrong = judge(answer)
        if wrong:
            return wrong
        over = norm.sf((high - float(mean)) / FOOT / doubt)
        under = norm.cdf((-low - float(mean)) / FOOT / doubt)
        risk = {
            "on": max(over, under),
            "high": 1 - over,
            "low": 1 - under,
        }.get(answer["outputs"]["verdict"], 0.0)
        if risk > norm.sf(k) + 1e-9:
            return f"the risk is {risk}, the guard band promises {norm.sf(k)}"
        return None

    return all_of_it


def repeats(rng, many):
    """The doubt of one shot from blind pairs: the spread of a difference over the root of two."""
    for _ in range(many):
        pairs = rng.integers(-FOOT // 20, FOOT // 20, int(rng.integers(6, 40)))
        doubt = np.sqrt(np.var(np.concatenate([pairs, -pairs])) / 2) / FOOT
        yield Case("blind_repeats", {"differences": listed(pairs)}, near(doubt_ft=(doubt, 1e-14)))


def cases(rng):
    """All of them."""
    yield from chances(rng, 2000)
    yield from guards(rng, 800)
    yield from verdicts(rng, 2500)
    yield from repeats(rng, 200)
