"""Dealing out to pages: nothing twice, nothing lost, together where it can be."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.card.failures import CardFailed
from evenwater.card.flow import Flow, Group, gathered
from evenwater.card.items import Block, Stroke


def mark(number: int, height: float = 10.0) -> Block:
    """Return a block that can be told apart: a stroke as thick as its number."""
    return Block(height, (Stroke(((0.0, 0.0), (1.0, height)), float(number)),))


def placed(flow: Flow) -> list[list[float]]:
    return [[item.width for item in page if isinstance(item, Stroke)] for page in flow.pages]


def flow(head: float = 0.0) -> Flow:
    return Flow(left=5.0, top=20.0, bottom=120.0, again=Block(head))


def test_group_that_fits_nowhere_here_goes_on_as_a_whole() -> None:
    made = flow()
    made.add(Group(50, (mark(1, 60),)))
    made.add(Group(50, (mark(2, 30), mark(3, 30))))
    assert placed(made) == [[1], [2, 3]]


def test_group_longer_than_a_page_is_cut_between_blocks() -> None:
    made = flow(head=10)
    made.add(Group(50, tuple(mark(n, 30) for n in range(1, 9))))
    assert placed(made) == [[1, 2, 3], [4, 5, 6], [7, 8]]


def test_blank_is_the_larger_of_what_two_parts_ask_for_and_none_at_the_top() -> None:
    made = flow()
    made.add(Group(50, (mark(1),), before=7, after=3))
    made.add(Group(50, (mark(2),), before=6))
    tops = [item.points[0][1] for item in made.pages[0] if isinstance(item, Stroke)]
    assert tops == [20.0, 36.0]


def test_head_stands_again_and_more_takes_its_place() -> None:
    made = flow()
    made.add(Group(50, tuple(mark(n, 30) for n in range(1, 5)), head=mark(90), more=mark(91)))
    assert placed(made) == [[90, 1, 2, 3], [91, 4]]


def test_frame_is_drawn_round_each_part() -> None:
    made = flow()
    made.add(Group(50, tuple(mark(n, 30) for n in range(1, 5)), border=0.6, pad=2))
    frames = [[item for item in page if isinstance(item, Stroke) and item.closed] for page in made.pages]
    assert [len(page) for page in frames] == [1, 1]
    for page in frames:
        ys = [y for _, y in page[0].points]
        assert min(ys) >= 20.0
        assert max(ys) <= 120.0


def test_block_higher_than_a_page_is_refused() -> None:
    with pytest.raises(CardFailed) as failed:
        flow().add(Group(50, (mark(1, 101),)))
    assert failed.value.reason.code == "card_does_not_fit"


def test_first_arrangement_that_fits_is_taken() -> None:
    made = flow()
    made.add(Group(50, (mark(1, 60),)))
    made.add_best([[Group(50, (mark(2, 50),))], [Group(50, (mark(3, 20),)), Group(50, (mark(4, 15),))]])
    assert placed(made) == [[1, 3, 4]]


def test_last_arrangement_is_taken_when_none_fits() -> None:
    made = flow()
    made.add(Group(50, (mark(1, 90),)))
    made.add_best([[Group(50, (mark(2, 50),))], [Group(50, (mark(3, 20),)), Group(50, (mark(4, 15),))]])
    assert placed(made) == [[1], [3, 4]]


def test_gathered_is_as_high_as_it_is_placed() -> None:
    groups = [Group(50, (mark(n),), before=4, after=6) for n in range(1, 4)]
    assert gathered(groups).height == 3 * 10 + 2 * 6


@given(st.lists(st.lists(st.floats(1.0, 99.0), min_size=1, max_size=8), min_size=1, max_size=12))
def test_every_block_once_in_order_and_inside(heights: list[list[float]]) -> None:
    made = flow()
    number = 0
    for group in heights:
        blocks = []
        for height in group:
            number += 1
            blocks.append(mark(number, height))
        made.add(Group(50, tuple(blocks), before=3, after=2))
    assert [width for page in placed(made) for width in page] == list(range(1, number + 1))
    for page in made.pages:
        for item in page:
            assert isinstance(item, Stroke)
            assert 20.0 - 1e-9 <= item.points[0][1] <= item.points[1][1] <= 120.0 + 1e-9
