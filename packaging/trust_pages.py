"""Writes the two pages that say how far Evenwater can be trusted: resources/trust/hazards.md and resources/trust/trust.md.

    .venv/bin/python packaging/trust_pages.py            runs the tests that hold it against published figures (a minute), writes both
    .venv/bin/python packaging/trust_pages.py hazards    writes the page of hazards only (no test is run)

The hazards come from tests/hazards/hazards.toml, the agreement from what the tests compared while they ran, its sources from
tests/publications.toml. A run of all tests fails where a page says what they do not bear out.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Sequence
from pathlib import Path
from string import Template

ROOT = Path(__file__).resolve().parents[1]
TRUST = ROOT / "resources" / "trust"
HAZARDS, PAGE = TRUST / "hazards.md", TRUST / "trust.md"
# The page around its tables.
WORDS = ROOT / "packaging" / "trust_words.md"
COMPARING = ("tests/published", "tests/carbonate")
# What looks at the page cannot hold before it is made.
OF_THE_PAGE = "tests/published/test_trust_page.py"

sys.path[:0] = [place for place in (str(ROOT), str(ROOT / "desktop")) if place not in sys.path]

import pytest  # noqa: E402

from tests.agreement import Agreement, agreements, grids, percent, unused  # noqa: E402  (found only from here on)
from tests.evidence import Compared, carried  # noqa: E402
from tests.register import Hazard, hazards  # noqa: E402


class Collector:
    """Collects from a run of tests what they compared, and whether any failed."""

    def __init__(self) -> None:
        self.evidence: list[Compared] = []

    def pytest_runtest_logreport(self, report: object) -> None:
        """Take what a test's report carries."""
        self.evidence.extend(carried(getattr(report, "user_properties", ())))


def hazards_page(known: Sequence[Hazard]) -> str:
    """Return the page of hazards."""
    lines = [
        "# What can go wrong, and what is done against it",
        "",
        f"{len(known)} hazards, each with the tests that prove what is done against it. The tests run before every change is taken over,",
        "and a hazard without a passing test stops it. Made from `tests/hazards/hazards.toml` by `packaging/trust_pages.py`.",
        "",
    ]
    lines += [f"- [{each.id}](#{each.id.lower()}) {each.name}" for each in known]
    for each in known:
        lines += [
            "",
            f'## <a id="{each.id.lower()}"></a>{each.id} {each.name}',
            "",
            f"**Why it happens.** {each.cause}",
            "",
        ]
        lines += ["**What is done.**", "", *(f"- {what}" for what in each.mitigation), ""]
        lines += [f"**What remains.** {each.remains}", "", "**Proved by**", "", *_by_file(each.proof)]
    return "\n".join(lines) + "\n"


def _by_file(proof: Iterable[str]) -> list[str]:
    found: dict[str, list[str]] = {}
    for node in proof:
        file, _, function = node.partition("::")
        found.setdefault(file, []).append(f"`{function}`")
    return [f"- `{file}`: {', '.join(functions)}" for file, functions in found.items()]


def trust_page(words: str, evidence: Sequence[Compared]) -> str:
    """Return the page on agreement with published figures."""
    found = agreements(evidence)
    sources = [each for each in found if each.publication.named]
    rows = sum(len(each.rows) for each in found)
    differing = sum(len(each.differing) for each in found)
    return Template(words).substitute(
        rows=rows,
        figures=sum(len(each.figures) for each in found),
        sources=len(sources),
        programs=sum(each.publication.program for each in sources),
        within=rows - differing,
        differing=differing,
        confidence=_confidence(evidence),
        published="\n".join(_line(each) for each in found),
        differences="\n".join(_differences(found)),
        grids="\n".join(_grid(*each) for each in grids(evidence)),
        unused="\n".join(f"- {each['what']}: {each['why']}." for each in unused()),
    )


def _line(each: Agreement) -> str:
    publication = each.publication
    used = f"{each.used:.2f}" if len(each.differing) < len(each.rows) else "-"
    about = publication.about or "doses, washout, titration, scales of alkalinity"
    worst = f"{percent(each.worst)} | {each.worst_row or '-'}"
    return f"| {publication.name} | {about} | {len(each.rows)} | {len(each.figures)} | {worst} | {used} | {len(each.differing)} |"


def _differences(found: Iterable[Agreement]) -> list[str]:
    reasons: dict[str, list[str]] = {}
    for each in found:
        for row, why in each.differing.items():
            reasons.setdefault(why, []).append(row)
    return [f"- {why[0].upper()}{why[1:]}. ({', '.join(rows)})" for why, rows in reasons.items()]


def _grid(name: str, about: str, points: int, worst: float, allowed: float) -> str:
    return f"| {name} | {about} | {points} | {worst:.2g} | {allowed:g} |"


def _confidence(evidence: Iterable[Compared]) -> str:
    rows = {one.row: one.confidence for one in evidence if not one.points}
    counts = {how: sum(said == how for said in rows.values()) for how in rows.values()}
    return (
        f"{counts['read-in-source']} rows were read where they are printed, {counts['computed-with-library']} were reckoned once from what is "
        f"printed (atomic weights, formulas, another program) and then fixed, {counts['from-memory']} are from memory"
    )


def main(words: Sequence[str]) -> int:
    TRUST.mkdir(exist_ok=True)
    HAZARDS.write_text(hazards_page(hazards()), encoding="utf-8")
    print(f"Wrote {HAZARDS.relative_to(ROOT)}.")
    if list(words) == ["hazards"]:
        return 0
    collector = Collector()
    places = [str(ROOT / place) for place in COMPARING]
    status = pytest.main(["-q", "-p", "no:cacheprovider", f"--ignore={ROOT / OF_THE_PAGE}", *places], [collector])
    if status != pytest.ExitCode.OK:
        print("The trust page was not written: a comparison with published figures failed.")
        return 1
    PAGE.write_text(trust_page(WORDS.read_text(encoding="utf-8"), collector.evidence), encoding="utf-8")
    print(f"Wrote {PAGE.relative_to(ROOT)}.")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
