"""Writes a card as a PDF from a program without a window and without a display."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtGui import QGuiApplication

from evenwater.card.failures import CardFailed
from evenwater.card.output import write_pdf
from evenwater.card.paper import A4
from evenwater.screens.views import CardView

_FAULTS = {
    "card_fonts_missing": "the card's typeface is missing. Install the program again.",
    "card_not_written": "{file} cannot be written: {detail}.",
    "card_not_painted": "the card could not be painted. Please report this question.",
    "card_does_not_fit": "the card does not fit on its paper. Please report this question.",
}


def write(path: Path, card: CardView) -> str:
    """Write a card as a PDF.

    Parameters
    ----------
    path : Path
        The file to write, whole or not at all.
    card : CardView
        What it says.

    Returns
    -------
    str
        Why it was not written; empty when it was.

    Notes
    -----
    The paper is A4: a card of Letter carries the same 186 mm by 252 mm, so it also prints on that.
    """
    application = QCoreApplication.instance()
    if not isinstance(application, QGuiApplication):
        # Kept until the file is written: letters cannot be measured without it.
        application = QGuiApplication(["evenwater", "-platform", "offscreen"])
    try:
        write_pdf(path, card, A4)
    except CardFailed as failure:
        reason = failure.reason
        return _FAULTS[reason.code].format_map(reason.params)
    return ""
