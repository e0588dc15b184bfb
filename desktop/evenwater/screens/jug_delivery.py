"""The jug check as a keeper reads it: what left the jug against what should have, the likely cause, and what to look at first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from evenwater.engine.fields import FLOW
from evenwater.engine.jug_causes import WELL
from evenwater.engine.jug_check import (
    AMBER_MARK,
    CANNOT_TELL,
    COARSE_MARK,
    RED_MARK,
    JugCheck,
    LevelRead,
    Levels,
    Refill,
    check,
)
from evenwater.engine.jug_level import Draw
from evenwater.engine.quantities import Typed, from_canonical, to_canonical
from evenwater.engine.question import PUMP_UNCERTAINTY
from evenwater.engine.reader import Ask, Ok, read
from evenwater.engine.reasons import Reason
from evenwater.engine.units import KINDS
from evenwater.screens import jug_words, words
from evenwater.screens.jug_levels import Level, accuracy_ml, below_ml, steady
from evenwater.screens.jug_room import Drawer, Jug, volume
from evenwater.screens.names import shown_name
from evenwater.screens.rounds_jugs import UNSURE, Drawn, taken
from evenwater.screens.shown import date_time, significant, with_unit
from evenwater.screens.terms import term
from evenwater.wording import marked, say, say_all

LOOKING = marked("Reckoning what is taken from the jugs.")
NO_PUMP = marked("Nothing is known to be taken from this jug, so its levels say nothing of a pump.")
NO_VOLUME = marked("Say what the jug holds when it is full; then its levels can be compared.")
_ONE = marked("One level is noted. Read it again in a few days: two levels tell how the pump delivers.")
_NONE = marked(
    "No level is noted yet. Read one now, and one more in a few days: two levels tell how the pump delivers."
)
_WELL = marked("All is well: the pump delivers what it should.")
_FAR_LESS = marked(
    "Far less is in the log than the daily rate takes. What was dosed by hand and not noted looks like a fault of the pump."
)


@dataclass(frozen=True)
class FlowOffer:
    """A flow that the levels propose for a pump: what to say of it, and what its field would say. Nothing is changed by itself."""

    pump_id: str
    pump: str
    words: str
    typed: Typed


@dataclass(frozen=True)
class CheckView:
    """What the levels say of the pump.

    ``state`` is "none" (nothing can be said; ``told`` says why), or the mark: "within", "amber", "red" or "too_coarse".
    ``told`` are sentences with the figures, ``cause`` the likely one or that nobody can tell, ``possible`` the others, ``steps`` what to
    look at, the first first. ``off`` says in short by how much the delivery is off. ``stop`` is a sentence when a siphon is possible. ``flow`` stands apart.
    """

    state: str
    told: tuple[str, ...]
    cause: str = ""
    possible: str = ""
    steps: tuple[str, ...] = ()
    stop: str = ""
    notes: tuple[str, ...] = ()
    off: str = ""
    flow: FlowOffer | None = None


def view(jug: Jug, now: datetime) -> CheckView:
    """Return the check of a jug.

    Parameters
    ----------
    jug : Jug
        The jug with its levels and with who takes from it.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    CheckView
        What its levels say.

    Notes
    -----
    What should have left the jug are the doses in the log and, where none are, the daily rate: the same figures that say how long the jug
    lasts. They are spread over the pump's doses.
    """
    holds = jug.holds_ml
    if jug.drawers is None:
        return CheckView("none", (say(LOOKING),))
    if not jug.per_day_ml:
        return CheckView("none", (say(NO_PUMP),), notes=tuple(_fell(jug, now)))
    if holds is None:
        return CheckView("none", (say(NO_VOLUME),))
    levels = steady(jug.levels, jug.batch, jug.per_day_ml, now)
    if len(levels) < 2:
        return CheckView("none", (say(_ONE) if levels else say(_NONE),))
    record, basis = _record(jug, levels, holds)
    found = check(record)
    if isinstance(found, Reason):
        # Without a single dose between, what fell has run out by itself.
        fell = found.code == "fell_without_doses"
        said = words.sentence(found)
        return CheckView("none", () if fell else (said,), stop=said if fell else "")
    return _checked(jug, found, basis, now)


def _fell(jug: Jug, now: datetime) -> Iterator[str]:
    """Yield that a level fell though nothing is known to be taken (H25)."""
    levels, holds = steady(jug.levels, jug.batch, 0.0, now), jug.holds_ml
    if len(levels) < 2 or holds is None:
        return
    record, _ = _record(jug, levels, holds)
    found = check(record)
    if isinstance(found, Reason) and found.code == "fell_without_doses":
        yield (
            say(
                "The level fell all the same. If no pump draws from this jug, it runs in by itself: lift the outlet out of the water at once and set the jug below it."
            )
        )


def summary(view: CheckView) -> str:
    """Return what the check says in the list of all jugs: to stop, or how far off the pump is; empty where it is well or not known.

    Parameters
    ----------
    view : CheckView
        The check of one jug.

    Returns
    -------
    str
        A few words.
    """
    if view.stop:
        return say("it may run in by itself")
    return view.off if view.state in (AMBER_MARK, RED_MARK) else ""


def _record(jug: Jug, levels: tuple[Level, ...], holds: float) -> tuple[Levels, str]:
    first, last = levels[0].at, levels[-1].at
    drawers = jug.drawers or ()
    drawn = [_drawn(each.per_day_ml, each.logged, first, last) for each in drawers]
    total, basis = taken(drawn, first.astimezone(UTC), last.astimezone(UTC), holds * len(levels))
    by_rate = jug.per_day_ml * ((last.astimezone(UTC) - first.astimezone(UTC)) / timedelta(days=1))
    scale = total / by_rate if by_rate > 0.0 else 1.0
    record = Levels(
        # A refill counts right after the level before it; without one the record begins with what it came to.
        readings=tuple(LevelRead(each.at, each.ml if each.before_ml is None else each.before_ml) for each in levels),
        draws=tuple(_draws(drawers, first, scale)),
        holds_ml=holds,
        unreachable_ml=below_ml(jug.stock),
        # Half widths of 95 % intervals, taken as two standard deviations.
        reading_sd=accuracy_ml(jug.stock, holds) / 2.0,
        calibration_sd=PUMP_UNCERTAINTY / 2.0,
        hours=jug.head_hours,
        refills=tuple(
            Refill(level.at, level.ml - level.before_ml)
            for level in levels
            if level.refilled and level.before_ml is not None
        ),
    )
    return record, basis


def _draws(drawers: Iterable[Drawer], first: datetime, scale: float) -> Iterator[Draw]:
    """Yield what each pump takes; what one pump takes for several systems cannot be told apart by the level, nor need it be."""
    by_pump: dict[tuple[str, ...], list[Drawer]] = {}
    for drawer in drawers:
        if drawer.per_day_ml > 0.0:
            by_pump.setdefault(tuple(drawer.pumps) or (drawer.system_id,), []).append(drawer)
    for same in by_pump.values():
        count = same[0].doses_per_day
        per_day = scale * sum(drawer.per_day_ml for drawer in same)
        yield Draw(same[0].name, per_day / count, count, first + timedelta(days=1) / count)


def _drawn(per_day: float, logged: tuple[tuple[float, float], ...], first: datetime, last: datetime) -> Drawn:
    inside = [(at, ml) for at, ml in logged if first.timestamp() < at <= last.timestamp()]
    newest = datetime.fromtimestamp(max(at for at, _ in inside), UTC) if inside else None
    return Drawn(per_day, sum(ml for _, ml in inside), newest)


def _checked(jug: Jug, found: JugCheck, basis: str, now: datetime) -> CheckView:
    bias, half = found.ratio - 1.0, found.ratio_half
    way = say("more") if bias > 0.0 else say("less")
    since, until = (date_time(at.astimezone(now.tzinfo)) for at in (found.since, found.until))
    real, half_ml, expected = (volume(ml) for ml in (found.real_ml, found.real_half_ml, found.expected_ml))
    off = say(
        "{bias} {way} (give or take {half})", bias=jug_words.percent(abs(bias)), way=way, half=jug_words.percent(half)
    )
    told = [
        say(
            "{real} left the jug from {since} to {until} (give or take {half}); {expected} were expected.",
            real=real,
            since=since,
            until=until,
            half=half_ml,
            expected=expected,
        ),
        say("That is {off}: {marks}.", off=off, marks=say_all(jug_words.MARKS[found.mark])),
    ]
    if found.mark == COARSE_MARK:
        told.append(
            say(
                "To tell {percent}, read levels between which {clear_from} or more are dosed.",
                percent=jug_words.percent(0.05),
                clear_from=volume(found.clear_from_ml),
            )
        )
    unknown = found.cause == CANNOT_TELL
    others = [say_all(jug_words.CAUSES[name]) for name, _ in found.candidates if name not in (found.cause, WELL)]
    well = found.cause == WELL
    # Where all is well, nothing is off that could be told apart.
    notes = [words.sentence(reason) for reason in found.remarks if not (well and reason.code == "several_pumps")]
    if basis == UNSURE:
        notes.append(say(_FAR_LESS))
    return CheckView(
        state=found.mark,
        told=tuple(told),
        cause=say(jug_words.CANNOT_TELL)
        if unknown
        else say(_WELL)
        if well
        else say("Likely: {causes}.", causes=say_all(jug_words.CAUSES[found.cause])),
        possible=say("Possible{too}: {others}.", too="" if unknown else say(" too"), others="; ".join(others))
        if others
        else "",
        steps=tuple(say_all(jug_words.STEPS[step]) for step in found.steps),
        stop=words.sentence(Reason("siphon_possible", {}, "level")) if found.stop else "",
        notes=tuple(notes),
        off=say(
            "{bias} too {much} delivered",
            bias=jug_words.percent(abs(bias)),
            much=say("much") if bias > 0.0 else say("little"),
        ),
        flow=_flow(jug, found),
    )


def _flow(jug: Jug, found: JugCheck) -> FlowOffer | None:
    """Return the flow a sure and steady bias proposes, where one pump draws from the jug and its flow can be read."""
    if found.factor is None or len(jug.pumps) != 1 or found.stop:
        return None
    ((pump_id, pump),) = jug.pumps.items()
    typed = pump.get("flow", Typed(""))
    read_flow = read(typed.text, FLOW, typed.unit or FLOW.unit)
    if not isinstance(read_flow, Ok):
        return None
    unit = read_flow.entered.unit
    shown = KINDS[FLOW.kind].unit(unit).shown
    canonical = to_canonical(float(read_flow.entered.number), FLOW.kind, unit)
    low, new, high = (
        significant(from_canonical(canonical * share, FLOW.kind, unit), 3)
        for share in (found.factor.low, found.factor.value, found.factor.high)
    )
    name = shown_name(pump, say("the pump"))
    said = say(
        "{name} is set by a flow of {entered_number}. By these levels it gives {new} ({low} to {high}). Calibrate it first; use this only if the calibration says the same.",
        name=term(name),
        entered_number=with_unit(significant(float(read_flow.entered.number), 3), shown),
        new=with_unit(new, shown),
        low=low,
        high=high,
    )
    # A point before three digits could be taken for a thousands mark.
    text = f"{new}0" if isinstance(read(new, FLOW, unit), Ask) else new
    return FlowOffer(pump_id, name, said, Typed(text, unit))
