"""The contingency cards read back from their PDF: all of them in one file, whole, in sizes that can be read."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cache
from itertools import combinations
from pathlib import Path

import pypdf
import pytest
from pdfminer.layout import LTLine
from PySide6.QtPrintSupport import QPrinter

from evenwater.card import words
from evenwater.card.failures import CardFailed
from evenwater.card.items import MM_PER_POINT, Stroke, Text
from evenwater.card.label_paper import A5 as LABEL_A5
from evenwater.card.output import lay_out, print_card, to_image, to_mono, write_pdf
from evenwater.card.paper import A4, A6, LETTER, PAPERS, Paper
from evenwater.screens.contingency import contingencies
from evenwater.screens.contingency_views import ContingencyCard, ContingencySet
from tests.card.reading import Run, as_set, letters, page_texts, runs, squeezed
from tests.card.test_mono import DPI, dark, inside
from tests.screens.asked import MORE, NOW, answer

SETS = {"ash": {}, "mix": MORE["mixed magnesium"], "bottle": MORE["label"], "limewater": MORE["evaporation sets"],
        "farm": MORE["fish farm"]}  # fmt: skip
on_every_paper = pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)
# Everything on the largest and the smallest paper, the commonest on those in between.
every_set = pytest.mark.parametrize(
    ("name", "paper"),
    [(name, paper) for name in SETS for paper in PAPERS.values() if paper in (A4, A6) or name == "ash"],
    ids=lambda value: getattr(value, "name", value),
)
SLACK, EXACT = 0.05, 0.001

Hung = Callable[[str, Paper], Path]


@cache
def cards(name: str) -> ContingencySet:
    return ContingencySet(contingencies(answer(SETS[name]), NOW, "soda:1234abcd", "2026-11-24"))


@pytest.fixture(scope="session")
def hung(qapp: object, tmp_path_factory: pytest.TempPathFactory) -> Hung:
    """Return a function that gives the PDF of a set on a paper."""
    folder = tmp_path_factory.mktemp("contingency")

    def get(name: str, paper: Paper) -> Path:
        file = folder / f"{name} {paper.name}.pdf"
        if not file.exists():
            write_pdf(file, cards(name), paper)
        return file

    return get


def said(card: ContingencyCard) -> Iterator[str]:
    who = card.identity
    yield from (
        card.title,
        card.use_when,
        who.system,
        who.plan_id,
        who.issued,
        who.valid_until,
        who.belongs,
        card.phone,
    )
    yield from (text for step in card.steps for text in (step.when, step.what))
    for row in card.rows:
        yield from (row.dose, *row.when.splitlines(), row.additive, row.setting)
    yield from (*card.cautions, card.emergency, *card.limits)
    yield from (text for fact in card.facts for text in fact)
    yield from (card.write_in.title, *card.write_in.columns)


def words_of_the_foot(name: str) -> Iterator[str]:
    yield words.RULER
    for card in cards(name).cards:
        yield f"{words.PLAN} {card.identity.plan_id}, {card.title}"
    yield from (words.page_of(page, pages) for pages in range(1, 20) for page in range(1, pages + 1))


def of_each(name: str, texts: list[str]) -> list[tuple[ContingencyCard, list[int]]]:
    """Return each card with the numbers of its own pages, which count from one again."""
    found: list[tuple[ContingencyCard, list[int]]] = []
    page = 0
    for card in cards(name).cards:
        named = squeezed(f"{words.PLAN} {card.identity.plan_id}, {card.title}")
        own = [number for number, text in enumerate(texts) if named in text]
        assert own == list(range(page, page + len(own))), "in their order, none between another card's"
        assert own
        found.append((card, own))
        page += len(own)
    assert page == len(texts)
    return found


@every_set
def test_all_four_are_in_one_file_and_whole(hung: Hung, name: str, paper: Paper) -> None:
    texts = page_texts(hung(name, paper))
    for card, own in of_each(name, texts):
        whole = "".join(texts[number] for number in own)
        for string in said(card):
            # A frame may be cut by the end of a page; then its pieces stand on both.
            parts = string.split(". ") if string in card.cautions else [string]
            for part in parts:
                assert squeezed(part) in whole or all(squeezed(word) in whole for word in part.split()), (
                    card.title,
                    part,
                )
        assert not any("…" in texts[number] for number in own)


@every_set
def test_L25_each_card_begins_a_page_and_counts_its_own(hung: Hung, name: str, paper: Paper) -> None:
    texts = page_texts(hung(name, paper))
    for card, own in of_each(name, texts):
        for place, number in enumerate(own, start=1):
            assert squeezed(f"{card.title}{words.page_of(place, len(own))}{words.RULER}") in texts[number]
            assert squeezed(card.identity.system) in texts[number]
        first = texts[own[0]]
        for string in (card.title, card.use_when, card.identity.plan_id, card.identity.valid_until, card.phone):
            assert squeezed(string) in first


@every_set
def test_L15_sizes(hung: Hung, name: str, paper: Paper) -> None:
    pages = runs(hung(name, paper))
    own_words = squeezed(
        "".join((*words_of_the_foot(name), *(text for card in cards(name).cards for text in card.write_in.columns)))
    )
    for run in (run for page in pages for run in page):
        assert run.points >= 12.0 - EXACT or (run.points >= 10.0 and squeezed(run.text) in own_words), run
    for card, own in of_each(name, page_texts(hung(name, paper))):
        least = {card.title: 18.0, card.use_when: 12.0}
        least |= {text: 12.0 for step in card.steps for text in (step.when, step.what)}
        least |= {line: 18.0 for row in card.rows for line in row.when.splitlines()}
        least |= {row.additive: 24.0 for row in card.rows} | {row.dose: 36.0 for row in card.rows}
        least |= dict.fromkeys(card.limits, 12.0)
        for string, size in least.items():
            large = [run for number in own for run in pages[number] if run.points >= size - EXACT]
            whole = squeezed("".join(run.text for run in large))
            # Where a row is cut by the end of a page, its dose is said again in the middle of a long name.
            assert squeezed(string) in whole or all(squeezed(word) in whole for word in string.split()), (string, size)


@every_set
def test_L17_everything_stays_inside_the_margins_and_apart(hung: Hung, name: str, paper: Paper) -> None:
    for page in runs(hung(name, paper)):
        for run in page:
            assert run.left >= paper.left - SLACK, run
            assert run.right <= paper.left + paper.content_width + SLACK, run
            assert run.top >= paper.top - SLACK, run
            assert run.bottom <= paper.bottom + SLACK, run
        for one, other in combinations(page, 2):
            assert not overlap(one, other), (one, other)


def overlap(one: Run, other: Run) -> bool:
    wide = min(one.right, other.right) - max(one.left, other.left)
    high = min(one.bottom, other.bottom) - max(one.top, other.top)
    return wide > SLACK and high > SLACK


@every_set
def test_L14_handling_stands_before_the_numbers_and_steps_in_their_order(hung: Hung, name: str, paper: Paper) -> None:
    texts = page_texts(hung(name, paper))
    for card, own in of_each(name, texts):
        whole = "".join(texts[number] for number in own)
        places = [place_of(whole, f"{number}{step.when}") for number, step in enumerate(card.steps, start=1)]
        assert places == sorted(places)
        frame = whole.find(squeezed(words.HANDLING))
        assert (frame >= 0) == bool(card.cautions)
        for row in card.rows:
            dose = whole.find(squeezed(row.dose))
            assert dose > frame
            assert (dose < places[0]) == card.first, "a recipe says first what is weighed"


def place_of(whole: str, text: str) -> int:
    """Return where a step begins; its number stands before its time, wherever what it says is set."""
    found = whole.find(squeezed(text))
    assert found >= 0, text
    return found


@on_every_paper
@pytest.mark.parametrize("name", ["ash", "bottle"])
def test_rows_are_on_one_face_with_the_stop_rule_where_a_page_holds_them(hung: Hung, name: str, paper: Paper) -> None:
    pages = runs(hung(name, paper))
    for card, own in of_each(name, page_texts(hung(name, paper))):
        with_rows = {number for number in own for run in pages[number] if run.points >= 36.0 - EXACT}
        with_stop = {number for number in own for run in pages[number] if run.text == words.STOP}
        assert len(with_stop) == 1
        if paper in (A4, LETTER) and card.rows:
            assert with_rows == with_stop


@on_every_paper
def test_L16_blank_around_each_dose(hung: Hung, paper: Paper) -> None:
    checked = 0
    for page in runs(hung("ash", paper)):
        for dose in [run for run in page if run.points >= 36.0 - EXACT]:
            above = [run.bottom for run in page if run.bottom <= dose.top + 1.0 and "Goes on" not in run.text]
            if above and max(above) > paper.top + 10.0:
                assert dose.top - max(above) >= 5.0, dose
                checked += 1
    assert checked >= 1


@on_every_paper
def test_L17_ruler_is_50_mm_on_every_page(hung: Hung, paper: Paper) -> None:
    for page in as_set(hung("ash", paper)):
        assert page.width * MM_PER_POINT == pytest.approx(paper.width, abs=0.4)
        level = [line for line in page if isinstance(line, LTLine) and abs(line.y0 - line.y1) < 0.01]
        lowest = min(level, key=lambda line: line.y0)
        assert (lowest.x1 - lowest.x0) * MM_PER_POINT == pytest.approx(50.0, abs=0.2)


@on_every_paper
def test_L23_as_many_boxes_as_asked_for(paper: Paper) -> None:
    """And the line for the keeper's number is long enough to be written on."""
    pages = lay_out(cards("ash"), paper)
    boxes = [
        item for page in pages for item in page.items if isinstance(item, Stroke) and item.closed and item.width == 0.3
    ]
    assert len(boxes) == sum(card.write_in.rows for card in cards("ash").cards)
    phones = [
        (page, item) for page in pages for item in page.items if getattr(item, "words", "").endswith("telephone:")
    ]
    assert len(phones) == 4
    for page, phone in phones:
        level = [item for item in page.items if isinstance(item, Stroke) and len(item.points) == 2]
        near = [line for line in level if abs(line.points[0][1] - phone.baseline - 1.0) < 0.2]
        assert max(line.points[1][0] - line.points[0][0] for line in near) >= 34.0


