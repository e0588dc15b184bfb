"""Words of the data files in the keeper's language: names of parameters and chemicals, cautions, statements, signal words."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from evenwater.wording import english, marked, say, style

# What the engine names besides the parameters.
BESIDES = (marked("sodium"), marked("chloride"), marked("sulfate"), marked("boron"), marked("temperature"))


def term(name: str) -> str:
    """Return a word or sentence of the data files as it is said; what they do not hold comes back as it is."""
    return say(name) if name else name


def terms(names: Iterable[str]) -> tuple[str, ...]:
    """Return words or sentences of the data files as they are said."""
    return tuple(term(name) for name in names)


def capitalized(text: str) -> str:
    """Return a term or a phrase as it begins a sentence.

    Only English has the rest of it in small letters: a German noun keeps its capital wherever it stands.
    """
    said = term(text)
    return said.capitalize() if english() else said[:1].upper() + said[1:]


def inside(text: str) -> str:
    """Return what begins with a capital as it stands inside a sentence."""
    return text if style().capital_nouns else text[:1].lower() + text[1:]


def headed(head: str, said: str) -> str:
    """Return what is said under its head; French has a space before the colon."""
    return say("{head}: {said}", head=head, said=said)


def listed(names: Sequence[str]) -> str:
    """Return names in a sentence: a, b and c."""
    if len(names) < 2:
        return names[0] if names else ""
    return say("{first} and {last}", first=", ".join(names[:-1]), last=names[-1])
