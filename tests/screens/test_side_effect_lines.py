"""What else a plan does, in words: safe to read, each figure that of the engine, every assumption said."""

from __future__ import annotations

import json
import math
import re
from collections.abc import Iterator
from typing import Any

import pytest

from evenwater.engine.side_effects import Carried, SideEffects, side_effects
from evenwater.screens import answer_json
from evenwater.screens.answer import shown_of, view
from evenwater.screens.side_effect_lines import TITLE, as_json, lines
from evenwater.screens.views import WorkLine
from tests.screens.asked import LABEL, NOW, answer, grid, over_everything
from tests.screens.lint import NBSP, faults, numbers, strings
from tests.screens.reckoned import MEQ_PER_DKH

DEMO = {"system.ph": "8.1"}
CALCIUM = {
    "change.parameter": "calcium", "change.measured": "395 mg/L", "change.target": "425 mg/L",
    "change.daily_use": "6.4 mg/L per day", "additive.chemical": "calcium chloride dihydrate", "additive.dissolved": "147 g",
}  # fmt: skip
NITRATE = {
    "change.parameter": "nitrate", "change.measured": "1 mg/L as NO3", "change.target": "5 mg/L as NO3",
    "change.daily_use": "0.3 mg/L as NO3 per day", "additive.chemical": "potassium nitrate", "additive.dissolved": "10 g",
}  # fmt: skip


def said(changes: dict[str, Any]) -> dict[str, WorkLine]:
    """Return the lines by name, with ordinary spaces."""
    plan = answer(changes)
    return {
        line.what: WorkLine(line.what, line.how.replace(NBSP, " "), line.gives.replace(NBSP, " "))
        for line in lines(side_effects(plan), shown_of(plan.question))
    }


def test_the_worked_example_in_words() -> None:
    found = said(DEMO)
    assert {name: line.gives for name, line in found.items()} == {
        "Dissolved inorganic carbon with the correction": "0.539 mmol per L",
        "Sodium with the correction": "24.8 mg per L",
        "Salinity by the last dose": "0.057 g per kg more",
        "Water with the correction": "183 mL",
        "Calcium used with it": "6.43 mg per L per day",
        "Salt left behind in a month": "194 g of sodium chloride",
        "Salinity in a month": "0.56 g per kg more",
        "Salinity in a year": "6.7 g per kg more",
        "Water in a month": "1.66 L (litres)",
        "pH": "8.18 at the target",
        "Aragonite saturation": "4.32 at the target",
        "Dissolved inorganic carbon": "2.63 mmol per L at the target",
        "Taken for these": "",
    }
    assert found["pH"].how == "8.1 now, 8.12 right after a dose, 8.18 at the target, 8.19 right after a dose there"
    assert "58.44 g" in found["Salt left behind in a month"].how
    assert "calcium is taken to be made good with calcium chloride" in found["Salt left behind in a month"].how
    assert "if nothing is exchanged" in found["Salinity in a month"].how
    assert found["Calcium used with it"].how.startswith("0.9 dKH per day × 7.147 mg per L for each dKH")


def test_of_calcium_the_other_way_round() -> None:
    found = said(CALCIUM)
    assert found["Chloride with the correction"].gives == "69.8 mg per L"
    assert found["Alkalinity used with it"].gives == "0.895 dKH per day"
    assert "alkalinity is taken to be made good with a sodium salt" in found["Salt left behind in a month"].how
    assert found["Salt left behind in a month"].gives == "193 g of sodium chloride"
    assert "alkalinity was not given: as in natural seawater" in found["Taken for these"].how


def test_of_a_nutrient_what_comes_along_is_named_by_month_and_year() -> None:
    found = said(NITRATE)
    assert found["Potassium in a month"].gives == "5.76 mg per L"
    assert "69.1 mg per L in a year" in found["Potassium in a month"].how
    assert found["Alkalinity in a month"].gives == "0.413 dKH"
    assert "taken up" in found["Alkalinity in a month"].how
    assert found["Salt left behind in a month"].gives == "5.01 g"
    assert "pH" not in found


def test_limewater_leaves_none() -> None:
    found = said({"additive.chemical": "calcium hydroxide", "additive.dissolved": "15 g", "additive.made_up_to": "10 L",
                  "pump.flow": "50 mL/min", "pump.smallest_dose": None})  # fmt: skip
    assert found["Salt left behind in a month"].gives == "none"
    assert "Salinity in a month" not in found
    assert found["Water in a month"].gives.endswith("L (litres)")


def test_of_a_bottle_it_is_said_what_is_not_known() -> None:
    found = said({"additive": {"label": LABEL}, **DEMO})
    assert found["What comes along"].gives == "not known"
    assert found["Calcium used with it"].gives == "6.43 mg per L per day"
    assert found["pH"].how == "8.1 now, 8.18 at the target"
    assert "at once is not known" in found["Taken for these"].how
    assert not any(name.startswith(("Salt", "Sodium")) for name in found)


def test_a_ph_that_was_not_measured_is_said() -> None:
    assert "pH was not measured: 8.1 now and at the target" in said({})["Taken for these"].how
    assert "carbon dioxide" in said(DEMO)["Taken for these"].how


def test_without_use_the_ratio_alone_is_said() -> None:
    found = said({"change.daily_use": None})
    assert found["Calcium to alkalinity"].gives == "7.147 mg per L for each dKH"
    assert not any("month" in name or "year" in name for name in found)


