"""Where things stand on the paper: inside its margins, apart from each other, and to scale."""

from __future__ import annotations

import shutil
import subprocess
from itertools import combinations, pairwise

import pytest
from pdfminer.layout import LTLine

from evenwater.card.items import MM_PER_POINT, Stroke, Text
from evenwater.card.layout import lay_out
from evenwater.card.paper import A4, LETTER, PAPERS, TAPE, Paper
from evenwater.card.text import width_of
from tests.card import sample
from tests.card.conftest import CARDS, Written
from tests.card.reading import Run, as_set, letters, runs, squeezed

on_every_paper = pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)
SLACK = 0.05


@on_every_paper
@pytest.mark.parametrize("name", ["card", "crowded", "draft"])
def test_L17_text_stays_inside_the_margins(written: Written, name: str, paper: Paper) -> None:
    for page in runs(written(name, paper)):
        for run in page:
            assert run.left >= paper.left - SLACK, run
            assert run.right <= paper.left + paper.content_width + SLACK, run
            assert run.top >= paper.top - SLACK, run
            assert run.bottom <= paper.bottom + SLACK, run


@on_every_paper
@pytest.mark.parametrize("name", ["card", "crowded"])
def test_lines_stay_inside_the_margins(name: str, paper: Paper) -> None:
    for page in lay_out(CARDS[name](), paper):
        for item in page.items:
            for x, y in [] if isinstance(item, Text) else item.points:
                assert paper.left - SLACK <= x <= paper.left + paper.content_width + SLACK
                assert paper.top - SLACK <= y <= paper.bottom + SLACK


def test_margins_leave_the_tape_and_what_a_printer_cannot_reach() -> None:
    for paper in PAPERS.values():
        assert paper.top >= TAPE >= 15.0
        margin = 12.0 if paper.width > 200 else 7.0
        assert paper.left >= margin - SLACK
        assert paper.width - paper.left - paper.content_width >= margin - SLACK
        assert paper.height - paper.bottom >= margin - SLACK


def test_L17_A4_and_Letter_carry_the_same(written: Written) -> None:
    ours, theirs = runs(written("card", A4)), runs(written("card", LETTER))
    assert len(ours) == len(theirs)
    for one, other in zip(ours, theirs, strict=True):
        assert [run.text for run in one] == [run.text for run in other]
        for a, b in zip(one, other, strict=True):
            assert a.left - A4.left == pytest.approx(b.left - LETTER.left, abs=0.06)
            assert a.baseline - A4.top == pytest.approx(b.baseline - LETTER.top, abs=0.06)


@on_every_paper
@pytest.mark.parametrize("name", ["card", "crowded"])
def test_L16_blank_around_each_dose(written: Written, name: str, paper: Paper) -> None:
    """A dose row begins with its large figure: nothing above it on the page may be nearer than 5 mm."""
    doses = {squeezed(row.dose) for row in CARDS[name]().rows}
    checked = 0
    for page in runs(written(name, paper)):
        for dose in [run for run in page if squeezed(run.text) in doses and run.points > 36]:
            above = [run.bottom for run in page if run.bottom <= dose.top + 1.0 and "Goes on" not in run.text]
            goes_on = (
                any("Goes on" in run.text for run in page) and min(r.top for r in page if r.points > 36) == dose.top
            )
            if above and not goes_on:
                assert dose.top - max(above) >= 5.0, dose
                checked += 1
    assert checked >= 2


@on_every_paper
def test_L16_blank_below_the_last_dose(written: Written, paper: Paper) -> None:
    setting = squeezed(sample.card().rows[-1].setting)
    for page in runs(written("card", paper)):
        for run in [run for run in page if squeezed(run.text) in setting and len(run.text) > 12]:
            below = [other.top for other in page if other.top > run.baseline + 0.5]
            assert min(below) - run.bottom >= 5.0


@on_every_paper
@pytest.mark.parametrize("name", ["card", "warned", "crowded"])
def test_no_two_texts_overlap(written: Written, name: str, paper: Paper) -> None:
    for page in runs(written(name, paper)):
        for one, other in combinations(page, 2):
            assert not _overlap(one, other), (one, other)


