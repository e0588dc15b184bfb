"""The paper that cards are printed on: what was chosen last, at first what the country uses."""

from __future__ import annotations

from PySide6.QtCore import QLocale, QSettings

from evenwater.card.paper import PAPERS, Paper
from evenwater.wording import say

_KEY = "paper"


def card_paper() -> Paper:
    """Return the paper for the next card."""
    letter = QLocale().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
    name = str(QSettings().value(_KEY, say("Letter") if letter else "A4"))
    return PAPERS.get(name, PAPERS["A4"])


def keep_card_paper(name: str) -> None:
    """Keep a paper by its name."""
    QSettings().setValue(_KEY, name)
