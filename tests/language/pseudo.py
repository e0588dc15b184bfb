"""A language that nobody speaks: English with accents, about 40 % longer and in brackets, so that whatever was not said is seen."""

from __future__ import annotations

import re

from evenwater.wording import Style

PLAIN = "aceginorsuyACEGINORSUY"
ACCENTED = "áçéĝíñóŕšúýÁÇÉĜÍÑÓŔŠÚÝ"
TABLE = str.maketrans(PLAIN, ACCENTED)
# Parts and keys of the keyboard stay as they are.
KEPT = re.compile(r"(\{[^}]*\}|&)")
LONGER = 0.4
STYLE = Style(decimal=",")


def pseudo(text: str, _about: str = "", _count: int = -1) -> str:
    """Return a text in it; what has no letters, and units without a word, stay."""
    bare = KEPT.sub("", text)
    if not re.search("[A-Za-z]{3}", bare):
        return text
    said = "".join(piece if KEPT.fullmatch(piece) else piece.translate(TABLE) for piece in KEPT.split(text))
    head, tail = len(said) - len(said.lstrip()), len(said.rstrip())
    more = "~" * round(LONGER * len(bare.strip()))
    return f"{said[:head]}[{said[head:tail]}{_spread(more)}]{said[tail:]}"


def _spread(more: str) -> str:
    """Return the additional length in words, so that lines can be broken in it as in any text."""
    return "".join(f" {more[at : at + 7]}" for at in range(0, len(more), 7))


def unsaid(text: str) -> list[str]:
    """Return the words of a text that were not said in it: English, or the keeper's own."""
    return re.findall(r"(?<![\w{])[A-Z]?[a-z]*[aceginorsuy][a-z]{2,}(?![\w}])", text)
