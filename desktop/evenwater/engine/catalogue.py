"""Parameters and chemicals: data files turned into frozen values that travel inside each question.

Ranges, paces and kit accuracies are common practice defaults (no source); natural values and
solubilities carry their source in the data files.
"""

from __future__ import annotations

import tomllib
from bisect import bisect_right
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from evenwater.engine.formula import molar_mass
from evenwater.engine.units import linear

# The ion that each parameter counts, and the formula its mass is counted "as".
ION_OF = {
    "calcium": ("Ca", "Ca"),
    "magnesium": ("Mg", "Mg"),
    "potassium": ("K", "K"),
    "strontium": ("Sr", "Sr"),
    "iodide": ("I", "I"),
    "nitrate": ("NO3", "NO3"),
    "phosphate": ("PO4", "PO4"),
}


@dataclass(frozen=True)
class Parameter:
    """One measured value; figures [display unit], rises [display unit per day] and those of one dose [display unit].

    ``natural`` is what natural seawater holds, ``kit_accuracy`` half the width of a usual test's 95 % interval, ``stale_days`` the age
    [day] at which a reading is no basis for a correction.
    """

    name: str
    kind: str
    display_unit: str
    natural: float
    range_kept: tuple[float, float]
    target_hard: tuple[float, float]
    plausible: tuple[float, float]
    rise_recommended: float
    rise_hard: float
    dose_rise_recommended: float
    dose_rise_hard: float
    kit_accuracy: float
    stale_days: float

    def canonical(self, value: float) -> float:
        """Return a figure of the display unit in the canonical unit of the parameter's kind.

        Parameters
        ----------
        value : float
            A concentration or a rise [display unit].

        Returns
        -------
        float
            The same in the canonical unit [meq/L, mg/L or g/kg].
        """
        return linear(self.kind, self.display_unit)[0] * value


@dataclass(frozen=True)
class Chemical:
    """One chemical with its exact hydrate.

    ``carries`` counts per mole: alkalinity in equivalents, everything else in moles.
    ``solubility`` rows are (temperature [degC], mass of ``dry`` in 100 g of solution [g]).
    ``density`` is one tabulated point (mass of ``dry`` in 100 g of solution [g], density [kg/L]).
    """

    name: str
    formula: str
    dry: str
    tall_man: str
    also_called: tuple[str, ...]
    carries: tuple[tuple[str, float], ...]
    raises: tuple[str, ...]
    solubility: tuple[tuple[float, float], ...]
    density: tuple[float, float] | None
    signal_word: str
    statements: tuple[str, ...]
    statements_source: str
    cautions: tuple[str, ...]
    restricted: bool

    def per_mole(self, what: str) -> float:
        """Return how much of something one mole carries.

        Parameters
        ----------
        what : str
            ``"alkalinity"``, ``"DIC"`` or an ion.

        Returns
        -------
        float
            Equivalents or moles per mole [eq/mol or mol/mol]; zero when it carries none.
        """
        return dict(self.carries).get(what, 0.0)

    def per_gram(self, parameter: str) -> float:
        """Return what one gram of the pure chemical carries of a parameter.

        Parameters
        ----------
        parameter : str
            Name of the parameter.

        Returns
        -------
        float
            Alkalinity [meq/g]; an ion [mg/g]; salinity, of a chemical listed as raising it
            [g of dry salt per g]; zero when it carries none.
        """
        return _per_gram(self, parameter)

    def solubility_at(self, temperature_c: float) -> float | None:
        """Return the solubility, interpolated between the handbook's rows and held at their ends.

        Parameters
        ----------
        temperature_c : float
            Temperature of the stock [degC].

        Returns
        -------
        float or None
            Mass of the dry salt in 100 g of saturated solution [g]; None when no row is known.
        """
        rows = self.solubility
        if not rows:
            return None
        after = bisect_right([t for t, _ in rows], temperature_c)
        if after == 0:
            return rows[0][1]
        if after == len(rows):
            return rows[-1][1]
        (t0, s0), (t1, s1) = rows[after - 1], rows[after]
        return s0 + (s1 - s0) * (temperature_c - t0) / (t1 - t0)

    def most_per_litre(self, temperature_c: float) -> float | None:
        """Return how much of the chemical, as weighed, a litre of solution can hold.

        Parameters
        ----------
        temperature_c : float
            Temperature of the stock [degC].

        Returns
        -------
        float or None
            Mass of the chemical with its hydrate water in one litre of solution [g/L]; None when
            no solubility is known.

        Notes
        -----
        The density of the saturated solution comes from one tabulated point, with 1/density taken
        as linear in the mass fraction; good to about 1 % for these salts, which the warning
        within 10 % of the limit covers.
        """
        share = self.solubility_at(temperature_c)
        if share is None:
            return None
        density = 1.0
        if self.density is not None:
            at, known = self.density
            density = 1.0 / (1.0 - share * (1.0 - 1.0 / known) / at)
        dry_g_per_l = share / 100.0 * density * 1000.0
        return dry_g_per_l * molar_mass(self.formula) / self._dry_mass()

    def _dry_mass(self) -> float:
        """Return the mass of dry salt in a mole of the chemical [g/mol]."""
        return molar_mass(self.dry)


