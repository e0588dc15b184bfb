"""Every sheet without eyes, without a mouse and with unsteady hands: one room, all looks, since making it costs most."""

from __future__ import annotations

import pytest

from tests.access import looks
from tests.access.rooms import demo, each_sheet

pytestmark = pytest.mark.usefixtures("young_demo")

LOOKS = (looks.said, looks.fields, looks.targets, looks.letters, looks.tab, looks.regions, looks.answers, looks.named)


def test_every_sheet_is_read_and_worked_without_a_mouse(qtbot):
    window, room = demo(qtbot)
    found: list[str] = []
    painted: set[str] = set()
    for name, sheet in each_sheet(room, qtbot):
        painted |= looks.painted(window)
        found += [f"{name}: {fault}" for look in LOOKS for fault in look(window, room, sheet)]
    assert not found, "\n".join(found)
    assert painted == set(looks.FIGURES), "the demo shows every kind of picture"
