"""The Pumps sheet without its widgets: what is typed becomes a flow, its verdict, its drift, and what is due.

The figures are reckoned here anew: JCGM 100:2008 for the intervals, a straight line by hand for the drift.
"""

from __future__ import annotations

import json
import math
from datetime import timedelta

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import pump_cards, pump_drift, pump_duties, pump_sheet, pump_use, pump_view, room_words
from evenwater.screens.pump_use import Corrected
from tests.screens.asked import catalogue
from tests.screens.lint import NBSP, faults, strings
from tests.screens.pumps import NOW, PUMP, calibration, flowing, pump, read, weighed

# Student's t for two degrees of freedom, two-sided 95 % (any table).
T2 = 4.303
LINE = {"line_bore": Typed("3", "mm"), "line_length": Typed("1.8", "m")}


def plain(text: str) -> str:
    return text.replace(NBSP, " ")


def given(lines: tuple[object, ...], what: str) -> list[str]:
    """Return what the lines of a name give."""
    return [plain(line.gives) for line in lines if plain(line.what) == what]  # type: ignore[attr-defined]


# A flow


def test_the_flow_and_its_interval_are_those_of_the_runs() -> None:
    found = read(calibration(["30.1", "29.6", "30.4"]))
    assert found.answer is not None
    flows = [60.0 * ml / 75.0 for ml in (30.1, 29.6, 30.4)]
    mean = sum(flows) / 3.0
    sd = math.sqrt(sum((f - mean) ** 2 for f in flows) / 2.0)
    reading, timing = 60.0 / 75.0 * 0.5 / math.sqrt(12.0), mean * 0.3 / math.sqrt(3.0) / 75.0
    half = math.hypot(T2 * sd / math.sqrt(3.0), 1.96 * reading, 1.96 * timing)
    assert found.answer.chosen.summary.mean == pytest.approx(mean, rel=1e-9)
    assert found.answer.chosen.known.half_width == pytest.approx(half, rel=2e-3)
    view = pump_view.answer(found, pump_drift.drift(PUMP, [found], 0.0, NOW), newest=True)
    assert (view.state, view.figure, view.figure_unit) == ("answered", "24", "mL per min")
    assert view.second == "Good enough to dose by"
    assert {bar.code for bar in view.bars} == {"spread", "bias"}


def test_an_empty_time_is_that_of_the_run_before() -> None:
    made = calibration(["30", "", "12"], run_3_seconds=Typed("30", "s"), run_4_reads=Typed("12.1", "mL"))
    raw, numbers = pump_sheet.raw_calibration(PUMP, made, None)
    assert numbers == (1, 3, 4)
    assert [row["seconds"] for row in raw["run"]] == [Typed("75", "s"), Typed("30", "s"), Typed("30", "s")]


def test_a_scale_weighs_and_knows_its_water() -> None:
    found = read(weighed(["24.02", "23.95", "24.11"]))
    assert found.answer is not None
    # Water of 22 degrees in air of 1013 hPa: 1.0033 mL per g (ISO 8655-6, table of Z factors).
    assert found.answer.chosen.summary.mean == pytest.approx(24.0267 * 1.0033, rel=1e-4)
    raw, _ = pump_sheet.raw_calibration(PUMP, weighed(["24.02"]), None)
    assert "mass" in raw["run"][0]
    assert raw["scale"] == {"readability": Typed("0.01", "g")}


def test_what_is_missing_or_wrong_stands_at_its_field() -> None:
    missing = read({"run_2_reads": Typed("30", "mL"), "method": Typed("cylinder")})
    assert [(m.path, m.text) for m in missing.messages] == [
        ("calibration.run_2_seconds", "Fill in how long run 2 lasted.")
    ]
    assert not missing.wrong
    wrong = read(calibration(["30", "3o", "30"], water_temperature=Typed("95", "degC")), pump(flow=Typed("fast")))
    assert {m.path for m in wrong.messages} == {
        "pump.flow", "calibration.run_2_reads", "calibration.water_temperature",
    }  # fmt: skip
    assert wrong.wrong
    nothing = read(calibration([]))
    assert nothing.messages[0].code == "no_runs"
    assert not nothing.wrong
    assert pump_view.answer(nothing, pump_drift.drift(PUMP, [], 0.0, NOW), newest=False).state == "empty"


