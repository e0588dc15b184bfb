"""The Qt binding gives back what it borrows.

On Python 3.11, PySide6 6.12.0 drops a reference to None or to a bool that it does not own on every call returning one;
after some hundred signals the interpreter aborts. A test runner holds so many references to them that it hides the
fault, so they are counted in a bare process. From Python 3.12 on None and the bools are immortal and nothing can drift.
"""

from __future__ import annotations

import subprocess
import sys

import pytest

COUNT = """
import sys
from PySide6.QtCore import QByteArray, QObject, QTimer, Signal

CALLS = 500

def drift(thing, call):
    before = sys.getrefcount(thing)
    for _ in range(CALLS):
        call()
    return sys.getrefcount(thing) - before

class Sender(QObject):
    plain = Signal()
    carrying = Signal(object)

    def receive(self, *_):
        return None

sender = Sender()
sender.plain.connect(sender.receive)
sender.carrying.connect(sender.receive)
timer = QTimer(sender)
full, empty = QByteArray(b"x"), QByteArray()
drifts = {
    "None from a call": drift(None, lambda: sender.setObjectName("name")),
    "None from a signal": drift(None, sender.plain.emit),
    "None in a signal": drift(None, lambda: sender.carrying.emit(None)),
    "None returned": drift(None, sender.parent),
    "True returned": drift(True, empty.isEmpty),
    "False returned": drift(False, full.isEmpty),
    "True carried": drift(True, lambda: sender.carrying.emit(True)),
    "bool set and asked": drift(True, lambda: (timer.setSingleShot(True), timer.isSingleShot())),
}
drifts.update(EXTRA)
worst = {what: by for what, by in drifts.items() if abs(by) > CALLS // 50}
print(worst or "steady")
sys.stdout.flush()
"""


def counted(extra: str) -> str:
    code = COUNT.replace("EXTRA", extra)
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


def test_binding_keeps_reference_counts() -> None:
    assert counted("{}") == "steady"


@pytest.mark.skipif(sys.version_info >= (3, 12), reason="None is immortal from Python 3.12 on")
def test_lost_references_would_be_seen() -> None:
    # The other way round (references never given back) is as visible and cannot abort the interpreter.
    lost = (
        "{'lost': drift(None, lambda: __import__('ctypes').pythonapi.Py_IncRef(__import__('ctypes').py_object(None)))}"
    )
    assert "lost" in counted(lost)
