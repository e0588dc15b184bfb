"""What the fields of a jug, of a level and of an absence are called in "Undo: change of ..."."""

from __future__ import annotations

JUG_FIELDS = {
    "holds": "what the jug holds",
    "unreachable": "what lies below the intake",
    "level_accuracy": "how well a level is read",
    "outlet_above_water": "how the jug stands",
    "jug_below_outlet": "how the jug stands",
    "tube_lifted": "how the jug stands",
    "outlets_apart": "how the jug stands",
    "primed": "whether the line is primed",
    "until": "the date of return",
}