def test_runs_keep_their_numbers_where_one_was_left_empty() -> None:
    found = read(calibration(["30", "", "0", "30.1", "29.9"]))
    repeat, _ = pump_sheet.sentences(found, newest=True)
    assert any("Run 3 brought nothing" in sentence for sentence in repeat)


def test_three_runs_are_shown_and_one_more_while_they_are_to_be_repeated() -> None:
    assert pump_sheet.runs_shown(read(calibration(["30"]))) == 3
    assert pump_sheet.runs_shown(read(calibration(["30", "30.1", "29.9"]))) == 3
    assert pump_sheet.runs_shown(read(calibration(["30", "25", "35"]))) == 4
    assert pump_sheet.runs_shown(read(calibration(["30", "25", "35", "20", "45"]))) == 5
    assert pump_sheet.runs_shown(read(calibration(["30", "30.1", "29.9", "30"]))) == 4


def test_a_half_typed_amount_of_three_digits_is_no_thousand() -> None:
    found = read(calibration(["30.125", "30.075", "30.250"]))
    assert found.answer is not None, found.messages
    assert found.answer.chosen.summary.mean == pytest.approx(60.0 * 30.15 / 75.0)


@pytest.mark.parametrize("text", ["soon", "2026-11-20", "0001-01-01T00:00:00+23:59", "9999-12-31T23:59:59-23:59", ""])
def test_what_is_no_instant_is_no_time_of_a_calibration(text: str) -> None:
    found = read(calibration(["30", "30.1", "29.9"], hours="9", at=Typed(text)))
    assert found.at is None
    assert pump_sheet.row(found, NOW).words.startswith("no time yet")
    assert pump_drift.drift(PUMP, [found], 0.0, NOW).points == ()


# How long to run


def test_the_proposed_time_is_long_enough_and_no_longer_than_it_must_be() -> None:
    for method in (calibration([]), weighed([])):
        empty = read({**method, "run_1_seconds": Typed("")})
        lasts = pump_sheet.proposed(empty)
        assert lasts is not None
        made = {**method, "run_1_seconds": Typed(f"{lasts:.0f}", "s")}
        unit = "g" if method["method"].text == "scale" else "mL"
        made |= {f"run_{n}_reads": Typed(f"{24.0 * lasts / 60.0:.4f}", unit) for n in (1, 2, 3)}
        found = read(made)
        assert found.answer is not None
        assert found.answer.chosen.known.instruments / found.answer.chosen.summary.mean <= 0.01
        short = {**made, "run_1_seconds": Typed(f"{0.8 * lasts:.1f}", "s")}
        short |= {f"run_{n}_reads": Typed(f"{24.0 * 0.8 * lasts / 60.0:.4f}", unit) for n in (1, 2, 3)}
        less = read(short)
        assert less.answer is not None
        assert less.answer.chosen.known.instruments / less.answer.chosen.summary.mean > 0.0095


def test_nothing_is_proposed_where_the_flow_is_not_known() -> None:
    empty = read(calibration([]), pump(flow=Typed("")))
    assert pump_sheet.proposed(empty) is None
    assert pump_view.proposal(empty) == ""
    untimed = read(calibration([], run_1_seconds=Typed("")), pump(flow=Typed("")))
    assert "the same time" in pump_view.guide(untimed)


def test_the_guide_keeps_the_time_that_the_first_run_took() -> None:
    assert "Let it run 1 min 15 s " in plain(pump_view.guide(read(calibration(["30.1"]))))
    assert "weigh each" in plain(pump_view.guide(read(weighed([])))).lower()


# The doses in use


def used(place: str = "North frag bay", daily_use: str = "0.9") -> Corrected:
    return Corrected(
        place,
        "alkalinity",
        {"net_volume": Typed("340", "L"), "salinity": Typed("35", "ppt"), "temperature": Typed("25", "degC")},
        {
            "measured": Typed("6.8", "dKH"),
            "measured_at": Typed((NOW - timedelta(hours=1)).isoformat()),
            "target": Typed("8.4", "dKH"),
            **({"daily_use": Typed(daily_use, "dKH per day")} if daily_use else {}),
        },
        {
            "chemical": Typed("sodium carbonate anhydrous"),
            "dissolved": Typed("106", "g"),
            "made_up_to": Typed("1", "L"),
        },
        PUMP,
    )


