"""What a field takes: small things and large ones that exist, in the words people write units in, and nothing that makes no sense."""

from __future__ import annotations

import pytest

from evenwater.engine.reader import Field, Ok, read
from evenwater.engine.units import KINDS
from tests.engine.test_intakes import example, put, reasons

# kind of question: field: (what exists and must be taken, what cannot be and must be refused).
SENSE: dict[str, dict[str, tuple[tuple[str, ...], tuple[str, ...]]]] = {
    "correction": {
        "system.net_volume": (("500 mL", "2000000 L"), ("0 L", "5000001 L")),
        "system.volume_uncertainty": (("0 %", "0.5 %", "50 %"), ("50.5 %",)),
        "system.salinity": (("5", "40", "45"), ("4.9", "45.5")),
        "system.temperature": (("5 degC", "40 degC"), ("4.9 degC", "40.5 degC")),
        "system.ph": (("6.0", "6.5", "9.9"), ("5.9", "10.1")),
        "additive.dissolved": (("0.5 g", "900000 g"), ("0 g", "1000001 g")),
        "additive.made_up_to": (("0.25 L", "1000 L"), ("0 L", "1000.5 L")),
        "additive.purity": (("0.5 %", "100 %"), ("0 %", "100.5 %")),
        "pump.flow": (("0.2 mL/min", "90000 mL/min"), ("0 mL/min", "100001 mL/min")),
        "pump.smallest_dose": (("0 mL", "0.01 mL"), ("10001 mL",)),
        "pump.step": (("0.01 mL",), ("0 mL", "10001 mL")),
        "pump.largest_share": (("0.5 %", "100 %"), ("0 %", "100.5 %")),
        "pump.doses_per_day": (("1", "1440"), ("0", "1441")),
    },
    "exchange": {
        "system.evaporation": (("0.3 L per day",), ("0 L per day",)),
        "exchange.out": (("0 L per day", "0.5 L per day"), ("5000001 L per day",)),
        "exchange.days": (("0.5", "3650"), ("0", "3651")),
        "exchange.old_jug": (("0.5 L",), ("0 L",)),
        "exchange.new_jug": (("0.5 L",), ("0 L",)),
        "new_water.salinity": (("0", "45"), ("45.5",)),
        "value.2.loss_per_day": (("0 %", "0.5 %", "100 %"), ("100.5 %",)),
        "dose.1.after_days": (("0", "0.5", "3650"), ("3651",)),
        "mixing.volume": (("0.5 L",), ("0 L",)),
        "mixing.label_mass": (("0.5 g",), ("0 g",)),
        "mixing.label_water": (("0.5 L",), ("0 L",)),
        "mixing.label_salinity": (("5", "45"), ("4.9", "45.5")),
        "mixing.measured": (("0", "60"), ("60.5",)),
    },
    "recovery": {
        "overdose.volume": (("0.5 mL",), ("0 mL",)),
        "exchange.most_per_day": (("0.5 L per day",), ("0 L per day",)),
    },
    "jug": {
        "jug.holds": (("0.5 L", "1000 L"), ("0 L", "1000.5 L")),
        "jug.unreachable": (("0 mL", "0.5 mL"), ()),
        "jug.level_accuracy": (("0.5 mL",), ("0 mL",)),
        "pump.1.single_dose": (("0.01 mL",), ("0 mL", "10001 mL")),
        "pump.1.calibration": (("0.5 %", "50 %"), ("0 %", "50.5 %")),
        "refill.1.added": (("0.5 L", "1000 L"), ("0 L", "1000.5 L")),
        "level.1.level": (("0 L", "0.5 L", "1000 L"), ("1000.5 L",)),
        "line.bore": (("0.8 mm", "100 mm"), ("0 mm", "100.5 mm")),
        "line.length": (("0.3 m", "1000 m"), ("0 m", "1000.5 m")),
    },
    "calibration": {
        "wanted": (("0.01 %", "0.5 %", "50 %"), ("0.009 %", "50.5 %")),
        "pump.hours": (("0 h", "0.5 h"), ("200001 h",)),
        "pump.life": (("0.5 h",), ("0 h", "200001 h")),
        "pump.hours_per_day": (("0.1 h", "24 h"), ("0 h", "24.5 h")),
        "scale.readability": (("0.001 g", "1000 g"), ("0 g", "1000.5 g")),
        "scale.tolerance": (("0 g", "0.001 g"), ("1000.5 g",)),
        "cylinder.graduation": (("0.1 mL", "1000 mL"), ("0 mL", "1000.5 mL")),
        "cylinder.tolerance": (("0 mL", "0.05 mL"), ("1000.5 mL",)),
        "conditions.water_temperature": (("0.5 degC", "40 degC"), ("-1 degC", "40.5 degC")),
        "conditions.salinity": (("0", "0.5", "45"), ("45.5",)),
        "conditions.air_temperature": (("0.5 degC", "45 degC"), ("45.5 degC",)),
        "conditions.air_pressure": (("500 hPa", "1100 hPa"), ("499 hPa", "1100.5 hPa")),
        "conditions.humidity": (("0 %", "0.5 %", "100 %"), ("100.5 %",)),
        "conditions.weights": (("1 g/mL", "1.2 g/mL", "25 g/mL"), ("0.9 g/mL", "25.5 g/mL")),
        "conditions.timing": (("0.01 s", "600 s"), ("0 s", "600.5 s")),
        "run.1.seconds": (("0.5", "7200"), ("0", "7201")),
        "earlier.1.accuracy": (("0.5 %", "50 %"), ("0 %", "50.5 %")),
    },
    "timetable": {
        "keep_apart": (("0 min", "0.5 min", "720 min"), ("721 min",)),
        "pump.1.per_day": (("0.5 mL per day",), ("0 mL per day",)),
        "pump.1.largest_dose": (("0.01 mL",), ("0 mL", "10001 mL")),
        "pump.1.closest": (("0 min", "1440 min"), ("1441 min",)),
        "pump.1.most_doses": (("1", "288"), ("0", "289")),
    },
    "stock": {"temperature": (("0 degC", "30 degC"), ("-1 degC", "30.5 degC"))},
    "chemistry": {"addition.amount": (("0.001 g",), ("0 g",))},
    "consumption": {"exchange.1.share": (("0.5 %", "100 %"), ("0 %", "100.5 %"))},
}
CASES = [(kind, path) for kind, fields in SENSE.items() for path in fields]


