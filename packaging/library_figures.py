"""Writes the molar masses and unit factors that periodictable and pint give: desktop/evenwater/engine/library_figures.py.

    .venv/bin/python packaging/library_figures.py

Both libraries together take longer to load than numpy, so what is asked of them at every start is asked once, here. A test holds
the file against what the libraries say (tests/engine/test_library_figures.py); run this after a chemical, a unit or a library has changed.
"""

from __future__ import annotations

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
FIGURES = ROOT / "desktop" / "evenwater" / "engine" / "library_figures.py"

sys.path[:0] = [place for place in (str(ROOT / "desktop"),) if place not in sys.path]

from evenwater.engine import catalogue  # noqa: E402  (found only from here on)
from evenwater.engine.formula import by_periodictable  # noqa: E402
from evenwater.engine.units import KINDS, by_pint  # noqa: E402

# What the engine weighs besides the chemicals of the catalogue: ions and what units count "as".
IONS = (
    "B", "Ca", "CaCO3", "CaO", "Cl", "H2PO4", "H3BO3", "HCO3", "I", "K", "Mg", "N", "NO3", "Na", "O2", "P", "PO4", "SO4", "Sr",
)  # fmt: skip

HEAD = '''"""Molar masses and unit factors as periodictable and pint give them; written by packaging/library_figures.py, never by hand.

Loading the two costs more than numpy, and every question would need them. tests/engine/test_library_figures.py holds each
figure against the libraries; what is not here is asked of them.
"""

from __future__ import annotations

# fmt: off
'''


def masses() -> dict[str, float]:
    """Return the molar mass of everything that is weighed [g/mol]."""
    chemicals = catalogue.load(ROOT / "resources").chemicals.values()
    formulas = {*IONS, *(c.formula for c in chemicals), *(c.dry for c in chemicals)}
    return {formula: by_periodictable(formula) for formula in sorted(formulas)}


def factors() -> dict[tuple[str, str], tuple[float, float]]:
    """Return factor and offset to the canonical unit, of every unit but the canonical ones."""
    return {
        (kind, unit.id): by_pint(kind, unit.id)
        for kind, of_kind in KINDS.items()
        for unit in of_kind.units
        if unit is not of_kind.canonical
    }


def text() -> str:
    """Return the whole file."""
    lines = ["# Formula: molar mass [g/mol].", "MOLAR_MASSES: dict[str, float] = {"]
    lines += [f'    "{formula}": {mass!r},' for formula, mass in masses().items()]
    lines += ["}", "", "# Kind and unit: canonical value = factor * value + offset."]
    lines += ["LINEAR: dict[tuple[str, str], tuple[float, float]] = {"]
    lines += [f'    ("{kind}", "{unit}"): {pair!r},' for (kind, unit), pair in factors().items()]
    return HEAD + "\n".join([*lines, "}"]) + "\n"


if __name__ == "__main__":
    FIGURES.write_text(text(), encoding="utf-8")
