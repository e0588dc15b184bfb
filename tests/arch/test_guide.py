"""The printed guide: every name it quotes stands in the window, its pictures can be taken, and its pages are numbered and linked."""

from __future__ import annotations

import re
from functools import cache
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from pypdf import PdfReader
from PySide6.QtGui import QColor, QImage

from evenwater.ui.sheet_list import SHEETS
from tests.arch.tree import ROOT, python_files

GUIDE = ROOT / "resources" / "guide" / "guide.md"
TEXT = GUIDE.read_text(encoding="utf-8")
CHAPTERS = (
    "Your first card", "Reading the answer", "The card", "Every day", "Water exchange", "Foods", "The timetable", "Pumps and calibration",
    "Jugs and stocks", "The log", "When a value is too high", "When things go wrong", "Files and backups", "Cautions",
)  # fmt: skip


@cache
def _guide() -> ModuleType:
    spec = spec_from_file_location("guide", ROOT / "packaging" / "guide.py")
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    # As a script would, or its classes do not find their own module.
    with pytest.MonkeyPatch.context() as patch:
        import sys

        patch.setitem(sys.modules, "guide", module)
        patch.setattr(sys, "path", list(sys.path))
        spec.loader.exec_module(module)
    return module


def test_names_stand_in_the_window_as_they_are_quoted():
    quoted = set(re.findall(r"\*\*([^*]+)\*\*", TEXT)) - {"bold"}
    assert len(quoted) > 30
    window = "".join(file.read_text(encoding="utf-8").replace("&", "") for file in python_files("ui", "screens"))
    assert not [name for name in quoted if f'"{name}"' not in window]


def test_every_sheet_is_told_of():
    told = set(re.findall(r"\*\*([^*]+)\*\*", TEXT)) | {"Correct"}
    assert set(SHEETS) <= told
    assert "Correct sheet" in TEXT


def test_chapters_and_pictures_are_there():
    guide = _guide()
    assert tuple(guide.chapters(TEXT))[1:] == CHAPTERS
    known = set(guide.STATES) - {"full"} | {"card", "correct"}
    assert len(guide.wanted(TEXT)) > 10
    assert set(guide.wanted(TEXT)) <= known


def test_cautions_stand_before_what_they_are_about_in_the_first_chapter():
    first = _guide().chapters(TEXT)["Your first card"]
    assert first.index("cautions") < first.index("Dissolved")


@pytest.fixture
def printed(qapp, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[Any, PdfReader]:
    """Three chapters, with a sheet of one colour for a picture: taking real ones costs seconds."""
    guide = _guide()
    picture = QImage(683, 384, QImage.Format.Format_RGB32)
    picture.fill(QColor("#0072b2"))
    monkeypatch.setattr(guide, "take", lambda _app, names: dict.fromkeys(names, picture))
    monkeypatch.setattr(
        guide, "whole", lambda: "".join(guide.chapters(TEXT)[name] for name in ("The card", "The log", "Cautions"))
    )
    out = tmp_path / "guide.pdf"
    return guide.make(qapp, out), PdfReader(out)


def test_pages_are_a4_numbered_and_linked(printed):
    entries, pdf = printed
    assert [entry.title for entry in entries] == ["The card", "The log", "Cautions"]
    assert {(round(page.mediabox.width), round(page.mediabox.height)) for page in pdf.pages} == {(595, 842)}
    said = [" ".join(page.extract_text().split()) for page in pdf.pages]
    for number, text in enumerate(said[1:], start=2):
        assert f"{number} of {len(pdf.pages)}" in text
    links = [annotation.get_object() for annotation in pdf.pages[0]["/Annots"]]
    for entry, link in zip(entries, links, strict=True):
        page = pdf.get_page_number(link["/Dest"][0].get_object()) if "/Dest" in link else link["/A"]["/D"][0]
        assert page == entry.page + 1
        assert entry.title in said[entry.page + 1]
    assert [item["/Title"] for item in pdf.outline] == [entry.title for entry in entries]
    assert sum(len(page.images) for page in pdf.pages) == 2
