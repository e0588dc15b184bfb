"""A disk of a megabyte that can be filled to its last byte; where none can be made, the system refuses to let files grow."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

_ROOM_BYTES = 2**20
# Below the size of any log, card or copy: whatever is written to goes beyond it.
_LIMIT_BYTES = 4096


@dataclass
class SmallDisk:
    """A folder on the disk; ``mounted`` says whether it is a disk of its own."""

    folder: Path
    mounted: bool

    @contextmanager
    def full(self, left: int = 0) -> Iterator[None]:
        """Leave no room, or so many bytes, inside the block."""
        if not self.mounted:
            with _files_that_do_not_grow():
                yield
            return
        filler = self.folder / "filler"
        with filler.open("wb", buffering=0) as stream, suppress(OSError):
            while stream.write(b"x" * 4096):
                pass
        if left:
            os.truncate(filler, filler.stat().st_size - left)
        try:
            yield
        finally:
            filler.unlink()


@contextmanager
def _files_that_do_not_grow() -> Iterator[None]:
    import resource

    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (_LIMIT_BYTES, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


@contextmanager
def small_disk(folder: Path) -> Iterator[SmallDisk]:
    """Make a disk of a megabyte at an empty folder, where the system lets us."""
    mount = shutil.which("mount")
    command = [mount or "mount", "-t", "tmpfs", "-o", f"size={_ROOM_BYTES}", "evenwater", str(folder)]
    mounted = (
        bool(mount) and os.name == "posix" and subprocess.run(command, capture_output=True, check=False).returncode == 0
    )
    try:
        yield SmallDisk(folder, mounted)
    finally:
        if mounted:
            subprocess.run([shutil.which("umount") or "umount", "--lazy", str(folder)], check=True)
