"""The file of the keeper's choices about the window: kept, read back, and never a reason to stop."""

from __future__ import annotations

from pathlib import Path

import pytest

from evenwater.ui.preferences import COLOURS, DARK, LETTERS, Preferences, load, next_letters, preferences_file, save


def test_what_was_chosen_is_read_back(tmp_path: Path) -> None:
    file = tmp_path / "not there yet" / "window.ini"
    chosen = Preferences(DARK, 150, "de")
    assert save(file, chosen)
    assert load(file) == chosen
    assert [f.name for f in file.parent.iterdir()] == ["window.ini"], "nothing is left of the writing"


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"\x00\xff\xfe\x81" * 50,
        b"colours = pink\nletters = big\nlanguage = ../../etc\n",
        b"[window\ncolours dark\nletters",
        b"letters = \xd9\xa1\xd9\xa5\xd9\xa0\n",
        b"x" * 1_000_000,
    ],
)
def test_a_broken_file_is_as_if_nobody_had_chosen(tmp_path: Path, data: bytes) -> None:
    file = tmp_path / "window.ini"
    file.write_bytes(data)
    assert load(file) == Preferences()


def test_a_missing_file_and_a_folder_in_its_place_are_no_trouble(tmp_path: Path) -> None:
    assert load(tmp_path / "none.ini") == Preferences()
    assert load(tmp_path) == Preferences()
    assert not save(tmp_path, Preferences()), "a folder cannot be written over"


def test_what_can_be_read_of_a_broken_file_is_taken(tmp_path: Path) -> None:
    file = tmp_path / "window.ini"
    file.write_text("colours = dark\nletters = 9999\nlanguage = de\ncolours = none of these\n", encoding="utf-8")
    assert load(file) == Preferences(DARK, Preferences().letters, "de")
    file.write_text("letters = 999", encoding="utf-8")
    assert load(file).letters == 200, "no larger than the window can be read with"


def test_letters_step_through_the_sizes_that_are_offered() -> None:
    up = [100]
    while up[-1] != next_letters(up[-1], 1):
        up.append(next_letters(up[-1], 1))
    assert tuple(up) == LETTERS
    assert next_letters(133, 1) == 150
    assert next_letters(133, -1) == 125
    assert next_letters(100, -1) == 100


def test_the_file_lies_in_the_folder_for_settings(own_home: Path) -> None:
    assert own_home in preferences_file().parents
    assert "system" in COLOURS
