"""What a contingency card shows: frozen steps, rows and sentences, in the order in which they are needed."""

from __future__ import annotations

from dataclasses import dataclass

from evenwater.screens.views import CardView, DoseRow
from evenwater.wording import marked, say


@dataclass(frozen=True)
class Step:
    """One thing to do and when; steps stand in the order of when to act."""

    when: str
    what: str


@dataclass(frozen=True)
class WriteIn:
    """Empty boxes: what they are for, the heads of the four columns, how many rows."""

    title: str
    columns: tuple[str, str, str, str]
    rows: int


@dataclass(frozen=True)
class Identity:
    """Which plan a contingency card belongs to: the same words as on the dose card beside it."""

    system: str
    plan_id: str
    issued: str
    valid_until: str
    belongs: str


@dataclass(frozen=True)
class ContingencyCard:
    """One card that hangs beside the dose card, for whoever looks after the tank.

    ``cautions`` come before everything else where a stock is mixed or handled, ending in ``emergency``; both are empty
    where none is. ``rows`` are doses, or on the card of a new batch what is weighed. ``limits`` stand in the frame of
    the stop rule, ``facts`` are labels with their values, ``phone`` ends where a number is to be written. ``first`` says
    that rows and limits are read before the steps, as a recipe is.
    """

    title: str
    use_when: str
    identity: Identity
    steps: tuple[Step, ...]
    limits: tuple[str, ...]
    phone: str
    write_in: WriteIn
    rows: tuple[DoseRow, ...] = ()
    facts: tuple[tuple[str, str], ...] = ()
    cautions: tuple[str, ...] = ()
    emergency: str = ""
    first: bool = False


@dataclass(frozen=True)
class ContingencySet:
    """The cards of one plan, printed and saved together."""

    cards: tuple[ContingencyCard, ...]

    @property
    def plan_id(self) -> str:
        """The plan they all belong to, with its check characters."""
        return self.cards[0].identity.plan_id

    @property
    def system(self) -> str:
        """The tank they all hang at."""
        return self.cards[0].identity.system


# The last words stay together, in front of the line for the number.
PHONE = marked("The keeper's\u00a0telephone:")


def identity(card: CardView) -> Identity:
    """Return the identity that the contingency cards share with a dose card."""
    return Identity(
        system=card.system,
        plan_id=card.plan_id,
        issued=card.issued,
        valid_until=card.valid_until,
        belongs=say(
            "Goes with the dose card of this plan. After its last day: give nothing, test daily, call the keeper."
        ),
    )


def apart(card: CardView) -> tuple[tuple[str, str], ...]:
    """Return what a dose card says must be kept apart, as a fact; none where it says nothing."""
    return ((say("Keep apart"), card.separation),) if card.separation else ()
