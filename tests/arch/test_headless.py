"""`evenwater question` and `evenwater answer` load no Qt, so they run on a server that has none."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

from tests.arch.tree import PRODUCT

RUN = """
import runpy, sys
sys.path.insert(0, {desktop!r})
sys.argv = ["evenwater", *sys.argv[1:]]
try:
    runpy.run_module("evenwater", run_name="__main__", alter_sys=True)
finally:
    qt = sorted(name for name in sys.modules if name.split(".")[0] in ("PySide6", "shiboken6", "pyqtgraph"))
    print("loaded:", *qt, file=sys.stderr)
"""


def evenwater(*words: str) -> subprocess.CompletedProcess[str]:
    code = RUN.format(desktop=str(PRODUCT.parent))
    return subprocess.run([sys.executable, "-c", code, *words], capture_output=True, text=True, timeout=60, check=False)


def test_question_and_answer_load_no_qt(tmp_path: Path) -> None:
    asked = evenwater("question", "correction")
    assert asked.returncode == 0, asked.stderr
    assert asked.stderr.strip() == "loaded:"
    question = tmp_path / "question.toml"
    question.write_text(asked.stdout, encoding="utf-8")
    answered = evenwater("answer", str(question))
    assert answered.returncode == 0, answered.stderr
    assert json.loads(answered.stdout)["status"] == "answered"
    assert answered.stderr.strip() == "loaded:"


def test_card_loads_qt_only_when_asked_for(tmp_path: Path) -> None:
    question = tmp_path / "question.toml"
    question.write_text(evenwater("question", "correction").stdout, encoding="utf-8")
    card = tmp_path / "card.pdf"
    answered = evenwater("answer", str(question), "--card", str(card))
    assert answered.returncode == 0, answered.stderr
    assert card.read_bytes().startswith(b"%PDF")
    assert "PySide6.QtGui" in answered.stderr
