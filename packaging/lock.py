"""Write packaging/locked/*.txt: every pin of constraints.txt with the hashes of its wheels on every platform.

Run it with a Python that has pip 23 or newer and `packaging` after changing a pin:

    python packaging/lock.py            every group
    python packaging/lock.py package    only the groups that are named

Only hashes are kept: which index they came from is the business of the pip that runs here.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
from pathlib import Path

from packaging.markers import default_environment
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

HERE = Path(__file__).resolve().parent
GROUPS = ("run", "build", "test", "dev", "facility", "package")
PYTHONS = ("3.11", "3.12", "3.13", "3.14")
LINUX = ("manylinux_2_39", "manylinux_2_34", "manylinux_2_28", "manylinux_2_27", "manylinux_2_17", "manylinux2014")
# Windows on ARM is left out: gsw has no wheel there.
PLATFORMS = {
    "Linux x86_64": [f"{tag}_x86_64" for tag in LINUX],
    "Linux aarch64": [f"{tag}_aarch64" for tag in LINUX],
    "macOS arm64": ["macosx_14_0_arm64"],
    "macOS x86_64": ["macosx_14_0_x86_64"],
    "Windows x86_64": ["win_amd64"],
}
SYSTEMS = {"Linux": "linux", "macOS": "darwin", "Windows": "win32"}


def read_groups() -> dict[str, list[Requirement]]:
    """Return the pins of constraints.txt by the group they stand in."""
    groups: dict[str, list[Requirement]] = {}
    current: list[Requirement] = []
    for line in (HERE / "constraints.txt").read_text(encoding="utf-8").splitlines():
        if line.removeprefix("# ") in GROUPS:
            current = groups.setdefault(line.removeprefix("# "), [])
        elif line and not line.startswith("#"):
            current.append(Requirement(line.split("#")[0].strip()))
    return groups


def wheels(pins: list[str], python: str, tags: list[str]) -> dict[str, tuple[str, str]]:
    """Ask pip which wheel it would take for each pin; return pin -> (file name, sha256), without those that have none."""
    if not pins:
        return {}
    with tempfile.TemporaryDirectory() as scratch:
        report = Path(scratch) / "report.json"
        done = subprocess.run(
            [sys.executable, "-m", "pip", "install", "--quiet", "--dry-run", "--ignore-installed", "--no-deps"]
            + ["--only-binary=:all:", "--implementation=cp", f"--python-version={python}"]
            + [f"--platform={tag}" for tag in tags]
            + [f"--target={scratch}/target", f"--report={report}", *pins],
            check=False,
            capture_output=True,
            text=True,
        )
        if done.returncode == 0:
            by_name = {canonicalize_name(Requirement(pin).name): pin for pin in pins}
            found = {}
            for item in json.loads(report.read_text(encoding="utf-8"))["install"]:
                info = item["download_info"]
                wheel = (info["url"].rsplit("/", 1)[1], info["archive_info"]["hashes"]["sha256"])
                found[by_name[canonicalize_name(item["metadata"]["name"])]] = wheel
            return found
    if len(pins) == 1:
        return {}
    half = len(pins) // 2
    return wheels(pins[:half], python, tags) | wheels(pins[half:], python, tags)


def collect(groups: dict[str, list[Requirement]]) -> dict[str, set[str]]:
    """Return the hashes of each pin over all Pythons and platforms, and say which platform has no wheel of which."""
    hashes: dict[str, set[str]] = {}
    universal: set[str] = set()
    for python in PYTHONS:
        environment = {**default_environment(), "python_version": python, "python_full_version": f"{python}.0"}
        for platform, tags in PLATFORMS.items():
            environment["sys_platform"] = SYSTEMS[platform.split()[0]]
            wanted = [
                f"{pin.name}{pin.specifier}"
                for pins in groups.values()
                for pin in pins
                if pin.marker is None or pin.marker.evaluate({k: str(v) for k, v in environment.items()})
            ]
            wanted = [pin for pin in wanted if pin not in universal]
            found = wheels(wanted, python, tags)
            for pin, (name, sha256) in found.items():
                hashes.setdefault(pin, set()).add(sha256)
                if name.endswith("-none-any.whl"):
                    universal.add(pin)
            missing = [pin for pin in wanted if pin not in found]
            print(f"Python {python}, {platform}: {len(found)} wheels; none of {', '.join(missing) or 'nothing'}")
    return hashes


def main() -> None:
    named = sys.argv[1:] or GROUPS
    groups = {name: pins for name, pins in read_groups().items() if name in named}
    hashes = collect(groups)
    (HERE / "locked").mkdir(exist_ok=True)
    for group, pins in groups.items():
        lines = [f"# What Evenwater needs to {group}: written by packaging/lock.py from constraints.txt."]
        for pin in pins:
            entry = f"{pin.name}{pin.specifier}" + (f" ; {pin.marker}" if pin.marker else "")
            lines += [f"{entry} \\"]
            lines += [f"    --hash=sha256:{sha256} \\" for sha256 in sorted(hashes[f"{pin.name}{pin.specifier}"])]
            lines[-1] = lines[-1].removesuffix(" \\")
        (HERE / "locked" / f"{group}.txt").write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
