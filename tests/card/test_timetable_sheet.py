"""The timetable on paper: cautions first, every dose once and in order of time, whole, large enough, in black alone."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pypdf
import pytest
from PySide6.QtPrintSupport import QPrinter

from evenwater.card import words
from evenwater.card.failures import CardFailed
from evenwater.card.items import Stroke, Text
from evenwater.card.label_paper import A5 as LABEL_A5
from evenwater.card.output import lay_out, print_card, to_image, write_pdf
from evenwater.card.paper import ROUND_PAPERS, Paper
from evenwater.card.timetable_sheet import APART, CLOCKS, DOSE, PLAN, PUMP, RULE, RUNS, TIME, TIMETABLE
from evenwater.engine.quantities import Typed
from evenwater.screens import timetable_card
from evenwater.screens.timetable_card import RULES, TimetablePage
from tests.card.labels import set_words
from tests.card.reading import page_texts, runs, squeezed
from tests.engine.asking import NOW
from tests.screens.lint import faults, millilitres, strings
from tests.screens.timetable_asking import PLAN as PLAN_ID
from tests.screens.timetable_asking import THREE, followed, timetabled

BERLIN = ZoneInfo("Europe/Berlin")
FINEST = 0.3
"""Of a line on paper [mm]: what is finer is lost in a photocopy."""


def sheet(name: str = "North frag bay", **wishes: object) -> TimetablePage:
    found = timetabled(*THREE, **wishes)  # type: ignore[arg-type]
    assert found.answer is not None
    system = {"name": Typed(name), "net_volume": Typed("340", "L"), "volume_known": Typed("measured by filling")}
    return timetable_card.page(found.answer, found.given, system, NOW.astimezone(BERLIN))


SHEETS = {
    "usual": sheet(),
    "quiet": sheet(system={"quiet_from": "22:00", "quiet_to": "07:00"}),
    "ten": sheet(pumps={name: {"doses_wanted": "10"} for name in ("alkalinity", "calcium")}),
    "plan": sheet(plans=(followed(),)),
    "long": replace(
        sheet("A name that is so long that it goes on and on " * 3), stop=("A sentence that goes on and on. " * 12,)
    ),
}
# Letter carries the same rectangle as A4.
ON = {name: ROUND_PAPERS[name] for name in ("A4", "A5")}
on_every_paper = pytest.mark.parametrize("paper", list(ON.values()), ids=lambda paper: paper.name)
every_sheet = pytest.mark.parametrize("name", list(SHEETS))


@pytest.fixture(scope="module")
def pdf(qapp, tmp_path_factory: pytest.TempPathFactory):
    folder = tmp_path_factory.mktemp("timetables")

    def get(name: str, paper: Paper) -> Path:
        file = folder / f"{name} {paper.name}.pdf"
        if not file.exists():
            write_pdf(file, SHEETS[name], paper)
        return file

    return get


def listed(pdf_file: Path) -> list[tuple[str, str]]:
    """Return times and doses of the list, as they are set: in bold, at the left edge and beside it."""
    found = []
    for page in runs(pdf_file):
        times = [run for run in page if re.fullmatch(r"\d\d:\d\d", run.text) and run.bold]
        for time in times:
            beside = [run for run in page if run.bold and abs(run.baseline - time.baseline) < 0.2 and run is not time]
            found.append((time.text, min(beside, key=lambda run: run.left).text))
    return found


@on_every_paper
@every_sheet
def test_L14_every_dose_stands_once_and_in_order_of_time(pdf, name: str, paper: Paper) -> None:
    expected = [(row.when, squeezed(row.dose)) for row in SHEETS[name].every]
    assert [(time, squeezed(dose)) for time, dose in listed(pdf(name, paper))] == expected
    assert [row.minute for row in SHEETS[name].every] == sorted(row.minute for row in SHEETS[name].every)


@on_every_paper
@every_sheet
def test_L13_dose_and_time_stand_in_columns_of_their_own(pdf, name: str, paper: Paper) -> None:
    for page in runs(pdf(name, paper)):
        times = [run for run in page if re.fullmatch(r"\d\d:\d\d", run.text) and run.bold]
        doses = [run for run in page if re.fullmatch(r"[\d.]+ ?\u00a0?mL", run.text) and abs(run.points - 14.0) < 0.1]
        assert len(times) == len(doses)
        if times:
            assert max(run.right for run in times) + 4.0 < min(run.left for run in doses)
            assert len({round(run.right, 1) for run in doses}) == 1, "figures end at one edge"


@on_every_paper
@every_sheet
def test_L25_the_words_on_the_paper_are_the_words_of_the_sheet(name: str, paper: Paper) -> None:
    """Nothing lost, nothing added, on as many pages as it takes."""
    pages = lay_out(SHEETS[name], paper)
    on_paper = set_words(item.words for page in pages for item in page.items if isinstance(item, Text))
    own = set_words(
        [
            TIMETABLE,
            TIME,
            DOSE,
            RUNS,
            PUMP,
            APART,
            PLAN,
            CLOCKS,
            RULE,
            words.STOP,
            words.HANDLING,
            words.RULER,
            words.GOES_ON,
        ]
    )
    own |= set_words(words.page_of(number, len(pages)) for number in range(1, len(pages) + 1))
    said = set_words(strings(SHEETS[name])) | {SHEETS[name].code}
    # A pump's name ends in a colon before its additive.
    on_paper, said, own = ({word.rstrip(":") for word in some} for some in (on_paper, said, own))
    assert said <= on_paper
    assert on_paper <= said | own


@on_every_paper
@every_sheet
def test_cautions_stand_before_every_figure_and_the_rules_are_there(pdf, name: str, paper: Paper) -> None:
    text = "".join(page_texts(pdf(name, paper)))
    first = min(text.index(squeezed(row.dose)) for row in SHEETS[name].rows)
    for caution in SHEETS[name].cautions:
        # A page may end within it, but not within its first words; that all of it is there says L25.
        assert text.index(squeezed(caution)[:20]) < first
    for rule in RULES:
        assert squeezed(rule) in text
    assert squeezed("Never make up missed doses") in text


@on_every_paper
@every_sheet
def test_L15_letters_are_as_large_as_on_a_dose_card(pdf, name: str, paper: Paper) -> None:
    """Each pump's setting as on a card; in the list of times, below them, twelve points and more."""
    pages = [run for page in runs(pdf(name, paper)) for run in page]
    assert min(run.points for run in pages) >= 10.0
    for row in SHEETS[name].rows:
        assert any(run.points >= 36.0 and run.bold and squeezed(run.text) in squeezed(row.dose) for run in pages), (
            row.dose
        )
        assert any(run.points >= 24.0 - 0.01 and row.additive.startswith(run.text) for run in pages)
    assert all(run.points >= 14.0 - 0.01 for run in pages if re.fullmatch(r"\d\d:\d\d", run.text))


