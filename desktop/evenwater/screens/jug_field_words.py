"""What the fields of a jug, of a level and of an absence are called in "Undo: change of ..."."""

from __future__ import annotations

from evenwater.wording import marked

JUG_FIELDS = {
    "holds": marked("what the jug holds"),
    "unreachable": marked("what lies below the intake"),
    "level_accuracy": marked("how well a level is read"),
    "outlet_above_water": marked("how the jug stands"),
    "jug_below_outlet": marked("how the jug stands"),
    "tube_lifted": marked("how the jug stands"),
    "outlets_apart": marked("how the jug stands"),
    "primed": marked("whether the line is primed"),
    "until": marked("the date of return"),
}
