"""What waits for a server as a text, so that it outlives the program, and back again."""

from __future__ import annotations

import json
from typing import Any

from evenwater.engine.quantities import Typed
from evenwater.session.acts import Act, ChangeEntry, LogEntries, RemoveEntries
from evenwater.store import AddRecord, Edit, Entry, Looked, RemoveRecord, SetField, Step
from evenwater.store.entries import fields_of, instant, micros, text_of
from evenwater.store.errors import of_row


def text_of_step(step: Step, merge: bool) -> str:
    """Write an edit that waits."""
    return json.dumps({"step": step.code, "edits": [_edit_text(edit) for edit in step.edits], "merge": merge})


def text_of_act(act: Act) -> str:
    """Write something done to the log of entries that waits."""
    if isinstance(act, LogEntries):
        looked = act.looked
        seen = looked and [looked.system_id, micros(looked.since), micros(looked.until), sorted(looked.seen)]
        return json.dumps({"log": [_entry_text(entry) for entry in act.entries], "looked": seen})
    if isinstance(act, ChangeEntry):
        others = [entry and _entry_text(entry) for entry in (act.before, act.seen)]
        return json.dumps({"change": _entry_text(act.entry), "others": others, "by": act.by})
    return json.dumps({"remove": list(act.ids), "before": [_entry_text(e) for e in act.before], "by": act.by})


@of_row
def waiting_from(text: str) -> tuple[Step, bool] | Act:
    """Read what one of the two wrote: an edit with whether it joins the one before, or an act.

    Raises
    ------
    StoreError
        ``"store.unreadable"`` for anything else.
    """
    said: dict[str, Any] = json.loads(text)
    if "step" in said:
        return Step(said["step"], tuple(_edit_from(edit) for edit in said["edits"])), bool(said["merge"])
    if "log" in said:
        seen = said["looked"]
        looked = seen and Looked(seen[0], instant(seen[1]), instant(seen[2]), frozenset(seen[3]))
        return LogEntries(tuple(map(_entry_from, said["log"])), looked)
    if "change" in said:
        before, known = (other and _entry_from(other) for other in said["others"])
        return ChangeEntry(_entry_from(said["change"]), before, said["by"], known)
    return RemoveEntries(tuple(said["remove"]), tuple(map(_entry_from, said["before"])), said["by"])


def _edit_text(edit: Edit) -> list[str]:
    if isinstance(edit, AddRecord):
        return ["add", edit.record_id, edit.kind]
    if isinstance(edit, RemoveRecord):
        return ["remove", edit.record_id, edit.kind]
    before, after = edit.before, edit.after
    return [
        "set", edit.record_id, edit.kind, edit.field,
        after.text, after.unit, after.shown, before.text, before.unit, before.shown,
    ]  # fmt: skip


def _edit_from(parts: list[str]) -> Edit:
    word, record_id, kind, *rest = parts
    if word == "add":
        return AddRecord(record_id, kind)
    if word == "remove":
        return RemoveRecord(record_id, kind)
    return SetField(record_id, rest[0], Typed(*rest[1:4]), Typed(*rest[4:7]), kind)


def _entry_text(entry: Entry) -> list[Any]:
    fields = text_of(entry.fields)
    return [entry.id, entry.system_id, entry.kind, entry.subject, micros(entry.at), entry.who, fields, entry.value]


def _entry_from(parts: list[Any]) -> Entry:
    entry_id, system_id, kind, subject, at_us, who, fields, value = parts
    return Entry(entry_id, system_id, kind, subject, instant(at_us), who, fields_of(fields), value)
