"""Names that would turn a line round, or that nobody sees, stand with the numbers of their signs (Unicode Standard Annex 9)."""

from __future__ import annotations

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens.names import shown_name


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("North frag bay", "North frag bay"),
        ("  Rack ", "Rack"),
        ("", "Unnamed system"),
        ("   ", "Unnamed system"),
        ("a\u202eb", "a[U+202E]b"),
        ("\u2066x", "[U+2066]x"),
        ("two\nlines", "two lines"),
        ("<b>bold</b> %s ../../x", "<b>bold</b> %s ../../x"),
    ],
)
def test_a_name_is_one_line_that_reads_as_it_stands(typed: str, shown: str) -> None:
    assert shown_name({"name": Typed(typed)}, "Unnamed system") == shown


def test_no_name_is_the_name_of_what_has_none() -> None:
    assert shown_name({}, "Unnamed jug") == "Unnamed jug"
