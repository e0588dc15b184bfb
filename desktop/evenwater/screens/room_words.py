"""Sentences about the log, the cards and what undo would do."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.engine.reasons import Reason
from evenwater.screens.field_words import FIELD_WORDS
from evenwater.screens.jug_field_words import JUG_FIELDS
from evenwater.screens.pump_words import PUMP_WORDS
from evenwater.screens.recovery_words import RECOVERY_FIELDS
from evenwater.screens.terms import term
from evenwater.wording import marked, say, say_all, say_many

_SENTENCES: dict[str, Callable[[Mapping[str, Any]], str]] = {
    "store.read_only": lambda p: say("The log cannot be written: the file or its folder is read-only."),
    "store.locked": lambda p: say(
        "The log is busy in another window or program. It is tried again with the next edit."
    ),
    "store.io": lambda p: say("The disk does not answer. What you type is kept here and saved when it does."),
    "store.full": lambda p: say("The disk is full. What you type is kept here; make room, then go on."),
    "store.damaged": lambda p: (
        say("The log file is damaged. Nothing was changed in it; ")
        + (
            say("its newest backup is {backup}.", backup=p["backup"])
            if p.get("backup")
            else say("no backup was found beside it.")
        )
    ),
    "store.moved": lambda p: say(
        "The log is no longer at its place, {file}. What you type is kept here; put it back there, then go on.",
        file=p["file"],
    ),
    "store.unreadable": lambda p: say(
        "Something in the log is damaged and cannot be read. The rest is used; the list of copies may hold it whole."
    ),
    "store.failed": lambda p: say("The log could not be used. What you type is kept here; try again."),
    "store.foreign": lambda p: say("That file is not a log of Evenwater. Nothing was changed in it."),
    "store.newer": lambda p: say("The log was made by a newer Evenwater. Update the program to open it."),
    "store.cannot_open": lambda p: say("The log cannot be opened at that place."),
    "store.migration_failed": lambda p: say(
        "The log could not be brought up to date. Its backup from before is unchanged."
    ),
    "store.not_empty": lambda p: say("The log already holds something, so it was not filled."),
    "store.record_gone": lambda p: say("Another window removed this in the meantime."),
    "store.record_exists": lambda p: say("Another window added this in the meantime."),
    "store.entry_gone": lambda p: say("Another window removed this entry in the meantime."),
    "store.entry_taken": lambda p: say("This entry is in the log already, and says something else."),
    "store.entry_changed": lambda p: say("Another window changed this entry in the meantime. Look at it again."),
    "store.plan_unknown": lambda p: say("That plan is not in the log."),
    "store.plan_id_taken": lambda p: say("A card with this plan id exists already."),
    "store.copy_gone": lambda p: say("That copy is no longer in its folder."),
    "store.copy_foreign": lambda p: say("That file is not a log of Evenwater."),
    "store.copy_newer": lambda p: say("That copy was made by a newer Evenwater. Update the program to restore it."),
    "store.copy_damaged": lambda p: say("That copy is damaged and cannot be restored. Choose another one."),
    "store.copy_target": lambda p: say("The log and its copies lie there already. Choose another folder."),
    "store.copy_full": lambda p: say("There is no room for the copy. Make room, or choose another folder."),
    "store.copy_not_written": lambda p: say("The copy could not be written there. Choose another folder."),
    "store.no_copies": lambda p: say("This log is not on a disk, so it has no copies."),
    "store.unsaved": lambda p: say(
        "Something that was typed is not saved yet, and would be lost. Let the log be saved first."
    ),
    "store.card_unknown": lambda p: say("That card is not in the log."),
    "store.card_state": lambda p: say("A card that is void cannot be in use again. Print a new one."),
    "card_not_painted": lambda p: say("The card could not be painted on that device."),
    "card_does_not_fit": lambda p: say("A word on the card is wider than this paper. Choose a larger paper."),
    "card_not_written": lambda p: say("The card could not be written there. Choose another folder."),
    "card_fonts_missing": lambda p: say("The card's typeface is missing. Install the program again."),
    "card_paper_refused": lambda p: say(
        "The printer put {got} in place of {wanted}. Choose the right paper.", got=p["got"], wanted=p["wanted"]
    ),
}

_KINDS = {
    "system": marked("system"),
    "stock": marked("jug"),
    "batch": marked("batch"),
    "pump": marked("pump"),
    "correction": marked("correction"),
    "calibration": marked("calibration"),
    "level": marked("level"),
    "absence": marked("date of return"),
    "food": marked("food"),
    "water": marked("exchange"),
    "recovery": marked("recovery"),
}
_TABLES = {"system": "system", "batch": "additive", "pump": "pump", "correction": "change"}
# What the log and the plans do, by the code of the step.
_LOG_STEPS = {
    "log": marked("logging {kind}"),
    "change_entry": marked("change of {kind}"),
    "remove_entries": marked("removing {kind}"),
    "import": marked("import of readings"),
    "start_plan": marked("starting the plan for {subject}"),
    "end_plan": marked("ending the plan for {subject}"),
}
_ENTRIES = {
    "reading": marked("a reading"),
    "dose": marked("a dose"),
    "exchange": marked("a water exchange"),
    "note": marked("a note"),
    "calibration": marked("a calibration"),
    "batch": marked("a batch"),
}
_OTHER = {
    "name": marked("the name"),
    "exchanged": marked("the water exchanged in a day"),
    "parameter": marked("what to raise"),
    "stock": marked("the jug"),
    "in_use_from": marked("what is in the jug"),
    "also_chemical": marked("the second chemical"),
    "also_dissolved": marked("how much of the second chemical was dissolved"),
    "also_purity": marked("the purity of the second chemical"),
    "saturated": marked("what is in the jug"),
    "recipe": marked("how the strength is said"),
    "partner": marked("the jug to match"),
    "wanted_dose": marked("the wanted dose"),
    "wanted_water": marked("the water that the dose goes into"),
    "wanted_raises": marked("the rise that the dose makes"),
    "mixed_by": marked("who mixed it"),
    "use_by": marked("the date to use it by"),
    "label_parameter": marked("what the bottle raises"),
    "mixed_on": marked("the date of mixing"),
    "label_dose": marked("the dose on the label"),
    "label_water": marked("the water on the label"),
    "label_raises": marked("the rise on the label"),
    "quiet_from": marked("when the quiet hours begin"),
    "quiet_to": marked("when the quiet hours end"),
    "apart": marked("the time that opposing doses stay apart"),
    "one_at_a_time": marked("one pump at a time"),
    "doses_wanted": marked("the doses a day"),
    "doses_fewest": marked("the fewest doses a day"),
    "doses_most": marked("the most doses a day"),
    "first_at": marked("the hour of the first dose"),
    **PUMP_WORDS,
    **JUG_FIELDS,
    **RECOVERY_FIELDS,
}


def sentence(reason: Reason) -> str:
    """Return the sentence for a reason of the log or the card; unknown ones keep their own words."""
    words = _SENTENCES.get(reason.code)
    if words is None:
        # Who has a log of their own never needs them.
        from evenwater.screens.server_words import SERVER_SENTENCES

        words = SERVER_SENTENCES.get(reason.code)
    return words(reason.params) if words else say("The log could not be used ({code}).", code=reason.code)


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
    return say_many("{n}\u00a0edit", "{n}\u00a0edits", count)


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
        return say("the pump")
    if kind == "water":
        from evenwater.screens.exchange_fields import undo_words

        return undo_words(field)
    if kind == "food":
        from evenwater.screens.foods_words import FOOD_WORDS

        if field in FOOD_WORDS:
            return say_all(FOOD_WORDS[field])
    said = FIELD_WORDS.get(f"{_TABLES.get(kind, '')}.{field}") or _OTHER.get(field)
    if said is None:
        return field.replace("_", " ")
    # A run and a value that is held are named by the field itself: run_2_seconds, hold_calcium.
    _, _, which = field.partition("_")
    return say(said, run=which.partition("_")[0], name=term(which)) if "{" in said else say(said)


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
        return (
            f"{verb}: {say_all(_LOG_STEPS[code]).format(kind=say_all(_ENTRIES.get(kind, kind)), subject=term(field))}"
        )
    noun = say_all(_KINDS.get(kind, kind))
    what = {"add": say("adding a {noun}", noun=noun), "remove": say("removing a {noun}", noun=noun)}.get(code)
    return f"{verb}: {what or say('change of {kind}', kind=field_words(kind, field))}"
