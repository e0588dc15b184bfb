"""Composition root: builds everything and hands it down."""

from __future__ import annotations

import sys
from collections.abc import Sequence


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the program: the window, or a headless command.

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
    from evenwater.ui import start

    return start.run(words)


if __name__ == "__main__":
    sys.exit(main())
