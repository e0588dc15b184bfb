"""What somebody else wrote, made fit to be quoted: short, and without signs that nobody sees or that turn the line round.

Which signs turn the direction of writing: Unicode Standard Annex 9, table 1 (explicit formatting characters).
"""

from __future__ import annotations

import re

LONGEST_QUOTE = 80
# Controls, halves of a pair, ends of lines and paragraphs, and what turns the rest of a line round. Joiners are not among
# them: names in several scripts need them.
_UNSEEN = re.compile("[\x00-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff\ud800-\udfff]")
_BLANK = "\t\n\r"


def _number(found: re.Match[str]) -> str:
    return " " if found[0] in _BLANK else f"[U+{ord(found[0]):04X}]"


def visible(text: str) -> str:
    """Return a text in one line, with the number of each sign in its place that nobody would see.

    Parameters
    ----------
    text : str
        Any text.

    Returns
    -------
    str
        One line.
    """
    return _UNSEEN.sub(_number, text)


def printable(text: str) -> str:
    """Return a text of several lines with the number of each sign in its place that nobody would see, or a terminal obey.

    Parameters
    ----------
    text : str
        Any text.

    Returns
    -------
    str
        The same lines.
    """
    return "\n".join(visible(line) for line in text.split("\n"))


def quoted(text: str) -> str:
    """Return a text fit to stand in a sentence: ``visible``, and cut where it is long.

    Parameters
    ----------
    text : str
        Any text.

    Returns
    -------
    str
        At most ``LONGEST_QUOTE`` signs of it.
    """
    return visible(text if len(text) <= LONGEST_QUOTE else f"{text[: LONGEST_QUOTE - 1]}…")


def has_unseen(text: str) -> bool:
    """Say whether a text has signs that nobody sees, but for tabs and ends of lines.

    Parameters
    ----------
    text : str
        Any text.

    Returns
    -------
    bool
        Whether there are any.
    """
    return any(found[0] not in _BLANK for found in _UNSEEN.finditer(text))
