"""The Correct sheet without its widgets: records to a question, a question to what is shown."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from evenwater.engine import intake, quantities
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Answer, solve
from evenwater.engine.fields import NET_VOLUME
from evenwater.engine.quantities import Entered, Typed, Water, from_canonical, to_canonical
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.engine.reader import Ok, read
from evenwater.engine.units import KINDS
from evenwater.screens import dose_card, following, plan_id
from evenwater.screens.answer import BOTTLE as BOTTLE_CAUTIONS
from evenwater.screens.answer import headline, shown_of, view
from evenwater.screens.ramp import chart
from evenwater.screens.shelf import BOTTLE, additive_table, contents_of, filled
from evenwater.screens.shown import Shown, figure, significant, with_unit
from evenwater.screens.terms import term, terms
from evenwater.screens.views import AnswerView, CardView, ChartView
from evenwater.wording import say, say_all

Values = Mapping[str, Typed]

SYSTEM_FIELDS = (
    "name", "net_volume", "volume_known", "volume_uncertainty", "salinity", "temperature", "ph", "alkalinity", "calcium",
    "evaporation",
)  # fmt: skip
CHANGE_FIELDS = ("measured", "measured_at", "target", "daily_use", "fastest_rise", "reason")
PUMP_FIELDS = ("name", "flow", "smallest_dose", "step", "largest_share", "doses_per_day")


@dataclass(frozen=True)
class Plan:
    """A plan in the hands of a sheet: what can be done with it, without what it is made of."""

    answer: Answer

    @property
    def plan_id(self) -> str:
        """The plan's identity with its check characters."""
        return plan_id.make(self.answer.question)

    @property
    def parameter(self) -> str:
        """Name of the parameter that is raised."""
        return self.answer.question.parameter.name

    @property
    def valid_until(self) -> datetime:
        """Instant after which the card must not be followed."""
        return self.answer.valid_until

    def kept(self, question: Mapping[str, Any], batch_id: str) -> str:
        """Return what the log keeps of the plan when it is started; ``question`` is plain text."""
        return following.body(self.answer, question, batch_id)

    def in_words(self) -> str:
        """Return what is started in a few words, for the log."""
        q = self.answer.question
        shown = shown_of(q)
        number, unit = headline(self.answer.doses)
        return say(
            "{parameter} from {measured} to {target}, {number}",
            parameter=term(q.parameter.name),
            measured=shown.value(q.measured),
            target=shown.value(q.target),
            number=with_unit(number, unit),
        )

    def card(self, now: datetime, mixed_on: str, draft: str, batch_id: str = "") -> CardView:
        """Return the card, dated in the zone of ``now``; ``draft`` are words stamped across it."""
        return dose_card.card(self.answer, now, mixed_on, draft, batch_id)

    def slower(self, ends_at: float) -> Typed:
        """Return the fastest rise to enter so that the correction ends at another instant.

        Parameters
        ----------
        ends_at : float
            Where the end was put [s since the epoch].

        Returns
        -------
        Typed
            A rise per day in the keeper's unit, three digits, rounded down: never faster than asked.
        """
        q = self.answer.question
        days = max((ends_at - q.now.timestamp()) / 86400.0, 1.0 / q.pump.doses_per_day)
        unit = f"{shown_of(q).rise_unit} per day"
        wanted = from_canonical((q.target - q.start) / days, f"{q.parameter.kind} per day", unit, q.system.water)
        grain = 10.0 ** (math.floor(math.log10(wanted)) - 2)
        return Typed(quantities.significant(math.floor(wanted / grain + 1e-9) * grain, 3), unit)


@dataclass(frozen=True)
class Evaluated:
    """What the sheet shows of a question; ``plan`` and ``chart`` only when it is answered.

    ``unread`` says that a field is empty or cannot be taken yet, as in the middle of a number.
    """

    view: AnswerView
    plan: Plan | None = None
    chart: ChartView | None = None
    unread: bool = False


