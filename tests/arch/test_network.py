"""No test and no process that a test starts can reach a network, so that whatever the suite proves holds offline.

Common practice, no source: what is not tried cannot fail where there is none, and tells nobody anything.
"""

from __future__ import annotations

import socket
import subprocess
import sys
from pathlib import Path

import pytest

# Of `tests/offline/sitecustomize.py`, which is not imported here: its hook would stay in this process.
EXIT_STATUS = 97
# Documentation addresses (RFC 5737); nothing is ever sent to them.
NOWHERE = ("192.0.2.1", 9)
TRIES = (
    f"socket.create_connection({NOWHERE!r}, 1)",
    f"socket.socket(socket.AF_INET, socket.SOCK_DGRAM).sendto(b'x', {NOWHERE!r})",
    "socket.getaddrinfo('name.invalid', 9)",
)


@pytest.mark.parametrize("tried", TRIES[::2])
def test_a_test_cannot(tried: str) -> None:
    with pytest.raises(AssertionError, match=r"connect to|look-up of"):
        eval(tried, {"socket": socket})  # noqa: S307  (our own words above)


def test_a_process_of_a_test_cannot_even_where_exceptions_are_caught() -> None:
    tries = "".join(f"\nif sys.argv[1] == '{n}':\n    {tried}" for n, tried in enumerate(TRIES))
    code = (
        f"import socket, sys\ntry:\n    pass{tries.replace(chr(10), chr(10) + '    ')}\nexcept BaseException:\n    pass"
    )
    for number in range(len(TRIES)):
        words = [sys.executable, "-c", code, str(number)]
        done = subprocess.run(words, capture_output=True, text=True, timeout=60, check=False)
        assert done.returncode == EXIT_STATUS, done.stderr
        assert "tried to reach a network" in done.stderr


def test_the_headless_door_answers_under_that_guard(tmp_path: Path) -> None:
    question = tmp_path / "question.toml"
    question.write_text('kind = "convert"\nvalue = "8 dKH"\nto = "meq/L"\nparameter = "alkalinity"\n', encoding="utf-8")
    code = "import runpy, sys; assert 'offline' in sys.modules['sitecustomize'].__file__; "
    code += "runpy.run_module('evenwater', run_name='__main__', alter_sys=True)"
    words = [sys.executable, "-c", code, "answer", str(question)]
    done = subprocess.run(words, capture_output=True, text=True, timeout=60, check=False)
    assert (done.returncode, done.stderr) == (0, "")
