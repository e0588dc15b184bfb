"""Brings the one typeface of the card and the window: Atkinson Hyperlegible, regular and bold."""

from __future__ import annotations

from importlib.resources import files

from PySide6.QtGui import QFontDatabase

from evenwater.card.failures import CardFailed
from evenwater.engine.reasons import Reason

FAMILY = "Atkinson Hyperlegible"
_PACKAGE = "fontpkg_atkinson_hyperlegible"
_FACES = ("Regular", "Bold")


def load_fonts() -> str:
    """Make the regular and bold faces known to Qt, once, and return the family's name.

    The italics are left out on purpose: a card has none, and Qt could not pick one by mistake.

    Raises
    ------
    CardFailed
        ``card_fonts_missing`` when a face cannot be read. Painting without it would show boxes on
        a machine without fonts, so nothing is painted.
    """
    present = QFontDatabase.styles(FAMILY) if FAMILY in QFontDatabase.families() else []
    for face in _FACES:
        if face in present:
            continue
        try:
            data = (files(_PACKAGE) / "files" / f"AtkinsonHyperlegible-{face}.ttf").read_bytes()
        except (ModuleNotFoundError, OSError) as error:
            raise CardFailed(Reason("card_fonts_missing", {"face": face})) from error
        if QFontDatabase.addApplicationFontFromData(data) < 0:
            raise CardFailed(Reason("card_fonts_missing", {"face": face}))
    return FAMILY
