"""The plans that are followed, read from the log once and kept until it changes."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from PySide6.QtCore import QObject, Signal

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, following, following_view, logbook
from evenwater.screens.following import Kept
from evenwater.screens.following_view import FollowView, Judged
from evenwater.screens.local_zone import present
from evenwater.screens.logbook import Projected
from evenwater.screens.outstanding import Given, Outstanding, Ran, outstanding
from evenwater.session import Document, Entry, LogChange, Plan

# Older doses and plans say nothing of what a reading could not show.
_LOOKS_BACK = timedelta(days=31)
_BEGINNING = datetime.min.replace(tzinfo=UTC)


class Plans(QObject):
    """Knows which plan is followed where, and holds the readings against it; ``changed`` says that something may be new."""

    changed = Signal()

    def __init__(self, document: Document, catalogue: Catalogue, parent: QObject) -> None:
        """Watch the log of ``document``."""
        super().__init__(parent)
        self._document, self._catalogue = document, catalogue
        self._kept: dict[str, Kept | None] = {}
        self._live: dict[tuple[str, str], Plan] | None = None
        self._readings: dict[tuple[str, str], list[tuple[datetime, float]]] = {}
        self._every: dict[tuple[str, str], list[Ran]] = {}
        self._counted: dict[tuple[str, str], tuple[list[Ran], list[Given]]] = {}
        document.log.plansChanged.connect(self._forget_all)
        document.log.logChanged.connect(self._forget)
        document.recordsChanged.connect(self._forget_all)

    def of(self, system: str, parameter: str) -> Plan | None:
        """Return the plan that is followed there, or None."""
        return self._all().get((system, parameter))

    def live(self) -> tuple[Plan, ...]:
        """Return every plan that is followed."""
        return tuple(self._all().values())

    def kept(self, plan: Plan) -> Kept | None:
        """Return what is known of a plan; None when it cannot be read."""
        if plan.plan_id not in self._kept:
            self._kept[plan.plan_id] = following.kept(plan.body, self._catalogue)
        return self._kept[plan.plan_id]

    def view(self, plan: Plan, now: datetime | None = None) -> FollowView | None:
        """Return what is shown of a plan; None when it cannot be read."""
        kept, at = self.kept(plan), now or present()
        if kept is None:
            return None
        return following_view.view(kept, plan.plan_id, following.follow(kept, self._since(plan), at), at)

    def judged(self, plan: Plan, now: datetime) -> Judged | None:
        """Return a plan in short, without its chart; None when it cannot be read."""
        kept = self.kept(plan)
        return (
            None if kept is None else following_view.judged(kept, following.follow(kept, self._since(plan), now), now)
        )

    def given(self, system: str, parameter: str, since: datetime, now: datetime) -> list[tuple[datetime, float, float]]:
        """Return what plans gave: instants, amounts [mL], and what a millilitre carries [canonical unit times L per mL]."""
        found = []
        for ran in self._ran(system, parameter, since):
            found += following.given(ran.plan, now if ran.ended is None else ran.ended)
        return [dose for dose in found if dose[0] > since]

    def counts(self, system: str, parameter: str, entry: Entry) -> bool:
        """Return whether a dose in the log is one that a plan counts already: from its jug, while it was followed."""
        return any(ran.gave(entry.subject, entry.at) for ran in self._ran(system, parameter, entry.at))

    def _ran(self, system: str, parameter: str, since: datetime) -> list[Ran]:
        """Return the plans for a parameter that were followed after an instant."""
        key = (system, parameter)
        if key not in self._every:
            every = self._document.log.plans(system, live=False)
            self._every[key] = [
                Ran(kept, plan.ended)
                for plan in every
                if plan.parameter == parameter and (kept := self.kept(plan)) is not None
            ]
        return [ran for ran in self._every[key] if ran.ended is None or ran.ended > since]

    def projections(self, system: str, parameter: str) -> tuple[Projected, ...]:
        """Return what every plan for a parameter expected, the followed one's and those of the past."""
        unit = self._catalogue.parameters[parameter].display_unit
        every = self._ran(system, parameter, _BEGINNING)
        return tuple(following_view.projected(ran.plan, ran.ended, unit) for ran in every)

    def outstanding(self, system: str, parameter: str, measured_at: datetime | None, now: datetime) -> Outstanding:
        """Return what the reading of a correction could not show."""
        key = (system, parameter)
        if key not in self._counted:
            self._counted[key] = self._counted_of(system, parameter, now)
        plans, given = self._counted[key]
        return outstanding(plans, given, measured_at, now)

    def _counted_of(self, system: str, parameter: str, now: datetime) -> tuple[list[Ran], list[Given]]:
        log, since = self._document.log, now - _LOOKS_BACK
        plans = self._ran(system, parameter, since)
        litres = correct.volume_l(self._document.values(system))
        if litres is None:
            return plans, []
        doses = []
        for entry in log.entries(system, ("dose",), since=since):
            per_ml = logbook.carried(entry.fields.get("carries", Typed("")).text).get(parameter, 0.0)
            if per_ml > 0.0 and entry.value is not None:
                doses.append(Given(entry.at, entry.value * per_ml / litres, entry.subject))
        return plans, doses

    def _since(self, plan: Plan) -> list[tuple[datetime, float]]:
        key = (plan.system_id, plan.parameter)
        if key not in self._readings:
            found = self._document.log.entries(plan.system_id, ("reading",), plan.parameter, since=plan.started)
            self._readings[key] = [(entry.at, entry.value) for entry in found if entry.value is not None]
        return self._readings[key]

    def _all(self) -> dict[tuple[str, str], Plan]:
        if self._live is None:
            self._live = {(plan.system_id, plan.parameter): plan for plan in self._document.log.plans()}
        return self._live

    def _forget(self, change: LogChange) -> None:
        for kept in (self._readings, self._counted):
            for key in [k for k in kept if not change.system_ids or k[0] in change.system_ids]:
                del kept[key]
        self.changed.emit()

    def _forget_all(self, *_: object) -> None:
        self._live = None
        for kept in (self._every, self._readings, self._counted):
            kept.clear()
        self.changed.emit()
