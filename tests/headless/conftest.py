"""What the headless tests share: the data files are read once, not anew for each of thousands of runs."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

import pytest

from evenwater.engine import catalogue


@pytest.fixture(scope="package", autouse=True)
def data_read_once() -> Iterator[None]:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(catalogue, "load", cache(catalogue.load))
        yield