@on_every_paper
@every_sheet
def test_L17_everything_lies_within_the_paper_and_no_words_on_words(name: str, paper: Paper) -> None:
    for page in lay_out(SHEETS[name], paper):
        boxes = sorted(item.box for item in page.items if isinstance(item, Text))
        for number, (left, top, right, bottom) in enumerate(boxes):
            assert paper.left - 0.01 <= left
            assert right <= paper.left + paper.content_width + 0.01
            assert paper.top <= top
            assert bottom <= paper.bottom + 0.01
            for other in boxes[number + 1 :]:
                if other[0] >= right:
                    break
                assert other[1] >= bottom - 0.6 or other[3] <= top + 0.6, (boxes[number], other)


@on_every_paper
@every_sheet
def test_L18_all_of_it_is_black_and_no_line_is_too_fine(name: str, paper: Paper) -> None:
    for page in lay_out(SHEETS[name], paper):
        assert all(item.width >= FINEST for item in page.items if isinstance(item, Stroke))
    mono = to_image(SHEETS[name], paper, 0, 100.0, mono=True)
    grey = to_image(SHEETS[name], paper, 0, 100.0)
    at = [(x, y) for x in range(0, mono.width(), 5) for y in range(0, mono.height(), 5)]
    dark = [place for place in at if grey.pixelColor(*place).lightness() < 128]
    assert dark
    assert [place for place in at if mono.pixelColor(*place).lightness() < 128] == dark