@lru_cache(maxsize=512)
def _per_gram(chemical: Chemical, parameter: str) -> float:
    mass = molar_mass(chemical.formula)
    if parameter == "alkalinity":
        return 1000.0 * chemical.per_mole("alkalinity") / mass
    if parameter == "salinity":
        return molar_mass(chemical.dry) / mass if "salinity" in chemical.raises else 0.0
    ion, counted_as = ION_OF[parameter]
    return 1000.0 * chemical.per_mole(ion) * molar_mass(counted_as) / mass


@dataclass(frozen=True)
class Catalogue:
    """All parameters and chemicals, in the order of the data files."""

    parameters: Mapping[str, Parameter]
    chemicals: Mapping[str, Chemical]

    def raising(self, parameter: str) -> tuple[Chemical, ...]:
        """Return the chemicals that may be used to raise a parameter.

        Parameters
        ----------
        parameter : str
            Its name.

        Returns
        -------
        tuple of Chemical
            In the order of the file.
        """
        return tuple(c for c in self.chemicals.values() if parameter in c.raises)


def load(folder: Path) -> Catalogue:
    """Read ``parameters.toml`` and ``chemicals.toml``; of the chemicals only the names, each table when it is asked for.

    Parameters
    ----------
    folder : Path
        The resources folder.

    Returns
    -------
    Catalogue
        The data as frozen values.

    Raises
    ------
    OSError
        When a file cannot be read.
    KeyError
        When the entry of a parameter lacks a field; that of a chemical raises it when it is asked for.
    """
    parameters = tomllib.loads((folder / "parameters.toml").read_text(encoding="utf-8"))
    return Catalogue(
        {name: _parameter(name, entry) for name, entry in parameters.items()},
        _Chemicals((folder / "chemicals.toml").read_text(encoding="utf-8")),
    )


class _Chemicals(Mapping[str, Chemical]):
    """The chemicals of a file by their names, each read when it is asked for: a question has one, and all take as long as its answer."""

    def __init__(self, text: str) -> None:
        # A line that begins with a bracket begins a table: what goes on over several lines is indented.
        tables = text.split("\n[")[1:]
        self._texts = {table[1 : table.index('"]')]: f"[{table}" for table in tables}
        self._read: dict[str, Chemical] = {}

    def __getitem__(self, name: str) -> Chemical:
        if name not in self._read:
            self._read[name] = _chemical(name, tomllib.loads(self._texts[name])[name])
        return self._read[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._texts)

    def __len__(self) -> int:
        return len(self._texts)

    def __contains__(self, name: object) -> bool:
        return name in self._texts


def _pair(values: Any) -> tuple[float, float]:
    low, high = values
    return float(low), float(high)


def _parameter(name: str, entry: Mapping[str, Any]) -> Parameter:
    return Parameter(
        name=name,
        kind=entry["kind"],
        display_unit=entry["display_unit"],
        natural=float(entry["natural"]),
        range_kept=_pair(entry["range_kept"]),
        target_hard=_pair(entry["target_hard"]),
        plausible=_pair(entry["plausible"]),
        rise_recommended=float(entry["rise_per_day"]["recommended"]),
        rise_hard=float(entry["rise_per_day"]["hard"]),
        dose_rise_recommended=float(entry["rise_per_dose"]["recommended"]),
        dose_rise_hard=float(entry["rise_per_dose"]["hard"]),
        kit_accuracy=float(entry["kit_accuracy"]),
        stale_days=float(entry["stale_days"]),
    )


def _chemical(name: str, entry: Mapping[str, Any]) -> Chemical:
    return Chemical(
        name=name,
        formula=entry["formula"],
        dry=entry["dry"],
        tall_man=entry["tall_man"],
        also_called=tuple(entry["also_called"]),
        carries=tuple((what, float(count)) for what, count in entry["carries"].items()),
        raises=tuple(entry["raises"]),
        solubility=tuple(_pair(row) for row in entry["solubility"]),
        density=_pair(entry["density"]) if "density" in entry else None,
        signal_word=entry["signal_word"],
        statements=tuple(entry["statements"]),
        statements_source=entry["statements_source"],
        cautions=tuple(entry["cautions"]),
        restricted=bool(entry["restricted"]),
    )
