"""What the tests of the log share: where it is, and what time it is."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.store.writing import Times


@pytest.fixture
def times() -> Times:
    return Times()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "a folder with spaces & 100 %" / "evenwater.sqlite"
