"""The plan's identity: short enough to read out, with check characters against a misread one.

Check characters: ISO/IEC 7064, MOD 97-10, over Crockford's base 32 alphabet (no I, L, O, U), letters
counted 10 to 35 as the standard has them.
"""

from __future__ import annotations

import hashlib

from evenwater.engine.question import CorrectionQuestion

_ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_LENGTH = 6


def make(question: CorrectionQuestion) -> str:
    """Return the plan id of a question: the same question always has the same id."""
    digest = hashlib.sha256(repr(question).encode()).digest()
    body = "".join(_ALPHABET[byte % len(_ALPHABET)] for byte in digest[:_LENGTH])
    return f"{body}-{_check(body)}"


def valid(text: str) -> bool:
    """Return whether a typed or scanned id is one that Evenwater could have printed."""
    body, dash, check = text.strip().upper().partition("-")
    known = len(body) == _LENGTH and all(c in _ALPHABET for c in body)
    return bool(dash) and known and check == _check(body)


def _check(body: str) -> str:
    digits = "".join(str(int(c, 36)) for c in body)
    return f"{98 - int(digits) * 100 % 97:02d}"
