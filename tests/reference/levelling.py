"""Levelling sums beside exact fractions, in every form in which people write lengths."""

from fractions import Fraction
from math import floor

import numpy as np

from batch import FOOT, METRE, Case, back, metres, near

INCH = FOOT // 12


def written(rng):
    """A length as somebody writes it, and its value in counts: what falls between two goes to the nearest, half up."""
    text, exact = exactly_written(rng)
    return text, Fraction(floor(exact + Fraction(1, 2)))


def exactly_written(rng):
    """The same, exact."""
    form = rng.integers(5)
    if form == 0:
        text = f"{rng.uniform(0, 13):.{int(rng.integers(0, 5))}f}"
        return f"{text} ft", Fraction(text) * FOOT
    if form == 1:
        text = f"{rng.uniform(0, 4):.{int(rng.integers(0, 5))}f}"
        return f"{text} m", Fraction(text) * METRE
    if form == 2:
        text = str(int(rng.integers(0, 4000)))
        return f"{text} mm", Fraction(text) * METRE / 1000
    feet, inches = int(rng.integers(0, 13)), int(rng.integers(0, 12))
    under = int(2 ** rng.integers(1, 5))
    over = int(rng.integers(1, under))
    value = feet * FOOT + inches * INCH + Fraction(over, under) * INCH
    if form == 3:
        return f"{feet} ft {inches} {over}/{under} in", value
    return f"{feet}'-{inches} {over}/{under}\"", value


def lines(rng, many):
    """Heights, elevations and the page check: not a count may be lost."""
    for _ in range(many):
        count = int(rng.integers(1, 15))
        sights = [[written(rng) for _ in range(count)] for _ in range(2)]
        start_text, start = written(rng)
        heights, elevations, at = [], [], start
        for behind, ahead in zip(*sights):
            heights.append(at + behind[1])
            at = heights[-1] - ahead[1]
            elevations.append(at)
        sums = [sum(value for _, value in side) for side in sights]
        inputs = {
            "start": start_text,
            "backsights": "; ".join(text for text, _ in sights[0]),
            "foresights": "; ".join(text for text, _ in sights[1]),
        }
        expected = exactly(
            heights=heights,
            elevations=elevations,
            sum_backsights=[sums[0]],
            sum_foresights=[sums[1]],
            rise=[sums[0] - sums[1]],
        )
        yield Case("level_line", inputs, expected)
        behind, ahead, goal = sights[0][0], sights[1][0], written(rng)
        hi = start + behind[1]
        inputs = {"benchmark": start_text, "backsight": behind[0], "foresight": ahead[0], "target": goal[0]}
        expected = exactly(
            hi=[hi],
            elevation=[hi - ahead[1]],
            grade_rod=[hi - goal[1]],
            difference=[hi - ahead[1] - goal[1]],
        )
        yield Case("dig_check", inputs, expected)


def exactly(**expected):
    """Every length is the fraction itself."""

    def judge(answer):
        if "error" in answer:
            return f"refused: {answer['error']}"
        for name, wanted in expected.items():
            got = np.ravel(back(answer["outputs"][name])).tolist()
            if got != wanted:
                return f"{name}: the hub says {got}, the fractions {[str(one) for one in wanted]}"
        return None

    return judge


def shown(rng, many):
    """What a person reads is within half of the last place of what was typed, and is the nearest."""
    for _ in range(many):
        text, value = written(rng)
        places, parts = int(rng.integers(0, 5)), int(2 ** rng.integers(0, 5))
        forms = {
            f"ft {places}": Fraction(FOOT, 10**places),
            f"m {places}": Fraction(METRE, 10**places),
            "mm": Fraction(METRE, 1000),
            f"ft in {parts}": Fraction(INCH, parts),
            f"in {parts}": Fraction(INCH, parts),
        }
        for to, step in forms.items():
            yield Case("convert", {"length": text, "to": to}, nearest(value, step))


def nearest(value, step):
    """The shown text, read by this file's own rules, is a whole number of steps and the nearest one."""

    def judge(answer):
        if "error" in answer:
            return f"refused: {answer['error']}"
        text = answer["outputs"]["shown"]
        got = read(text)
        if got % step or abs(got - value) > step / 2:
            return f"{text} is not {value} counts to the nearest {step}"
        return None

    return judge


def read(text):
    """Counts of a shown text: numbers, mixed numbers and units, parted by blanks."""
    units = {"ft": FOOT, "m": METRE, "mm": METRE // 1000, "in": INCH}
    total, number = Fraction(0), Fraction(0)
    for word in text.split():
        if word in units:
            total, number = total + number * units[word], Fraction(0)
        else:
            number += Fraction(word)
    return total


def closures(rng, many):
    """Roots of distances and set-ups, leaning rods."""
    for _ in range(many):
        rate, distance = int(rng.integers(FOOT // 500, FOOT // 5)), int(rng.integers(FOOT, 20_000 * FOOT))
        for per, unit in (("root_kilometre", 1000 * METRE), ("root_mile", 5280 * FOOT)):
            inputs = {"rate": metres(rate), "per": per, "distance": metres(distance)}
            yield Case("closure_over_distance", inputs, near(allowed=(rate * np.sqrt(distance / unit), 0.51)))
        set_ups = int(rng.integers(1, 60))
        inputs = {"rate": metres(rate), "set_ups": set_ups}
        yield Case("closure_over_set_ups", inputs, near(allowed=(rate * np.sqrt(set_ups), 0.51)))
        upright, degrees = int(rng.integers(FOOT, 13 * FOOT)), rng.uniform(-30, 30)
        reads = upright / np.cos(np.radians(degrees))
        inputs = {"upright": metres(upright), "degrees": repr(float(degrees))}
        yield Case("leaning_rod", inputs, near(reads=(reads, 0.51)))


def cases(rng):
    """All of them."""
    yield from lines(rng, 800)
    yield from shown(rng, 400)
    yield from closures(rng, 200)
