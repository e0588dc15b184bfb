"""What is written on the card is there whole, in its order, in the sizes and faces that can be read at the tank."""

from __future__ import annotations

import pytest

from evenwater.card.paper import A4, A6, PAPERS, Paper
from evenwater.screens.views import CardView
from tests.card import sample
from tests.card.conftest import CARDS, Written
from tests.card.reading import flowing, letters, runs, squeezed

PAPER_LIST = list(PAPERS.values())
on_every_paper = pytest.mark.parametrize("paper", PAPER_LIST, ids=lambda paper: paper.name)


def heads(view: CardView) -> list[str]:
    return [*([view.draft] if view.draft else []), view.system, view.title]


@on_every_paper
@pytest.mark.parametrize("name", ["card", "draft", "one_dose", "warned"])
def test_every_string_is_there_whole_and_in_order(written: Written, name: str, paper: Paper) -> None:
    view = CARDS[name]()
    text = flowing(written(name, paper), view.plan_id, heads(view))
    place = 0
    for string in sample.said_small(view) if paper.small else sample.said(view):
        found = text.find(squeezed(string), place)
        assert found >= 0, string
        place = found + len(squeezed(string))


@pytest.mark.parametrize("paper", [A4, A6], ids=lambda paper: paper.name)
def test_L25_nothing_of_a_crowded_card_is_lost(written: Written, paper: Paper) -> None:
    view = sample.crowded()
    text = flowing(written("crowded", paper), view.plan_id, heads(view))
    place = 0
    for string in sample.said_small(view) if paper.small else sample.said(view):
        found = text.find(squeezed(string), place)
        assert found >= 0, string
        place = found + len(squeezed(string))
    assert "\u2026" not in text
    assert "..." not in text


@on_every_paper
@pytest.mark.parametrize("name", ["card", "crowded", "draft"])
def test_L15_sizes(written: Written, name: str, paper: Paper) -> None:
    view = CARDS[name]()
    least = {squeezed(row.dose): 36.0 for row in view.rows}
    least |= {squeezed(row.additive): 24.0 for row in view.rows} | {squeezed(row.when): 18.0 for row in view.rows}
    notes = [view.stop, view.maximum, view.retest, view.refill, view.separation, view.strength, view.whole_jug]
    least |= {squeezed(note): 12.0 for note in (*notes, *view.cautions, view.emergency, view.replace, view.volume)}
    set_in: dict[str, float] = {}
    for page in runs(written(name, paper)):
        for run in page:
            assert run.points >= 10.0, run
            text = squeezed(run.text)
            for string in least:
                if len(text) >= 4 and text in string:
                    set_in[string] = max(run.points, set_in.get(string, 0.0))
    assert set(set_in) == set(least)
    small = {string: set_in[string] for string, size in least.items() if set_in[string] < size - 0.001}
    assert not small


@on_every_paper
def test_doses_are_the_largest_and_bold(written: Written, paper: Paper) -> None:
    found = [run for page in runs(written("card", paper)) for run in page]
    doses = [squeezed(row.dose) for row in sample.card().rows]
    large = sorted(found, key=lambda run: -run.points)[: len(doses)]
    assert sorted(squeezed(run.text) for run in large) == sorted(doses)
    assert all(run.bold and run.points >= 43 for run in large)  # 43 pt: capitals of 10 mm, read from 2 m


@on_every_paper
def test_only_two_upright_faces_all_black_all_level(written: Written, paper: Paper) -> None:
    every = [letter for page in letters(written("warned", paper)) for letter in page]
    faces = {letter.font.split("+")[-1] for letter in every}
    assert faces == {"AtkinsonHyperlegible-Regular", "AtkinsonHyperlegible-Bold"}
    for letter in every:
        a, b, c, d = letter.matrix[:4]
        assert (b, c) == (0.0, 0.0), "turned or slanted"
        assert a == pytest.approx(d), "squeezed"
        inks = letter.ink if isinstance(letter.ink, tuple) else (letter.ink,)
        assert set(inks) == {0.0}, "not black"


def test_numbers_stay_with_their_units(written: Written) -> None:
    for paper in PAPER_LIST:
        ends = [run.text for page in runs(written("card", paper)) for run in page]
        for number, unit in (("6.8", "dKH"), ("139.4", "mL"), ("24", "mL"), ("2.2", "mL")):
            assert any(f"{number}\u00a0{unit}" in text for text in ends), (paper.name, number)


def test_letters_are_not_joined_in_the_pdf(written: Written) -> None:
    """Were fi one glyph, as in many typefaces, the text could not be searched for."""
    found = [letter.text for page in letters(written("card", A4)) for letter in page]
    assert "refill" in "".join(found)
    assert all(len(text) == 1 for text in found)
