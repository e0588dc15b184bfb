"""What the tests of the log share: where it is, and what time it is."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from evenwater.store import Store
from tests.store.copied import grow
from tests.store.writing import Times


@pytest.fixture
def times() -> Times:
    return Times()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "a folder with spaces & 100 %" / "evenwater.sqlite"


@pytest.fixture
def grown(file: Path, times: Times) -> Iterator[Store]:
    """An open log that has grown since its last copy."""
    with Store.open(file, times.clock(), busy_seconds=0.01) as opened:
        grow(opened, times)
        yield opened
