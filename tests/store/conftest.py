"""What the tests of the log share: where it is, and what time it is."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from evenwater.store import Store
from tests.postgres import on_server, why_not
from tests.store.copied import grow
from tests.store.writing import Times


@pytest.fixture
def times() -> Times:
    return Times()


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "a folder with spaces & 100 %" / "evenwater.sqlite"


@pytest.fixture
def grown(file: Path, times: Times) -> Iterator[Store]:
    """An open log that has grown since its last copy."""
    with Store.open(file, times.clock(), busy_seconds=0.01) as opened:
        grow(opened, times)
        yield opened


# The tests that are run on a server as well, by module, but for those that are about files. What is not doubled: how a file
# is made, recognised, migrated, damaged, copied and restored, kills of writers of a file, a thousand steps, and the random models.
DOUBLED: dict[str, tuple[str, ...]] = {
    "test_log": (
        "test_the_file_is_kept_in_the_safe_modes",
        "test_the_models_have_the_columns_of_the_file",
        "test_undo_and_redo_of_a_thousand_steps_across_a_restart",
    ),
    "test_entries": (),
    "test_entry_writing": (
        "test_a_thousand_steps_are_remembered_and_all_entries",
        "test_an_undone_step_leaves_no_pointers_once_it_cannot_be_redone",
        "test_a_full_disk_refuses_all_of_it_and_the_log_goes_on",
    ),
    "test_import": (
        "test_progress_is_told_what_was_read_and_stopping_saves_nothing",
        "test_stopping_at_the_last_line_still_saves_nothing",
        "test_a_line_that_cannot_be_saved_lets_none_of_them_in",
        "test_what_was_changed_by_hand_is_not_put_back_by_importing_again",
    ),
    "test_plans": (),
    "test_cards": (),
    "test_put_in_use": (),
}


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    skipped = DOUBLED.get(metafunc.module.__name__.rpartition(".")[2])
    if skipped is not None and metafunc.function.__name__ not in skipped and not why_not():
        metafunc.parametrize("engine", ["sqlite", "postgres"], indirect=True)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Of the cases of one test take the first to the server: what differs there is the behaviour, not the figures."""
    taken: set[str] = set()
    kept = []
    for item in items:
        chosen = getattr(item, "callspec", None)
        if chosen is not None and chosen.params.get("engine") == "postgres":
            name = item.nodeid.partition("[")[0]
            if name in taken:
                continue
            taken.add(name)
        kept.append(item)
    items[:] = kept


@pytest.fixture(autouse=True)
def engine(request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[str]:
    """Say which engine a test is run on, and see to it."""
    chosen = getattr(request, "param", "sqlite")
    if chosen == "sqlite":
        yield chosen
        return
    running = request.getfixturevalue("server")
    with running.empty() as take:
        on_server(running, tmp_path, monkeypatch, take)
        yield chosen
