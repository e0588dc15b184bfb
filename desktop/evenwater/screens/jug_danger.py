"""What a jug could do: run in whole, for every system it doses; what keeps it from that; and what priming its line takes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.fields import FLOW, LINE_BORE, LINE_LENGTH
from evenwater.engine.jug_level import doses_lost
from evenwater.engine.jug_siphon import CHECKLIST, RunIn, Setting, Tank, dangers, largest_ml, run_in
from evenwater.engine.pump_line import dead_volume
from evenwater.engine.quantities import Typed, from_canonical, to_canonical
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.engine.reader import Field, Ok, read
from evenwater.engine.recipe import Bottle
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.screens import correct, jug_words, words
from evenwater.screens.jug_delivery import LOOKING
from evenwater.screens.jug_levels import NO, YES, Level
from evenwater.screens.jug_room import Drawer, Jug, stock_answer, volume
from evenwater.screens.names import shown_name
from evenwater.screens.shown import seconds, significant, with_unit
from evenwater.screens.terms import term
from evenwater.wording import marked, say, say_all, say_many

Values = Mapping[str, Typed]

# The checks a keeper ticks; the others follow from figures and from what was noted.
TICKED = ("outlet_above_water", "jug_below_outlet", "tube_lifted", "outlets_apart")
_UNCHECKED = "siphon_not_checked"
NOBODY = marked("No system takes from this jug yet, so there is no water it could run into.")
UNKNOWN = marked(
    "What is in the jug is not complete, so nobody can say what it would do. Fill in its batch on the Stocks sheet."
)


@dataclass(frozen=True)
class RunInRow:
    """One system and one parameter: what the value would come to, and how large the jug may be; ``harms`` when it must not stay."""

    system: str
    what: str
    size: str
    harms: bool


@dataclass(frozen=True)
class CheckRow:
    """One line of the checklist: ``state`` is "yes", "no" or empty; ``ticked`` says that the keeper answers it."""

    code: str
    words: str
    state: str
    ticked: bool


def runs_in(jug: Jug, catalogue: Catalogue) -> tuple[tuple[RunInRow, ...], str]:
    """Return what would happen if the whole jug ran in at once, for every system that takes from it (H25).

    Parameters
    ----------
    jug : Jug
        The jug; the full one counts, whatever is in it now.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    tuple of (tuple of RunInRow, str)
        The rows, and why there are none.
    """
    found = list(_found(jug, catalogue))
    if not found:
        if jug.drawers is None:
            return (), say(LOOKING)
        return (), say(NOBODY) if not jug.drawers else "" if _known(jug, catalogue) else say(UNKNOWN)
    return tuple(_row(drawer, each, largest) for drawer, every, largest in found for each in every), ""


def _known(jug: Jug, catalogue: Catalogue) -> bool:
    return stock_answer(jug, catalogue) is not None and jug.holds_ml is not None


def harmful(jug: Jug, catalogue: Catalogue) -> bool | None:
    """Return whether the full jug would push a value out of its hard range; None while nobody can say."""
    found = list(_found(jug, catalogue))
    return any(each.harms for _, every, _ in found for each in every) if found else None


def _found(jug: Jug, catalogue: Catalogue) -> Iterator[tuple[Drawer, tuple[RunIn, ...], tuple[float, float] | None]]:
    answer, holds = stock_answer(jug, catalogue), jug.holds_ml
    if answer is None or holds is None or not isinstance(answer.batch, Dissolved | Bottle):
        return
    for drawer in jug.drawers or ():
        litres = _volume_l(drawer)
        if litres is not None:
            tank = Tank(litres, correct.water(drawer.system), drawer.tested, drawer.name)
            found = run_in(answer.batch, tuple(catalogue.parameters.values()), tank, holds)
            if found:
                yield drawer, found, largest_ml(found)


def _volume_l(drawer: Drawer) -> float | None:
    litres = correct.volume_l(drawer.system)
    unknown = drawer.system.get("volume_known", Typed("")).text == "unknown"
    # A volume that nobody knows counts at its low end (H6).
    return litres * (1.0 - VOLUME_UNCERTAINTY["unknown"]) if litres is not None and unknown else litres


def _row(drawer: Drawer, each: RunIn, largest: tuple[float, float] | None) -> RunInRow:
    p, water = each.parameter, correct.water(drawer.system)
    shown = KINDS[p.kind].unit(p.display_unit).shown

    def value(canonical: float) -> str:
        return with_unit(significant(from_canonical(canonical, p.kind, p.display_unit, water), 3), shown)

    said = say("taken for it, not tested") if each.assumed else say("as tested")
    what = say(
        "{name}: from {before} ({said}) to {after}",
        name=term(p.name),
        before=value(each.before),
        said=said,
        after=value(each.after),
    )
    if each.harms:
        what += say(", above the {most} that no plan may aim for", most=value(each.most))
    if largest is None:
        return RunInRow(drawer.name, what, "", each.harms)
    if largest[0] < 1.0:
        return RunInRow(drawer.name, what, say("too high already: none of it is safe"), each.harms)
    size = say(
        "largest safe jug {safe}, advised {safe_2} or less",
        safe=volume(each.safe_ml),
        safe_2=volume(min(each.safe_ml, each.advised_ml)),
    )
    return RunInRow(drawer.name, what, size, each.harms)


def checklist(jug: Jug, catalogue: Catalogue) -> tuple[CheckRow, ...]:
    """Return what is looked at before a jug is connected, in its order.

    Parameters
    ----------
    jug : Jug
        The jug; what was ticked stands among its fields.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    tuple of CheckRow
        Two of the lines are answered by figures: the jug's size, and whether the line was primed after the last refill.
    """
    harms = harmful(jug, catalogue)
    refills = [level for level in jug.levels if level.refilled]
    answered = {
        "jug_small_enough": "" if harms is None else NO if harms else YES,
        "line_primed": "" if not refills else YES if max(refills, key=_when).primed else NO,
    }
    return tuple(
        CheckRow(
            code,
            say_all(jug_words.CHECKS[code]),
            answered[code] if code in answered else _said(jug.stock, code),
            code in TICKED,
        )
        for code in CHECKLIST
    )


def _when(level: Level) -> float:
    return level.at.timestamp()


def warnings(jug: Jug) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return what is dangerous in how a jug stands, and what nobody has looked at yet (H25)."""
    setting = Setting(_bool(jug.stock, "outlet_above_water"), _bool(jug.stock, "jug_below_outlet"))
    found = tuple(dangers(setting))
    said = [words.sentence(reason) for reason in found if reason.code != _UNCHECKED]
    return tuple(said), tuple(words.sentence(reason) for reason in found if reason.code == _UNCHECKED)


