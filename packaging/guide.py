"""Prints the guide (resources/guide/guide.md) as a PDF, with pictures that it takes of the window itself, so that they stay true.

    xvfb-run -a -s "-screen 0 1920x1080x24" .venv/bin/python packaging/guide.py OUT.pdf
    QT_QPA_PLATFORM=offscreen .venv/bin/python packaging/guide.py --chapter "The card" OUT.pdf

The second form prints one chapter. A4, pages numbered, a table of contents whose lines are links, and the chapters as bookmarks.
Needs pypdf, which comes with the tests.
"""

from __future__ import annotations

import sys
import tempfile
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))

from pictures import SIZES, STATES, full, room_of, settle, window_picture
from pypdf import PdfReader, PdfWriter
from pypdf.annotations import Link
from pypdf.generic import Fit
from PySide6.QtCore import QCoreApplication, QMarginsF, QPointF, QRectF, QSizeF, Qt, QUrl
from PySide6.QtGui import (
    QFont,
    QImage,
    QPageSize,
    QPainter,
    QPdfWriter,
    QTextBlock,
    QTextBlockFormat,
    QTextCursor,
    QTextDocument,
    QTextFormat,
)
from PySide6.QtWidgets import QApplication

from evenwater.card.fonts import load_fonts
from evenwater.card.output import to_image
from evenwater.card.paper import PAPERS
from evenwater.screens import glossary

GUIDE = Path(__file__).resolve().parents[1] / "resources" / "guide" / "guide.md"
SCHEME = "picture:"
# Of the page, in points: A4 with the margins of a binder.
WIDE, HIGH, MARGIN, FOOT = 595.0, 842.0, 57.0, 30.0
TEXT_WIDE, TEXT_HIGH = WIDE - 2 * MARGIN, HIGH - 2 * MARGIN - FOOT
LETTERS, GAP = 11.0, 24.0
CHAPTER = 2


@dataclass(frozen=True)
class Entry:
    """A line of the contents: a chapter and the page it begins on, from 0, counted from the first page of text."""

    title: str
    page: int


@dataclass(frozen=True)
class Piece:
    """So much of a chapter as stands on one page: from ``top`` on [points], with its upper edge at ``at`` [points]."""

    document: QTextDocument
    top: float
    at: float


def whole() -> str:
    """Return the text of the guide, with the glossary as its last chapter."""
    terms = glossary.load(GUIDE.parents[1]).terms
    words = "\n".join(f"- {term.name}. {term.text}" for term in terms)
    return f"{GUIDE.read_text(encoding='utf-8')}\n## Words of the trade\n\n{words}\n"


def chapters(markdown: str) -> dict[str, str]:
    """Return the chapters by title; what stands before the first has an empty one."""
    found, title = {"": ""}, ""
    for line in markdown.splitlines(keepends=True):
        if line.startswith("## "):
            title = line[3:].strip()
            found[title] = ""
        found[title] += line
    return found


def wanted(markdown: str) -> tuple[str, ...]:
    """Return the names of the pictures that a text shows."""
    return tuple(
        line.partition(f"]({SCHEME}")[2].rstrip(")") for line in markdown.splitlines() if line.startswith("![")
    )


def take(app: QApplication, names: tuple[str, ...]) -> dict[str, QImage]:
    """Take pictures of the demo: of sheets by their name, and of the card."""
    out: dict[str, QImage] = {}
    if not names:
        return out
    window = window_picture(app, full, SIZES["1366x768"])
    for name in names:
        if name == "card":
            window_card = room_of(window).sheet.buttons.cards.card()
            assert window_card is not None
            out[name] = to_image(window_card, PAPERS["A5"], 0, 150.0)
            continue
        STATES["full" if name == "correct" else name](window)
        settle(app, 1.0)
        out[name] = window.grab().toImage()
    window.close()
    return out


def letters(family: str, size: float, bold: bool = False) -> QFont:
    """Return a font by its size on the page [points], whatever the screen's resolution is."""
    font = QFont(family)
    font.setPixelSize(round(size))
    font.setBold(bold)
    return font


def laid_out(markdown: str, pictures: Mapping[str, QImage], family: str) -> QTextDocument:
    """Lay a chapter out, as wide as the page and as high as it needs."""
    document = QTextDocument()
    document.setDefaultFont(letters(family, LETTERS))
    document.setDocumentMargin(0.0)
    document.setMarkdown(markdown)
    for name, picture in pictures.items():
        document.addResource(QTextDocument.ResourceType.ImageResource.value, QUrl(SCHEME + name), picture)
    _fit_pictures(document, pictures)
    for block in _blocks(document):
        _give_air(block)
    document.setTextWidth(TEXT_WIDE)
    return document


def on_pages(markdown: str, pictures: Mapping[str, QImage], family: str) -> tuple[list[list[Piece]], tuple[Entry, ...]]:
    """Put the chapters on pages: one that does not fit on the rest of a page begins the next. Returns pages and contents."""
    pages: list[list[Piece]] = [[]]
    entries: list[Entry] = []
    used = 0.0
    for title, text in chapters(markdown).items():
        if not text.strip():
            continue
        document = laid_out(text, pictures, family)
        high = document.size().height()
        gap = GAP if used else 0.0
        if used and used + gap + high > TEXT_HIGH:
            pages.append([])
            used, gap = 0.0, 0.0
        if title:
            entries.append(Entry(title, len(pages) - 1))
        pages[-1].append(Piece(document, 0.0, used + gap))
        used += gap + high
        if high > TEXT_HIGH:
            document.setPageSize(QSizeF(TEXT_WIDE, TEXT_HIGH))
            pages += [[Piece(document, TEXT_HIGH * n, 0.0)] for n in range(1, document.pageCount())]
            used = TEXT_HIGH
    return pages, tuple(entries)


