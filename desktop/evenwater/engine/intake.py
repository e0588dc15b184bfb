"""Turns the fields of a correction, as typed, into a question; or says what is missing or wrong.

The window's form and the question file hand over the same nested mapping, so both read alike.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Any

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Chemical, Parameter
from evenwater.engine.quantities import Typed, Water, to_canonical
from evenwater.engine.question import VOLUME_UNCERTAINTY, CorrectionQuestion, Pump, System
from evenwater.engine.reader import Empty, Field, Ok, read
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Additive, Dissolved, Labelled

Raw = Mapping[str, Any]

# Common practice, no source: a metering pump rests at least half the time, and doses hourly.
LARGEST_SHARE = 0.5
DOSES_PER_DAY = 24
# Plans reach years ahead; a date outside these years is a slip of the keyboard.
_FIRST_YEAR, _LAST_YEAR = 1970, 2200


@dataclass(frozen=True)
class Unread:
    """What stands between the form and a question.

    ``missing`` are fields that are still empty, ``wrong`` fields whose content cannot be taken.
    """

    missing: tuple[Reason, ...]
    wrong: tuple[Reason, ...]

    @property
    def reasons(self) -> tuple[Reason, ...]:
        """All of them, what is wrong first."""
        return self.wrong + self.missing


@dataclass
class _Reader:
    """Collects every problem of one pass over the form."""

    raw: Raw
    missing: list[Reason] = field(default_factory=list)
    wrong: list[Reason] = field(default_factory=list)

    def value(self, path: str) -> Any:
        """Return what stands at a dotted path, or None."""
        node: Any = self.raw
        for name in path.split("."):
            if not isinstance(node, Mapping) or name not in node:
                return None
            node = node[name]
        return node

    def text(self, path: str) -> str:
        """Return a plain text, stripped; empty when there is none."""
        value = self.value(path)
        return (value.text if isinstance(value, Typed) else str(value or "")).strip()

    def number(self, spec: Field, water: Water | None = None) -> float | None:
        """Return a quantity in the canonical unit, or None when it is absent or cannot be taken."""
        found = self.entered(spec, water)
        return None if found is None else to_canonical(found[0], spec.kind, found[1], water)

    def needed(self, spec: Field, water: Water | None = None) -> float | None:
        """Return a quantity as ``number`` does, and note it as missing when the field is empty."""
        found = self.entered_needed(spec, water)
        return None if found is None else to_canonical(found[0], spec.kind, found[1], water)

    def entered_needed(self, spec: Field, water: Water | None = None) -> tuple[float, str] | None:
        """Return what ``entered`` does, and note the field as missing when it is empty."""
        before = len(self.wrong)
        found = self.entered(spec, water)
        if found is None and len(self.wrong) == before:
            self.missing.append(Reason("missing", {"path": spec.path}, spec.path))
        return found

    def entered(self, spec: Field, water: Water | None = None) -> tuple[float, str] | None:
        """Return the figure and its unit as entered, or None."""
        value = self.value(spec.path)
        if isinstance(value, bool | float):
            self.wrong.append(Reason("not_text", {"text": str(value)}, spec.path))
            return None
        typed = value if isinstance(value, Typed) else Typed("" if value is None else str(value))
        result = read(typed.text, spec, typed.unit, water)
        if isinstance(result, Empty):
            return None
        if isinstance(result, Ok):
            return float(result.entered.number), result.entered.unit
        self.wrong.append(result.reason)
        return None

    def instant(self, path: str) -> datetime | None:
        """Return a point in time with its zone, or None."""
        value = self.value(path)
        if isinstance(value, Typed):
            value = value.text.strip() or None
        if value is None:
            return None
        if isinstance(value, str):
            try:
                value = datetime.fromisoformat(value)
            except ValueError:
                self.wrong.append(Reason("not_a_time", {"text": value}, path))
                return None
        if not isinstance(value, datetime) or value.tzinfo is None:
            self.wrong.append(Reason("time_without_zone", {"text": str(value)}, path))
            return None
        if not _FIRST_YEAR <= value.year <= _LAST_YEAR:
            self.wrong.append(Reason("not_a_time", {"text": str(value)}, path))
            return None
        return value.astimezone(UTC)


def correction(raw: Raw, catalogue: Catalogue, now: datetime) -> CorrectionQuestion | Unread:
    """Read a correction.

    Parameters
    ----------
    raw : mapping
        Tables ``system``, ``change``, ``additive`` and ``pump`` as in a question file; values are
        ``Typed``, plain text, whole numbers or instants.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    CorrectionQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = _Reader(raw)
    moment = r.instant("now") or now.astimezone(UTC)
    system = _system(r)
    water = system.water if system is not None else Water()
    pump = _pump(r)
    parameter = _parameter(r, catalogue)
    if parameter is None:
        return Unread(tuple(r.missing), tuple(r.wrong))
    measured_field = fields.concentration("change.measured", parameter)
    measured_as = r.entered_needed(measured_field, water)
    target = r.needed(fields.concentration("change.target", parameter), water)
    use = r.number(fields.rise("change.daily_use", parameter), water)
    fastest = r.number(fields.rise("change.fastest_rise", parameter), water)
    measured_at = r.instant("change.measured_at")
    additive = _additive(r, catalogue, parameter, water)
    if r.missing or r.wrong or not (system and measured_as and additive and pump) or target is None:
        return Unread(tuple(r.missing), tuple(r.wrong))
    return CorrectionQuestion(
        now=moment,
        system=system,
        parameter=parameter,
        unit=measured_as[1],
        measured=to_canonical(measured_as[0], parameter.kind, measured_as[1], water),
        measured_as=measured_as,
        measured_at=measured_at,
        target=target,
        use=use or 0.0,
        fastest=fastest,
        reason=r.text("change.reason"),
        additive=additive,
        pump=pump,
        others=tuple(catalogue.parameters.values()),
    )


