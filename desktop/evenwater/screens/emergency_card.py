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
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import DoseRow
from evenwater.wording import marked, say, say_all

# After a day the first test has changed every figure; common practice, no source.
_HOLDS = timedelta(days=1)
# So many days of an exchange stand one by one: by then a test has made a new card.
_DAYS_SHOWN = 14
EMERGENCY = recovery_sheet.EMERGENCY
ELECTRICITY = (
    marked("Dry your hands before you touch a plug. Unplug before you reach into the water."),
    marked("Water on a plug or a power strip: touch nothing, switch the circuit off at the board first."),
    marked("Every circuit here needs residual-current protection that trips at 30\u00a0mA or less."),
)
NEVER = (
    marked("Give nothing that lowers it: no acid, no second chemical against the first."),
    marked("Do not start the pump again before the keeper says so."),
    marked("Never make up missed doses."),
)
BANNER = "EMERGENCY"
NO_WAY = marked("No way down was chosen. Hold all doses, test every day, and wait for the keeper.")


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
        title=say("{banner}: {name} too high", banner=BANNER, name=term(p.name)),
        system=shown_name(system, say("Unnamed system")),
        volume=correct.volume_sentence(system),
        issued=say("Issued {date_words} {clock}", date_words=date_words(now), clock=f"{now:%H:%M}"),
        valid_until=say("Valid until {date_time}", date_time=date_time(now + _HOLDS)),
        replace=say("Replace this card after the next test."),
        happened=_happened(answer),
        stop=tuple(say_all(recovery_words.SHORT[step]) for step in STOP),
        shortest=tuple(say_all(recovery_words.SHORTEST[step]) for step in STOP),
        in_full=tuple(say_all(recovery_words.STOP[step]) for step in STOP),
        phone=say(PHONE),
        way=say(NO_WAY) if way is None else say_all(recovery_words.CHOICES[way.name]),
        rows=tuple(_rows(answer, way)),
        steps=tuple(_steps(answer, way, now)),
        never=(*say_all(NEVER), *_most(answer, way)),
        dangers=tuple(words.sentence(reason) for reason in answer.remarks if reason.code in DANGERS),
        facts=tuple(_facts(answer, way)),
        cautions=over,
        emergency=say(EMERGENCY) if over else "",
        electricity=say_all(ELECTRICITY),
        write_in=WriteIn(
            say("Readings"), (say("Date, time"), say("Reading"), say("What was tested"), say("Initials")), 8
        ),
    )


def _happened(answer: RecoveryAnswer) -> str:
    q, p = answer.question, answer.question.parameter
    ran_in = "" if q.overdose is None else say("About {dose} ran in. ", dose=about(q.overdose.ml))
    return say(
        "{ran_in}{name} {now}, to come to {target}.",
        ran_in=ran_in,
        name=capitalized(p.name),
        now=now_words(q),
        target=value(said(q, p), q.target),
    )


def _rows(answer: RecoveryAnswer, way: Choice | None) -> Iterator[DoseRow]:
    """Yield what is exchanged on the first day, in letters that are read from where the buckets stand."""
    if way is None or way.course is None or not way.course.stages:
        return
    first = way.course.stages[0]
    before = say("After a new test, on the first day") if answer.test_first else say("On the first day")
    yield DoseRow(
        when=f"{before}, {span(first.days)}",
        dose=about(1000.0 * first.l_per_day * first.days),
        additive=say("new water in, as much old water out"),
        setting=say("That is {first} an hour, far from the animals.", first=_per_hour(first)),
    )


def _per_hour(stage: Stage) -> str:
    return about(1000.0 * stage.l_per_day / 24.0)


def _steps(answer: RecoveryAnswer, way: Choice | None, now: datetime) -> Iterator[Step]:
    q, p = answer.question, answer.question.parameter
    target = value(said(q, p), q.target)
    yield Step(say("At once"), say("Test {name} and everything else. Write it down.", name=term(p.name)))
    if way is None or way.course is None:
        yield Step(say("Every day"), say("Test {name}. Give nothing.", name=term(p.name)))
        return
    course = way.course
    if answer.test_first:
        yield Step(
            say("Cloudy or white film"), say("Wait. Tell the keeper the new tests: this card may not hold any more.")
        )
    if way.name == HOLD:
        for day in way.tests[1:]:
            yield Step(
                date_time(now + timedelta(days=day)),
                say("Test {name}. Still give nothing above {target}.", name=term(p.name), target=target),
            )
        yield Step(
            say("At {target} or below", target=target),
            say("Tell the keeper. The doses begin again only as the keeper says."),
        )
        return
    last = zip(course.stages, course.points[1:], strict=True)
    for number, (stage, point) in enumerate(last, start=1):
        if number > _DAYS_SHOWN:
            yield Step(say("Then"), say("Test and ask the keeper for a new card."))
            break
        reached = value(said(q, p), point.values[p.name])
        begins = now + timedelta(days=number - 1)
        much = about(1000.0 * stage.l_per_day * stage.days)
        yield Step(
            say("From {begins}", begins=date_time(begins)),
            say(
                "Test first. Then {much} of water in {days}: {stage} an hour. About {reached} after it.",
                much=much,
                days=span(stage.days),
                stage=_per_hour(stage),
                reached=reached,
            ),
        )
    if course.further_stages:
        yield Step(
            say("Still above"),
            say("Go on with no more than {stages} an hour, test every day.", stages=_per_hour(course.stages[0])),
        )
    yield Step(say("At {target} or below", target=target), say("Stop. Tell the keeper."))


def _most(answer: RecoveryAnswer, way: Choice | None) -> Iterator[str]:
    q, p = answer.question, answer.question.parameter
    if way is not None and way.course is not None and way.course.stages:
        stages = (*way.course.stages, *way.course.further_stages)
        most = about(1000.0 * max(stage.l_per_day for stage in stages))
        yield say("Never exchange more than {most} in 24 hours.", most=most)
    yield say(
        "Stop and call if {name} falls by more than {said} in 24 hours.",
        name=term(p.name),
        said=recovery_words.change(said(q, p), hard(p)),
    )


def _facts(answer: RecoveryAnswer, way: Choice | None) -> Iterator[tuple[str, str]]:
    q = answer.question
    yield say("Held"), capitalized(recovery_words.names(q.held)) + say(": no doses.")
    if way is None or way.course is None:
        return
    how_long = [span(days) for days in way.course.between_days]
    yield (
        say("How long"),
        span(way.course.days)
        if how_long[0] == how_long[1]
        else say("{how_long} to {how_long_2}", how_long=how_long[0], how_long_2=how_long[1]),
    )
    for row in recovery_sheet.rows(answer, way):
        now, end = with_unit(row.now, row.unit), with_unit(row.end, row.unit)
        moves, most = with_unit(row.moves, row.moves_in), with_unit(row.most, row.moves_in)
        yield (
            row.parameter,
            say(
                "{now} now, {end} at the end; moves {moves} in 24 hours, {most} at most.",
                now=now,
                end=end,
                moves=moves,
                most=most,
            ),
        )
    if way.name in (EXCHANGE, BOTH):
        yield say("New water"), say("Bring it to the tank's temperature and salinity first.")
