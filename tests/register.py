"""Reads the hazard file: what may go wrong, what is done against it, which tests prove that, and what remains."""

from __future__ import annotations

import os
import re
import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
FILE = ROOT / "tests" / "hazards" / "hazards.toml"


@dataclass(frozen=True)
class Hazard:
    """One hazard; ``proof`` are the tests by file and function, with every case that a function has."""

    id: str
    name: str
    cause: str
    mitigation: tuple[str, ...]
    proof: tuple[str, ...]
    remains: str


def hazards(file: Path = FILE) -> tuple[Hazard, ...]:
    """Return all hazards of the file, in its order."""
    found = tomllib.loads(file.read_text(encoding="utf-8"))["hazard"]
    return tuple(
        Hazard(**(entry | {"mitigation": tuple(entry["mitigation"]), "proof": tuple(entry["proof"])}))
        for entry in found
    )


def function_of(node_id: str) -> str:
    """Return a test without the case that its parameters make of it."""
    return node_id.split("[", 1)[0]


@cache
def functions_in(file: Path) -> frozenset[str]:
    """Return the names of the tests that a file holds."""
    return frozenset(re.findall(r"^def (test_\w+)", file.read_text(encoding="utf-8"), re.MULTILINE))


def unproved(
    known: Iterable[Hazard], outcomes: Mapping[str, set[str]], *, posix: bool = os.name == "posix"
) -> list[str]:
    """Return what a run of all tests leaves unproved.

    ``outcomes`` holds for every test that ran, by file and function, how its cases ended. A hazard is proved by tests that ran
    and passed in every case: one that was skipped, failed or never ran proves nothing. Elsewhere than on POSIX some cannot
    run (nothing there kills a program in mid-sentence), so there a skipped test is let pass.
    """
    complaints = []
    for hazard in known:
        for proof in hazard.proof:
            ended = outcomes.get(proof, set())
            if not posix and "skipped" in ended:
                ended = (ended - {"skipped"}) | {"passed"}
            if ended != {"passed"}:
                how = " and ".join(sorted(ended - {"passed"})) or "never ran"
                complaints.append(f"{hazard.id} {hazard.name}: {proof} {how}")
    return complaints