def raw_question(parameter: str, system: Values, correction: Values, batch: Values, pump: Values) -> dict[str, Any]:
    """Put the fields of four records together as a question file has them.

    Parameters
    ----------
    parameter : str
        Name of the parameter to raise.
    system, correction, batch, pump : mapping of str to Typed
        The records' fields as typed; empty ones may be absent.

    Returns
    -------
    dict
        Tables ``system``, ``change``, ``additive`` and ``pump``.
    """
    return {
        "kind": "correction",
        "system": filled(system, SYSTEM_FIELDS),
        "change": {"parameter": parameter, **filled(correction, CHANGE_FIELDS)},
        "additive": additive_table(batch),
        "pump": filled(pump, PUMP_FIELDS),
    }


def evaluate(raw: Mapping[str, Any], catalogue: Catalogue, now: datetime) -> Evaluated:
    """Read the question, plan it, and turn the result into what the sheet shows.

    Parameters
    ----------
    raw : mapping
        The question as typed.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    Evaluated
        The view, with the plan and its chart when there is one.
    """
    question = intake.correction(raw, catalogue, now.astimezone(UTC))
    if isinstance(question, intake.Unread):
        return Evaluated(view(question, now), unread=True)
    shown = shown_of(question, now.tzinfo)
    result = solve(question)
    if isinstance(result, Answer):
        return Evaluated(view(result, now), Plan(result), chart(result, shown))
    return Evaluated(view(result, now, shown))


def water(system: Values) -> Water:
    """Return the system's water as far as it is filled in."""
    return intake.water_of({"system": dict(system)})


def hints(parameter: Parameter, system: Values, unit: str) -> dict[str, str]:
    """Return the quiet line under each field: what is usual, in the unit the field shows.

    Parameters
    ----------
    parameter : Parameter
        What is raised.
    system : mapping of str to Typed
        The system's fields, for the litres beside a volume in gallons.
    unit : str
        Id of the unit that the reading's field shows.

    Returns
    -------
    dict of str to str
        Hints by the field's path.
    """
    shown = Shown(parameter, unit, water(system))
    low, high = (shown.number(parameter.canonical(v)) for v in parameter.range_kept)
    digits = 5 if unit.startswith("SG") else 3
    kept = say(
        "{low} to {high}", low=significant(low, digits), high=with_unit(significant(high, digits), shown.unit_words)
    )
    recommended, hard = (parameter.canonical(v) for v in (parameter.rise_recommended, parameter.rise_hard))
    return {
        "system.net_volume": _volume_hint(system),
        "system.volume_uncertainty": say("half of a 95 % range"),
        "change.measured": say(
            "usual kit within {kit_accuracy}", kit_accuracy=shown.rise(parameter.canonical(parameter.kit_accuracy), 2)
        ),
        "change.target": say("usually kept: {kept}", kept=kept),
        "change.fastest_rise": say(
            "usual {recommended}, most {hard}", recommended=_bare(shown, recommended), hard=shown.rise(hard)
        ),
        "change.daily_use": say("what the animals take in a day"),
        "additive.purity": say("100 % when the bag does not say"),
    }


def assumed(parameter: Parameter, system: Values) -> dict[str, str]:
    """Return what an empty field stands for, to be shown in it as a figure that was not entered.

    Parameters
    ----------
    parameter : Parameter
        What is raised.
    system : mapping of str to Typed
        The system's fields, for how its volume is known.

    Returns
    -------
    dict of str to str
        Figures by the field's path, in the unit the field shows at first.
    """
    sea = Water()
    return {
        "system.volume_uncertainty": _usual_share(system),
        "system.salinity": figure(sea.salinity, 1),
        "system.temperature": figure(sea.temperature_c, 1),
        "change.fastest_rise": significant(parameter.rise_recommended, 3),
        "change.daily_use": "0",
        "additive.purity": "100",
        "pump.largest_share": figure(100.0 * intake.LARGEST_SHARE, 0),
        "pump.doses_per_day": str(intake.DOSES_PER_DAY),
    }


def _bare(shown: Shown, rise: float) -> str:
    """Write a rise without its unit."""
    return shown.rise(rise).split("\u00a0")[0]