def test_a_dose_in_use_is_what_keeps_the_value() -> None:
    (found,) = pump_use.uses([used()], catalogue(), NOW)
    # 0.9 dKH (0.357 meq per L each, 50.04 g of calcium carbonate) in 340 L, at 2 meq per mL, in 24 doses.
    needed = 0.9 * 0.35692 * 340.0 / 2.0001
    assert found.dose_ml == pytest.approx(math.floor(needed / 24.0 * 10.0) / 10.0)
    assert (found.per_day, found.place) == (24, "North frag bay")
    assert pump_use.hours_per_day([found]) == pytest.approx(24.0 * 60.0 * found.dose_ml / 24.0 / 3600.0)


def test_where_no_use_is_known_the_doses_of_the_correction_count() -> None:
    (kept,), (raised,) = (pump_use.uses([used(daily_use=text)], catalogue(), NOW) for text in ("0.9", ""))
    assert raised.dose_ml > 0.0
    assert raised.dose_ml != kept.dose_ml
    assert pump_use.smallest([kept, raised]) is min((kept, raised), key=lambda use: use.dose_ml)
    assert pump_use.smallest([]) is None


def test_what_cannot_be_reckoned_is_no_use() -> None:
    broken = used()
    assert pump_use.uses([Corrected("x", "alkalinity", {}, broken.correction, {}, PUMP)], catalogue(), NOW) == ()


# Drift


def series(flows: dict[float, float], days: float = 100.0) -> list[pump_sheet.Measured]:
    """Return calibrations by their hours, evenly over so many days until today."""
    last = max(flows)
    return [flowing(flow, days * (1.0 - at / last), at, f"p:{at}") for at, flow in flows.items()]


def test_the_line_goes_through_the_calibrations() -> None:
    found = series({0.0: 24.6, 100.0: 24.0, 200.0: 23.4})
    wears = pump_drift.drift(PUMP, found, 0.0, NOW)
    assert wears.wear is not None
    assert wears.hours == pytest.approx(200.0)
    assert wears.wear.expected == pytest.approx(23.4, rel=1e-6)
    assert wears.wear.drift == pytest.approx(-0.6 / 24.0, rel=1e-6)
    five = wears.wear.leaves[0]
    # 24 less 5 % is 22.8, and 0.006 mL per min go in an hour; two hours are run in a day.
    assert five.hours == pytest.approx((23.4 - 22.8) / 0.006, rel=1e-6)
    assert five.at is not None
    assert five.at - NOW == pytest.approx(timedelta(days=50), abs=timedelta(minutes=1))
    assert five.earliest_hours < five.hours
    view = pump_drift.view(wears, PUMP, pump_drift.dots(found), "p:100.0")
    assert view is not None
    assert view.chosen == 1
    assert view.counts == (True, True, True)
    assert view.slope == pytest.approx(-0.006, rel=1e-6)
    assert "3 calibrations" in view.spoken
    assert "Expected today" in view.spoken
    assert pump_view.expected_flow(wears) == "23.4"


def test_hours_go_on_since_the_newest_calibration() -> None:
    found = [flowing(24.6, 120.0, 0.0, "p:a"), flowing(24.0, 20.0, 200.0, "p:b")]
    wears = pump_drift.drift(PUMP, found, 0.0, NOW)
    assert wears.hours == pytest.approx(240.0)
    assert wears.estimated
    assert "about 240 h" in plain(pump_drift.hours_hint(wears))
    typed = pump_drift.drift(pump(head_hours=Typed("230", "h")), found, 0.0, NOW)
    assert (typed.hours, typed.estimated) == (230.0, False)
    assert typed.head is not None
    assert typed.head.left == pytest.approx(650.0 - 230.0)
    # Hours noted before the newest calibration are of no use any more.
    assert pump_drift.drift(pump(head_hours=Typed("150", "h")), found, 0.0, NOW).hours == pytest.approx(240.0)


def test_an_earlier_head_and_what_is_to_be_repeated_do_not_count() -> None:
    found = [
        flowing(20.0, 200.0, 640.0, "p:old"),
        *series({0.0: 24.6, 200.0: 23.4}),
        read(calibration(["30", "20", "40"], days_ago=1, hours="199"), record="p:bad"),
    ]
    fitted = (NOW - timedelta(days=150)).date().isoformat()
    wears = pump_drift.drift(pump(head_fitted=Typed(fitted)), found, 0.0, NOW)
    assert [point.hours for point in wears.points] == [0.0, 200.0]
    without = pump_drift.drift(PUMP, found, 0.0, NOW)
    assert without.wear is None
    assert "go back" in without.why
    view = pump_drift.view(wears, PUMP, pump_drift.dots(found), "p:bad")
    assert view is not None
    assert sum(view.counts) == 2
    assert pump_drift.point_words(view, view.counts.index(False)).endswith("does not count")


