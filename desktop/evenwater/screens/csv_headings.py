"""Words of the trade that head the columns of a spreadsheet, in English, German, Spanish and French.

The words are from memory, common practice, no source.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache

from evenwater.engine.catalogue import Parameter
from evenwater.engine.units import KINDS

_ROLE_WORDS = {
    "date": (
        "date and time", "date time", "datetime", "date", "day", "timestamp", "measured", "measured on", "measured at", "tested",
        "datum und uhrzeit", "datum und zeit", "datum", "tag", "zeitpunkt", "gemessen", "gemessen am",
        "fecha y hora", "fecha", "dia", "date et heure", "jour", "mesure le",
    ),
    "time": ("time", "time of day", "clock", "uhrzeit", "zeit", "hora", "heure"),
    "parameter": ("parameter", "what", "messgrosse", "parametro", "parametre"),
    "value": ("value", "reading", "result", "wert", "messwert", "ergebnis", "valor", "resultado", "valeur", "resultat"),
    "unit": ("unit", "units", "einheit", "unidad", "unite"),
    "kit": ("kit", "test kit", "testkit", "test", "tested with", "prueba", "trousse"),
    "who": ("who", "by", "tested by", "measured by", "person", "initials", "wer", "von", "gemessen von", "quien", "qui", "par"),
    "note": (
        "note", "notes", "comment", "comments", "remark", "remarks", "bemerkung", "bemerkungen", "notiz", "kommentar",
        "nota", "notas", "comentario", "comentarios", "observaciones", "remarque", "remarques", "commentaire",
    ),
}  # fmt: skip
_ROLE_OF = {word: role for role, words in _ROLE_WORDS.items() for word in words}

_SG = ("SG 25/25 degC", "SG 20/20 degC", "SG 60/60 degF")
# Names of a parameter; where the name itself says the unit, or what it counts as, the units it leaves.
_NAMES: dict[str, dict[str, tuple[str, ...]]] = {
    "alkalinity": {
        "alk": (), "kh": (), "carbonate hardness": (), "total alkalinity": (), "karbonatharte": (), "alkalinitat": (),
        "gesamtalkalinitat": (), "alcalinidad": (), "dureza de carbonatos": (), "alcalinite": (), "durete carbonatee": (),
        "dkh": ("dKH",), "°kh": ("dKH",), "°dkh": ("dKH",),
    },
    "calcium": {"ca": (), "ca2+": (), "kalzium": (), "calcio": ()},
    "magnesium": {"mg": (), "mg2+": (), "magnesio": ()},
    "potassium": {"k": (), "k+": (), "kalium": (), "potasio": ()},
    "strontium": {"sr": (), "sr2+": (), "estroncio": ()},
    "iodide": {"i": (), "i-": (), "iodine": (), "iod": (), "jod": (), "jodid": (), "yodo": (), "yoduro": (), "iode": (), "iodure": ()},
    "nitrate": {
        "no3": (), "no3-": (), "nitrates": (), "nitrat": (), "nitrato": (), "nitratos": (),
        "no3-n": ("mg/L as N",), "n-no3": ("mg/L as N",), "nitrate-n": ("mg/L as N",), "nitrate nitrogen": ("mg/L as N",),
        "nitrat-n": ("mg/L as N",), "nitratstickstoff": ("mg/L as N",),
    },
    "phosphate": {
        "po4": (), "po43-": (), "po43": (), "phosphates": (), "phosphat": (), "fosfato": (), "fosfatos": (),
        "po4-p": ("mg/L as P",), "p-po4": ("mg/L as P",), "phosphate-p": ("mg/L as P",), "phosphat-p": ("mg/L as P",),
    },
    "salinity": {
        "sal": (), "salinitat": (), "salzgehalt": (), "salinidad": (), "salinite": (),
        "sg": _SG, "specific gravity": _SG, "ppt": ("ppt",), "psu": ("ppt",),
    },
}  # fmt: skip

# Units as they are written in headings, besides the closed lists.
_UNITS: dict[str, dict[str, tuple[str, ...]]] = {
    "alkalinity": {
        "°kh": ("dKH",), "°dh": ("dKH",), "meq": ("meq/L",), "mval/l": ("meq/L",), "mmol": ("mmol/L",), "mg/l": ("ppm as CaCO3",),
        "ppm": ("ppm as CaCO3",), "ppm caco3": ("ppm as CaCO3",), "mg/l caco3": ("ppm as CaCO3",),
    },
    "ion": {"ppm": ("mg/L", "mg/kg")},
    "nitrate": {
        "mg/l": ("mg/L as NO3", "mg/L as N"), "ppm": ("mg/L as NO3", "mg/L as N"), "mg/l no3": ("mg/L as NO3",),
        "ppm no3": ("mg/L as NO3",), "mg/l no3-n": ("mg/L as N",), "mg/l n": ("mg/L as N",), "ppm no3-n": ("mg/L as N",),
    },
    "phosphate": {
        "mg/l": ("mg/L as PO4", "mg/L as P"), "ppm": ("mg/L as PO4", "mg/L as P"), "mg/l po4": ("mg/L as PO4",),
        "ppm po4": ("mg/L as PO4",), "mg/l po4-p": ("mg/L as P",), "mg/l p": ("mg/L as P",), "ppm po4-p": ("mg/L as P",),
    },
    "salinity": {"psu": ("ppt",), "‰": ("ppt",), "sg": _SG, "s.g.": _SG, "specific gravity": _SG},
}  # fmt: skip
# Written without saying as what it counts, so that even the one unit it leaves is a guess.
_VAGUE = frozenset({"mg/l", "ppm", "meq", "mmol", "sg", "s.g.", "specific gravity"})
_FILLERS = frozenset({"level", "value", "reading", "test", "wert", "valor", "valeur"})

# The heading that only the product's own files have: their numbers have a point.
OWN_DATE = "Date and time (ISO 8601)"

_LONGEST = 200
_BRACKETS = re.compile(r"(.*?)[(\[{]([^()\[\]{}]*)[)\]}](.*)", re.DOTALL)


@dataclass(frozen=True)
class Heading:
    """What a heading says: a parameter, the ids of the units that it leaves, and whether it names the one of them.

    ``said`` is what stands in the place of a unit, known or not.
    """

    parameter: str
    units: tuple[str, ...]
    exact: bool
    said: str


@lru_cache(maxsize=2048)
def folded(text: str) -> str:
    """Return a text without capitals, accents, raised and lowered digits, and with single spaces; a long one is no heading."""
    if len(text) > _LONGEST:
        return ""
    flat = unicodedata.normalize("NFKD", text.replace("º", "°"))
    bare = "".join(c for c in flat if not unicodedata.combining(c)).replace("\u2212", "-").casefold()
    bare = re.sub(r"\s*/\s*(?:liter|litre|litro)\b", "/l", bare)
    bare = re.sub(r"\bper (?:liter|litre|l)\b", "/l", bare)
    return " ".join(re.sub(r"\s*/\s*", "/", bare.replace("_", " ")).split()).strip(" .:;,*")


def role_of(text: str) -> str:
    """Return what a column with this heading holds besides readings, or nothing."""
    bare = folded(text)
    match = _BRACKETS.fullmatch(bare)
    return _ROLE_OF.get(bare, "") or (_ROLE_OF.get(match[1].strip(), "") if match else "")


def heading_of(text: str, parameters: Mapping[str, Parameter], said: str = "") -> Heading | None:
    """Return what a heading says about readings; None when it names no parameter.

    ``said`` is the unit where that stands in a place of its own.
    """
    for name, unit in _parts(folded(text)):
        parameter = _parameter(name, parameters)
        if parameter is not None:
            return _heading(parameters[parameter], _names(parameter)[name], folded(said) or unit, said.strip() or unit)
    return None


def _heading(parameter: Parameter, hint: tuple[str, ...], unit: str, shown: str) -> Heading:
    every = tuple(known.id for known in KINDS[parameter.kind].units)
    if not unit:
        return Heading(parameter.name, hint or every, len(hint) == 1 and hint[0] in ("dKH", "ppt"), "")
    units = _unit_words(parameter.kind).get(unit)
    if units is None:
        return Heading(parameter.name, hint or every, False, shown)
    left = tuple(u for u in units if u in hint) if hint else units
    exact = len(left) == 1 and (unit not in _VAGUE or len(units) > 1 or parameter.kind == "ion")
    return Heading(parameter.name, left or (*hint, *units), exact, shown)


@lru_cache(maxsize=2048)
def _parts(bare: str) -> tuple[tuple[str, str], ...]:
    """Return every way to part a heading into a name and a unit, the likeliest first."""
    parted = [
        (bare[: -len(unit)].strip(" ,:-"), unit)
        for kind in _UNITS
        for unit in _unit_words(kind)
        if bare.endswith(f" {unit}")
    ]
    match = _BRACKETS.fullmatch(bare)
    if match:
        parted.append((f"{match[1].strip(' ,:-')} {match[3].strip()}".strip(), match[2].strip()))
    # The longer unit leaves the shorter name.
    parted.sort(key=lambda part: len(part[0]))
    return ((bare, ""), *((name.removesuffix(" in"), unit) for name, unit in parted))


def _parameter(name: str, parameters: Mapping[str, Parameter]) -> str | None:
    return next((known for known in parameters if name in _names(known)), None)


@cache
def _names(parameter: str) -> Mapping[str, tuple[str, ...]]:
    """Return the names of a parameter, bare and with a word after it that says nothing."""
    names: dict[str, tuple[str, ...]] = {parameter: (), **_NAMES.get(parameter, {})}
    return names | {f"{name}{gap}{word}": units for name, units in names.items() for word in _FILLERS for gap in " -"}


@cache
def _unit_words(kind: str) -> Mapping[str, tuple[str, ...]]:
    listed = {folded(word): (unit.id,) for unit in KINDS[kind].units for word in (unit.id, unit.shown, *unit.spellings)}
    return _UNITS[kind] | listed
