"""Hazards that the card itself guards against, by the numbers of the hazard list in DEVELOPERS.md."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

from evenwater.card import words
from evenwater.card.items import Stroke, Text
from evenwater.card.layout import lay_out
from evenwater.card.paint import paint_page
from evenwater.card.paper import A4, PAPERS, Paper
from tests.card import sample
from tests.card.conftest import Written
from tests.card.reading import page_texts, squeezed
from tests.card.test_mono import PER_MM, dark

on_every_paper = pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)


def stamp(paper: Paper, number: int) -> tuple[np.ndarray, np.ndarray]:
    """Return what the stamp adds to a page and what the page has without it, as darkness of pixels."""
    pictures = []
    page = lay_out(sample.draft(), paper)[number]
    for each in (page, replace(page, draft="")):
        image = QImage(round(paper.width * PER_MM), round(paper.height * PER_MM), QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        paint_page(painter, PER_MM, each, paper)
        painter.end()
        pictures.append(dark(image))
    return pictures[0] - pictures[1], pictures[1]


@on_every_paper
def test_H34_draft_is_stamped(written: Written, paper: Paper) -> None:
    """The words lie over every page in outline, and stand on it in letters that can be read aloud."""
    draft = sample.draft()
    for number, text in enumerate(page_texts(written("draft", paper))):
        assert squeezed(draft.draft) in text
        added, _ = stamp(paper, number)
        across = np.flatnonzero(added.max(axis=0) > 0.3) / PER_MM
        down = np.flatnonzero(added.max(axis=1) > 0.3) / PER_MM
        assert across.max() - across.min() > 0.8 * paper.content_width
        assert down.min() < 0.4 * paper.height < 0.65 * paper.height < down.max()


@on_every_paper
def test_H34_text_under_the_stamp_stays_readable(paper: Paper) -> None:
    """The stamp is thin lines: hardly any of the letters' own ink touches it, and it blackens little paper."""
    added, bare = stamp(paper, 0)
    assert 0.002 < added.mean() < 0.03
    for text in (item for item in lay_out(sample.draft(), paper)[0].items if isinstance(item, Text)):
        left, top, right, bottom = (round(edge * PER_MM) for edge in text.box)
        white = bare[top:bottom, left:right] < 0.5
        assert (added[top:bottom, left:right][white] > 0.5).mean() < 0.2, text.words


@on_every_paper
def test_H34_plan_has_no_stamp(written: Written, paper: Paper) -> None:
    assert all("NOTAPLAN" not in text for text in page_texts(written("card", paper)))
    assert all(page.draft == "" for page in lay_out(sample.card(), paper))


@on_every_paper
def test_H26_identity_block(written: Written, paper: Paper) -> None:
    view, texts = sample.card(), page_texts(written("card", paper))
    for string in (view.system, view.volume, view.issued, view.replace, view.valid_until):
        assert any(squeezed(string) in text for text in texts)
    assert all(squeezed(f"{words.PLAN} {view.plan_id}") in text for text in texts)


@on_every_paper
def test_H14_boxes_to_write_in_what_was_given(written: Written, paper: Paper) -> None:
    whole = "".join(page_texts(written("card", paper)))
    for name in words.GIVEN:
        assert squeezed(name) in whole


@on_every_paper
@pytest.mark.parametrize(
    ("hazard", "field"),
    [
        ("H12 strength changed", "strength"),
        ("H19 uptake fell", "stop"),
        ("H20 precipitation", "separation"),
        ("H21 overshoot", "maximum"),
        ("H21 overshoot", "retest"),
        ("H24 empty jug", "refill"),
        ("H25 siphon", "whole_jug"),
        ("H6 wrong volume", "volume"),
    ],
)
def test_hazard_is_answered_on_the_card(written: Written, paper: Paper, hazard: str, field: str) -> None:
    texts = page_texts(written("card", paper))
    assert any(squeezed(getattr(sample.card(), field)) in text for text in texts), hazard


@on_every_paper
def test_H33_cautions_are_whole_and_the_number_can_be_written_in(written: Written, paper: Paper) -> None:
    view = sample.card()
    whole = "".join(page_texts(written("card", paper)))
    for string in (*view.cautions, view.emergency):
        assert squeezed(string) in whole
    for page in lay_out(view, paper):
        ends = [item for item in page.items if getattr(item, "words", "").endswith("Poison centre:")]
        for end in ends:
            lines = [item for item in page.items if isinstance(item, Stroke) and len(item.points) == 2]
            near = [line for line in lines if 0 < line.points[0][1] - end.baseline < 11]
            assert max(line.points[1][0] - line.points[0][0] for line in near) >= 34, "no room for a number"


def test_H10_look_alikes_keep_their_capitals(written: Written) -> None:
    assert "sodiumCARBonateanhydrous" in page_texts(written("card", A4))[0]


def test_H34_blank_words_are_no_draft() -> None:
    assert all(page.draft == "" for page in lay_out(replace(sample.card(), draft="  "), A4))