def test_one_calibration_shows_no_drift_and_offers_no_flow() -> None:
    wears = pump_drift.drift(PUMP, [flowing(24.0, 3.0, 12.0, "p:a")], 0.5, NOW)
    assert wears.wear is None
    assert "single calibration" in wears.why
    assert wears.hours == pytest.approx(13.5)
    assert pump_view.expected_flow(wears) == ""


def test_a_drift_that_is_not_clear_offers_no_flow() -> None:
    wears = pump_drift.drift(PUMP, series({0.0: 24.02, 10.0: 23.99, 20.0: 24.01}), 0.0, NOW)
    assert wears.wear is not None
    assert pump_view.expected_flow(wears) == ""
    facts = pump_view.facts(read(calibration([])), PUMP, wears, (), NOW)
    assert any("not clear yet" in line.how for line in facts)


# What follows


def test_the_facts_say_how_long_to_prime_and_when_the_head_is_used_up() -> None:
    found = series({0.0: 24.6, 300.0: 23.4, 600.0: 22.8})
    of = pump(**LINE)
    wears = pump_drift.drift(of, found, 0.0, NOW)
    lines = pump_view.facts(found[-1], of, wears, pump_use.uses([used()], catalogue(), NOW), NOW)
    held = math.pi / 4.0 * 9.0 * 1800.0 / 1000.0
    (gives,) = given(lines, "The line holds")
    assert gives.startswith("12.7 mL")
    assert held == pytest.approx(12.72, abs=0.01)
    assert given(lines, "The head") == ["50 h left, Thu 3 Dec 2026"]
    assert given(lines, "A dose in use")[0].startswith("2.2 mL in ")


def test_an_older_calibration_says_nothing_of_the_flow_in_use_now() -> None:
    found = flowing(20.0, 30.0, 10.0, "p:a")
    newest, older = (pump_sheet.sentences(found, newest=n)[1] for n in (True, False))
    assert any("Do not dose on" in sentence for sentence in newest)
    assert older == ()


def test_H25_an_outlet_in_the_water_is_said_first() -> None:
    checks = pump_view.installation(pump(outlet_height=Typed("-3", "cm")))
    assert checks[0].wrong
    assert "air gap" in checks[0].words
    fine = pump_view.installation(pump(outlet_height=Typed("2", "in")))
    assert not fine[0].wrong
    assert "5.1 cm above" in plain(fine[0].words)
    assert not any(check.wrong for check in pump_view.installation(PUMP))


def test_cards_of_another_flow_are_named() -> None:
    def body(flow: str) -> str:
        return json.dumps({"pump": {"flow": flow}})

    assert pump_cards.other_flow(body("24 mL/min"), 24.2) == ""
    assert plain(pump_cards.other_flow(body("24 mL/min"), 23.0)) == "It was made for 24 mL per min."
    assert pump_cards.other_flow(body("fast"), 23.0) == ""
    assert pump_cards.other_flow("[1", 23.0) == ""


def test_every_sentence_of_the_sheet_keeps_the_rules_of_figures() -> None:
    uses = pump_use.uses([used()], catalogue(), NOW)
    sets = [
        series({0.0: 24.6, 100.0: 24.0, 200.0: 23.4}),
        series({0.0: 24.02, 10.0: 23.99}),
        [flowing(20.0, 30.0, 700.0, "p:a")],
        [read(calibration(["30", "25", "35"], hours="3"))],
        [read(weighed(["24.02", "23.95", "24.11"], hours=Typed("9", "h")))],
        [],
    ]
    for of in (PUMP, pump(**LINE, motor=Typed("brushed"), outlet_height=Typed("0", "cm"))):
        for found in sets:
            shown = found[-1] if found else read({}, of)
            wears = pump_drift.drift(of, found, 0.04, NOW)
            view = pump_drift.view(wears, of, pump_drift.dots(found), shown.record_id)
            said = [
                pump_view.answer(shown, wears, newest=True, notes=(pump_view.motor(of),)),
                pump_view.facts(shown, of, wears, uses, NOW),
                tuple(check.words for check in pump_view.installation(of)),
                tuple(pump_sheet.row(each, NOW).words for each in found),
                (pump_view.guide(shown), pump_view.proposal(shown), "" if view is None else view.spoken, wears.why),
            ]
            assert [fault for part in said for text in strings(part) for fault in faults(text)] == []


