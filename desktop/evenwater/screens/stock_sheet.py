"""The Stocks sheet without its widgets: a batch as typed turned into a recipe, its strength and what to beware of."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from evenwater.engine import quantities, stock_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.mix import SULFATE_PER_MAGNESIUM, sulfate_per_magnesium
from evenwater.engine.quantities import Typed, from_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import SAID_DOSE_ML, SAID_WATER_L, Bottle, Carried, StockAnswer, solve
from evenwater.engine.stock import ROOM_C, Dissolved, made_per_litre
from evenwater.screens import shelf, words
from evenwater.screens.answer import BOTTLE as BOTTLE_CAUTIONS
from evenwater.screens.jug_label import JugLabel, LabelFacts, label
from evenwater.screens.shelf import PAIR, WANTED, WEIGHED, to_be_weighed
from evenwater.screens.shown import figure, significant, unit_words, with_unit
from evenwater.screens.terms import capitalized, headed, term, terms
from evenwater.screens.views import AnswerView, Bar, Message, WorkLine
from evenwater.wording import marked, say, say_all

Values = Mapping[str, Typed]

RECIPES = (
    (WEIGHED, marked("I weighed it")),
    (WANTED, marked("I want a strength")),
    (PAIR, marked("To match another jug")),
)
_WANTED_FIELDS = ("dose", "water", "raises")
_UNITS = {"g/L": marked("g per L"), "mmol/L": marked("mmol per L")}
_NAMES = {"dic": marked("dissolved inorganic carbon"), "salinity": marked("dry salt")}
# A scale shows this many digits of what is to be weighed; common practice, no source.
_WEIGHED_DIGITS = 4


@dataclass(frozen=True)
class Stocked:
    """What the sheet shows of a batch.

    ``answer`` is there when the batch can be made; ``masses`` are the fields that taking over a recipe would set.
    """

    view: AnswerView
    answer: StockAnswer | None = None
    masses: tuple[tuple[str, Typed], ...] = ()

    def label(self, name: str, batch_id: str, batch: Values) -> JugLabel | None:
        """Return the label of the jug, or None of a batch that is still to be weighed, or cannot be made.

        Parameters
        ----------
        name : str
            Name of the jug.
        batch_id : str
            Id of the batch's record.
        batch : mapping of str to Typed
            The batch's fields, for its dates and who mixed it.

        Returns
        -------
        JugLabel or None
            What it says.
        """
        if self.answer is None or self.masses:
            return None
        said = {field: batch.get(field, Typed("")).text for field in ("mixed_on", "mixed_by", "use_by")}
        return label(self.answer, LabelFacts(name, batch_id, **said))


def recipe_of(batch: Values) -> str:
    """Return how the strength of a batch is said; as weighed when nothing else was chosen, or it was used already."""
    return batch["recipe"].text if to_be_weighed(batch) else WEIGHED


def raw_stock(batch: Values, partner: Values) -> dict[str, Any]:
    """Put a batch together as a question file of the kind ``stock`` has it.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch's fields as typed; empty ones may be absent.
    partner : mapping of str to Typed
        The batch in the jug that this one is to match; empty when there is none.

    Returns
    -------
    dict
        Tables ``additive`` and perhaps ``wanted``, and ``temperature``.
    """
    additive = shelf.additive_table(batch)
    raw: dict[str, Any] = {"kind": "stock", "additive": additive}
    temperature = additive.pop("temperature", None)
    if temperature is not None:
        raw["temperature"] = temperature
    if "label" in additive:
        parameter = batch.get("label_parameter", Typed("")).text
        if parameter:
            additive["label"]["parameter"] = Typed(parameter)
        return raw
    recipe = recipe_of(batch)
    if recipe == WEIGHED:
        return raw
    additive.pop("dissolved", None)
    if isinstance(additive.get("also"), dict):
        additive["also"].pop("dissolved", None)
    if recipe == PAIR:
        raw["wanted"] = {"partner": shelf.additive_table(partner)}
    else:
        raw["wanted"] = shelf.filled(batch, _WANTED_FIELDS, "wanted_")
    return raw


def evaluate(batch: Values, partner: Values, catalogue: Catalogue, notes: Iterable[str] = ()) -> Stocked:
    """Read a batch, reckon it, and turn the result into what the sheet shows.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch's fields as typed.
    partner : mapping of str to Typed
        The batch in the jug that this one is to match.
    catalogue : Catalogue
        Parameters and chemicals.
    notes : iterable of str
        What else the keeper must know of this batch, such as cards that it makes void.

    Returns
    -------
    Stocked
        The view, with the answer when there is one.
    """
    if recipe_of(batch) == PAIR and "chemical" not in shelf.additive_table(partner):
        return Stocked(_no_partner(bool(batch.get("partner", Typed("")).text)))
    chemical = catalogue.chemicals.get(batch.get("chemical", Typed("")).text)
    if recipe_of(batch) != WEIGHED and chemical is not None and not chemical.raises:
        text = say(
            "{chemical} raises nothing that is corrected here. Weigh it instead.", chemical=capitalized(chemical.name)
        )
        return Stocked(AnswerView("refused", messages=(Message(text, "wanted", "does_not_raise"),), spoken=text))
    question = stock_intake.stock(raw_stock(batch, partner), catalogue)
    if isinstance(question, Unread):
        wrong, missing = (tuple(map(_message, reasons)) for reasons in (question.wrong, question.missing))
        spoken = " ".join(m.text for m in wrong + missing)
        return Stocked(AnswerView("refused" if wrong else "empty", messages=wrong + missing, spoken=spoken))
    result = solve(question)
    if isinstance(result, Refused):
        messages = tuple(map(_message, result.reasons))
        return Stocked(AnswerView("refused", messages=messages, spoken=" ".join(m.text for m in messages)))
    view = _answered(result, recipe_of(batch) != WEIGHED)
    view = replace(view, remarks=(*notes, *view.remarks))
    return Stocked(view, result, _masses(result) if recipe_of(batch) != WEIGHED else ())


def _no_partner(chosen: bool) -> AnswerView:
    if not chosen:
        message = Message(say("Choose the jug to match."), "wanted.partner", "missing")
        return AnswerView("empty", messages=(message,), spoken=message.text)
    text = say("A bottle known by its label, or a jug with nothing in it, cannot be matched. Choose another jug.")
    return AnswerView("refused", messages=(Message(text, "wanted.partner", "no_partner"),), spoken=text)


def date_messages(batch: Values) -> tuple[Message, ...]:
    """Return what is wrong with the dates of a batch, beside their fields; a date must never be turned round.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch's fields.

    Returns
    -------
    tuple of Message
        None when both can be read or are empty.
    """
    found = []
    for field in ("mixed_on", "use_by"):
        text = batch.get(field, Typed("")).text.strip()
        try:
            date.fromisoformat(text or "2000-01-01")
        except ValueError:
            found.append(
                Message(
                    say("“{text}” is not a date. Write it like 2026-11-25.", text=text),
                    f"additive.{field}",
                    "not_a_date",
                )
            )
    return tuple(found)


def assumed() -> dict[str, str]:
    """Return what an empty field of a batch stands for, by the field's path in the form."""
    return {"batch.temperature": figure(ROOM_C, 1), "batch.purity": "100", "batch.also_purity": "100"}