def volume_sentence(system: Values) -> str:
    """Return the net volume and how well it is known, for a card."""
    return say("Net volume {volume}.", volume=volume_words(system, net=False))


def volume_words(system: Values, *, net: bool = True) -> str:
    """Return the net volume and how well it is known, for the head of the sheet.

    Parameters
    ----------
    system : mapping of str to Typed
        The system's fields.
    net : bool
        Whether to say that it is the net volume.

    Returns
    -------
    str
        Words, or that the volume is missing.
    """
    entered = _volume(system)
    if entered is None:
        return say("net volume not known yet") if net else say("volume not known yet")
    typed_volume = with_unit(figure(float(entered.number), 6), KINDS["volume"].unit(entered.unit).shown)
    words = " ".join(filter(None, (typed_volume, _in_litres(entered))))
    known = system.get("volume_known", Typed("")).text
    share = system.get("volume_uncertainty", Typed("")).text.strip() or _usual_share(system)
    said = f", {say_all(dose_card.KNOWN_WORDS[known])}" if known in dose_card.KNOWN_WORDS else ""
    within = with_unit(share.removesuffix("%").strip(), "%")
    if net:
        return say("{words} net{said}, within {share}", words=words, said=said, share=within)
    return say("{words}{said}, within {share}", words=words, said=said, share=within)


def cautions(batch: Values, catalogue: Catalogue) -> tuple[str, ...]:
    """Return the handling lines of what is in the jug, to stand before its numbers.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch's fields.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    tuple of str
        Sentences, the signal word of the chemical first; none before something is chosen.
    """
    if contents_of(batch) == BOTTLE:
        return say_all(BOTTLE_CAUTIONS)
    named = (batch.get(name, Typed("")).text for name in ("chemical", "also_chemical"))
    chemicals = [catalogue.chemicals[name] for name in named if name in catalogue.chemicals]
    words = [c.signal_word for c in chemicals if c.signal_word]
    first = (say("Danger.") if "Danger" in words else f"{term(words[0])}.",) if words else ()
    return first + tuple(dict.fromkeys(line for chemical in chemicals for line in terms(chemical.cautions)))


def question_text(raw: Mapping[str, Any]) -> dict[str, Any]:
    """Return a question with every field as the text a question file would have.

    Parameters
    ----------
    raw : mapping
        The question as typed.

    Returns
    -------
    dict
        The same tables with plain text.
    """
    out: dict[str, Any] = {}
    for name, value in raw.items():
        if isinstance(value, Typed):
            alone = value.unit and value.text.strip().replace(",", "").replace(".", "").isdigit()
            out[name] = f"{value.text.strip()} {value.unit}" if alone else value.text.strip()
        else:
            out[name] = question_text(value) if isinstance(value, Mapping) else value
    return out


def volume_l(system: Values) -> float | None:
    """Return the net volume [L], or None while it cannot be read."""
    entered = _volume(system)
    return None if entered is None else to_canonical(float(entered.number), "volume", entered.unit)


def _volume(system: Values) -> Entered | None:
    """Return the net volume as entered, or None while it cannot be read."""
    typed = system.get("net_volume", Typed(""))
    result = read(typed.text, NET_VOLUME, typed.unit)
    return result.entered if isinstance(result, Ok) else None


def _in_litres(volume: Entered) -> str:
    """Echo a volume in litres (H3); nothing when it stands in litres."""
    if volume.unit == "L":
        return ""
    litres = to_canonical(float(volume.number), "volume", volume.unit)
    return f"= {with_unit(significant(litres, 4), 'L')}"


def _volume_hint(system: Values) -> str:
    volume = _volume(system)
    return (_in_litres(volume) if volume is not None else "") or say("water only: no rock, no sand")


def _usual_share(system: Values) -> str:
    """Write how well a volume is usually known that was found as this one was [%]."""
    known = system.get("volume_known", Typed("")).text
    return figure(100.0 * VOLUME_UNCERTAINTY.get(known, VOLUME_UNCERTAINTY[""]), 0)
