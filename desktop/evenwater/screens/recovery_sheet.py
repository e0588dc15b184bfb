"""The Recovery sheet without its widgets: the records to a question, the choices side by side to what is shown."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from evenwater.engine import fields, recovery, recovery_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.intake import water_of
from evenwater.engine.quantities import Typed, from_canonical, to_canonical
from evenwater.engine.reader import Field, Ok, read
from evenwater.engine.recovery import STOP, Choice, RecoveryAnswer
from evenwater.engine.recovery_plan import hard
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.screens import recovery_lines, recovery_words, shelf, water_given, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.recovery_lines import DANGERS, now_words
from evenwater.screens.shelf import filled
from evenwater.screens.shown import significant
from evenwater.screens.terms import capitalized, terms
from evenwater.screens.views import Message
from evenwater.wording import marked, say, say_all

Values = Mapping[str, Typed]

RAN_IN, MOST_PER_DAY = recovery_intake.OVERDOSE, recovery_intake.MOST_PER_DAY
SIGNS = recovery_intake.SIGNS
YES, NO = "yes", "no"
_SYSTEM = ("name", "net_volume", "volume_known", "volume_uncertainty", "salinity", "temperature", "ph")
# Below this two reckonings of nothing differ.
_NOTHING = 1e-9
EMERGENCY = marked("In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:")


@dataclass(frozen=True)
class Tested:
    """A value as last tested: as it was typed, and in the canonical unit of its parameter (None where it cannot be read)."""

    typed: Typed
    value: float | None


@dataclass(frozen=True)
class Records:
    """What the records hold: the fields of a system, of its water and of its recovery, of the batch that ran in, what was tested by
    parameter, and what is used in a day by parameter.
    """

    system: Values
    water: Values
    recovery: Values
    batch: Values
    tested: Mapping[str, Tested]
    uses: Mapping[str, Typed]


@dataclass(frozen=True)
class Row:
    """What a choice does to one value: now, how low and high it comes, its end, the most it moves in 24 hours, and what it may move.

    Figures stand alone; their unit is ``unit``, but that of ``moves`` and ``most`` is ``moves_in``.
    """

    parameter: str
    unit: str
    now: str
    low: str
    high: str
    end: str
    moves: str
    most: str
    moves_in: str


@dataclass(frozen=True)
class ChoiceView:
    """One of the choices: its name, whether it can be done, what it takes, day by day, and what it does to every value."""

    name: str
    title: str
    state: str
    proposed: bool
    takes: str = ""
    lines: tuple[str, ...] = ()
    reasons: tuple[str, ...] = ()
    rows: tuple[Row, ...] = ()
    tests: str = ""


@dataclass(frozen=True)
class RecoveryView:
    """The sheet; ``state`` is "empty", "refused" or "answered". What comes first stands whatever the state is."""

    state: str
    headline: str = ""
    held: str = ""
    handling: tuple[str, ...] = ()
    dangers: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    choices: tuple[ChoiceView, ...] = ()
    messages: tuple[Message, ...] = ()


@dataclass(frozen=True)
class Recovered:
    """What the sheet shows of a question, and the answer itself where there is one."""

    view: RecoveryView
    answer: RecoveryAnswer | None = None


def stop_list() -> tuple[tuple[str, str], ...]:
    """Return what comes first, in this order: in two or three words, and as a sentence."""
    return tuple((say_all(recovery_words.SHORT[step]), say_all(recovery_words.STOP[step])) for step in STOP)


def measured_field(parameter: Parameter) -> Field:
    """Return the field of a value tested since, or of a target."""
    return fields.concentration("change.measured", parameter)


def value_of(typed: Typed, parameter: Parameter, system: Values) -> float | None:
    """Return a value as typed [canonical unit], or None while it has no one meaning."""
    water = water_of({"system": dict(system)})
    found = read(typed.text, measured_field(parameter), typed.unit, water)
    if not isinstance(found, Ok):
        return None
    return to_canonical(float(found.entered.number), parameter.kind, found.entered.unit, water)


def too_high(codes: Collection[str], measured: Typed, parameter: Parameter, system: Values) -> bool:
    """Return whether a correction was refused because the reading is above its target, or above what any tank has.

    Parameters
    ----------
    codes : collection of str
        Codes of the reasons it was refused for.
    measured : Typed
        The reading as typed.
    parameter : Parameter
        What was to be raised.
    system : mapping of str to Typed
        The system's fields.

    Returns
    -------
    bool
        Whether this is a case for the Recovery sheet.
    """
    if "target_below_measured" in codes:
        return True
    value = value_of(measured, parameter, system) if "implausible" in codes else None
    return value is not None and value > parameter.canonical(parameter.plausible[1])


def raw_question(records: Records, catalogue: Catalogue) -> tuple[dict[str, Any], tuple[str, ...]]:
    """Put the records together as a question file of the kind ``recovery`` has them.

    Parameters
    ----------
    records : Records
        What the records hold.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    tuple of (dict, tuple of str)
        The question, and the parameters whose last test is so unlikely that it is not followed. A test of what ran in that no tank
        shows before an overdose counts as tested since.
    """
    said = records.recovery
    ran_in = bool(_text(said, "ran_in"))
    parameter = _text(said, "parameter")
    change: dict[str, Any] = {"parameter": parameter} if parameter else {}
    change |= filled(said, ("measured", "target"))
    system: dict[str, Any] = dict(filled(records.system, _SYSTEM))
    odd = []
    for name, p in catalogue.parameters.items():
        tested = records.tested.get(name)
        if tested is None:
            continue
        if tested.value is None or _likely(p, tested.value):
            system[name] = tested.typed
        elif name == parameter:
            change.setdefault("measured", tested.typed)
        else:
            odd.append(name)
    raw: dict[str, Any] = {"kind": "recovery", "system": system, "change": change}
    if ran_in:
        raw |= {"overdose": {"volume": said["ran_in"]}, "additive": shelf.additive_table(records.batch)}
    raw["use"] = dict(records.uses)
    raw["hold"] = {name: said[f"hold_{name}"] for name in catalogue.parameters if _text(said, f"hold_{name}")}
    new_water = water_given.tables(records.system, records.water).get("new_water", {})
    if new_water:
        raw["new_water"] = new_water
    if _text(said, "most_per_day"):
        raw["exchange"] = {"most_per_day": said["most_per_day"]}
    raw["signs"] = {sign: said[sign] for sign in SIGNS if _text(said, sign)}
    return raw, tuple(odd)


def evaluate(records: Records, catalogue: Catalogue, now: datetime) -> Recovered:
    """Read the question, reckon the choices, and turn them into what the sheet shows.

    Parameters
    ----------
    records : Records
        What the records hold.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    Recovered
        The view, with the answer where there is one.
    """
    raw, odd = raw_question(records, catalogue)
    if "overdose" not in raw and "parameter" not in raw["change"]:
        return Recovered(RecoveryView("empty"))
    question = recovery_intake.recovery(raw, catalogue, now.astimezone(UTC))
    if isinstance(question, Unread):
        messages = tuple(Message(words.sentence(r), r.path, r.code) for r in question.wrong)
        messages += tuple(Message(recovery_words.missing(r.path), r.path, r.code) for r in question.missing)
        return Recovered(RecoveryView("refused" if question.wrong else "empty", messages=messages))
    result = recovery.solve(question)
    if isinstance(result, Refused):
        messages = tuple(Message(words.sentence(r), r.path, r.code) for r in result.reasons)
        return Recovered(RecoveryView("refused", messages=messages))
    return Recovered(_view(result, odd), result)


def _view(answer: RecoveryAnswer, odd: tuple[str, ...]) -> RecoveryView:
    q, p = answer.question, answer.question.parameter
    target = recovery_words.value(recovery.said(q, p), q.target)
    how = say("as tested") if q.measured or q.overdose is None else say("reckoned from what ran in")
    notes = [words.sentence(reason) for reason in answer.remarks if reason.code not in DANGERS]
    if odd:
        unlikely = say(
            "The last test of {odd} is not likely for a tank, so it is not followed. Test it again.",
            odd=recovery_words.names(odd),
        )
        notes.insert(0, unlikely)
    return RecoveryView(
        "answered",
        headline=say(
            "{name} {now} ({how}), to come to {target}.",
            name=capitalized(p.name),
            now=now_words(q),
            how=how,
            target=target,
        ),
        held=say("{held} Held: {held_2}.", held=say(recovery_words.HELD), held_2=recovery_words.names(q.held)),
        handling=handling(answer),
        dangers=tuple(words.sentence(reason) for reason in answer.remarks if reason.code in DANGERS),
        notes=tuple(notes),
        choices=tuple(_choice(answer, choice) for choice in answer.choices),
    )


def handling(answer: RecoveryAnswer) -> tuple[str, ...]:
    """Return the handling lines of what ran in; none where nothing did."""
    overdose = answer.question.overdose
    if overdose is None:
        return ()
    return terms(overdose.batch.cautions) if isinstance(overdose.batch, Dissolved) else say_all(BOTTLE)


def _choice(answer: RecoveryAnswer, choice: Choice) -> ChoiceView:
    state = say(recovery_words.AFTER_TEST) if answer.test_first else say(recovery_words.POSSIBLE)
    title = say_all(recovery_words.CHOICES[choice.name])
    if not choice.proposed or choice.course is None:
        reasons = tuple(words.sentence(reason) for reason in choice.reasons)
        return ChoiceView(choice.name, title, say(recovery_words.NOT_PROPOSED), False, reasons=reasons)
    takes, *lines = recovery_lines.choice_lines(answer, choice)
    return ChoiceView(
        choice.name, title, state, True, takes, tuple(lines), (), tuple(rows(answer, choice)), recovery_lines.tests_line(answer, choice)
    )  # fmt: skip


def rows(answer: RecoveryAnswer, choice: Choice) -> Iterator[Row]:
    """Yield what a choice does to every value that is followed, in the worst of the tanks that this one may be.

    Parameters
    ----------
    answer : RecoveryAnswer
        The answer.
    choice : Choice
        One of its choices, proposed.

    Yields
    ------
    Row
        What is too high first, then the others in the order of the data file.
    """
    q, course, seen = answer.question, choice.course, choice.seen
    if course is None or seen is None:
        return
    for p in sorted(q.known, key=lambda each: each is not q.parameter):
        unit = q.unit(p)
        gravity = unit.startswith("SG")
        moving = "ppt" if gravity else unit

        def shown(value: float, p: Parameter = p, unit: str = unit, digits: int = 5 if gravity else 3) -> str:
            return significant(from_canonical(value, p.kind, unit, q.water), digits)

        def moved(value: float, p: Parameter = p, unit: str = moving) -> str:
            figure = from_canonical(value, p.kind, unit, q.water)
            return significant(figure, 3) if figure > _NOTHING else "0"

        yield Row(
            capitalized(p.name),
            KINDS[p.kind].unit(unit).shown,
            shown(q.values[p.name]),
            shown(seen.lowest[p.name]),
            shown(seen.highest[p.name]),
            shown(course.points[-1].values[p.name]),
            moved(max(seen.rise[p.name], seen.fall[p.name])),
            moved(hard(p)),
            KINDS[p.kind].unit(moving).shown,
        )


def _likely(p: Parameter, value: float) -> bool:
    low, high = (p.canonical(bound) for bound in p.plausible)
    return low <= value <= high


def _text(values: Values, name: str) -> str:
    return values.get(name, Typed("")).text.strip()
