"""Everything that is shipped has a licence that is named, and a text."""

from __future__ import annotations

from importlib import metadata
from pathlib import Path

import pytest

from evenwater.__main__ import main
from tests.arch.tree import ROOT


def test_list_is_what_the_script_writes() -> None:
    import licences

    assert licences.LIST.read_text(encoding="utf-8") == licences.listing()


def test_every_distribution_has_a_row_and_no_row_is_left_over() -> None:
    import licences

    assert set(licences.parts()["distribution"]) == set(licences.versions())


def test_a_distribution_without_a_row_is_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    import licences

    monkeypatch.setattr(licences, "versions", lambda: {"newcomer": "1.0"})
    with pytest.raises(KeyError):
        licences.listing()


def test_every_library_of_the_system_has_a_row() -> None:
    import licences
    from frozen import slim

    # Python's own is among the parts.
    assert set(licences.parts()["system"]) == set(slim.SYSTEM) - {"python3"}


def test_rows_agree_with_what_the_distributions_say() -> None:
    import licences

    for name, part in licences.parts()["distribution"].items():
        try:
            said = metadata.metadata(name).get("License-Expression")
        except metadata.PackageNotFoundError:
            continue  # for another platform
        if said:
            assert part["licence"] == said, name


def test_every_distribution_has_a_text() -> None:
    import licences

    for name, part in licences.parts()["distribution"].items():
        own = [licences.TEXTS / text for text in part.get("text", [])]
        try:
            brought = licences.texts_of(metadata.distribution(name))
        except metadata.PackageNotFoundError:
            continue
        texts = own + brought
        assert texts, name
        assert all(text.is_file() for text in texts), name


def test_a_part_without_a_text_stops_the_build(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import licences

    known = licences.parts()
    monkeypatch.setattr(licences, "versions", lambda: {"newcomer": "1.0"})
    monkeypatch.setattr(licences, "parts", lambda: known | {"distribution": {"newcomer": {}}})
    (tmp_path / "frozen" / "_internal").mkdir(parents=True)
    with pytest.raises(SystemExit, match="newcomer"):
        licences.collect(tmp_path, tmp_path / "frozen", tmp_path / "texts")


def test_program_prints_the_list(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--licences"]) == 0
    assert (ROOT / "resources" / "licences.md").read_text(encoding="utf-8") in capsys.readouterr().out
