"""Reads a card back from its PDF: words with their size, typeface and place in mm."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Any

import pypdf
import pytest
from pdfminer.converter import PDFPageAggregator
from pdfminer.layout import LTChar, LTPage
from pdfminer.pdfinterp import PDFResourceManager
from pdfminer.pdfpage import PDFPage
from pypdf.generic import ContentStream

from evenwater.card import words
from evenwater.card.items import CAPITAL, DESCENT, MM_PER_POINT
from tests.card.pieces import QuickInterpreter, parse_quickly

_SAME_LINE = 0.05
"""Letters whose baselines differ by less than this stand on one line [mm]."""
_WORD_GAP = 0.6
"""Gap that still belongs to the same words, as a share of the letters' size."""


_KERN = 0.2
"""How far a letter may be drawn under its neighbour, as a share of the size: V and a."""


@dataclass(frozen=True)
class Letter:
    """One letter of the PDF; places in mm from the paper's top left corner."""

    text: str
    points: float
    font: str
    left: float
    right: float
    baseline: float
    matrix: tuple[float, ...]
    ink: Any


@dataclass(frozen=True)
class Run:
    """Words set one after the other on one line, in one size and one face."""

    text: str
    points: float
    bold: bool
    left: float
    right: float
    baseline: float

    @property
    def top(self) -> float:
        return self.baseline - CAPITAL * self.points * MM_PER_POINT

    @property
    def bottom(self) -> float:
        return self.baseline + DESCENT * self.points * MM_PER_POINT


@cache
def letters(file: Path) -> list[list[Letter]]:
    """Return the letters of every page, in the order in which they were set."""
    return [[_letter(char, page) for char in _chars(page)] for page in as_set(file)]


@cache
def as_set(file: Path) -> list[LTPage]:
    """Return the pages with their contents in the order in which they were set, not put in another order."""
    resources = PDFResourceManager()
    device = PDFPageAggregator(resources, laparams=None)
    interpreter = QuickInterpreter(resources, device)
    pages = []
    with file.open("rb") as stream:
        for page in PDFPage.get_pages(stream):
            interpreter.process_page(page)
            pages.append(device.get_result())
    return pages


def _letter(char: LTChar, page: LTPage) -> Letter:
    return Letter(
        char.get_text(),
        char.size,
        char.fontname,
        (char.x0 - page.x0) * MM_PER_POINT,
        (char.x1 - page.x0) * MM_PER_POINT,
        (page.y1 - char.matrix[5]) * MM_PER_POINT,
        char.matrix,
        char.graphicstate.ncolor,
    )


def _chars(container: Any) -> Iterator[LTChar]:
    for item in container:
        if isinstance(item, LTChar):
            yield item
        elif hasattr(item, "__iter__"):
            yield from _chars(item)


@cache
def runs(file: Path) -> list[list[Run]]:
    """Return the words of every page, put together from letters that follow each other on a line."""
    return [_joined(page) for page in letters(file)]


def _joined(page: list[Letter]) -> list[Run]:
    groups: list[list[Letter]] = []
    for letter in page:
        last = groups[-1][-1] if groups else None
        if (
            last is not None
            and abs(last.baseline - letter.baseline) < _SAME_LINE
            and last.font == letter.font
            and abs(last.points - letter.points) < 0.01
            and -_KERN < (letter.left - last.right) / (letter.points * MM_PER_POINT) < _WORD_GAP
        ):
            groups[-1].append(letter)
        else:
            groups.append([letter])
    return [_run(group) for group in groups]


def _run(group: list[Letter]) -> Run:
    text = group[0].text
    for before, letter in pairwise(group):
        text += (" " if letter.left - before.right > 0.1 * letter.points * MM_PER_POINT else "") + letter.text
    first = group[0]
    return Run(text, first.points, "Bold" in first.font, first.left, group[-1].right, first.baseline)


def squeezed(text: str) -> str:
    """Return the text without any white space: what is left must be there letter by letter."""
    return re.sub(r"\s", "", text)


@cache
def page_texts(file: Path) -> list[str]:
    """Return the text of every page as a PDF library reads it, without white space."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(ContentStream, "_parse_content_stream", parse_quickly)
        return [squeezed(page.extract_text()) for page in pypdf.PdfReader(file).pages]


def flowing(file: Path, plan_id: str, heads: list[str]) -> str:
    """Return the whole card's text without white space and without what is repeated from page to page.

    Each page must end with its foot, and each but the first begin with ``heads``; both are asserted.
    """
    texts = page_texts(file)
    return "".join(_inner(text, number, len(texts), plan_id, heads) for number, text in enumerate(texts, start=1))


def _inner(text: str, number: int, count: int, plan_id: str, heads: list[str]) -> str:
    foot = squeezed(f"{words.PLAN} {plan_id}{words.page_of(number, count)}{words.RULER}")
    assert text.endswith(foot), text[-80:]
    inner = text.removesuffix(foot)
    if number == 1:
        return inner
    for head in heads:
        assert inner.startswith(squeezed(head)), inner[:80]
        inner = inner.removeprefix(squeezed(head))
    for again in (words.HANDLING, words.STOP, words.NOTE, words.GIVEN_TITLE):
        inner = inner.removeprefix(squeezed(again))
    return re.sub(rf"^{squeezed(words.GOES_ON)}[\d.,]+mL", "", inner)
