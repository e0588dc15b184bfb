"""What a file says of a jug besides one chemical: a mix, limewater, its coolest hour; and of the tank: what was tested."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import pytest

from evenwater.screens.answer import BOTTLE
from tests.headless.asking import ask, example, line_with, on_label, put
from tests.headless.test_stock import CL, MG, OX, WATER, S, answered, catalogue, value

GOOD = example()
LIMEWATER = put(
    GOOD,
    chemical='"calcium hydroxide"',
    dissolved=None,
    purity=None,
    saturated="true",
    flow='"200 mL/min"',
    made_up_to='"20 L"',
)
CHLORIDE, SULFATE = "magnesium chloride hexahydrate", "magnesium sulfate heptahydrate"
BALANCE = 0.0282352 / 0.0528171  # mol of sulfate for a mol of magnesium; Millero et al. 2008
MIX = '{ chemical = "potassium chloride", dissolved = "10 g", purity = "99 %" }'


def additive(text: str, **fields: str) -> str:
    """Write fields into the table of the additive, which has names that the tank has too."""
    head, table, tail = text.partition("[additive]")
    lines = [f"{name} = {said}" for name, said in fields.items()]
    return head + table + "\n" + "\n".join(lines) + re.sub(r"^.*$", "", tail, count=1, flags=re.MULTILINE)


def body(folder: Path, text: str) -> dict[str, Any]:
    said = ask(folder, text)
    assert said.status == 0, said.out
    return said.body


def limits(found: dict[str, Any]) -> dict[str, dict[str, Any]]:
    return {item["code"]: item for item in found["limits"]}


def test_every_field_of_the_example_is_explained() -> None:
    for kind, fields in {
        "correction": ("alkalinity", "calcium", "evaporation", "temperature", "also", "saturated"),
        "stock": ("also", "saturated"),
    }.items():
        after = example(kind).partition("[additive]")[2] if kind == "stock" else example(kind)
        for field in fields:
            assert re.search(rf"^(# )?{field} = .*#", after, re.MULTILINE), f"{field} in {kind}"
    assert "mass_needed_also" in example("stock")


def test_what_was_tested_besides_moves_saturation(tmp_path: Path) -> None:
    text = put(
        GOOD, parameter='"calcium"', measured='"400 mg/L"', target='"420 mg/L"', daily_use=None, fastest_rise=None,
        chemical='"calcium chloride dihydrate"', dissolved='"147 g"',
    )  # fmt: skip
    natural = limits(body(tmp_path, text))["saturation"]["value"]["value"]
    high = limits(body(tmp_path, put(text, alkalinity='"11 dKH"')))["saturation"]["value"]["value"]
    assert high > 1.4 * natural
    # Of alkalinity itself the reading counts, and calcium is what was told.
    low = limits(body(tmp_path, put(GOOD, calcium='"320 mg/L"')))["saturation"]["value"]["value"]
    assert low == pytest.approx(320.0 / 421.2 * limits(body(tmp_path, GOOD))["saturation"]["value"]["value"], rel=0.01)


def test_without_a_ph_it_is_assumed_and_said(tmp_path: Path) -> None:
    found = body(tmp_path, put(GOOD, ph=None))
    assert "ph_assumed" in {reason["code"] for reason in found["reasons"]}
    assert set(limits(found)) & {"ph_rise", "ph_ceiling", "saturation"} == {"ph_rise"}
    assert "ph_assumed" not in {reason["code"] for reason in body(tmp_path, GOOD)["reasons"]}


@pytest.mark.parametrize(
    ("ph", "alkalinity", "code", "field"),
    [
        ('"8.49"', '"6.8 dKH"', "ph_ceiling_forbids", "additive.chemical"),
        ('"8.4"', '"12.5 dKH"', "saturation_forbids", "change.target"),
    ],
)
def test_water_that_forbids_a_plan_names_the_field(
    tmp_path: Path, ph: str, alkalinity: str, code: str, field: str
) -> None:
    target = f'"{float(alkalinity.strip(chr(34)).split()[0]) + 1.0} dKH"'
    said = ask(tmp_path, put(GOOD, ph=ph, measured=alkalinity, target=target))
    assert said.status == 3
    assert said.codes == [(code, field)]


def test_water_that_does_not_exist_is_refused(tmp_path: Path) -> None:
    """Borate and hydroxide alone have more than 1 dKH at a pH of 9.5."""
    calcium = put(
        GOOD, parameter='"calcium"', measured='"400 mg/L"', target='"420 mg/L"', daily_use=None, fastest_rise=None
    )
    said = ask(tmp_path, put(calcium, chemical='"calcium chloride dihydrate"', ph='"9.5"', alkalinity='"1 dKH"'))
    assert said.codes == [("impossible_water", "system.ph")]


def test_limewater_in_a_correction(tmp_path: Path) -> None:
    found = body(tmp_path, LIMEWATER)
    assert "evaporation_unknown" in {reason["code"] for reason in found["reasons"]}
    held = body(
        tmp_path,
        put(
            LIMEWATER,
            evaporation='"4 L per day"',
            daily_use='"0.3 dKH per day"',
            ph=None,
            fastest_rise='"1.4 dKH per day"',
            reason='"a dip"',
        ),
    )
    assert held["set_by"] == "evaporation"
    assert held["dose_in_24_hours"]["value"] == pytest.approx(4000.0, rel=1e-9)
    bar = limits(held)["evaporation"]
    assert bar["value"]["unit"] == bar["bound"]["unit"] == "mL"
    assert bar["bound"]["value"] == 4000.0
    said = ask(tmp_path, put(LIMEWATER, evaporation='"1 L per day"'))
    assert said.codes == [("evaporation_forbids", "system.evaporation")]


def test_coolest_hour_of_the_jug(tmp_path: Path) -> None:
    strong = put(GOOD, dissolved='"200 g"')
    assert ask(tmp_path, additive(strong, temperature='"25 degC"')).status == 0
    said = ask(tmp_path, additive(strong, temperature='"50 degF"'))
    assert said.codes == [("does_not_dissolve", "additive.dissolved")]
    assert "at 10 °C" in said.words


def test_a_mix_in_a_correction(tmp_path: Path) -> None:
    found = body(tmp_path, additive(GOOD, also=MIX))
    chemicals = catalogue().chemicals
    assert found["cautions"] == list(
        dict.fromkeys((*chemicals["sodium carbonate anhydrous"].cautions, *chemicals["potassium chloride"].cautions))
    )
    assert "raises_too" in {reason["code"] for reason in found["reasons"]}
    assert found["total"] == body(tmp_path, GOOD)["total"]


def test_magnesium_mix_by_hand(tmp_path: Path) -> None:
    """50 g of magnesium in a litre from both salts, each from a bag of its own purity."""
    text = (
        f'kind = "stock"\n[additive]\nchemical = "{CHLORIDE}"\nmade_up_to = "2 L"\npurity = "98 %"\n'
        f'also = {{ chemical = "{SULFATE}", purity = "99.5 %" }}\n[wanted]\nstrength = "25000 mg/L"\n'
    )
    found = answered(ask(tmp_path, text))
    moles = 2.0 * 25.0 / MG
    chloride, sulfate = MG + 2 * CL + 6 * WATER, MG + S + 4 * OX + 7 * WATER
    assert value(found, "mass_needed") == pytest.approx(moles * (1.0 - BALANCE) * chloride / 0.98, rel=1e-6)
    (also,) = found["mass_needed_also"]
    assert also == {
        "chemical": SULFATE,
        "value": pytest.approx(moles * BALANCE * sulfate / 0.995, rel=1e-6),
        "unit": "g",
    }
    assert value(found, "magnesium") == pytest.approx(25000.0, rel=1e-9)
    assert value(found, "sulfate") / (S + 4 * OX) / (value(found, "magnesium") / MG) == pytest.approx(BALANCE, rel=1e-6)


def test_a_weighed_mix_says_both_masses(tmp_path: Path) -> None:
    found = answered(ask(tmp_path, additive(example("stock"), also=MIX)))
    assert found["mass_needed"] == {"value": 106.0, "unit": "g"}
    assert found["mass_needed_also"] == [{"chemical": "potassium chloride", "value": 10.0, "unit": "g"}]


def test_limewater_as_a_stock(tmp_path: Path) -> None:
    """0.0203 mol in a litre at 25 degC: Bates, Bower and Smith 1956."""
    text = put(
        example("stock"),
        chemical='"calcium hydroxide"',
        dissolved=None,
        purity=None,
        saturated="true",
        temperature='"25 degC"',
    )
    found = answered(ask(tmp_path, text))
    assert value(found, "alkalinity") == pytest.approx(40.6, rel=2e-3)
    assert [reason["code"] for reason in found["reasons"]] == ["limewater"]
    assert value(found, "solubility") == pytest.approx(value(found, "mass_needed"), rel=1e-9)


TABLE = '[additive]\nchemical = "calcium hydroxide"\nmade_up_to = "20 L"\n'


@pytest.mark.parametrize(
    ("kind", "table", "start", "field", "said"),
    [
        ("correction", f'{TABLE}saturated = "true"', "saturated", "additive.saturated", "true or false, without quotes"),
        ("correction", f"{TABLE}saturated = 1", "saturated", "additive.saturated", "true or false"),
        ("correction", f"{TABLE}saturated = false", "[additive]", "additive.dissolved", "is missing"),
        ("correction", f'{TABLE}saturated = true\ndissolved = "5 g"', "dissolved", "additive.dissolved", "beside saturated"),
        ("correction", f'{TABLE}saturated = true\npurity = "90 %"', "purity", "additive.purity", "beside saturated"),
        ("correction", f"{TABLE}saturated = true\nalso = {MIX}", "also", "additive.also", "alone"),
        ("correction", f'{TABLE}dissolved = "5 g"\nalso = "salt"', "also", "additive.also", "must be a table with chemical"),
        ("correction", f'{TABLE}dissolved = "5 g"\nalso = {{ dissolved = "5 g" }}', "also", "additive.also.chemical", "is missing"),
        ("correction", f'{TABLE}dissolved = "5 g"\nalso = {{ chemical = "salt" }}', "also", "additive.also.dissolved", "is missing"),
        ("correction", f'{TABLE}dissolved = "5 g"\nalso = {{ chemical = "salt", dissolved = 5 }}', "also", "additive.also.dissolved", "in quotes"),
        ("correction", f'{TABLE}dissolved = "5 g"\nalso = {{ chemical = "salt", dissolved = "5 g", grams = "5" }}', "also", "additive.also.grams", "Allowed are: chemical, dissolved, purity"),
        ("correction", f'{TABLE}dissolved = "5 g"\ntemperature = 20', "temperature", "additive.temperature", '"20 degC"'),
        ("correction", '[additive]\nsaturated = true\nlabel = { dose = "5 mL", water = "100 L", raises = "1 dKH" }', "label", "additive.label", "not both"),
        ("correction", f'[additive]\nalso = {MIX}\nlabel = {{ dose = "5 mL", water = "100 L", raises = "1 dKH" }}', "label", "additive.label", "not both"),
        ("correction", f"{TABLE}[system]\nevaporation = 4", "evaporation", "system.evaporation", '"4 L per day"'),
        ("correction", f"{TABLE}[system]\nalkalinity = 8", "alkalinity", "system.alkalinity", '"8 dKH"'),
        ("correction", f"{TABLE}[system]\ncalcium = 420", "calcium", "system.calcium", '"420 mg/L"'),
        ("stock", f'{TABLE}dissolved = "5 g"\ntemperature = "10 degC"', "temperature", "additive.temperature", "stands in the file itself"),
        ("stock", f'{TABLE}saturated = true\n[wanted]\nstrength = "20 meq/L"', "[wanted]", "wanted", "beside additive.saturated"),
        ("stock", f'{TABLE}also = {{ chemical = "salt", dissolved = "5 g" }}\n[wanted]\nstrength = "20 meq/L"', "also", "additive.also.dissolved", "stands without"),
        ("stock", f"{TABLE}saturated = true\nalso = {MIX}", "also", "additive.also", "alone"),
    ],
)  # fmt: skip
def test_file_with_a_fault_in_the_jug(tmp_path: Path, kind: str, table: str, start: str, field: str, said: str) -> None:
    text = f'kind = "{kind}"\n{table}\n'
    found = ask(tmp_path, text)
    assert found.status == 2
    assert (line_with(text, start), field) in found.problems
    assert said in next(p["text"] for p in found.body["problems"] if p["field"] == field)


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({"evaporation": '"4 L"'}, "unknown_unit", "system.evaporation"),
        ({"evaporation": '"0 L per day"'}, "out_of_range", "system.evaporation"),
        ({"evaporation": '"1 gal per day"'}, "unknown_unit", "system.evaporation"),
        ({"alkalinity": '"31 dKH"'}, "out_of_range", "system.alkalinity"),
        ({"alkalinity": '"420 mg/L"'}, "as_what", "system.alkalinity"),
        ({"calcium": '"420"'}, "unit_missing", "system.calcium"),
        ({"calcium": '"8 dKH"'}, "unknown_unit", "system.calcium"),
    ],
)
def test_tank_that_cannot_be_taken(tmp_path: Path, fields: dict[str, str], code: str, field: str) -> None:
    said = ask(tmp_path, put(GOOD, **fields))
    assert said.status == 3
    assert said.codes == [(code, field)]


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({"temperature": '"31 degC"'}, "out_of_range", "additive.temperature"),
        ({"temperature": '"20"'}, "unit_missing", "additive.temperature"),
        ({"also": '{ chemical = "calcium chloride", dissolved = "5 g" }'}, "which_hydrate", "additive.also.chemical"),
        (
            {"also": '{ chemical = "calcium hydroxide", dissolved = "5 g" }'},
            "never_in_one_jug",
            "additive.also.chemical",
        ),
        (
            {"also": '{ chemical = "sodium carbonate anhydrous", dissolved = "5 g" }'},
            "same_chemical",
            "additive.also.chemical",
        ),
        (
            {"also": '{ chemical = "potassium chloride", dissolved = "900 g" }'},
            "does_not_dissolve",
            "additive.dissolved",
        ),
    ],
)
def test_jug_that_cannot_be_taken(tmp_path: Path, fields: dict[str, str], code: str, field: str) -> None:
    for kind in ("correction", "stock"):
        if kind == "stock" and "temperature" in fields:
            continue
        said = ask(tmp_path, additive(example(kind), **fields))
        assert said.status == 3
        assert said.codes == [(code, field)]


def handled(text: str) -> tuple[list[str], list[str]]:
    """Return the lines with hazards and handling that a text begins with, and all lines after them."""
    lines = [line for line in text.splitlines() if line]
    hazard = re.compile(r"(Caution|Danger|Warning): ")
    count = next((n for n, line in enumerate(lines) if not hazard.match(line)), len(lines))
    assert not [line for line in lines[count:] if hazard.match(line)], "nothing of it comes later"
    return lines[:count], lines[count:]


def correction_of(name: str) -> str:
    """Return a correction of what a chemical is for."""
    parameter = catalogue().chemicals[name].raises[0]
    ways = {
        "alkalinity": ("7 dKH", "7.5 dKH"), "calcium": ("400 mg/L", "410 mg/L"), "magnesium": ("1250 mg/L", "1300 mg/L"),
        "potassium": ("380 mg/L", "385 mg/L"), "strontium": ("7 mg/L", "7.5 mg/L"), "iodide": ("0.04 mg/L", "0.05 mg/L"),
        "nitrate": ("2 mg/L as NO3", "3 mg/L as NO3"), "phosphate": ("0.02 mg/L as PO4", "0.03 mg/L as PO4"),
        "salinity": ("34 ppt", "34.5 ppt"),
    }  # fmt: skip
    measured, target = ways[parameter]
    return put(
        GOOD, parameter=f'"{parameter}"', measured=f'"{measured}"', target=f'"{target}"', daily_use=None, fastest_rise=None,
        chemical=f'"{name}"', dissolved='"1 g"', purity=None, smallest_dose=None, step=None, flow='"90000 mL/min"',
    )  # fmt: skip


@pytest.mark.parametrize("name", [c.name for c in catalogue().chemicals.values() if c.raises])
def test_H33_cautions_come_before_any_number(tmp_path: Path, name: str) -> None:
    chemical = catalogue().chemicals[name]
    for text in (correction_of(name), put(example("stock"), chemical=f'"{name}"', dissolved='"1 g"')):
        said = ask(tmp_path, text, "--text")
        assert said.status == 0, said.out
        first, rest = handled(said.out)
        assert [line.removeprefix("Caution: ") for line in first][-len(chemical.cautions) :] == list(chemical.cautions)
        assert re.search(r"\d", " ".join(rest))
    # Whoever mixes the stock is told the hazard itself, too.
    assert all(f"{chemical.signal_word}: {statement}." in first for statement in chemical.statements)


def test_H33_a_mix_limewater_and_a_bottle_have_their_cautions_first(tmp_path: Path) -> None:
    chemicals = catalogue().chemicals
    soda, potash, lime = (
        chemicals[n] for n in ("sodium carbonate anhydrous", "potassium chloride", "calcium hydroxide")
    )
    limewater = put(example("stock"), chemical='"calcium hydroxide"', dissolved=None, purity=None, saturated="true")
    bottle = on_label(example("stock"))
    for text, cautions in (
        (additive(GOOD, also=MIX), (*soda.cautions, *potash.cautions)),
        (additive(example("stock"), also=MIX), (*soda.cautions, *potash.cautions)),
        (LIMEWATER, lime.cautions),
        (limewater, lime.cautions),
        (on_label(GOOD), BOTTLE),
        (bottle, BOTTLE),
    ):
        said = ask(tmp_path, text, "--text")
        assert said.status == 0, said.out
        first, rest = handled(said.out)
        assert [line.removeprefix("Caution: ") for line in first if line.startswith("Caution: ")] == list(
            dict.fromkeys(cautions)
        )
        assert re.search(r"\d", " ".join(rest))


def test_text_of_limewater_and_of_a_mix_says_what_to_do(tmp_path: Path) -> None:
    limewater = put(
        example("stock"),
        chemical='"calcium hydroxide"',
        dissolved=None,
        purity=None,
        saturated="true",
        made_up_to='"10 L"',
    )
    said = ask(tmp_path, limewater, "--text").out
    # Twice what dissolves: 1.56 g in a litre at 20 degC.
    assert "Put 31.2" in said
    assert "let it settle until it is clear" in said
    assert "Weigh out" not in said
    said = ask(tmp_path, additive(example("stock"), also=MIX), "--text").out
    assert "Weigh out 106 g of sodium CARBonate anhydrous and 10 g of potassium CHLORide of 99 %." in said
    assert "Dissolve them in part of the water, then fill up to 1 L." in said