def test_a_trace_is_not_written_with_a_row_of_zeros() -> None:
    found = said({
        "change.parameter": "iodide", "change.measured": "0.02 mg/L", "change.target": "0.06 mg/L",
        "change.daily_use": "0.002 mg/L per day", "additive.chemical": "potassium iodide", "additive.dissolved": "1 g",
        "pump.smallest_dose": None,
    })  # fmt: skip
    assert found["Salinity by the last dose"].gives == "less than 0.001 g per kg more"
    # 0.002 mg per L a day for 30.4375 days, of 126.904 g per mol, leave potassium of 39.098 g per mol in 340 L.
    assert found["Salt left behind in a month"].gives == "6.38 mg"


def test_several_doses_in_an_hour_are_named_together() -> None:
    assert "right after the 4 doses of an hour" in said({**DEMO, "pump.doses_per_day": 96})["pH"].how


@over_everything
def test_every_line_is_safe_and_has_a_name_of_its_own(name: str) -> None:
    plan = grid()[name]
    found = lines(side_effects(plan), shown_of(plan.question))
    assert not [fault for text in strings(found) for fault in faults(text)]
    names = [line.what for line in found]
    assert all(names)
    assert len(set(names)) == len(names)
    assert all(line.how for line in found)
    assert view(plan, NOW).side_effects == found


def of_the_engine(effects: SideEffects) -> dict[str, float]:
    """Return the figures of the lines that name an amount, alkalinity that comes along in dKH."""

    def amount(item: Carried) -> float:
        return item.amount / MEQ_PER_DKH if item.name == "alkalinity" else item.amount

    found = {f"{item.name} with the correction": amount(item) for item in effects.correction.carried}
    if effects.month is not None and not effects.month.only_nacl:
        found |= {f"{item.name} in a month": amount(item) for item in effects.month.stays}
    if effects.month is not None and effects.month.stays:
        assert effects.month.salinity is not None
        found["salinity in a month"] = effects.month.salinity
    return found


@over_everything
def test_figures_are_those_of_the_engine(name: str) -> None:
    plan = grid()[name]
    effects = side_effects(plan)
    gives = {line.what.lower(): line.gives for line in lines(effects, shown_of(plan.question))}
    expected = of_the_engine(effects)
    assert bool(expected) == effects.known
    for what, amount in expected.items():
        (shown,) = numbers(re.sub(r"NO3|PO4", "", gives[what]))
        if gives[what].startswith("less than"):
            assert amount < shown
        else:
            # Three digits of amounts, two of salinity.
            assert shown == pytest.approx(amount, rel=0.051 if what.startswith("salinity") else 0.0051)


def quantities(node: Any) -> Iterator[dict[str, Any]]:
    """Yield every quantity inside a JSON value."""
    if isinstance(node, dict):
        if "value" in node:
            yield node
        for inner in node.values():
            yield from quantities(inner)


@over_everything
def test_json_is_numbers_with_units(name: str) -> None:
    effects = side_effects(grid()[name])
    body = as_json(effects)
    assert json.loads(json.dumps(body, allow_nan=False)) == body
    found = list(quantities(body))
    assert len(found) >= 1
    for quantity in found:
        assert quantity.keys() == {"value", "unit"}
        assert isinstance(quantity["value"], float)
        assert math.isfinite(quantity["value"])
    assert body["correction"]["carried"].keys() == {
        {"dissolved inorganic carbon": "dic"}.get(item.name, item.name) for item in effects.correction.carried
    }


def test_json_of_the_worked_example() -> None:
    plan = answer(DEMO)
    body = answer_json.answered(plan)["side_effects"]
    assert body == as_json(side_effects(plan))
    assert body["additive_known"] is True
    assert body["taken_as_made_good"] == "calcium"
    assert body["upkeep_month"]["lasts"] == {"value": 30.4375, "unit": "d"}
    assert body["upkeep_year"]["lasts"] == {"value": 365.25, "unit": "d"}
    assert body["upkeep_month"]["salt_left"] == {"value": pytest.approx(194.126, abs=0.01), "unit": "g"}
    assert body["upkeep_month"]["stays"].keys() == {"sodium", "chloride"}
    assert body["used_together"]["calcium"] == {"value": pytest.approx(6.4323, abs=0.001), "unit": "mg/L per day"}
    assert body["along_the_way"]["at_target"]["ph"] == {"value": pytest.approx(8.1787, abs=1e-3), "unit": "NBS scale"}
    assert body["along_the_way"]["calcium_known"] is False


def test_json_of_a_bottle_has_nothing_where_nothing_is_known() -> None:
    body = as_json(side_effects(answer({"additive": {"label": LABEL}})))
    assert body["additive_known"] is False
    assert body["correction"]["salinity_rise"] is None
    assert body["upkeep_month"]["salt_left"] is None
    assert body["taken_as_made_good"] is None
    assert body["along_the_way"]["after_dose"] is None
    assert as_json(side_effects(answer({**NITRATE, "change.daily_use": None})))["upkeep_month"] is None


def test_the_text_has_the_section_after_the_working() -> None:
    plan = answer(DEMO)
    told = answer_json.text(answer_json.answered(plan), plan, NOW).splitlines()
    at = told.index(TITLE)
    section = view(plan, NOW).side_effects
    assert told[at - 1] == ""
    assert told[at + 1 :] == [
        f"{line.what}: {line.how}{' = ' + line.gives if line.gives else ''}".replace(NBSP, " ") for line in section
    ]
    assert any(line.startswith("9 times in 10 it ends") for line in told[:at])
    assert told[-1] == (
        "Taken for these: the air brings the carbon dioxide back between doses; "
        "calcium was not given: as in natural seawater"
    )
