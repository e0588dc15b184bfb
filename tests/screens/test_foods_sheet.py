"""The Foods sheet in words: every figure by hand, every message at its field, dates, jug and line; safe to read."""

from __future__ import annotations

import math

import pytest

from evenwater.engine.exchange_intake import exchange
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.reasons import Reason
from evenwater.screens import foods_given, foods_jug, foods_words, room_words, words
from evenwater.screens.exchange_given import Given, raw_question
from evenwater.screens.foods_sheet import FoodsRoom, FoodsView, row, table_heads, view
from tests.engine.asking import known
from tests.engine.foods import OX, N, P
from tests.screens.foods import AMINO, BAY, MASH, NOW, TODAY, TRACE, WATER, Values, changed, room
from tests.screens.lint import faults, strings

NO3, PO4 = (N + 3 * OX) / N, (P + 4 * OX) / P
# 10 mL of the mash carry 50 mg of nitrogen and 2 mg of phosphorus, 1 mL of the amino acids 9 mg of nitrogen.
RATE_N, RATE_P = 10.0 / 340.0 + 0.03, 10.0 / 340.0 + 0.05


def seen(*foods: Values, shown: int = 1, **others: object) -> FoodsView:
    return view(room(*foods, **others), f"bay:{shown}", known(), TODAY)  # type: ignore[arg-type]


def plain(text: str) -> str:
    return text.replace("\u00a0", " ")


def three(value: float) -> str:
    """Return three significant digits as the sheet writes them."""
    text = f"{value:.{2 - math.floor(math.log10(value))}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def down(value: float) -> str:
    """Return three significant digits, cut and not rounded: nothing above a limit is ever said."""
    grain = 10.0 ** (math.floor(math.log10(value)) - 2)
    return f"{math.floor(value / grain) * grain:.6g}"


def test_what_one_food_and_all_together_bring() -> None:
    found = seen(MASH, AMINO)
    mash, amino, total = found.rows
    brought = [50.0 * NO3 / 340.0, 2.0 * PO4 / 340.0, 50.0 / N / 340.0 * 2.80386]
    assert mash[2:] == (three(brought[0]), three(brought[1]), f"takes {three(brought[2])}")
    assert amino[2:] == (three(9.0 * NO3 / 340.0), "none", f"takes {three(9.0 / N / 340.0 * 2.80386)}")
    assert [plain(row[1]) for row in found.rows] == ["10 mL", "1 mL", "11 mL"]
    assert total[0] == "All together"
    assert total[2] == three(59.0 * NO3 / 340.0)
    assert table_heads(known())[2:] == ("nitrate, mg per L as NO3", "phosphate, mg per L as PO4", "alkalinity, dKH")
    # One food alone needs no sum.
    assert [each[0] for each in seen(AMINO).rows] == ["Amino acids"]


def test_the_answer_is_about_the_food_that_is_shown() -> None:
    found = seen(MASH, AMINO, shown=2).answer
    assert (found.state, found.figure, plain(found.figure_unit)) == ("answered", "1", "mL per day")
    assert plain(found.second) == f"A day of it brings at most {three(9.0 * NO3 / 340.0)} mg per L as NO3 nitrate."
    # 2 mg/L of nitrate a day are the most; the mash takes its part of it.
    most = (2.0 * 340.0 / NO3 - 50.0) / 9.0
    assert plain(found.third) == f"At most {down(most)} mL a day of it beside the other foods, by the rise of nitrate."
    (how,) = found.working
    assert plain(how.how) == "1 mL × 9 mg in a mL × 4.427 ÷ 340 L"


