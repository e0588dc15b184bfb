"""The scripts of packaging/ are imported by name, as they import one another."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from types import ModuleType

import pytest

from tests.arch.tree import ROOT

SCRIPTS = ("facts", "freeze", "frozen", "frozen.slim", "frozen.trial", "icons", "licences", "linux", "newcomer")


@pytest.fixture(autouse=True)
def scripts(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Find the scripts, and forget them again, since their names are not theirs alone."""
    before: dict[str, ModuleType | None] = {name: sys.modules.pop(name, None) for name in SCRIPTS}
    monkeypatch.syspath_prepend(str(ROOT / "packaging"))
    yield
    for name, module in before.items():
        sys.modules.pop(name, None)
        if module is not None:
            sys.modules[name] = module
