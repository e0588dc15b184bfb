"""Makes the Debian package and the archives from a frozen folder, and tries them. Called by freeze.py; or again, from a folder kept before:

    python packaging/linux.py FOLDER        FOLDER/evenwater -> FOLDER/*.deb, *.AppDir.tar.xz and *.run

The same folder makes the same files, byte by byte: names in order, owner root, the release's midnight as the time of everything. An
AppImage proper needs a runtime that is not ours to fetch; the AppDir is laid out so that its tool can be run on it as it is.
"""

from __future__ import annotations

import gzip
import hashlib
import lzma
import os
import platform
import re
import shutil
import subprocess
import sys
import tarfile
import tempfile
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path
from string import Template

import facts
import newcomer
from frozen import slim, trial

# Debian's packages of the system's libraries that the frozen folder brings along, and that the Debian package leaves to Debian.
_OF_DEBIAN = {
    "bz2": "libbz2-1.0", "expat": "libexpat1", "ffi": "libffi8", "gcc_s": "libgcc-s1", "lzma": "liblzma5", "sqlite3": "libsqlite3-0",
    "stdc++": "libstdc++6", "uuid": "libuuid1", "z": "zlib1g", "zstd": "libzstd1",
}  # fmt: skip
LIB = Path("usr", "lib", facts.COMMAND)


def _filled(template: str, **more: str) -> str:
    """Return a template with the facts in it."""
    summary = facts.SUMMARY[0].lower() + facts.SUMMARY[1:]
    date, _ = facts.released()
    known = {
        "name": facts.NAME, "command": facts.COMMAND, "authors": facts.AUTHORS, "version": facts.version(), "date": date,
        "summary_low": summary, "suffix": facts.QUESTION_SUFFIX,
    }  # fmt: skip
    return Template((facts.TEMPLATES / template).read_text(encoding="utf-8")).substitute(known | more)


def _put(place: Path, data: str | bytes, mode: int = 0o644) -> None:
    place.parent.mkdir(parents=True, exist_ok=True)
    place.write_bytes(data.encode() if isinstance(data, str) else data)
    place.chmod(mode)


def share(root: Path) -> None:
    """Put what a desktop wants to know under ``root/usr/share``: entry, metainfo, MIME type, icons."""
    own, icons = facts.ROOT / "resources" / "linux", facts.ROOT / "resources" / "icons"
    places = {
        f"applications/{facts.ID}.desktop": own / f"{facts.ID}.desktop",
        f"metainfo/{facts.ID}.metainfo.xml": own / f"{facts.ID}.metainfo.xml",
        f"mime/packages/{facts.ID}.xml": own / f"{facts.ID}.mime.xml",
        f"icons/hicolor/scalable/apps/{facts.ID}.svg": icons / "evenwater.svg",
    }
    for picture in sorted(icons.glob("evenwater-*.png")):
        size = picture.stem.removeprefix("evenwater-")
        places[f"icons/hicolor/{size}x{size}/apps/{facts.ID}.png"] = picture
    for place, source in places.items():
        _put(root / "usr" / "share" / place, source.read_bytes())


def _stem(library: Path) -> str:
    return library.name.split(".so.")[0].removeprefix("lib")


def left_to_debian(frozen: Path) -> list[Path]:
    """Return the libraries in a frozen folder that Debian has in packages of its own."""
    return [
        file
        for file in sorted((frozen / "_internal").glob("lib*.so.*"))
        if not file.is_symlink() and _stem(file) in slim.SYSTEM and not _stem(file).startswith("python3")
    ]


def glibc(folder: Path) -> str:
    """Return the newest version of the C library that any file of a folder asks for."""
    asked = {(2, 17)}
    for file in folder.rglob("*"):
        if file.is_file() and not file.is_symlink():
            with file.open("rb") as data:
                if data.read(4) == b"\x7fELF":
                    asked |= {(2, int(found)) for found in re.findall(rb"GLIBC_2\.(\d+)", data.read())}
    return ".".join(map(str, max(asked)))