def water_of(raw: Raw) -> Water:
    """Return the system's water as far as it can be read, seawater at 35 and 25 degC for the rest.

    Parameters
    ----------
    raw : mapping
        A question's tables, of which ``system`` is read.

    Returns
    -------
    Water
        Salinity and temperature.
    """
    return _water(_Reader(raw))[0]


def _water(r: _Reader) -> tuple[Water, bool]:
    """Return the water and whether part of it is assumed."""
    salinity = r.number(fields.SALINITY)
    temperature = r.number(fields.TEMPERATURE)
    standard = Water()
    water = Water(
        standard.salinity if salinity is None else salinity,
        standard.temperature_c if temperature is None else temperature,
    )
    return water, salinity is None or temperature is None


def _parameter(r: _Reader, catalogue: Catalogue) -> Parameter | None:
    name = r.text("change.parameter")
    if not name:
        r.missing.append(Reason("missing", {"path": "change.parameter"}, "change.parameter"))
        return None
    if name not in catalogue.parameters:
        choices = tuple(catalogue.parameters)
        r.wrong.append(Reason("unknown_parameter", {"text": name, "choices": choices}, "change.parameter"))
    return catalogue.parameters.get(name)


def _system(r: _Reader) -> System | None:
    volume = r.needed(fields.NET_VOLUME)
    known = r.text("system.volume_known")
    if known not in VOLUME_UNCERTAINTY:
        choices = tuple(name for name in VOLUME_UNCERTAINTY if name)
        r.wrong.append(Reason("unknown_choice", {"text": known, "choices": choices}, "system.volume_known"))
        return None
    percent = r.number(fields.VOLUME_UNCERTAINTY)
    water, assumed = _water(r)
    ph = r.number(fields.PH)
    if volume is None:
        return None
    uncertainty = VOLUME_UNCERTAINTY[known] if percent is None else percent / 100.0
    if known == "unknown":
        # A dose for too large a volume is an overdose, so an unknown volume counts at its low end.
        volume *= 1.0 - uncertainty
    return System(r.text("system.name"), volume, uncertainty, known, water, ph, assumed)


def _pump(r: _Reader) -> Pump | None:
    flow = r.needed(fields.FLOW)
    smallest = r.number(fields.SMALLEST_DOSE)
    step = r.number(fields.STEP)
    share = r.number(fields.LARGEST_SHARE)
    doses = r.number(fields.DOSES_PER_DAY)
    if flow is None:
        return None
    return Pump(
        flow_ml_per_min=flow,
        smallest_ml=smallest,
        step_ml=step,
        largest_share=LARGEST_SHARE if share is None else share / 100.0,
        doses_per_day=DOSES_PER_DAY if doses is None else round(doses),
        name=r.text("pump.name"),
    )


def _additive(r: _Reader, catalogue: Catalogue, parameter: Parameter, water: Water) -> Additive | None:
    if r.value("additive.label") is not None:
        dose_l = r.needed(fields.LABEL_DOSE)
        water_l = r.needed(fields.LABEL_WATER)
        raises_field = fields.label_raises(parameter)
        label = r.value(raises_field.path)
        if isinstance(label, Typed) and label.unit and label.unit not in {u.id for u in raises_field.units.units}:
            # The label speaks of another parameter than the one to raise.
            params = {"chemical": "", "parameter": parameter.name}
            r.wrong.append(Reason("does_not_raise", params, "additive.chemical"))
            return None
        raises = r.needed(raises_field, water)
        if dose_l is None or water_l is None or raises is None:
            return None
        return Labelled(dose_l * 1000.0, water_l, raises, parameter.kind)
    chemical = _chemical(r, catalogue)
    grams = r.needed(fields.DISSOLVED)
    made_up_l = r.needed(fields.MADE_UP_TO)
    purity = r.number(fields.PURITY)
    if chemical is None or grams is None or made_up_l is None:
        return None
    return Dissolved(chemical, grams, made_up_l, 1.0 if purity is None else purity / 100.0)


def _chemical(r: _Reader, catalogue: Catalogue) -> Chemical | None:
    name = r.text("additive.chemical")
    if not name:
        r.missing.append(Reason("missing", {"path": "additive.chemical"}, "additive.chemical"))
        return None
    folded = name.casefold()
    if folded in catalogue.chemicals:
        return catalogue.chemicals[folded]
    # A bare name fits every hydrate of the salt, a word of the trade perhaps several: offer those.
    fitting = tuple(
        known.name
        for known in catalogue.chemicals.values()
        if known.name.startswith(f"{folded} ") or folded in (word.casefold() for word in known.also_called)
    )
    code = "which_hydrate" if fitting else "unknown_chemical"
    params = {"text": name, "choices": fitting or tuple(catalogue.chemicals)}
    r.wrong.append(Reason(code, params, "additive.chemical"))
    return None