def test_a_list_of_calibrations_is_newest_first_and_says_the_verdict() -> None:
    found = [
        flowing(24.0, 30.0, 10.0, "p:a"),
        read(calibration(["30", "25", "35"], days_ago=2), record="p:b"),
        read({"at": Typed("soon")}, record="p:c"),
    ]
    rows = [pump_sheet.row(each, NOW).words for each in pump_sheet.in_order(found)]
    assert rows[0].startswith("no time yet")
    assert rows[0].endswith("not complete")
    assert rows[1].startswith("Mon 23 Nov 2026")
    assert rows[1].endswith("repeat")
    assert rows[2].endswith("good")
    newest = pump_sheet.newest(found)
    assert newest is not None
    assert newest.record_id == "p:b"


def test_undo_says_what_it_would_take_back() -> None:
    assert room_words.step_words("Undo", "remove", "calibration", "") == "Undo: removing a calibration"
    assert room_words.step_words("Undo", "edit", "calibration", "run_2_reads") == "Undo: change of what run 2 gave"
    assert room_words.step_words("Undo", "edit", "pump", "flow") == "Undo: change of the pump's flow"
    assert (
        room_words.step_words("Undo", "edit", "pump", "head_fitted") == "Undo: change of the date the head was fitted"
    )


# What is due


def installed(
    calibrations: dict[str, dict[str, Typed]], of: dict[str, Typed] | None = None, per_day: float = 0.0
) -> pump_duties.Installed:
    return pump_duties.Installed("p", "Left head", of or PUMP, calibrations, per_day)


def typed_series(flows: dict[float, float], days: float, ago: float = 0.0) -> dict[str, dict[str, Typed]]:
    last = max(flows)
    return {
        f"p:{at}": calibration(
            [f"{flow * 2.0:.4f}"] * 3, "120", ago + days * (1.0 - at / last), f"{at:.2f}", graduation=Typed("0.1", "mL")
        )
        for at, flow in flows.items()
    }


def test_H22_an_old_calibration_is_due() -> None:
    fresh, old = ({"p:1": calibration(["30", "30.1", "29.9"], days_ago=days)} for days in (59.9, 61.0))
    assert pump_duties.duties([installed(fresh)], NOW) == ()
    (duty,) = pump_duties.duties([installed(old)], NOW)
    assert (duty.urgency, duty.sheet, duty.record, duty.what) == ("due", "Pumps", "p", "Calibrate it")
    assert duty.at == NOW - timedelta(days=1)
    assert faults(duty.why) == []


@pytest.mark.parametrize(("last", "urgency"), [(23.6, None), (22.6, "due"), (21.4, "wrong"), (22.85, "soon")], ids=str)
def test_H22_expected_drift_is_amber_at_5_and_red_at_10(last: float, urgency: str | None) -> None:
    # Of 24 mL per min 5 % less are 22.8, 10 % less are 21.6.
    held = installed(typed_series({0.0: 24.0, 100.0: (24.0 + last) / 2.0, 200.0: last}, days=100.0))
    found = pump_duties.duties([held], NOW)
    assert [duty.urgency for duty in found] == ([] if urgency is None else [urgency])
    assert all(faults(duty.why) == [] and not any(c.isdigit() for c in duty.plain) for duty in found)


def test_H22_a_head_near_its_end_is_told_of_a_fortnight_before() -> None:
    line = {0.0: 24.0, 600.0: 23.9}
    soon = pump_duties.duties([installed(typed_series(line, days=150.0))], NOW)
    assert [(d.urgency, d.what) for d in soon] == [("soon", "Have a new head ready")]
    assert soon[0].at - NOW == pytest.approx(timedelta(days=50.0 / 4.0), abs=timedelta(minutes=5))
    over = pump_duties.duties([installed(typed_series(line, days=30.0), pump(head_hours=Typed("655", "h")))], NOW)
    assert [(d.urgency, d.about) for d in over] == [("due", "head")]
    assert pump_duties.duties([installed(typed_series(line, days=600.0))], NOW) == ()
