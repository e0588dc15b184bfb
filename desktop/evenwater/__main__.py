"""Composition root: builds everything and hands it down."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the program: the window, the answer to a question file in a window of its own, or a headless command.

    Parameters
    ----------
    arguments : sequence of str or None
        Words after the program's name; those of the process when not given.

    Returns
    -------
    int
        Exit status.
    """
    words = list(sys.argv[1:] if arguments is None else arguments)
    if words and words[0] in ("answer", "question"):
        from evenwater import headless

        return headless.run(words)
    if words and words[0] == "log-copy":
        return _copy_log(words[1:])
    if words and words[0] in ("--version", "--licences"):
        return _about(words[0])
    if words and Path(words[0]).is_file():
        from evenwater.headless import told
        from evenwater.ui import question_window

        return question_window.run(Path(words[0]), told, words[1:])
    from evenwater.ui import start

    return start.run(words)


def _copy_log(places: list[str]) -> int:
    """Copy a log from a file to a server or back, and say what was copied; return the exit status."""
    import tempfile

    from evenwater.screens.room_words import sentence
    from evenwater.store import StoreError
    from evenwater.store.log_copy import copy_log

    if len(places) != 2:
        sys.stderr.write("usage: evenwater log-copy FROM TO, each a file or postgresql://NAME@SERVER/DATABASE\n")
        return 2
    try:
        with tempfile.TemporaryDirectory() as scratch:
            copied = copy_log(places[0], places[1], Path(scratch))
    except StoreError as error:
        sys.stderr.write(f"evenwater: {sentence(error.reason)}\n")
        return 1
    for table, count in copied.rows:
        print(f"{count:9} {table.replace('_', ' ')}")
    print(f"The copy was read back and is the same, row by row: {copied.digest}")
    return 0


def _about(word: str) -> int:
    """Print the version, or what the program is made of and where the licences' texts are; return the exit status."""
    from evenwater import __version__, assets

    if word == "--version":
        print(f"evenwater {__version__}")
        return 0
    print((assets.resources() / "licences.md").read_text(encoding="utf-8"))
    texts = Path(sys.executable).parent / "licences"
    if texts.is_dir():
        print(f"The texts are in {texts}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
