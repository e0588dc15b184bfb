"""Files that are no question: line, field and what is allowed, on standard error, and never a traceback."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.headless.asking import ask, example, line_with, on_label, put, run

GOOD = example()
CONVERT = example("convert")


@pytest.mark.parametrize(
    ("field", "path", "value", "allowed"),
    [
        ("net_volume", "system.net_volume", "340", "in quotes"),
        ("net_volume", "system.net_volume", "340.5", '"340 L"'),
        ("net_volume", "system.net_volume", "true", '"340 L"'),
        ("net_volume", "system.net_volume", "nan", '"340 L"'),
        ("net_volume", "system.net_volume", '["340 L"]', '"340 L"'),
        ("net_volume", "system.net_volume", '{ value = "340 L" }', '"340 L"'),
        ("net_volume", "system.net_volume", "2026-11-25T08:00:00+00:00", '"340 L"'),
        ("net_volume", "system.net_volume", '""', 'net_volume = "340 L"'),
        ("net_volume", "system.net_volume", '" \u00a0 "', 'net_volume = "340 L"'),
        ("salinity", "system.salinity", "35", '"35"'),
        ("name", "system.name", "7", '"North frag bay"'),
        ("parameter", "change.parameter", "5", '"alkalinity"'),
        ("target", "change.target", "8.4", '"8.4 dKH"'),
        ("reason", "change.reason", "1", "in quotes"),
        ("measured_at", "change.measured_at", "2026-11-25T08:00:00", "offset"),
        ("measured_at", "change.measured_at", "2026-11-25", "offset"),
        ("measured_at", "change.measured_at", "08:00:00", "offset"),
        ("measured_at", "change.measured_at", '"2026-11-25T08:00:00+00:00"', "without quotes"),
        ("measured_at", "change.measured_at", '"yesterday"', "2026-11-25T09:00:00+00:00"),
        ("measured_at", "change.measured_at", "0001-01-01T00:00:00+23:59", "offset"),
        ("now", "now", "2026-11-25T08:00:00", "offset"),
        ("now", "now", "9999-12-31T23:59:59-23:59", "offset"),
        ("now", "now", "[]", "offset"),
        ("chemical", "additive.chemical", "1", '"sodium carbonate anhydrous"'),
        ("doses_per_day", "pump.doses_per_day", '"24"', "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", "24.0", "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", "-3", "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", "0", "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", "1441", "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", "true", "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", "inf", "whole number from 1 to 1440"),
        ("doses_per_day", "pump.doses_per_day", f"0x{'f' * 5000}", "whole number from 1 to 1440"),
    ],
)
def test_value_of_the_wrong_type(tmp_path: Path, field: str, path: str, value: str, allowed: str) -> None:
    text = put(GOOD, **{field: value})
    said = ask(tmp_path, text)
    assert said.status == 2
    line = line_with(text, f"{field} = ")
    assert said.problems == [(line, path)]
    assert f"question.toml:{line}: {path}: " in said.err
    assert allowed in said.err


@pytest.mark.parametrize(
    ("field", "path"),
    [
        ("net_volume", "system.net_volume"),
        ("parameter", "change.parameter"),
        ("target", "change.target"),
        ("chemical", "additive.chemical"),
        ("dissolved", "additive.dissolved"),
        ("made_up_to", "additive.made_up_to"),
        ("flow", "pump.flow"),
    ],
)
def test_missing_field_points_at_its_table_and_shows_how_to_write_it(tmp_path: Path, field: str, path: str) -> None:
    text = put(GOOD, **{field: None})
    said = ask(tmp_path, text)
    assert said.status == 2
    assert said.problems == [(line_with(text, f"[{path.partition('.')[0]}]"), path)]
    assert f'{path}: is missing. Write {field} = "' in said.err


def test_missing_tables_name_every_field_that_is_needed(tmp_path: Path) -> None:
    said = ask(tmp_path, 'kind = "correction"')
    assert said.status == 2
    assert [field for _, field in said.problems] == [
        "system.net_volume", "change.parameter", "change.target",
        "additive.chemical", "additive.dissolved", "additive.made_up_to", "pump.flow",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "allowed"),
    [('"soup"', "“soup” is not a kind"), ("5", "not a kind"), (None, "missing"), ("[]", "not a kind")],
)
def test_unknown_kind_names_the_kinds(tmp_path: Path, kind: str | None, allowed: str) -> None:
    said = ask(tmp_path, put(GOOD, kind=kind))
    assert said.status == 2
    assert [field for _, field in said.problems] == ["kind"]
    assert allowed in said.err
    assert "correction, convert, stock, chemistry" in said.err


def test_unknown_table_and_field_name_what_is_allowed(tmp_path: Path) -> None:
    text = GOOD.replace("flow = ", "flaw = ") + "\n[pumps]\nflow = 1\n"
    said = ask(tmp_path, text)
    assert said.status == 2
    assert (line_with(text, "[pumps]"), "pumps") in said.problems
    assert (line_with(text, "flaw"), "pump.flaw") in said.problems
    assert "Allowed are: flow, smallest_dose, step, largest_share, doses_per_day." in said.err
    assert "Allowed are: kind, now, system, change, additive, pump." in said.err


@pytest.mark.parametrize("table", ["[[pump]]", "pump = 5\n[change.x]"])
def test_what_should_be_a_table(tmp_path: Path, table: str) -> None:
    text = put(GOOD.replace("[pump]", table), flow=None, smallest_dose=None, step=None, largest_share=None)
    said = ask(tmp_path, put(text, doses_per_day=None))
    assert said.status == 2
    assert said.err.strip()


LABEL = '{ dose = "5 mL", water = "100 L", raises = "1 dKH" }'


def test_label_alone_is_answered(tmp_path: Path) -> None:
    assert ask(tmp_path, on_label(GOOD)).status == 0


def test_label_beside_a_chemical_and_beside_what_belongs_to_one(tmp_path: Path) -> None:
    text = put(GOOD, label=LABEL)
    said = ask(tmp_path, text)
    assert said.problems == [(line_with(text, "label"), "additive.label")]
    assert "stands beside chemical, dissolved, made_up_to, purity" in said.err
    said = ask(tmp_path, put(text, chemical=None, made_up_to=None, purity=None))
    assert said.status == 2, "grams that nobody reckons with would be dropped silently"
    assert "stands beside dissolved" in said.err


@pytest.mark.parametrize(
    ("label", "path", "words"),
    [
        ('"5 mL per 100 L"', "additive.label", "dose, water, raises"),
        ("[]", "additive.label", "dose, water, raises"),
        ('{ dose = "5 mL", water = "100 L" }', "additive.label.raises", 'raises = "1 dKH"'),
        ('{ dose = "", water = "100 L", raises = "1 dKH" }', "additive.label.dose", 'dose = "5 mL"'),
        ('{ dose = 5, water = "100 L", raises = "1 dKH" }', "additive.label.dose", "in quotes"),
        (
            '{ dose = "5 mL", water = "100 L", raises = "1 dKH", name = "x" }',
            "additive.label.name",
            "dose, water, raises",
        ),
    ],
)
def test_label_with_wrong_fields(tmp_path: Path, label: str, path: str, words: str) -> None:
    text = on_label(GOOD, label)
    said = ask(tmp_path, text)
    assert said.status == 2
    assert said.problems == [(line_with(text, "label"), path)]
    assert words in said.err


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"kind = ", "is not TOML"),
        (b'kind = "correction"\nkind = "correction"', "is not TOML"),
        (b"\xff\xfek\x00", "is not UTF-8"),
        (b"a = " + b"[" * 5000, "is not TOML"),
        (b"a = " + b"9" * 5000, "is not TOML"),
        (b"", "the kind is missing"),
        (b"\x00", "is not TOML"),
    ],
)
def test_content_that_is_no_toml(tmp_path: Path, content: bytes, words: str) -> None:
    said = ask(tmp_path, content)
    assert said.status == 2
    assert said.body["status"] == "unreadable"
    assert words in said.err


def test_toml_error_carries_its_line(tmp_path: Path) -> None:
    said = ask(tmp_path, GOOD.replace('"340 L"', '"340 L', 1))
    assert said.problems == [(line_with(GOOD, "net_volume"), "")]


def test_missing_file_and_directory(tmp_path: Path) -> None:
    for place in (tmp_path / "none.toml", tmp_path):
        said = run("answer", str(place))
        assert said.status == 2
        assert said.body["status"] == "unreadable"
        assert f"{place}: cannot be read: " in said.err


def test_byte_order_mark_and_windows_line_ends_are_read(tmp_path: Path) -> None:
    assert ask(tmp_path, b"\xef\xbb\xbf" + GOOD.replace("\n", "\r\n").encode()).out == ask(tmp_path, GOOD).out


@pytest.mark.parametrize(
    ("field", "value", "path"),
    [
        ("value", "1", "value"),
        ("to", "1.5", "to"),
        ("parameter", "[]", "parameter"),
        ("to", None, "to"),
        ("value", '""', "value"),
    ],
)
def test_conversion_of_the_wrong_shape(tmp_path: Path, field: str, value: str | None, path: str) -> None:
    said = ask(tmp_path, put(CONVERT, **{field: value}))
    assert said.status == 2
    assert [found for _, found in said.problems] == [path]


def test_conversion_with_a_table_of_a_correction(tmp_path: Path) -> None:
    said = ask(tmp_path, CONVERT + '\n[pump]\nflow = "1 mL/min"\n')
    assert said.status == 2
    assert "Allowed are: value, to, parameter, salinity, temperature." in said.err