def test_where_nitrate_and_phosphate_settle() -> None:
    lines = {(n // 3, each[0]): each[1:] for n, each in enumerate(seen(MASH, AMINO).course)}
    fed, bare = lines[0, "with these foods"], lines[0, "without food"]
    settles = 59.0 * NO3 / 340.0 / RATE_N
    assert lines[0, "Nitrate, mg per L as NO3"] == ("",) * 5
    assert fed[0] == bare[0] == "5"
    for column, day in ((1, 7.0), (2, 28.0), (3, 56.0)):
        left = math.exp(-RATE_N * day)
        assert fed[column] == three(settles + (5.0 - settles) * left)
        assert bare[column] == three(5.0 * left)
    assert (fed[4], bare[4]) == (three(settles), "0")
    assert lines[1, "with these foods"][4] == three(2.0 * PO4 / 340.0 / RATE_P)


def test_the_chart_draws_what_the_table_says() -> None:
    nitrate, phosphate = seen(MASH, AMINO).chart
    settles = 59.0 * NO3 / 340.0 / RATE_N
    for day, fed, bare in zip(nitrate.days, nitrate.fed, nitrate.bare, strict=True):
        left = math.exp(-RATE_N * day)
        assert (fed, bare) == (pytest.approx(settles + (5.0 - settles) * left), pytest.approx(5.0 * left))
    assert (nitrate.days[-1], nitrate.usual) == (56.0, 15.0)
    assert (phosphate.title, phosphate.usual) == ("Phosphate, mg per L as PO4", pytest.approx(0.1))
    assert phosphate.spoken.startswith("Phosphate goes from 0.05")


def test_a_value_that_nobody_tested_still_settles() -> None:
    found = seen(MASH, readings={})
    assert found.chart == ()
    course = found.course
    assert course[1] == ("with these foods", "no reading", "--", "--", "--", three(50.0 * NO3 / 340.0 / RATE_N))


def test_nothing_leaves_the_tank() -> None:
    still = FoodsRoom(BAY, {}, (("bay:1", changed(AMINO, per_day=Typed("0.5", "mL per day"))),))
    found = view(still, "bay:1", known(), TODAY)
    assert [each[-1] for each in found.course if each[0] != ""][1:3] == ["climbs on", "stays"]
    assert any("never settles" in each for each in found.answer.remarks)


@pytest.mark.parametrize(
    ("fields", "path", "said"),
    [
        ({"per_day": None}, "food.per_day", "Fill in how much is given in a day."),
        ({"protein": None}, "food.protein", "Fill in the protein."),
        ({"per_day": Typed("ten", "mL per day")}, "food.per_day", "“ten” is not a number."),
        ({"protein": Typed("140", "%")}, "food.protein", "outside what can be entered"),
        (
            {"nitrogen_share": Typed("60", "%"), "phosphorus_share": Typed("50", "%")},
            "food.phosphorus_share",
            "more than",
        ),
        ({"says": Typed("per_ml")}, "food.nitrogen", "Fill in the nitrogen in a mL."),
        ({"says": Typed("label")}, "food.label_parameter", "Fill in what the label says it raises."),
        ({"opened_on": Typed("25.11.")}, "food.opened_on", "Write it like 2026-11-25."),
        ({"opened_on": Typed("2026-11-26")}, "food.opened_on", "still to come"),
    ],
)
def test_messages_stand_at_their_fields(fields: dict[str, Typed | None], path: str, said: str) -> None:
    messages = {message.path: message.text for message in seen(changed(MASH, **fields)).answer.messages}
    assert said in messages[path]


def test_what_is_missing_elsewhere_is_named_with_its_sheet() -> None:
    found = seen(MASH, system=changed(BAY, net_volume=None))
    assert found.answer.state == "empty"
    assert [message.text for message in found.answer.messages] == ["On the Correct sheet: Fill in the net volume."]
    assert found.rows == found.course == found.notes == ()
    wrong = seen(MASH, water=changed(WATER, nitrate_loss=Typed("much", "%"))).answer.messages
    assert wrong[0].text.startswith("On the Exchange sheet: “much” is not a number.")


def test_another_food_that_cannot_be_read_is_named() -> None:
    found = seen(MASH, changed(AMINO, nitrogen=None))
    assert [m.text for m in found.answer.messages] == ["Amino acids cannot be read yet, so nothing of it is counted."]
    assert len(found.rows) == 1


def test_too_much_is_refused_with_how_much_would_do() -> None:
    much = changed(MASH, phosphorus_share=Typed("0.04", "%"))
    found = seen(much).answer
    assert found.state == "refused"
    assert found.messages[0].code == "food_too_much"
    assert "0.0361" in found.messages[0].text
    most = down(0.03 * 340.0 / (0.4 * PO4))
    assert plain(found.second) == f"At most {most} mL a day of it beside the other foods, by the rise of phosphate."
    # What it brings is said all the same.
    assert seen(much).rows[0][3] == three(4.0 * PO4 / 340.0)


def test_a_paused_food_is_not_counted() -> None:
    found = seen(changed(MASH, paused=Typed("yes")), AMINO)
    assert found.answer.second == "Paused: nothing of it is counted."
    assert [each[0] for each in found.rows] == ["Amino acids"]
    assert row(changed(MASH, paused=Typed("yes")), TODAY).startswith("Mash\npaused")


def test_a_system_without_foods() -> None:
    found = view(room(), "", known(), TODAY)
    assert found.answer.state == "empty"
    assert (found.rows, found.course, found.lines, found.notes) == ((), (), (), ())


# Jug and line


def test_dates_jug_and_line_by_hand() -> None:
    lines = {line.what: plain(line.gives) for line in seen(MASH).lines}
    held = math.pi / 4.0 * 9.0 * 2.0
    assert lines["A feeding"] == "2.5 mL"
    assert lines["Last day to use it"] == "Fri 4 Dec 2026 (9 days left)"
    assert lines["The jug lasts"] == "25 days"
    assert lines["Empty on"] == "Tue 15 Dec 2026"
    assert lines["The line holds"] == "14.1 mL"
    assert lines["Food stands in it"] == "1 day 9 h"
    assert (lines["Flush after a feeding"], lines["Flush in a day"]) == ("28.2 mL", "113 mL")
    assert 28.2 <= 2.0 * held < 28.3
    remarks = [plain(each) for each in seen(MASH).answer.remarks]
    assert any("110 mL would be thrown away. Open 140 mL at a time" in each for each in remarks)
    assert any("flush 28.2 mL after each feeding" in each for each in remarks)


def test_line_and_doses_of_the_pump_that_is_chosen() -> None:
    pump = {"line_bore": Typed("4", "mm"), "line_length": Typed("1", "m"), "doses_per_day": Typed("12")}
    fed = changed(MASH, pump=Typed("p1"), line_bore=None, line_length=None, feedings=None)
    lines = {line.what: plain(line.gives) for line in seen(fed, pumps={"p1": pump}).lines}
    assert lines["The line holds"] == "12.5 mL"
    assert lines["A feeding"] == "0.833 mL"
    assert "The line holds" not in {line.what for line in seen(fed).lines}


@pytest.mark.parametrize(
    ("fields", "last", "spoiled"),
    [
        ({}, "Fri 4 Dec 2026", False),
        ({"keeps_days": Typed("5")}, "Wed 25 Nov 2026", False),
        ({"keeps_days": Typed("4")}, "Tue 24 Nov 2026", True),
        ({"cold": None}, "Sat 21 Nov 2026", True),
        ({"cold": None, "sort": Typed("amino acids")}, "Fri 4 Dec 2026", False),
    ],
)
def test_past_its_last_day_it_must_not_be_given(fields: dict[str, Typed | None], last: str, spoiled: bool) -> None:
    values = changed(MASH, **fields)
    kept = foods_jug.kept(values)
    assert kept.last_day is not None
    assert foods_jug.day_words(kept.last_day) == last
    found = seen(values).answer
    assert (found.state == "stop") is spoiled
    assert ("STOP" in row(values, TODAY)) is spoiled
    if spoiled:
        assert found.figure == "Stop"
        assert last in found.messages[0].text
        assert ("stood warm" in found.messages[0].text) is ("cold" in fields)


def test_what_stands_warm_is_said() -> None:
    assert any("keeps a day at most" in each for each in seen(changed(MASH, cold=None)).answer.remarks)
    assert not any("keeps a day at most" in each for each in seen(TRACE).answer.remarks)


# For others


def test_additions_name_what_they_come_from() -> None:
    found = foods_given.additions((MASH, TRACE, changed(AMINO, paused=Typed("yes"))), known(), Water(), 340.0)
    assert [(each.parameter, each.source) for each in found] == [
        ("alkalinity", "nitrification of Mash"),
        ("nitrate", "Mash"),
        ("phosphate", "Mash"),
        ("iodide", "Trace mix"),
    ]
    assert [each.per_day for each in found] == pytest.approx(
        [-50.0 / N / 340.0, 50.0 * NO3 / 340.0, 2.0 * PO4 / 340.0, 2.0 * 0.5 / 340.0]
    )
    assert foods_given.unread((MASH, {}, changed(AMINO, per_day=None)), known()) == ("Unnamed food", "Amino acids")


def test_a_label_per_kilogram_counts_in_the_water_of_the_tank() -> None:
    heavy = changed(TRACE, label_raises=Typed("0.01", "mg/kg"))
    (light,), (dense,) = (foods_given.additions((each,), known(), Water(35.0, 25.0), 340.0) for each in (TRACE, heavy))
    assert dense.per_day / light.per_day == pytest.approx(1.0233, abs=1e-4)


def test_the_exchange_sheet_counts_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    """The exchange of the same records settles where this sheet says."""
    asked = room(MASH, AMINO)
    given = Given(asked.system, asked.water, readings=asked.readings, foods=(MASH, AMINO))
    question = exchange(raw_question(given, known()), known())
    nitrate = next(moved for moved in question.values if moved.parameter.name == "nitrate")  # type: ignore[union-attr]
    assert nitrate.added == pytest.approx(59.0 * NO3 / 340.0)


# Words


def test_sentences_of_every_code() -> None:
    figures = {
        "parameter": "nitrate", "kind": "nitrate", "unit": "mg/L as NO3", "water": Water(), "rise": 2.5, "most": 2.0,
        "share": 0.8, "settles": 21.0, "high": 15.0, "name": "Mash",
    }  # fmt: skip
    for code in foods_words.SENTENCES:
        said = words.sentence(Reason(code, figures))
        assert not faults(said), said
    assert "80" in words.sentence(Reason("food_too_much", figures))


@pytest.mark.parametrize(
    "values", [MASH, AMINO, TRACE, changed(MASH, keeps_days=Typed("2")), changed(MASH, per_day=None)]
)
def test_everything_is_safe_to_read(values: Values) -> None:
    found = view(room(values, AMINO), "bay:1", known(), TODAY)
    said = [*strings(found), row(values, TODAY).replace("\n", " "), *foods_words.CAUTIONS["liquid food"]]
    assert [fault for text in said for fault in faults(text)] == []


def test_every_field_has_words_for_undo() -> None:
    for values in (MASH, AMINO, TRACE):
        for name in values:
            assert room_words.field_words("food", name) == foods_words.FOOD_WORDS[name]
    assert room_words.step_words("Undo", "add", "food", "") == "Undo: adding a food"
    assert NOW.date() == TODAY
