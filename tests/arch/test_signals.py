"""Signals reach bound methods only, and nothing is modal.

A lambda or partial on a signal keeps its widget alive, or is never called once its owner has died; `exec()` stops the
rest of the window and hangs a test run.
"""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.arch.tree import parsed, python_files, shown


def loose_receivers(tree: ast.Module) -> list[str]:
    """Return the connects whose receiver is a lambda, a partial or a function defined on the spot."""
    found = []
    for function in ast.walk(tree):
        if not isinstance(function, ast.FunctionDef | ast.AsyncFunctionDef | ast.Module):
            continue
        local = {
            node.name
            for node in ast.walk(function)
            if isinstance(function, ast.FunctionDef) and isinstance(node, ast.FunctionDef) and node is not function
        }
        for node in ast.walk(function):
            if not (
                isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "connect"
            ):
                continue
            for receiver in [*node.args, *(keyword.value for keyword in node.keywords)]:
                called = receiver.func if isinstance(receiver, ast.Call) else None
                name = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
                loose = isinstance(receiver, ast.Lambda) or name in {"partial", "partialmethod"}
                if loose or (isinstance(receiver, ast.Name) and receiver.id in local):
                    found.append(f"line {node.lineno}")
    return found


def modal_calls(tree: ast.Module) -> list[str]:
    """Return the calls that stop everything else until they are answered."""
    static = {"information", "warning", "critical", "question", "getText", "getOpenFileName", "getSaveFileName"}
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
            owner = node.func.value.id if isinstance(node.func.value, ast.Name) else ""
            of_dialog = owner.endswith(("MessageBox", "Dialog")) and node.func.attr in static
            runs_application = owner in {"app", "application"}
            if of_dialog or (node.func.attr in {"exec", "exec_"} and not runs_application):
                found.append(f"line {node.lineno}: {node.func.attr}")
    return found


@pytest.mark.parametrize(
    "source",
    [
        "button.clicked.connect(lambda: self.save())",
        "def f(self):\n    timer.timeout.connect(functools.partial(self.save, 1))",
        "timer.timeout.connect(slot=partial(save))",
        "def f(self):\n    def inner():\n        pass\n    button.clicked.connect(inner)",
    ],
)
def test_loose_receiver_is_seen(source: str) -> None:
    assert loose_receivers(ast.parse(source))


@pytest.mark.parametrize("source", ["dialog.exec()", "QMessageBox.warning(self, 'a', 'b')", "menu.exec_(point)"])
def test_modal_call_is_seen(source: str) -> None:
    assert modal_calls(ast.parse(source))


def test_bound_methods_pass() -> None:
    source = "def f(self):\n    button.clicked.connect(self._save)\n    menu.popup(point)\n    dialog.open()"
    assert loose_receivers(ast.parse(source)) == modal_calls(ast.parse(source)) == []


@pytest.mark.parametrize("file", python_files("ui", "session", "card"), ids=shown)
def test_signals_and_dialogs(file: Path) -> None:
    assert loose_receivers(parsed(file)) == []
    assert modal_calls(parsed(file)) == []
