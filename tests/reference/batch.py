"""Cases that the hub works out in one batch, each with what an outside library makes of the same inputs.

Lengths go in as exact decimal metres and come back as counts of a tenth of a micrometre, so that an allowance can be
a single count.
"""

import json
import subprocess
from dataclasses import dataclass, field
from typing import Callable

import numpy as np

FOOT = 3_048_000
METRE = 10_000_000


@dataclass
class Case:
    """One computation with its inputs and a judge that returns what is wrong, or None."""

    computation: str
    inputs: dict
    judge: Callable[[dict], str | None]
    answer: dict = field(default_factory=dict)


def metres(counts):
    """A length, exactly, as the hub reads it."""
    counts = int(counts)
    sign = "-" if counts < 0 else ""
    whole, part = divmod(abs(counts), METRE)
    return f"{sign}{whole}.{part:07d} m"


def listed(counts):
    """Lengths in a list."""
    return "; ".join(metres(one) for one in np.ravel(counts))


def back(output):
    """An output's lengths in counts."""
    if isinstance(output, list):
        return [back(one) for one in output]
    return round(output["m"] * METRE)


def near(**expected):
    """A judge of outputs: name = (expected, allowance). Lengths and lists of them are in counts, numbers plain."""

    def judge(answer):
        if "error" in answer:
            return f"refused: {answer['error']}"
        for name, (wanted, allowed) in expected.items():
            got = answer["outputs"][name]
            if isinstance(wanted, str):
                if got != wanted:
                    return f"{name}: the hub says {got}, the reference {wanted}"
                continue
            got = np.ravel(back(got) if isinstance(got, (dict, list)) else got)
            wanted = np.ravel(np.asarray(wanted, dtype=float))
            if got.shape != wanted.shape:
                return f"{name}: the hub gives {len(got)}, the reference {len(wanted)}"
            off = float(np.max(np.abs(got - wanted)))
            if not off <= allowed:
                return f"{name}: off by {off:.6g}, allowed {allowed:g}: the hub says {got}, the reference {wanted}"
        return None

    return judge


def refused(because):
    """A judge that wants a refusal with these words."""

    def judge(answer):
        if because not in answer.get("error", ""):
            return f"the reference refuses this ({because}); the hub says {answer}"
        return None

    return judge


def answer(binary, cases):
    """Has the hub work out all cases in one run."""
    lines = "".join(
        json.dumps({"computation": case.computation, "inputs": case.inputs}) + "\n" for case in cases
    )
    ran = subprocess.run([binary, "compute"], input=lines.encode(), capture_output=True, check=False)
    answers = [json.loads(line) for line in ran.stdout.splitlines()]
    if len(answers) != len(cases):
        raise SystemExit(f"{len(cases)} cases, {len(answers)} answers: {ran.stderr.decode()}")
    for case, one in zip(cases, answers):
        case.answer = one
