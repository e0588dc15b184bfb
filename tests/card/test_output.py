"""Writing and printing: all or nothing, on the paper asked for, and a failure that is reported."""

from __future__ import annotations

from pathlib import Path

import pypdf
import pytest
from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QImage, QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrinter

from evenwater.card import output
from evenwater.card.failures import CardFailed
from evenwater.card.items import MM_PER_POINT
from evenwater.card.output import print_card, to_image, write_pdf
from evenwater.card.paper import A4, A6, LETTER
from tests.card import sample
from tests.card.reading import page_texts


def test_pdf_says_what_it_is(tmp_path: Path) -> None:
    file = tmp_path / "card.pdf"
    write_pdf(file, sample.card(), A4)
    told = pypdf.PdfReader(file).metadata
    assert told is not None
    assert told.creator == "Evenwater"
    assert sample.card().plan_id in str(told.title)
    assert [entry.name for entry in tmp_path.iterdir()] == ["card.pdf"]


def test_folder_that_is_missing_is_reported(tmp_path: Path) -> None:
    with pytest.raises(CardFailed) as failed:
        write_pdf(tmp_path / "nowhere" / "card.pdf", sample.card(), A4)
    assert failed.value.reason.code == "card_not_written"
    assert "nowhere" in str(failed.value.reason.params["file"])
    assert failed.value.reason.params["detail"]


def test_place_that_is_a_folder_is_reported(tmp_path: Path) -> None:
    with pytest.raises(CardFailed) as failed:
        write_pdf(tmp_path, sample.card(), A4)
    assert failed.value.reason.code == "card_not_written"


def test_old_card_stays_when_the_new_one_cannot_be_painted(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "card.pdf"
    write_pdf(file, sample.card(), A4)
    before = file.read_bytes()

    def spoilt(*_: object) -> None:
        raise RuntimeError("power cut")

    monkeypatch.setattr(output, "paint_page", spoilt)
    with pytest.raises(RuntimeError, match="power cut"):
        write_pdf(file, sample.draft(), A4)
    assert file.read_bytes() == before
    assert len(list(tmp_path.iterdir())) == 1


def test_new_card_replaces_the_old_one(tmp_path: Path) -> None:
    file = tmp_path / "card.pdf"
    file.write_bytes(b"an old card")
    write_pdf(file, sample.card(), A6)
    assert file.read_bytes().startswith(b"%PDF")


class PaperPrinter(QPrinter):
    """Passes for a printer of paper, and keeps what it prints in a file."""

    def outputFormat(self) -> QPrinter.OutputFormat:
        return QPrinter.OutputFormat.NativeFormat


@pytest.fixture
def printer(tmp_path: Path) -> QPrinter:
    made = PaperPrinter(QPrinter.PrinterMode.HighResolution)
    made.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    made.setOutputFileName(str(tmp_path / "printed.pdf"))
    return made


@pytest.mark.parametrize("paper", [A4, LETTER, A6], ids=lambda paper: paper.name)
def test_paper_is_set_again_after_the_dialog(printer: QPrinter, tmp_path: Path, paper) -> None:
    """A driver hands back its own paper, on its side and with wide margins."""
    spoilt = QPageLayout(
        QPageSize(QPageSize.PageSizeId.A3), QPageLayout.Orientation.Landscape, QMarginsF(40, 40, 40, 40)
    )
    printer.setPageLayout(spoilt)
    print_card(printer, sample.card(), paper)
    file = tmp_path / "printed.pdf"
    pages = pypdf.PdfReader(file).pages
    for page in pages:
        assert float(page.mediabox.width) * MM_PER_POINT == pytest.approx(paper.width, abs=0.4)
        assert float(page.mediabox.height) * MM_PER_POINT == pytest.approx(paper.height, abs=0.4)
    direct = tmp_path / "direct.pdf"
    write_pdf(direct, sample.card(), paper)
    assert page_texts(file) == page_texts(direct)


@pytest.mark.qt_log_ignore("QPdf|QPainter", extend=True)
def test_printer_that_does_not_begin_is_reported(printer: QPrinter, tmp_path: Path) -> None:
    printer.setOutputFileName(str(tmp_path / "nowhere" / "printed.pdf"))
    with pytest.raises(CardFailed) as failed:
        print_card(printer, sample.card(), A4)
    assert failed.value.reason.code == "card_not_painted"


class StubbornPrinter(QPrinter):
    """Keeps the paper of its driver, whatever it is told."""

    def pageLayout(self) -> QPageLayout:
        return QPageLayout(QPageSize(QPageSize.PageSizeId.A5), QPageLayout.Orientation.Portrait, QMarginsF())


def test_printer_that_keeps_its_own_paper_is_reported(tmp_path: Path) -> None:
    stubborn = StubbornPrinter()
    stubborn.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    stubborn.setOutputFileName(str(tmp_path / "printed.pdf"))
    with pytest.raises(CardFailed) as failed:
        print_card(stubborn, sample.card(), A4)
    assert failed.value.reason.code == "card_paper_refused"
    assert failed.value.reason.params["wanted"] == "A4"
    assert not (tmp_path / "printed.pdf").exists()


def test_printing_to_a_file_leaves_the_whole_card_or_what_was_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The print dialog offers a PDF file as a printer."""
    file, seen, paint = tmp_path / "printed.pdf", [], output.paint_page
    file.write_bytes(b"an old card")

    def looking(*given: object) -> None:
        seen.append(file.read_bytes())
        paint(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(output, "paint_page", looking)
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(file))
    print_card(printer, sample.card(), A6)
    assert set(seen) == {b"an old card"}, "nothing half-made stands under its name"
    assert sample.card().plan_id in str(pypdf.PdfReader(file).metadata)
    printer.setOutputFileName(str(tmp_path / "nowhere" / "printed.pdf"))
    with pytest.raises(CardFailed) as failed:
        print_card(printer, sample.card(), A6)
    assert failed.value.reason.code == "card_not_written"


def test_picture_has_the_size_of_the_paper() -> None:
    image = to_image(sample.card(), LETTER, 1, 96)
    assert (image.width(), image.height()) == (816, 1056)
    assert to_image(sample.card(), LETTER, 1, 96, mono=True).format() == QImage.Format.Format_Mono


def test_page_that_is_not_there() -> None:
    with pytest.raises(IndexError):
        to_image(sample.card(), A4, 2, 50)


@pytest.mark.qt_log_ignore("QPainter|QImage|Paint device", extend=True)
def test_picture_without_pixels_is_reported() -> None:
    with pytest.raises(CardFailed) as failed:
        to_image(sample.card(), A4, 0, 0.01)
    assert failed.value.reason.code == "card_not_painted"
