"""Where the log is, and that a demonstration cannot come near it."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QStandardPaths

from evenwater.session import Document, Paths
from evenwater.store import Store
from tests.store.writing import added


@pytest.fixture
def keeper(qapp: QCoreApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """The keeper's log in a home of its own, as the platform would place it."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    monkeypatch.setenv("TMPDIR", str(tmp_path))
    before = qapp.applicationName()
    qapp.setApplicationName("Evenwater")
    QStandardPaths.setTestModeEnabled(os.name == "nt")
    yield Paths.of_keeper().log
    QStandardPaths.setTestModeEnabled(False)
    qapp.setApplicationName(before)


def test_the_log_is_where_the_platform_keeps_an_applications_data(keeper: Path) -> None:
    place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation)
    assert keeper.parent == Path(place)
    assert keeper.parent.name == "Evenwater"
    assert not Paths.of_keeper().passing


def test_a_demonstration_is_somewhere_else_and_new_each_time(keeper: Path) -> None:
    first, second = Paths.of_demo(), Paths.of_demo()
    assert first.log.parent != second.log.parent
    for demo in (first, second):
        assert keeper.parent not in demo.log.parents
        assert demo.log.parent not in keeper.parents
        assert not demo.log.exists()
        demo.discard()


def test_throwing_a_demonstration_away_leaves_no_trace_and_the_keepers_log(keeper: Path) -> None:
    with Store.open(keeper) as store:
        store.apply(added("a"))
    content = keeper.read_bytes()
    demo = Paths.of_demo()
    document = Document(Store.open(demo.log))
    document.add_record("system", {})
    document.close()
    demo.discard()
    assert not demo.log.parent.exists()
    Paths.of_keeper().discard()
    assert keeper.read_bytes() == content
