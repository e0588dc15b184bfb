"""What stands in the Log sheet's form on its way into the log: new entries and changed ones, questions, drafts."""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, logbook, shelf
from evenwater.screens.local_zone import present
from evenwater.screens.logbook import Taken
from evenwater.screens.views import Message, Offer
from evenwater.screens.when import instant_of
from evenwater.session import Document, Entry, Logged
from evenwater.ui.log_form import LogForm
from evenwater.ui.log_questions import SHOW_PLAN, LogQuestions
from evenwater.ui.plans import Plans
from evenwater.ui.records_pane import JUGS, name_of
from evenwater.wording import say, say_all


@dataclass(frozen=True)
class _Draft:
    """What was typed and not logged yet: the kind, the fields, the id it will get, and the entry that it changes."""

    kind: str
    said: Mapping[str, Typed]
    next_id: str
    changing: Entry | None


class Entering(QObject):
    """Takes entries from a form; ``saved`` says that the log is another, ``told`` carries a sentence for the status line.

    ``plan_wanted`` carries the parameter whose plan is to be shown.
    """

    saved = Signal()
    told = Signal(str)
    plan_wanted = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, plans: Plans, form: LogForm, owner: QWidget) -> None:
        """Take from ``form``, still for no system."""
        super().__init__(owner)
        self._document, self._catalogue, self._form = document, catalogue, form
        self._questions = LogQuestions(document, catalogue, plans)
        self._system = ""
        # Made before the first attempt, so that logging twice is logging once (H15).
        self._next_id = uuid.uuid4().hex
        self._changing: Entry | None = None
        # What was asked last, and what the keeper said yes to, of the entry that stands in the form.
        self._asked, self._answered = "", set[str]()
        self._followed = ""
        self._drafts: dict[str, _Draft] = {}
        self._readings: dict[tuple[str, str], _Draft] = {}
        form.wanted.connect(self.log)
        form.dropped.connect(self.give_up)
        form.edited.connect(self._edited)
        form.messages.offerChosen.connect(self._offered)

    def jugs(self) -> dict[str, str]:
        """Return the names of the jugs by their id."""
        return {stock: name_of(self._document, stock, say_all(JUGS)) for stock in self._document.records("stock")}

    def show_system(self, system: str) -> None:
        """Take entries for another system; what was typed for the one before waits for it."""
        if system == self._system:
            return
        self._drafts[self._system] = self._draft()
        self._system = system
        draft = self._drafts.pop(system, None)
        self._begin_next()
        if draft is None:
            self._form.clear()
        else:
            self._take_up(draft)

    def begin_reading(self, parameter: str) -> None:
        """Begin to note a reading, or go on with one; what else was typed waits until its own is begun again."""
        before = self._draft()
        if before.kind == logbook.READING and before.changing is None:
            self._readings[(self._system, before.said.get("parameter", Typed("")).text)] = before
        self._begin_next()
        draft = self._readings.pop((self._system, parameter), None)
        if draft is None:
            self._form.begin_reading(parameter)
        else:
            self._take_up(draft)
            self._form.focus_first()

    def begin_change(self, entry: Entry) -> None:
        """Show an entry that is to say something else."""
        self._begin_next()
        self._changing = entry
        said = {**entry.fields, "at": Typed(entry.at.isoformat()), "who": Typed(entry.who)}
        if entry.kind == logbook.READING:
            said["parameter"] = Typed(entry.subject)
        if entry.kind == logbook.DOSE:
            said["stock"] = Typed(entry.subject)
        self._form.show_entry(entry.kind, said, changing=True)
        self._form.focus_first()

    def give_up(self) -> None:
        """Begin anew with an empty form."""
        self._begin_next()
        self._form.clear()

    def look_again(self) -> None:
        """Let what was typed become a new entry where the one that it changes has gone meanwhile."""
        if self._changing is not None and self._document.log.entry(self._changing.id) is None:
            kind, said = self._form.draft()
            self._begin_next()
            self._form.show_entry(kind, said, changing=False)

    def log(self) -> None:
        """Log what stands in the form, or say beside the fields why it cannot be."""
        if not self._system:
            return
        taken = self._taken()
        if not isinstance(taken, Taken):
            self._answered.clear()
            self._form.set_messages(taken)
            return
        entry, changed = self._entry(taken), self._changing is not None
        done = self._asked_and_saved(entry)
        if done is Logged.ASK:
            # Somebody has logged a dose in this moment: what was asked, and answered, was asked of an older log.
            self._answered.clear()
            done = self._asked_and_saved(entry)
        if done in (None, Logged.ASK):
            return
        if done is Logged.REFUSED:
            # Another try must be another entry.
            self._next_id = uuid.uuid4().hex
            return
        if done:
            self.told.emit(say("Saved.") if changed else say("Logged."))
        # What waits for the disk is kept and tried again by the document; the header says that it waits.
        self._begin_next()
        self._form.clear()
        self._form.focus_first()
        self.saved.emit()
        follows = self._questions.after(entry)
        if follows is not None:
            self._followed = entry.subject
            self._form.set_messages((follows,))

    def _asked_and_saved(self, entry: Entry) -> Logged | None:
        """Log what the form says, or the change of it; None when something is to be asked first."""
        log, changing = self._document.log, self._changing
        looked = log.look(entry) if entry.kind == logbook.DOSE and changing is None else None
        asked = self._questions.before(entry, self.jugs(), changing is not None)
        if asked is None:
            # The log cannot be read, which the header says: nobody may take that for nothing given.
            return None
        asked = tuple(m for m in asked if m.code not in self._answered)
        if asked:
            self._asked = asked[0].code
            self._form.set_messages(asked[:1])
            return None
        if changing is None:
            return log.log((entry,), self, looked)
        return log.change_entry(entry, self, entry.who, changing)

    def _taken(self) -> Taken | tuple[Message, ...]:
        said, now = self._form.said(), present()
        kind, stock = self._form.kind.current(), said.get("stock", Typed("")).text
        water = correct.water(self._document.values(self._system))
        before = self._changing
        if before is not None and kind == logbook.DOSE and stock in ("", before.subject):
            # What was given carries what it carried, whatever is in the jug now.
            said = {**said, "stock": Typed(before.subject)}
            return logbook.take(
                kind, said, self._catalogue, now, water, None, before.fields.get("carries", Typed("")).text
            )
        taken = logbook.take(kind, said, self._catalogue, now, water, self._jug(stock, now))
        if isinstance(taken, Taken) and kind == logbook.DOSE and taken.at < now:
            # A dose that is noted late came from what was in the jug then.
            return logbook.take(kind, said, self._catalogue, now, water, self._jug(stock, taken.at))
        return taken

    def _jug(self, stock: str, at: datetime) -> logbook.Jug | None:
        """Return what was in a jug at an instant; what is in it now where nothing is known to have been before."""
        if stock not in self._document.records("stock"):
            return None
        begun = [(instant_of(self._document.value(b, "in_use_from").text), b) for b in self._document.batches(stock)]
        until = [(when, batch) for when, batch in begun if when is not None and when <= at]
        batch = max(until)[1] if until else self._document.batch_in_use(stock)
        return shelf.answer_of(self._document.values(batch), self._catalogue) if batch else None

    def _entry(self, taken: Taken) -> Entry:
        entry = Entry(
            id=self._next_id,
            system_id=self._system,
            kind=taken.kind,  # type: ignore[arg-type]
            subject=taken.subject,
            at=taken.at,
            who=taken.who,
            fields=taken.fields,
            value=taken.value,
        )
        before = self._changing
        if before is None:
            return entry
        # What the form does not show of it stays as it was.
        unseen = {name: typed for name, typed in before.fields.items() if name not in logbook.FIELDS[taken.kind]}
        return replace(entry, id=before.id, fields={**unseen, **taken.fields})

    def _offered(self, chosen: tuple[str, Offer]) -> None:
        """Log it all the same, or show the plan that a reading belongs to."""
        if chosen[1].words == say(SHOW_PLAN):
            self.plan_wanted.emit(self._followed)
            return
        self._answered.add(self._asked)
        self.log()

    def _edited(self) -> None:
        """Let go of what was asked: it was about another entry."""
        self._answered.clear()
        self._form.messages.set_messages(())

    def _draft(self) -> _Draft:
        kind, said = self._form.draft()
        return _Draft(kind, said, self._next_id, self._changing)

    def _take_up(self, draft: _Draft) -> None:
        self._next_id, self._changing = draft.next_id, draft.changing
        self._form.show_entry(draft.kind, draft.said, changing=draft.changing is not None)
        self.look_again()

    def _begin_next(self) -> None:
        self._next_id, self._changing, self._asked = uuid.uuid4().hex, None, ""
        self._answered.clear()