def _overlap(one: Run, other: Run) -> bool:
    wide = min(one.right, other.right) - max(one.left, other.left)
    high = min(one.bottom, other.bottom) - max(one.top, other.top)
    return wide > SLACK and high > SLACK


@on_every_paper
def test_L16_line_spacing(written: Written, paper: Paper) -> None:
    """Lines of one size under each other are 1.25 sizes apart at the least."""
    checked = 0
    for page in runs(written("crowded", paper)):
        for one, other in pairwise(page):
            same = abs(one.points - other.points) < 0.01 and one.bold == other.bold and abs(one.left - other.left) < 0.3
            if same and one.points >= 12 and other.baseline > one.baseline + SLACK:
                assert other.baseline - one.baseline >= 1.25 * one.points * MM_PER_POINT
                checked += 1
    assert checked > 20


@on_every_paper
def test_L17_ruler_is_50_mm(written: Written, paper: Paper) -> None:
    for page in as_set(written("card", paper)):
        level = [line for line in page if isinstance(line, LTLine) and abs(line.y0 - line.y1) < 0.01]
        lowest = min(level, key=lambda line: line.y0)
        assert (lowest.x1 - lowest.x0) * MM_PER_POINT == pytest.approx(50.0, abs=0.2)


@on_every_paper
def test_paper_of_the_pdf(written: Written, paper: Paper) -> None:
    for page in as_set(written("card", paper)):
        assert page.width * MM_PER_POINT == pytest.approx(paper.width, abs=0.4)
        assert page.height * MM_PER_POINT == pytest.approx(paper.height, abs=0.4)


@on_every_paper
def test_pdf_stands_where_the_layout_put_it(written: Written, paper: Paper) -> None:
    """Layout and painting agree to 0.1 mm, so that what the layout keeps apart is apart on paper."""
    for page, found in zip(lay_out(sample.card(), paper), letters(written("card", paper)), strict=True):
        texts = [item for item in page.items if isinstance(item, Text)]
        assert sum(len(text.words.replace(" ", "")) for text in texts) == len(found)
        first = 0
        for text in texts:
            count = len(text.words.replace(" ", ""))
            mine = found[first : first + count]
            assert mine[0].left == pytest.approx(text.x, abs=0.1)
            assert mine[-1].right == pytest.approx(text.x + text.width, abs=0.15)
            assert mine[0].baseline == pytest.approx(text.baseline, abs=0.1)
            first += count


def test_doses_line_up_at_the_decimal_mark(written: Written) -> None:
    places = []
    for page in letters(written("card", A4)):
        places += [letter.left for letter in page if letter.text == "." and letter.points > 36]
    assert len(places) == 2
    assert places[0] == pytest.approx(places[1], abs=0.05)


def test_decimal_marks_line_up_though_whole_parts_differ() -> None:
    texts = [item for page in lay_out(sample.unequal(), A4) for item in page.items if isinstance(item, Text)]
    large = {text.words: text for text in texts if text.points > 36}
    marks = [text.x + width_of(words.split(".")[0], text.points, True) for words, text in large.items() if "." in words]
    assert len(marks) == 2
    assert marks[0] == pytest.approx(marks[1], abs=0.02)
    assert large["12.5\u00a0mL"].x < large["4.7\u00a0mL"].x


def test_no_stroke_is_too_fine_to_be_copied() -> None:
    for paper in PAPERS.values():
        for page in lay_out(sample.warned(), paper):
            widths = [item.width for item in page.items if isinstance(item, Stroke)]
            assert min(widths) >= 0.15


def test_a_viewer_reads_words_with_spaces(written: Written) -> None:
    """Another PDF reader than the ones used above sees words, not tabs and not one long word."""
    reader = shutil.which("pdftotext")
    if reader is None:
        pytest.skip("pdftotext is not installed")
    text = subprocess.run([reader, str(written("card", A4)), "-"], capture_output=True, text=True, check=True).stdout
    assert "North frag bay" in text
    assert "Wear goggles and gloves." in text
    assert "\t" not in text
