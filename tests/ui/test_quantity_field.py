"""The quantity field, on the real widget with real keys. Hazards by their number in the hazard table."""

from __future__ import annotations

import random
import re
from collections.abc import Iterator
from decimal import Decimal

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialog, QDoubleSpinBox, QPushButton, QVBoxLayout, QWidget

from evenwater.engine import fields
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Field
from evenwater.screens.views import Message, Offer
from evenwater.ui.quantity_field import QuantityField
from tests.ui.quantity_making import ALKALINITY, CALCIUM, Heard, Make, enter, enter_text, type_in, wheel_over

WIDE = Field("test.amount", "mass", "g", 0.0, 1e9)
LOCALES = ("en_US", "en_GB", "de_DE", "de_CH", "fr_FR", "it_IT", "pt_BR", "sv_SE", "pl_PL", "ar_EG", "fa_IR", "hi_IN")


def test_what_is_typed_is_said_on_each_key_and_kept(make: Make) -> None:
    field = make()
    heard = Heard(field)
    type_in(field, "6,8")
    assert [t.text for t in heard.edits] == ["6", "6,", "6,8"]
    assert field.state == "typing"
    assert heard.commits == 0
    enter(field)
    assert heard.commits == 1
    assert field.typed() == Typed("6,8", "dKH")
    assert (field.state, field.line.text()) == ("ok", "6,8")


def test_H1_a_reading_in_another_scale_is_relabelled_only_by_its_own_action(make: Make) -> None:
    field = make()
    type_in(field, "140")
    enter(field)
    offer = Offer("It was 140 ppm as CaCO3", "140", "ppm as CaCO3")
    field.set_message(Message("140 dKH is not a likely reading.", offers=(offer,)))
    assert field.typed() == Typed("140", "dKH"), "a refusal changes nothing by itself"
    heard = Heard(field)
    button = field.slip.row.buttons()[0]
    assert button.text() == "It was 140 ppm as CaCO3"
    button.click()
    assert heard.edits == [Typed("140", "ppm as CaCO3")]
    assert field.units.currentText() == "ppm as CaCO3"


def test_H2_one_time_base_stands_beside_a_rate(make: Make) -> None:
    field = make(Field("change.daily_use", "alkalinity per day", "dKH per day", 0.0, 15.0))
    words = [text for _, text in field.units.options()]
    assert words
    assert all(text.endswith("per day") for text in words)


def test_H3_a_bare_gallon_is_asked_about(make: Make) -> None:
    field = make(fields.NET_VOLUME)
    type_in(field, "90 gal")
    enter(field)
    assert field.state == "error"
    assert "US gal" in field.message
    assert "imperial gal" in field.message
    assert field.line.text() == "90 gal"


# H4: 10-fold and 100-fold slips by decimal marks


def strings(count: int) -> list[str]:
    """Return numbers as people type them: any mark, any length, sound and unsound."""
    draw = random.Random(20261125)
    made = []
    for _ in range(count):
        whole = draw.choice(
            ["0", "00", "", str(draw.randint(1, 9)), str(draw.randint(10, 999)), str(draw.randint(1000, 99999))]
        )
        part = "".join(draw.choices("0123456789", k=draw.randint(1, 5)))
        mark = draw.choice(".,.,.,.,' _")
        made.append(
            draw.choice(
                [
                    whole or "7",
                    f"{whole}{mark}{part}",
                    f"{whole}{mark}{part}",
                    f"{whole}{mark}{part}",
                    f"{whole}{mark}",
                    f"{whole}{mark}{part}{mark}{part}",
                    f"{whole}{mark}{part} g",
                    f"{whole}{mark}{part}mg",
                    f"{whole or '3'}e{part[0]}",
                ]
            )
        )
    return made


def meaning(text: str) -> Decimal | None:
    """Return the one number a text can mean, reckoned without the product's reader; None when it means none or two."""
    match = re.fullmatch(r"([0-9]*)(?:[.,]([0-9]+))?( ?(?:g|mg))?", text.strip())
    if match is None or not (match[1] or match[2]):
        return None
    if match[2] and len(match[2]) == 3 and re.fullmatch("[1-9][0-9]{0,2}", match[1]):
        return None
    return Decimal(f"{match[1] or '0'}.{match[2] or '0'}")


@pytest.fixture(params=LOCALES)
def locale(request: pytest.FixtureRequest) -> Iterator[QLocale]:
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield QLocale()
    QLocale.setDefault(before)


def test_H4_nothing_is_dropped_or_moved_by_a_decimal_mark(make: Make, locale: QLocale) -> None:
    field = make(WIDE)
    for n, text in enumerate(strings(5000)):
        enter_text(field, text, by_keys=n % 100 == 0)
        assert field.typed().text == text, "every character is kept as typed"
        wanted = meaning(text)
        if wanted is None:
            assert field.state in ({"ask", "error"} if text.strip() else {"empty"}), text
            assert field.line.text() == text
        else:
            assert field.state == "ok", text
            assert Decimal(field.line.text().replace(",", ".")) == wanted, text


def test_H4_the_stock_number_box_fails_the_same_strings(page: QWidget, locale: QLocale) -> None:
    box = QDoubleSpinBox(page)
    box.setLocale(locale)
    box.setRange(0, 1e9)
    box.setDecimals(6)
    page.layout().addWidget(box)
    page.show()
    silent = []
    for text in strings(300):
        wanted = meaning(text)
        box.setValue(0)
        box.lineEdit().clear()
        QTest.keyClicks(box.lineEdit(), text)
        QTest.keyClick(box.lineEdit(), Qt.Key.Key_Return)
        if wanted is None or abs(Decimal(box.value()) - wanted) > Decimal("1e-5") * (1 + wanted):
            silent.append(text)  # it always ends with some number, and says nothing
    assert silent, "if the stock box were sound, this field would not be needed"


