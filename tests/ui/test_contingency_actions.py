"""The contingency cards from the window: all four saved or printed with one press, and never of what is no plan."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QSettings
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo
from PySide6.QtWidgets import QLabel

from evenwater.card.output import lay_out
from evenwater.card.paper import PAPERS
from evenwater.ui.contingency_actions import NO_PLAN, ContingencyActions
from tests.ui.window_making import opened, reckoned, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")


@pytest.fixture
def own_settings(tmp_path: Path):
    QSettings.setDefaultFormat(QSettings.Format.IniFormat)
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path))
    yield
    QSettings.setDefaultFormat(QSettings.Format.NativeFormat)


def actions_of(sheet) -> ContingencyActions:
    found = sheet.findChildren(ContingencyActions)
    assert len(found) == 1
    return found[0]


def pages(preview) -> list[QLabel]:
    labels = preview.findChildren(QLabel)
    return [label for label in labels if label.isVisibleTo(preview) and not label.pixmap().isNull()]


def words_of(file: Path) -> str:
    return " ".join(" ".join(page.extract_text() for page in PdfReader(file).pages).split())


def test_one_press_opens_all_four_and_one_more_saves_them(qtbot, own_settings, tmp_path: Path):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    assert actions.show.isVisible()
    assert actions.show.text() == "&Contingency cards"
    assert not actions.save.isVisible(), "it stands in the cards' own window"
    actions.show.click()
    preview = actions._preview
    assert preview.windowTitle() == "Contingency cards"
    assert actions.save.isVisibleTo(preview)
    assert actions.print.isVisibleTo(preview)
    assert len(preview.card.cards) == 4
    assert len(pages(preview)) == len(lay_out(actions.cards(), PAPERS[preview.papers.combo.current_id()]))

    asked = []
    actions._dialogs.save_pdf = lambda name, then, title: asked.append((name, then, title))
    actions.save.click()
    ((name, then, title),) = asked
    plan = actions.cards().plan_id
    assert name == f"contingency cards {plan}.pdf"
    assert title == "Save contingency cards as PDF"
    file = tmp_path / name
    then(file)
    text = words_of(file)
    for said in (
        "The test reads high",
        "Two days were missed",
        "The pump failed",
        "A new batch goes into the jug",
        plan,
    ):
        assert said in text
    told = f"Contingency cards of plan {plan} saved as {name}. Hang them beside its dose card."
    assert sheet.header.told.text() == told
    assert told in [label.text() for label in preview.findChildren(QLabel) if label.isVisibleTo(preview)]
    assert window.opening().document().cards() == [], "they carry the plan's id; only the dose card is registered"
    window.close()
    assert not preview.isVisible()


def test_they_are_of_the_plan_whose_dose_card_is_made(qtbot, own_settings):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    cards = actions.cards()
    plan = actions._plan
    assert cards.plan_id == plan.plan_id
    whole = plan.card(actions._now, "", "")
    assert {one.identity.valid_until for one in cards.cards} == {whole.valid_until}
    assert {one.identity.issued for one in cards.cards} == {whole.issued}
    window.close()


def test_every_paper_is_shown_and_kept_for_the_dose_card_as_well(qtbot, own_settings):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    actions.show.click()
    preview = actions._preview
    for name, paper in PAPERS.items():
        preview.papers.chosen.emit(name)
        image = pages(preview)[0].pixmap()
        assert image.width() / image.height() == pytest.approx(paper.width / paper.height, rel=0.01)
        assert QSettings().value("paper") == name
    window.close()


def test_H34_no_cards_of_what_is_no_plan(qtbot, own_settings, tmp_path: Path):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    actions.show.click()
    preview = actions._preview
    first = actions.cards().plan_id
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    type_into(sheet, "change.target", "8.2")
    reckoned(sheet, qtbot)
    assert actions.cards().plan_id != first
    qtbot.waitUntil(lambda: preview.card is not None and preview.card.plan_id == actions.cards().plan_id, timeout=3000)

    type_into(sheet, "change.target", "99")
    reckoned(sheet, qtbot)
    assert preview.card is None
    assert pages(preview) == []
    assert NO_PLAN in [label.text() for label in preview.findChildren(QLabel) if label.isVisibleTo(preview)]
    assert not any(button.isEnabled() for button in (actions.show, actions.save, actions.print))
    never = tmp_path / "never.pdf"
    actions.write(never)
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(never))
    actions.send(printer)
    assert not never.exists()

    type_into(sheet, "change.target", "8.4")
    reckoned(sheet, qtbot)
    assert actions.show.isEnabled()
    qtbot.waitUntil(lambda: len(pages(preview)) > 0, timeout=3000)
    window.close()


def test_between_a_key_and_the_reckoning_nothing_is_written(qtbot, own_settings, tmp_path: Path):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    sheet._question_changed()
    assert actions.cards() is None
    never = tmp_path / "never.pdf"
    actions.write(never)
    assert not never.exists()
    reckoned(sheet, qtbot)
    actions.write(never)
    assert never.exists()
    window.close()


def test_a_file_that_cannot_be_written_and_a_missing_printer_are_said(qtbot, own_settings, tmp_path: Path, monkeypatch):
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", staticmethod(list))
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    actions.show.click()
    actions.write(tmp_path / "no such folder" / "cards.pdf")
    assert "could not be written" in sheet.header.told.text()
    actions.print.click()
    assert sheet.header.told.text() == "No printer is set up on this computer. Save the cards as PDF instead."
    window.close()


def test_printed_with_one_press(qtbot, own_settings, tmp_path: Path):
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    actions = actions_of(sheet)
    actions.show.click()
    actions.set_paper("A5")
    asked = []
    actions._dialogs.printer = lambda then: asked.append(then) or True
    actions.print.click()
    (then,) = asked
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    then(printer)
    assert "The pump failed" in words_of(tmp_path / "printed.pdf")
    assert "sent to the printer" in sheet.header.told.text()
    window.close()
