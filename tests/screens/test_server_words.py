"""What is said of a log on a server that is away, and that every refusal of one has a sentence."""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.engine.reasons import Reason
from evenwater.screens import backup_words, room_words, server_words
from evenwater.screens.server_words import SERVER_SENTENCES, copy_shown

STORE = Path(server_words.__file__).parents[1] / "store"
NOW = datetime(2026, 11, 26, 14, 0, tzinfo=UTC)


def test_H69_the_notice_says_when_the_copy_was_made_and_what_is_not_in_it() -> None:
    today = copy_shown(NOW - timedelta(hours=2, minutes=5), NOW)
    assert today == (
        "Read from this computer's copy of 11:55; the server does not answer. What others logged since is not in it."
    )
    assert "Wed 25 Nov" in copy_shown(NOW - timedelta(days=1), NOW), "a clock time alone would be taken for today's"
    assert "does not answer" in copy_shown(None, NOW)
    fault = Reason("store.from_copy", {"at": NOW})
    assert backup_words.no_copy(fault) == room_words.sentence(fault), "where the daily copy's fault stands as well"


def test_what_was_not_done_is_not_said_to_be_kept() -> None:
    waits, away = (room_words.sentence(Reason(code, {"at": NOW})) for code in ("store.waits", "store.away"))
    assert "sent when the server answers" in waits
    assert "was not done" in away


def test_every_refusal_of_a_server_has_a_sentence() -> None:
    files = ("link", "postgres", "postgres_schema", "address", "log_copy", "facility", "spool", "last_state")
    text = "".join((STORE / f"{name}.py").read_text(encoding="utf-8") for name in files)
    codes = set(re.findall(r'"(store\.[a-z_]+)"', text)) - {"store.delivered"}
    assert len(codes) > 12
    for code in codes | SERVER_SENTENCES.keys():
        said = room_words.sentence(Reason(code, {"at": NOW, "who": "Ada", "file": "f", "backup": ""}))
        assert code not in said, f"{code} has no words"