def _message(reason: Reason) -> Message:
    return Message(words.sentence(reason), reason.path, reason.code)


def _masses(answer: StockAnswer) -> tuple[tuple[str, Typed], ...]:
    batch = answer.batch
    if isinstance(batch, Bottle):
        return ()
    names = ("dissolved", "also_dissolved")
    return tuple(
        (name, Typed(quantities.significant(portion.grams, _WEIGHED_DIGITS), "g"))
        for name, portion in zip(names, batch.portions, strict=False)
    )


def _answered(answer: StockAnswer, wanted: bool) -> AnswerView:
    first = _main(answer)
    strength = f"{significant(first.per_litre / 1000.0, 4)}"
    unit, of = _per_ml(first), say("of {first}", first=term(_NAMES.get(first.name, first.name)))
    rises = ", ".join(_rise_words(answer))
    batch = answer.batch
    number, beside, second, third = strength, unit, headed(of, rises) if rises else of, ""
    if isinstance(batch, Dissolved):
        litres = with_unit(significant(batch.made_up_l, 4), "L")
        weighed = [
            say(
                "{grams} of {tall_man}",
                grams=with_unit(significant(p.grams, _WEIGHED_DIGITS), "g"),
                tall_man=term(p.chemical.tall_man),
            )
            for p in batch.portions
        ]
        third = say("{weighed}, filled up to {litres}", weighed=say(" and ").join(weighed), litres=litres)
        if wanted:
            first_mass, *more = (significant(p.grams, _WEIGHED_DIGITS) for p in batch.portions)
            also = "".join(say(" and {mass}", mass=with_unit(mass, "g")) for mass in more)
            number, beside, second = first_mass, say("g{also} to weigh out", also=also), third
            third = headed(f"{with_unit(strength, unit)} {of}", rises)
        if batch.saturated:
            third = say("saturated, clear, in a jug of {litres}", litres=litres)
    cautions = say_all(BOTTLE_CAUTIONS)
    if isinstance(batch, Dissolved):
        said = tuple(f"{statement}." for statement in terms(batch.statements))
        cautions = (*((f"{term(batch.signal_word)}.",) if batch.signal_word else ()), *said, *terms(batch.cautions))
    return AnswerView(
        state="answered",
        figure=number,
        figure_unit=beside,
        second=second,
        third=third,
        bars=tuple(_bars(answer)),
        working=tuple(_working(answer)),
        cautions=cautions,
        remarks=tuple(words.sentence(reason) for reason in answer.remarks),
        spoken=f"{with_unit(number, beside)}. {second}.",
    )


