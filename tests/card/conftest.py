"""Cards and labels as PDF files, each written once for all the tests that read it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from evenwater.card.label_paper import LabelPaper
from evenwater.card.output import write_pdf
from evenwater.card.paper import Paper
from evenwater.screens.views import CardView
from tests.card import sample
from tests.card.labels import LABELS

CARDS: dict[str, Callable[[], CardView]] = {
    "card": sample.card,
    "draft": sample.draft,
    "crowded": sample.crowded,
    "one_dose": sample.one_dose,
    "warned": sample.warned,
}

Written = Callable[[str, Paper], Path]
Printed = Callable[[str, LabelPaper], Path]


@pytest.fixture(autouse=True)
def _application(qapp: Any) -> None:
    """Fonts and painters need the application."""


@pytest.fixture(scope="session")
def written(qapp: Any, tmp_path_factory: pytest.TempPathFactory) -> Written:
    """Return a function that gives the PDF of a sample card on a paper."""
    folder = tmp_path_factory.mktemp("cards")

    def get(name: str, paper: Paper) -> Path:
        file = folder / f"{name}-{paper.name}.pdf"
        if not file.exists():
            write_pdf(file, CARDS[name](), paper)
        return file

    return get


@pytest.fixture(scope="session")
def printed(qapp: Any, tmp_path_factory: pytest.TempPathFactory) -> Printed:
    """Return a function that gives the PDF of a jug's label on a paper."""
    folder = tmp_path_factory.mktemp("labels")

    def get(name: str, paper: LabelPaper) -> Path:
        file = folder / f"{name} {paper.name}.pdf"
        if not file.exists():
            write_pdf(file, LABELS[name](), paper)
        return file

    return get
