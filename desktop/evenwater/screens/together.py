"""All plans of a system in one mass balance, without widgets: from records and log to the question, and its answer in words."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import Any

from evenwater.engine import exchange_intake, fields, intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.exchange_question import ExchangeQuestion, Moved, OneDose
from evenwater.engine.following import ENDED, STOP
from evenwater.engine.form import Form, Unread
from evenwater.engine.quantities import Typed
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.together import solve
from evenwater.engine.together_answer import TogetherAnswer
from evenwater.engine.together_question import UPKEEP, Source, TogetherQuestion, carried_forward
from evenwater.engine.upkeep import UpkeepAnswer
from evenwater.engine.upkeep_balance import amount, used_up
from evenwater.screens import exchange_given, foods_given, together_sources, words
from evenwater.screens.exchange_given import ASSUMED, Given
from evenwater.screens.shown import span
from evenwater.screens.terms import capitalized, term
from evenwater.screens.timetable_given import FollowedPlan
from evenwater.screens.together_sources import Ramp, Tank
from evenwater.wording import say

DAYS_AHEAD = 30.0
# What was tested longer ago says nothing of today; common practice, no source.
OLDEST = timedelta(days=60)
_DAY = timedelta(days=1)
_NO_EXCHANGE = {"per_day": "0 L per day"}


@dataclass(frozen=True)
class Noted:
    """A dose in the log that no plan counts: when, from which jug, and what it raised by parameter [canonical units]."""

    at: datetime
    stock: str
    rises: Mapping[str, float]


@dataclass(frozen=True)
class Asked:
    """Everything that is known of a system and runs in it.

    ``given`` has readings, uses, water and foods; ``upkeep`` is the question of the Upkeep sheet as typed, ``stocks`` the id of the jug of
    each value kept. ``standing`` is the correction that stands on the Correct sheet, as if it were started now.
    """

    given: Given
    upkeep: Mapping[str, Any] = field(default_factory=dict)
    stocks: Mapping[str, str] = field(default_factory=dict)
    plans: tuple[FollowedPlan, ...] = ()
    noted: tuple[Noted, ...] = ()
    standing: Answer | None = None


@dataclass(frozen=True)
class LeftOut:
    """What is not in the balance or not sure in it, and why; ``unread`` is what must be read before anything is printed."""

    text: str
    unread: bool = False


@dataclass(frozen=True)
class Together:
    """The answer with what it was made of; ``answer`` is None where nothing can be said, and ``left_out`` says why."""

    answer: TogetherAnswer | None = None
    left_out: tuple[LeftOut, ...] = ()
    upkeep: UpkeepAnswer | None = None
    ramps: tuple[Ramp, ...] = ()
    read_at: Mapping[str, datetime | None] = field(default_factory=dict)
    against: tuple[str, ...] = ()


def evaluate(asked: Asked, catalogue: Catalogue, now: datetime) -> Together:
    """Put everything together that runs in a system.

    Parameters
    ----------
    asked : Asked
        Records, log and plans.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    Together
        The answer, and what was left out of it.
    """
    return _Gathering(asked, catalogue, now).together()


class _Gathering:
    """Reads one system; collects on the way what cannot be read."""

    def __init__(self, asked: Asked, catalogue: Catalogue, now: datetime) -> None:
        self._asked, self._catalogue, self._now = asked, catalogue, now
        self._left_out: list[LeftOut] = []
        self._against: list[str] = []

    def together(self) -> Together:
        read = self._tank()
        if read is None:
            return Together(left_out=tuple(self._left_out))
        exchange, rows = read
        tank = Tank(self._catalogue, exchange.water, exchange.volume_l, self._now)
        ramps = tuple(self._ramps())
        kept = together_sources.upkeep_of(self._asked.upkeep, ramps, tank)
        self._left_out += [LeftOut(say("The upkeep is not counted. {said}", said=said), True) for said in kept.against]
        uses = self._uses(exchange)
        sources = (*self._corrections(ramps, tank), *kept.sources, *self._foods(uses, tank))
        gone = used_up(uses, tank.water)
        read_at = {row["parameter"]: row["read_at"] for row in rows}
        unknown = {row["parameter"] for row in rows if row["read_from"] == ASSUMED}
        values, missing = self._values(exchange, sources, gone, rows)
        lately = tuple(self._lately())
        question = TogetherQuestion(replace(exchange, values=values), sources, frozenset(unknown | missing), lately)
        found = solve(question)
        if isinstance(found, Refused):
            self._left_out += [LeftOut(words.sentence(reason), True) for reason in found.reasons]
            return Together(left_out=tuple(self._left_out))
        return Together(found, tuple(self._left_out), kept.answer, ramps, read_at, tuple(self._against))

    # The tank

    def _tank(self) -> tuple[ExchangeQuestion, Sequence[Mapping[str, Any]]] | None:
        """Return the tank with its values as they were tested, leaving out what cannot be read."""
        given = replace(self._asked.given, upkeep=None, foods=(), batches={})
        raw = exchange_given.raw_question(given, self._catalogue)
        flow = {n: t for n, t in raw["exchange"].items() if n not in ("days", "old_jug", "new_jug")}
        raw = {**raw, "exchange": flow or _NO_EXCHANGE}
        raw.pop("mixing", None)
        for _ in range(3):
            found = exchange_intake.exchange(raw, self._catalogue)
            if isinstance(found, ExchangeQuestion):
                return replace(found, days=DAYS_AHEAD), raw["value"]
            raw = self._without(raw, found)
            if not raw:
                return None
        return None

    def _without(self, raw: dict[str, Any], unread: Unread) -> dict[str, Any]:
        """Return the question without what cannot be read; nothing where there is no tank without it."""
        bad_rows, tables = set(), set()
        for reason in unread.reasons:
            table, _, rest = reason.path.partition(".")
            number = rest.partition(".")[0]
            if table == "value" and number.isdigit():
                name = raw["value"][int(number) - 1]["parameter"]
                bad_rows.add(name)
                self._left_out.append(LeftOut(f"{capitalized(name)}: {words.sentence(reason)}", True))
            else:
                tables.add(table)
                self._left_out.append(LeftOut(words.sentence(reason), True))
        rows = [row for row in raw["value"] if row["parameter"] not in bad_rows]
        if "system" in tables or not rows:
            return {}
        out = {**raw, "value": rows}
        if "exchange" in tables:
            out["exchange"] = _NO_EXCHANGE
        if "new_water" in tables:
            out.pop("new_water", None)
        return out

    # What runs

    def _uses(self, exchange: ExchangeQuestion) -> dict[str, float]:
        """Return the uses that were typed or learned, also of values that nobody has tested [canonical units per day]."""
        found = {moved.parameter.name: moved.use for moved in exchange.values}
        given = self._asked.given
        for p in self._catalogue.parameters.values():
            typed = given.corrections.get(p.name, {}).get("daily_use", Typed(""))
            typed = typed if typed.text.strip() else given.learned.get(p.name, typed)
            if p.name not in found:
                found[p.name] = Form({"use": typed}).number(fields.rise("use", p), exchange.water) or 0.0
        return {name: use for name, use in found.items() if use > 0.0}

    def _ramps(self) -> Iterator[Ramp]:
        """Yield the corrections that run; what stands on the sheet takes the place of a plan for the same value."""
        standing = None if self._asked.standing is None else together_sources.standing(self._asked.standing)
        for plan in self._asked.plans:
            head = say("Plan {plan_id} for {parameter}", plan_id=plan.plan_id, parameter=term(plan.parameter))
            kept = plan.kept
            question = None if kept is None else intake.correction(kept.question, self._catalogue, kept.course.started)
            if kept is None or not isinstance(question, CorrectionQuestion):
                self._left_out.append(
                    LeftOut(say("{head} cannot be read. End it on the Correct sheet.", head=head), True)
                )
                continue
            replaced = standing is not None and standing.parameter.name == plan.parameter
            if plan.state == STOP and not replaced:
                self._against.append(
                    say("{head} must not be followed on. {plan_said}", head=head, plan_said=plan.said).strip()
                )
            elif plan.state == ENDED and not replaced:
                self._left_out.append(
                    LeftOut(say("{head} is over. {plan_said}", head=head, plan_said=plan.said).strip(), True)
                )
            yield together_sources.followed(
                plan.plan_id, kept.course, kept.volume_l, question, 0.0 if replaced else math.inf
            )
        if standing is not None:
            yield standing

    def _corrections(self, ramps: Sequence[Ramp], tank: Tank) -> Iterator[Source]:
        items = {item["parameter"] for item in self._asked.upkeep.get("item", ())}
        for ramp in ramps:
            yield from ramp.sources(tank, keeps=ramp.parameter.name not in items)

    def _foods(self, uses: Mapping[str, float], tank: Tank) -> Iterator[Source]:
        foods = self._asked.given.foods
        fed = foods_given.additions(foods, self._catalogue, tank.water, tank.volume_l)
        for name in foods_given.unread(foods, self._catalogue, tank.water):
            self._left_out.append(
                LeftOut(say("“{name}” cannot be read and is not counted. See the Foods sheet.", name=term(name)), True)
            )
        found = dict.fromkeys(each.parameter for each in fed if each.parameter in uses)
        if found:
            said = say(
                "What the foods do to {found} is in what is used already, which was found by testing.",
                found=say(" and ").join(found),
            )
            self._left_out.append(LeftOut(said))
        return together_sources.of_foods(fed, uses, self._catalogue)

    # The values now

    def _values(
        self,
        exchange: ExchangeQuestion,
        sources: Sequence[Source],
        gone: Mapping[str, float],
        rows: Sequence[Mapping[str, Any]],
    ) -> tuple[tuple[Moved, ...], set[str]]:
        """Return every value that somebody has tested or that something moves, as it is now; and those that nobody has tested."""
        tested = dict(zip((moved.parameter.name for moved in exchange.values), exchange.values, strict=True))
        row_of = {row["parameter"]: row for row in rows}
        moved_by_any = {source.spell.parameter.name for source in sources}
        found, missing = [], set()
        for p in self._catalogue.parameters.values():
            use = amount(p.name, gone, exchange.water)
            then = tested.get(p.name)
            if then is None:
                if p.name not in moved_by_any and use == 0.0:
                    continue
                self._left_out.append(
                    LeftOut(say("{name}: no reading, so only its change is known.", name=capitalized(p.name)))
                )
                missing.add(p.name)
                at = p.canonical(p.natural)
                found.append(Moved(p, p.display_unit, at, at, use=use))
                continue
            known = self._now_of(replace(then, use=use), row_of[p.name], exchange, sources)
            if known is None:
                missing.add(p.name)
            found.append(replace(then, use=use) if known is None else known)
        return tuple(found), missing

    def _now_of(
        self, then: Moved, row: Mapping[str, Any], exchange: ExchangeQuestion, sources: Sequence[Source]
    ) -> Moved | None:
        """Return a value carried forward from where it is known last; None where that is too long ago."""
        p, read_at = then.parameter, row["read_at"]
        value, at = then.now, read_at
        standing = self._asked.standing
        if standing is not None and standing.question.parameter == p:
            # The sheet's own ramp begins here: the reading, and what it could not show yet.
            return replace(then, now=standing.question.start)
        for plan in self._asked.plans:
            course = None if plan.kept is None else plan.kept.course
            if course is not None and plan.parameter == p.name and (at is None or course.started >= at):
                value, at = course.measured + course.untested, course.started
        if at is None:
            # The salinity of the system's record is what its water is held at.
            if row["read_from"] != ASSUMED and p.kind != "salinity":
                self._left_out.append(
                    LeftOut(
                        say("{name}: nobody said when it was tested; it is taken for now's.", name=capitalized(p.name))
                    )
                )
            return then
        age = self._now - at
        if read_at is not None and (self._now - read_at) / _DAY > p.stale_days:
            said = say(
                "{name}: the reading is {now} old.", name=capitalized(p.name), now=span((self._now - read_at) / _DAY)
            )
            if age > OLDEST:
                self._left_out.append(LeftOut(say("{said} Only its change is known until it is tested.", said=said)))
                return None
            self._left_out.append(LeftOut(say("{said} Test it again.", said=said)))
        given = tuple(self._given(p, at, sources))
        return replace(then, now=carried_forward(exchange, replace(then, now=value), age / _DAY, sources, given))

    def _lately(self) -> Iterator[OneDose]:
        """Yield the doses by hand of the last 24 hours, from jugs that upkeep does not take from."""
        for noted in self._asked.noted:
            if self._now - _DAY < noted.at <= self._now and noted.stock not in self._asked.stocks.values():
                for name, rise in noted.rises.items():
                    if name in self._catalogue.parameters:
                        yield OneDose(self._catalogue.parameters[name], (noted.at - self._now) / _DAY, rise)

    def _given(self, p: Parameter, since: datetime, sources: Sequence[Source]) -> Iterator[OneDose]:
        """Yield what was noted since an instant; of a jug that upkeep takes from only what is more than upkeep gave."""
        age = (self._now - since) / _DAY
        by_upkeep: dict[str, float] = {}
        for noted in self._asked.noted:
            rise = noted.rises.get(p.name, 0.0)
            if not since < noted.at <= self._now or rise <= 0.0:
                continue
            if noted.stock in self._asked.stocks.values():
                by_upkeep[noted.stock] = by_upkeep.get(noted.stock, 0.0) + rise
            else:
                yield OneDose(p, (noted.at - since) / _DAY, rise)
        for stock, rise in by_upkeep.items():
            names = {name for name, jug in self._asked.stocks.items() if jug == stock}
            runs = sum(
                s.spell.per_day
                for s in sources
                if s.sort == UPKEEP and s.name in names and s.spell.parameter == p and s.spell.begins < 0.0
            )
            if rise > runs * age:
                yield OneDose(p, age, rise - runs * age)
