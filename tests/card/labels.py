"""Labels to look at and to test with, and what is read off their pages."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Any

import pytest

from evenwater.card.items import Stroke
from evenwater.card.label_paper import LABEL_PAPERS
from evenwater.screens.jug_label import JugLabel
from tests.screens.jugs import BARE, FACTS, LONG, labelled

LABELS: dict[str, Callable[[], JugLabel]] = {
    "soda ash": lambda: labelled("sodium carbonate anhydrous"),
    "caustic": lambda: labelled("sodium hydroxide"),
    "mix": lambda: labelled("a mix"),
    "limewater": lambda: labelled("limewater"),
    "bottle": lambda: labelled("a bottle of alkalinity", replace(FACTS, mixed_on="", mixed_by="")),
    "bare": lambda: labelled("potassium nitrate", BARE),
    "long": lambda: labelled("calcium chloride hexahydrate", LONG),
}
on_every_label_paper = pytest.mark.parametrize("paper", list(LABEL_PAPERS.values()), ids=lambda paper: paper.name)
every_label = pytest.mark.parametrize("name", list(LABELS))


def strings(view: JugLabel) -> list[str]:
    """Return every string of a label in the order in which it is set."""
    held = [text for contents in view.contents for text in (contents.name, contents.formula)]
    boxes = [text for entry in view.entries for text in (entry.label, entry.text)]
    safety = [*view.statements, *view.handling, view.separation, view.keep_away, view.first_aid]
    return [t for t in (view.name, *held, view.signal_word, *safety, view.strength, *view.does, *boxes) if t]


def set_words(texts: Iterable[str]) -> set[str]:
    """Return the words of several texts."""
    return {word for text in texts for word in text.split()}


def frames(items: Iterable[Any]) -> list[tuple[float, float, float, float, float]]:
    """Return left, top, right, bottom and width of line of every rectangle [mm]."""
    found = []
    for item in items:
        if isinstance(item, Stroke) and item.closed and len(item.points) == 4:
            xs, ys = zip(*item.points, strict=True)
            found.append((min(xs), min(ys), max(xs), max(ys), item.width))
    return found
