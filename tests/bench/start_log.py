"""An ordinary log to open: the demonstration's room with its three years of entries, as a keeper's own file.

python -m tests.bench.start_log LOG
"""

from __future__ import annotations

import sys
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QCoreApplication

from evenwater.assets import resources
from evenwater.engine.reasons import Reason
from evenwater.session import open_log
from evenwater.session.demo import fill_from


def main() -> None:
    app = QCoreApplication([])
    document = open_log(Path(sys.argv[1]), app)
    if isinstance(document, Reason) or not fill_from(document, resources() / "demo.toml", datetime.now(UTC)):
        sys.exit(f"{sys.argv[1]} could not be filled")
    document.close()


if __name__ == "__main__":
    main()
