"""What a record is called in words: its name as typed, without signs that nobody sees or that turn the line round."""

from __future__ import annotations

from collections.abc import Mapping

from evenwater.engine.quantities import Typed
from evenwater.engine.visible import visible


def shown_name(values: Mapping[str, Typed], unnamed: str) -> str:
    """Return the name of a record for a sentence, a list or paper.

    Parameters
    ----------
    values : mapping of str to Typed
        Fields of the record, as typed.
    unnamed : str
        What one without a name is called.

    Returns
    -------
    str
        One line; signs that nobody would see stand as their numbers.
    """
    return visible(values.get("name", Typed("")).text.strip()) or unnamed
