"""Sends a card to a PDF file, a printer or a picture, all through the same painting."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMarginsF, QSaveFile, QSizeF, Qt
from PySide6.QtGui import QImage, QPagedPaintDevice, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtPrintSupport import QPrinter

from evenwater.card.failures import CardFailed
from evenwater.card.layout import lay_out
from evenwater.card.paint import paint_page
from evenwater.card.paper import Paper
from evenwater.engine.reasons import Reason
from evenwater.screens.views import CardView

PDF_DPI = 600
_MM_PER_INCH = 25.4
_SAME_PAPER = 1.0
"""How far a printer's idea of a paper may be off ours [mm]: drivers round to points."""


def write_pdf(path: Path, card: CardView, paper: Paper) -> None:
    """Write the card as a PDF, whole or not at all.

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
    writer.setTitle(f"{card.title}, {card.system}, plan {card.plan_id}")
    writer.setCreator("Evenwater")
    writer.setPageLayout(page_layout(paper))
    _paint_all(writer, writer.resolution(), card, paper)
    buffer.close()
    _save(path, bytes(buffer.data().data()))


def print_card(printer: QPrinter, card: CardView, paper: Paper) -> None:
    """Print the card on ``paper``, whatever the print dialog left behind.

    Drivers hand back their own default paper; the card would then be cut off although its preview
    was right. So paper, upright and full page are set again here, and what the printer made of them
    is read back.

    Raises
    ------
    CardFailed
        ``card_paper_refused``, ``card_not_painted`` or ``card_fonts_missing``.
    """
    printer.setFullPage(True)
    printer.setPageLayout(page_layout(paper))
    got = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    if abs(got.width() - paper.width) > _SAME_PAPER or abs(got.height() - paper.height) > _SAME_PAPER:
        size = f"{got.width():.0f} x {got.height():.0f} mm"
        raise CardFailed(Reason("card_paper_refused", {"wanted": paper.name, "got": size}))
    printer.setDocName(f"{card.title}, plan {card.plan_id}")
    _paint_all(printer, printer.resolution(), card, paper)


def to_image(card: CardView, paper: Paper, page: int, dpi: float, mono: bool = False) -> QImage:
    """Return a page as a picture, with ``mono`` in black and white only, as a copier shows it.

    ``page`` is counted from 0. The picture is round(mm * dpi / 25.4) pixels wide and high.

    Raises
    ------
    IndexError
        When the card has no such page.
    CardFailed
        ``card_not_painted`` or ``card_fonts_missing``.
    """
    per_mm = dpi / _MM_PER_INCH
    image = QImage(round(paper.width * per_mm), round(paper.height * per_mm), QImage.Format.Format_RGB32)
    laid_out = lay_out(card, paper)[page]
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


def page_layout(paper: Paper) -> QPageLayout:
    """Return ``paper`` for Qt: upright, margins nought, because the card brings its own."""
    known = {"A4": QPageSize.PageSizeId.A4, "A5": QPageSize.PageSizeId.A5, "A6": QPageSize.PageSizeId.A6}
    known["Letter"] = QPageSize.PageSizeId.Letter
    if paper.name in known:
        size = QPageSize(known[paper.name])
    else:
        size = QPageSize(QSizeF(paper.width, paper.height), QPageSize.Unit.Millimeter, paper.name)
    return QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(), QPageLayout.Unit.Millimeter)


def _paint_all(device: QPagedPaintDevice, dpi: int, card: CardView, paper: Paper) -> None:
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
