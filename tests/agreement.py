"""Sums up what was held against published figures, by publication, and holds the committed page to it."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

from tests.evidence import Compared

HERE = Path(__file__).parent
PAGE = HERE.parent / "resources" / "trust" / "trust.md"

# A worst deviation may be this much larger than the page says before the page is out of date: other processors round otherwise.
_SLACK, _NOISE = 1.05, 1e-8


@dataclass(frozen=True)
class Publication:
    """A publication, or a program, and the rows that come from it."""

    name: str
    about: str = ""
    begins: tuple[str, ...] = ()
    program: bool = False
    named: bool = True


@dataclass
class Agreement:
    """How the product agrees with one publication."""

    publication: Publication
    rows: set[str] = field(default_factory=set)
    figures: set[tuple[str, str]] = field(default_factory=set)
    differing: dict[str, str] = field(default_factory=dict)
    worst: float = 0.0
    worst_row: str = ""
    used: float = 0.0

    def add(self, one: Compared) -> None:
        """Count one figure of a row."""
        self.rows.add(one.row)
        self.figures.add((one.row, one.figure))
        if one.off_share > self.worst:
            self.worst, self.worst_row = one.off_share, one.row
        if one.differs:
            self.differing[one.row] = one.differs
        else:
            self.used = max(self.used, one.off / one.tolerance)


@cache
def publications() -> tuple[Publication, ...]:
    """Return all publications, and at the end what stands for none."""
    file = tomllib.loads((HERE / "publications.toml").read_text(encoding="utf-8"))
    named = [
        Publication(each["name"], each["about"], tuple(each["begins"]), each.get("program", False))
        for each in file["publication"]
    ]
    unnamed = [Publication(name, "", tuple(begins), named=False) for name, begins in file["unnamed"].items()]
    return (*named, *unnamed)


def unused() -> list[Mapping[str, str]]:
    """Return the published figures that are not rows, each with the reason."""
    file = tomllib.loads((HERE / "publications.toml").read_text(encoding="utf-8"))
    found: list[Mapping[str, str]] = file["unused"]
    return found


@cache
def publication_of(source: str) -> Publication:
    """Return the one publication that a row's source is; two that begin alike would be counted twice."""
    found = [each for each in publications() if any(source.startswith(start) for start in each.begins)]
    assert len(found) == 1, f"{source!r} is {[each.name for each in found] or 'none of the publications'}"
    return found[0]


def agreements(evidence: Iterable[Compared]) -> list[Agreement]:
    """Return the agreement with each publication that has rows, in the order of the file."""
    found = {each.name: Agreement(each) for each in publications()}
    for one in evidence:
        if not one.points:
            found[publication_of(one.source).name].add(one)
    return [each for each in found.values() if each.rows]


def grids(evidence: Iterable[Compared]) -> list[tuple[str, str, int, float, float]]:
    """Return what was compared with programs over many points: publication, what, points, the worst, what is allowed."""
    found: dict[tuple[str, str], tuple[int, float, float]] = {}
    for one in evidence:
        if one.points:
            key = (publication_of(one.source).name, one.about)
            points, worst, allowed = found.get(key, (0, 0.0, one.tolerance))
            found[key] = (max(points, one.points), max(worst, one.got), allowed)
    return [(*key, *rest) for key, rest in sorted(found.items())]


def percent(share: float) -> str:
    """Return a deviation in words: two digits, and nothing finer than what could be noise."""
    if share < _NOISE:
        return "under 0.000001 %"
    digits = f"{100.0 * share:.2g}"
    return f"{float(digits):.10f}".rstrip("0").rstrip(".") + " %"


def table(text: str, heading: str) -> list[list[str]]:
    """Return the cells of the table below a heading of a page."""
    lines = text.split(f"## {heading}\n", 1)[1].split("\n## ", 1)[0].splitlines()
    rows = [line for line in lines if line.startswith("|")][2:]
    return [[cell.strip() for cell in row.strip("|").split(" | ")] for row in rows]


def out_of_date(page: str, evidence: Sequence[Compared]) -> list[str]:
    """Return what a page says of the agreement with publications that a whole run does not bear out."""
    said = {cells[0]: cells for cells in table(page, "Published figures")}
    complaints = []
    for each in agreements(evidence):
        name = each.publication.name
        if name not in said:
            complaints.append(f"trust page: nothing on {name}")
            continue
        cells = said.pop(name)
        rows, figures, worst = int(cells[2]), int(cells[3]), float(cells[4].split()[-2]) / 100.0
        if (rows, figures) != (len(each.rows), len(each.figures)):
            complaints.append(
                f"trust page: {name}: {rows} rows, {figures} figures; {len(each.rows)}, {len(each.figures)} ran"
            )
        if each.worst > _SLACK * worst + _NOISE:
            complaints.append(f"trust page: {name}: {percent(each.worst)} off at worst, not {percent(worst)}")
    return complaints + [f"trust page: {name}: no test compared anything" for name in said]
