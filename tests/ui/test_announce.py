"""What is said aloud while the focus is elsewhere: mistakes at once, answers when the keys rest, undo, and what could not be saved."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.screens.views import AnswerView, Message
from evenwater.session import Document
from evenwater.store import Store
from evenwater.ui import announce
from evenwater.ui.announce import Announcer
from evenwater.ui.answer_panel import AnswerPanel
from evenwater.ui.sheet_header import SheetHeader

ANSWER = AnswerView("answered", figure="4.7", figure_unit="mL per hour", spoken="4.7 millilitres per hour for one day.")


@pytest.fixture
def heard(page: QWidget, monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, bool]]:
    """Return what is said on the page, as it is said; the keys rest sooner than they do in earnest."""
    monkeypatch.setattr(announce, "QUIET_MS", 60)
    said: list[tuple[str, bool]] = []
    Announcer.of(page).said.connect(lambda words, urgent: said.append((words, urgent)))
    return said


@pytest.fixture
def answer(page: QWidget) -> AnswerPanel:
    panel = AnswerPanel(page)
    page.layout().addWidget(panel)
    page.show()
    return panel


@pytest.fixture
def document(tmp_path, qapp) -> Iterator[Document]:
    with Store.open(tmp_path / "evenwater.sqlite") as store:
        yield Document(store)


def test_an_announcement_goes_to_the_screen_reader_with_its_urgency(page, heard, monkeypatch):
    sent = []
    monkeypatch.setattr(announce.QAccessible, "updateAccessibility", sent.append)
    Announcer.of(page).say("Saved.")
    Announcer.of(page).say("Not saved.", urgent=True)
    manners = QAccessible.AnnouncementPoliteness
    assert [(e.message(), e.politeness()) for e in sent] == [
        ("Saved.", manners.Polite),
        ("Not saved.", manners.Assertive),
    ]
    assert heard == [("Saved.", False), ("Not saved.", True)]


def test_a_window_has_one_voice(page):
    inner = QWidget(page)
    assert Announcer.of(inner) is Announcer.of(page)


def test_a_mistake_is_said_at_once_with_its_field(make, heard):
    field = make()
    QTest.keyClicks(field.line, "abc")
    field._commit()
    assert heard == [(f"Measured: {field.message}", True)]
    field._commit()
    assert len(heard) == 1, "and only once"


def test_an_answer_waits_until_the_keys_rest(qtbot, answer, heard):
    for figure in ("4", "4.7"):
        answer.render(AnswerView("answered", figure=figure, figure_unit="mL per hour", spoken=f"{figure} millilitres"))
        assert heard == []
    qtbot.waitUntil(lambda: bool(heard), timeout=2000)
    assert heard == [("4.7 millilitres", False)]


def test_an_answer_that_stays_is_not_said_again(qtbot, answer, heard):
    answer.render(ANSWER)
    qtbot.waitUntil(lambda: bool(heard), timeout=2000)
    answer.render(ANSWER)
    QTest.qWait(150)
    assert heard == [(ANSWER.spoken, False)]


def test_an_answer_that_turns_into_a_refusal_breaks_in(qtbot, answer, heard):
    answer.render(ANSWER)
    answer.render(AnswerView("refused", messages=(Message("The target is above the limit."),)))
    qtbot.waitUntil(lambda: bool(heard), timeout=2000)
    assert heard == [("The target is above the limit.", True)], (
        "and the answer that was never heard is not said any more"
    )
    heard.clear()
    answer.render(AnswerView("refused", messages=(Message("Half-typed."),)))
    answer.render(ANSWER)
    qtbot.waitUntil(lambda: bool(heard), timeout=2000)
    assert heard == [(ANSWER.spoken, False)]


def test_what_was_undone_and_what_could_not_be_saved(page, heard, document, qtbot):
    header = SheetHeader(document, page)
    page.layout().addWidget(header)
    page.show()
    system = document.add_record("system", {"name": Typed("One")})
    document.edit(system, "net_volume", Typed("300", "L"))
    header.undo.click()
    header.redo.click()
    assert [words.partition(":")[0] for words, _ in heard] == ["Undone", "Done again"]
    assert all("volume" in words for words, _ in heard)
    heard.clear()
    document.saveFailed.emit(Reason("store.full"))
    document.saveRestored.emit(1)
    assert [urgent for _, urgent in heard] == [True, False]
    assert heard[1][0] == "Everything is saved again."
