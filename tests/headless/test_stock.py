"""The kind `stock`: strengths and masses reckoned again by hand, published recipes, both ways round, and refusals."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.headless.asking import Said, ask, example, put
from tests.published.rows import Row, catalogue, check, rows

# Standard atomic weights, CIAAW 2021 (conventional values where it gives an interval).
H, C, N, OX, NA, MG, P, S, CL, K, CA, SR, IODINE = (
    1.008, 12.011, 14.007, 15.999, 22.98976928, 24.305, 30.973761998, 32.06, 35.45, 39.0983, 40.078, 87.62, 126.90447,
)  # fmt: skip
WATER = 2 * H + OX
# 10 mg of CaO per litre for a degree: how many meq that is.
DKH = 10 / ((CA + OX) / 2)

SODA, BICARBONATE, LIME = 2 * NA + C + 3 * OX, NA + H + C + 3 * OX, CA + 2 * (OX + H)
# What a litre carries when one mole is dissolved in it: molar mass, then meq, mmol or mg.
MOLAR: dict[str, tuple[float, dict[str, tuple[float, str]]]] = {
    "sodium carbonate anhydrous": (SODA, {"alkalinity": (2000, "meq/L"), "dic": (1000, "mmol/L"), "sodium": (2000 * NA, "mg/L")}),
    "sodium bicarbonate": (BICARBONATE, {"alkalinity": (1000, "meq/L"), "dic": (1000, "mmol/L"), "sodium": (1000 * NA, "mg/L")}),
    "calcium hydroxide": (LIME, {"alkalinity": (2000, "meq/L"), "calcium": (1000 * CA, "mg/L")}),
    "calcium chloride dihydrate": (
        CA + 2 * CL + 2 * WATER, {"calcium": (1000 * CA, "mg/L"), "chloride": (2000 * CL, "mg/L")},
    ),
    "magnesium chloride hexahydrate": (
        MG + 2 * CL + 6 * WATER, {"magnesium": (1000 * MG, "mg/L"), "chloride": (2000 * CL, "mg/L")},
    ),
    "magnesium sulfate heptahydrate": (
        MG + S + 4 * OX + 7 * WATER, {"magnesium": (1000 * MG, "mg/L"), "sulfate": (1000 * (S + 4 * OX), "mg/L")},
    ),
    "strontium chloride hexahydrate": (
        SR + 2 * CL + 6 * WATER, {"strontium": (1000 * SR, "mg/L"), "chloride": (2000 * CL, "mg/L")},
    ),
    "potassium iodide": (K + IODINE, {"potassium": (1000 * K, "mg/L"), "iodide": (1000 * IODINE, "mg/L")}),
    "potassium nitrate": (
        K + N + 3 * OX, {"potassium": (1000 * K, "mg/L"), "nitrate": (1000 * (N + 3 * OX), "mg/L as NO3")},
    ),
    "potassium dihydrogen phosphate": (
        K + 2 * H + P + 4 * OX, {"potassium": (1000 * K, "mg/L"), "phosphate": (1000 * (P + 4 * OX), "mg/L as PO4")},
    ),
    "sodium chloride": (
        NA + CL, {"salinity": (NA + CL, "g/L"), "sodium": (1000 * NA, "mg/L"), "chloride": (1000 * CL, "mg/L")},
    ),
}  # fmt: skip
# Everything that stands in an answer besides what the stock carries.
FRAME = {
    "status", "raises", "dissolves", "temperature", "solubility", "mass_needed", "mass_needed_also", "signal_word", "statements",
    "cautions", "reasons",
}  # fmt: skip


def plain(value: float) -> str:
    """Write a number that is never taken for thousands."""
    text = f"{value:.14f}"
    return f"{text}1" if len(text.partition(".")[2]) == 3 else text


def stock(folder: Path, wanted: str = "", **additive: str) -> Said:
    lines = ['kind = "stock"', *([f"wanted = {wanted}"] if wanted else []), "[additive]"]
    lines += [f'{name} = "{text}"' for name, text in additive.items()]
    return ask(folder, "\n".join(lines))


def bottle(folder: Path, label: str) -> Said:
    return ask(folder, f'kind = "stock"\n[additive]\nlabel = {label}')


def answered(said: Said) -> dict[str, Any]:
    assert said.status == 0, said.out
    assert said.body["status"] == "answered"
    return said.body


def value(body: dict[str, Any], name: str) -> float:
    found: float = body[name]["value"]
    return found


@pytest.mark.parametrize("name", MOLAR)
def test_strength_of_everything_it_carries(tmp_path: Path, name: str) -> None:
    mass, carries = MOLAR[name]
    # A hundredth of a mole of pure salt, in a bag of 80 %; lime would not dissolve as a tenth.
    body = answered(
        stock(tmp_path, chemical=name, dissolved=f"{plain(mass / 100 / 0.8)} g", made_up_to="1 L", purity="80 %")
    )
    assert body.keys() - FRAME == carries.keys()
    for what, (per_mole, unit) in carries.items():
        assert body[what]["unit"] == unit
        assert value(body, what) == pytest.approx(per_mole / 100, rel=2e-5)
    assert body["dissolves"] is True
    assert value(body, "mass_needed") == pytest.approx(mass / 80, rel=1e-9)
    assert body["mass_needed_also"] == []


def test_every_chemical_is_answered_with_its_hazards(tmp_path: Path) -> None:
    for chemical in catalogue().chemicals.values():
        body = answered(stock(tmp_path, chemical=chemical.name, dissolved="1 g", made_up_to="1 L"))
        assert body["signal_word"] == chemical.signal_word
        assert body["statements"] == list(chemical.statements)
        assert body["cautions"] == list(chemical.cautions) != []
        assert [r["code"] for r in body["reasons"]] == (["restricted"] if chemical.restricted else [])
        assert value(body, "solubility") > 1.0


# Fractions of an ion (frac. with one named) and recipes are asked elsewhere.
PER_GRAM = [
    r for r in rows("per_gram") if "chemical" in r.inputs and not r.id.startswith("recipe.") and "ion" not in r.inputs
]


@pytest.mark.parametrize("row", PER_GRAM, ids=lambda row: row.id)
def test_published_strength_of_a_gram_in_a_litre(tmp_path: Path, row: Row) -> None:
    body = answered(stock(tmp_path, chemical=row.word("chemical"), dissolved="1 g", made_up_to="1 L"))
    alkaline = row.id.startswith("alk.")
    check(row, value(body, "alkalinity") if alkaline else value(body, row.word("parameter")) / 1000.0)


@pytest.mark.parametrize("row", [r for r in rows("per_gram") if r.id.startswith("recipe.")], ids=lambda row: row.id)
def test_published_recipes(tmp_path: Path, row: Row) -> None:
    """So much to lift so many litres, as a litre of stock that does it all at once."""
    wanted = (
        f'{{ parameter = "{row.word("parameter")}", dose = "1 L", water = "{plain(row.number("litres"))} L",'
        f' raises = "{row.number("rise")} {row.word("unit")}" }}'
    )
    body = answered(stock(tmp_path, wanted, chemical=row.word("chemical"), made_up_to="1 L"))
    check(row, value(body, "mass_needed"))


@pytest.mark.parametrize("row", [r for r in rows("saturated") if "chemical" in r.inputs], ids=lambda row: row.id)
def test_published_mass_in_a_litre_of_saturated_solution(tmp_path: Path, row: Row) -> None:
    text = put(
        example("stock"),
        chemical=f'"{row.word("chemical")}"',
        dissolved='"1 g"',
        temperature=f'"{row.number("T_C")} degC"',
    )
    check(row, value(answered(ask(tmp_path, text)), "solubility"))


def test_one_ml_in_100_litres_by_hand(tmp_path: Path) -> None:
    body = answered(ask(tmp_path, example("stock")))
    per_ml = 106 / SODA * 2
    assert body["raises"]["dose"] == {"value": 1.0, "unit": "mL"}
    assert body["raises"]["water"] == {"value": 100.0, "unit": "L"}
    assert body["raises"]["alkalinity"]["unit"] == "dKH"
    assert body["raises"]["alkalinity"]["value"] == pytest.approx(per_ml / 100 / DKH, rel=2e-5)


def test_wanted_rise_by_hand(tmp_path: Path) -> None:
    """1 mL shall raise 100 L by 0.1 dKH: 3.566 meq in a millilitre, half as many millimoles of soda ash."""
    wanted = '{ parameter = "alkalinity", dose = "1 mL", water = "100 L", raises = "0.1 dKH" }'
    body = answered(stock(tmp_path, wanted, chemical="sodium carbonate anhydrous", made_up_to="500 mL"))
    assert value(body, "mass_needed") == pytest.approx(0.1 * DKH * 100 / 2 * SODA / 1000 * 500, rel=2e-5)
    assert body["raises"]["alkalinity"]["value"] == pytest.approx(0.1, rel=1e-12)
    # What the chemical is mostly used for need not be said.
    unsaid = wanted.replace('parameter = "alkalinity", ', "")
    assert answered(stock(tmp_path, unsaid, chemical="sodium carbonate anhydrous", made_up_to="500 mL")) == body


def test_wanted_strength_by_hand_with_an_impure_bag(tmp_path: Path) -> None:
    wanted = '{ parameter = "calcium", strength = "40078 mg/L" }'
    body = answered(stock(tmp_path, wanted, chemical="calcium chloride dihydrate", made_up_to="2 L", purity="77 %"))
    assert value(body, "mass_needed") == pytest.approx(2 * (CA + 2 * CL + 2 * WATER) / 0.77, rel=2e-5)
    assert value(body, "calcium") == pytest.approx(40078, rel=1e-12)


def test_wanted_rise_of_salinity_weighs_the_water_of_the_tank(tmp_path: Path) -> None:
    wanted = '{ dose = "1 L", water = "100 L", raises = "1 ppt" }'
    body = answered(stock(tmp_path, wanted, chemical="sodium chloride", made_up_to="1 L"))
    # 100 L of seawater at 35 and 25 degC weigh 102.334 kg (TEOS-10).
    assert value(body, "mass_needed") == pytest.approx(102.334, rel=1e-5)
    assert body["raises"]["salinity"]["value"] == pytest.approx(0.001, rel=1e-12)


PARTNER = 'partner = { chemical = "calcium chloride dihydrate", dissolved = "147 g", made_up_to = "1 L" }'


@pytest.mark.parametrize(
    ("alkaline", "calcium"),
    [
        ("sodium carbonate anhydrous", "calcium chloride dihydrate"),
        ("sodium bicarbonate", "calcium chloride hexahydrate"),
        ("sodium carbonate decahydrate", "calcium chloride anhydrous"),
        ("sodium hydroxide", "calcium chloride dihydrate"),
    ],
)
def test_matched_pair_carries_as_much_calcium_as_skeleton_takes(tmp_path: Path, alkaline: str, calcium: str) -> None:
    """Equal mL carry 20.04 mg of calcium for each meq, whichever half is made to match the other."""
    for mine, other in ((alkaline, calcium), (calcium, alkaline)):
        given = {"chemical": other, "dissolved": "50 g", "made_up_to": "1.5 L", "purity": "95 %"}
        table = ", ".join(f'{name} = "{text}"' for name, text in given.items())
        made = answered(
            stock(tmp_path, f"{{ partner = {{ {table} }} }}", chemical=mine, made_up_to="2 L", purity="99 %")
        )
        theirs = answered(stock(tmp_path, **given))
        meq, mg = (made, theirs) if mine == alkaline else (theirs, made)
        assert value(mg, "calcium") / value(meq, "alkalinity") == pytest.approx(20.04, abs=0.005)
        assert value(mg, "calcium") / value(meq, "alkalinity") == pytest.approx(CA / 2, rel=1e-6)


def test_matched_pair_by_hand(tmp_path: Path) -> None:
    """147 g of the dihydrate in a litre are a mole of calcium; a mole of soda ash goes with it."""
    body = answered(stock(tmp_path, f"{{ {PARTNER} }}", chemical="sodium carbonate anhydrous", made_up_to="1 L"))
    assert value(body, "mass_needed") == pytest.approx(147 / (CA + 2 * CL + 2 * WATER) * SODA, rel=2e-5)


@pytest.mark.parametrize(
    ("mine", "other"),
    [
        ("calcium hydroxide", "sodium carbonate anhydrous"), ("sodium bicarbonate", "calcium hydroxide"),
        ("sodium bicarbonate", "sodium carbonate anhydrous"), ("potassium iodide", "calcium chloride dihydrate"),
    ],
)  # fmt: skip
def test_what_is_no_pair_is_refused(tmp_path: Path, mine: str, other: str) -> None:
    partner = f'{{ partner = {{ chemical = "{other}", dissolved = "1 g", made_up_to = "1 L" }} }}'
    said = stock(tmp_path, partner, chemical=mine, made_up_to="1 L")
    assert said.status == 3
    assert said.codes == [("no_pair", "wanted.partner.chemical")]
    assert mine.capitalize() in said.words
    assert other in said.words


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    name=st.sampled_from(sorted(n for n, c in catalogue().chemicals.items() if c.raises)),
    share=st.floats(0.001, 0.999),
    litres=st.floats(0.05, 50.0),
    purity=st.floats(20.0, 100.0),
    data=st.data(),
)
def test_recipe_to_strength_to_recipe(
    tmp_path: Path, name: str, share: float, litres: float, purity: float, data: st.DataObject
) -> None:
    """Whatever is weighed: its strength, and its rise, asked back, weigh out the same; and it scales with the mass."""
    chemical = catalogue().chemicals[name]
    most = chemical.most_per_litre(20.0)
    assert most is not None
    grams = share * most * litres / (purity / 100)
    jug = {"chemical": name, "made_up_to": f"{plain(litres)} L", "purity": f"{plain(purity)} %"}
    there = answered(stock(tmp_path, dissolved=f"{plain(grams)} g", **jug))
    assert value(there, "solubility") == pytest.approx(most, rel=1e-12)
    parameter = data.draw(st.sampled_from(sorted(chemical.raises)))
    rise = there["raises"][parameter]
    ways = [f'dose = "1 mL", water = "100 L", raises = "{rise["value"]:.25f} {rise["unit"]}"']
    if parameter != "salinity":
        ways.append(f'strength = "{plain(value(there, parameter))} {there[parameter]["unit"]}"')
    for way in ways:
        back = answered(stock(tmp_path, f'{{ parameter = "{parameter}", {way} }}', **jug))
        assert value(back, "mass_needed") == pytest.approx(grams, rel=1e-9)
    half = answered(stock(tmp_path, dissolved=f"{plain(grams / 2)} g", **jug))
    assert value(half, parameter) == pytest.approx(value(there, parameter) / 2, rel=1e-9)


@pytest.mark.parametrize(
    ("grams", "temperature", "status", "code"),
    [
        (106, "20 degC", 0, ""), (190, "20 degC", 0, ""), (194, "20 degC", 0, "nearly_saturated"),
        (213, "20 degC", 0, "nearly_saturated"), (215, "20 degC", 3, "does_not_dissolve"),
        (106, "10 degC", 0, ""), (119, "10 degC", 0, "nearly_saturated"), (130, "10 degC", 3, "does_not_dissolve"),
        (130, "50 degF", 3, "does_not_dissolve"), (215, "30 degC", 0, ""),
    ],
)  # fmt: skip
def test_solubility_blocks_above_and_remarks_within_a_tenth(
    tmp_path: Path, grams: int, temperature: str, status: int, code: str
) -> None:
    """At 20 degC 17.9 % (CRC Handbook), about 214 g in a litre; at 10 degC about 120 g."""
    said = ask(tmp_path, put(example("stock"), dissolved=f'"{grams} g"', temperature=f'"{temperature}"'))
    assert said.status == status
    assert [r["code"] for r in said.body["reasons"]] == ([code] if code else [])
    assert said.body["dissolves"] is (status == 0)
    assert (value(said.body, "solubility") > grams) is (status == 0)
    if status:
        assert said.codes == [(code, "additive.dissolved")]
        assert said.body.keys() == {"status", "reasons", "dissolves", "solubility"}
        assert f"{grams} g" in said.words


def test_temperature_is_twenty_degrees_when_not_given(tmp_path: Path) -> None:
    assert ask(tmp_path, put(example("stock"), temperature=None)).out == ask(tmp_path, example("stock")).out


def test_wanted_stock_that_cannot_dissolve_is_refused(tmp_path: Path) -> None:
    said = stock(tmp_path, '{ strength = "5000 meq/L" }', chemical="sodium carbonate anhydrous", made_up_to="1 L")
    assert said.status == 3
    assert said.codes == [("does_not_dissolve", "wanted")]
    assert "265 g" in said.words
    assert "weaker" in said.words


def test_partner_that_cannot_dissolve_is_refused(tmp_path: Path) -> None:
    partner = PARTNER.replace("147 g", "2 kg")
    said = stock(tmp_path, f"{{ {partner} }}", chemical="sodium hydroxide", made_up_to="1 L")
    assert said.status == 3
    assert ("does_not_dissolve", "wanted.partner.dissolved") in said.codes


@pytest.mark.parametrize(
    ("chemical", "grams", "keep"), [("calcium hydroxide", "1.5", "cool"), ("sodium bicarbonate", "90", "warm")]
)
def test_a_stock_near_its_limit_is_kept_where_more_dissolves(
    tmp_path: Path, chemical: str, grams: str, keep: str
) -> None:
    (said,) = answered(stock(tmp_path, chemical=chemical, dissolved=f"{grams} g", made_up_to="1 L"))["reasons"]
    assert said["code"] == "nearly_saturated"
    assert f"Keep it {keep} " in said["text"]


def test_lime_holds_more_in_the_cold(tmp_path: Path) -> None:
    cold, warm = (
        answered(
            ask(tmp_path, put(example("stock"), chemical='"calcium hydroxide"', dissolved='"1 g"', temperature=at))
        )
        for at in ('"5 degC"', '"30 degC"')
    )
    assert value(cold, "solubility") > value(warm, "solubility") > 1.0


@pytest.mark.parametrize(
    ("label", "name", "per_litre", "unit"),
    [
        ('{ dose = "5 mL", water = "100 L", raises = "1 dKH" }', "alkalinity", 20000 * DKH, "meq/L"),
        ('{ dose = "5 mL", water = "100 L", raises = "2 mg/L as N" }', "nitrate", 40000 * (N + 3 * OX) / N, "mg/L as NO3"),
        ('{ parameter = "magnesium", dose = "10 mL", water = "50 L", raises = "2 mg/L" }', "magnesium", 10000, "mg/L"),
    ],
)  # fmt: skip
def test_bottle_known_by_its_label(tmp_path: Path, label: str, name: str, per_litre: float, unit: str) -> None:
    body = answered(bottle(tmp_path, label))
    assert body.keys() - FRAME == {name}
    assert body[name]["unit"] == unit
    assert value(body, name) == pytest.approx(per_litre, rel=2e-5)
    assert body["dissolves"] is body["solubility"] is body["mass_needed"] is body["signal_word"] is None
    assert any("safety sheet" in caution for caution in body["cautions"])


def test_text_has_the_hazards_before_any_number(tmp_path: Path) -> None:
    text = put(example("stock"), chemical='"sodium hydroxide"', dissolved='"40 g"')
    said = ask(tmp_path, text, "--text")
    assert said.status == 0
    lines = said.out.splitlines()
    recipe = next(n for n, line in enumerate(lines) if line.startswith("Weigh out 40 g of"))
    assert lines[0].startswith("Danger: H")
    assert all(line.startswith(("Danger: ", "Caution: ")) or not line for line in lines[:recipe])
    assert "Carries 1000 meq per L: alkalinity." in lines
    assert "1 mL raises 100 L by 0.028 dKH: alkalinity." in lines
    assert any(line.startswith("Note: Sodium hydroxide is dangerous") for line in lines)


def test_text_of_a_bottle_and_of_a_refusal(tmp_path: Path) -> None:
    file = 'kind = "stock"\n[additive]\nlabel = { dose = "5 mL", water = "100 L", raises = "1 dKH" }'
    lines = ask(tmp_path, file, "--text").out.splitlines()
    assert lines[0].startswith("Caution: ")
    assert lines[-1] == "1 mL raises 100 L by 0.2 dKH: alkalinity."
    said = ask(tmp_path, put(example("stock"), dissolved='"400 g"'), "--text")
    assert said.out.startswith("Refused: additive.dissolved: 400")


def test_a_stock_has_no_card(tmp_path: Path) -> None:
    card = tmp_path / "card.pdf"
    said = ask(tmp_path, example("stock"), "--card", str(card))
    assert said.status == 0
    assert not card.exists()
    assert "there is no plan" in said.err
