"""What every test gets: no display, no network, a home of its own, the product's font, no widget left behind."""

from __future__ import annotations

import gc
import os
import socket
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import suppress
from itertools import count
from pathlib import Path
from typing import Any

# Before anything loads Qt: the platform is chosen once per process.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# Processes that tests start find the product as the tests do, installed or not, and reach no network either.
_HERE = Path(__file__).resolve().parent
_FOUND_BY_PROCESSES = (str(_HERE / "offline"), str(_HERE.parent / "desktop"), os.environ.get("PYTHONPATH"))
os.environ["PYTHONPATH"] = os.pathsep.join(filter(None, _FOUND_BY_PROCESSES))

import pytest  # noqa: E402  (what stands above must come first)
from hypothesis import HealthCheck, settings  # noqa: E402

from tests.postgres import server  # noqa: E402, F401  (a fixture)
from tests.proof import Proof  # noqa: E402

# The same examples everywhere, so that a red run can be repeated; `--hypothesis-profile=search` hunts for new ones.
settings.register_profile("repeatable", derandomize=True, deadline=None, print_blob=True)
settings.register_profile("search", max_examples=2000, deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("repeatable")

_FAILED = pytest.StashKey[bool]()


def pytest_configure(config: pytest.Config) -> None:
    """Let hazards and the trust page be held against what a run of all tests proved."""
    config.pluginmanager.register(Proof(), "proof")


class NetworkUsedError(AssertionError):
    """A test, or the product in it, tried to reach a network."""


@pytest.fixture(scope="session", autouse=True)
def no_network() -> Iterator[None]:
    """Everything works offline: any connection but to a local (Unix) socket, such as a display's, fails the test."""
    real_connect, real_connect_ex = socket.socket.connect, socket.socket.connect_ex

    def allowed(used: socket.socket) -> bool:
        return used.family == getattr(socket, "AF_UNIX", None)

    def connect(self: socket.socket, address: Any) -> None:
        if not allowed(self):
            raise NetworkUsedError(f"connect to {address}")
        real_connect(self, address)

    def connect_ex(self: socket.socket, address: Any) -> int:
        if not allowed(self):
            raise NetworkUsedError(f"connect to {address}")
        return real_connect_ex(self, address)

    def look_up(host: Any, *_args: Any, **_named: Any) -> None:
        raise NetworkUsedError(f"look-up of {host}")

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(socket.socket, "connect", connect)
        patch.setattr(socket.socket, "connect_ex", connect_ex)
        patch.setattr(socket, "getaddrinfo", look_up)
        patch.setattr(socket, "gethostbyname", look_up)
        yield


@pytest.fixture(scope="session")
def new_home(tmp_path_factory: pytest.TempPathFactory) -> Callable[[], Path]:
    """Return a function that makes an empty folder. pytest's own looks through all there are for the next number, thousands of times."""
    folder, numbers = tmp_path_factory.mktemp("homes"), count()

    def make() -> Path:
        home = folder / str(next(numbers))
        home.mkdir()
        return home

    return make


@pytest.fixture(autouse=True)
def own_home(new_home: Callable[[], Path], monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """Give each test an empty home, so that no test sees the keeper's data or another test's."""
    home = new_home()
    for name in ("HOME", "USERPROFILE"):
        monkeypatch.setenv(name, str(home))
    folders = {
        "XDG_CACHE_HOME": "cache",
        "XDG_CONFIG_HOME": "config",
        "XDG_DATA_HOME": "data",
        "XDG_STATE_HOME": "state",
        "APPDATA": "roaming",
        "LOCALAPPDATA": "local",
    }
    for name, folder in folders.items():
        monkeypatch.setenv(name, str(home / folder))
    core = sys.modules.get("PySide6.QtCore")
    if core is not None:
        # Settings keep the first folder they were asked in, and would tell one test what another chose.
        settings = core.QSettings
        for kind in (settings.Format.NativeFormat, settings.Format.IniFormat):
            settings.setPath(kind, settings.Scope.UserScope, str(home / "config"))
    yield home
    with suppress(OSError):  # which says that there is something in it
        home.rmdir()


@pytest.fixture
def young_demo(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the demo begin without its three years of entries, for tests that have nothing to do with them."""
    monkeypatch.setattr("evenwater.session.demo.demo_entries", lambda *_: ())


@pytest.fixture(scope="session")
def qapp(qapp: Any) -> Any:
    """Return the application with the product's own font in it, as the window and the card have it."""
    from PySide6.QtGui import QFont, QFontInfo

    from evenwater.card.fonts import load_fonts

    family = load_fonts()
    assert QFontInfo(QFont(family)).family() == family, "without the product's font all measures of text are wrong"
    assert family.startswith("Atkinson Hyperlegible")
    qapp.setFont(QFont(family, 11))
    return qapp


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(item: pytest.Item) -> Iterator[None]:
    report = yield
    item.stash[_FAILED] = item.stash.get(_FAILED, False) or report.failed
    return report


def pytest_collection_finish() -> None:
    """Let the garbage collector pass over what lives as long as the run: thousands of tests, and the libraries."""
    gc.collect()
    gc.freeze()


@pytest.fixture(autouse=True)
def nothing_left_behind(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a test that leaves a top-level widget or a running thread behind.

    After a failure nothing is asked: the traceback itself keeps the test's widgets.
    """
    threads_before = set(threading.enumerate())
    yield
    if request.node.stash.get(_FAILED, False):
        return
    widgets = _widgets_left() if _application_runs() else []
    assert not widgets, f"top-level widgets left behind: {widgets}"
    threads = [
        t for t in threading.enumerate() if t not in threads_before and not isinstance(t, threading._DummyThread)
    ]
    assert not threads, f"threads left running: {threads}"


def _application_runs() -> bool:
    if "PySide6.QtWidgets" not in sys.modules:
        return False
    from PySide6.QtWidgets import QApplication

    return QApplication.instance() is not None


def _widgets_left() -> list[str]:
    from PySide6.QtCore import QCoreApplication, QEvent
    from PySide6.QtWidgets import QApplication

    # deleteLater is only carried out by an event loop, and none runs between tests.
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    if QApplication.topLevelWidgets():
        gc.collect()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    return [f"{type(widget).__name__} {widget.objectName()!r}" for widget in QApplication.topLevelWidgets()]
