"""The figures of parameters.toml agree with each other, whatever a keeper's practice is."""

from __future__ import annotations

import tomllib

import pytest

from evenwater.assets import resources
from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import to_canonical
from evenwater.engine.units import KINDS
from tests.published.rows import catalogue

PARAMETERS = tuple(catalogue().parameters.values())
FIGURES = (
    "kind",
    "display_unit",
    "natural",
    "range_kept",
    "target_hard",
    "plausible",
    "rise_per_day",
    "rise_per_dose",
    "kit_accuracy",
    "stale_days",
    "source",
)

each = pytest.mark.parametrize("parameter", PARAMETERS, ids=lambda p: p.name)


def _plausible(name: str, value: float, unit: str) -> bool:
    """Return whether a reading in some unit would be taken for what it says."""
    parameter = catalogue().parameters[name]
    low, high = (parameter.canonical(v) for v in parameter.plausible)
    return low <= to_canonical(value, parameter.kind, unit) <= high


def test_all_nine_parameters_are_there_in_the_order_of_the_sheet() -> None:
    assert [p.name for p in PARAMETERS] == [
        "alkalinity",
        "calcium",
        "magnesium",
        "potassium",
        "strontium",
        "iodide",
        "nitrate",
        "phosphate",
        "salinity",
    ]


def test_every_entry_has_every_field_and_no_other() -> None:
    file = tomllib.loads((resources() / "parameters.toml").read_text(encoding="utf-8"))
    for name, entry in file.items():
        assert tuple(entry) == FIGURES, name
        assert entry["source"], name


@each
def test_the_display_unit_is_one_of_its_kind(parameter: Parameter) -> None:
    assert parameter.display_unit in [unit.id for unit in KINDS[parameter.kind].units]


@each
def test_kept_range_lies_inside_the_hard_targets_inside_the_plausible_window(parameter: Parameter) -> None:
    kept, hard, plausible = parameter.range_kept, parameter.target_hard, parameter.plausible
    assert 0.0 <= plausible[0] <= hard[0] < kept[0] < kept[1] < hard[1] < plausible[1]


@each
def test_natural_seawater_is_neither_refused_nor_out_of_reach(parameter: Parameter) -> None:
    assert parameter.target_hard[0] <= parameter.natural <= parameter.target_hard[1]


@each
def test_recommended_rises_lie_below_hard_ones(parameter: Parameter) -> None:
    assert 0.0 < parameter.rise_recommended < parameter.rise_hard
    assert 0.0 < parameter.dose_rise_recommended < parameter.dose_rise_hard


@each
def test_one_dose_may_bring_a_quarter_and_at_most_half_of_the_hard_rise_per_day(parameter: Parameter) -> None:
    assert parameter.dose_rise_recommended == pytest.approx(parameter.rise_hard / 4.0)
    assert parameter.dose_rise_hard == pytest.approx(parameter.rise_hard / 2.0)


@each
def test_a_recommended_day_at_24_doses_never_passes_the_rise_of_one_dose(parameter: Parameter) -> None:
    """Defaults never refuse what the daily limits allow at 24 doses a day."""
    assert parameter.rise_hard / 24.0 < parameter.dose_rise_recommended


@each
def test_one_day_at_the_hard_rise_stays_inside_the_kept_range_width(parameter: Parameter) -> None:
    """A pace that crosses the whole kept range within a day would be no pace at all."""
    assert parameter.rise_hard < parameter.range_kept[1] - parameter.range_kept[0]


@each
def test_a_kit_can_tell_the_ends_of_the_kept_range_apart(parameter: Parameter) -> None:
    assert 0.0 < parameter.kit_accuracy < parameter.range_kept[1] - parameter.range_kept[0]


@each
def test_readings_of_what_moves_fast_grow_stale_first(parameter: Parameter) -> None:
    alkalinity = catalogue().parameters["alkalinity"]
    assert alkalinity.stale_days <= parameter.stale_days <= 14.0


@pytest.mark.parametrize("number", [7.0, 8.0, 9.5, 11.0])
def test_usual_degrees_typed_as_milliequivalents_are_not_plausible(number: float) -> None:
    assert _plausible("alkalinity", number, "dKH")
    assert not _plausible("alkalinity", number, "meq/L")


@pytest.mark.parametrize("number", [2.5, 2.9, 3.4, 3.9])
def test_usual_milliequivalents_typed_as_degrees_are_not_plausible(number: float) -> None:
    assert _plausible("alkalinity", number, "meq/L")
    assert not _plausible("alkalinity", number, "dKH")


@pytest.mark.parametrize("number", [125.0, 140.0, 160.0, 195.0])
@pytest.mark.parametrize("unit", ["dKH", "meq/L"])
def test_usual_ppm_as_calcium_carbonate_typed_on_another_scale_is_not_plausible(number: float, unit: str) -> None:
    assert _plausible("alkalinity", number, "ppm as CaCO3")
    assert not _plausible("alkalinity", number, unit)


@pytest.mark.parametrize(
    ("name", "number"),
    [("calcium", 42.0), ("calcium", 4200.0), ("magnesium", 130.0), ("potassium", 40.0), ("salinity", 1.026)],
)
def test_a_slipped_decimal_or_a_specific_gravity_is_not_plausible(name: str, number: float) -> None:
    parameter = catalogue().parameters[name]
    assert not _plausible(name, number, parameter.display_unit)
