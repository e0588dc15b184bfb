"""What the emergency card says: the stop list in letters for 2 m, then the chosen way, what not to do, first aid and electricity."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine.quantities import Typed
from evenwater.engine.recovery import BOTH, EXCHANGE, HOLD, STOP, Choice, RecoveryAnswer, said
from evenwater.engine.recovery_plan import Stage, hard
from evenwater.screens import correct, recovery_sheet, recovery_words, words
from evenwater.screens.contingency_views import PHONE, Step, WriteIn
from evenwater.screens.names import shown_name
from evenwater.screens.recovery_lines import DANGERS, now_words
from evenwater.screens.recovery_words import value
from evenwater.screens.shown import about, date_time, date_words, span, with_unit
from evenwater.screens.views import DoseRow

# After a day the first test has changed every figure; common practice, no source.
_HOLDS = timedelta(days=1)
# So many days of an exchange stand one by one: by then a test has made a new card.
_DAYS_SHOWN = 14
EMERGENCY = recovery_sheet.EMERGENCY
ELECTRICITY = (
    "Dry your hands before you touch a plug. Unplug before you reach into the water.",
    "Water on a plug or a power strip: touch nothing, switch the circuit off at the board first.",
    "Every circuit here needs residual-current protection that trips at 30\u00a0mA or less.",
)
NEVER = (
    "Give nothing that lowers it: no acid, no second chemical against the first.",
    "Do not start the pump again before the keeper says so.",
    "Never make up missed doses.",
)
BANNER = "EMERGENCY"
NO_WAY = "No way down was chosen. Hold all doses, test every day, and wait for the keeper."


@dataclass(frozen=True)
class EmergencyCard:
    """The whole card, before it is dealt out to pages.

    ``stop`` are the lines in the largest letters, ``shortest`` the same for a small paper, ``in_full`` the same as sentences. ``rows`` is the amount to exchange first, ``steps`` the way in order of time, ``never``
    what must not be done, ``facts`` labels with values, ``cautions`` the handling lines of what ran in, which end in ``emergency``, and
    ``electricity`` what holds of plugs. ``phone`` ends where a number is to be written.
    """

    title: str
    system: str
    volume: str
    issued: str
    valid_until: str
    replace: str
    happened: str
    stop: tuple[str, ...]
    shortest: tuple[str, ...]
    in_full: tuple[str, ...]
    phone: str
    way: str
    rows: tuple[DoseRow, ...]
    steps: tuple[Step, ...]
    never: tuple[str, ...]
    dangers: tuple[str, ...]
    facts: tuple[tuple[str, str], ...]
    cautions: tuple[str, ...]
    emergency: str
    electricity: tuple[str, ...]
    write_in: WriteIn


def card(answer: RecoveryAnswer, chosen: str, system: Mapping[str, Typed], now: datetime) -> EmergencyCard:
    """Return the card of a recovery.

    Parameters
    ----------
    answer : RecoveryAnswer
        The answer.
    chosen : str
        Name of the chosen way; one that is not proposed counts as none.
    system : mapping of str to Typed
        The system's fields.
    now : datetime
        The present in the keeper's zone, which all dates are written in.

    Returns
    -------
    EmergencyCard
        Everything that stands on it.
    """
    p = answer.question.parameter
    way = next((each for each in answer.choices if each.name == chosen and each.proposed), None)
    over = recovery_sheet.handling(answer)
    return EmergencyCard(
        title=f"{BANNER}: {p.name} too high",
        system=shown_name(system, "Unnamed system"),
        volume=f"Net volume {correct.volume_words(system).replace(' net', '', 1)}.",
        issued=f"Issued {date_words(now)} {now:%H:%M}",
        valid_until=f"Valid until {date_time(now + _HOLDS)}",
        replace="Replace this card after the next test.",
        happened=_happened(answer),
        stop=tuple(recovery_words.SHORT[step] for step in STOP),
        shortest=tuple(recovery_words.SHORTEST[step] for step in STOP),
        in_full=tuple(recovery_words.STOP[step] for step in STOP),
        phone=PHONE,
        way=NO_WAY if way is None else recovery_words.CHOICES[way.name],
        rows=tuple(_rows(answer, way)),
        steps=tuple(_steps(answer, way, now)),
        never=(*NEVER, *_most(answer, way)),
        dangers=tuple(words.sentence(reason) for reason in answer.remarks if reason.code in DANGERS),
        facts=tuple(_facts(answer, way)),
        cautions=over,
        emergency=EMERGENCY if over else "",
        electricity=ELECTRICITY,
        write_in=WriteIn("Readings", ("Date, time", "Reading", "What was tested", "Initials"), 8),
    )


def _happened(answer: RecoveryAnswer) -> str:
    q, p = answer.question, answer.question.parameter
    ran_in = "" if q.overdose is None else f"About {about(q.overdose.ml)} ran in. "
    return f"{ran_in}{p.name.capitalize()} {now_words(q)}, to come to {value(said(q, p), q.target)}."


def _rows(answer: RecoveryAnswer, way: Choice | None) -> Iterator[DoseRow]:
    """Yield what is exchanged on the first day, in letters that are read from where the buckets stand."""
    if way is None or way.course is None or not way.course.stages:
        return
    first = way.course.stages[0]
    before = "After a new test, on the first day" if answer.test_first else "On the first day"
    yield DoseRow(
        when=f"{before}, {span(first.days)}",
        dose=about(1000.0 * first.l_per_day * first.days),
        additive="new water in, as much old water out",
        setting=f"That is {_per_hour(first)} an hour, far from the animals.",
    )


def _per_hour(stage: Stage) -> str:
    return about(1000.0 * stage.l_per_day / 24.0)


def _steps(answer: RecoveryAnswer, way: Choice | None, now: datetime) -> Iterator[Step]:
    q, p = answer.question, answer.question.parameter
    target = value(said(q, p), q.target)
    yield Step("At once", f"Test {p.name} and everything else. Write it down.")
    if way is None or way.course is None:
        yield Step("Every day", f"Test {p.name}. Give nothing.")
        return
    course = way.course
    if answer.test_first:
        yield Step("Cloudy or white film", "Wait. Tell the keeper the new tests: this card may not hold any more.")
    if way.name == HOLD:
        for day in way.tests[1:]:
            yield Step(date_time(now + timedelta(days=day)), f"Test {p.name}. Still give nothing above {target}.")
        yield Step(f"At {target} or below", "Tell the keeper. The doses begin again only as the keeper says.")
        return
    last = zip(course.stages, course.points[1:], strict=True)
    for number, (stage, point) in enumerate(last, start=1):
        if number > _DAYS_SHOWN:
            yield Step("Then", "Test and ask the keeper for a new card.")
            break
        reached = value(said(q, p), point.values[p.name])
        begins = now + timedelta(days=number - 1)
        much = about(1000.0 * stage.l_per_day * stage.days)
        yield Step(
            f"From {date_time(begins)}",
            f"Test first. Then {much} of water in {span(stage.days)}: {_per_hour(stage)} an hour. About {reached} after it.",
        )
    if course.further_stages:
        yield Step("Still above", f"Go on with no more than {_per_hour(course.stages[0])} an hour, test every day.")
    yield Step(f"At {target} or below", "Stop. Tell the keeper.")


def _most(answer: RecoveryAnswer, way: Choice | None) -> Iterator[str]:
    q, p = answer.question, answer.question.parameter
    if way is not None and way.course is not None and way.course.stages:
        stages = (*way.course.stages, *way.course.further_stages)
        most = about(1000.0 * max(stage.l_per_day for stage in stages))
        yield f"Never exchange more than {most} in 24 hours."
    yield f"Stop and call if {p.name} falls by more than {recovery_words.change(said(q, p), hard(p))} in 24 hours."


def _facts(answer: RecoveryAnswer, way: Choice | None) -> Iterator[tuple[str, str]]:
    q = answer.question
    yield "Held", recovery_words.names(q.held).capitalize() + ": no doses."
    if way is None or way.course is None:
        return
    how_long = [span(days) for days in way.course.between_days]
    yield "How long", span(way.course.days) if how_long[0] == how_long[1] else f"{how_long[0]} to {how_long[1]}"
    for row in recovery_sheet.rows(answer, way):
        now, end = with_unit(row.now, row.unit), with_unit(row.end, row.unit)
        moves, most = with_unit(row.moves, row.moves_in), with_unit(row.most, row.moves_in)
        yield row.parameter, f"{now} now, {end} at the end; moves {moves} in 24 hours, {most} at most."
    if way.name in (EXCHANGE, BOTH):
        yield "New water", "Bring it to the tank's temperature and salinity first."
