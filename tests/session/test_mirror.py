"""The records in memory against a plain model of them: order, kinds and what belongs to whom, whatever was added and removed."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from evenwater.engine.quantities import Typed
from evenwater.session.mirror import Mirror
from evenwater.store import AddRecord, Edit, RemoveRecord, SetField, Snapshot

_OWNERS = ("a", "b", "a:1")
_IDS = ("a", "b", "a:1", "a:2", "b:1", "ab:1", "c:1:2")
_KINDS = ("stock", "batch")
_EDITS = st.one_of(
    st.builds(AddRecord, st.sampled_from(_IDS), st.sampled_from(_KINDS)),
    st.builds(RemoveRecord, st.sampled_from(_IDS), st.sampled_from(_KINDS)),
    st.builds(SetField, st.sampled_from(_IDS), st.just("name"), st.builds(Typed, st.sampled_from(["", "x", "y"]))),
)


@given(st.lists(_EDITS, max_size=30))
def test_lists_kinds_and_owners_are_those_of_a_plain_list(edits: list[Edit]) -> None:
    mirror, model = Mirror(Snapshot({}, {})), []
    for edit in edits:
        # Asked in between, so that nothing kept from before an edit is left standing.
        _same(mirror, model)
        mirror.apply([edit])
        if isinstance(edit, AddRecord) and edit.record_id not in {name for name, _ in model}:
            model.append((edit.record_id, edit.kind))
        elif isinstance(edit, RemoveRecord):
            model = [each for each in model if each[0] != edit.record_id]
    _same(mirror, model)
    again = Mirror(
        Snapshot(
            {kind: mirror.ids(kind) for kind in _KINDS},
            {name: mirror.values(name) for name in mirror.all_ids()},
        )
    )
    _same(again, model)
    assert again.difference(mirror) == (frozenset(), {})


def _same(mirror: Mirror, model: list[tuple[str, str]]) -> None:
    for kind in _KINDS:
        assert mirror.ids(kind) == tuple(name for name, of in model if of == kind)
        for owner in _OWNERS:
            mine = tuple(name for name, of in model if of == kind and name.split(":")[0] == owner and ":" in name)
            assert mirror.owned(kind, owner) == mine
    for name in _IDS:
        assert mirror.kind(name) == dict(model).get(name, "")