@pytest.mark.parametrize(("kind", "path"), CASES)
def test_a_field_takes_what_exists_and_refuses_what_cannot_be(kind: str, path: str) -> None:
    takes, refuses = SENSE[kind][path]
    raw = example(kind)
    for text in takes:
        assert [each for each in reasons(kind, put(raw, path, text)) if each[1] == path] == [], text
    for text in refuses:
        assert ("out_of_range", path) in reasons(kind, put(raw, path, text)), text


# How people write units, beside the ids that the files use.
WORDS: dict[str, dict[str, str]] = {
    "volume": {
        "liter": "L", "litres": "L", "milliliters": "mL", "millilitre": "mL", "US gallon": "US gal", "US gallons": "US gal",
        "imperial gallon": "imperial gal", "imperial gallons": "imperial gal",
    },
    "volume per day": {"L/day": "L per day", "litres a day": "L per day", "mL/day": "mL per day", "US gallons per day": "US gal per day"},
    "mass": {"gram": "g", "grams": "g", "milligrams": "mg", "kilogram": "kg", "ounces": "oz", "pound": "lb", "pounds": "lb"},
    "temperature": {"°C": "degC", "°F": "degF"},
    "time": {"sec": "s", "seconds": "s", "minutes": "min", "hour": "h", "hours": "h"},
    "length": {"millimetres": "mm", "centimeter": "cm", "meters": "m", "inch": "in", "inches": "in", "feet": "ft", "foot": "ft"},
    "pressure": {"µatm": "uatm", "microatm": "uatm"},
    "air pressure": {"mbar": "hPa", "millibar": "hPa", "torr": "mmHg"},
    "share": {"percent": "%"},
    "density": {"g/cm3": "g/mL", "kg per L": "kg/L", "g/L": "kg/m3"},
    "mass per volume": {"mg per mL": "mg/mL", "g per L": "g/L", "g per 100 mL": "g/100 mL"},
    "alkalinity": {"meq per L": "meq/L", "°dKH": "dKH", "degrees KH": "dKH", "mmol per L": "mmol/L", "mg/L as CaCO3": "ppm as CaCO3"},
    "alkalinity per day": {"dKH/day": "dKH per day", "dKH a day": "dKH per day", "meq/L/day": "meq/L per day"},
    "ion": {"mg per L": "mg/L", "mg per kg": "mg/kg"},
    "nitrate": {"mg per L as NO3": "mg/L as NO3", "mg per L as N": "mg/L as N"},
    "phosphate": {"mg per L as PO4": "mg/L as PO4", "mg per L as P": "mg/L as P"},
    "salinity": {"g/kg": "ppt", "practical salinity": "ppt", "SG 25/25 °C": "SG 25/25 degC", "SG 60/60 °F": "SG 60/60 degF"},
    "flow": {"mL per min": "mL/min"},
}  # fmt: skip


@pytest.mark.parametrize(("kind", "word"), [(kind, word) for kind, words in WORDS.items() for word in words])
def test_a_unit_is_known_by_the_words_it_is_written_in(kind: str, word: str) -> None:
    low, high = (-100.0 if kind == "temperature" else 0.0), (45.0 if kind == "salinity" else 100_000.0)
    found = read(
        f"{1.02 if word.startswith('SG') else 1.5} {word}", Field("here", kind, KINDS[kind].canonical.id, low, high)
    )
    assert isinstance(found, Ok), found
    assert found.entered.unit == WORDS[kind][word]


def test_kinds_are_known_by_their_own_names_and_units_by_one() -> None:
    for name, kind in KINDS.items():
        assert kind.name == name
        ids = [unit.id for unit in kind.units]
        assert len(ids) == len(set(ids))
        assert kind.canonical is kind.units[0]
