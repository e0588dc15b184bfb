"""What is said, in the keeper's language. English is what stands in the code; a window may hand in another language.

Nothing here knows Qt: the window hands in a lookup, tests hand in one of their own, and the headless front door none. A text is looked
up when it is said, never when a module is loaded, so a module-level text is only marked.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields, is_dataclass, replace
from typing import Any, TypeVar, cast

Lookup = Callable[[str, str, int], str]
Table = TypeVar("Table")


@dataclass(frozen=True)
class Style:
    """How a language writes what is no text: its decimal mark, and whether nouns keep their capital inside a sentence."""

    decimal: str = "."
    capital_nouns: bool = False


class Marked(str):
    """A text of a module-level table: it is translated where it is said, and told apart from the keys beside it."""

    __slots__ = ()


def _english(text: str, _about: str, _count: int) -> str:
    return text


_lookup: Lookup = _english
_style: Style = Style()


def use(lookup: Lookup | None, style: Style | None = None) -> None:
    """Take another language.

    Parameters
    ----------
    lookup : callable or None
        From text, what it is about and a count (-1 for none) to the text in that language; the text itself where it has none.
        None for English.
    style : Style or None
        How that language writes numbers and nouns; None for the English way.
    """
    global _lookup, _style  # noqa: PLW0603  (one language at a time, as with the locale of a process)
    _lookup = _english if lookup is None else lookup
    _style = Style() if style is None else style


def english() -> bool:
    """Return whether what is said is what stands in the code."""
    return _lookup is _english


def style() -> Style:
    """Return how the language in force writes numbers and nouns."""
    return _style


def marked(text: str) -> str:
    """Return ``text`` as it is: it is translated, but only where it is said."""
    return Marked(text)


def say(text: str, /, *, about: str = "", **parts: object) -> str:
    """Say one text.

    Parameters
    ----------
    text : str
        English, with ``{name}`` where a part goes.
    about : str
        What tells it apart from the same English text with another meaning.
    **parts : object
        What stands in its place; never itself read as a template.

    Returns
    -------
    str
        The text in the language in force.
    """
    said = _lookup(text, about, -1)
    return said.format_map(parts) if parts else said


def say_all(table: Table, /) -> Table:
    """Say what is marked in a table.

    Parameters
    ----------
    table : object
        A text, or a tuple, list, mapping or dataclass that holds texts; of a mapping only the values are looked at.

    Returns
    -------
    object
        The same with every marked text in the language in force; what is not marked, such as keys and numbers, is as it was.
    """
    return table if _lookup is _english else cast("Table", _said(table))


def _said(value: Any) -> Any:
    if isinstance(value, Marked):
        return _lookup(value, "", -1)
    if isinstance(value, dict):
        return {key: _said(one) for key, one in value.items()}
    if type(value) in (tuple, list):
        return type(value)(_said(one) for one in value)
    if is_dataclass(value) and not isinstance(value, type):
        return replace(
            value, **{field.name: _said(getattr(value, field.name)) for field in fields(value) if field.init}
        )
    return value


def say_many(one: str, many: str, count: int, /, *, about: str = "", **parts: object) -> str:
    """Say a text that depends on how many there are, as ``{n}``.

    Parameters
    ----------
    one, many : str
        English for one and for any other number.
    count : int
        How many.
    about : str
        What tells it apart from the same English text with another meaning.
    **parts : object
        What stands in its place.

    Returns
    -------
    str
        The text in the language in force, in the form that it has for this number.
    """
    said = many if _lookup is _english else _lookup(many, about, count)
    if said == many and count == 1:  # also where a language has no words of its own for it
        said = one
    return said.format_map({"n": count, **parts})
