"""The jug's label from the window: as a PDF, on every paper in its own window, and never of what is no stock."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QSettings
from PySide6.QtGui import QImage
from PySide6.QtPrintSupport import QPrinterInfo
from PySide6.QtWidgets import QLabel

from evenwater.card.label_paper import LABEL_PAPERS
from evenwater.card.output import lay_out
from evenwater.screens import plan_id
from tests.screens.asked import catalogue
from tests.screens.batches import SODA
from tests.ui.stocks_making import ASH, CALCIUM_JUG, click, document_of, settled, show_jug, typed_in
from tests.ui.window_making import opened, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def own_settings(tmp_path: Path):
    QSettings.setDefaultFormat(QSettings.Format.IniFormat)
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path))
    yield
    QSettings.setDefaultFormat(QSettings.Format.NativeFormat)


def words_of(file: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).split())


def test_the_saved_label_says_what_a_jug_must_say(qtbot, own_settings, tmp_path: Path):
    window = opened(None, qtbot, demo=True)
    stocks = show_jug(window, ASH, qtbot)
    type_into(stocks, "batch.mixed_on", "2026-11-21")
    type_into(stocks, "batch.use_by", "2027-02-19")
    settled(stocks, qtbot)
    file = tmp_path / "label.pdf"
    stocks.label_actions.write(file)
    text = words_of(file)
    soda = catalogue().chemicals[SODA]
    for said in (
        ASH, soda.tall_man, soda.signal_word, *soda.statements, "dissolved 106 g per 1 L", "Sat 21 Nov 2026",
        "Fri 19 Feb 2027", "K. L.", plan_id.batch_code(stocks.records.batch), "Keep away from children",
    ):  # fmt: skip
        assert said in text.replace("\u00a0", " "), said
    assert re.search(r"H\d{3}", text)
    assert stocks.header.told.text() == "Label saved as label.pdf."
    assert document_of(window).cards() == [], "a label is no card"
    for name, paper in LABEL_PAPERS.items():
        stocks.label_actions.set_paper(name)
        stocks.label_actions.write(file)
        box = PdfReader(file).pages[0].mediabox
        assert float(box.width) / 72.0 * 25.4 == pytest.approx(paper.width, abs=0.5), name

    type_into(stocks, "batch.dissolved", "300")
    settled(stocks, qtbot)
    never = tmp_path / "never.pdf"
    stocks.label_actions.write(never)
    assert not never.exists(), "what cannot be made has no label"
    type_into(stocks, "batch.dissolved", "106")
    settled(stocks, qtbot)
    stocks.label_actions.write(tmp_path / "no such folder" / "label.pdf")
    assert "could not be written" in stocks.header.told.text()


def pages(preview) -> list[QImage]:
    shown = [
        label for label in preview.findChildren(QLabel) if label.isVisibleTo(preview) and not label.pixmap().isNull()
    ]
    return [label.pixmap().toImage() for label in shown]


def test_the_labels_window_shows_every_page_on_every_paper(qtbot, own_settings):
    window = opened(None, qtbot, demo=True)
    stocks = show_jug(window, "Magnesium, tall jug", qtbot)
    click(stocks.label_actions.show)
    preview = stocks.label_actions._preview
    assert preview is not None
    assert preview.windowTitle() == "Jug label"
    assert {preview.papers.combo.itemText(n) for n in range(preview.papers.combo.count())} == set(LABEL_PAPERS)
    for name, paper in LABEL_PAPERS.items():
        preview.papers.chosen.emit(name)
        images = pages(preview)
        assert len(images) == len(lay_out(stocks.label_actions.label, paper))
        assert images[0].width() / images[0].height() == pytest.approx(paper.width / paper.height, rel=0.01)
        assert stocks.label_actions.paper().name == name, "the paper is kept for the next label"
    preview.mono.setChecked(True)
    for image in pages(preview):
        colours = {image.pixel(x, y) for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)}
        assert len(colours) == 2
    spoken = [label.accessibleName() for label in preview.findChildren(QLabel) if label.accessibleName()]
    assert spoken[0] == f"Page 1 of {len(images)}: Magnesium, tall jug"

    # It follows the jug and the batch that are shown.
    first = preview.card
    show_jug(window, CALCIUM_JUG, qtbot)
    assert preview.card.name == CALCIUM_JUG
    assert preview.card.contents != first.contents
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    type_into(stocks, "batch.dissolved", "150")
    settled(stocks, qtbot)
    assert "150" in preview.card.strength
    assert typed_in(stocks, "dissolved").text == "150"
    window.close()
    assert not preview.isVisible()


def test_a_label_that_does_not_hold_any_more_is_not_shown_on(qtbot, own_settings):
    window = opened(None, qtbot, demo=True)
    stocks = show_jug(window, ASH, qtbot)
    click(stocks.label_actions.show)
    preview = stocks.label_actions._preview
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    type_into(stocks, "batch.dissolved", "300")
    settled(stocks, qtbot)
    assert stocks.label_actions.label is None
    assert not preview.isVisible() or pages(preview) == [], "an old label must not be taken for the batch that is shown"
    window.close()


def test_without_a_printer_the_keeper_is_sent_to_the_pdf(qtbot, monkeypatch):
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", staticmethod(list))
    window = opened(None, qtbot, demo=True)
    stocks = show_jug(window, ASH, qtbot)
    click(stocks.label_actions.print)
    assert stocks.header.told.text() == "No printer is set up on this computer. Save the label as PDF instead."
