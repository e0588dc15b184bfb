"""The emergency card on paper: what to do at once on the first page in letters for 2 m, then the way, first aid and electricity."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from evenwater.card.emergency import ELECTRICITY, SHORT_BELOW, SMALL_STOP_POINTS, STOP_POINTS
from evenwater.card.items import Text
from evenwater.card.output import lay_out, title_of, to_image, write_pdf
from evenwater.card.paper import PAPERS, Paper
from evenwater.engine.recovery import BOTH, HOLD
from evenwater.screens import emergency_card
from evenwater.screens.emergency_card import NO_WAY, EmergencyCard
from tests.card.reading import page_texts, runs, squeezed
from tests.engine.asking import NOW
from tests.engine.recoveries import answer
from tests.screens.lint import faults, strings
from tests.screens.recovering import SYSTEM

BERLIN = ZoneInfo("Europe/Berlin")
# 1/220 of 2 m; the smallest of the papers is for 1.8 m.
CAPITAL_MM = 8.4


def made(chosen: str = BOTH, **changes: object) -> EmergencyCard:
    return emergency_card.card(answer(**changes), chosen, SYSTEM, NOW.astimezone(BERLIN))


CARDS = {
    "both": made(),
    "hold": made(HOLD),
    "none": made("", use=None),
    "tested": made(overdose=None, additive=None, change={"parameter": "nitrate", "measured": "40 mg/L as NO3"}, system__volume_uncertainty="25 %"),
    "long": replace(made(), system="A name that is so long that it goes on and on " * 3),
}  # fmt: skip
on_every_paper = pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)


@pytest.fixture(scope="module")
def pdf(qapp, tmp_path_factory: pytest.TempPathFactory):
    folder = tmp_path_factory.mktemp("emergencies")

    def get(name: str, paper: Paper) -> Path:
        file = folder / f"{name} {paper.name}.pdf"
        if not file.exists():
            write_pdf(file, CARDS[name], paper)
        return file

    return get


@on_every_paper
def test_stop_list_is_whole_on_the_first_page_in_the_largest_letters(pdf, paper: Paper):
    first = runs(pdf("both", paper))[0]
    points = SMALL_STOP_POINTS if paper.small else STOP_POINTS
    assert points >= 36.0
    large = [run for run in first if abs(run.points - points) < 0.1]
    rest = [run for page in runs(pdf("both", paper)) for run in page if run not in large]
    assert all(run.bold for run in large)
    stop = CARDS["both"].shortest if paper.content_width < SHORT_BELOW else CARDS["both"].stop
    said = " ".join(run.text for run in sorted(large, key=lambda run: (run.baseline, run.left)))
    numbered = " ".join(f"{n} {text}" for n, text in enumerate(stop, start=1))
    assert squeezed(said) == squeezed(numbered)
    assert max(run.points for run in rest) <= points + 0.1
    # The capitals' height is what is read from afar.
    assert points * 25.4 / 72.0 * 0.668 >= CAPITAL_MM


@on_every_paper
@pytest.mark.parametrize("name", list(CARDS))
def test_everything_is_said_once_and_nothing_leaves_the_page(pdf, paper: Paper, name: str):
    card = CARDS[name]
    whole = squeezed(" ".join(page_texts(pdf(name, paper))))
    # A name of four lines cuts sentences by the heads of pages.
    for text in () if name == "long" else (
        *card.in_full, *card.never, *card.electricity, *card.cautions, card.emergency, card.way, card.volume, card.issued, card.valid_until,
        card.replace, card.happened, card.phone, *(step.what for step in card.steps), *(value for _, value in card.facts),
    ):  # fmt: skip
        assert squeezed(text) in whole, text
    for page in runs(pdf(name, paper)):
        assert all(run.points >= 10.0 for run in page)
        assert all(paper.left - 0.1 <= run.left and run.right <= paper.left + paper.content_width + 0.1 for run in page)
        assert all(run.baseline <= paper.bottom + 0.1 for run in page)


@on_every_paper
def test_pages_are_numbered_and_each_says_whose_it_is(pdf, paper: Paper):
    pages = page_texts(pdf("both", paper))
    for number, text in enumerate(pages, start=1):
        assert f"{number}of{len(pages)}" in squeezed(text)
        assert "Northfragbay" in squeezed(text)
        assert "EMERGENCY" in text


def test_order_is_stop_then_first_aid_then_electricity_then_the_way(pdf):
    whole = squeezed(" ".join(page_texts(pdf("both", PAPERS["A4"]))))
    card = CARDS["both"]
    places = [
        whole.index(squeezed(text)) for text in (card.in_full[0], card.emergency, ELECTRICITY, card.way, card.never[0])
    ]
    assert places == sorted(places)


def test_first_day_s_exchange_stands_in_large_letters(pdf):
    """340 L * 0.5 / 17.4952 on the first day, as the answer has it."""
    row = CARDS["both"].rows[0]
    assert row.dose.replace("\u00a0", " ") == "9.71 L (litres)"
    large = [
        run
        for page in runs(pdf("both", PAPERS["A4"]))
        for run in page
        if run.points >= 35.9 and run.text.startswith("9.71")
    ]
    assert len(large) == 1


def test_without_a_way_all_doses_are_held(pdf):
    card = CARDS["none"]
    assert (card.way, card.rows) == (NO_WAY, ())
    assert any(step.what.endswith("Give nothing.") for step in card.steps)
    assert CARDS["hold"].rows == ()


def test_H25_card_never_gives_a_chemical_against_it():
    for card in CARDS.values():
        told = " ".join((*(step.what for step in card.steps), card.way, *(row.additive for row in card.rows)))
        assert not any(word in told for word in ("sodium", "chloride", "hydroxide", "carbonate", "Dose ", "dose of"))
        assert "no acid" in card.never[0]


def test_H21_card_says_the_most_that_may_move_in_a_day():
    never = " ".join(CARDS["both"].never).replace("\u00a0", " ")
    assert "Never exchange more than" in never
    assert "falls by more than 1.4 dKH in 24 hours" in never


@pytest.mark.parametrize("name", list(CARDS))
def test_every_word_is_safe_to_read(name: str):
    for text in strings(CARDS[name]):
        assert not faults(text), text


def test_black_and_white_keeps_every_stroke(qapp):
    image = to_image(CARDS["both"], PAPERS["A6"], 0, 150, mono=True)
    assert image.depth() == 1
    assert title_of(CARDS["both"]).startswith("EMERGENCY: alkalinity too high, North frag bay")
    assert any(isinstance(item, Text) for item in lay_out(CARDS["both"], PAPERS["A6"])[0].items)
