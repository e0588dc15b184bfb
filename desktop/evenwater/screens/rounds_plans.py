"""The plans that are followed: what is wrong with one comes before its end, and its end before its card's."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC

from evenwater.screens.rounds_room import CARD, DUE, PLAN, WRONG, Clock, Duty, Followed, Hanging, Room, place_of
from evenwater.screens.terms import term
from evenwater.wording import say

STOP, ABOVE, BELOW, UNREADABLE = "stop", "above", "below", "unreadable"


def plans(room: Room, clock: Clock) -> Iterator[Duty]:
    """Yield a line for each live plan that must be looked at or ended; never two for one plan.

    Parameters
    ----------
    room : Room
        The fish room.
    clock : Clock
        The present.

    Yields
    ------
    Duty
        In the order of the plans.
    """
    for plan in room.plans:
        if plan.state == STOP:
            yield _duty(
                room,
                plan,
                WRONG,
                say("Stop dosing {parameter}", parameter=term(plan.parameter)),
                plan.why,
                say("Its plan says to stop."),
            )
        elif plan.state in (ABOVE, BELOW, UNREADABLE):
            what = say("Look at the plan for {parameter}", parameter=term(plan.parameter))
            plain = (
                say("It cannot be reckoned any more.")
                if plan.state == UNREADABLE
                else say("The readings leave its band.")
            )
            yield _duty(room, plan, WRONG, what, plan.why, plain)
        elif plan.ends_at is not None and (urgency := clock.urgency(plan.ends_at)) is not None:
            ends = clock.time(plan.ends_at)
            why = say(
                "Plan {plan_id} {reached} {ends}.",
                plan_id=plan.plan_id,
                reached=say("reached its end on") if urgency == DUE else say("ends on"),
                ends=ends,
            )
            yield _duty(
                room, plan, urgency, say("End the plan for {parameter}", parameter=term(plan.parameter)), why, why
            )


def _duty(room: Room, plan: Followed, urgency: str, what: str, why: str, plain: str) -> Duty:
    at = plan.ends_at if urgency != WRONG and plan.ends_at is not None else plan.started
    return Duty(
        urgency,
        at.astimezone(UTC),
        place_of(room, plan.system_id),
        what,
        why,
        "Correct",
        plan.system_id,
        plan.parameter,
        PLAN,
        plan.plan_id,
        plain,
    )


def cards(room: Room, clock: Clock) -> Iterator[Duty]:
    """Yield a line for each card that must come down or be replaced (H26).

    A card that runs out together with its plan is not named beside it: ending the plan takes it out of force.

    Parameters
    ----------
    room : Room
        The fish room.
    clock : Clock
        The present.

    Yields
    ------
    Duty
        In the order of the cards.
    """
    named = {duty.about for duty in plans(room, clock)}
    for card in room.cards:
        if card.void:
            why = card.why or say("Another card has taken its place.")
            yield _card(
                room,
                card,
                WRONG,
                say("Take down card {plan_id}", plan_id=card.plan_id),
                why,
                say("It must not be followed."),
            )
        elif (urgency := clock.urgency(card.valid_until)) is not None and card.plan_id not in named:
            why = say(
                "It {was} valid until {valid_until}.",
                was=say("was") if urgency == DUE else say("is"),
                valid_until=clock.time(card.valid_until),
            )
            yield _card(room, card, urgency, say("Replace card {plan_id}", plan_id=card.plan_id), why, why)


def _card(room: Room, card: Hanging, urgency: str, what: str, why: str, plain: str) -> Duty:
    return Duty(
        urgency,
        card.valid_until.astimezone(UTC),
        place_of(room, card.system_id),
        what,
        why,
        "Correct",
        card.system_id,
        card.parameter,
        CARD,
        card.plan_id,
        plain,
    )
