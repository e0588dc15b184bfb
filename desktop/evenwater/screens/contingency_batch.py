"""The card for a new batch in the jug: handling first, then exactly what to dissolve for the strength of the plan."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.engine.correction import Answer
from evenwater.engine.stock import Dissolved, Portion, made_per_litre
from evenwater.screens.contingency_views import PHONE, ContingencyCard, Step, WriteIn, apart, identity
from evenwater.screens.dose_card import label_words, strength_words
from evenwater.screens.shown import dose, figure, significant, with_unit
from evenwater.screens.terms import term
from evenwater.screens.views import CardView, DoseRow
from evenwater.wording import marked, say, say_all

NEW_BATCH = marked("A new batch goes into the jug")
_VOID = marked("this plan is void. Leave the pump off. Take this card and the dose card down. Call the keeper.")
_ROOM_FOR = ((150.0, marked("three quarters")), (600.0, marked("half")))
"""Up to how many grams in a litre a jug may be filled how far."""
_MIXED = WriteIn(
    marked("What was mixed"), (marked("Date"), marked("Weighed"), marked("Made up to"), marked("Initials")), 4
)
_OPENED = WriteIn(
    marked("Bottles that were opened"),
    (marked("Date"), marked("Use by"), marked("Words compared"), marked("Initials")),
    4,
)
_PRIME = Step(
    marked("Then"), marked("Run the pump into a cup until liquid comes without air. Do not pour the cup into the tank.")
)
_START = Step(
    marked("At the end"),
    marked("Start the pump as it was set. The doses stay the same; those in between are not made up."),
)


def new_batch(answer: Answer, base: CardView) -> ContingencyCard:
    """Return the card to refill the jug by.

    Parameters
    ----------
    answer : Answer
        The plan, which holds for one strength only.
    base : CardView
        Its dose card.

    Returns
    -------
    ContingencyCard
        The recipe of a dissolved batch, of limewater, or the words that a bottle must bear.
    """
    additive = answer.question.additive
    if not isinstance(additive, Dissolved):
        return _bottle(base, label_words(answer))
    saturated = additive.saturated
    return ContingencyCard(
        title=say(NEW_BATCH),
        use_when=say("Use this card when the jug is filled again, to exactly this strength."),
        identity=identity(base),
        cautions=base.cautions,
        emergency=base.emergency,
        steps=tuple(_limewater(additive) if saturated else _mixing(additive)),
        rows=tuple(_weighed(additive)),
        limits=(
            say("Another salt, another hydrate, another purity or other grams: {void}", void=say(_VOID)),
            say("Never add the rest of an old batch of another strength."),
        ),
        facts=((say("Strength"), strength_words(additive)), *apart(base)),
        phone=say(PHONE),
        write_in=say_all(_MIXED),
        first=True,
    )


def _mixing(batch: Dissolved) -> Iterator[Step]:
    many = bool(batch.also)
    litres = _litres(batch.made_up_l)
    yield from _trained(batch)
    yield Step(say("Before"), say("Stop the pump. Take the line out of the jug. Rinse the jug with fresh water."))
    yield Step(
        say("Before"),
        say("Compare the words on the bags with the names above, the water of the hydrate too.")
        if many
        else say("Compare the words on the bag with the names above, the water of the hydrate too."),
    )
    yield Step(say("First"), say("Fill the jug {batch} full with cool, purified fresh water.", batch=_share(batch)))
    yield Step(
        say("Then"),
        say("Weigh what the rows for {litres} say. Do not measure by the spoon.", litres=litres)
        if many
        else say("Weigh what the row for {litres} says. Do not measure by the spoon.", litres=litres),
    )
    yield Step(
        say("Then"),
        say("Put the salts into the water slowly, stirring. Never pour water onto the salt.")
        if many
        else say("Put the salt into the water slowly, stirring. Never pour water onto the salt."),
    )
    yield Step(say("Then"), say("Let it come to the warmth of the room."))
    yield Step(say("Then"), say("Fill up to {litres} with the same water. Stir.", litres=litres))
    yield Step(
        say("Look"),
        say("Nothing may lie on the ground, nothing may float, it must be clear. If not: stir longer, do not heat."),
    )
    yield Step(say("Look"), say("Still not clear after an hour: do not use it. Call the keeper."))
    yield from _finish(batch)


def _limewater(batch: Dissolved) -> Iterator[Step]:
    litres = _litres(batch.made_up_l)
    yield from _trained(batch)
    yield Step(say("Before"), say("Stop the pump. Take the line out of the jug."))
    yield Step(say("Before"), say("Compare the words on the bag with the name above."))
    yield Step(say("First"), say("Fill the jug with {litres} of purified fresh water.", litres=litres))
    yield Step(say("Then"), say("Put in what the row says, without raising dust. Stir for a minute. Close the jug."))
    yield Step(say("Then"), say("Let it settle over night. Some must lie on the ground: it is more than can dissolve."))
    yield Step(
        say("Look"), say("The water above must be clear. Put the line into the clear water, well above the ground.")
    )
    yield from _finish(batch)


def _trained(batch: Dissolved) -> Iterator[Step]:
    if batch.restricted:
        yield Step(
            say("Before"),
            say("Go on only if you are trained for this chemical. If not: stop the pump, call the keeper."),
        )


def _share(batch: Dissolved) -> str:
    """Say how full the jug may be before the salt goes in, so that it never passes the mark. Common practice, no source."""
    made = made_per_litre(batch)
    return next((words for most, words in say_all(_ROOM_FOR) if made <= most), say("a third"))


def _finish(batch: Dissolved) -> Iterator[Step]:
    word = say(", the word {signal_word}", signal_word=term(batch.signal_word.upper())) if batch.signal_word else ""
    yield Step(say("Label"), say("Write on the jug: name, strength, the date of today{word}.", word=word))
    yield say_all(_PRIME)
    yield say_all(_START)


def _bottle(base: CardView, said: str) -> ContingencyCard:
    return ContingencyCard(
        title=say(NEW_BATCH),
        use_when=say("Use this card when a new bottle is opened, with exactly these words on its label."),
        identity=identity(base),
        cautions=base.cautions,
        emergency=base.emergency,
        steps=(
            Step(say("Before"), say("Stop the pump.")),
            Step(
                say("Before"),
                say("Compare the label, word for word and number for number. It must say: {said}.", said=said),
            ),
            Step(say("First"), say("Look at the date on the bottle. Look that nothing lies on the ground of it.")),
            Step(say("Then"), say("Fill it in as it is. Do not thin it.")),
            Step(say("Label"), say("Write on the jug: name, the words above, the date of today.")),
            say_all(_PRIME),
            say_all(_START),
        ),
        limits=(say("Another name, another number or another unit on the label: {void}", void=say(_VOID)),),
        facts=apart(base),
        phone=say(PHONE),
        write_in=say_all(_OPENED),
        first=True,
    )


def _weighed(batch: Dissolved) -> Iterator[DoseRow]:
    """Yield what to weigh for the whole jug, then for one litre; of a mix that is said by its strength alone."""
    volumes = [batch.made_up_l] if batch.also or batch.made_up_l == 1.0 else [batch.made_up_l, 1.0]
    for litres in volumes:
        for portion in batch.portions:
            yield _row(batch, portion, litres)


def _row(batch: Dissolved, portion: Portion, litres: float) -> DoseRow:
    share = litres / batch.made_up_l
    # Of lime twice what dissolves: some turns to chalk, and the ground must never run out. Common practice, no source.
    grams = portion.grams * share * (2.0 if batch.saturated else 1.0)
    pure = (
        ""
        if portion.purity == 1.0
        else say(", {purity} pure", purity=with_unit(figure(100.0 * portion.purity, 2), "%"))
    )
    when = (
        say("For {litres}", litres=_litres(litres))
        if batch.saturated
        else say("To make {litres}", litres=_litres(litres))
    )
    made = (
        say("More than dissolves, so that some stays on the ground")
        if batch.saturated
        else say("Made up to {litres}", litres=_litres(litres))
    )
    return DoseRow(when, _mass(grams, 3 if batch.saturated else 4), f"{term(portion.chemical.tall_man)}{pure}", made)


def _mass(grams: float, digits: int) -> str:
    """Write what is weighed, with as many digits as the dose card's strength, never four before the point (L6)."""
    if grams >= 1000.0:
        return with_unit(significant(grams / 1000.0, digits), "kg")
    in_mg = grams < 1.0
    return with_unit(significant(grams * (1000.0 if in_mg else 1.0), digits), "mg" if in_mg else "g")


def _litres(litres: float) -> str:
    return with_unit(significant(litres, 4), "L") if litres < 1000.0 else dose(1000.0 * litres)
