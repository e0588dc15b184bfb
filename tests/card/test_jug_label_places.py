"""Where things stand on a jug's label: inside it, apart from each other, to scale, black on white, with room to write."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations, pairwise

import numpy as np
import pytest

from evenwater.card.items import MM_PER_POINT, Fill, Item, Stroke, Text
from evenwater.card.label_paper import A4_TWICE, LABEL_PAPERS, LETTER_TWICE, LabelPaper
from evenwater.card.label_parts import JUG
from evenwater.card.output import lay_out, to_image, to_mono
from tests.card.conftest import Printed
from tests.card.labels import LABELS, every_label, frames, on_every_label_paper
from tests.card.reading import Run, letters, runs
from tests.card.test_mono import DPI, dark, inside
from tests.screens.jugs import jugs, labelled

SLACK = 0.05


@on_every_label_paper
@every_label
def test_L17_everything_stays_inside_the_label(printed: Printed, name: str, paper: LabelPaper) -> None:
    for page in runs(printed(name, paper)):
        for run in page:
            assert within((run.left, run.top, run.right, run.bottom), paper), run
    for laid_out in lay_out(LABELS[name](), paper):
        for item in laid_out.items:
            if not isinstance(item, Text) and not getattr(item, "dash", ()):
                assert all(within((x, y, x, y), paper) for x, y in item.points), item


def within(box: tuple[float, float, float, float], paper: LabelPaper) -> bool:
    """Return whether left, top, right and bottom [mm] are inside one of the labels of a paper."""
    return any(
        left - SLACK <= box[0]
        and box[2] <= left + paper.content_width + SLACK
        and top - SLACK <= box[1]
        and box[3] <= top + paper.content_height + SLACK
        for left, top in paper.places
    )


def test_L17_margins_are_what_printers_leave_blank() -> None:
    for paper in LABEL_PAPERS.values():
        edge = 8.0 if paper.width > 200 else 6.0
        lefts, tops = zip(*paper.places, strict=True)
        assert min(*lefts, *tops) >= edge
        assert paper.width - max(lefts) - paper.content_width >= edge - SLACK
        assert paper.height - max(tops) - paper.content_height >= edge - SLACK


@on_every_label_paper
def test_L17_each_label_has_a_ruler_of_50_mm(paper: LabelPaper) -> None:
    for page in lay_out(LABELS["limewater"](), paper):
        level = [s for s in page.items if isinstance(s, Stroke) and len(s.points) == 2 and not s.dash]
        rulers = [s for s in level if s.points[1][0] - s.points[0][0] == pytest.approx(50.0, abs=1e-9)]
        assert len(rulers) == len(paper.places)


def test_A4_and_Letter_carry_the_same(printed: Printed) -> None:
    ours, theirs = (runs(printed("caustic", paper)) for paper in (A4_TWICE, LETTER_TWICE))
    assert [[run.text for run in page] for page in ours] == [[run.text for run in page] for page in theirs]


@pytest.mark.parametrize("paper", [A4_TWICE, LETTER_TWICE], ids=lambda paper: paper.name)
@every_label
def test_both_labels_of_a_sheet_are_the_same(name: str, paper: LabelPaper) -> None:
    (left, top), (other_left, other_top) = paper.places
    for page in lay_out(LABELS[name](), paper):
        texts = [item for item in page.items if isinstance(item, Text)]
        half = len(texts) // 2
        for one, other in zip(texts[:half], texts[half:], strict=True):
            assert (one.words, one.points, one.bold) == (other.words, other.points, other.bold)
            assert other.x - one.x == pytest.approx(other_left - left, abs=SLACK)
            assert other.baseline - one.baseline == pytest.approx(other_top - top, abs=SLACK)


@pytest.mark.parametrize("paper", [A4_TWICE, LETTER_TWICE], ids=lambda paper: paper.name)
def test_sheet_is_cut_between_its_labels(paper: LabelPaper) -> None:
    (cut,) = paper.cuts
    assert paper.places[0][1] + paper.content_height + 2.0 < cut < paper.places[1][1] - 2.0
    assert cut == pytest.approx(paper.height / 2, abs=1.0)
    (page, *_) = lay_out(LABELS["soda ash"](), paper)
    assert [item.points[0][1] for item in page.items if isinstance(item, Stroke) and item.dash] == [cut]


@on_every_label_paper
@every_label
def test_L16_no_two_texts_overlap_and_lines_are_apart(printed: Printed, name: str, paper: LabelPaper) -> None:
    checked = 0
    for page in runs(printed(name, paper)):
        for one, other in combinations(page, 2):
            assert not overlap(one, other), (one, other)
        for one, other in pairwise(page):
            same = (one.points, one.bold) == (other.points, other.bold) and abs(one.left - other.left) < 0.3
            if same and other.baseline > one.baseline + SLACK:
                assert other.baseline - one.baseline >= 1.25 * one.points * MM_PER_POINT
                checked += 1
    assert checked >= len(paper.places)


def overlap(one: Run, other: Run) -> bool:
    """Return whether two texts stand over each other."""
    wide = min(one.right, other.right) - max(one.left, other.left)
    high = min(one.bottom, other.bottom) - max(one.top, other.top)
    return wide > SLACK and high > SLACK


@on_every_label_paper
def test_only_two_upright_faces_all_black_all_level(printed: Printed, paper: LabelPaper) -> None:
    every = [letter for page in letters(printed("soda ash", paper)) for letter in page]
    faces = {letter.font.split("+")[-1] for letter in every}
    assert faces == {"AtkinsonHyperlegible-Regular", "AtkinsonHyperlegible-Bold"}
    for letter in every:
        a, b, c, d = letter.matrix[:4]
        assert (b, c) == (0.0, 0.0), "turned or slanted"
        assert a == pytest.approx(d), "squeezed"
        inks = letter.ink if isinstance(letter.ink, tuple) else (letter.ink,)
        assert set(inks) == {0.0}, "not black"


@on_every_label_paper
@pytest.mark.parametrize("name", ["caustic", "mix"])
def test_L18_text_survives_one_bit(name: str, paper: LabelPaper) -> None:
    view = LABELS[name]()
    for number, page in enumerate(lay_out(view, paper)):
        full = to_image(view, paper, number, DPI)
        grey, mono = dark(full), dark(to_mono(full))
        assert set(np.unique(mono)) == {0.0, 1.0}
        for text in (item for item in page.items if isinstance(item, Text)):
            ink = inside(mono, text).mean()
            assert 0.04 < ink < 0.6, text.words
            assert ink == pytest.approx(inside(grey, text).mean(), rel=0.3), text.words


@on_every_label_paper
@every_label
def test_L18_warning_is_word_border_and_symbol(name: str, paper: LabelPaper) -> None:
    """Each once for every label of the sheet, and the border is heavy where there is a signal word."""
    view = LABELS[name]()
    items = lay_out(view, paper)[0].items
    border = 1.2 if view.signal_word else 0.6
    assert [box[4] for box in frames(items)].count(border) == len(paper.places)
    triangles = [item for item in items if isinstance(item, Stroke) and item.closed and len(item.points) == 3]
    assert len(triangles) == len(paper.places)
    assert len([item for item in items if isinstance(item, Fill)]) == 2 * len(triangles)
    assert min(item.width for item in items if isinstance(item, Stroke)) >= 0.15


@on_every_label_paper
def test_what_is_missing_can_be_written_in(paper: LabelPaper) -> None:
    """A line after Jug, a line after the poison centre, and boxes with nothing in them."""
    pages = [page.items for page in lay_out(LABELS["bare"](), paper)]
    for said in (JUG, "Poison\u00a0centre:"):
        page, text = found(pages, said)
        near = [
            stroke
            for stroke in page
            if isinstance(stroke, Stroke)
            and len(stroke.points) == 2
            and 0.0 < stroke.points[0][1] - text.baseline < 8.5
        ]
        assert max(stroke.points[1][0] - stroke.points[0][0] for stroke in near) >= 34.0
    for said in ("Mixed on", "Mixed by", "Use by", "Batch"):
        page, text = found(pages, said)
        bottom = next(
            box[3]
            for box in frames(page)
            if box[4] == 0.3 and box[1] < text.baseline < box[3] and box[0] <= text.x <= box[2]
        )
        assert bottom - text.baseline >= 7.0
        below = [
            item
            for item in page
            if isinstance(item, Text) and abs(item.x - text.x) < 1.0 and text.baseline < item.baseline < bottom
        ]
        assert not below


@on_every_label_paper
def test_number_of_the_poison_centre_can_be_written_in(paper: LabelPaper) -> None:
    """Behind the words, or below them where they leave no room on their line; for everything that can be in a jug."""
    for name in jugs():
        pages = [page.items for page in lay_out(labelled(name), paper)]
        assert room_after("Poison\u00a0centre:", pages) >= 34.0, name


def room_after(said: str, pages: Sequence[Sequence[Item]]) -> float:
    """Return how long the line to write on is behind or right below some words [mm]."""
    page, text = found(pages, said)
    level = [item for item in page if isinstance(item, Stroke) and len(item.points) == 2]
    near = [line for line in level if 0.0 < line.points[0][1] - text.baseline < 8.5]
    free = [line for line in near if line.points[0][0] >= text.x + text.width or line.points[0][1] > text.box[3] + 3.0]
    return max((line.points[1][0] - line.points[0][0] for line in free), default=0.0)


def found(pages: Sequence[Sequence[Item]], said: str) -> tuple[Sequence[Item], Text]:
    """Return the page and the text that ends in some words."""
    return next((page, item) for page in pages for item in page if isinstance(item, Text) and item.words.endswith(said))
