"""Loads packaging/trust_pages.py, which is a script and no module of a package."""

from __future__ import annotations

from functools import cache
from importlib.util import module_from_spec, spec_from_file_location
from types import ModuleType

from tests.register import ROOT


@cache
def trust_pages() -> ModuleType:
    """Return the script, not run."""
    spec = spec_from_file_location("trust_pages", ROOT / "packaging" / "trust_pages.py")
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    return module
