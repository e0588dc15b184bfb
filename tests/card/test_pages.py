"""What goes on which page: in the order of need, counted on every page, and never one dose torn from its additive."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QImage, QPainter

from evenwater.card import words
from evenwater.card.failures import CardFailed
from evenwater.card.items import Text
from evenwater.card.layout import Page, lay_out, pages
from evenwater.card.paint import paint_page
from evenwater.card.paper import A4, A5, A6, PAPERS, Paper
from tests.card import sample
from tests.card.conftest import CARDS, Written
from tests.card.reading import page_texts, runs, squeezed

on_every_paper = pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)


@on_every_paper
@pytest.mark.parametrize("name", ["card", "one_dose", "crowded", "draft"])
def test_L25_each_page_says_which_of_how_many_and_of_which_plan(written: Written, name: str, paper: Paper) -> None:
    view = CARDS[name]()
    texts = page_texts(written(name, paper))
    assert len(texts) == pages(view, paper)
    for number, text in enumerate(texts, start=1):
        assert squeezed(f"{words.PLAN} {view.plan_id}{number} of {len(texts)}") in text
        assert squeezed(view.system) in text
        assert squeezed(words.RULER) in text


@on_every_paper
def test_first_page_has_system_plan_validity_and_dose(written: Written, paper: Paper) -> None:
    view = sample.card()
    first = page_texts(written("card", paper))[0]
    for string in (view.system, view.plan_id, view.valid_until, view.rows[0].dose, view.rows[0].when):
        assert squeezed(string) in first
    assert squeezed(view.rows[0].additive) in first


def test_face_at_the_tank_of_a_large_card(written: Written) -> None:
    """Doses, limit, stop rule, separation and retest are on one face, to be read without turning the sheet."""
    view = sample.card()
    first = page_texts(written("card", A4))[0]
    for string in (*(row.dose for row in view.rows), view.maximum, view.stop, view.separation, view.retest):
        assert squeezed(string) in first


def test_short_card_takes_one_page_with_everything() -> None:
    few = replace(sample.one_dose(), separation="", ramp=None)
    assert pages(few, A4) == 1


def test_same_card_takes_no_fewer_pages_on_smaller_paper() -> None:
    counts = [pages(sample.card(), paper) for paper in (A4, A5, A6)]
    assert counts == sorted(counts)
    assert counts[0] == 2


def test_crowded_small_card_says_the_dose_again_where_its_row_goes_on(written: Written) -> None:
    """Every additive of the card stands on a page that also has its dose."""
    view = sample.crowded()
    for page in runs(written("crowded", A6)):
        large = [run.text for run in page if run.points > 36]
        for row_number in {int(n) for run in page for n in re.findall(r"blend (\d+) of", run.text)}:
            assert view.rows[row_number - 1].dose in large


def test_warning_goes_on_in_a_frame_with_its_word(written: Written) -> None:
    texts = page_texts(written("crowded", A6))
    with_caution = [text for text in texts if "keepthelidshut" in text]
    assert len(with_caution) > 2
    assert all(squeezed(words.HANDLING) in text for text in with_caution)


@pytest.mark.parametrize("rows", [0, 1, 5, 14, 61])
@on_every_paper
def test_L23_as_many_boxes_as_asked_for(paper: Paper, rows: int) -> None:
    view = replace(sample.card(), write_in=rows, cautions=(), emergency="")
    closed = [item for page in lay_out(view, paper) for item in page.items if getattr(item, "closed", False)]
    boxes = [box for box in closed if box.width == 0.3]
    assert len(boxes) == rows


def test_empty_parts_leave_no_empty_frames() -> None:
    bare = replace(
        sample.card(), remarks=(), maximum="", stop="", separation="", refill="", whole_jug="", formula="", ramp=None
    )
    text = squeezed("".join(item.words for item in lay_out(bare, A4)[0].items if hasattr(item, "words")))
    for word in (words.STOP, words.NOTE, words.SEPARATION, words.REFILL, words.WHOLE_JUG):
        assert squeezed(word) not in text
    assert squeezed(words.RETEST) in text


def test_name_that_leaves_no_room_is_refused_not_cut() -> None:
    with pytest.raises(CardFailed) as failed:
        lay_out(replace(sample.crowded(), system="reef " * 400), A6)
    assert failed.value.reason.code == "card_does_not_fit"


def test_long_word_is_broken_inside_and_whole() -> None:
    name = "quarantine" * 12
    texts = [item for item in lay_out(replace(sample.card(), system=name), A6)[0].items if isinstance(item, Text)]
    assert name in "".join(text.words for text in texts)
    assert all(text.x + text.width <= A6.left + A6.content_width + 0.05 for text in texts)


def test_name_written_from_right_to_left_stays_together() -> None:
    """Its words must not be dealt out from left to right."""
    name = "\u05d7\u05d3\u05e8 \u05d4\u05d3\u05d2\u05d9\u05dd"
    texts = [item for item in lay_out(replace(sample.card(), system=name), A4)[0].items if isinstance(item, Text)]
    assert name in [text.words for text in texts]
    assert drawn_pieces(name) == [name]
    assert drawn_pieces("North frag bay") == ["North", "frag", "bay"]


def drawn_pieces(name: str) -> list[str]:
    """Return the pieces in which a line is handed to the painter."""
    pieces: list[str] = []

    class Recorder(QPainter):
        def drawText(self, _place: QPointF, words: str) -> None:
            pieces.append(words)

    image = QImage(10, 10, QImage.Format.Format_RGB32)
    painter = Recorder(image)
    paint_page(painter, 1.0, Page((Text(0.0, 5.0, name, 12.0, False, 30.0),), ""), A4)
    painter.end()
    return pieces
