"""The quantity field: its unit list converts, relabelling is another action; what stands below and when."""

from __future__ import annotations

from PySide6.QtWidgets import QMenu, QWidget

from evenwater.engine import fields
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Field
from tests.ui.quantity_making import ALKALINITY, CALCIUM, Heard, Make, enter, enter_text, type_in


def test_the_unit_list_converts_and_keeps_what_was_typed(make: Make) -> None:
    field = make()
    type_in(field, "8.4")
    enter(field)
    heard = Heard(field)
    field.units.setCurrentIndex([u for u, _ in field.units.options()].index("meq/L"))
    field.units.activated.emit(field.units.currentIndex())
    assert heard.edits == [Typed("8.4", "dKH", "meq/L")]
    assert heard.commits == 1
    assert abs(float(field.line.text()) - 2.996) < 0.001
    assert field.line.accessibleName() == "Measured, meq per L"


def test_a_converted_field_offers_to_relabel_with_before_and_after(make: Make) -> None:
    field = make(fields.NET_VOLUME)
    type_in(field, "75")
    enter(field)
    field.units.setCurrentIndex([u for u, _ in field.units.options()].index("US gal"))
    field.units.activated.emit(field.units.currentIndex())
    (button,) = field.slip.row.buttons()
    assert button.text() == "Relabel: 75\u00a0L becomes 75\u00a0US gal"
    button.click()
    assert field.typed() == Typed("75", "US gal")
    assert field.line.text() == "75"


def test_the_menu_relabels_too(make: Make) -> None:
    field = make(fields.NET_VOLUME)
    type_in(field, "75")
    enter(field)
    menu = QMenu(field)
    field.add_relabels(menu)
    actions = {action.text(): action for action in menu.actions() if action.text()}
    field._menu_chosen(actions["Relabel: 75\u00a0L becomes 75\u00a0imperial gal"])
    assert field.typed() == Typed("75", "imperial gal")


def test_what_cannot_be_read_is_not_converted(make: Make) -> None:
    field = make()
    type_in(field, "999")
    enter(field)
    heard = Heard(field)
    field.units.setCurrentIndex(0)
    field.units.activated.emit(0)
    assert heard.edits == []
    assert field.typed() == Typed("999", "dKH")
    assert field.units.current_id() == "dKH", "the list goes back to the unit that holds"


def test_a_unit_in_the_text_moves_the_list(make: Make) -> None:
    field = make()
    type_in(field, "2.4 meq/L")
    assert field.units.current_id() == "dKH", "not while typing"
    enter(field)
    assert field.units.current_id() == "meq/L"
    assert field.line.text() == "2.4"
    assert field.typed() == Typed("2.4 meq/L", "dKH", "meq/L")


def test_a_fault_is_said_quietly_after_a_pause_and_at_once_on_commit(make: Make, qtbot) -> None:
    field = make()
    field._quiet.setInterval(20)
    type_in(field, "6..8")
    assert field.message == ""
    qtbot.waitUntil(lambda: field.state == "error", timeout=2000)
    assert field.message in field.line.accessibleDescription()
    type_in(field, "1")
    assert field.message == "", "typing on takes the sentence away"


def test_help_gives_way_to_a_fault_and_comes_back(make: Make) -> None:
    field = make()
    field.set_help("usually kept: 7 to 11 dKH")
    height = field.height()
    assert field.note.text == "usually kept: 7 to 11 dKH"
    enter_text(field, "abc", by_keys=True)
    assert field.note.sign == "stop"
    assert field.height() == height, "nothing jumps"
    enter_text(field, "7", by_keys=True)
    assert (field.note.text, field.note.sign) == ("usually kept: 7 to 11 dKH", "")


def test_a_derived_value_stands_there_until_something_is_typed(make: Make) -> None:
    field = make(Field("change.fastest_rise", "alkalinity per day", "dKH per day", 0.0, 15.0))
    field.set_derived("1", "recommended for alkalinity")
    assert (field.state, field.line.placeholderText(), field.note.text) == (
        "derived",
        "1",
        "recommended for alkalinity",
    )
    assert field.typed().text == ""
    enter_text(field, "0.8", by_keys=True)
    assert field.state == "ok"


def test_the_same_value_from_outside_leaves_the_cursor_alone(make: Make) -> None:
    field = make()
    type_in(field, "68")
    field.line.setCursorPosition(1)
    field.set_typed(field.typed())
    assert field.line.cursorPosition() == 1
    assert field.state == "typing"


def test_another_kind_of_quantity_brings_its_own_units(make: Make) -> None:
    field = make()
    field.set_field(CALCIUM)
    assert [u for u, _ in field.units.options()] == ["mg/L", "mg/kg"]
    assert field.line.accessibleName() == "Measured, mg per L"


def test_the_slip_goes_with_its_field(make: Make, page: QWidget) -> None:
    field = make(CALCIUM)
    enter_text(field, "1,250", by_keys=True)
    assert field.slip.isVisible()
    assert page.rect().contains(field.slip.geometry())
    field.hide()
    assert not field.slip.isVisible()
    field.show()
    assert field.slip.isVisible()


# The field of a bottle's label takes another kind of quantity when the keeper says what it raises.


def test_a_number_in_a_unit_of_another_quantity_is_kept_and_never_read_anew(make: Make) -> None:
    field = make()
    type_in(field, "0.1")
    enter(field)
    heard = Heard(field)
    field.set_field(CALCIUM)
    assert field.typed() == Typed("0.1", "dKH")
    assert field.line.text() == "0.1"
    assert field.state == "error", "0.1 dKH is no calcium, and 0.1 mg per L was never said"
    assert heard.edits == []
    field.set_field(ALKALINITY)
    assert field.state == "ok"


def test_picking_a_unit_then_says_what_the_number_was(make: Make) -> None:
    field = make()
    type_in(field, "0.1")
    enter(field)
    field.set_field(CALCIUM)
    heard = Heard(field)
    field.units.setCurrentIndex([u for u, _ in field.units.options()].index("mg/L"))
    field.units.activated.emit(field.units.currentIndex())
    assert heard.edits == [Typed("0.1", "mg/L")]
    assert (field.state, field.line.text()) == ("ok", "0.1")


def test_its_menu_opens_and_relabels(make: Make) -> None:
    field = make()
    type_in(field, "0.1")
    enter(field)
    field.set_field(CALCIUM)
    menu = QMenu(field)
    field.add_relabels(menu)
    actions = {action.text(): action for action in menu.actions() if action.text()}
    field._menu_chosen(actions["Relabel: 0.1 becomes 0.1\u00a0mg per L"])
    assert field.typed() == Typed("0.1", "mg/L")


def test_a_unit_in_the_text_is_read_by_the_field_that_knows_it(make: Make) -> None:
    field = make()
    type_in(field, "10 mg/L")
    enter(field)
    assert field.state == "error"
    field.set_field(CALCIUM)
    assert field.state == "ok"
    assert (field.line.text(), field.units.current_id()) == ("10", "mg/L")
    assert field.typed().text == "10 mg/L"
