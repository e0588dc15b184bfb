"""The records behind all plans together: one system with its readings, uses, plans, foods, water and noted doses."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens import correct, logbook
from evenwater.screens.exchange_given import LOG, Given, Newest
from evenwater.screens.timetable_given import FollowedPlan
from evenwater.screens.together import OLDEST, Asked, Noted
from evenwater.session import Document, Plan
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.upkeep_records import UpkeepRecords


class TogetherRecords:
    """Reads everything that runs in a system; what the log holds is asked for again when it has changed."""

    def __init__(self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans) -> None:
        """Start without a system."""
        self._document, self._catalogue, self._learning, self._plans = document, catalogue, learning, plans
        self._upkeep = UpkeepRecords(document, catalogue, learning, plans)
        self._readings: dict[str, dict[str, Newest]] = {}
        self._noted: dict[str, tuple[Noted, ...]] = {}

    def forget_log(self) -> None:
        """Take note that the log has changed."""
        self._readings.clear()
        self._noted.clear()

    def asked(self, system: str, standing: correct.Plan | None, now: datetime) -> Asked:
        """Return everything that is known of a system, with the correction that stands on the sheet where one is given."""
        document, parameters = self._document, self._catalogue.parameters
        self._upkeep.system = system
        corrections = {name: document.values(f"{system}:{name}") for name in parameters}
        learned = {name: self._learning.known(system, name) for name in parameters}
        given = Given(
            system=document.values(system),
            water=document.values(f"{system}:water"),
            corrections=corrections,
            readings=self._read(system),
            learned={name: found.use for name, found in learned.items() if found is not None and found.use is not None},
            foods=self.foods(system),
        )
        kept = self._upkeep.kept()
        plans = [plan for plan in self._plans.live() if plan.system_id == system]
        return Asked(
            given=given,
            upkeep=self._upkeep.raw() if kept else {},
            stocks={name: corrections[name].get("stock", Typed("")).text for name in kept},
            plans=tuple(self._followed(plan, now) for plan in plans),
            noted=self._doses(system, now),
            standing=None if standing is None else standing.answer,
        )

    def foods(self, system: str) -> tuple[Mapping[str, Typed], ...]:
        """Return the fields of each food of a system."""
        records = (record for record in self._document.records("food") if record.partition(":")[0] == system)
        return tuple(self._document.values(record) for record in records)

    def unlearned(self, system: str) -> Iterator[str]:
        """Yield the values with readings whose use nobody has typed."""
        for name in self._read(system):
            if (
                name in self._catalogue.parameters
                and not self._document.value(f"{system}:{name}", "daily_use").text.strip()
            ):
                yield name

    def _followed(self, plan: Plan, now: datetime) -> FollowedPlan:
        judged, kept = self._plans.judged(plan, now), self._plans.kept(plan)
        if judged is None or kept is None:
            return FollowedPlan(plan.plan_id, plan.parameter, None)
        return FollowedPlan(plan.plan_id, plan.parameter, kept, judged.state, judged.said)

    def _read(self, system: str) -> dict[str, Newest]:
        if system not in self._readings:
            newest = self._document.log.latest_by_subject(system, "reading")
            self._readings[system] = {
                name: Newest(entry.fields["value"], entry.at, LOG)
                for name, entry in newest.items()
                if "value" in entry.fields
            }
        return self._readings[system]

    def _doses(self, system: str, now: datetime) -> tuple[Noted, ...]:
        """Return the doses of the log that no plan counts already."""
        litres = correct.volume_l(self._document.values(system))
        if litres is None:
            return ()
        if system not in self._noted:
            found = []
            for entry in self._document.log.entries(system, ("dose",), since=now - OLDEST):
                carried = logbook.carried(entry.fields.get("carries", Typed("")).text)
                counted = any(self._plans.counts(system, name, entry) for name in carried)
                if entry.value is not None and carried and not counted:
                    rises = {name: entry.value * per_ml / litres for name, per_ml in carried.items()}
                    found.append(Noted(entry.at, entry.subject, rises))
            self._noted[system] = tuple(found)
        return self._noted[system]
