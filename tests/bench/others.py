"""The rows without a window of their own: the carbonate system, the planner, a year of exchange, many systems, a long log."""

from __future__ import annotations

from pathlib import Path

from tests.bench.rows import Row, measure


def carbonate(times: int, env: dict[str, str]) -> list[Row]:
    """Compare a ramp of 1,000 states with the same states by PyCO2SYS; the aim is a fiftieth of its time."""
    taken: dict[str, list[float]] = measure("product_carbonate", times, env=env)  # type: ignore[assignment]
    pairs = (("1,000 states from DIC / PyCO2SYS", "dic"), ("1,000 states from pCO2 / PyCO2SYS", "pco2"))
    return [Row(name, "ms", taken[f"product_{key}"], taken[f"reference_{key}"], 0.02) for name, key in pairs]


def planner(times: int, env: dict[str, str]) -> list[Row]:
    """Compare the planner that minds pH and saturation with itself, not told a pH, and minding neither."""
    taken: dict[str, list[float]] = measure("product_planner", times, env=env)  # type: ignore[assignment]
    pairs = (("plan with pH / pH not measured", "without_ph"), ("plan with pH / pH not reckoned", "not_reckoned"))
    return [Row(name, "us", taken["with_ph"], taken[key]) for name, key in pairs]


def log(rounds: int, scratch: Path, env: dict[str, str]) -> list[Row]:
    """Compare a log of 2,000,000 entries with one of 2,000, for answers of the same length."""
    taken: dict[str, list[float]] = measure("product_log", scratch, rounds, env=env, timeout_s=1800)  # type: ignore[assignment]
    pairs = (
        ("2,000,000 entries / 2,000: opening", "open", 1.5),
        ("newest reading of all systems", "latest", 1.5),
        ("columns of one system", "columns", 1.5),
        ("newest 50 entries of one system", "newest", 1.5),
        ("newest of all, just opened", "latest_first", None),
        ("columns, just opened", "columns_first", None),
        ("newest 50, just opened", "newest_first", None),
        ("a dose logged", "log", None),
        ("first opening of a day", "first", None),
        ("closing it, with the copy made", "copied", None),
        ("100,000 entries imported", "import", None),
        ("the same again", "again", None),
        ("that undone", "undo", None),
    )
    return [Row(name, "ms", taken[f"many_{key}"], taken[f"few_{key}"], aim) for name, key, aim in pairs]


def rounds_sheet(times: int, scratch: Path, env: dict[str, str]) -> list[Row]:
    """Compare the Rounds sheet of a room of 500 systems with that of one of five."""
    taken: dict[str, list[float]] = measure("product_rounds", scratch, times, env=env)  # type: ignore[assignment]
    pairs = (
        ("Rounds of 500 systems / of 5: opened", "open", 1.5),
        ("opened again", "again", 1.5),
        ("until all of the room is known", "all", None),
        ("longest the window is held meanwhile", "held", None),
    )
    return [Row(name, "ms", taken[f"many_{key}"], taken[f"few_{key}"], aim) for name, key, aim in pairs]


def year(times: int, env: dict[str, str]) -> list[Row]:
    """Compare a year of nine values by the engine's course with scipy's solver at the same error; the aim is a thousandth of its time."""
    taken: dict[str, list[float]] = measure("product_year", times, env=env)  # type: ignore[assignment]
    return [
        Row(
            f"a year of 9 values, a dose a day / scipy {taken['method']}", "ms", taken["course"], taken["scipy"], 0.001
        ),
        Row("the same from a question of 3,285 doses on", "ms", taken["question"], taken["scipy"]),
        Row("the whole answer, with second opinion and limits", "ms", taken["answer"], taken["scipy"]),
    ]


def many(times: int, env: dict[str, str]) -> list[Row]:
    """Compare 500 systems planned in one go with one system planned over and over, for each plan."""
    taken: dict[str, list[float]] = measure("product_many", times, env=env)  # type: ignore[assignment]
    pairs = (("500 systems read and planned, each / one again", "solved"), ("the same with words and chart", "shown"))
    return [Row(name, "us", taken[key], taken[f"one_{key}"], 1.3) for name, key in pairs]