def priming(jug: Jug) -> tuple[str, ...]:
    """Return what priming takes after a refill, for every pump whose line is measured (H23).

    Parameters
    ----------
    jug : Jug
        The jug; its pumps carry the line's ``line_bore`` and ``line_length`` and the ``flow``, as typed.

    Returns
    -------
    tuple of str
        A sentence for each pump: what the line holds, how long the pump runs to fill it, how many doses do not arrive whole without.
    """
    taken: dict[str, float] = {}
    counts: dict[str, int] = {}
    for drawer in jug.drawers or ():
        for pump_id in drawer.pumps:
            taken[pump_id] = taken.get(pump_id, 0.0) + drawer.per_day_ml
            counts[pump_id] = drawer.doses_per_day
    return tuple(
        said for pump_id, pump in jug.pumps.items() for said in _primed(pump, taken[pump_id] / counts[pump_id])
    )


def _primed(pump: Values, dose_ml: float) -> Iterator[str]:
    """Yield what the line of a pump takes that gives so much at once [mL]."""
    bore, length = _number(pump, "line_bore", LINE_BORE), _number(pump, "line_length", LINE_LENGTH)
    if bore is None or length is None:
        return
    held, flow = dead_volume(bore, length), _number(pump, "flow", FLOW)
    name = shown_name(pump, say("the pump"))
    run = "" if flow is None else say(", about {held} of running", held=seconds(60.0 * held / flow))
    said = say("The line of {name} holds {held}{run}.", name=term(name), held=volume(held), run=run)
    if dose_ml > 0.0:
        lost = doses_lost(held, dose_ml)
        said += say_many(
            " Not primed, the first dose does not arrive whole.",
            " Not primed, the first {n} doses do not arrive whole.",
            lost,
        )
    yield said


def _number(values: Values, name: str, spec: Field) -> float | None:
    typed = values.get(name, Typed(""))
    found = read(typed.text, spec, typed.unit or spec.unit)
    return to_canonical(float(found.entered.number), spec.kind, found.entered.unit) if isinstance(found, Ok) else None


def _said(stock: Values, code: str) -> str:
    text = stock.get(code, Typed("")).text
    return text if text in (YES, NO) else ""


def _bool(stock: Values, code: str) -> bool | None:
    return {YES: True, NO: False}.get(_said(stock, code))
