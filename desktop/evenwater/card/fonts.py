"""Brings the one typeface of the card and the window: Atkinson Hyperlegible, regular and bold."""

from __future__ import annotations

from collections.abc import Sequence
from importlib.util import find_spec
from pathlib import Path

from PySide6.QtGui import QFontDatabase

FAMILY = "Atkinson Hyperlegible"
_PACKAGE = "fontpkg_atkinson_hyperlegible"
REGULAR = "Regular"
_FACES = (REGULAR, "Bold")


def _folder() -> Path:
    """Return where the typeface's package keeps its files, without loading the package."""
    found = find_spec(_PACKAGE)
    if found is None or found.origin is None:
        raise ModuleNotFoundError(_PACKAGE)
    return Path(found.origin).parent / "files"


def load_fonts(faces: Sequence[str] = _FACES) -> str:
    """Make the regular and bold faces known to Qt, or some of them, each once, and return the family's name.

    The italics are left out on purpose: a card has none, and Qt could not pick one by mistake.

    Raises
    ------
    CardFailed
        ``card_fonts_missing`` when a face cannot be read. Painting without it would show boxes on
        a machine without fonts, so nothing is painted.
    """
    present = QFontDatabase.styles(FAMILY) if FAMILY in QFontDatabase.families() else []
    for face in faces:
        if face in present:
            continue
        try:
            data = (_folder() / f"AtkinsonHyperlegible-{face}.ttf").read_bytes()
        except (ModuleNotFoundError, OSError) as error:
            raise _missing(face) from error
        if QFontDatabase.addApplicationFontFromData(data) < 0:
            raise _missing(face)
    return FAMILY


def _missing(face: str) -> Exception:
    """Return the failure; what it is made of is not loaded before the window is painted."""
    from evenwater.card.failures import CardFailed
    from evenwater.engine.reasons import Reason

    return CardFailed(Reason("card_fonts_missing", {"face": face}))