@on_every_paper
def test_L25_every_page_says_whose_it_is_and_which_it_is(pdf, paper: Paper) -> None:
    pages = page_texts(pdf("usual", paper))
    assert len(pages) > 1
    for number, text in enumerate(pages, start=1):
        assert squeezed("North frag bay") in text
        assert squeezed(f"{TIMETABLE} {SHEETS['usual'].code}") in text
        assert squeezed(words.page_of(number, len(pages))) in text
    with_list = [text for text in pages if re.search(r"\d\d:\d\d\d", text) and squeezed(RUNS) in text]
    assert with_list, "the columns are named where the list goes on"


@every_sheet
def test_words_keep_the_rules_of_expression(name: str) -> None:
    page = SHEETS[name]
    # What is asked here are sentences; H-statements are quoted as they are published.
    assert not [fault for text in strings(page) for fault in faults(text)]
    assert all(faults(row.dose, dose=True) == [] for row in page.every)


# L19 and L20


def test_L19_the_sheet_ends_with_the_plan_the_clocks_or_a_month() -> None:
    plan = followed()
    assert plan.kept is not None
    assert SHEETS["usual"].valid_until == "Valid until Fri 25 Dec 2026"
    ends = plan.kept.course.ends_at.astimezone(BERLIN)
    assert SHEETS["plan"].valid_until.endswith(f"{ends.day} Nov 2026")
    assert PLAN_ID in SHEETS["plan"].because
    found = timetabled(*THREE)
    assert found.answer is not None
    before = timetable_card.page(found.answer, found.given, {}, (NOW + timedelta(days=110)).astimezone(BERLIN))
    assert before.valid_until == "Valid until Sat 27 Mar 2027"
    assert "clocks" in before.because


def test_L19_a_plan_is_named_by_its_id_on_the_paper(pdf) -> None:
    text = "".join(page_texts(pdf("plan", ROUND_PAPERS["A4"])))
    assert squeezed(f"those of plan {PLAN_ID}") in text
    assert squeezed("Stop and test again if alkalinity reads above") in text


@every_sheet
def test_L20_never_more_than_what_the_list_adds_up_to(name: str) -> None:
    page = SHEETS[name]
    for pump in {row.pump for row in page.every}:
        own = [row for row in page.every if row.pump == pump]
        total = sum(millilitres(row.dose) for row in own)
        (most,) = [line for line in page.maxima if own[0].additive in line]
        assert millilitres(most) == total


def test_the_code_is_another_when_a_dose_is_another() -> None:
    codes = {page.code for page in SHEETS.values()}
    assert len(codes) == len(SHEETS) - 1, "the long one has the doses of the usual one"
    assert sheet().code == SHEETS["usual"].code


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
        write_pdf(tmp_path / "no folder" / "x.pdf", SHEETS["usual"], ROUND_PAPERS["A4"])
    assert failed.value.reason.code == "card_not_written"


@pytest.mark.parametrize("name", ["usual", "plan"])
def test_the_first_aid_is_never_cut_by_the_end_of_a_page(pdf, name: str) -> None:
    pages = page_texts(pdf(name, ROUND_PAPERS["A5"]))
    assert [squeezed(SHEETS[name].emergency) in text for text in pages].count(True) == 1
