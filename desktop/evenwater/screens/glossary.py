"""The words of the trade: what each means, what goes with it, and who says so."""

from __future__ import annotations

import tomllib
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from evenwater.wording import marked, say

FILE = "glossary.toml"
_NO_SOURCE = marked("Common practice, no source.")
_SOURCE = marked("Source: {source}.")


@dataclass(frozen=True)
class Term:
    """A term in the keeper's language: its ``key`` is the same in every one; ``see`` are keys of what goes with it."""

    key: str
    name: str
    text: str
    source: str
    see: tuple[str, ...]


class Glossary:
    """All terms, in the order of the alphabet of the language they are said in."""

    def __init__(self, entries: Mapping[str, Mapping[str, Any]]) -> None:
        """Take the entries of the file."""
        terms = (_term(key, entry) for key, entry in entries.items())
        self.terms = tuple(sorted(terms, key=_alphabetical))
        self._by_key = {term.key: term for term in self.terms}

    def find(self, key: str) -> Term | None:
        """Return a term by its key, or None."""
        return self._by_key.get(key)

    def matching(self, words: str) -> tuple[Term, ...]:
        """Return the terms that have these words in their name or, after those, in their text."""
        wanted = _plain(words)
        named = tuple(term for term in self.terms if wanted in _plain(term.name))
        told = tuple(term for term in self.terms if term not in named and wanted in _plain(term.text))
        return named + told


def load(folder: Path) -> Glossary:
    """Read the glossary from the resources, in the language that is spoken now."""
    with (folder / FILE).open("rb") as stream:
        return Glossary(tomllib.load(stream))


def _term(key: str, entry: Mapping[str, Any]) -> Term:
    source = str(entry.get("source", ""))
    said = say(_SOURCE, source=source) if source else say(_NO_SOURCE)
    return Term(key, say(str(entry["name"])), say(str(entry["text"])), said, tuple(entry.get("see", ())))


def _plain(words: str) -> str:
    """Return words without case and accents, so that "e" finds "é"."""
    apart = unicodedata.normalize("NFKD", words.casefold())
    return "".join(letter for letter in apart if not unicodedata.combining(letter)).strip()


def _alphabetical(term: Term) -> tuple[str, str]:
    return _plain(term.name), term.name
