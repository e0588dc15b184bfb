"""The quick reading of a page is held to what both libraries read by themselves."""

from __future__ import annotations

import pypdf
import pytest
from pdfminer.pdfinterp import PDFPageInterpreter

from evenwater.card.paper import A6
from tests.card import reading
from tests.card.conftest import Written
from tests.card.pieces import pieces


def test_both_libraries_read_the_same_by_themselves(written: Written, monkeypatch: pytest.MonkeyPatch) -> None:
    file = written("warned", A6)
    quick, quick_texts = reading.as_set(file), reading.page_texts(file)
    monkeypatch.setattr(reading, "QuickInterpreter", PDFPageInterpreter)
    slow = reading.as_set.__wrapped__(file)
    assert [page.bbox for page in quick] == [page.bbox for page in slow]
    for page, other in zip(quick, slow, strict=True):
        assert [(type(item), item.bbox) for item in page] == [(type(item), item.bbox) for item in other]
        letters, others = ([reading._letter(c, p) for c in reading._chars(p)] for p in (page, other))
        assert letters == others
        assert letters
    assert quick_texts == [reading.squeezed(page.extract_text()) for page in pypdf.PdfReader(file).pages]


def test_a_page_of_qt_is_cut_without_the_libraries(written: Written) -> None:
    for page in pypdf.PdfReader(written("card", A6)).pages:
        assert pieces(page.get_contents().get_data())


@pytest.mark.parametrize(
    "drawn", [b"BI /W 1 ID x EI", b"(words) Tj", b"<0G> Tj", b"1 2 % remark\n m", b"true sh", b"[<01> 2] TJ", b"/A <</B 1>> DP", b"1.2.3 w"]
)  # fmt: skip
def test_what_is_not_known_is_left_to_the_libraries(drawn: bytes) -> None:
    assert pieces(b"q " + drawn + b" Q") is None


def test_pieces_are_what_is_given_and_the_operators_in_their_order() -> None:
    assert pieces(b"q\n1 0 0 -1 .5 +2. cm\n/F1 9 Tf <00A1>Tj []0  d [1 2.5] 0 d\nT* Q\n") == [
        (b"", b"q"), (b"1", b""), (b"0", b""), (b"0", b""), (b"-1", b""), (b".5", b""), (b"+2.", b""), (b"", b"cm"),
        (b"/F1", b""), (b"9", b""), (b"", b"Tf"), (b"<00A1>", b""), (b"", b"Tj"), (b"[]", b""), (b"0", b""), (b"", b"d"),
        (b"[1 2.5]", b""), (b"0", b""), (b"", b"d"), (b"", b"T*"), (b"", b"Q"),
    ]  # fmt: skip
