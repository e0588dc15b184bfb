"""Looks in the records whether a pump is chosen for more than one jug or water."""

from __future__ import annotations

from collections.abc import Iterator

from evenwater.screens.pump_sharing import Choice, sharing
from evenwater.session import Document
from evenwater.ui.records_pane import JUGS, PUMPS, SYSTEMS, name_of
from evenwater.wording import say_all


def shared(document: Document, pump: str) -> str:
    """Return what is wrong with the choices of a pump, given by its id; an empty text where nothing is."""
    return sharing(name_of(document, pump, say_all(PUMPS)), _choices(document, pump)) if pump else ""


def _choices(document: Document, pump: str) -> Iterator[Choice]:
    for record in document.records("correction"):
        system, _, parameter = record.partition(":")
        stock = document.value(record, "stock").text
        if document.value(record, "pump").text == pump and stock in document.records("stock"):
            place = name_of(document, system, say_all(SYSTEMS))
            yield Choice(system, place, parameter, stock, name_of(document, stock, say_all(JUGS)))
