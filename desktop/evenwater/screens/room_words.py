"""Sentences about the log, the cards and what undo would do."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.reasons import Reason
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.jug_field_words import JUG_FIELDS
from evenwater.screens.pump_words import PUMP_WORDS
from evenwater.screens.recovery_words import RECOVERY_FIELDS

_SENTENCES: dict[str, Callable[[Mapping[str, Any]], str]] = {
    "store.read_only": lambda p: "The log cannot be written: the file or its folder is read-only.",
    "store.locked": lambda p: "The log is busy in another window or program. It is tried again with the next edit.",
    "store.io": lambda p: "The disk does not answer. What you type is kept here and saved when it does.",
    "store.full": lambda p: "The disk is full. What you type is kept here; make room, then go on.",
    "store.damaged": lambda p: (
        "The log file is damaged. Nothing was changed in it; "
        + (f"its newest backup is {p['backup']}." if p.get("backup") else "no backup was found beside it.")
    ),
    "store.moved": lambda p: (
        f"The log is no longer at its place, {p['file']}. What you type is kept here; put it back there, then go on."
    ),
    "store.unreadable": lambda p: (
        "Something in the log is damaged and cannot be read. The rest is used; the list of copies may hold it whole."
    ),
    "store.failed": lambda p: "The log could not be used. What you type is kept here; try again.",
    "store.foreign": lambda p: "That file is not a log of Evenwater. Nothing was changed in it.",
    "store.newer": lambda p: "The log was made by a newer Evenwater. Update the program to open it.",
    "store.cannot_open": lambda p: "The log cannot be opened at that place.",
    "store.migration_failed": lambda p: "The log could not be brought up to date. Its backup from before is unchanged.",
    "store.not_empty": lambda p: "The log already holds something, so it was not filled.",
    "store.record_gone": lambda p: "Another window removed this in the meantime.",
    "store.record_exists": lambda p: "Another window added this in the meantime.",
    "store.entry_gone": lambda p: "Another window removed this entry in the meantime.",
    "store.entry_taken": lambda p: "This entry is in the log already, and says something else.",
    "store.entry_changed": lambda p: "Another window changed this entry in the meantime. Look at it again.",
    "store.plan_unknown": lambda p: "That plan is not in the log.",
    "store.plan_id_taken": lambda p: "A card with this plan id exists already.",
    "store.copy_gone": lambda p: "That copy is no longer in its folder.",
    "store.copy_foreign": lambda p: "That file is not a log of Evenwater.",
    "store.copy_newer": lambda p: "That copy was made by a newer Evenwater. Update the program to restore it.",
    "store.copy_damaged": lambda p: "That copy is damaged and cannot be restored. Choose another one.",
    "store.copy_target": lambda p: "The log and its copies lie there already. Choose another folder.",
    "store.copy_full": lambda p: "There is no room for the copy. Make room, or choose another folder.",
    "store.copy_not_written": lambda p: "The copy could not be written there. Choose another folder.",
    "store.no_copies": lambda p: "This log is not on a disk, so it has no copies.",
    "store.unsaved": lambda p: (
        "Something that was typed is not saved yet, and would be lost. Let the log be saved first."
    ),
    "store.card_unknown": lambda p: "That card is not in the log.",
    "store.card_state": lambda p: "A card that is void cannot be in use again. Print a new one.",
    "card_not_painted": lambda p: "The card could not be painted on that device.",
    "card_does_not_fit": lambda p: "A word on the card is wider than this paper. Choose a larger paper.",
    "card_not_written": lambda p: "The card could not be written there. Choose another folder.",
    "card_fonts_missing": lambda p: "The card's typeface is missing. Install the program again.",
    "card_paper_refused": lambda p: f"The printer put {p['got']} in place of {p['wanted']}. Choose the right paper.",
}

_KINDS = {
    "system": "system",
    "stock": "jug",
    "batch": "batch",
    "pump": "pump",
    "correction": "correction",
    "calibration": "calibration",
    "level": "level",
    "absence": "date of return",
    "food": "food",
    "water": "exchange",
    "recovery": "recovery",
}
_TABLES = {"system": "system", "batch": "additive", "pump": "pump", "correction": "change"}
# What the log and the plans do, by the code of the step.
_LOG_STEPS = {
    "log": "logging {kind}",
    "change_entry": "change of {kind}",
    "remove_entries": "removing {kind}",
    "import": "import of readings",
    "start_plan": "starting the plan for {subject}",
    "end_plan": "ending the plan for {subject}",
}
_ENTRIES = {
    "reading": "a reading",
    "dose": "a dose",
    "exchange": "a water exchange",
    "note": "a note",
    "calibration": "a calibration",
    "batch": "a batch",
}
_OTHER = {
    "name": "the name",
    "exchanged": "the water exchanged in a day",
    "parameter": "what to raise",
    "stock": "the jug",
    "in_use_from": "what is in the jug",
    "also_chemical": "the second chemical",
    "also_dissolved": "how much of the second chemical was dissolved",
    "also_purity": "the purity of the second chemical",
    "saturated": "what is in the jug",
    "recipe": "how the strength is said",
    "partner": "the jug to match",
    "wanted_dose": "the wanted dose",
    "wanted_water": "the water that the dose goes into",
    "wanted_raises": "the rise that the dose makes",
    "mixed_by": "who mixed it",
    "use_by": "the date to use it by",
    "label_parameter": "what the bottle raises",
    "mixed_on": "the date of mixing",
    "label_dose": "the dose on the label",
    "label_water": "the water on the label",
    "label_raises": "the rise on the label",
    "quiet_from": "when the quiet hours begin",
    "quiet_to": "when the quiet hours end",
    "apart": "the time that opposing doses stay apart",
    "one_at_a_time": "one pump at a time",
    "doses_wanted": "the doses a day",
    "doses_fewest": "the fewest doses a day",
    "doses_most": "the most doses a day",
    "first_at": "the hour of the first dose",
    **PUMP_WORDS,
    **JUG_FIELDS,
    **RECOVERY_FIELDS,
}


def sentence(reason: Reason) -> str:
    """Return the sentence for a reason of the log or the card; unknown ones keep their own words."""
    words = _SENTENCES.get(reason.code)
    return words(reason.params) if words else f"The log could not be used ({reason.code})."


def edits_words(count: int) -> str:
    """Return a number of edits in words.

    Parameters
    ----------
    count : int
        How many, at least one.

    Returns
    -------
    str
        Words such as "1 edit".
    """
    return f"{count}\u00a0{'edit' if count == 1 else 'edits'}"


def field_words(kind: str, field: str) -> str:
    """Return what a field of a record is called in a sentence.

    Parameters
    ----------
    kind : str
        Kind of the record.
    field : str
        Name of the field.

    Returns
    -------
    str
        Words such as "the reading".
    """
    if kind == "correction" and field == "pump":
        return "the pump"
    if kind == "water":
        from evenwater.screens.exchange_fields import undo_words

        return undo_words(field)
    if kind == "food":
        from evenwater.screens.foods_words import FOOD_WORDS

        if field in FOOD_WORDS:
            return FOOD_WORDS[field]
    return FIELD_WORDS.get(f"{_TABLES.get(kind, '')}.{field}") or _OTHER.get(field, field.replace("_", " "))


def step_words(verb: str, code: str, kind: str, field: str) -> str:
    """Return what undo or redo would do.

    Parameters
    ----------
    verb : str
        "Undo" or "Redo".
    code : str
        "edit", "add" or "remove".
    kind : str
        Kind of the record.
    field : str
        Name of the field, for an edit.

    Returns
    -------
    str
        Words such as "Undo: change of the reading".
    """
    if code in _LOG_STEPS:
        return f"{verb}: {_LOG_STEPS[code].format(kind=_ENTRIES.get(kind, kind), subject=field)}"
    noun = _KINDS.get(kind, kind)
    what = {"add": f"adding a {noun}", "remove": f"removing a {noun}"}.get(code)
    return f"{verb}: {what or f'change of {field_words(kind, field)}'}"
