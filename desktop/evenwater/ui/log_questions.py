"""Asks the log what must be asked before an entry is logged, and says afterwards what follows from it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import timedelta

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed
from evenwater.screens import before_logging, correct, logbook
from evenwater.screens.before_logging import Rises
from evenwater.screens.local_zone import present
from evenwater.screens.logbook import Taken
from evenwater.screens.shown import Shown
from evenwater.screens.views import Message, Offer
from evenwater.screens.when import choice_words
from evenwater.session import Document, Entry
from evenwater.ui.plans import Plans
from evenwater.wording import marked, say

SHOW_PLAN = marked("Show the plan")
_DAY = timedelta(days=1)


class LogQuestions:
    """Knows the log, the plans and the jugs of a room."""

    def __init__(self, document: Document, catalogue: Catalogue, plans: Plans) -> None:
        """Look at this document."""
        self._document, self._catalogue, self._plans = document, catalogue, plans

    def before(self, entry: Entry, jugs: Mapping[str, str], changing: bool) -> tuple[Message, ...] | None:
        """Return what to ask before an entry is logged or, with ``changing``, changed; None when the log cannot be read."""
        zone = present().tzinfo
        log = self._document.log
        alike = log.near_duplicates(entry)
        if alike is None:
            return None
        earlier = log.entries(
            entry.system_id, (entry.kind,), entry.subject, since=entry.at - _DAY * 60, until=entry.at + _DAY, newest_first=True,
            limit=50,
        )  # fmt: skip
        said = [(_taken(e, zone), self._words(e, jugs)) for e in earlier if e.id != entry.id]
        taken = _taken(entry, zone)
        rises = tuple(self._rises(entry))
        if changing:
            return before_logging.questions(taken, (), rises)
        found = before_logging.questions(taken, said, rises, self._interval(entry))
        if alike and not any(m.code == before_logging.AGAIN for m in found):
            again = _taken(alike[-1], zone)
            by = say(" by {who}", who=again.who) if again.who else ""
            text = say(
                "{alike}, was noted {at}{by}. Is this another one?",
                alike=self._words(alike[-1], jugs),
                at=choice_words(again.at, present()),
                by=by,
            )
            found = (Message(text, "", before_logging.AGAIN, (Offer(say("Yes, log it too"), "", ""),)), *found)
        return found

    def after(self, entry: Entry) -> Message | None:
        """Return what a reading says of the plan that is followed; None where none is."""
        plan = self._plans.of(entry.system_id, entry.subject) if entry.kind == logbook.READING else None
        if plan is None or entry.at <= plan.started:
            return None
        view = self._plans.view(plan)
        if view is None:
            return None
        return Message(
            say("{view_said} (Plan {plan_id}.)", view_said=view.said, plan_id=plan.plan_id),
            "",
            view.state,
            (Offer(say(SHOW_PLAN), "", ""),),
        )

    def _words(self, entry: Entry, jugs: Mapping[str, str]) -> str:
        row = logbook.row(entry.id, _taken(entry, present().tzinfo), self._catalogue, jugs)
        note = f"“{entry.fields.get('text', Typed('')).text}”" if entry.kind == logbook.NOTE else ""
        return ", ".join(filter(None, (row.what, row.amount, note)))

    def _interval(self, entry: Entry) -> timedelta:
        """Return how far apart doses from this jug are planned in this system, a tenth less."""
        found = [timedelta(0)]
        for parameter in self._catalogue.parameters:
            correction = self._document.values(f"{entry.system_id}:{parameter}")
            if correction.get("stock", Typed("")).text != entry.subject:
                continue
            pump = self._document.values(correction.get("pump", Typed("")).text)
            found.append(0.9 * _DAY / before_logging.dosed_per_day(pump))
        return max(found)

    def _rises(self, entry: Entry) -> Iterator[Rises]:
        """Yield what a dose raises, with everything that was given within a day of it."""
        values = self._document.values(entry.system_id)
        litres = correct.volume_l(values)
        if entry.kind != logbook.DOSE or litres is None:
            return
        near = self._document.log.entries(entry.system_id, ("dose",), since=entry.at - _DAY, until=entry.at + _DAY)
        for name, per_ml in _carried(entry).items():
            parameter = self._catalogue.parameters.get(name)
            if parameter is None or per_ml <= 0.0:
                continue
            plan = self._plans.of(entry.system_id, name)
            kept = self._plans.kept(plan) if plan is not None else None
            others = [
                (e.at, rise)
                for e in near
                if e.id != entry.id and (rise := (e.value or 0.0) * _carried(e).get(name, 0.0) / litres) > 0.0
            ]
            planned = 0.0
            if kept is not None:
                course = kept.course
                its_own = kept.batch_id.partition(":")[0] == entry.subject
                if its_own and (entry.value or 0.0) <= course.dose_ml * (1.0 + 1e-9):
                    # The pump's own dose, noted: the plan counts it already.
                    continue
                planned = course.dose_ml * course.per_day * course.per_ml
            unit = parameter.display_unit
            shown = Shown(parameter, unit, correct.water(values))
            yield Rises(
                shown, (entry.value or 0.0) * per_ml / litres, others, planned, self._use(entry.system_id, parameter)
            )

    def _use(self, system: str, parameter: Parameter) -> float:
        """Return the use per day as the keeper typed it [canonical unit per day]; nothing where none can be read."""
        typed = self._document.value(f"{system}:{parameter.name}", "daily_use")
        return before_logging.used_per_day(typed, parameter, correct.water(self._document.values(system)))


def _carried(entry: Entry) -> Mapping[str, float]:
    return logbook.carried(entry.fields.get("carries", Typed("")).text)


def _taken(entry: Entry, zone: object) -> Taken:
    return Taken(entry.kind, entry.subject, entry.at.astimezone(zone), entry.who, entry.fields, entry.value)  # type: ignore[arg-type]
