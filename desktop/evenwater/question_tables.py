"""The tables and fields of each kind of question file, each field as it is written, which is also what a fault shows."""

from __future__ import annotations

TRUE = "true"
TIME = "2026-11-25T09:00:00+00:00"
CORRECTION: dict[str, dict[str, str]] = {
    "system": {
        "name": '"North frag bay"', "net_volume": '"340 L"', "volume_uncertainty": '"3 %"', "salinity": '"35"',
        "temperature": '"25 degC"', "ph": '"8.1"', "alkalinity": '"8 dKH"', "calcium": '"420 mg/L"',
        "evaporation": '"4 L per day"',
    },
    "change": {
        "parameter": '"alkalinity"', "measured": '"6.8 dKH"', "measured_at": TIME, "target": '"8.4 dKH"',
        "daily_use": '"0.9 dKH per day"', "fastest_rise": '"1.0 dKH per day"', "reason": '"the reason"',
        "untested": '"0.2 dKH"', "raised_lately": '"0.2 dKH"',
    },
    "additive": {
        "chemical": '"sodium carbonate anhydrous"', "dissolved": '"106 g"', "made_up_to": '"1 L"', "purity": '"100 %"',
        "temperature": '"20 degC"', "saturated": TRUE,
        "also": '{ chemical = "magnesium sulfate heptahydrate", dissolved = "100 g" }',
        "label": '{ dose = "5 mL", water = "100 L", raises = "1 dKH" }',
    },
    "pump": {
        "flow": '"24 mL/min"', "smallest_dose": '"0.5 mL"', "step": '"0.1 mL"', "largest_share": '"50 %"',
        "doses_per_day": "24",
    },
}  # fmt: skip
ALSO = {"chemical": '"magnesium sulfate heptahydrate"', "dissolved": '"100 g"', "purity": '"100 %"'}
LABEL = {"dose": '"5 mL"', "water": '"100 L"', "raises": '"1 dKH"'}
CONVERT = {
    "value": '"140 ppm as CaCO3"', "to": '"dKH"', "parameter": '"alkalinity"', "salinity": '"35"',
    "temperature": '"25 degC"',
}  # fmt: skip
STOCK_LABEL = {"parameter": '"alkalinity"', **LABEL}
STOCK_TEMPERATURE = '"20 degC"'
WANTED = {
    "parameter": '"alkalinity"', "strength": '"2000 meq/L"', "dose": '"1 mL"', "water": '"100 L"', "raises": '"0.1 dKH"',
    "partner": '{ chemical = "calcium chloride dihydrate", dissolved = "147 g", made_up_to = "1 L" }',
}  # fmt: skip
PARTNER = {
    "chemical": '"calcium chloride dihydrate"', "dissolved": '"147 g"', "made_up_to": '"1 L"', "purity": '"100 %"',
}  # fmt: skip
CHEMISTRY = {
    "system": {
        "net_volume": '"340 L"', "salinity": '"35"', "temperature": '"25 degC"', "alkalinity": '"6.8 dKH"', "ph": '"8.1"',
        "pco2": '"420 uatm"', "ph_scale": '"NBS"', "calcium": '"420 mg/L"',
    },
    "addition": {"chemical": '"sodium carbonate anhydrous"', "amount": '"3 g"'},
}  # fmt: skip
CHEMISTRY_NEEDED = {
    "system": ("net_volume", "salinity", "temperature", "alkalinity"),
    "addition": ("chemical", "amount"),
}
# What an upkeep has besides the tables of a correction.
UPKEEP = ("kind", "now", "system", "item", "exchange", "planned")
ITEM = {"parameter": '"alkalinity"', "measured": '"8.0 dKH"', "daily_use": '"0.9 dKH per day"'}
EXCHANGE = {
    "per_day": '"3.4 L per day"', "alkalinity": '"7 dKH"', "calcium": '"420 mg/L"', "magnesium": '"1300 mg/L"',
    "potassium": '"400 mg/L"', "strontium": '"8 mg/L"', "iodide": '"0.06 mg/L"', "nitrate": '"0 mg/L as NO3"',
    "phosphate": '"0 mg/L as PO4"', "salinity": '"35"',
}  # fmt: skip
PLANNED = {
    "parameter": '"magnesium"', "rise_per_day": '"20 mg/L per day"', "days_left": '"4"', "doses_per_day": "24",
}  # fmt: skip
RECORD = {"now": TIME, "parameter": '"alkalinity"', "kit_accuracy": '"0.3 dKH"'}
RECORD_ROWS = {
    "reading": {"at": TIME, "value": '"8.0 dKH"'},
    "dose": {"at": TIME, "raises": '"0.8 dKH"', "volume": '"80 mL"'},
    "exchange": {"at": TIME, "share": '"10 %"', "new_water": '"7.0 dKH"'},
}
# The three ways to say what strength is wanted, each with the fields that it needs.
WAYS = (("strength",), ("dose", "water", "raises"), ("partner",))
# A missing reading is no fault of the file: the water has not been tested, and the answer says so.
NEEDED = {
    "system": ("net_volume",),
    "change": ("parameter", "target"),
    "additive": ("chemical", "dissolved", "made_up_to"),
    "pump": ("flow",),
}
# A pump's runs, with all that may be known of how they were measured.
CALIBRATION: dict[str, dict[str, str]] = {
    "pump": {
        "name": '"Alkalinity pump"', "setting": '"24 mL/min"', "dose": '"4 mL"', "hours": '"420 h"', "hours_per_day": '"1.2 h"',
        "life": '"650 h"',
    },
    "cylinder": {"graduation": '"0.5 mL"', "tolerance": '"0.25 mL"', "material": '"glass"'},
    "scale": {"readability": '"0.01 g"', "tolerance": '"0.02 g"'},
    "conditions": {
        "water_temperature": '"22 degC"', "salinity": '"0"', "air_temperature": '"22 degC"', "air_pressure": '"1013 hPa"',
        "humidity": '"50 %"', "weights": '"8 g/mL"', "timing": '"0.3 s"',
    },
    "line": {"bore": '"4 mm"', "length": '"2 m"'},
}  # fmt: skip
CALIBRATION_NEEDED = {"line": ("bore", "length")}
CALIBRATION_ROWS = {
    "run": {"seconds": "60", "doses": "1", "volume": '"24 mL"', "mass": '"23.9 g"'},
    "earlier": {"at": TIME, "hours": '"120 h"', "flow": '"24.1 mL/min"', "accuracy": '"1 %"'},
}
# What a timetable has besides its pumps and pairs.
TIMETABLE = {"keep_apart": '"30 min"', "quiet": '"23:00 to 06:00"', "one_at_a_time": TRUE}
TIMETABLE_ROWS = {
    "pump": {
        "name": '"Alkalinity pump"', "raises": '"alkalinity"', "per_day": '"52.8 mL per day"', "flow": '"24 mL/min"',
        "step": '"0.1 mL"', "smallest_dose": '"0.5 mL"', "largest_dose": '"5 mL"', "largest_share": '"50 %"',
        "doses_per_day": "12", "fewest_doses": "10", "most_doses": "24", "closest": '"20 min"', "quiet": '"12:00 to 13:00"',
    },
    "apart": {"first": '"Alkalinity pump"', "second": '"Magnesium pump"', "at_least": '"10 min"'},
}  # fmt: skip
TIMETABLE_NEEDED = {"pump": ("name", "per_day", "flow"), "apart": ("first", "second")}
DELIVERED = {"every": '"30 s"', "amounts": '["12.0 mL", "11.8 mL"]'}
