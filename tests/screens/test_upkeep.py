"""The Upkeep sheet in words: safe to read, every figure the engine's, every reason with its sentence."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.reasons import Reason
from evenwater.engine.upkeep import UpkeepAnswer, UpkeepQuestion, solve
from evenwater.engine.upkeep_intake import upkeep as read_upkeep
from evenwater.screens import words
from evenwater.screens.upkeep import RULES, UpkeepView, evaluate, item_of, sentence, view
from evenwater.screens.upkeep_lines import SpanLine
from evenwater.screens.upkeep_words import SENTENCES
from tests.engine.asking import NOW, known
from tests.engine.upkeeps import JUGS, MEQ_PER_DKH, NITRATE, POTASSIUM, answered, item, jug, limewater, raw, read
from tests.screens.lint import NBSP, faults, numbers, strings
from tests.screens.test_sentences import check, codes

Raw = dict[str, Any]
BOTTLE = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
EXCHANGE = {"per_day": "3.4 L per day", "calcium": "430 mg/L"}
TWO_PART = (item("alkalinity", step="0.1 mL", measured="8 dKH"), item("calcium", step="0.1 mL", measured="420 mg/L"))
PLANNED = [{"parameter": "alkalinity", "rise_per_day": "0.4 dKH per day", "days_left": "4"}]

QUESTIONS: dict[str, Raw] = {
    "two-part": raw(*TWO_PART),
    "two-part, exchanged": raw(*TWO_PART, exchange=EXCHANGE, planned=PLANNED, system={"evaporation": "4 L per day"}),
    "limewater": raw(item("alkalinity", additive=limewater()), item("calcium", "8 mg/L per day")),
    "bottle": raw(item("alkalinity", additive=BOTTLE), item("calcium"), exchange=EXCHANGE, system={"ph": None}),
    "covered": raw(item("nitrate"), item("potassium", f"{0.5 / NITRATE * POTASSIUM:.12f} mg/L per day")),
    "nine": raw(*(item(name, step=None) for name in JUGS), exchange={"per_day": "1 US gal per day"}),
    "other units": raw(
        item("alkalinity", "45 ppm as CaCO3 per day", measured="140 ppm as CaCO3"), item("calcium", "17 mg/kg per day", measured="410 mg/kg"),
        item("nitrate", "0.1 mg/L as N per day", measured="1 mg/L as N"), item("salinity", "0.1 ppt per day", measured="1.0264 SG 20/20 degC"),
        exchange={"per_day": "9 L per day", "alkalinity": "2.5 meq/L"},
    ),
    "trace": raw(item("iodide", "0.0002 mg/L per day", jug("potassium iodide", 0.1), step=None)),
    "large": raw(item("alkalinity", additive=limewater(900.0), flow="90000 mL/min"), system={"net_volume": "400000 L"}),
    "rounded far": raw(item("alkalinity", step="0.4 mL"), item("calcium", step="0.4 mL"), exchange=EXCHANGE),
}  # fmt: skip
over_everything = pytest.mark.parametrize("name", QUESTIONS)


@cache
def grid() -> dict[str, UpkeepAnswer]:
    return {name: answered(question) for name, question in QUESTIONS.items()}


@cache
def shown(name: str) -> UpkeepView:
    return view(grid()[name], NOW)


def plain(text: str) -> str:
    return text.replace(NBSP, " ")


def test_rows_of_a_two_part() -> None:
    alkalinity, calcium = shown("two-part").rows
    assert plain(alkalinity.per_hour) == "2.2 mL per hour"
    assert plain(alkalinity.dose) == "2.2 mL every hour"
    assert plain(alkalinity.in_24_hours) == "52.8 mL"
    assert (alkalinity.parameter, plain(alkalinity.use), plain(alkalinity.run_time)) == (
        "Alkalinity",
        "0.9 dKH per day",
        "5.5 s",
    )
    assert alkalinity.additive == "sodium CARBonate anhydrous"
    assert (plain(alkalinity.jug), alkalinity.jug_empty) == ("19 days", "Mon 14 Dec 2026")
    assert alkalinity.share == ""
    assert calcium.additive == "calcium CHLORide dihydrate"


def test_the_date_a_jug_is_empty_is_that_of_the_keepers_place() -> None:
    # The last dose is at 07:00 UTC on the 14th, the evening of the 13th in Honolulu.
    here = NOW.astimezone(ZoneInfo("Pacific/Honolulu"))
    assert view(grid()["two-part"], here).rows[0].jug_empty == "Sun 13 Dec 2026"


def test_what_the_others_bring_stands_in_the_row() -> None:
    calcium = shown("limewater").rows[1]
    assert (
        plain(calcium.share) == f"{100.0 * (1.0 - 6.4323 / 8.0):.1f} % of the use; the other additives bring the rest"
    )
    covered = shown("covered").rows[1]
    assert (covered.dose, covered.per_hour, covered.run_time, covered.jug, covered.jug_empty) == ("", "", "", "", "")
    assert (
        "The other additives bring all of the potassium that is used, so nothing is dosed for it."
        in shown("covered").remarks
    )
    assert "Potassium: nothing is dosed." in shown("covered").spoken


def test_of_a_bottle_no_jug_and_no_salt_is_made_up() -> None:
    first = shown("bottle").rows[0]
    assert (first.additive, first.jug) == ("a bottle, by its label", "")
    assert not [line for line in shown("bottle").spans if line.what.startswith(("Salt", "Salinity", "Of it"))]
    assert any("What else is in the bottle for alkalinity" in remark for remark in shown("bottle").remarks)


def spans(name: str) -> dict[tuple[str, bool], SpanLine]:
    return {(line.what, line.how != "without exchange"): line for line in shown(name).spans}


def test_spans_of_a_two_part_in_words() -> None:
    found = spans("two-part")
    salt = found["Salt left behind", False]
    assert [plain(t) for t in (salt.week, salt.month, salt.year)] == ["43.2 g", "188 g", "2.25 kg"]
    salinity = found["Salinity", False]
    assert plain(salinity.month) == "0.516 g per kg more"
    alkalinity = found["Alkalinity", False]
    assert [plain(t) for t in (alkalinity.week, alkalinity.year)] == ["0.203 dKH less", "used up"]
    assert not [key for key in found if key[1]]
    assert ("Sulfate", False) not in found
    assert ("Magnesium", False) not in found


def test_spans_with_exchange_say_where_values_settle() -> None:
    found = spans("two-part, exchanged")
    salt = found["Salt left behind", True]
    assert plain(salt.how) == "with 3.4 L (litres) exchanged a day"
    assert plain(salt.settles) == "at 617 g in the tank"
    assert plain(found["Salinity", True].settles) == "at 36.7 g per kg"
    assert plain(found["Sodium", True].settles) == "714 mg per L more than in the new water"
    assert plain(found["Calcium", True].month).endswith("less")
    assert found["Calcium", False].settles == ""


def test_a_value_that_exchange_cannot_hold_is_used_up() -> None:
    # A tenth of 0.9 dKH a day is missing, and a hundredth of the water comes new, of 6.61 dKH: ten times 0.9 is more.
    found = spans("rounded far")
    assert found["Alkalinity", True].settles == "used up"
    assert plain(found["Calcium", True].settles).startswith("at 3")


def test_a_change_that_no_kit_could_see_is_no_change() -> None:
    for name in ("two-part", "nine", "limewater"):
        for line in shown(name).spans:
            assert {line.week, line.month, line.year} != {"no change"}
    assert ("Alkalinity", False) not in spans("limewater")


def test_lines_say_ratio_rounding_water_and_ph() -> None:
    found = {line.what: plain(line.gives) for line in shown("two-part").lines}
    assert found["Calcium to alkalinity, as used"] == f"{6.4 / 0.9 / MEQ_PER_DKH:.2f} mg per meq"
    assert found["Calcium to alkalinity, as dosed"] == "20.04 mg per meq"
    assert found["Sodium chloride"] == "58.44 g"
    assert found["Left of the use of alkalinity"] == "0.029 dKH per day"
    assert found["Water with the doses of 24 hours"] == "105 mL"
    assert found["pH after the doses of the fullest hour"] == "8.11"
    assert "20.04" in next(line.how for line in shown("two-part").lines if line.what.endswith("as used"))
    assert "Sodium chloride" not in {line.what for line in shown("limewater").lines}
    assert not [line for line in shown("trace").lines if "pH" in line.what]


@over_everything
def test_every_string_is_safe(name: str) -> None:
    found = shown(name)
    for part in (
        found.rows,
        found.bars,
        found.spans,
        found.lines,
        found.remarks,
        found.cautions,
        found.hazards,
        found.spoken,
        RULES,
    ):
        assert not [fault for text in strings(part) for fault in faults(text)]
    doses = [text for row in found.rows for text in (row.dose, row.per_hour, row.in_24_hours)]
    assert not [fault for text in doses for fault in faults(text, dose=True)]


@over_everything
def test_figures_of_the_rows_are_those_of_the_engine(name: str) -> None:
    for row, dose in zip(shown(name).rows, grid()[name].doses, strict=True):
        if dose.dose_ml == 0.0:
            continue
        litres = 1000.0 if "(litres)" in row.dose else 1e6 if "(cubic" in row.dose else 1.0
        assert numbers(row.dose.replace("m3", ""))[0] * litres == pytest.approx(dose.dose_ml, rel=1e-12)
        hourly = numbers(row.per_hour.replace("m3", ""))[0]
        hourly *= 1000.0 if "(litres)" in row.per_hour else 1e6 if "(cubic" in row.per_hour else 1.0
        # Cut to three digits, never rounded up.
        assert hourly <= dose.in_24_hours_ml / 24.0 * (1.0 + 1e-9)
        assert hourly == pytest.approx(dose.in_24_hours_ml / 24.0, rel=0.011)


@over_everything
def test_bars_are_the_limits_of_the_engine(name: str) -> None:
    found = shown(name).bars
    assert [(bar.code, bar.share) for bar in found] == [(limit.code, limit.share) for limit in grid()[name].limits]
    assert len({bar.label for bar in found}) == len(found)
    assert all(bar.text for bar in found)
    assert not any(bar.binds or bar.over for bar in found)


def test_a_bar_names_what_it_is_about() -> None:
    labels = {bar.code: (bar.label, plain(bar.text)) for bar in shown("two-part, exchanged").bars}
    assert labels["pump_share_calcium"] == ("Pump running: calcium", "0.153 of 50 %")
    assert labels["evaporation"] == ("Evaporation", "105 mL of 4 L (litres)")
    assert labels["ph_ceiling"] == ("Highest pH", "8.12 of 8.5")
    assert labels["daily_rise_alkalinity"][0] == "Daily rise: alkalinity"


def test_hazards_and_cautions_stand_once_each() -> None:
    found = shown("two-part")
    assert found.hazards[0] == "Warning, sodium carbonate anhydrous: H319 causes serious eye irritation."
    assert len(set(found.cautions)) == len(found.cautions)
    assert "Wear goggles and gloves." in found.cautions
    assert any("safety sheet" in line for line in shown("bottle").cautions)
    assert found.rules == RULES
    assert "never made up" in found.rules[0]


def test_the_view_says_what_is_missing_wrong_or_refused() -> None:
    empty = evaluate(raw(item("alkalinity", None)), known(), NOW)
    assert (empty.view.state, empty.answer) == ("empty", None)
    assert [(m.path, m.text) for m in empty.view.messages] == [("item.1.daily_use", "Fill in the use per day.")]
    wrong = evaluate(raw(item("alkalinity", "9 buckets per day")), known(), NOW)
    assert (wrong.view.state, wrong.view.messages[0].path) == ("refused", "item.1.daily_use")
    refused = evaluate(raw(item("alkalinity"), item("calcium", step="5 mL")), known(), NOW)
    (message,) = refused.view.messages
    assert (refused.view.state, message.code, message.path) == ("refused", "upkeep_step", "item.2.pump.step")
    assert refused.view.spoken == message.text
    kept = evaluate(QUESTIONS["two-part"], known(), NOW)
    assert kept.view == shown("two-part")
    assert kept.answer == grid()["two-part"]
    nothing = evaluate({"system": {"net_volume": "1 L"}}, known(), NOW)
    assert (nothing.view.state, nothing.view.messages[0].code) == ("empty", "upkeep_nothing_kept")


def test_remarks_that_other_questions_know_say_which_value_they_are_about() -> None:
    found = view(answered(raw(item("magnesium"), item("alkalinity", additive=jug("sodium hydroxide", 40.0)))), NOW)
    assert any(remark.startswith("Alkalinity: Sodium hydroxide is dangerous") for remark in found.remarks)


def test_a_value_is_spoken_of_in_its_own_unit() -> None:
    question = read(raw(item("calcium"), item("alkalinity", "0.9 dKH per day", measured="140 dKH")))
    result = solve(question)
    assert isinstance(result, Refused)
    said = plain(sentence(result.reasons[0], question))
    assert "140 dKH is not a likely reading of alkalinity" in said
    assert "140 ppm as CaCO3 = 7.84 dKH" in said


def test_a_reason_about_a_planned_correction_is_about_no_item() -> None:
    question = read(QUESTIONS["two-part, exchanged"])
    far = Reason(
        "out_of_range", {"number": 2.0, "low": 0.0, "high": 1.0, "unit": "", "above_low": False}, "planned.3.days_left"
    )
    assert item_of(far, question) is None
    assert "outside what can be entered" in sentence(far, question)
    assert item_of(Reason("upkeep_twice", {}, "item.2.parameter"), question) is question.items[1]
    assert item_of(Reason("upkeep_nothing_kept", {}, "item"), question) is None


LYE = jug("sodium hydroxide", 40.0)
USED_CALCIUM = 0.9 * MEQ_PER_DKH * 20.039
# code: (question, what the sentence must hold)
OF_UPKEEP: dict[str, tuple[Raw | UpkeepQuestion, list[str]]] = {
    "upkeep_nothing_kept": (replace(read(QUESTIONS["two-part"]), items=()), ["use per day"]),
    "upkeep_twice": (raw(item("alkalinity"), item("alkalinity", additive=LYE)), ["Alkalinity"]),
    "upkeep_no_use": (raw(item("calcium", "0 mg/L per day")), ["Calcium", "Test it twice"]),
    "upkeep_same_ratio": (
        raw(item("alkalinity", additive=limewater()), item("calcium", additive=limewater())), ["alkalinity", "calcium", "one of them"],
    ),
    "upkeep_brings_too_much": (
        raw(item("nitrate"), item("potassium", "0.2 mg/L per day")),
        ["Potassium nitrate for nitrate brings 0.3153 mg per L per day of potassium", "0.2 mg per L per day used"],
    ),
    "upkeep_no_doses": (
        raw(
            item("nitrate", "0.1 mg/L as NO3 per day", jug("potassium chloride", 10.0, also={"chemical": "sodium nitrate", "dissolved": "8 g"})),
            item("potassium", "1 mg/L per day", jug("potassium nitrate", 10.0, also={"chemical": "sodium nitrate", "dissolved": "5 g"})),
        ),
        ["nitrate and potassium"],
    ),
    "upkeep_step": (raw(item("calcium", step="5 mL")), ["2.26 mL", "steps of 5 mL", "calcium"]),
    "upkeep_smallest_dose": (raw(item("calcium", smallest_dose="5 mL")), ["2.262378 mL", "5 mL", "10 doses a day"]),
    "upkeep_pump_share": (raw(item("calcium", flow="0.01 mL/min")), ["Calcium needs 54.2 mL", "7.2 mL"]),
    "upkeep_single_dose": (raw(item("alkalinity", doses_per_day=1)), ["0.9 dKH", "0.35 dKH", "more doses"]),
    "upkeep_daily_rise": (
        raw(item("alkalinity"), planned=[{"parameter": "alkalinity", "rise_per_day": "1 dKH per day", "days_left": "2"}]),
        ["Alkalinity would rise by 1.9 dKH per day", "1.4 dKH per day", "begin this upkeep when it is over"],
    ),
    "upkeep_evaporation": (
        raw(item("alkalinity", additive=limewater()), system={"evaporation": "1 L per day"}), ["2.59 L (litres)", "1 L (litres) evaporate"],
    ),
    "upkeep_ph_rise": (
        raw(item("alkalinity", "1.39 dKH per day", LYE, doses_per_day=4, measured="4.5 dKH")), ["pH by 0.2", "more doses a day"],
    ),
    "upkeep_ph_ceiling": (raw(item("alkalinity"), system={"ph": "8.495"}), ["8.495 now", "8.501 after", "above 8.5", "at night"]),
    "upkeep_saturation": (
        raw(item("alkalinity", measured="13.5 dKH"), item("calcium", measured="500 mg/L"), system={"ph": "8.35"}), ["now", "Above 10"],
    ),
    "upkeep_ratio": (raw(item("alkalinity"), item("calcium", "12 mg/L per day")), ["37.4 mg per meq", "20.04 mg per meq"]),
    "upkeep_keep_apart": (
        raw(item("alkalinity", doses_per_day=48), item("calcium", doses_per_day=48)),
        ["alkalinity", "calcium", "30 min", "no further apart than 15 min", "24 or fewer"],
    ),
    "upkeep_beside_correction": (QUESTIONS["two-part, exchanged"], ["alkalinity", "4 more days"]),
    "upkeep_covered": (QUESTIONS["covered"], ["potassium"]),
    "upkeep_partner_falls": (raw(item("alkalinity")), ["calcium falls by 6.43 mg per L per day"]),
    "upkeep_rounding": (raw(item("calcium", step="0.4 mL")), ["0.4 mL", "12 %", "calcium"]),
    "upkeep_bottle_unknown": (QUESTIONS["bottle"], ["the bottle for alkalinity"]),
    "upkeep_ph_assumed": (QUESTIONS["bottle"], ["8.1 is assumed"]),
}  # fmt: skip


def reasons(question: Raw | UpkeepQuestion) -> tuple[Reason, ...]:
    found = question if isinstance(question, UpkeepQuestion) else read_upkeep(question, known(), NOW)
    assert not isinstance(found, Unread)
    result = solve(found)
    return result.reasons if isinstance(result, Refused) else result.remarks


def test_every_code_of_an_upkeep_is_produced_below() -> None:
    assert OF_UPKEEP.keys() == SENTENCES.keys()
    assert codes() >= SENTENCES.keys()


@pytest.mark.parametrize("code", OF_UPKEEP)
def test_sentence_holds_its_figures(code: str) -> None:
    question, fragments = OF_UPKEEP[code]
    found = {reason.code: reason for reason in reasons(question)}
    assert code in found
    check(words.sentence(found[code]), fragments)


@pytest.mark.parametrize(
    ("code", "params", "fragments"),
    [
        ("upkeep_smallest_dose", {"parameter": "calcium", "dose_ml": 0.1, "smallest_ml": 0.5, "most_doses": 0}, ["weaker stock or a finer"]),
        ("upkeep_daily_rise", {"parameter": "potassium", "rise": 21.0, "most": 20.0, "unit": "mg per L per day", "with_correction": False}, ["brings less"]),
        (
            "upkeep_brings_too_much",
            {"additive": "potassium nitrate", "for": "nitrate", "parameter": "potassium", "brought": 0.4, "used": 0.3,
             "unit": "mg per L per day", "with_others": True},
            ["and the other additives bring"],
        ),
        ("upkeep_no_doses", {"parameters": ("calcium",)}, ["make good calcium at once"]),
        ("upkeep_ph_rise", {"rise": 0.25, "most": 0.2, "per_day": (25, 24)}, ["24 doses a day"]),
        ("upkeep_ph_rise", {"rise": 0.25, "most": 0.2, "per_day": (24, 48)}, ["0.2 they may. Sodium bicarbonate"]),
        ("upkeep_keep_apart", {"first": "alkalinity", "second": "calcium", "minutes": 30.0, "widest_min": 30.0, "most_doses": 24}, ["fall out."]),
    ],
)  # fmt: skip
def test_the_other_ways_of_a_sentence(code: str, params: dict[str, Any], fragments: list[str]) -> None:
    check(words.sentence(Reason(code, params)), fragments)


def test_advice_to_dose_less_often_is_answered_when_it_is_followed() -> None:
    (found,) = reasons(raw(item("calcium", smallest_dose="5 mL")))
    most = found.params["most_doses"]
    (dose,) = answered(raw(item("calcium", smallest_dose="5 mL", doses_per_day=most))).doses
    assert dose.dose_ml >= 5.0
    assert isinstance(most, int)
    assert [r.code for r in reasons(raw(item("calcium", smallest_dose="5 mL", doses_per_day=most + 1)))] == [
        "upkeep_smallest_dose"
    ]


def test_advice_to_keep_apart_is_answered_when_it_is_followed() -> None:
    (found,) = (r for r in reasons(OF_UPKEEP["upkeep_keep_apart"][0]) if r.code == "upkeep_keep_apart")
    most = found.params["most_doses"]
    for number in (most, 12):
        followed = raw(item("alkalinity", doses_per_day=number), item("calcium", doses_per_day=number))
        (again,) = (r for r in reasons(followed) if r.code == "upkeep_keep_apart")
        widest = again.params["widest_min"]
        assert isinstance(widest, float)
        assert widest >= 30.0
