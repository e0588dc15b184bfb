"""Sends cards, a jug's label, a round sheet, a timetable or all plans to a PDF file, a printer or a picture, all through the same painting."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QSaveFile, QSizeF, Qt
from PySide6.QtGui import QImage, QPagedPaintDevice, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtPrintSupport import QPrinter

from evenwater.card import contingency, emergency, jug_label, layout, round_sheet, timetable_sheet, together
from evenwater.card.failures import CardFailed
from evenwater.card.label_paper import LabelPaper
from evenwater.card.layout import Page
from evenwater.card.paint import paint_page
from evenwater.card.paper import Paper
from evenwater.engine.reasons import Reason
from evenwater.screens.contingency_views import ContingencySet
from evenwater.screens.emergency_card import EmergencyCard
from evenwater.screens.jug_label import JugLabel
from evenwater.screens.round_page import RoundPage
from evenwater.screens.timetable_card import TimetablePage
from evenwater.screens.together_card import TogetherPage
from evenwater.screens.views import CardView
from evenwater.wording import say

Sheet = CardView | ContingencySet | EmergencyCard | JugLabel | RoundPage | TimetablePage | TogetherPage
"""What can be put on paper."""
AnyPaper = Paper | LabelPaper

PDF_DPI = 600
_MM_PER_INCH = 25.4
_SAME_PAPER = 1.0
"""How far a printer's idea of a paper may be off ours [mm]: drivers round to points."""


def lay_out(sheet: Sheet, paper: AnyPaper) -> tuple[Page, ...]:
    """Return the pages of a card, a set of cards, a label, a round sheet, a timetable or all plans on one of its own papers.

    Raises
    ------
    TypeError
        When a card is put on a paper for labels, or a label on one for cards.
    CardFailed
        ``card_fonts_missing`` or ``card_does_not_fit``.
    """
    if isinstance(sheet, CardView) and isinstance(paper, Paper):
        return layout.lay_out(sheet, paper)
    if isinstance(sheet, ContingencySet) and isinstance(paper, Paper):
        return contingency.lay_out(sheet, paper)
    if isinstance(sheet, EmergencyCard) and isinstance(paper, Paper):
        return emergency.lay_out(sheet, paper)
    if isinstance(sheet, JugLabel) and isinstance(paper, LabelPaper):
        return jug_label.lay_out(sheet, paper)
    if isinstance(sheet, RoundPage) and isinstance(paper, Paper):
        return round_sheet.lay_out(sheet, paper)
    if isinstance(sheet, TimetablePage) and isinstance(paper, Paper):
        return timetable_sheet.lay_out(sheet, paper)
    if isinstance(sheet, TogetherPage) and isinstance(paper, Paper):
        return together.lay_out(sheet, paper)
    raise TypeError(f"a {type(sheet).__name__} does not go on {paper}")


def write_pdf(path: Path, card: Sheet, paper: AnyPaper) -> None:
    """Write a card or a label as a PDF, whole or not at all.

    The file is written beside ``path`` and then renamed, so that a power cut leaves the old one.

    Raises
    ------
    CardFailed
        ``card_not_written``, ``card_not_painted`` or ``card_fonts_missing``.
    """
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(PDF_DPI)
    writer.setTitle(title_of(card))
    writer.setCreator("Evenwater")
    writer.setPageLayout(page_layout(paper))
    _paint_all(writer, writer.resolution(), card, paper)
    buffer.close()
    _save(path, bytes(buffer.data().data()))


def print_card(printer: QPrinter, card: Sheet, paper: AnyPaper) -> None:
    """Print a card or a label on ``paper``, whatever the print dialog left behind.

    Drivers hand back their own default paper; the card would then be cut off although its preview
    was right. So paper, direction and full page are set again here, and what the printer made of them
    is read back. A printer that is a PDF file gets it as ``write_pdf`` writes one.

    Raises
    ------
    CardFailed
        ``card_paper_refused``, ``card_not_painted``, ``card_not_written`` or ``card_fonts_missing``.
    """
    printer.setFullPage(True)
    printer.setPageLayout(page_layout(paper))
    got = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    if abs(got.width() - paper.width) > _SAME_PAPER or abs(got.height() - paper.height) > _SAME_PAPER:
        size = say("{width} x {height} mm", width=f"{got.width():.0f}", height=f"{got.height():.0f}")
        raise CardFailed(Reason("card_paper_refused", {"wanted": paper.name, "got": size}))
    if printer.outputFormat() == QPrinter.OutputFormat.PdfFormat:
        # "Print to file": Qt would write it bit by bit under its final name, and says nothing of a full disk.
        write_pdf(Path(printer.outputFileName()), card, paper)
        return
    printer.setDocName(title_of(card))
    _paint_all(printer, printer.resolution(), card, paper)