def _fit_pictures(document: QTextDocument, pictures: Mapping[str, QImage]) -> None:
    """Give every picture the width of the text, or, where it is upright, half of a page."""
    for block in _blocks(document):
        at = block.begin()
        while not at.atEnd():
            fragment = at.fragment()
            image = fragment.charFormat().toImageFormat() if fragment.charFormat().isImageFormat() else None
            if image is not None and image.name().startswith(SCHEME):
                size = pictures[image.name().removeprefix(SCHEME)].size()
                fit = min(TEXT_WIDE / size.width(), 0.55 * TEXT_HIGH / size.height())
                image.setWidth(size.width() * fit)
                image.setHeight(size.height() * fit)
                cursor = QTextCursor(document)
                cursor.setPosition(fragment.position())
                cursor.setPosition(fragment.position() + fragment.length(), QTextCursor.MoveMode.KeepAnchor)
                cursor.setCharFormat(image)
            at += 1


def _give_air(block: QTextBlock) -> None:
    """Set distances and sizes."""
    shape, level = QTextBlockFormat(), block.blockFormat().headingLevel()
    shape.setTopMargin(2.0)
    shape.setBottomMargin(6.0)
    cursor = QTextCursor(block)
    cursor.mergeBlockFormat(shape)
    if level:
        cursor.setPosition(block.position() + block.length() - 1, QTextCursor.MoveMode.KeepAnchor)
        said = cursor.charFormat()
        # Else the size would be reckoned from the screen's.
        said.clearProperty(QTextFormat.Property.FontSizeAdjustment.value)
        said.setProperty(QTextFormat.Property.FontPixelSize.value, {1: 24, CHAPTER: 17}.get(level, 13))
        said.setFontWeight(QFont.Weight.Bold)
        cursor.setCharFormat(said)


def _blocks(document: QTextDocument) -> Iterator[QTextBlock]:
    block = document.begin()
    while block.isValid():
        yield block
        block = block.next()


def paint(file: Path, pages: list[list[Piece]], entries: tuple[Entry, ...], family: str) -> list[QRectF]:
    """Write the contents and the pages; returns where the lines of the contents stand [points from the top left]."""
    writer = QPdfWriter(str(file))
    writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
    writer.setPageMargins(QMarginsF(0, 0, 0, 0))
    writer.setResolution(72)
    writer.setTitle("Evenwater: a guide")
    places: list[QRectF] = []
    middle = Qt.AlignmentFlag.AlignVCenter
    with QPainter(writer) as painter:
        painter.setFont(letters(family, 17, bold=True))
        painter.drawText(QPointF(MARGIN, MARGIN + 18.0), "Contents")
        painter.setFont(letters(family, LETTERS))
        for number, entry in enumerate(entries):
            place = QRectF(MARGIN, MARGIN + 42.0 + 24.0 * number, TEXT_WIDE, 20.0)
            painter.drawText(place, int(Qt.AlignmentFlag.AlignLeft | middle), entry.title)
            painter.drawText(place, int(Qt.AlignmentFlag.AlignRight | middle), str(entry.page + 2))
            places.append(place)
        for number, page in enumerate(pages, start=2):
            writer.newPage()
            for piece in page:
                painter.save()
                painter.translate(MARGIN, MARGIN + piece.at - piece.top)
                high = min(piece.document.size().height() - piece.top, TEXT_HIGH)
                piece.document.drawContents(painter, QRectF(0, piece.top, TEXT_WIDE, high))
                painter.restore()
            foot = QRectF(MARGIN, HIGH - MARGIN, TEXT_WIDE, FOOT)
            painter.drawText(foot, int(Qt.AlignmentFlag.AlignCenter), f"{number} of {len(pages) + 1}")
    return places


def link(file: Path, entries: tuple[Entry, ...], places: list[QRectF]) -> None:
    """Make the lines of the contents links, and the chapters bookmarks."""
    writer = PdfWriter(clone_from=PdfReader(file))
    for entry, place in zip(entries, places, strict=True):
        writer.add_outline_item(title=entry.title, page_number=entry.page + 1)
        box = (place.left(), HIGH - place.bottom(), place.right(), HIGH - place.top())
        writer.add_annotation(0, Link(rect=box, target_page_index=entry.page + 1, fit=Fit.fit()))
    writer.write(file)


def make(app: QApplication, out: Path, only: str = "") -> tuple[Entry, ...]:
    """Make the guide, or one chapter of it; returns its contents."""
    markdown = whole()
    if only:
        markdown = chapters(markdown)[only]
    family = load_fonts()
    pages, entries = on_pages(markdown, take(app, wanted(markdown)), family)
    link(out, entries, paint(out, pages, entries, family))
    return entries


def main(arguments: list[str]) -> int:
    """Make the guide."""
    only = arguments[1] if arguments[:1] == ["--chapter"] and len(arguments) == 3 else ""
    if len(arguments) != (3 if only else 1):
        print(__doc__)
        return 2
    QCoreApplication.setApplicationName(f"Evenwater guide {Path(tempfile.mkdtemp()).name}")
    app = QApplication([])
    out = Path(arguments[-1])
    entries = make(app, out, only)
    print(f"{out}: {len(entries)} chapters, {len(PdfReader(out).pages)} pages, {out.stat().st_size / 1e6:.1f} MB")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
