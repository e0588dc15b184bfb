"""Cuts what a page of a PDF draws into its pieces in one sweep; what each piece is, the PDF libraries say.

Both libraries look for the pieces letter by letter in Python, which took most of the time of the tests of the cards. Here they read each
different piece once. Where a page holds anything but the figures, names, letters and operators that Qt writes, they read it all themselves.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from io import BytesIO
from itertools import chain
from typing import Any

from pdfminer.pdfinterp import PDFPageInterpreter
from pdfminer.pdftypes import stream_value
from pdfminer.psparser import PSBaseParser
from pypdf.generic import ContentStream, read_object

_CLOSED = rb"\[[0-9.\s]*\]|<(?:[0-9A-Fa-f]{2})*>"
_OPEN = rb"[-+]?(?:\d+\.?\d*|\.\d+)|/[A-Za-z0-9_.+-]+"
_OPERATOR = rb"(?!(?:BI|true|false|null)\b)[A-Za-z]+[01*]?"
_ENDS = rb"(?=[\s/<\[]|\Z)"
_PIECE = re.compile(
    rb"\s*(?:(" + _CLOSED + rb"|(?:" + _OPEN + rb")" + _ENDS + rb")|(" + _OPERATOR + rb")" + _ENDS + rb")"
)


def pieces(drawn: bytes) -> list[tuple[bytes, bytes]] | None:
    """Return the pieces of a page's contents, each either what is given to an operator or the operator; nothing where one is not known here."""
    return _PIECE.findall(drawn) if not _PIECE.sub(b"", drawn).strip() else None


def _read(given: bytes) -> Any:
    if given.startswith(b"["):
        return [_read(figure) for figure in given[1:-1].split()]
    return PSBaseParser(BytesIO(given + b"\n")).nexttoken()[1]


class QuickInterpreter(PDFPageInterpreter):
    """Carries out what a page draws as pdfminer does, without looking for the pieces letter by letter."""

    def execute(self, streams: Sequence[object]) -> None:
        """Carry out the contents of a page."""
        cut = [pieces(stream_value(stream).get_data()) for stream in streams]
        if None in cut:
            super().execute(streams)
            return
        read: dict[bytes, Any] = {}
        known: dict[bytes, tuple[Callable[..., None], int]] = {}
        for given, operator in chain.from_iterable(found or () for found in cut):
            if given:
                if given not in read:
                    read[given] = _read(given)
                self.push(read[given])
                continue
            if operator not in known:
                carry_out = getattr(self, "do_" + operator.decode().replace("*", "_a"))
                known[operator] = carry_out, carry_out.__code__.co_argcount - 1
            carry_out, wanted = known[operator]
            arguments = self.pop(wanted)
            assert len(arguments) == wanted, operator
            carry_out(*arguments)


def parse_quickly(self: ContentStream, stream: BytesIO) -> None:
    """Stand in for ``ContentStream._parse_content_stream``: pypdf's operations, with what each was given."""
    cut = pieces(stream.getvalue())
    if cut is None:
        _PARSE(self, stream)
        return
    read: dict[bytes, Any] = {}
    arguments: list[Any] = []
    for given, operator in cut:
        if operator:
            self._operations.append((arguments, operator))
            arguments = []
            continue
        if given not in read:
            read[given] = read_object(BytesIO(given + b"\n"), None, self.forced_encoding)
        arguments.append(read[given])


_PARSE = ContentStream._parse_content_stream
