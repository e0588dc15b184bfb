"""The page on trust: what it counts is there, its sources are counted once, and it is held to what the tests compared."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace

import pytest

from tests import agreement, evidence
from tests.agreement import PAGE, agreements, grids, out_of_date, percent, publication_of, publications, table, unused
from tests.carbonate import rows as carbonate
from tests.evidence import CARRIED, Compared, carried, compared, compared_grid, taken
from tests.published.rows import Row, check, every_row
from tests.trust_making import trust_pages

CARBONATE = ("composition", "constants", "states", "phreeqc", "limewater")
ON_FILE = [(row.id, row.source) for row in every_row()]
ON_FILE += [(row.id, row.source) for topic in CARBONATE for row in carbonate.rows(topic)]
SAID = table(PAGE.read_text(encoding="utf-8"), "Published figures")
TANAKA = "Tanaka et al., Metrologia 38:301 (2001)"
ONE = Compared(TANAKA, "one", "", 1000.0, 1000.001, 0.01, "read-in-source")


def test_there_are_at_least_350_rows_from_at_least_25_publications() -> None:
    assert len({row for row, _ in ON_FILE}) == len(ON_FILE) >= 350
    named = {publication_of(source).name for _, source in ON_FILE if publication_of(source).named}
    assert len(named) >= 25
    assert sum(not each.program for each in publications() if each.name in named) >= 25, "programs are no publications"


def test_every_publication_is_there_once_and_used() -> None:
    assert max(Counter(each.name for each in publications()).values()) == 1
    told = {publication_of(source).name for _, source in ON_FILE} | {"Certified reference seawaters"}
    assert [each.name for each in publications() if not each.name.startswith(tuple(told))] == []


def test_the_page_counts_the_rows_on_file_and_names_every_source() -> None:
    rows = Counter(publication_of(source).name for _, source in ON_FILE)
    assert {cells[0]: int(cells[2]) for cells in SAID} == rows
    text = PAGE.read_text(encoding="utf-8")
    named = sum(each.named for each in publications() if each.name in rows)
    assert f"**{len(ON_FILE)} published rows**" in text
    assert f"**{named} named sources**" in text
    assert f"with {sum(int(cells[3]) for cells in SAID)} figures" in text
    for each in unused():
        assert f"- {each['what']}: {each['why']}." in text


def test_the_page_says_what_its_words_say() -> None:
    """Whoever changes the words makes the page anew; only the figures come from a run."""
    words = trust_pages().WORDS.read_text(encoding="utf-8")
    text = PAGE.read_text(encoding="utf-8")
    kept = re.split(r"\$[a-z]+", words)
    assert [part[:80] for part in kept if part not in text] == []
    assert text.startswith(kept[0])
    assert text.endswith(kept[-1])


def test_a_page_that_a_run_bears_out_is_up_to_date() -> None:
    words = trust_pages().WORDS.read_text(encoding="utf-8")
    found = [
        ONE,
        replace(ONE, row="two", got=999.5, differs="the older formula"),
        replace(ONE, row="three", confidence="from-memory", source="exact arithmetic"),
        replace(ONE, row="four", confidence="computed-with-library"),
        Compared("PyCO2SYS", "test", "pH", 0.0, 1e-5, 1e-4, "computed-with-library", points=7, about="pH"),
    ]
    page = trust_pages().trust_page(words, found)
    assert out_of_date(page, found) == []
    assert out_of_date(page, [*found, found[0]]) == [], "a row that several tests compare counts once"
    worse = out_of_date(page, [replace(ONE, row="two", got=998.0), *found])
    assert [complaint.split(": ")[-1] for complaint in worse] == ["0.2 % off at worst, not 0.05 %"]
    assert len(out_of_date(page, found[1:])) == 1, "a row that was not compared"
    assert len(out_of_date(page, [one for one in found if one.row != "three"])) == 1, (
        "a source that nothing is held against"
    )
    assert len(out_of_date(page, [*found, replace(ONE, row="five", source="ISO 4064 annex values")])) == 1
    assert "| PyCO2SYS 1.8.3.4 | pH | 7 | 1e-05 | 0.0001 |" in page
    assert "- The older formula. (two)" in page


def test_agreement_is_the_worst_of_a_source_and_what_it_uses_of_its_tolerance() -> None:
    (found,) = agreements(
        [ONE, replace(ONE, figure="b", got=999.996), replace(ONE, row="two", got=1001.0, differs="why")]
    )
    assert (found.rows, len(found.figures), found.differing) == ({"one", "two"}, 3, {"two": "why"})
    assert (found.worst, found.worst_row) == (pytest.approx(1e-3), "two")
    assert found.used == pytest.approx(0.4)


def test_of_a_grid_the_worst_of_all_runs_counts() -> None:
    one = Compared("TEOS-10", "t", "density", 0.0, 1e-6, 4e-6, "computed-with-library", points=5, about="density")
    ((name, about, points, worst, allowed),) = grids([one, replace(one, got=3e-6), replace(one, got=2e-6), ONE])
    assert (name[:7], about, points, worst, allowed) == ("TEOS-10", "density", 5, 3e-6, 4e-6)


@pytest.mark.parametrize(
    ("share", "words"),
    [
        (0.0, "under 0.000001 %"),
        (1e-9, "under 0.000001 %"),
        (0.00123, "0.12 %"),
        (0.12, "12 %"),
        (1.0, "100 %"),
        (2e-8, "0.000002 %"),
    ],
)
def test_a_deviation_is_said_in_two_digits_and_never_finer_than_noise(share: float, words: str) -> None:
    assert percent(share) == words


def test_a_source_that_begins_like_none_or_like_two_is_no_source(monkeypatch: pytest.MonkeyPatch) -> None:
    with pytest.raises(AssertionError, match="none of the publications"):
        publication_of("a book that nobody knows")
    twice = (*publications(), replace(publications()[0], name="again"))
    monkeypatch.setattr(agreement, "publications", lambda: twice)
    with pytest.raises(AssertionError, match="again"):
        publication_of("CIAAW 2021, table 1")


@pytest.fixture
def nothing_noted(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep what is noted here away from what this run of tests compares."""
    monkeypatch.setattr(evidence, "_SINCE", [])


def test_only_what_is_met_is_noted(nothing_noted: None) -> None:
    row = Row("r", "q", {}, {"a": 1.0, "b": 2.0}, "-", 0.1, TANAKA, "read-in-source")
    with pytest.raises(AssertionError, match="r b"):
        check(row, {"a": 1.05, "b": 2.5})
    assert [one["figure"] for one in taken()] == ["a"], (
        "what was met before; the report of a failed test does not carry it"
    )
    check(row, {"a": 1.05, "b": 2.0})
    assert carried([("else", 1), (CARRIED, taken())]) == [
        Compared(TANAKA, "r", "a", 1.0, 1.05, 0.1, "read-in-source"),
        Compared(TANAKA, "r", "b", 2.0, 2.0, 0.1, "read-in-source"),
    ]
    assert taken() == []


def test_a_grid_is_noted_with_the_test_that_compared_it(nothing_noted: None) -> None:
    compared_grid("PyCO2SYS", "pH", 1e-5, 1e-4, 12)
    compared(ONE)
    first, second = (Compared(**one) for one in taken())
    assert (first.points, first.got, first.tolerance) == (12, 1e-5, 1e-4)
    assert first.row.endswith("test_a_grid_is_noted_with_the_test_that_compared_it")
    assert second is not ONE
    assert second == ONE
