"""The card in one bit per pixel, as a copier or a laser printer makes it: everything is still there."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QImage

from evenwater.card.items import Fill, Stroke, Text
from evenwater.card.layout import lay_out
from evenwater.card.output import to_image, to_mono
from evenwater.card.paper import A4, A6, PAPERS, Paper
from tests.card import sample
from tests.card.conftest import Written

DPI = 200
PER_MM = DPI / 25.4
on_every_paper = pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)


def dark(image: QImage) -> np.ndarray:
    """Return how dark each pixel is, 0 for white to 1 for black, shape (height, width)."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), grey.bytesPerLine())
    return 1.0 - rows[:, : grey.width()].astype(float) / 255.0


def inside(pixels: np.ndarray, text: Text) -> np.ndarray:
    left, top, right, bottom = (round(edge * PER_MM) for edge in text.box)
    return pixels[top:bottom, left:right]


@on_every_paper
def test_L18_text_survives_one_bit(paper: Paper) -> None:
    view = sample.warned()
    for number, page in enumerate(lay_out(view, paper)):
        full = to_image(view, paper, number, DPI)
        grey, mono = dark(full), dark(to_mono(full))
        assert set(np.unique(mono)) == {0.0, 1.0}
        for text in (item for item in page.items if isinstance(item, Text)):
            ink = inside(mono, text).mean()
            assert 0.04 < ink < 0.6, text.words
            assert ink == pytest.approx(inside(grey, text).mean(), rel=0.25), text.words


def test_L18_lines_of_the_chart_survive_one_bit() -> None:
    pages = lay_out(sample.card(), A4)
    number = next(n for n, page in enumerate(pages) if any(getattr(item, "dash", ()) for item in page.items))
    mono = dark(to_image(sample.card(), A4, number, DPI, mono=True))
    for item in (item for item in pages[number].items if isinstance(item, Stroke) and len(item.points) > 20):
        seen = [mono[round(y * PER_MM) - 2 : round(y * PER_MM) + 3, round(x * PER_MM)].any() for x, y in item.points]
        # Of a solid line every point is seen; a dashed one keeps its gaps, else it could not be told apart.
        assert np.mean(seen) > 0.99 if not item.dash else 0.3 < np.mean(seen) < 0.98


def test_L18_warnings_are_word_border_and_symbol() -> None:
    for paper in PAPERS.values():
        items = [item for page in lay_out(sample.warned(), paper) for item in page.items]
        words = [item.words for item in items if isinstance(item, Text)]
        frames = [item for item in items if isinstance(item, Stroke) and item.closed and len(item.points) == 4]
        triangles = [item for item in items if isinstance(item, Stroke) and item.closed and len(item.points) == 3]
        marks = [item for item in items if isinstance(item, Fill) and len(item.points) == 4]
        assert {"STOP", "Note", "Handle with care"} <= set(words)
        assert len([item for item in frames if item.width >= 0.6]) >= 3
        assert len(triangles) >= 3
        assert len(marks) == 2 * len(triangles)


@pytest.mark.parametrize("paper", [A4, A6], ids=lambda paper: paper.name)
def test_preview_is_what_the_pdf_shows(written: Written, paper: Paper, tmp_path: Path) -> None:
    draw = shutil.which("pdftoppm")
    if draw is None:
        pytest.skip("pdftoppm is not installed")
    dpi = 100
    file = written("card", paper)
    subprocess.run([draw, "-r", str(dpi), "-gray", "-f", "1", "-l", "1", str(file), str(tmp_path / "page")], check=True)
    other = dark(QImage(str(next(tmp_path.glob("page*")))))
    ours = dark(to_image(sample.card(), paper, 0, dpi))
    height, width = min(ours.shape[0], other.shape[0]), min(ours.shape[1], other.shape[1])
    # Blurred to 2 mm, so that only ink in another place or of another amount counts, not antialiasing.
    coarse = [_coarse(picture[:height, :width], 8) for picture in (ours, other)]
    assert np.abs(coarse[0] - coarse[1]).max() < 0.25
    assert np.abs(coarse[0] - coarse[1]).mean() < 0.01


def _coarse(picture: np.ndarray, size: int) -> np.ndarray:
    height, width = (length // size * size for length in picture.shape)
    return picture[:height, :width].reshape(height // size, size, width // size, size).mean(axis=(1, 3))
