"""Loads packaging/translations.py, which is a script and no module of a package."""

from __future__ import annotations

import sys
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from types import ModuleType


def _loaded() -> ModuleType:
    file = Path(__file__).resolve().parents[2] / "packaging" / "translations.py"
    spec = spec_from_file_location("translations", file)
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    # Its dataclasses look themselves up there.
    sys.modules["translations"] = module
    spec.loader.exec_module(module)
    return module


translations = _loaded()
