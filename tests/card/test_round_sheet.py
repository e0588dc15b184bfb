"""The round sheet on paper: everything of it, whole, large enough, in black alone, with room to write."""

from __future__ import annotations

from pathlib import Path

import pypdf
import pytest
from PySide6.QtPrintSupport import QPrinter

from evenwater.card import words
from evenwater.card.failures import CardFailed
from evenwater.card.items import Stroke, Text
from evenwater.card.label_paper import A5 as LABEL_A5
from evenwater.card.output import lay_out, print_card, to_image, write_pdf
from evenwater.card.paper import ROUND_PAPERS, Paper
from evenwater.card.round_sheet import DONE, GOES_ON, INITIALS, READ, TIME
from evenwater.screens.round_page import RoundLine, RoundPage, RoundPlace
from tests.card.labels import frames, set_words
from tests.card.reading import page_texts, runs, squeezed
from tests.screens.lint import strings

FINEST = 0.3
"""Of a line on paper [mm]: what is finer is lost in a photocopy."""
TICK = 6.0
"""Side of a box to tick [mm]."""


def sheet(
    places: int, lines: int, name: str = "North frag bay", why: str = "The last reading is 4 days old."
) -> RoundPage:
    def one(number: int) -> RoundLine:
        if number % 3 == 0:
            return RoundLine(f"Take down card ABC123-{number:02d}", "At once", "It must not be followed.", wrong=True)
        return RoundLine("Test alkalinity", "Today", why, reads=number % 3 == 1, unit="dKH" if number % 3 == 1 else "")

    return RoundPage(
        "Round sheet",
        "Printed Wed 25 Nov 2026 09:00",
        f"{places * lines} things to do",
        tuple(RoundPlace(f"{name} {place}", tuple(map(one, range(lines)))) for place in range(places)),
    )


SHEETS = {
    "nothing": sheet(0, 0),
    "one": sheet(1, 1),
    "usual": sheet(3, 3),
    "many": sheet(8, 6),
    "one place of many pages": sheet(1, 40),
    "long": sheet(2, 4, "A name that is so long that it goes on and on " * 3, "A reason that goes on and on. " * 12),
}
on_every_paper = pytest.mark.parametrize("paper", list(ROUND_PAPERS.values()), ids=lambda paper: paper.name)
every_sheet = pytest.mark.parametrize("name", list(SHEETS))


@pytest.fixture(scope="module")
def pdf(qapp, tmp_path_factory: pytest.TempPathFactory):
    folder = tmp_path_factory.mktemp("rounds")

    def get(name: str, paper: Paper) -> Path:
        file = folder / f"{name} {paper.name}.pdf"
        if not file.exists():
            write_pdf(file, SHEETS[name], paper)
        return file

    return get


@on_every_paper
@every_sheet
def test_L25_the_words_on_the_paper_are_the_words_of_the_sheet(name: str, paper: Paper) -> None:
    """Nothing lost, nothing added, on as many pages as it takes."""
    pages = lay_out(SHEETS[name], paper)
    on_paper = set_words(item.words for page in pages for item in page.items if isinstance(item, Text))
    own = set_words([DONE, READ, TIME, INITIALS, f", {GOES_ON}", words.RULER])
    own |= set_words(words.page_of(number, len(pages)) for number in range(1, len(pages) + 1))
    # "North frag bay 0, goes on" has its comma at the name.
    own |= {f"{word}," for text in strings(SHEETS[name]) for word in text.split()[-1:]}
    said = set_words(strings(SHEETS[name]))
    assert said <= on_paper
    assert on_paper <= said | own


@on_every_paper
@every_sheet
def test_every_string_is_there_whole(pdf, name: str, paper: Paper) -> None:
    text = "".join(page_texts(pdf(name, paper)))
    for string in strings(SHEETS[name]):
        assert squeezed(string) in text, string
    assert "…" not in text


@on_every_paper
@every_sheet
def test_L15_nothing_below_ten_points_and_what_to_do_bold(pdf, name: str, paper: Paper) -> None:
    pages = runs(pdf(name, paper))
    assert all(run.points >= 10.0 for page in pages for run in page)
    for run in (run for page in pages for run in page if run.text.startswith(("Test alkalinity", "Take down"))):
        assert run.bold
        assert run.points >= 12.0 - 0.001


@on_every_paper
@every_sheet
def test_L17_everything_lies_within_the_paper_and_nothing_on_the_foot(name: str, paper: Paper) -> None:
    for page in lay_out(SHEETS[name], paper):
        texts = [item for item in page.items if isinstance(item, Text)]
        for item in texts:
            left, top, right, bottom = item.box
            assert paper.left - 0.01 <= left
            assert right <= paper.left + paper.content_width + 0.01
            assert paper.top <= top
            assert bottom <= paper.bottom + 0.01
        foot = min(item.box[1] for item in texts if item.words == words.RULER)
        above = [item.box[3] for item in texts if item.box[1] < foot - 1.0]
        assert max(above) < foot


@on_every_paper
@every_sheet
def test_no_words_lie_on_words(name: str, paper: Paper) -> None:
    for page in lay_out(SHEETS[name], paper):
        boxes = sorted(item.box for item in page.items if isinstance(item, Text))
        for number, (left, top, right, bottom) in enumerate(boxes):
            for other in boxes[number + 1 :]:
                if other[0] >= right:
                    break
                assert other[1] >= bottom - 0.6 or other[3] <= top + 0.6, (boxes[number], other, left)


