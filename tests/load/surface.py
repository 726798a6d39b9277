"""scipy's side of the surface measurement: the same points, the same places; prints its figures in a fixed order.

Usage: surface.py FOLDER. Figures: seconds from points to the first answer, ns a place in one call, µs a place alone,
MB held, greatest difference from the hub's elevations in tenth-micrometres.
"""

import sys
import time
from pathlib import Path

import numpy as np
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

ALONE = 100


def resident():
    """MB of this process; 0 where the system does not tell."""
    status = Path("/proc/self/status")
    if not status.is_file():
        return 0
    line = next(line for line in status.read_text().splitlines() if line.startswith("VmRSS:"))
    return int(line.split()[1]) / 1024


def main():
    """Reads, measures, prints."""
    folder = Path(sys.argv[1])
    points = np.fromfile(folder / "points", dtype="<i8").reshape(-1, 3).astype(float)
    places = np.fromfile(folder / "places", dtype="<i8").reshape(-1, 2).astype(float)
    found = np.fromfile(folder / "found", dtype="<i8")
    before, began = resident(), time.perf_counter()
    surface = LinearNDInterpolator(Delaunay(points[:, :2]), points[:, 2])
    surface(places[:1])
    from_points = time.perf_counter() - began
    held = resident() - before
    began = time.perf_counter()
    answers = surface(places)
    each_ns = (time.perf_counter() - began) * 1e9 / len(places)
    began = time.perf_counter()
    for place in places[:ALONE]:
        surface(place)
    alone_us = (time.perf_counter() - began) * 1e6 / ALONE
    off = np.max(np.abs(answers - found))
    print(from_points, each_ns, alone_us, round(held), round(float(off), 3))


if __name__ == "__main__":
    main()
