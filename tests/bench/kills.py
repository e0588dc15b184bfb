"""Pulls the plug on a writer of entries again and again: python -m tests.bench.kills FOLDER KILLS."""

from __future__ import annotations

import json
import sys
import time
from dataclasses import asdict
from pathlib import Path

from tests.store.killing import kill


def main() -> None:
    began = time.monotonic()
    found = asdict(kill(Path(sys.argv[1]) / "log.sqlite", int(sys.argv[2]), seed=20261128))
    print(json.dumps(found | {"moments": len(found["moments"]), "seconds": time.monotonic() - began}))


if __name__ == "__main__":
    main()
