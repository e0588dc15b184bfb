"""A jug's label on paper: everything of it, in its order, in sizes that can be read, and nothing torn or lost."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pypdf
import pytest
from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrinter

from evenwater.card import words
from evenwater.card.failures import CardFailed
from evenwater.card.items import MM_PER_POINT, Text
from evenwater.card.label_paper import A4_TWICE, A5, A6_LANDSCAPE, LABEL_PAPERS, LETTER_TWICE, LabelPaper
from evenwater.card.label_parts import BATCH, JUG
from evenwater.card.output import lay_out, print_card, to_image, write_pdf
from evenwater.card.paper import A4
from evenwater.screens.jug_label import LabelFacts
from tests.card import sample
from tests.card.conftest import Printed
from tests.card.labels import LABELS, every_label, frames, on_every_label_paper, set_words, strings
from tests.card.reading import page_texts, runs, squeezed
from tests.screens.jugs import BARE, FACTS, LONG, jugs, labelled

EXACT = 0.001
"""What the reader of a PDF may be off in a size [pt]."""


@on_every_label_paper
@pytest.mark.parametrize("facts", [FACTS, BARE, LONG], ids=["known", "bare", "long"])
def test_L25_the_words_on_the_paper_are_the_words_of_the_label(paper: LabelPaper, facts: LabelFacts) -> None:
    """Nothing lost and nothing added, of everything that can be in a jug."""
    for name in jugs():
        view = labelled(name, facts)
        pages = lay_out(view, paper)
        own = set_words([JUG, BATCH, words.HANDLING, words.RULER, view.batch])
        own |= set_words([words.page_of(page, len(pages)) for page in range(1, len(pages) + 1)])
        on_paper = set_words([item.words for page in pages for item in page.items if isinstance(item, Text)])
        said = set_words(strings(view))
        assert said <= on_paper, (name, said - on_paper)
        assert on_paper <= said | own, (name, on_paper - said - own)


@on_every_label_paper
@every_label
def test_every_string_is_there_whole_on_every_copy(printed: Printed, name: str, paper: LabelPaper) -> None:
    texts = page_texts(printed(name, paper))
    for string in strings(LABELS[name]()):
        assert max(text.count(squeezed(string)) for text in texts) >= len(paper.places), string
    assert not any("…" in text or "..." in text for text in texts)


@pytest.mark.parametrize("paper", [A6_LANDSCAPE, A5], ids=lambda paper: paper.name)
@pytest.mark.parametrize("name", [name for name in LABELS if name != "long"])
def test_strings_come_in_their_order(printed: Printed, name: str, paper: LabelPaper) -> None:
    """What is too long for its box comes after the boxes, so the longest label is left out."""
    text, place = "".join(page_texts(printed(name, paper))), 0
    for string in strings(LABELS[name]()):
        found = text.find(squeezed(string), place)
        assert found >= 0, string
        place = found + len(squeezed(string))


@on_every_label_paper
@every_label
def test_H33_handling_stands_before_the_quantities(printed: Printed, name: str, paper: LabelPaper) -> None:
    """Nothing of a figure stands higher on the paper than the end of hazards, handling and first aid."""
    view, pages = LABELS[name](), runs(printed(name, paper))
    first_copy = min(top for _, top in paper.places) + paper.content_height
    found = [(number, run) for number, page in enumerate(pages) for run in page if run.baseline < first_copy]
    aid = [(number, run.baseline) for number, run in found if run.text.endswith("Poison\u00a0centre:")]
    title = [(number, run.baseline) for number, run in found if run.text in {view.signal_word, words.HANDLING}]
    assert len(aid) == 1
    # The batch's code stands at the foot of every page as well.
    for said in (view.strength, *view.does, *(entry.label for entry in view.entries if entry.label != BATCH)):
        begins = [
            (number, run.baseline)
            for number, run in found
            if squeezed(said).startswith(squeezed(run.text)) and len(run.text) > 5
        ]
        assert begins, said
        assert min(begins) > aid[0] > min(title)


@on_every_label_paper
@pytest.mark.parametrize("name", ["soda ash", "caustic", "limewater", "bare", "long"])
def test_L15_signal_word_is_large_and_bold_on_every_page(printed: Printed, name: str, paper: LabelPaper) -> None:
    word = LABELS[name]().signal_word
    for number, page in enumerate(runs(printed(name, paper))):
        found = [run for run in page if run.text == word]
        assert len(found) == len(paper.places)
        assert all(run.points >= 18.0 - EXACT and run.bold for run in found)
        assert number or all(run.points >= 22.0 - EXACT for run in found)


@on_every_label_paper
@every_label
def test_L15_sizes(printed: Printed, name: str, paper: LabelPaper) -> None:
    view, pages = LABELS[name](), runs(printed(name, paper))
    assert all(run.points >= 10.0 for page in pages for run in page)
    for string, size in [(view.name, 24.0), *((contents.name, 18.0) for contents in view.contents)]:
        large = [run.text for run in pages[0] if run.points >= size - EXACT and run.bold]
        assert squeezed(string) in squeezed("".join(large)), string
    if view.name:
        assert squeezed(view.name).startswith(squeezed(pages[0][0].text))
        assert pages[0][0].points == max(run.points for run in pages[0])


@on_every_label_paper
@every_label
def test_H11_the_label_names_the_exact_hydrate(printed: Printed, name: str, paper: LabelPaper) -> None:
    """Full name and formula stand at the top, right below the name of the jug; the formula is smaller."""
    view, text = LABELS[name](), page_texts(printed(name, paper))[0]
    head = squeezed(view.name + "".join(contents.name + contents.formula for contents in view.contents))
    assert text.removeprefix(JUG).startswith(head)
    formulas = {contents.formula for contents in view.contents} - {""}
    set_in = [run for run in runs(printed(name, paper))[0] if run.text in formulas]
    assert {run.text for run in set_in} == formulas
    assert all(10.0 <= run.points < 18.0 - EXACT and not run.bold for run in set_in)


@on_every_label_paper
@pytest.mark.parametrize("name", ["soda ash", "mix", "limewater", "bottle"])
def test_H20_the_label_says_what_it_must_never_be_mixed_with(printed: Printed, name: str, paper: LabelPaper) -> None:
    """In bold and inside the frame."""
    view, pages = LABELS[name](), runs(printed(name, paper))
    assert any(squeezed(view.separation) in text for text in page_texts(printed(name, paper)))
    said = [
        (number, run)
        for number, page in enumerate(pages)
        for run in page
        if run.text.startswith("Never mix with any") and run.bold
    ]
    assert len(said) == len(paper.places)
    for number, run in said:
        around = [box for box in frames(lay_out(view, paper)[number].items) if box[4] >= 0.6]
        assert any(box[0] < run.left and box[1] < run.top and run.bottom < box[3] for box in around)


@on_every_label_paper
@every_label
def test_L25_each_page_says_which_of_how_many_and_of_which_jug(printed: Printed, name: str, paper: LabelPaper) -> None:
    view, texts = LABELS[name](), page_texts(printed(name, paper))
    for number, text in enumerate(texts, start=1):
        assert text.count(f"{number}of{len(texts)}") == len(paper.places)
        assert text.count(squeezed(view.name)) >= len(paper.places)
        assert all(squeezed(contents.name) in text for contents in view.contents)
        assert view.batch in text
        assert text.count(squeezed(words.RULER)) == len(paper.places)


def test_common_labels_need_one_piece_of_paper() -> None:
    for name in ("sodium carbonate anhydrous", "sodium bicarbonate", "calcium chloride dihydrate", "a mix"):
        assert [len(lay_out(labelled(name), paper)) for paper in (A5, A4_TWICE, LETTER_TWICE)] == [1, 1, 1]
        assert len(lay_out(labelled(name), A6_LANDSCAPE)) == 2


@on_every_label_paper
def test_signal_word_is_on_the_first_face_though_the_name_is_long(paper: LabelPaper) -> None:
    view = LABELS["long"]()
    assert view.signal_word in [item.words for item in lay_out(view, paper)[0].items if isinstance(item, Text)]


@on_every_label_paper
def test_no_sentence_of_the_frame_is_torn_between_two_pieces(paper: LabelPaper) -> None:
    """Of no jug, though a long name pushes many of the frames over the end of the page."""
    for name in jugs():
        view = labelled(name, LONG)
        pages = [[item.words for item in page.items if isinstance(item, Text)] for page in lay_out(view, paper)]
        for sentence in (*view.statements, *view.handling, view.separation, view.keep_away, view.first_aid):
            assert any(sentence in " ".join(page) for page in pages), (name, sentence)


def test_frame_that_goes_on_over_the_page_says_again_what_it_is() -> None:
    pages = lay_out(LABELS["limewater"](), A6_LANDSCAPE)
    assert [item.words for item in pages[1].items if isinstance(item, Text)].count(words.HANDLING) == 1
    assert [box[4] for page in pages[:2] for box in frames(page.items)].count(1.2) == 3, "two parts and a signal word"


def test_name_that_leaves_no_room_is_refused_not_cut() -> None:
    with pytest.raises(CardFailed) as failed:
        lay_out(replace(LABELS["soda ash"](), name="jug " * 400), A6_LANDSCAPE)
    assert failed.value.reason.code == "card_does_not_fit"


def test_name_of_many_lines_is_there_whole() -> None:
    name = "the jug behind the " + "quarantine" * 20
    view = replace(LABELS["limewater"](), name=name)
    set_in = [item.words for page in lay_out(view, A6_LANDSCAPE) for item in page.items if isinstance(item, Text)]
    assert squeezed(name) in squeezed("".join(set_in))


@pytest.mark.parametrize("paper", [A6_LANDSCAPE, A5, LETTER_TWICE], ids=lambda paper: paper.name)
def test_paper_is_set_again_after_the_dialog(tmp_path: Path, paper: LabelPaper) -> None:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    file, direct = tmp_path / "printed.pdf", tmp_path / "direct.pdf"
    printer.setOutputFileName(str(file))
    spoilt = QPageSize(QPageSize.PageSizeId.A3)
    printer.setPageLayout(QPageLayout(spoilt, QPageLayout.Orientation.Portrait, QMarginsF(40, 40, 40, 40)))
    print_card(printer, LABELS["soda ash"](), paper)
    write_pdf(direct, LABELS["soda ash"](), paper)
    for page in (*pypdf.PdfReader(file).pages, *pypdf.PdfReader(direct).pages):
        assert page.rotation == 0
        assert float(page.mediabox.width) * MM_PER_POINT == pytest.approx(paper.width, abs=0.4)
        assert float(page.mediabox.height) * MM_PER_POINT == pytest.approx(paper.height, abs=0.4)
    assert page_texts(file) == page_texts(direct)


def test_pdf_and_picture_say_what_they_are(printed: Printed) -> None:
    view, told = LABELS["mix"](), pypdf.PdfReader(printed("mix", A5)).metadata
    assert told is not None
    both = "magnesium CHLORide hexahydrate and magnesium SULFate heptahydrate"
    assert told.title == f"{view.name}, {both}, batch {view.batch}"
    image = to_image(view, A6_LANDSCAPE, 1, 96)
    assert (image.width(), image.height()) == (559, 397)


def test_label_goes_on_papers_for_labels_only() -> None:
    assert A5.name in LABEL_PAPERS
    with pytest.raises(TypeError):
        lay_out(LABELS["mix"](), A4)
    with pytest.raises(TypeError):
        lay_out(sample.card(), A5)