@on_every_paper
@every_sheet
def test_every_duty_has_a_box_to_tick_and_lines_for_time_and_initials(name: str, paper: Paper) -> None:
    pages = lay_out(SHEETS[name], paper)
    duties = [line for place in SHEETS[name].places for line in place.lines]
    ticks = [box for page in pages for box in frames(page.items)]
    assert len(ticks) == len(duties)
    assert all(right - left == pytest.approx(TICK, abs=0.5) for left, _, right, _, _ in ticks)
    edge = paper.left + paper.content_width
    blanks = [
        item
        for page in pages
        for item in page.items
        if isinstance(item, Stroke) and len(item.points) == 2 and item.points[0][1] == item.points[1][1]
        and 12.0 < item.points[1][0] - item.points[0][0] < 49.0
    ]  # fmt: skip
    assert len([stroke for stroke in blanks if stroke.points[1][0] < edge + 0.01]) == (
        2 * len(duties) + sum(line.reads for line in duties)
    ), "time and initials for each, and a figure where one is read"


@on_every_paper
@every_sheet
def test_L18_all_of_it_is_black_and_no_line_is_too_fine(name: str, paper: Paper) -> None:
    for number, page in enumerate(lay_out(SHEETS[name], paper)):
        assert all(item.width >= FINEST for item in page.items if isinstance(item, Stroke))
        if number == 0:
            grey = to_image(SHEETS[name], paper, 0, 150.0).convertToFormat(
                to_image(SHEETS[name], paper, 0, 20.0).format()
            )
            mono = to_image(SHEETS[name], paper, 0, 150.0, mono=True)
            dark = sum(
                grey.pixelColor(x, y).lightness() < 128
                for x in range(0, grey.width(), 7)
                for y in range(0, grey.height(), 7)
            )
            kept = sum(
                mono.pixelColor(x, y).lightness() < 128
                for x in range(0, mono.width(), 7)
                for y in range(0, mono.height(), 7)
            )
            assert dark == kept > 0


@on_every_paper
def test_L25_every_page_says_what_it_is_and_which_it_is(pdf, paper: Paper) -> None:
    pages = page_texts(pdf("many", paper))
    assert len(pages) > 2
    for number, text in enumerate(pages, start=1):
        assert text.startswith(squeezed("Round sheet"))
        assert squeezed(SHEETS["many"].issued) in text
        assert text.endswith(squeezed(words.page_of(number, len(pages))))
        assert squeezed(f"{DONE}{READ}{TIME}{INITIALS}") in text, "the columns are named on each page"


@on_every_paper
def test_a_place_that_goes_on_is_named_again(pdf, paper: Paper) -> None:
    first, *others = page_texts(pdf("one place of many pages", paper))
    named = squeezed("North frag bay 0")
    assert squeezed(f"{named}, {GOES_ON}") not in first
    with_lines = [text for text in others if "Testalkalinity" in text]
    assert len(with_lines) > 2
    assert all(squeezed(f"{named}, {GOES_ON}") in text for text in with_lines)


def test_wrong_is_a_word_and_a_sign_not_a_colour(qapp) -> None:
    """The triangle is drawn and the word set, so that it is seen in one bit."""
    paper = ROUND_PAPERS["A4"]
    lines = SHEETS["one"].places[0].lines
    calm = RoundPage("Round sheet", SHEETS["one"].issued, SHEETS["one"].count, (
        RoundPlace(SHEETS["one"].places[0].name, (RoundLine(lines[0].what, "Today", lines[0].why),)),
    ))  # fmt: skip
    wrong = [
        item for item in lay_out(SHEETS["one"], paper)[0].items if isinstance(item, Stroke) and len(item.points) == 3
    ]
    assert len(wrong) == 1
    assert not [i for i in lay_out(calm, paper)[0].items if isinstance(i, Stroke) and len(i.points) == 3]


def test_it_is_printed_on_the_paper_chosen_and_on_no_paper_for_labels(qapp, tmp_path: Path) -> None:
    file = tmp_path / "printed.pdf"
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(file))
    print_card(printer, SHEETS["usual"], ROUND_PAPERS["A5"])
    box = pypdf.PdfReader(file).pages[0].mediabox
    assert float(box.width) / 72.0 * 25.4 == pytest.approx(148.0, abs=0.5)
    with pytest.raises(TypeError):
        lay_out(SHEETS["usual"], LABEL_A5)


def test_a_pdf_that_cannot_be_written_is_said(qapp, tmp_path: Path) -> None:
    with pytest.raises(CardFailed) as failed:
        write_pdf(tmp_path / "no folder" / "x.pdf", SHEETS["one"], ROUND_PAPERS["A4"])
    assert failed.value.reason.code == "card_not_written"
    assert pypdf.PdfReader(_written(tmp_path)).metadata.title == "Round sheet, Printed Wed 25 Nov 2026 09:00"


def _written(folder: Path) -> Path:
    write_pdf(folder / "x.pdf", SHEETS["one"], ROUND_PAPERS["A4"])
    return folder / "x.pdf"