@pytest.mark.parametrize(("text", "numbers"), [("1,250", ["1.25", "1250"]), ("1.250", ["1.25", "1250"])])
def test_H4_a_thousand_or_a_decimal_is_asked_with_both_readings(make: Make, text: str, numbers: list[str]) -> None:
    field = make(CALCIUM)
    type_in(field, text)
    enter(field)
    assert field.state == "ask"
    buttons = field.slip.row.buttons()
    assert [b.text().split("\u00a0")[0] for b in buttons] == numbers
    heard = Heard(field)
    QTest.keyClick(buttons[1], Qt.Key.Key_Return)
    assert heard.edits == [Typed("1250", "mg/L")]
    assert (field.state, field.slip.isVisible()) == ("ok", False)
    assert field.line.hasFocus()


def test_H5_a_number_out_of_range_stays_and_is_refused(make: Make) -> None:
    field = make(Field("system.volume_uncertainty", "share", "%", 0.0, 50.0))
    type_in(field, "120")
    enter(field)
    assert (field.typed().text, field.line.text(), field.state) == ("120", "120", "error")
    assert "50" in field.message


def test_H5_letters_and_further_decimals_stay(make: Make) -> None:
    field = make()
    for text in ("6.8x", "6.812345", "abc"):
        enter_text(field, text, by_keys=True)
        assert field.typed().text == text


def test_H27_a_converted_figure_is_only_shown(make: Make) -> None:
    field = make(fields.NET_VOLUME)
    type_in(field, "75 US gal")
    enter(field)
    for unit in ("L", "mL", "imperial gal", "L", "US gal") * 20:
        field.units.setCurrentIndex([u for u, _ in field.units.options()].index(unit))
        field.units.activated.emit(field.units.currentIndex())
    assert field.typed().text == "75 US gal"
    assert field.line.text() == "75"


def test_H28_focus_in_and_out_a_thousand_times_changes_nothing(make: Make) -> None:
    field = make()
    other = make(ALKALINITY, "Other")
    field.set_typed(Typed("2.4 meq/L", "dKH", "ppm as CaCO3"))
    shown = field.line.text()
    heard = Heard(field)
    for _ in range(1000):
        field.line.setFocus()
        other.line.setFocus()
    assert field.typed() == Typed("2.4 meq/L", "dKH", "ppm as CaCO3")
    assert field.line.text() == shown
    assert (heard.edits, heard.commits) == ([], 0)


def test_H29_the_wheel_changes_neither_number_nor_unit(make: Make) -> None:
    field = make()
    type_in(field, "6.8")
    enter(field)
    heard = Heard(field)
    assert not wheel_over(field.line).isAccepted(), "the page may scroll"
    assert not wheel_over(field.units).isAccepted()
    assert (field.line.text(), field.units.current_id(), heard.edits) == ("6.8", "dKH", [])


def test_H29_enter_commits_and_presses_nothing(qtbot) -> None:
    dialog = QDialog()
    qtbot.addWidget(dialog)
    column = QVBoxLayout(dialog)
    field = QuantityField("Measured", ALKALINITY, parent=dialog)
    printing = QPushButton("Print card", dialog)
    printing.setDefault(True)
    column.addWidget(field)
    column.addWidget(printing)
    pressed: list[bool] = []
    printing.clicked.connect(pressed.append)
    dialog.show()
    field.line.setFocus()
    type_in(field, "6.8")
    heard = Heard(field)
    for key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
        QTest.keyClick(field.line, key)
    assert heard.commits == 2
    assert pressed == []
    assert dialog.isVisible()


@pytest.mark.parametrize("key", [Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown])
def test_H29_no_key_steps_a_number(make: Make, key: Qt.Key) -> None:
    field = make()
    type_in(field, "6.8")
    enter(field)
    QTest.keyClick(field.line, key)
    assert field.line.text() == "6.8"


def test_escape_takes_back_to_what_stood_there(make: Make) -> None:
    field = make()
    other = make(ALKALINITY, "Other")
    field.set_typed(Typed("6.8", "dKH"))
    field.line.setFocus()
    field.line.selectAll()
    type_in(field, "99")
    heard = Heard(field)
    QTest.keyClick(field.line, Qt.Key.Key_Escape)
    assert heard.edits == [Typed("6.8", "dKH")]
    assert field.line.text() == "6.8"
    other.line.setFocus()
    assert heard.commits == 0


@pytest.mark.parametrize("text", ["nan", "inf", "1e3", "1_000", "٣٫٥", "１２", "--5", "+5", "0x10", "6.8.8", "1 000"])
def test_H30_odd_numbers_are_refused_and_kept(make: Make, text: str) -> None:
    field = make(CALCIUM)
    enter_text(field, text, by_keys=False)
    assert field.state == "error"
    assert field.typed().text == text
    assert field.line.text() == text


@pytest.mark.parametrize(("text", "state"), [("1,5", "ok"), ("", "empty"), ("   ", "empty"), ("12abc34", "error")])
def test_H31_nothing_is_repaired(make: Make, text: str, state: str) -> None:
    field = make()
    enter_text(field, text, by_keys=False)
    assert field.state == state
    assert field.typed().text == text
    assert field.line.text() == text
