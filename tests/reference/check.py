"""Holds the hub's arithmetic against numpy, scipy, shapely and exact fractions on thousands of seeded inputs.

Usage: check.py BINARY [SEED]. Prints a line for each subject; a difference is printed with a line of JSON that
`rodcall compute` takes again, and ends in failure.
"""

import json
import sys
import time
from collections import Counter

import numpy as np

import accounting
import chances
import cuts
import fitting
import geometry
import interpolation
import levelling
from batch import answer

SEED = 20_300_514
# Differences shown of each computation.
SHOWN = 3


def main():
    """Every subject, each from a seed of its own."""
    binary = sys.argv[1]
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else SEED
    bad = 0
    for subject in (geometry, interpolation, fitting, chances, levelling, accounting, cuts):
        began = time.monotonic()
        rng = np.random.default_rng([seed, sum(subject.__name__.encode())])
        cases = list(subject.cases(rng))
        answer(binary, cases)
        faults = [(case, wrong) for case in cases if (wrong := case.judge(case.answer))]
        counts = Counter(case.computation for case in cases)
        listed = ", ".join(f"{name} {count}" for name, count in counts.items())
        took = time.monotonic() - began
        print(f"{subject.__name__}: {len(cases)} cases ({listed}), {len(faults)} differ, seed {seed}, {took:.1f} s")
        shown = Counter()
        for case, wrong in faults:
            shown[case.computation] += 1
            if shown[case.computation] > SHOWN:
                continue
            print(f"  {case.computation}: {wrong}")
            print("   ", json.dumps({"computation": case.computation, "inputs": case.inputs}))
        bad += len(faults)
    if bad:
        raise SystemExit(f"{bad} cases differ from the reference.")


if __name__ == "__main__":
    main()
