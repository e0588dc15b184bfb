"""One head of a pump draws from one jug and doses into one water: says where two corrections have chosen the same."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from evenwater.screens.terms import listed, term
from evenwater.wording import say


@dataclass(frozen=True)
class Choice:
    """A correction that has chosen a pump: names of the system, the parameter and the jug, with the ids that tell them apart."""

    system_id: str
    place: str
    parameter: str
    stock_id: str
    stock: str


def sharing(pump: str, chosen: Iterable[Choice]) -> str:
    """Return what is wrong with the choices of one pump.

    Parameters
    ----------
    pump : str
        Name of the pump.
    chosen : iterable of Choice
        The corrections that have chosen it.

    Returns
    -------
    str
        One or two sentences; empty where it draws from one jug into one water, whatever that raises.
    """
    every = tuple(chosen)
    if len({(each.system_id, each.stock_id) for each in every}) < 2:
        return ""
    one = len({each.system_id for each in every}) == 1
    named = [
        f"{term(each.parameter)}{('' if one else say(' in {place}', place=each.place))} ({each.stock})"
        for each in every
    ]
    return say(
        "{pump} is chosen for {where}. One head draws from one jug into one water: choose another pump, or another head, for one of them.",
        pump=pump,
        where=listed(named),
    )
