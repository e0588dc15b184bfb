"""What the tests of the document share."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from evenwater.session import Document
from evenwater.store import Store
from tests.session.listening import Listener
from tests.store.writing import Times


@pytest.fixture
def times() -> Times:
    return Times()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "evenwater.sqlite"


@pytest.fixture
def store(file: Path, times: Times) -> Iterator[Store]:
    with Store.open(file, times.clock(), busy_seconds=0.01) as opened:
        yield opened


@pytest.fixture
def document(qapp: object, store: Store) -> Document:
    return Document(store)


@pytest.fixture
def heard(document: Document) -> Listener:
    return Listener(document)
