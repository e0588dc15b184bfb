"""The molar masses and factors that are kept are the ones the libraries give, every one of them, and all that is asked for is kept."""

from __future__ import annotations

import subprocess
import sys

import pytest

from evenwater.assets import resources
from evenwater.engine import catalogue
from evenwater.engine.formula import by_periodictable, molar_mass
from evenwater.engine.library_figures import LINEAR, MOLAR_MASSES
from evenwater.engine.units import KINDS, by_pint, linear
from tests.arch.tree import PRODUCT

AGAIN = "run packaging/library_figures.py"
# Asks the example of every kind, and names what was loaded of both libraries.
ASK_ALL = """
import contextlib, io, sys
from evenwater import headless
from evenwater.assets import resources
files = sorted(str(file) for file in (resources() / "questions").glob("*.toml"))
with contextlib.redirect_stdout(io.StringIO()):
    headless.run(["answer", *files])
print(len(files), *sorted({"pint", "periodictable"} & sys.modules.keys()))
"""


def test_every_molar_mass_is_what_periodictable_gives() -> None:
    assert {name: by_periodictable(name) for name in MOLAR_MASSES} == MOLAR_MASSES, AGAIN


def test_every_factor_is_what_pint_gives() -> None:
    assert {key: by_pint(*key) for key in LINEAR} == LINEAR, AGAIN


def test_every_unit_and_chemical_is_kept() -> None:
    known = catalogue.load(resources())
    units = {(kind, unit.id) for kind, of_kind in KINDS.items() for unit in of_kind.units[1:]}
    assert units == LINEAR.keys(), AGAIN
    formulas = {formula for c in known.chemicals.values() for formula in (c.formula, c.dry)}
    assert formulas <= MOLAR_MASSES.keys(), AGAIN


def test_what_is_not_kept_is_asked_of_the_library() -> None:
    assert "C6H12O6" not in MOLAR_MASSES
    assert molar_mass("C6H12O6") == pytest.approx(180.156, abs=0.003)  # CIAAW 2021
    with pytest.raises(KeyError):
        linear("volume", "pint")


def test_no_example_question_loads_either_library() -> None:
    done = subprocess.run(
        [sys.executable, "-c", f"import sys; sys.path.insert(0, {str(PRODUCT.parent)!r})\n{ASK_ALL}"],
        capture_output=True, text=True, timeout=120, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert done.stdout.split() == ["11"]