def _purposes(answer: StockAnswer) -> tuple[str, ...]:
    """Return the parameters a batch is used for, the main one first; others follow in the order of the data file."""
    if isinstance(answer.batch, Bottle):
        return (answer.batch.parameter.name,)
    return answer.batch.chemical.raises


def _main(answer: StockAnswer) -> Carried:
    order = _purposes(answer)
    return min(answer.carries, key=lambda item: order.index(item.name) if item.name in order else len(order))


def _per_ml(item: Carried) -> str:
    # Of an amount per litre a thousandth is in a millilitre.
    return {"meq/L": say("meq per mL"), "g/L": say("g per mL"), "mmol/L": say("mmol per mL")}.get(
        item.unit, say("mg per mL")
    )


def _rise_words(answer: StockAnswer) -> Iterable[str]:
    dose, water = with_unit(figure(SAID_DOSE_ML, 0), "mL"), with_unit(figure(SAID_WATER_L, 0), "L")
    order = _purposes(answer)
    rises = sorted(answer.rises, key=lambda item: order.index(item[0].name) if item[0].name in order else len(order))
    for number, (parameter, rise) in enumerate(rises):
        amount = from_canonical(rise, parameter.kind, parameter.display_unit)
        shown = with_unit(significant(amount, 3), unit_words(parameter.display_unit))
        yield (
            say("{dose} raises {water} by {shown}", dose=dose, water=water, shown=shown)
            if number == 0
            else say("and {parameter} by {shown}", parameter=term(parameter.name), shown=shown)
        )


def _bars(answer: StockAnswer) -> Iterable[Bar]:
    batch, most = answer.batch, answer.most_g_per_l
    if isinstance(batch, Bottle) or most is None or batch.saturated:
        return
    made = made_per_litre(batch)
    at = with_unit(figure(batch.coolest_c, 1), "°C")
    yield Bar(
        "solubility",
        say("Dissolved, at {at}", at=at),
        say("{made} of {most}", made=significant(made, 3), most=with_unit(significant(most, 3), say("g per L"))),
        made / most,
        over=made > most,
    )


def _working(answer: StockAnswer) -> Iterable[WorkLine]:
    for item in answer.carries:
        unit = say_all(_UNITS.get(item.unit)) or unit_words(item.unit)
        yield WorkLine(
            capitalized(_NAMES.get(item.name, item.name)),
            say("in a litre"),
            with_unit(significant(item.per_litre, 4), unit),
        )
    if isinstance(answer.batch, Dissolved) and answer.batch.also:
        ratio = sulfate_per_magnesium(answer.batch)
        if ratio is not None:
            sea = say("in seawater {sulfate_per_magnesium}", sulfate_per_magnesium=figure(SULFATE_PER_MAGNESIUM, 3))
            yield WorkLine(say("Sulfate to magnesium"), say("by moles, {sea}", sea=sea), figure(ratio, 3))
