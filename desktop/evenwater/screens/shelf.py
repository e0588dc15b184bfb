"""The shelf without its widgets: what is in a jug, batch by batch, and when a card was made for another strength."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from evenwater.engine import stock_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.recipe import Bottle, StockAnswer, solve
from evenwater.screens.dose_card import strength_words
from evenwater.screens.shown import Shown, date_text, dose, significant, with_unit
from evenwater.screens.terms import term, terms
from evenwater.wording import say

Values = Mapping[str, Typed]

# What stands in the choice of a jug's contents besides the chemicals: a bottle known only by its label, the clear
# saturated solution of lime, and the two magnesium salts in seawater's balance.
BOTTLE = "bottle"
LIMEWATER = "limewater"
MIX = "magnesium mix"
_LIME = "calcium hydroxide"
_MIXED = ("magnesium chloride hexahydrate", "magnesium sulfate heptahydrate")
# How the strength of a batch is said: as it was weighed, as what a dose is to do, or as the partner of another jug.
WEIGHED, WANTED, PAIR = "weighed", "wanted", "pair"
LABEL_FIELDS = ("dose", "water", "raises")
_PLAIN = ("chemical", "dissolved", "made_up_to", "purity", "temperature")
_SECOND = ("chemical", "dissolved", "purity")

# A batch nearer than this to the strength of the one before follows the same card; common practice, no source.
SAME_STRENGTH = 0.01


def contents_of(batch: Values) -> str:
    """Return the choice that says what is in a jug; empty when nothing was chosen."""
    chemical = _text(batch, "chemical")
    if chemical == BOTTLE or (not chemical and any(_text(batch, f"label_{f}") for f in LABEL_FIELDS)):
        return BOTTLE
    if chemical == _LIME and _text(batch, "saturated"):
        return LIMEWATER
    if chemical == _MIXED[0] and _text(batch, "also_chemical") == _MIXED[1]:
        return MIX
    return chemical


def contents_fields(choice: str) -> dict[str, Typed]:
    """Return the fields that a choice of contents sets."""
    fields = {"chemical": Typed(choice), "saturated": Typed(""), "also_chemical": Typed("")}
    if choice == LIMEWATER:
        fields |= {"chemical": Typed(_LIME), "saturated": Typed("yes")}
    if choice == MIX:
        fields |= {"chemical": Typed(_MIXED[0]), "also_chemical": Typed(_MIXED[1])}
    return fields


def contents_options(catalogue: Catalogue, parameter: str = "") -> tuple[tuple[str, str], ...]:
    """Return what a jug can hold as (id, words), what raises a parameter first.

    Parameters
    ----------
    catalogue : Catalogue
        The chemicals.
    parameter : str
        Name of the parameter, or empty for the order of the data file.

    Returns
    -------
    tuple of (str, str)
        Full names with the telling parts in capitals.
    """
    chemicals = catalogue.chemicals
    fitting = [c.name for c in catalogue.raising(parameter)] if parameter else []
    options: list[tuple[str, str]] = []
    for name in (*fitting, *(n for n in chemicals if n not in fitting)):
        if name == _LIME:
            options.append(
                (LIMEWATER, say("limewater, saturated {tall_man}", tall_man=term(chemicals[_LIME].tall_man)))
            )
        options.append((name, term(chemicals[name].tall_man)))
        if name == _MIXED[1]:
            options.append((MIX, say("magnesium CHLORide and SULFate, as in seawater")))
    return (*options, (BOTTLE, say("A bottle, by its label")))


def additive_table(batch: Values) -> dict[str, Any]:
    """Return the table ``additive`` of a question file for a batch as typed; empty fields are left out."""
    if contents_of(batch) == BOTTLE:
        return {"label": filled(batch, LABEL_FIELDS, "label_")}
    table: dict[str, Any] = filled(batch, _PLAIN)
    if _text(batch, "saturated"):
        table["saturated"] = Typed("yes")
        table.pop("dissolved", None)
    if _text(batch, "also_chemical"):
        table["also"] = filled(batch, _SECOND, "also_")
    return table


def filled(values: Values, names: tuple[str, ...], prefix: str = "") -> dict[str, Any]:
    """Return the fields of a record that are filled in, by their names without the prefix."""
    found = {name: values.get(prefix + name, Typed("")) for name in names}
    return {name: typed for name, typed in found.items() if typed.text.strip()}


def _text(values: Values, name: str) -> str:
    return values.get(name, Typed("")).text.strip()


def answer_of(batch: Values, catalogue: Catalogue) -> StockAnswer | None:
    """Return what a weighed batch carries, or None while it cannot be read or made."""
    table = additive_table(batch)
    label = table.get("label")
    if isinstance(label, dict) and _text(batch, "label_parameter"):
        label["parameter"] = Typed(_text(batch, "label_parameter"))
    raw: dict[str, Any] = {"additive": table}
    if "temperature" in table:
        raw["temperature"] = table["temperature"]
    return _solved(raw, catalogue)


def _solved(raw: dict[str, Any], catalogue: Catalogue) -> StockAnswer | None:
    question = stock_intake.stock(raw, catalogue)
    if isinstance(question, Unread):
        return None
    found = solve(question)
    return found if isinstance(found, StockAnswer) else None


def same_strength(one: StockAnswer, other: StockAnswer) -> bool:
    """Return whether two batches carry the same things in the same strength, to within one per cent."""
    here, there = ({item.name: item.per_litre for item in answer.carries} for answer in (one, other))
    return here.keys() == there.keys() and all(
        abs(here[name] - there[name]) <= SAME_STRENGTH * max(abs(here[name]), abs(there[name])) for name in here
    )


def made_for(body: str, catalogue: Catalogue) -> StockAnswer | None:
    """Return what the batch carried that a card was reckoned for, from the question kept with it."""
    try:
        raw = json.loads(body)
    except ValueError:
        return None
    if not isinstance(raw, dict) or not isinstance(raw.get("additive"), dict):
        return None
    additive = dict(raw["additive"])
    change = raw.get("change")
    if isinstance(additive.get("label"), dict) and isinstance(change, dict):
        additive["label"] = {**additive["label"], "parameter": change.get("parameter", "")}
    temperature = additive.pop("temperature", None)
    asked = {"additive": additive, **({} if temperature is None else {"temperature": temperature})}
    return _solved(asked, catalogue)


def card_outdated(body: str, parameter: str, batch: Values, catalogue: Catalogue, held_by: str = "") -> str:
    """Return why a card must not be followed with what is in the jug now (H12); empty when it may.

    Parameters
    ----------
    body : str
        The card's question as JSON text.
    parameter : str
        Name of the parameter the card raises, for the words of a label.
    batch : mapping of str to Typed
        The batch that is in the jug, or that is to come into it.
    catalogue : Catalogue
        Parameters and chemicals.
    held_by : str
        What that batch is called in the sentence; empty for the jug now.

    Returns
    -------
    str
        A sentence, or nothing while the batch cannot be read.
    """
    before = made_for(body, catalogue)
    if contents_of(batch) == BOTTLE and not _text(batch, "label_parameter"):
        batch = {**batch, "label_parameter": Typed(parameter)}
    now = answer_of(batch, catalogue)
    if now is None:
        return ""
    if before is None:
        return say("What it was made for cannot be reckoned any more.")
    if same_strength(before, now):
        return ""
    return say(
        "It was made for another strength: {before}. {held_by}: {strength_line}.",
        before=strength_line(before),
        held_by=held_by or say("The jug now"),
        strength_line=strength_line(now),
    )


def strength_line(answer: StockAnswer) -> str:
    """Return the strength of a batch as quantity per volume (L12)."""
    if isinstance(answer.batch, Bottle):
        label, parameter = answer.batch.label, answer.batch.parameter
        rise = Shown(parameter, parameter.display_unit, Water()).rise(label.raises)
        return say(
            "by its label, {dose} raise {water} by {rise}",
            dose=dose(label.dose_ml),
            water=with_unit(significant(label.water_l, 4), "L"),
            rise=rise,
        )
    return strength_words(answer.batch)


def hazards(batch: Values, catalogue: Catalogue) -> tuple[str, ...]:
    """Return the hazard statements of what is in a jug, each with its source, to stand before the handling lines.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch's fields.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    tuple of str
        One sentence for each chemical that has statements, or says that it has none.
    """
    named = (_text(batch, name) for name in ("chemical", "also_chemical"))
    chemicals = [catalogue.chemicals[name] for name in named if name in catalogue.chemicals]
    return tuple(
        f"{'; '.join(terms(c.statements)) or say('No hazard statement')} ({c.statements_source})." for c in chemicals
    )


@dataclass(frozen=True)
class BatchRow:
    """One batch of a jug in the list: its id, and what the keeper reads of it."""

    batch_id: str
    words: str


def batch_row(batch_id: str, batch: Values, in_use: bool, now: datetime, catalogue: Catalogue) -> BatchRow:
    """Return a batch as it stands in the list: its state, its date, its strength.

    Parameters
    ----------
    batch_id : str
        Id of its record.
    batch : mapping of str to Typed
        Its fields.
    in_use : bool
        Whether it is in the jug.
    now : datetime
        The present in the keeper's zone.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    BatchRow
        Its words.
    """
    answer = answer_of(batch, catalogue)
    state = (
        say("In the jug")
        if in_use
        else say("Used before")
        if _text(batch, "in_use_from")
        else say("Not in the jug yet")
    )
    mixed = _text(batch, "mixed_on")
    said = say("not complete") if answer is None else strength_line(answer)
    if to_be_weighed(batch):
        said = say("to be weighed")
    parts = [
        state,
        say("mixed {mixed}", mixed=date_text(mixed)) if mixed else "",
        said,
        say("use by {batch}", batch=date_text(_text(batch, "use_by"))) if past(batch, now) else "",
    ]
    return BatchRow(batch_id, " · ".join(part for part in parts if part))


def to_be_weighed(batch: Values) -> bool:
    """Return whether a batch is said by a wanted strength; what was in the jug once was weighed, or came in a bottle."""
    weighed = _text(batch, "in_use_from") or contents_of(batch) in (BOTTLE, LIMEWATER)
    return not weighed and _text(batch, "recipe") in (WANTED, PAIR)


def past(batch: Values, now: datetime) -> bool:
    """Return whether a batch is past its use-by date."""
    try:
        return datetime.fromisoformat(_text(batch, "use_by")).date() < now.date()
    except ValueError:
        return False
