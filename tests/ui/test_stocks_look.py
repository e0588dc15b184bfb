"""What the Stocks sheet looks like: nothing cut off in a narrow window or in large letters, names, order of the focus."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QListView, QPushButton, QWidget
from pytestqt.exceptions import TimeoutError as NotInTimeError

from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import apply_theme
from tests.ui.clipping import clipped
from tests.ui.stocks_making import ASH, click, new_batch, settled, show_jug, stocks_of, to_sheet
from tests.ui.window_making import choose, focus_walk, opened, reckoned, room_of, sheet_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")

MIX = "magnesium CHLORide and SULFate, as in seawater"


@pytest.fixture(
    params=[(11.0, 1000, 700), (16.5, 1366, 768), (11.0, 1366, 768)], ids=["narrow", "large letters", "usual"]
)
def window(request: pytest.FixtureRequest, qapp: QApplication, qtbot) -> Iterator[MainWindow]:
    points, width, height = request.param
    font = qapp.font()
    font.setPointSizeF(points)
    qapp.setFont(font)
    made = opened(None, qtbot, demo=True)
    made.resize(width, height)
    reckoned(sheet_of(made), qtbot)
    yield made
    made.close()
    font.setPointSizeF(11.0)
    qapp.setFont(font)
    apply_theme(qapp, font.family(), base_points=11.0)


def laid_out(window: MainWindow, qtbot) -> list[str]:
    """Return what is still cut off when the layouts have had time to settle."""
    try:
        qtbot.waitUntil(lambda: not clipped(window), timeout=3000)
    except NotInTimeError:
        return clipped(window)
    return []


def test_nothing_is_cut_off(window: MainWindow, qtbot):
    room = room_of(window)
    stocks = stocks_of(window, qtbot)
    for jug in room.jugs.list.model().stringList():
        show_jug(window, jug, qtbot)
        assert laid_out(window, qtbot) == [], jug
    new_batch(window, ASH, qtbot)
    choose(stocks, "batch.recipe", "I want a strength")
    type_into(stocks, "batch.wanted_dose", "1")
    type_into(stocks, "batch.wanted_water", "100")
    type_into(stocks, "batch.wanted_raises", "0.1")
    assert laid_out(window, qtbot) == [], "a recipe"
    choose(stocks, "batch.contents", MIX)
    type_into(stocks, "batch.wanted_raises", "0.4 mg/L")
    settled(stocks, qtbot)
    assert stocks.answer.view.state == "answered"
    assert laid_out(window, qtbot) == [], "a mix to weigh out"
    choose(stocks, "batch.contents", "sodium CARBonate anhydrous")
    type_into(stocks, "batch.wanted_raises", "0.3 dKH")
    type_into(stocks, "batch.use_by", "in the spring")
    settled(stocks, qtbot)
    assert stocks.answer.view.state == "refused"
    assert laid_out(window, qtbot) == [], "a refusal"
    to_sheet("Correct")
    for parameter in ("Calcium", "Alkalinity"):
        choose(room.sheet, "change.parameter", parameter)
        reckoned(room.sheet, qtbot)
        assert laid_out(window, qtbot) == [], f"the Correct sheet, {parameter}"


def row_of(widget: QWidget, step: QWidget) -> int:
    """Return how far down in its step a control stands, as part of its field [px]."""
    field = widget
    while field.parentWidget() is not step:
        field = field.parentWidget()
    return field.y()


def test_every_control_has_a_name_and_its_turn(qtbot):
    window = opened(None, qtbot, demo=True)
    stocks = new_batch(window, ASH, qtbot)
    choose(stocks, "batch.recipe", "I want a strength")
    for field, text in (("dose", "1"), ("water", "100"), ("raises", "0.1")):
        type_into(stocks, f"batch.wanted_{field}", text)
    settled(stocks, qtbot)
    stocks.form.again.setFocus()
    reached = focus_walk(window)
    for control in stocks.findChildren(QWidget):
        takes = isinstance(control, QLineEdit | QComboBox | QPushButton | QListView)
        if takes and control.isVisible() and control.isEnabled():
            assert control in reached, f"Tab does not reach {control.accessibleName() or control.text()}"
            assert control.accessibleName() or control.text(), control
    # Names are told apart: two fields with one name cannot be found by ear.
    fields = [w.accessibleName() for w in reached if isinstance(w, QLineEdit | QComboBox) and stocks.isAncestorOf(w)]
    assert len(fields) == len(set(fields))
    # From above to below within the form, then the answer, then the batches, then the lists at the left.
    form = [w for w in reached if stocks.form.isAncestorOf(w)]
    steps = [next(n for n, step in enumerate(stocks.form.steps) if step.isAncestorOf(w)) for w in form]
    assert steps == sorted(steps)
    for number, step in enumerate(stocks.form.steps):
        rows = [row_of(w, step) for w, n in zip(form, steps, strict=True) if n == number]
        assert rows == sorted(rows), step
    order = [form[-1], stocks.answer.how, stocks.batches]
    assert [reached.index(w) for w in order] == sorted(reached.index(w) for w in order)


def test_pictures_have_words_beside_them(qtbot):
    window = opened(None, qtbot, demo=True)
    stocks = show_jug(window, ASH, qtbot)
    assert stocks.answer._figure.accessibleName() == "2 meq per mL"
    assert stocks.answer._figure.accessibleDescription().startswith("2\u00a0meq per mL. of alkalinity")
    assert "dissolved" in stocks.answer._bars.accessibleDescription().lower()
    assert stocks.batches.accessibleName() == "Batches of this jug"
    click(stocks.answer.how)
    lines = [label.text() for row in stocks.answer._work._rows for label in row if label.isVisible()]
    assert lines[:3] == ["Alkalinity", "in a litre", "2000\u00a0meq per L"]
    assert stocks.answer.how.text() == "Hide the working"
    assert not stocks.answer.besides.isVisible()
