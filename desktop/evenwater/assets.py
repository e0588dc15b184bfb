"""Finds the data that ships with the product: inside the wheel, or beside the source tree."""

from __future__ import annotations

from pathlib import Path

_HERE = Path(__file__).resolve().parent


def resources() -> Path:
    """Return the folder that holds parameters.toml, chemicals.toml, fonts, icons and the demo.

    Raises
    ------
    FileNotFoundError
        When the installation is incomplete.
    """
    for folder in (_HERE / "resources", _HERE.parent.parent / "resources"):
        if (folder / "parameters.toml").is_file():
            return folder
    raise FileNotFoundError(
        "Evenwater's resources are missing: parameters.toml was not found. Install the program again."
    )
