"""Calibrating a pump: an example by hand, the verdict, and what follows from the flow."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from scipy import stats

from evenwater.engine.calibration import Delivered, Line
from evenwater.engine.calibration_runs import Run
from evenwater.engine.calibration_uncertainty import known, needed
from evenwater.engine.quantities import Water
from evenwater.engine.student import quantile
from evenwater.engine.weighing import HalfWidths, z_uncertainty
from tests.engine.calibrations import CONDITIONS, MEANS, NOW, answered, before, read_off, refusal, weighed


def codes(found: object, what: str) -> list[str]:
    return [reason.code for reason in getattr(found, what)]


def test_worked_example_by_hand() -> None:
    """Three runs of a minute, weighed at 22 degC.

    Water of 0.997770 g/mL (ISO 4064), air of (0.34848 * 1013 - 0.009 * 50 * exp(0.061 * 22)) / 295.15 = 1.19020 kg/m3:
    Z = (1 - 0.0011902 / 8) / (0.997770 - 0.0011902) = 1.00328. Mean of 22.71, 22.88, 22.64 g: 22.74333, standard deviation 0.123423.
    """
    found = answered(weighed(22.71, 22.88, 22.64), setting=24.0, dose=20.0)
    assert MEANS.z_ml_per_g == pytest.approx(1.00328, abs=5e-6)
    group, how_well = found.chosen.summary, found.chosen.known
    assert group.mean == pytest.approx(22.74333 * 1.00328, abs=2e-4)
    assert group.sd == pytest.approx(0.123423 * 1.00328, abs=1e-6)
    assert group.cv == pytest.approx(0.123423 / 22.74333, rel=1e-5)
    # 4.30265 for two degrees of freedom; 0.01 g read twice, 0.02 g and 0.3 s of 60 s anywhere within. The air and the
    # temperature add less than a thousandth of that.
    random = 4.30265 * 0.123423 * 1.00328 / math.sqrt(3.0)
    scale = 1.00328 * math.hypot(0.01 / math.sqrt(6.0), 0.02 / math.sqrt(3.0))
    watch = 22.8179 * 0.3 / 60.0 / math.sqrt(3.0)
    assert how_well.half_width == pytest.approx(math.hypot(random, 1.96 * scale, 1.96 * watch), rel=2e-4)
    assert how_well.standard == pytest.approx(math.hypot(random / 4.30265, scale, watch), rel=2e-4)
    assert math.fsum(how_well.shares.values()) == pytest.approx(1.0)
    assert found.bias is not None
    assert found.bias.value == pytest.approx(22.8179 / 24.0 - 1.0, abs=1e-5)
    assert (found.bias.state, found.passed, found.repeat) == ("within", True, ())
    assert found.dose_seconds == pytest.approx(60.0 * 20.0 / 22.8179, rel=1e-5)


@pytest.mark.parametrize(
    ("freedom", "published"), [(1, 12.71), (2, 4.30), (3, 3.18), (4, 2.78), (9, 2.26), (20, 2.09), (100, 1.984)]
)
def test_students_factor_is_that_of_the_guide(freedom: int, published: float) -> None:
    """JCGM 100:2008, table G.2, 95 %."""
    assert quantile(0.95, freedom) == pytest.approx(published, abs=5e-3)
    assert quantile(0.95, freedom) == pytest.approx(stats.t.ppf(0.975, freedom), rel=1e-10)


def test_cylinder_that_warms_up_holds_more() -> None:
    warm = replace(MEANS, material="plastic", conditions=replace(CONDITIONS, liquid=Water(0.0, 30.0)))
    plain = answered(read_off(24.0, 24.0, 24.0)).chosen.summary.mean
    assert answered(read_off(24.0, 24.0, 24.0), warm).chosen.summary.mean == pytest.approx(24.0 * (1.0 + 4.5e-4 * 10.0))
    assert plain == pytest.approx(24.0 * (1.0 + 9.9e-6 * 2.0))


def test_seawater_is_denser_so_a_gram_of_it_is_less() -> None:
    salt = replace(MEANS, conditions=replace(CONDITIONS, liquid=Water(35.0, 22.0)))
    ratio = (
        answered(weighed(24.0, 24.0, 24.0), salt).chosen.summary.mean
        / answered(weighed(24.0, 24.0, 24.0)).chosen.summary.mean
    )
    # 1024.2 against 997.8 kg/m3, and the air carries as much of both.
    assert ratio == pytest.approx((997.774 - 1.19) / (1024.22 - 1.19), abs=2e-5)


def test_z_is_less_certain_where_the_temperature_is_a_guess() -> None:
    said, guessed = (z_uncertainty(CONDITIONS, HalfWidths(off, 0.0, 1.0, 5.0, 10.0)) for off in (0.5, 5.0))
    # 0.00022 per degree at 22 degC.
    assert guessed == pytest.approx(5.0 * 2.25e-4 / math.sqrt(3.0), rel=0.05)
    assert guessed > 5.0 * said


def test_fewer_than_three_runs_are_repeated() -> None:
    assert codes(answered(read_off(24.0)), "repeat") == ["runs_too_few"]
    assert codes(answered(read_off(24.0, 24.2)), "repeat") == ["runs_too_few"]
    assert answered(read_off(24.0, 24.2, 24.1)).passed


@pytest.mark.parametrize(("low", "passed"), [(22.05, True), (21.8, False)])
def test_spread_above_five_per_cent_is_repeated(low: float, passed: bool) -> None:
    """24.0, 24.0 and x have a standard deviation of (24 - x) / sqrt(3)."""
    found = answered(read_off(24.0, 24.0, low))
    assert found.chosen.summary.cv == pytest.approx((24.0 - low) / math.sqrt(3.0) / ((48.0 + low) / 3.0), rel=1e-9)
    assert found.passed == passed
    assert codes(found, "repeat") == ([] if passed else ["spread_too_wide"])


def test_run_of_another_length_is_named_and_not_counted() -> None:
    found = answered((*read_off(24.0, 24.2, 24.1), *read_off(1.7, seconds=5.0)))
    (reason,) = found.repeat
    assert (reason.code, reason.path, reason.params["runs"]) == ("run_of_other_length", "run.4.seconds", (4,))
    assert found.chosen.summary.indices == (0, 1, 2)
    assert found.chosen.summary.mean == pytest.approx(24.1, rel=1e-4)


def test_short_doses_are_held_against_long_runs() -> None:
    """Twenty doses of 5 s collected three times: 36, 36.4 and 35.6 mL in 100 s each, 10 % below the long runs."""
    runs = (*read_off(24.0, 24.2, 23.8), *read_off(36.0, 36.4, 35.6, seconds=5.0, doses=20))
    exact = replace(MEANS, timing=0.01)
    found = answered(runs, exact, dose=1.8)
    assert found.passed
    assert found.chosen.summary.seconds == 5.0
    assert found.chosen.summary.mean == pytest.approx(21.6, rel=1e-4)
    assert found.shorter is not None
    assert found.shorter.difference == pytest.approx(-0.1, abs=1e-9)
    assert 0.0 < found.shorter.half_width < 0.06
    assert codes(found, "remarks") == ["short_doses_differ"]
    assert answered(runs, exact, dose=24.0).chosen.summary.seconds == 60.0
    # Half a second too long each time is a tenth of such a dose: then nothing is said of the difference.
    assert codes(answered(runs, replace(MEANS, timing=0.5), dose=1.8), "remarks") == ["flow_loosely_known"]


def test_dose_unlike_the_runs_is_remarked_on() -> None:
    assert codes(answered(read_off(24.0, 24.2, 24.1), dose=4.0), "remarks") == ["dose_not_calibrated"]
    assert codes(answered(read_off(24.0, 24.2, 24.1), dose=20.0), "remarks") == []


@pytest.mark.parametrize(
    ("setting", "state", "said"),
    [(24.0, "within", []), (25.2, "within", []), (25.6, "amber", ["flow_off_amber"]), (27.0, "red", ["flow_off_red"]), (21.5, "red", ["flow_off_red"])],
)  # fmt: skip
def test_flow_off_the_setting(setting: float, state: str, said: list[str]) -> None:
    found = answered(read_off(24.0, 24.0, 24.0), setting=setting)
    assert found.bias is not None
    assert found.bias.state == state
    assert found.bias.low < found.bias.value < found.bias.high
    assert codes(found, "remarks") == said
    assert found.passed, "the calibration is good, whatever the pump is"


@pytest.mark.parametrize("is_weighed", [True, False])
@pytest.mark.parametrize("wanted", [0.01, 0.03, 0.005])
def test_run_of_the_length_said_is_just_long_enough(is_weighed: bool, wanted: float) -> None:
    long = needed(MEANS, 24.0, wanted, is_weighed)
    assert long is not None
    assert long.volume_ml == pytest.approx(24.0 * long.seconds / 60.0)
    mass = long.volume_ml / MEANS.z_ml_per_g
    run = Run(long.seconds, mass_g=mass) if is_weighed else Run(long.seconds, volume_ml=long.volume_ml / MEANS.cylinder)
    found = answered((run, run, run))
    assert known(found.question.runs, MEANS, found.chosen.summary).instruments / 24.0 == pytest.approx(wanted, rel=1e-6)


def test_no_run_is_long_enough_where_the_density_is_a_guess() -> None:
    vague = replace(MEANS, off=replace(MEANS.off, water_c=5.0))
    assert needed(vague, 24.0, 0.001, weighed=True) is None
    assert needed(vague, 24.0, 0.01, weighed=True) is not None


def test_coarse_cylinder_is_told_to_run_longer() -> None:
    """5 mL lines with 10 mL: 1.96 * 5 / sqrt(12) / 10 = 28 %."""
    coarse = replace(MEANS, graduation=5.0)
    found = answered(read_off(10.0, 10.0, 10.0, seconds=25.0), coarse)
    (reason,) = found.repeat
    assert reason.code == "measured_too_coarsely"
    assert reason.params["share"] == pytest.approx(0.283, abs=5e-3)
    longer = float(str(reason.params["seconds"]))
    assert answered(read_off(*[24.0 * (longer + 1.0) / 60.0] * 3, seconds=longer + 1.0), coarse).passed


def test_nothing_delivered_is_refused_and_an_empty_run_named() -> None:
    assert refusal(read_off(0.0, 0.0, 0.0)) == [("nothing_delivered", "run.1")]
    assert refusal(()) == [("no_runs", "run")]
    found = answered(read_off(24.0, 0.0, 24.0, 24.1))
    assert codes(found, "repeat")[0] == "run_without_liquid"
    assert found.repeat[0].params["runs"] == (2,)


@pytest.mark.parametrize(
    "fields",
    [
        {"setting": math.nan},
        {"dose": -1.0},
        {"hours": math.inf},
        {"line": Line(0.0, 2000.0)},
        {"record": Delivered(0.5, (-1.0,))},
    ],
)
def test_figures_that_are_none_are_refused(fields: dict[str, object]) -> None:
    assert refusal(read_off(24.0, 24.0, 24.0), **fields) == [("flow_unusable", "run")]
    assert refusal((Run(0.0, volume_ml=1.0),)) == refusal((Run(60.0, mass_g=math.nan),)) == [("flow_unusable", "run")]


def test_line_holds_a_quarter_of_pi_bore_squared_times_length() -> None:
    """4 mm and 2 m: 25.13 mL, which 24 mL/min fill in 62.8 s."""
    found = answered(read_off(24.0, 24.0, 24.0), line=Line(4.0, 2000.0)).priming
    assert found is not None
    assert found.dead_volume_ml == pytest.approx(25.1327, abs=1e-4)
    assert found.seconds == pytest.approx(60.0 * 25.1327 / 24.0, rel=1e-4)
    assert found.seconds < found.at_most_seconds < 1.05 * found.seconds


def test_record_gives_the_worst_error_in_each_window() -> None:
    """Half-minutes of 12 mL but for one of 6: a minute at worst 25 % less, five minutes 5 %."""
    amounts = (*[12.0] * 20, 6.0, *[12.0] * 9)
    curve = answered(read_off(24.0, 24.0, 24.0), setting=24.0, record=Delivered(0.5, amounts)).trumpet
    assert [m.window_min for m in curve] == [1.0, 2.0, 5.0, 11.0]
    assert [m.low for m in curve] == pytest.approx([-0.25, -0.125, -0.05, -0.25 / 11.0])
    # Every window of eleven minutes holds the odd one.
    assert [m.high for m in curve] == pytest.approx([0.0, 0.0, 0.0, -0.25 / 11.0], abs=1e-12)


def test_past_of_the_pump_comes_with_the_answer() -> None:
    earlier = before((0.0, 25.0), (200.0, 24.5), hours=400.0)
    found = answered(read_off(24.0, 24.0, 24.0), setting=25.0, hours=400.0, earlier=earlier)
    assert found.wear is not None
    assert found.wear.expected == pytest.approx(24.0, abs=0.02)
    assert found.head is not None
    assert found.head.left == 250.0
    assert found.head.at is not None
    # Ten hours a day, as between the calibrations.
    assert (found.head.at - NOW).days == 25
    assert refusal(read_off(24.0), hours=100.0, earlier=before((200.0, 24.0), hours=400.0)) == [
        ("hours_run_back", "pump.hours")
    ]


def test_head_used_up_is_remarked_on() -> None:
    found = answered(read_off(24.0, 24.0, 24.0), hours=700.0)
    assert codes(found, "remarks") == ["head_used_up"]
    assert found.head is not None
    assert (found.head.left, found.head.at) == (0.0, NOW)


def test_three_runs_that_scatter_by_less_than_five_per_cent_may_tell_the_flow_loosely() -> None:
    """The mean of three runs is known to t / sqrt(3) of their scatter, and t is 4.303 at two degrees of freedom (JCGM 100, table G.2)."""
    found = answered(read_off(24.0, 24.0, 22.05))
    assert found.passed
    scatter = (24.0 - 22.05) / math.sqrt(3.0)
    assert found.chosen.known.half_width == pytest.approx(4.303 * scatter / math.sqrt(3.0), rel=0.02)
    assert codes(found, "remarks") == ["flow_loosely_known"]
    assert codes(answered(read_off(24.0, 24.2, 24.1)), "remarks") == []