def to_image(card: Sheet, paper: AnyPaper, page: int, dpi: float, mono: bool = False) -> QImage:
    """Return a page of a card or a label as a picture, with ``mono`` in black and white only, as a copier shows it.

    ``page`` is counted from 0. The picture is round(mm * dpi / 25.4) pixels wide and high.

    Raises
    ------
    IndexError
        When it has no such page.
    CardFailed
        ``card_not_painted`` or ``card_fonts_missing``.
    """
    return picture(lay_out(card, paper)[page], paper, dpi, mono)


def picture(laid_out: Page, paper: AnyPaper, dpi: float, mono: bool = False) -> QImage:
    """Return a page that is laid out as a picture; a long sheet is laid out once for all its pages.

    Raises
    ------
    CardFailed
        ``card_not_painted``.
    """
    per_mm = dpi / _MM_PER_INCH
    image = QImage(round(paper.width * per_mm), round(paper.height * per_mm), QImage.Format.Format_RGB32)
    painter = QPainter()
    if not painter.begin(image):
        raise CardFailed(Reason("card_not_painted", {"detail": "picture"}))
    painter.fillRect(image.rect(), Qt.GlobalColor.white)
    paint_page(painter, per_mm, laid_out, paper)
    painter.end()
    image.setDotsPerMeterX(round(per_mm * 1000))
    image.setDotsPerMeterY(round(per_mm * 1000))
    return to_mono(image) if mono else image


def to_mono(image: QImage) -> QImage:
    """Return the picture in one bit per pixel, cut at half grey and not dithered."""
    return image.convertToFormat(
        QImage.Format.Format_Mono, Qt.ImageConversionFlag.ThresholdDither | Qt.ImageConversionFlag.MonoOnly
    )


def page_layout(paper: AnyPaper) -> QPageLayout:
    """Return ``paper`` for Qt: margins nought, because a card brings its own."""
    upright = QPageLayout.Orientation.Portrait
    short, long = sorted((paper.width, paper.height))
    size = QPageSize(QSizeF(short, long), QPageSize.Unit.Millimeter, "", QPageSize.SizeMatchPolicy.FuzzyMatch)
    direction = upright if paper.width <= paper.height else QPageLayout.Orientation.Landscape
    return QPageLayout(size, direction, QMarginsF(), QPageLayout.Unit.Millimeter)


def title_of(sheet: Sheet) -> str:
    """Return the title of a document with this sheet."""
    if isinstance(sheet, CardView):
        return say("{title}, {system}, plan {plan_id}", title=sheet.title, system=sheet.system, plan_id=sheet.plan_id)
    if isinstance(sheet, RoundPage):
        return f"{sheet.title}, {sheet.issued}"
    if isinstance(sheet, TimetablePage | TogetherPage):
        return f"{sheet.title}, {sheet.system}, {sheet.code}"
    if isinstance(sheet, EmergencyCard):
        return f"{sheet.title}, {sheet.system}, {sheet.issued}"
    if isinstance(sheet, ContingencySet):
        return say("Contingency cards, {system}, plan {plan_id}", system=sheet.system, plan_id=sheet.plan_id)
    held = " ".join(contents.name for contents in sheet.contents)
    return ", ".join(
        part for part in (sheet.name, held, say("batch {batch}", batch=sheet.batch) if sheet.batch else "") if part
    )


def _paint_all(device: QPagedPaintDevice, dpi: int, card: Sheet, paper: AnyPaper) -> None:
    made = lay_out(card, paper)
    painter = QPainter()
    # Qt only logs a warning here and then "prints" nothing at all.
    if not painter.begin(device):
        raise CardFailed(Reason("card_not_painted", {"detail": type(device).__name__}))
    try:
        for number, page in enumerate(made):
            if number and not device.newPage():
                raise CardFailed(Reason("card_not_painted", {"detail": type(device).__name__}))
            paint_page(painter, dpi / _MM_PER_INCH, page, paper)
    finally:
        ended = painter.end()
    if not ended:
        raise CardFailed(Reason("card_not_painted", {"detail": type(device).__name__}))


def _save(path: Path, data: bytes) -> None:
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly) or file.write(data) != len(data) or not file.commit():
        raise CardFailed(Reason("card_not_written", {"file": str(path), "detail": file.errorString()}))
