"""What the Jugs sheet says: level and what says so, how long it lasts, the check, the danger, and going away."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import absence_view, jug_danger, jug_delivery, jug_levels, jugs_sheet
from evenwater.screens.jug_room import head_hours
from evenwater.screens.plan_id import batch_code
from evenwater.screens.rounds_room import Followed, Hanging, LastReading, Room
from evenwater.screens.views import Message
from tests.screens.asked import catalogue
from tests.screens.jug_room_making import ASH, DAY, NOW, PER_DAY, PUMP, TANK, drawer, jug, level
from tests.screens.lint import faults, strings


def spaced(text: str) -> str:
    return text.replace("\u00a0", " ")


# The list


def test_a_row_names_contents_with_tall_letters_and_the_code_of_the_batch() -> None:
    row = jugs_sheet.row(jug(), catalogue(), NOW)
    assert row.contents == f"sodium CARBonate anhydrous, batch {batch_code('ash:5e1f00d2')}"


def test_without_a_level_the_batch_and_the_daily_rate_say_what_is_left() -> None:
    row = jugs_sheet.row(jug(), catalogue(), NOW)
    assert spaced(row.level) == "520 mL of 1 L"  # ten days at 48 mL of a litre
    assert row.basis == "reckoned since its batch of Sun 15 Nov"
    assert row.share == pytest.approx(0.52)


def test_a_level_counts_before_the_batch_and_goes_down_from_there() -> None:
    row = jugs_sheet.row(jug(level(2.0, 800.0)), catalogue(), NOW)
    assert spaced(row.level) == "704 mL of 1 L"
    assert spaced(row.basis) == "reckoned since it was read Mon 23 Nov 09:00"


def test_a_level_just_read_is_told_as_read() -> None:
    row = jugs_sheet.row(jug(level(0.01, 800.0)), catalogue(), NOW)
    assert row.basis == "read today 08:45"


def test_a_level_from_before_the_batch_counts_no_more() -> None:
    assert jugs_sheet.level_now(jug(level(11.0, 100.0)), NOW)[0] == pytest.approx(520.0)


def test_a_jug_that_nothing_is_taken_from_keeps_its_level() -> None:
    row = jugs_sheet.row(jug(drawers=()), catalogue(), NOW)
    assert (spaced(row.level), row.lasts, row.refill) == ("1 L of 1 L", "nothing is taken", "")


def test_a_jug_without_batch_and_level_is_not_known() -> None:
    row = jugs_sheet.row(jug(batch={}), catalogue(), NOW)
    assert (row.contents, row.level, row.share, row.lasts) == ("nothing is in it yet", "level not known", None, "")


def test_far_less_logged_than_the_rate_takes_is_said() -> None:
    logged = drawer(logged=(((NOW - DAY).timestamp(), 5.0),))
    assert jugs_sheet.row(jug(drawers=(logged,)), catalogue(), NOW).basis.endswith("; far less is logged, so read it")


def test_what_lies_below_the_intake_is_in_the_jug_and_never_dosed() -> None:
    kept = jug(level(0.0, 148.0), stock={"unreachable": Typed("100", "mL")})
    assert jugs_sheet.level_now(kept, NOW)[0] == pytest.approx(148.0)
    assert jugs_sheet.days_left(kept, NOW) == pytest.approx(1.0)


def test_the_full_volume_is_what_was_typed_else_the_batch_or_the_highest_level() -> None:
    assert jug(stock={"holds": Typed("5", "L")}).holds_ml == 5000.0
    assert jug().holds_ml == 1000.0
    assert jug(level(1.0, 1400.0)).holds_ml == 1400.0


# One jug


def test_the_page_has_cautions_of_what_is_in_the_jug_with_the_signal_word_first() -> None:
    view = jugs_sheet.page(jug(), catalogue(), NOW)
    assert view.cautions[0] in ("Warning.", "Danger.")
    assert "H319" in view.cautions[1]


def test_days_are_cut_and_never_rounded_up() -> None:
    view = jugs_sheet.page(jug(level(0.0, 6.95 * PER_DAY)), catalogue(), NOW)
    assert (view.figure, view.figure_unit) == ("6", "days left")
    view = jugs_sheet.page(jug(level(0.0, 0.5 * PER_DAY)), catalogue(), NOW)
    assert (view.figure, view.figure_unit, view.alarm) == ("12", "hours left", True)


def test_reckoned_to_be_empty_is_asked_and_read_as_empty_is_told() -> None:
    reckoned = jugs_sheet.page(jug(level(9.0, 100.0)), catalogue(), NOW)
    assert (reckoned.figure, jugs_sheet.row(jug(level(9.0, 100.0)), catalogue(), NOW).lasts) == (
        "Empty?",
        "may be empty",
    )
    assert "Read its level" in reckoned.notes[0]
    read = jugs_sheet.page(jug(level(0.1, 0.0)), catalogue(), NOW)
    assert read.figure == "Empty"
    assert "never make up" in read.notes[0]


def test_two_systems_on_one_jug_are_both_named_and_add_up() -> None:
    both = jug(level(0.0, 500.0), drawers=(drawer(30.0), drawer(20.0, system_id="b", name="Anemone table")))
    view = jugs_sheet.page(both, catalogue(), NOW)
    assert spaced(view.third).endswith("Taken by North frag bay 30 mL a day; Anemone table 20 mL a day.")
    assert jugs_sheet.days_left(both, NOW) == pytest.approx(10.0)


# The check


def test_one_level_says_nothing_and_two_say_what_left_the_jug() -> None:
    assert jug_delivery.view(jug(level(5.0, 800.0)), NOW).state == "none"
    view = jug_delivery.view(jug(level(10.0, 1000.0), level(0.0, 520.0)), NOW)
    assert view.state == "within"
    assert spaced(view.told[0]).startswith("480 mL left the jug from Sun 15 Nov 09:00 to Wed 25 Nov 09:00")
    assert "480 mL were expected" in spaced(view.told[0])
    assert view.cause == "All is well: the pump delivers what it should."
    assert view.flow is None


def test_a_steady_deficit_proposes_a_flow_and_changes_nothing() -> None:
    read = [level(10.0 - 2 * n, 1000.0 - 0.8 * 96.0 * n) for n in range(6)]
    kept = jug(*read, stock={"level_accuracy": Typed("3", "mL")})
    view = jug_delivery.view(kept, NOW)
    assert view.state == "red"
    assert view.off == "20\u00a0% too little delivered"
    assert view.flow is not None
    assert view.flow.typed == Typed("19.2", "mL/min")
    assert kept.pumps["head"]["flow"] == Typed("24", "mL/min")
    assert "Calibrate it first" in view.flow.words


def test_no_flow_is_proposed_for_two_pumps() -> None:
    two = (drawer(24.0), drawer(24.0, system_id="b", name="B", pumps={"other": PUMP}))
    read = [level(10.0 - 2 * n, 1000.0 - 0.8 * 96.0 * n) for n in range(6)]
    view = jug_delivery.view(jug(*read, stock={"level_accuracy": Typed("3", "mL")}, drawers=two), NOW)
    assert view.flow is None
    assert any("2 pumps draw from this jug" in note for note in view.notes)


def test_what_was_logged_is_expected_and_not_the_daily_rate() -> None:
    logged = tuple(((NOW - n * DAY).timestamp(), 40.0) for n in range(10))
    given = drawer(logged=logged)
    view = jug_delivery.view(jug(level(10.0, 1000.0), level(0.0, 600.0), drawers=(given,)), NOW)
    assert "400 mL were expected" in spaced(view.told[0])
    assert view.state == "within"


def test_a_refill_in_between_counts_with_what_it_added() -> None:
    refilled = (level(10.0, 500.0), level(5.0, 1000.0, before=260.0), level(0.0, 760.0))
    view = jug_delivery.view(jug(*refilled), NOW)
    assert spaced(view.told[0]).startswith("480 mL left the jug from Sun 15 Nov 09:00 to Wed 25 Nov 09:00")


def test_a_refill_before_which_nobody_looked_begins_anew() -> None:
    unseen = jug_levels.Level("ash:1", NOW - 5 * DAY, 1000.0, refilled=True)
    found = jug_levels.steady((level(10.0, 500.0), unseen, level(0.0, 760.0)), ASH, PER_DAY, NOW)
    assert [each.ml for each in found] == [1000.0, 760.0]


def test_levels_from_before_a_change_of_the_dosing_do_not_count() -> None:
    found = jug_levels.steady(
        (level(8.0, 900.0, rate=20.0), level(4.0, 800.0, rate=48.2), level(0.0, 600.0)), ASH, PER_DAY, NOW
    )
    assert [each.ml for each in found] == [800.0, 600.0]


def test_a_level_that_falls_though_nothing_is_taken_is_told() -> None:
    view = jug_delivery.view(jug(level(3.0, 900.0), level(0.0, 700.0), drawers=()), NOW)
    assert view.told == (jug_delivery.NO_PUMP,)
    assert "it runs in by itself" in view.notes[0]
    still = jug_delivery.view(jug(level(3.0, 900.0), level(0.0, 899.0), drawers=()), NOW)
    assert still.notes == ()


def test_nothing_is_claimed_while_what_is_taken_is_still_reckoned() -> None:
    waiting = replace(jug(level(3.0, 900.0), level(0.0, 700.0)), drawers=None)
    view = jugs_sheet.page(waiting, catalogue(), NOW)
    assert view.check.told == (jug_delivery.LOOKING,)
    assert view.no_runs_in == view.third == jug_delivery.LOOKING
    assert jugs_sheet.row(waiting, catalogue(), NOW).lasts == "reckoning"


# Noting a level


@pytest.mark.parametrize(
    ("said", "path"),
    [
        ({}, "level.level"),
        ({"level": Typed("full")}, "level.level"),
        ({"level": Typed("1,250", "mL")}, "level.level"),
        ({"level": Typed("5500", "mL")}, "level.level"),
        ({"level": Typed("500", "mL"), "at": Typed("tomorrow")}, "level.at"),
        ({"level": Typed("500", "mL"), "at": Typed("2027-01-01 08:00")}, "level.at"),
    ],
)
def test_what_cannot_be_taken_is_said_beside_its_field_and_nothing_is_noted(said: dict[str, Typed], path: str) -> None:
    fields, messages = jug_levels.take(said, False, 5000.0, NOW)
    assert fields == {}
    assert [message.path for message in messages] == [path]


def test_a_level_is_kept_as_typed_with_its_instant() -> None:
    fields, messages = jug_levels.take({"level": Typed("0.52", "L"), "who": Typed("K. L.")}, False, None, NOW)
    assert messages == ()
    assert fields == {
        "level": Typed("0.52", "L"),
        "at": Typed(NOW.isoformat(timespec="seconds")),
        "who": Typed("K. L."),
    }
    back = jug_levels.level_of("ash:1", fields)
    assert back is not None
    assert (back.ml, back.at, back.refilled) == (520.0, NOW, False)


def test_a_refill_that_leaves_less_than_before_is_asked_about() -> None:
    said = {"level": Typed("300", "mL"), "before": Typed("400", "mL")}
    assert jug_levels.take(said, True, None, NOW)[1][0].path == "level.before"
    fields, messages = jug_levels.take({**said, "level": Typed("900", "mL")}, True, None, NOW)
    assert messages == ()
    assert fields["refilled"] == Typed("yes")
    assert fields["before"] == Typed("400", "mL")


def test_a_damaged_level_is_left_out() -> None:
    assert jug_levels.level_of("ash:1", {"level": Typed("500", "mL"), "at": Typed("soon")}) is None
    assert jug_levels.level_of("ash:1", {"level": Typed("nan", "mL"), "at": Typed(NOW.isoformat())}) is None


# Priming, danger


def test_priming_takes_what_the_line_holds_and_the_pump_needs() -> None:
    (said,) = jug_danger.priming(jug())
    # A quarter of pi times 4 mm squared times 2 m are 25.13 mL; at 24 mL in a minute 62.8 s; twelve doses and a half.
    assert spaced(said) == (
        "The line of Head 1 holds 25.1 mL, about 1 min 2 s of running. Not primed, the first 13 doses do not arrive whole."
    )


def test_a_pump_without_a_measured_line_says_nothing() -> None:
    assert jug_danger.priming(jug(drawers=(drawer(pumps={"head": {"name": Typed("Head 1")}}),))) == ()


def test_an_unknown_volume_counts_at_its_low_end_for_the_whole_jug() -> None:
    known, unknown = (
        jug_danger.runs_in(jug(drawers=(drawer(system={**TANK, "volume_known": Typed(word)}),)), catalogue())[0][0].what
        for word in ("measured by filling", "unknown")
    )
    # The rise of a whole jug is larger in less water.
    assert known != unknown


def test_a_jug_whose_batch_is_not_complete_says_so() -> None:
    rows, why = jug_danger.runs_in(jug(batch={"in_use_from": ASH["in_use_from"]}), catalogue())
    assert (rows, why) == ((), jug_danger.UNKNOWN)
    assert jug_danger.runs_in(jug(drawers=()), catalogue())[1] == jug_danger.NOBODY


# Going away


def room(**changes: object) -> Room:
    fields: dict[str, object] = {
        "systems": {"north": "North frag bay"}, "readings": (), "corrected": (), "cards": (), "jugs": (), "plans": (),
    }  # fmt: skip
    return Room(**(fields | changes))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "text", ["20/12/2026", "20.12.2026 18:00", "soon", "2026-13-01", "2026-11-24", "2028-01-01", "2026-12-20 25:00"]
)
def test_a_return_that_cannot_be_read_is_said_and_plans_nothing(text: str) -> None:
    view = absence_view.view(text, (jug(),), room(), catalogue(), NOW)
    assert isinstance(view.message, Message)
    assert view.rows == ()


def test_a_date_alone_ends_with_its_day() -> None:
    found = absence_view.read_return("2026-11-30", NOW)
    assert found == NOW.replace(day=30, hour=23, minute=59)


def test_a_jug_that_does_not_last_is_filled_with_what_is_missing_and_a_reserve() -> None:
    # Fifteen days at 48 mL are 720 mL; 520 mL are in it.
    view = absence_view.view("2026-12-10 09:00", (jug(),), room(), catalogue(), NOW)
    (row,) = view.rows
    assert view.headline.startswith("Soda ash, white jug runs out first, on Sun 6 Dec")
    # Five per cent of what is needed and one of the jug besides.
    assert spaced(row.what) == "Add 246 mL"
    assert "720 mL are needed until you are back, 520 mL are in it." in spaced(row.why)


def test_a_jug_too_small_for_the_time_is_filled_up_and_says_until_when() -> None:
    view = absence_view.view("2027-01-10", (jug(),), room(), catalogue(), NOW)
    (row,) = view.rows
    assert spaced(row.what) == "Add 480 mL"
    assert row.short
    assert "Even full it lasts only until" in row.why


def test_the_first_to_run_out_stands_first_and_unknown_jugs_are_named() -> None:
    first = jug(level(0.0, 100.0), stock_id="b", name="B")
    unknown = jug(batch={}, stock_id="c", name="C")
    view = absence_view.view("2026-12-10", (jug(), unknown, first), room(), catalogue(), NOW)
    assert [row.name for row in view.rows] == ["B", "Soda ash, white jug"]
    assert view.unknown == ("C: say what it holds, then it can be reckoned with.",)


def test_tests_cards_and_plans_that_fall_due_are_told_by_their_dates() -> None:
    stale = catalogue().parameters["alkalinity"].stale_days
    view = absence_view.view(
        "2026-12-10",
        (),
        room(
            readings=(
                LastReading("north", "alkalinity", NOW),
                LastReading("north", "calcium", NOW - timedelta(days=60)),
            ),
            cards=(Hanging("AAA", "north", "nitrate", NOW + 4 * DAY, False),),
            plans=(Followed("BBB", "north", "alkalinity", "inside", "", NOW + 2 * DAY, NOW, NOW + 40 * DAY),),
        ),
        catalogue(),
        NOW,
    )
    assert view.overdue == ("test calcium, North frag bay",)
    assert [line.partition(": ")[2] for line in view.due] == [
        "plan BBB asks to test alkalinity, North frag bay",
        "test alkalinity, North frag bay",
        "card AAA for nitrate is valid no longer, North frag bay",
    ]
    assert spaced(view.due[1]).startswith(f"{'Sat 28 Nov' if stale == 3 else '?'} 09:00")


def test_what_is_said_is_written_as_a_keeper_reads_it() -> None:
    read = (level(10.0, 990.0), level(5.0, 1000.0, before=700.0), level(0.0, 900.0))
    views = [
        jugs_sheet.row(jug(*read), catalogue(), NOW),
        jugs_sheet.page(jug(*read), catalogue(), NOW),
        jugs_sheet.page(jug(level(9.0, 100.0), level(0.0, 0.0)), catalogue(), NOW),
        absence_view.view("2027-01-10", (jug(),), room(), catalogue(), NOW),
    ]
    # Batch codes are no figures, and safety sheets are quoted.
    said = [text for view in views for text in strings(view) if "batch" not in text and "ICSC" not in text]
    assert [fault for text in said for fault in faults(text)] == []


def test_the_hours_of_a_head_are_those_of_its_newest_calibration_and_not_of_the_head_before() -> None:
    read = [
        {"at": Typed("2026-06-01T10:00:00+00:00"), "hours": Typed("100", "h")},
        {"at": Typed("2026-10-01T10:00:00+02:00"), "hours": Typed("400", "h")},
        {"at": Typed("2026-11-01T10:00:00+00:00")},
        {"at": Typed("soon"), "hours": Typed("900", "h")},
    ]
    assert head_hours({}, read) == 400.0
    assert head_hours({"head_fitted": Typed("2026-10-15")}, read) is None


def test_a_new_head_is_not_taken_for_a_worn_one() -> None:
    read = [level(10.0 - 2 * n, 1000.0 - 0.8 * 96.0 * n) for n in range(6)]
    kept = jug(*read, stock={"level_accuracy": Typed("3", "mL")})
    said = {h: jug_delivery.view(replace(kept, head_hours=h), NOW) for h in (5.0, 640.0)}
    assert "worn" not in said[5.0].cause + said[5.0].possible
    assert "worn" in said[640.0].cause + said[640.0].possible