@pytest.mark.parametrize("paper", [A4, A6], ids=lambda paper: paper.name)
def test_L18_every_word_survives_one_bit(paper: Paper) -> None:
    view = cards("ash")
    for number, page in enumerate(lay_out(view, paper)[:2]):
        full = to_image(view, paper, number, DPI)
        grey, mono = dark(full), dark(to_mono(full))
        for text in (item for item in page.items if isinstance(item, Text)):
            ink = inside(mono, text).mean()
            assert 0.04 < ink < 0.6, text.words
            assert ink == pytest.approx(inside(grey, text).mean(), rel=0.25), text.words


def test_all_ink_is_black(hung: Hung) -> None:
    for page in letters(hung("ash", A4)):
        assert {ink for letter in page for ink in (letter.ink if isinstance(letter.ink, tuple) else (letter.ink,))} == {
            0.0
        }


def test_four_cards_of_two_faces_on_large_paper(hung: Hung) -> None:
    """Each is a single sheet printed on both sides."""
    for paper in (A4, LETTER):
        assert [len(own) for _, own in of_each("ash", page_texts(hung("ash", paper)))] == [2, 2, 2, 2]


def test_file_says_what_it_is(hung: Hung) -> None:
    told = pypdf.PdfReader(hung("ash", A4)).metadata
    assert told is not None
    assert str(told.title) == f"Contingency cards, North frag bay, plan {cards('ash').plan_id}"


def test_printed_is_what_is_saved(hung: Hung, tmp_path: Path) -> None:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    print_card(printer, cards("ash"), A6)
    assert page_texts(tmp_path / "printed.pdf") == page_texts(hung("ash", A6))


def test_they_do_not_go_on_the_paper_of_labels() -> None:
    with pytest.raises(TypeError, match="ContingencySet"):
        lay_out(cards("ash"), LABEL_A5)


def test_name_that_leaves_no_room_is_refused_not_cut() -> None:
    named = ContingencySet(contingencies(answer({"system.name": "reef " * 400}), NOW))
    with pytest.raises(CardFailed) as failed:
        lay_out(named, A6)
    assert failed.value.reason.code == "card_does_not_fit"
