"""Deals groups of blocks out to pages: kept together where they can be, cut between lines where not."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from evenwater.card.failures import CardFailed
from evenwater.card.items import Block, Item, frame, stack
from evenwater.engine.reasons import Reason


@dataclass(frozen=True)
class Group:
    """Blocks that belong together.

    ``before`` is the blank above, ``after`` the blank that must follow [mm]. ``head`` stands above
    the blocks and ``side`` left of them; both are repeated where a group goes on over the page, but
    ``more``, if given, then stands in the place of ``head``.
    ``border`` is the thickness of a frame around all [mm], 0 for none, ``pad`` the blank inside it,
    ``gap`` the blank between two blocks.
    """

    width: float
    blocks: tuple[Block, ...]
    before: float = 0.0
    after: float = 0.0
    head: Block | None = None
    more: Block | None = None
    side: Block | None = None
    border: float = 0.0
    pad: float = 0.0
    gap: float = 0.0

    def set(self, first: int = 0, last: int | None = None) -> Block:
        """Return blocks ``first`` to ``last`` as one, with head, side and frame."""
        inner = stack(self.blocks[first:last], self.gap)
        items: list[Item] = []
        y = self.pad
        above = self.more if first and self.more is not None else self.head
        if above is not None:
            items += above.moved(self.pad, y)
            y += above.height
        if self.side is not None:
            items += self.side.moved(self.pad, y)
        items += inner.moved(self.pad, y)
        y += max(inner.height, self.side.height if self.side is not None else 0.0) + self.pad
        if self.border:
            items.insert(0, frame(self.width, y, self.border))
        return Block(y, tuple(items))

    def count_that_fits(self, room: float, first: int) -> int:
        """Return how many blocks from ``first`` on fit into ``room`` mm."""
        fits = 0
        while first + fits < len(self.blocks) and self.set(first, first + fits + 1).height <= room:
            fits += 1
        return fits


def gathered(groups: Sequence[Group]) -> Block:
    """Return groups under each other as one block, without the blank above the first."""
    items: list[Item] = []
    y = owed = 0.0
    for group in groups:
        if not group.blocks:
            continue
        y += max(owed, group.before) if items else 0.0
        block = group.set()
        items += block.moved(0.0, y)
        y += block.height
        owed = group.after
    return Block(y, tuple(items))


@dataclass
class Flow:
    """Fills pages from ``left``, ``top`` down to ``bottom`` [mm], each beginning with ``again``.

    The first page begins bare: what is at its head is given as the first group.
    """

    left: float
    top: float
    bottom: float
    again: Block
    pages: list[list[Item]] = field(default_factory=lambda: [[]])
    _y: float = 0.0
    _owed: float = 0.0
    _fresh: bool = True

    def __post_init__(self) -> None:
        self._y = self.top

    @property
    def room_of_a_page(self) -> float:
        """Return how much fits on a page that goes on from another [mm]."""
        return self.bottom - self.top - self.again.height

    def add(self, group: Group) -> None:
        """Place a group: here, else whole on the next page, else cut between its blocks.

        Raises
        ------
        CardFailed
            ``card_does_not_fit`` when a single line is higher than what a page's head leaves of it.
        """
        if self._fits(group):
            self._place(group.set(), group)
            return
        whole = group.set().height
        if whole <= self.room_of_a_page:
            self.turn()
            self._place(group.set(), group)
            return
        self.cut(group)

    def cut(self, group: Group) -> None:
        """Place a group from here on, cut between its blocks where the page ends, even if the next page had room for all of it.

        Raises
        ------
        CardFailed
            ``card_does_not_fit`` as for ``add``.
        """
        first = 0
        while first < len(group.blocks):
            fits = group.count_that_fits(self.bottom - self._y - self._above(group), first)
            if not fits:
                if self._fresh:
                    raise CardFailed(Reason("card_does_not_fit"))
                self.turn()
                continue
            self._place(group.set(first, first + fits), group)
            first += fits
            if first < len(group.blocks):
                self.turn()

    def add_best(self, options: Sequence[Sequence[Group]]) -> None:
        """Place the first of several arrangements that fits here; where none does, the last one."""
        for option in options:
            high = gathered(option).height
            before = max((group.before for group in option[:1]), default=0.0)
            if self._y + (0.0 if self._fresh else max(self._owed, before)) + high <= self.bottom:
                break
        else:
            option = options[-1]
        for group in option:
            if group.blocks:
                self.add(group)

    def turn(self) -> None:
        """Begin a new page."""
        self.pages.append(list(self.again.moved(self.left, self.top)))
        self._y = self.top + self.again.height
        self._owed = 0.0
        self._fresh = True

    def _fits(self, group: Group) -> bool:
        return self._y + self._above(group) + group.set().height <= self.bottom

    def _above(self, group: Group) -> float:
        return 0.0 if self._fresh else max(self._owed, group.before)

    def _place(self, block: Block, group: Group) -> None:
        self._y += self._above(group)
        self.pages[-1] += block.moved(self.left, self._y)
        self._y += block.height
        self._owed = group.after
        self._fresh = False
