"""The kind `stock`: questions that cannot be taken, and files that are no question about a stock."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.headless.asking import ask, example, line_with, put
from tests.headless.test_stock import PARTNER, bottle, stock


@pytest.mark.parametrize(
    ("label", "code", "field"),
    [
        ('{ dose = "5 mL", water = "100 L", raises = "10 mg/L" }', "missing", "parameter"),
        ('{ parameter = "calcium", dose = "5 mL", water = "100 L", raises = "1 dKH" }', "unknown_unit", "raises"),
        ('{ parameter = "soda", dose = "5 mL", water = "100 L", raises = "1 dKH" }', "unknown_parameter", "parameter"),
        ('{ dose = "0 mL", water = "100 L", raises = "1 dKH" }', "out_of_range", "dose"),
        ('{ dose = "5 mL", water = "100 gal", raises = "1 dKH" }', "bare_gallon", "water"),
    ],
)
def test_label_that_cannot_be_taken(tmp_path: Path, label: str, code: str, field: str) -> None:
    said = bottle(tmp_path, label)
    assert said.status == 3
    assert said.codes == [(code, f"additive.label.{field}")]


@pytest.mark.parametrize(
    ("wanted", "code", "path"),
    [
        ('{ strength = "2 meq/mL" }', "unknown_unit", "wanted.strength"),
        ('{ strength = "2,000 meq/L" }', "two_readings", "wanted.strength"),
        ('{ strength = "0 meq/L" }', "out_of_range", "wanted.strength"),
        ('{ parameter = "calcium", strength = "40000 mg/L" }', "does_not_raise", "additive.chemical"),
        ('{ parameter = "calcium", strength = "40000 mg/kg" }', "unknown_unit", "wanted.strength"),
        ('{ parameter = "salinity", strength = "100 ppt" }', "unknown_choice", "wanted.parameter"),
        ('{ parameter = "soda", strength = "100 meq/L" }', "unknown_parameter", "wanted.parameter"),
        ('{ dose = "1", water = "100 L", raises = "0.1 dKH" }', "unit_missing", "wanted.dose"),
        ('{ dose = "1 mL", water = "100 L", raises = "0.1 mg/L" }', "as_what", "wanted.raises"),
        ('{ dose = "0.001 mL", water = "5000000 L", raises = "200 dKH" }', "out_of_range", "wanted"),
        (f"{{ {PARTNER.replace('dihydrate', '').replace('chloride ', 'chloride')} }}", "which_hydrate", "wanted.partner.chemical"),
        (f"{{ {PARTNER.replace('147 g', '147')} }}", "unit_missing", "wanted.partner.dissolved"),
    ],
)  # fmt: skip
def test_wanted_that_cannot_be_taken(tmp_path: Path, wanted: str, code: str, path: str) -> None:
    said = stock(tmp_path, wanted, chemical="sodium carbonate anhydrous", made_up_to="1 L")
    assert said.status == 3
    assert said.codes == [(code, path)]


@pytest.mark.parametrize(
    ("fields", "code", "path"),
    [
        ({"temperature": '"20"'}, "unit_missing", "temperature"),
        ({"temperature": '"31 degC"'}, "out_of_range", "temperature"),
        ({"chemical": '"calcium chloride"'}, "which_hydrate", "additive.chemical"),
        ({"chemical": '"soda ash"'}, "which_hydrate", "additive.chemical"),
        ({"made_up_to": '"1 gal"'}, "bare_gallon", "additive.made_up_to"),
        ({"dissolved": '"0 g"'}, "out_of_range", "additive.dissolved"),
        ({"purity": '"101 %"'}, "out_of_range", "additive.purity"),
    ],
)
def test_additive_that_cannot_be_taken(tmp_path: Path, fields: dict[str, str], code: str, path: str) -> None:
    said = ask(tmp_path, put(example("stock"), **fields))
    assert said.status == 3
    assert said.err == ""
    assert said.codes == [(code, path)]


JUG = 'chemical = "sodium bicarbonate"\nmade_up_to = "1 L"'


@pytest.mark.parametrize(
    ("text", "start", "path", "allowed"),
    [
        (f"[additive]\n{JUG}", "[additive]", "additive.dissolved", 'Write dissolved = "106 g"'),
        ("", "", "additive.chemical", "Write chemical = "),
        ("additive = 5", "additive", "additive", "must be a table"),
        (f"[additive]\n{JUG}\ndissolved = 5", "dissolved", "additive.dissolved", "in quotes"),
        (f"temperature = 20\n[additive]\n{JUG}\ndissolved = \"5 g\"", "temperature", "temperature", '"20 degC"'),
        (f"[system]\n[additive]\n{JUG}\ndissolved = \"5 g\"", "[system]", "system", "Allowed are: kind, temperature"),
        (f"[additive]\n{JUG}\ndissolved = \"5 g\"\n[wanted]\nstrength = \"1 meq/L\"", "[wanted]", "wanted", "additive.dissolved"),
        (f"[additive]\n{JUG}\n[wanted]", "[wanted]", "wanted", "Write one of"),
        (f"[additive]\n{JUG}\n[wanted]\nstrength = \"1 meq/L\"\ndose = \"1 mL\"", "[wanted]", "wanted", "Write one of"),
        (f"[additive]\n{JUG}\n[wanted]\nparameter = \"calcium\"\n{PARTNER}", "[wanted]", "wanted", "Write one of"),
        (f"[additive]\n{JUG}\n[wanted]\ndose = \"1 mL\"\nwater = \"9 L\"", "[wanted]", "wanted.raises", 'raises = "0.1 dKH"'),
        (f"[additive]\n{JUG}\n[wanted]\nstrenght = \"1 meq/L\"\nstrength = \"1 meq/L\"", "strenght", "wanted.strenght", "Allowed are: parameter, strength"),
        (f"[additive]\n{JUG}\n[wanted]\nstrength = 5", "strength", "wanted.strength", "in quotes"),
        (f"[additive]\n{JUG}\n[wanted]\npartner = \"lime\"", "partner", "wanted.partner", "must be a table with chemical"),
        (f"[additive]\n{JUG}\n[wanted.partner]\nchemical = \"calcium chloride dihydrate\"\nmade_up_to = \"1 L\"", "[wanted.partner]", "wanted.partner.dissolved", "Write dissolved"),
        (f"wanted = 5\n[additive]\n{JUG}", "wanted", "wanted", "must be a table"),
        ('[additive]\nlabel = { dose = "5 mL", water = "100 L" }', "label", "additive.label.raises", 'raises = "1 dKH"'),
        (f'[additive]\n{JUG}\nlabel = {{ dose = "5 mL", water = "100 L", raises = "1 dKH" }}', "label", "additive.label", "not both"),
    ],
)  # fmt: skip
def test_file_that_is_no_question_about_a_stock(tmp_path: Path, text: str, start: str, path: str, allowed: str) -> None:
    whole = f'kind = "stock"\n{text}\n'
    said = ask(tmp_path, whole)
    assert said.status == 2
    line = line_with(whole, start) if start else 0
    assert (line, path) in said.problems
    assert said.problems[1:] == [] or not start
    assert allowed in said.err
