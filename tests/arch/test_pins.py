"""The pins, their hashes and the project's declared dependencies say the same."""

from __future__ import annotations

import re
import tomllib

from tests.arch.tree import ROOT

PACKAGING = ROOT / "packaging"
PIN = re.compile(r"^(?P<name>[A-Za-z0-9._-]+)==(?P<version>[^\s;#\\]+)\s*(?:;\s*(?P<marker>[^#\\]+?))?\s*(?:[#\\].*)?$")
HASH = re.compile(r"^    --hash=sha256:[0-9a-f]{64}(?: \\)?$")


def name_of(written: str) -> str:
    return re.sub(r"[-_.]+", "-", written).lower()


def pins(text: str) -> set[tuple[str, str, str]]:
    """Return the pins of a requirements file as (name, version, marker)."""
    lines = [line for line in text.splitlines() if line and not line.startswith(("#", " "))]
    found = [PIN.match(line) for line in lines]
    assert all(found), [line for line, match in zip(lines, found, strict=True) if not match]
    return {(name_of(m["name"]), m["version"], (m["marker"] or "").replace('"', "'")) for m in found if m}


def test_locked_files_hold_the_pins_of_constraints() -> None:
    locked = set().union(*(pins(file.read_text(encoding="utf-8")) for file in (PACKAGING / "locked").glob("*.txt")))
    assert locked == pins((PACKAGING / "constraints.txt").read_text(encoding="utf-8"))


def test_locked_files_hold_hashes_and_name_no_place() -> None:
    for file in (PACKAGING / "locked").glob("*.txt"):
        first, *lines = file.read_text(encoding="utf-8").splitlines()
        assert first.startswith("# ")
        for line, after in zip(lines, [*lines[1:], ""], strict=True):
            assert PIN.match(line) or HASH.match(line), line
            if not line.startswith(" "):
                assert HASH.match(after), f"{line} has no hash"


def test_declared_dependencies_are_pinned() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    declared = [
        *project["dependencies"],
        *(word for extra in project["optional-dependencies"].values() for word in extra),
    ]
    pinned = {name for name, _, _ in pins((PACKAGING / "constraints.txt").read_text(encoding="utf-8"))}
    assert {name_of(re.split(r"[<>=;!~ ]", word)[0]) for word in declared} <= pinned
