"""The answer: the figure on its baseline, cautions first, refusals with offers, greyed when it no longer holds."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from evenwater.screens.views import AnswerView, Bar, Message, Offer, WorkLine
from evenwater.ui.answer_panel import STALE, AnswerPanel, WorkTable
from evenwater.ui.theme import LIGHT, palette_for

OFFER = Offer("It was 140 ppm as CaCO3", "140", "ppm as CaCO3")
ANSWER = AnswerView(
    "answered",
    "4.8",
    "mL per hour",
    "for 1 day 14 h",
    "4.8 mL each hour (12 s)",
    "The daily rise sets the pace",
    bars=(
        Bar("rise", "Daily rise", "1.0 of 1.0 dKH", 1.0, binds=True),
        Bar("dose", "Single dose", "0.1 of 0.4 dKH", 0.25),
        Bar("jug", "Jug", "249 of 1000 mL", 0.249),
        Bar("share", "Pump's share", "1 of 50 %", 0.02),
    ),
    working=(WorkLine("Strength", "106 g in 1 L", "2.0 meq per mL"), WorkLine("Needed", "1.9 dKH", "115 mL")),
    cautions=("Wear goggles.", "Salt into water, slowly."),
    side_effects=(WorkLine("Sodium with the correction", "carried in by 115 mL of stock", "16 mg per L"),),
    remarks=("The reading is 2 days old.",),
    spoken="4.8 mL per hour for 1 day 14 h",
)
REFUSED = AnswerView(
    "refused", messages=(Message("140 dKH is not likely.", "change.measured", "implausible", (OFFER,)),)
)
EMPTY = AnswerView("empty", messages=(Message("Fill in what was measured."),))


@pytest.fixture
def panel(qapp: QApplication, qtbot) -> AnswerPanel:
    # A window of another test may have dressed the application; its sheet would keep a new font from the parts.
    qapp.setStyleSheet("")
    made = AnswerPanel()
    qtbot.addWidget(made)
    made.setPalette(palette_for(LIGHT))
    made.resize(640, 460)
    made.show()
    return made


def test_an_answer_shows_figure_second_line_and_bars(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    assert panel._figure.text == "4.8 mL per hour"
    assert panel._figure.accessibleName() == "4.8 mL per hour"
    assert panel._figure.accessibleDescription() == ANSWER.spoken
    assert panel._second.text() == "for 1 day 14 h"
    assert panel._bars.isVisible()
    assert not panel._messages.isVisible()


def test_figure_and_unit_stand_on_one_baseline(panel: AnswerPanel, qtbot) -> None:
    panel.render(AnswerView("answered", "LL", "LL"))
    # The row gives the figure its new width with the next turn of the event loop.
    qtbot.waitUntil(lambda: panel._figure.width() == panel._figure.sizeHint().width())
    image = panel._figure.grab().toImage()
    ground = image.pixelColor(image.width() - 1, 0)
    inked = [x for x in range(image.width()) if any(image.pixelColor(x, y) != ground for y in range(image.height()))]
    gap = max(range(1, len(inked)), key=lambda n: inked[n] - inked[n - 1])

    def lowest(columns: list[int]) -> int:
        return max(y for x in columns for y in range(image.height()) if image.pixelColor(x, y) != ground)

    assert inked[gap] - inked[gap - 1] > 8, "the gap between figure and unit"
    assert abs(lowest(inked[:gap]) - lowest(inked[gap:])) <= 1


def test_L27_what_is_missing_is_two_dashes_never_a_number(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    for view in (REFUSED, EMPTY):
        panel.render(view)
        assert panel._figure.text == "--"
        assert panel._figure.accessibleName() == "No figure yet"


def test_cautions_stand_before_the_numbers(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    caution, figure = panel._cautions, panel._figure
    assert caution.label.text() == "Wear goggles. Salt into water, slowly."
    assert caution.sign.isVisible()
    assert caution.geometry().bottom() < figure.geometry().top()


def test_a_refusal_has_sign_sentence_and_offer(panel: AnswerPanel, qtbot) -> None:
    panel.render(REFUSED)
    row = panel._messages._rows[0]
    assert row.sign.isVisible()
    assert row.label.text() == "140 dKH is not likely."
    (button,) = row.buttons()
    with qtbot.waitSignal(panel.offerChosen) as heard:
        QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert heard.args == [("change.measured", OFFER)]


def test_what_is_still_to_fill_in_is_no_alarm(panel: AnswerPanel) -> None:
    panel.render(REFUSED)
    panel.render(EMPTY)
    row = panel._messages._rows[0]
    assert row.label.text() == "Fill in what was measured."
    assert not row.sign.isVisible()
    assert row.buttons() == []


def test_a_stale_answer_is_grey_says_so_and_offers_nothing(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    panel.set_stale(True)
    assert panel._status.text() == STALE
    assert panel._status.isEnabled(), "the words themselves are not greyed"
    assert not panel.how.isEnabled()
    image = panel._figure.grab().toImage()
    blue = LIGHT.blue.lower()
    assert not any(image.pixelColor(x, y).name() == blue for x in range(60) for y in range(image.height()))
    panel.render(ANSWER)
    assert panel._status.text() == ""
    assert panel.how.isEnabled()


def test_nothing_there_cannot_go_stale(panel: AnswerPanel) -> None:
    panel.render(EMPTY)
    panel.set_stale(True)
    assert not panel.is_stale


def written(table: WorkTable) -> list[str]:
    return [label.text() for row in table._rows for label in row if label.isVisible()]


def test_only_near_limits_stand_in_rows_and_the_others_are_named(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    assert [bar.code for bar in panel._bars.bars] == ["rise", "dose"], "from a quarter of the limit on"
    assert panel._far.text() == "Far from their limits: jug, pump's share"
    near = replace(ANSWER, bars=ANSWER.bars[:2])
    panel.render(near)
    assert not panel._far.isVisible()
    # What binds or is passed stands in a row, however the figures are.
    odd = (Bar("jug", "Jug", "0 of 0 mL", 0.0, binds=True), Bar("dose", "Single dose", "0 of 0", 0.0, over=True))
    panel.render(replace(ANSWER, bars=odd))
    assert panel._bars.bars == odd
    panel.render(REFUSED)
    assert not panel._bars.isVisible()
    assert not panel._far.isVisible()


def test_the_working_shows_every_limit_and_the_arithmetic(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    QTest.mouseClick(panel.how, Qt.MouseButton.LeftButton)
    assert written(panel._work) == ["Strength", "106 g in 1 L", "2.0 meq per mL", "Needed", "1.9 dKH", "115 mL"]
    assert panel._bars.bars == ANSWER.bars
    assert not panel._far.isVisible()
    assert panel.how.text() == "Hide the working"
    panel.render(AnswerView("answered", "3", "mL per hour", working=(WorkLine("a", "b", "c"),)))
    assert written(panel._work) == ["a", "b", "c"]
    QTest.mouseClick(panel.how, Qt.MouseButton.LeftButton)
    panel.render(ANSWER)
    assert len(panel._bars.bars) == 2
    assert not panel._work.isVisible()
    assert panel.how.text() == "How this was worked out"


def test_what_sets_the_pace_is_said_where_no_row_says_it(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    assert not panel._set_by.isVisible(), "the row that binds says it itself"
    panel.render(replace(ANSWER, bars=ANSWER.bars[1:]))
    assert panel._set_by.isVisible()
    assert panel._set_by.text() == "The daily rise sets the pace"


def test_what_else_it_does_is_shown_on_demand_and_only_where_there_is_something(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    assert panel.besides.isVisible()
    assert not panel._besides.isVisible()
    panel.besides.setFocus()
    QTest.keyClick(panel.besides, Qt.Key.Key_Space)
    assert written(panel._besides) == ["Sodium with the correction", "carried in by 115 mL of stock", "16 mg per L"]
    assert panel.besides.text() == "Hide what else it does"
    assert not panel._work.isVisible(), "the other button is not meant"
    panel.set_stale(True)
    assert not panel.besides.isEnabled()
    panel.render(replace(ANSWER, side_effects=()))
    assert not panel.besides.isVisible()
    assert not panel._besides.isVisible()
    panel.render(ANSWER)
    assert written(panel._besides), "it stays open for the next answer"


def test_the_buttons_stand_beside_the_figure(panel: AnswerPanel, qtbot) -> None:
    panel.render(ANSWER)
    qtbot.waitUntil(lambda: panel._figure.width() == panel._figure.sizeHint().width())
    figure = panel._figure.geometry()
    for button in (panel.how, panel.besides):
        left_top = button.mapTo(panel._body, button.rect().topLeft())
        assert left_top.x() > figure.right()
        assert left_top.y() < figure.bottom()
        assert button.width() >= button.sizeHint().width()


def test_without_working_there_is_nothing_to_ask(panel: AnswerPanel) -> None:
    panel.render(REFUSED)
    assert not panel.how.isEnabled()


def test_showing_answers_again_and_again_makes_no_new_widgets(panel: AnswerPanel) -> None:
    for view in (ANSWER, REFUSED, EMPTY):
        panel.render(view)
    before = len(panel.findChildren(object))
    for _ in range(50):
        for view in (ANSWER, REFUSED, EMPTY):
            panel.render(view)
    assert len(panel.findChildren(object)) == before


def test_the_figure_grows_with_the_font(panel: AnswerPanel) -> None:
    panel.render(ANSWER)
    before = panel._figure.sizeHint()
    font = panel.font()
    font.setPointSizeF(font.pointSizeF() * 1.5)
    panel.setFont(font)
    assert panel._figure.sizeHint().height() > 1.35 * before.height()
