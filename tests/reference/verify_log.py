"""Proves a log by hub/LOG.md alone, with nothing of the hub's: `python3 verify_log.py FOLDER-OR-EXPORT`."""

import base64
import hashlib
import json
import pathlib
import re
import sys

LINE = re.compile(rb'(\{"seq":(\d+),.*,"prev":"([0-9a-f]{64})"),"hash":"([0-9a-f]{64})"\}', re.DOTALL)


def prove(place):
    """The first and the last entry and the head; an AssertionError says what is wrong."""
    folder = place.is_dir()
    files = sorted((place / "log").glob("*.jsonl")) if folder else [place]
    lines = [line for file in files for line in file.read_bytes().removesuffix(b"\n").split(b"\n")]
    first, last, head, named, shown = (1, 0, b"0" * 64, set(), set()) if folder else (None, None, None, set(), set())
    for line in lines:
        if line.startswith(b'{"photo":') and not folder:
            photo = json.loads(line)
            name, picture = photo["photo"], base64.b64decode(photo["jpeg"], validate=True)
            assert line == f'{{"photo":"{name}","jpeg":"{base64.b64encode(picture).decode()}"}}'.encode(), "a photo's line"
            assert name in named - shown and hashlib.sha256(picture).hexdigest() == name, f"photo {name}"
            shown.add(name)
            continue
        found = LINE.fullmatch(line.removesuffix(b" "))
        assert found and not shown, f"behind entry {last}: no entry"
        kept, seq, prev, own = found.group(1), int(found.group(2)), found.group(3), found.group(4)
        assert hashlib.sha256(kept + b"}").hexdigest() == own.decode(), f"entry {seq}: changed"
        assert last is None or (seq, prev) == (last + 1, head), f"entry {seq}: does not follow {last}"
        first, last, head = first or seq, seq, own
        body = json.loads(line)["body"]
        if body["kind"] == "photo_added":
            named.add(body["sha256"])
    assert last, "no entries"
    for name in named - shown:
        file = place / "photos" / f"{name}.jpg"
        assert folder and hashlib.sha256(file.read_bytes()).hexdigest() == name, f"photo {name}"
    return f"Entries {first} to {last}, head {head.decode()}."


if __name__ == "__main__":
    try:
        print(prove(pathlib.Path(sys.argv[1])))
    except (AssertionError, OSError, ValueError) as wrong:
        sys.exit(f"not proven: {wrong}")