def depends(frozen: Path, left: list[Path]) -> str:
    """Return the packages that the Debian package needs."""
    window = newcomer.BASE_LIBRARIES | newcomer.WINDOW_LIBRARIES
    packages = set(window.values()) | {"tzdata"}
    for file in left:
        package = _OF_DEBIAN.get(_stem(file)) or window.get(file.name)
        assert package, f"linux.py does not know which Debian package {file.name} is in"
        packages.add(package)
    return ", ".join([f"libc6 (>= {glibc(frozen)})", *sorted(packages)])


def _wrapped(text: str) -> str:
    """Return a paragraph as control files want it."""
    lines, line = [], ""
    for word in text.split():
        if len(line) + len(word) > 76:
            lines.append(line)
            line = ""
        line += f" {word}"
    return "\n".join([*lines, line])


def debian(frozen: Path, out: Path, epoch: int) -> Path:
    """Make the Debian package from a frozen folder; return its file."""
    asked = ["dpkg", "--print-architecture"]
    architecture = subprocess.run(asked, check=True, capture_output=True, text=True).stdout.strip()
    with tempfile.TemporaryDirectory() as scratch:
        root = Path(scratch) / "root"
        left = left_to_debian(frozen)
        shutil.copytree(
            frozen,
            root / LIB,
            symlinks=True,
            ignore=lambda folder, _names: {f.name for f in left} if Path(folder) == frozen / "_internal" else set(),
        )
        (root / "usr" / "bin").mkdir()
        (root / "usr" / "bin" / facts.COMMAND).symlink_to(Path("..", "lib", facts.COMMAND, facts.COMMAND))
        share(root)
        documents = root / "usr" / "share" / "doc" / facts.COMMAND
        licence = (facts.ROOT / "LICENSE").read_text(encoding="utf-8")
        licence = "\n".join(f" {line}" if line else " ." for line in licence.splitlines()[4:])
        _put(documents / "copyright", _filled("copyright.in", licence_deb=licence))
        _put(documents / "changelog.gz", gzip.compress(_debian_changes().encode(), 9, mtime=0))
        manual = gzip.compress(_filled("man.in").encode(), 9, mtime=0)
        _put(root / "usr" / "share" / "man" / "man1" / f"{facts.COMMAND}.1.gz", manual)
        _even(root, epoch)
        files = [file for file in sorted(root.rglob("*")) if file.is_file() and not file.is_symlink()]
        control = _filled(
            "control.in",
            architecture=architecture,
            kibibytes=str(sum(-(-file.stat().st_size // 1024) for file in files)),
            depends=depends(frozen, left),
            description_deb="\n .\n".join(_wrapped(part) for part in facts.DESCRIPTION),
        )
        sums = "".join(f"{hashlib.md5(f.read_bytes()).hexdigest()}  {f.relative_to(root)}\n" for f in files)  # noqa: S324
        _put(root / "DEBIAN" / "control", control)
        _put(root / "DEBIAN" / "md5sums", sums)
        _even(root / "DEBIAN", epoch)
        made = out / f"{facts.COMMAND}_{facts.version()}_{architecture}.deb"
        words = ["dpkg-deb", "--root-owner-group", "-Zxz", "--build", root, made]
        environment = os.environ | {"SOURCE_DATE_EPOCH": str(epoch)}
        subprocess.run([str(word) for word in words], check=True, env=environment, stdout=subprocess.DEVNULL)
    return made


def _debian_changes() -> str:
    """Return the newest entry of the changes as Debian writes them."""
    date, news = facts.released()
    when = subprocess.run(
        ["date", "-u", "-R", "-d", date], check=True, capture_output=True, text=True, env={**os.environ, "LC_ALL": "C"}
    ).stdout.strip()
    entries = "\n".join(f"  *{_wrapped(entry)}".replace("\n ", "\n    ") for entry in news)
    who = f"{facts.AUTHORS} <authors@evenwater.invalid>"
    return f"{facts.COMMAND} ({facts.version()}) unstable; urgency=medium\n\n{entries}\n\n -- {who}  {when}\n"


def _even(root: Path, epoch: int) -> None:
    """Give every file the rights and the time that a package has, whoever built it and when."""
    for file in (root, *root.rglob("*")):
        if not file.is_symlink():
            runs = file.is_dir() or file.name in (facts.COMMAND, "AppRun")
            file.chmod(0o755 if runs else 0o644)
        os.utime(file, (epoch, epoch), follow_symlinks=False)


def _members(folder: Path, name: str, epoch: int) -> Iterator[tuple[tarfile.TarInfo, bytes | None]]:
    for file in sorted((folder, *folder.rglob("*"))):
        place = Path(name) / file.relative_to(folder)
        info = tarfile.TarInfo(str(place))
        info.mtime, info.mode = epoch, 0o755 if file.is_dir() else file.lstat().st_mode & 0o777
        if file.is_symlink():
            info.type, info.linkname, info.mode = tarfile.SYMTYPE, str(file.readlink()), 0o777
            yield info, None
        elif file.is_dir():
            info.type = tarfile.DIRTYPE
            yield info, None
        else:
            info.size = file.stat().st_size
            yield info, file.read_bytes()


def archives(frozen: Path, out: Path, epoch: int) -> tuple[Path, Path]:
    """Make the AppDir's archive and the file that unpacks itself; return both."""
    name = f"{facts.NAME}-{facts.version()}-{platform.machine()}"
    with tempfile.TemporaryDirectory() as scratch:
        root = Path(scratch) / f"{facts.NAME}.AppDir"
        shutil.copytree(frozen, root / LIB, symlinks=True)
        share(root)
        _put(root / "AppRun", _filled("AppRun.in"), 0o755)
        shutil.copyfile(facts.ROOT / "resources" / "linux" / f"{facts.ID}.desktop", root / f"{facts.ID}.desktop")
        shutil.copyfile(facts.ROOT / "resources" / "icons" / "evenwater-256.png", root / f"{facts.ID}.png")
        (root / ".DirIcon").symlink_to(f"{facts.ID}.png")
        _even(root, epoch)
        whole = BytesIO()
        with tarfile.open(fileobj=whole, mode="w", format=tarfile.GNU_FORMAT) as archive:
            for info, data in _members(root, root.name, epoch):
                archive.addfile(info, None if data is None else BytesIO(data))
    packed = lzma.compress(whole.getvalue(), preset=6)
    archive_file, runs = out / f"{name}.AppDir.tar.xz", out / f"{name}.run"
    archive_file.write_bytes(packed)
    runs.write_bytes(_filled("run.in", sum=hashlib.sha256(packed).hexdigest()[:12]).encode() + packed)
    runs.chmod(0o755)
    return archive_file, runs


def package(frozen: Path, out: Path, epoch: int) -> None:
    """Make and try everything, and print the sizes."""
    made = [debian(frozen, out, epoch), *archives(frozen, out, epoch)]
    # The folder in them has answered everything before.
    brief = ("correction",)
    with tempfile.TemporaryDirectory() as name:
        scratch = Path(name)
        print(f"Trying {made[0].name}, unpacked (installing it is for a machine of its own):", flush=True)
        subprocess.run(["dpkg-deb", "-x", str(made[0]), str(scratch / "deb")], check=True)
        trial.use(trial.Program(scratch / "deb" / "usr" / "bin" / facts.COMMAND, scratch / "home"), brief)
        print(f"Trying {made[1].name}:", flush=True)
        (scratch / "where it lies").mkdir()
        subprocess.run(["tar", "-xJf", str(made[1]), "-C", str(scratch / "where it lies")], check=True)
        trial.use(
            trial.Program(scratch / "where it lies" / f"{facts.NAME}.AppDir" / "AppRun", scratch / "home2"), brief
        )
        print(f"Trying {made[2].name}:", flush=True)
        trial.use(trial.Program(made[2], scratch / "home3"), brief)
    for file in made:
        print(
            f"{file.stat().st_size / 1e6:8.1f} MB  {file.name}  sha256 {hashlib.sha256(file.read_bytes()).hexdigest()}"
        )


if __name__ == "__main__":
    import freeze

    if len(sys.argv) != 2 or not Path(sys.argv[1], facts.COMMAND).is_dir():
        sys.exit(__doc__)
    package(Path(sys.argv[1]) / facts.COMMAND, Path(sys.argv[1]), int(freeze.epoch()))
