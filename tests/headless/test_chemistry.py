"""The kind `chemistry`: published rows, PyCO2SYS, bookkeeping by hand, what must hold for any tank, and refusals."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.carbonate.rows import Row, check, rows
from tests.headless.asking import Said, ask, example, line_with, put
from tests.published.rows import catalogue

# Standard atomic weights, CIAAW 2021 (conventional values where it gives an interval).
H, C, OX, NA, CL, CA = 1.008, 12.011, 15.999, 22.98976928, 35.45, 40.078
# Molar mass, then alkalinity [eq], dissolved carbon and calcium of a mole.
ADDED = {
    "sodium carbonate anhydrous": (2 * NA + C + 3 * OX, 2, 1),
    "sodium bicarbonate": (NA + H + C + 3 * OX, 1, 1),
    "sodium hydroxide": (NA + OX + H, 1, 0),
    "calcium hydroxide": (CA + 2 * (OX + H), 2, 0),
    "calcium chloride dihydrate": (CA + 2 * CL + 2 * (2 * H + OX), 0, 0),
}
MOMENTS = ("before", "at_once", "after_gas_exchange")


def density(salinity: float = 35.0, degc: float = 25.0) -> float:
    """Return kg per litre by the Gibbs function itself, where the product takes the 75-term polynomial."""
    import gsw

    return float(1.0 / gsw.specvol_t_exact(gsw.SR_from_SP(salinity), degc, 0.0)) / 1000.0


def plain(value: float) -> str:
    """Write a number that is never taken for thousands."""
    text = f"{value:.14f}"
    return f"{text}1" if len(text.partition(".")[2]) == 3 else text


def tank(folder: Path, chemical: str, grams: float, **system: str) -> Said:
    """Add so many grams to 100 L of seawater at 35 and 25 degC, unless told otherwise."""
    given = {"net_volume": "100 L", "salinity": "35", "temperature": "25 degC", **system}
    lines = ['kind = "chemistry"', "[system]", *(f'{name} = "{text}"' for name, text in given.items())]
    return ask(folder, "\n".join([*lines, "[addition]", f'chemical = "{chemical}"', f'amount = "{plain(grams)} g"']))


def answered(said: Said) -> dict[str, Any]:
    assert said.status == 0, said.out
    return said.body


def value(body: dict[str, Any], moment: str, name: str) -> float:
    found: float = body[moment][name]["value"]
    return found


PUBLISHED = [row for row in rows("states") if "added" in row.inputs]


@pytest.mark.parametrize("row", PUBLISHED, ids=lambda row: row.id)
def test_published_additions(tmp_path: Path, row: Row) -> None:
    """2.3 meq per kg in balance with the air of the row; the amounts are turned into litres and grams by hand."""
    name = str(row.inputs["added"])
    mass, equivalents, _ = ADDED[name]
    grams = row.number("dTA_umol_kg") * 1e-6 / equivalents * mass * 100.0 * density()
    air = f"{plain(row.number('pCO2_0'))} uatm"
    body = answered(tank(tmp_path, name, grams, alkalinity=f"{plain(2.3 * density())} meq/L", pco2=air))
    moment = "after_gas_exchange" if row.inputs.get("gas_exchanged") else "at_once"
    ph = value(body, moment, "ph_total")
    check(
        row,
        {
            "TA": 1000.0 * value(body, moment, "alkalinity") / density(),
            "DIC": 1000.0 * value(body, moment, "dic") / density(),
            "pH_T": ph,
            "pCO2": value(body, moment, "pco2"),
            "Omega_arag": value(body, moment, "aragonite_saturation"),
            "dpH": ph - value(body, "before", "ph_total"),
        },
    )


@pytest.mark.parametrize(
    ("name", "salinity", "degc", "alkalinity", "ph", "scale"),
    [
        ("sodium carbonate anhydrous", 35.0, 25.0, 2.5, 8.1, "total"),
        ("sodium bicarbonate", 30.0, 20.0, 4.0, 8.3, "seawater"),
        ("sodium hydroxide", 38.0, 28.0, 3.0, 7.8, "free"),
        ("calcium hydroxide", 33.0, 26.5, 2.4, 8.2, "NBS"),
        ("calcium chloride dihydrate", 36.0, 18.0, 2.9, 8.0, "NBS"),
    ],
)
def test_three_moments_against_an_independent_program(
    tmp_path: Path, name: str, salinity: float, degc: float, alkalinity: float, ph: float, scale: str
) -> None:
    """Its calcium has another atomic weight (0.02 %) and its constant of water another way to the scale (0.8 %)."""
    pyco2sys = pytest.importorskip("PyCO2SYS")
    mass, equivalents, carbon = ADDED[name]
    rho = density(salinity, degc)
    moles_per_kg = 2.0 / mass / 100.0 / rho
    calcium = 430.0 / CA / rho * 1e3
    body = answered(
        tank(
            tmp_path, name, 2.0, salinity=plain(salinity), temperature=f"{plain(degc)} degC", ph=plain(ph), ph_scale=scale,
            alkalinity=f"{plain(alkalinity)} meq/L", calcium="430 mg/L",
        )
    )  # fmt: skip
    number = {"total": 1, "seawater": 2, "free": 3, "NBS": 4}[scale]
    water = {
        "salinity": salinity, "temperature": degc, "opt_k_carbonic": 10, "opt_total_borate": 1, "opt_k_fluoride": 1,
        "opt_pH_scale": number,
    }  # fmt: skip
    before = pyco2sys.sys(1e3 * alkalinity / rho, ph, 1, 3, total_calcium=calcium, **water)
    more = calcium + (1e6 * moles_per_kg if name.startswith("calcium") else 0.0)
    raised = 1e3 * alkalinity / rho + 1e6 * moles_per_kg * equivalents
    at_once = pyco2sys.sys(raised, before["dic"] + 1e6 * moles_per_kg * carbon, 1, 2, total_calcium=more, **water)
    after = pyco2sys.sys(raised, before["pCO2"], 1, 4, total_calcium=more, **water)
    for moment, found in zip(MOMENTS, (before, at_once, after), strict=True):
        assert body[moment]["ph"]["unit"] == f"{scale} scale"
        assert value(body, moment, "ph") == pytest.approx(found["pH"], abs=1e-3)
        assert value(body, moment, "ph_total") == pytest.approx(found["pH_total"], abs=1e-3)
        assert value(body, moment, "alkalinity") == pytest.approx(found["alkalinity"] * rho / 1e3, rel=1e-5)
        assert value(body, moment, "dic") == pytest.approx(found["dic"] * rho / 1e3, rel=5e-4)
        assert value(body, moment, "aragonite_saturation") == pytest.approx(found["saturation_aragonite"], rel=3e-3)


@pytest.mark.parametrize("name", ADDED)
def test_bookkeeping_per_mole_by_hand(tmp_path: Path, name: str) -> None:
    """A fiftieth of a mole in 100 L: 0.2 mmol in each litre."""
    mass, equivalents, carbon = ADDED[name]
    body = answered(tank(tmp_path, name, mass / 50.0, alkalinity="2.5 meq/L", ph="8.2"))
    for what, per_mole in (("alkalinity", equivalents), ("dic", carbon)):
        assert value(body, "at_once", what) - value(body, "before", what) == pytest.approx(
            0.2 * per_mole, rel=2e-5, abs=1e-9
        )
    assert value(body, "before", "alkalinity") == pytest.approx(2.5, rel=1e-12)
    assert value(body, "before", "ph") == pytest.approx(8.2, abs=1e-9)


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    name=st.sampled_from(sorted(catalogue().chemicals)),
    grams=st.floats(0.001, 20.0),
    alkalinity=st.floats(1.0, 6.0),
    air=st.floats(150.0, 3000.0),
    salinity=st.floats(20.0, 40.0),
    degc=st.floats(15.0, 32.0),
)
def test_what_holds_for_any_tank(
    tmp_path: Path, name: str, grams: float, alkalinity: float, air: float, salinity: float, degc: float
) -> None:
    body = answered(
        tank(
            tmp_path, name, grams, alkalinity=f"{plain(alkalinity)} meq/L", pco2=f"{plain(air)} uatm",
            salinity=plain(salinity), temperature=f"{plain(degc)} degC",
        )
    )  # fmt: skip
    before, at_once, after = (body[moment] for moment in MOMENTS)
    assert at_once["alkalinity"] == after["alkalinity"], "gas carries no alkalinity"
    assert after["pco2"]["value"] == pytest.approx(before["pco2"]["value"], rel=1e-8)
    assert before["pco2"]["value"] == pytest.approx(air, rel=1e-8)
    # Water that holds less carbon dioxide than the air takes it up, and its pH falls; and the other way round.
    short = at_once["pco2"]["value"] < air * (1.0 - 1e-6)
    if short or at_once["pco2"]["value"] > air * (1.0 + 1e-6):
        assert (after["dic"]["value"] > at_once["dic"]["value"]) is short
        assert (after["ph"]["value"] < at_once["ph"]["value"]) is short
    # Asked again with the pH that it gave: the same water, on either scale.
    for scale, field in (("total", "ph_total"), ("NBS", "ph")):
        again = answered(
            tank(
                tmp_path, name, grams, alkalinity=f"{plain(alkalinity)} meq/L", ph=plain(before[field]["value"]), ph_scale=scale,
                salinity=plain(salinity), temperature=f"{plain(degc)} degC",
            )
        )  # fmt: skip
        assert value(again, "before", "dic") == pytest.approx(before["dic"]["value"], rel=1e-8)
        assert value(again, "at_once", "ph_total") == pytest.approx(at_once["ph_total"]["value"], abs=1e-7)


def test_soda_ash_bicarbonate_and_hydroxide_differ_for_the_same_alkalinity(tmp_path: Path) -> None:
    """At once they move pH apart, bicarbonate even down; after gas exchange they are one."""
    bodies = {
        name: answered(tank(tmp_path, name, ADDED[name][0] / ADDED[name][1] * 0.03, alkalinity="2.5 meq/L", ph="8.1"))
        for name in ("sodium bicarbonate", "sodium carbonate anhydrous", "sodium hydroxide")
    }
    at_once = [value(body, "at_once", "ph") for body in bodies.values()]
    assert at_once[0] < 8.1 < at_once[1] < at_once[2]
    assert max(value(b, "after_gas_exchange", "ph") for b in bodies.values()) == pytest.approx(
        min(value(b, "after_gas_exchange", "ph") for b in bodies.values()), abs=1e-4
    )


def test_calcium_as_it_stands_counts(tmp_path: Path) -> None:
    low, high = (
        answered(ask(tmp_path, put(example("chemistry"), calcium=f'"{calcium} mg/L"'))) for calcium in (210, 420)
    )
    for moment in MOMENTS:
        ratio = value(high, moment, "aragonite_saturation") / value(low, moment, "aragonite_saturation")
        assert ratio == pytest.approx(2.0, rel=1e-9)
        assert high[moment]["ph"] == low[moment]["ph"]


@pytest.mark.parametrize(
    ("fields", "code", "words"),
    [
        ({"calcium": None}, "calcium_assumed", "422 mg per L"),
        ({"amount": '"40 g"'}, "may_precipitate", "above 7"),
        ({"salinity": '"42"'}, "constants_extrapolated", "salinity of 42"),
        ({"temperature": '"37 degC"'}, "constants_extrapolated", "37 °C"),
        ({"chemical": '"sodium hydroxide"'}, "restricted", "dangerous"),
    ],
)
def test_remarks(tmp_path: Path, fields: dict[str, str | None], code: str, words: str) -> None:
    assert answered(ask(tmp_path, example("chemistry")))["reasons"] == []
    (said,) = answered(ask(tmp_path, put(example("chemistry"), **fields)))["reasons"]
    assert said["code"] == code
    assert words in said["text"].replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"alkalinity": '"140 dKH"'}, "out_of_range", "system.alkalinity"),
        ({"alkalinity": '"6.8"'}, "unit_missing", "system.alkalinity"),
        ({"net_volume": '"90 gal"'}, "bare_gallon", "system.net_volume"),
        ({"salinity": '"1.026 SG"'}, "bare_gravity", "system.salinity"),
        ({"temperature": '"25"'}, "unit_missing", "system.temperature"),
        ({"ph": '"81"'}, "out_of_range", "system.ph"),
        ({"ph": '"10"', "alkalinity": '"1 dKH"'}, "impossible_water", "system.ph"),
        ({"ph_scale": '"nbs scale"'}, "unknown_choice", "system.ph_scale"),
        ({"ph": None, "pco2": '"420"'}, "unit_missing", "system.pco2"),
        ({"ph": None, "pco2": '"420 ppm"'}, "unknown_unit", "system.pco2"),
        ({"calcium": '"420 ppm"'}, "unknown_unit", "system.calcium"),
        ({"chemical": '"calcium chloride"'}, "which_hydrate", "addition.chemical"),
        ({"chemical": '"moon dust"'}, "unknown_chemical", "addition.chemical"),
        ({"amount": '"0 g"'}, "out_of_range", "addition.amount"),
        # More than 2 g in each of 340 L at 1.0234 kg per litre.
        ({"amount": '"697 g"'}, "out_of_range", "addition.amount"),
    ],
)
def test_refusal(tmp_path: Path, fields: dict[str, str | None], code: str, path: str) -> None:
    said = ask(tmp_path, put(example("chemistry"), **fields))
    assert said.status == 3
    assert said.err == ""
    assert said.codes == [(code, path)]
    assert said.body.keys() == {"status", "reasons"}


@pytest.mark.parametrize(
    ("fields", "path", "allowed"),
    [
        ({"ph": None}, "system.ph", 'Write ph = "8.1"'),
        ({"pco2": '"420 uatm"'}, "system.pco2", "one of the two"),
        ({"salinity": None}, "system.salinity", "Write salinity"),
        ({"alkalinity": "6.8"}, "system.alkalinity", '"6.8 dKH"'),
        ({"amount": '" "'}, "addition.amount", 'Write amount = "3 g"'),
        ({"chemical": None}, "addition.chemical", "Write chemical"),
    ],
)
def test_file_that_is_no_question_about_chemistry(
    tmp_path: Path, fields: dict[str, str | None], path: str, allowed: str
) -> None:
    text = put(example("chemistry"), **fields)
    table, _, field = path.partition(".")
    said = ask(tmp_path, text)
    assert said.status == 2
    there = fields[field] is not None
    assert said.problems == [(line_with(text, f"{field} = " if there else f"[{table}]"), path)]
    assert allowed in said.err


@pytest.mark.parametrize(
    ("text", "path", "allowed"),
    [
        ("", "addition.amount", "Write amount"),
        ("system = 5", "system", "must be a table"),
        ("[pump]", "pump", "Allowed are: kind, system, addition."),
        ("[system]\nkh = 5", "system.kh", "Allowed are: net_volume"),
    ],
)
def test_shape_that_is_not_that_of_the_kind(tmp_path: Path, text: str, path: str, allowed: str) -> None:
    said = ask(tmp_path, f'kind = "chemistry"\n{text}')
    assert said.status == 2
    assert path in [field for _, field in said.problems]
    assert allowed in said.err


def test_text_has_the_hazards_first_and_names_the_scale(tmp_path: Path) -> None:
    said = ask(tmp_path, put(example("chemistry"), ph_scale='"total"', calcium=None), "--text")
    assert said.status == 0
    lines = said.out.splitlines()
    first = next(n for n, line in enumerate(lines) if line.startswith("Before: pH 8.1 (total scale)"))
    assert lines[0].startswith("Warning: H319")
    assert all(line.startswith(("Warning: ", "Caution: ")) or not line for line in lines[:first])
    assert [line.partition(":")[0] for line in lines[first : first + 3]] == ["Before", "At once", "After gas exchange"]
    assert "alkalinity 7.27 dKH" in lines[first + 1]
    assert lines[-1].startswith("Note: No calcium is given")
