"""What the keeper chose about the window: colours, letters, language. A small file beside the system's other settings.

Read before the first paint, so it is read by hand: a few lines of ``name = value``. What cannot be read, or makes no sense, is as if nobody
had chosen it; a broken file is no reason to say anything.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from pathlib import Path

from PySide6.QtCore import QIODevice, QSaveFile, QStandardPaths

AS_SYSTEM, LIGHT, DARK, HIGH_CONTRAST, HIGH_CONTRAST_DARK = "system", "light", "dark", "contrast", "contrast-dark"
COLOURS = (AS_SYSTEM, LIGHT, DARK, HIGH_CONTRAST, HIGH_CONTRAST_DARK)
# Sizes of all letters [% of the usual]; from 150 on they are read from two metres.
LETTERS = (100, 125, 150, 175, 200)
_LEAST, _MOST = 80, 200
_LONGEST_TAG = 16
_NAME = "window.ini"
_HEAD = "[window]"
# A file larger than this is not ours.
_MOST_BYTES = 10_000


@dataclass(frozen=True)
class Preferences:
    """What was chosen.

    ``colours`` is one of ``COLOURS``, ``letters`` their size [% of the usual], ``language`` a tag like ``de``; empty for the system's.
    """

    colours: str = AS_SYSTEM
    letters: int = 100
    language: str = ""


def preferences_file() -> Path:
    """Return where preferences are kept; it depends on the application's name, which must be set before."""
    folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppConfigLocation)
    return Path(folder) / _NAME


def load(file: Path) -> Preferences:
    """Return what a file says; whatever is missing or makes no sense is as nobody had chosen it."""
    try:
        with file.open("rb") as opened:
            text = opened.read(_MOST_BYTES).decode("utf-8", errors="replace")
    except (OSError, ValueError):
        return Preferences()
    found = Preferences()
    for line in text.splitlines():
        name, _, value = (part.strip() for part in line.partition("="))
        found = _taken(found, name, value)
    return found


def _taken(before: Preferences, name: str, value: str) -> Preferences:
    if name == "colours" and value in COLOURS:
        return replace(before, colours=value)
    if name == "letters" and value.isascii() and value.isdigit() and len(value) <= len(str(_MOST)):
        return replace(before, letters=within(int(value)))
    if name == "language" and len(value) <= _LONGEST_TAG and value.replace("-", "").replace("_", "").isalnum():
        return replace(before, language=value)
    return before


def within(letters: int) -> int:
    """Return a size of letters [%] inside what the window can be read with."""
    return min(max(letters, _LEAST), _MOST)


def next_letters(letters: int, away: int) -> int:
    """Return the next larger (``away`` 1) or smaller (-1) of the sizes that are offered [%]."""
    if away > 0:
        return next((size for size in LETTERS if size > letters), LETTERS[-1])
    return next((size for size in reversed(LETTERS) if size < letters), LETTERS[0])


def save(file: Path, preferences: Preferences) -> bool:
    """Write the file, whole or not at all; False where it cannot be written."""
    lines = [_HEAD, *(f"{field.name} = {getattr(preferences, field.name)}" for field in fields(preferences))]
    data = ("\n".join(lines) + "\n").encode()
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
    except OSError:
        return False
    target = QSaveFile(str(file))
    if not target.open(QIODevice.OpenModeFlag.WriteOnly):
        return False
    return target.write(data) == len(data) and target.commit()
