"""What is opened, what is made, what is refused, and that a refused file stays as it was."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Store, StoreError
from evenwater.store.backups import folder_of
from evenwater.store.migrations import MIGRATIONS
from evenwater.store.opening import APPLICATION_ID
from tests.store.writing import Times, added, typed


def _refusal(file: Path) -> tuple[str, dict[str, object]]:
    """Open ``file``, expect a refusal, and make sure that not a byte of it has changed."""
    before = file.read_bytes()
    with pytest.raises(StoreError) as refusal:
        Store.open(file)
    assert file.read_bytes() == before
    assert {path.name for path in file.parent.iterdir()} <= {file.name, folder_of(file).name}
    return refusal.value.reason.code, dict(refusal.value.reason.params)


@pytest.fixture
def log(file: Path, times: Times) -> Path:
    """A log of some size, with a copy of the day before."""
    with Store.open(file, times.clock()) as store:
        store.apply(added("a", name="North frag bay"))
        times.pass_by(24 * 3600)
        for number in range(40):
            store.apply(typed("a", "note", f"{number} " * 200))
    return file


def test_a_new_log_is_marked_as_ours(file: Path) -> None:
    Store.open(file).close()
    with closing(sqlite3.connect(file)) as plain:
        assert plain.execute("PRAGMA application_id").fetchone() == (APPLICATION_ID,)
        assert plain.execute("PRAGMA user_version").fetchone() == (len(MIGRATIONS),)


def test_a_log_without_write_permission_in_its_folder_is_not_half_made(tmp_path: Path) -> None:
    blocked = tmp_path / "a file"
    blocked.write_text("not a folder")
    with pytest.raises(StoreError) as refusal:
        Store.open(blocked / "evenwater.sqlite")
    assert refusal.value.reason.code == "store.cannot_open"
    assert blocked.read_text() == "not a folder"


@pytest.mark.parametrize("content", [b"", b"SQLite format 3\x00", b"SQLite", b"SQLite format 3\x00" + b"\x10" * 80])
def test_a_file_cut_short_in_its_header_is_damaged(file: Path, content: bytes) -> None:
    file.parent.mkdir(parents=True)
    file.write_bytes(content)
    assert _refusal(file) == ("store.damaged", {"file": str(file), "backup": ""})


@pytest.mark.parametrize("content", [b"\x00" * 8192, b"a shopping list\n", os.urandom(4096), b"PK\x03\x04" * 100])
def test_a_file_of_something_else_is_foreign(file: Path, content: bytes) -> None:
    file.parent.mkdir(parents=True)
    file.write_bytes(content)
    assert _refusal(file)[0] == "store.foreign"


@pytest.mark.parametrize("application", [0, 0x0F055112])
def test_a_database_of_another_application_is_foreign(file: Path, application: int) -> None:
    file.parent.mkdir(parents=True)
    with closing(sqlite3.connect(file)) as plain:
        plain.execute(f"PRAGMA application_id = {application}")
        plain.execute("CREATE TABLE theirs (a)")
        plain.commit()
    assert _refusal(file)[0] == "store.foreign"


def test_a_file_of_a_newer_version_is_refused_with_both_versions(log: Path) -> None:
    with closing(sqlite3.connect(log)) as plain:
        plain.execute("PRAGMA user_version = 7")
    assert _refusal(log) == ("store.newer", {"file": str(log), "version": 7, "newest": len(MIGRATIONS)})


@pytest.mark.parametrize("kept", [0.3, 0.6, 0.95])
def test_a_truncated_log_is_damaged_and_its_newest_copy_is_named(log: Path, kept: float) -> None:
    whole = log.read_bytes()
    log.write_bytes(whole[: int(len(whole) * kept)])
    code, params = _refusal(log)
    assert code == "store.damaged"
    assert params["backup"] == str(folder_of(log) / "2026-11-26.sqlite")


def test_a_log_with_a_page_of_rubbish_is_damaged(log: Path) -> None:
    content = bytearray(log.read_bytes())
    page = int.from_bytes(content[16:18], "big")
    content[page : 2 * page] = os.urandom(page)
    log.write_bytes(bytes(content))
    assert _refusal(log)[0] == "store.damaged"


def test_the_named_copy_can_take_the_place_of_the_damaged_log(log: Path) -> None:
    log.write_bytes(log.read_bytes()[:5000])
    backup = str(_refusal(log)[1]["backup"])
    shutil.copyfile(backup, log)
    with Store.open(log) as store:
        assert store.values("a") == {"name": Typed("North frag bay")}
        assert store._database.pragma("journal_mode") == "wal"


def test_a_locked_log_is_refused_after_a_moment(file: Path) -> None:
    with Store.open(file, busy_seconds=0.01) as store:
        store.apply(added("a", ph="8"))
        with closing(sqlite3.connect(file, isolation_level=None)) as other:
            other.execute("BEGIN IMMEDIATE")
            with pytest.raises(StoreError) as refusal:
                store.apply(typed("a", "ph", "9"))
            assert refusal.value.reason.code == "store.locked"
            assert store.values("a")["ph"] == Typed("8")
            other.execute("ROLLBACK")
        store.apply(typed("a", "ph", "9"))
        assert store.values("a")["ph"] == Typed("9")


def test_a_full_disk_refuses_the_step_and_keeps_the_rest(file: Path) -> None:
    with Store.open(file) as store:
        store.apply(added("a", ph="8"))
        pages = store._database.pragma("page_count")
        store._database.pragma(f"max_page_count = {pages}")
        with pytest.raises(StoreError) as refusal:
            store.apply(typed("a", "note", "x" * 100_000))
        assert refusal.value.reason.code == "store.full"
        assert store.values("a") == {"ph": Typed("8")}
        store._database.pragma(f"max_page_count = {pages + 1000}")
        store.apply(typed("a", "note", "x" * 100_000))
    with Store.open(file) as store:
        assert len(store.values("a")["note"].text) == 100_000


@pytest.fixture
def shared_folder() -> Iterator[Path]:
    """A folder that other users may enter, unlike the tests' usual one."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        folder.chmod(0o777)  # another user makes the side files of SQLite here
        yield folder


_READER = """
import os, sys
from pathlib import Path
from evenwater.store import Store, StoreError
from tests.store.writing import typed
if os.geteuid() == 0:
    os.setuid(65534)
store = Store.open(Path(sys.argv[1]))
print(store.values("a")["ph"].text)
try:
    store.apply(typed("a", "ph", "9"))
except StoreError as error:
    print(error.reason.code)
print(store.values("a")["ph"].text)
"""


@pytest.mark.skipif(os.name != "posix", reason="permissions of another user are a matter of POSIX")
def test_a_read_only_log_can_be_read_and_says_why_it_is_not_saved(shared_folder: Path) -> None:
    file = shared_folder / "evenwater.sqlite"
    with Store.open(file) as store:
        store.apply(added("a", ph="8"))
    file.chmod(0o444)
    # Another process, since the administrator, as whom tests may run, can write to every file.
    told = subprocess.run(
        [sys.executable, "-c", _READER, str(file)], capture_output=True, text=True, timeout=60, check=False
    )
    assert told.stdout.split() == ["8", "store.read_only", "8"], told.stderr
