"""Where things stand in a spreadsheet: its separator, its headings, what each column holds."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from itertools import islice

from evenwater.engine.catalogue import Parameter
from evenwater.engine.reasons import Reason
from evenwater.screens.csv_choices import HEADINGS_WITHIN, ROLES, SEPARATORS, Column, Rulings, Series
from evenwater.screens.csv_headings import OWN_DATE, heading_of, role_of
from evenwater.screens.csv_text import UnreadableError, rows
from evenwater.screens.csv_times import is_clock, is_date, parted

_TRIED_ROWS, _TRIED_SIGNS = 100, 100_000
# More names of parameters and units than these are no such names.
_MOST_SERIES = 100
# So many of the cells of a column must look like what it is taken for.
_MOST_OF, _HALF = 0.8, 0.5

Rows = Sequence[tuple[int, list[str]]]


@dataclass(frozen=True)
class Layout:
    """A file in columns.

    ``texts`` are the different cells of each column below the headings, and ``series_texts`` the different values of each
    series, in their order.

    ``separator_said`` is False when the separator is only the likelier one, ``by_content`` says of each column whether its
    cells rather than its heading say what it holds.
    """

    separator: str
    separator_said: bool
    heading: int
    headings: tuple[str, ...]
    columns: tuple[Column, ...]
    by_content: tuple[bool, ...]
    texts: tuple[tuple[str, ...], ...]
    series: tuple[Series, ...]
    series_texts: tuple[tuple[str, ...], ...]

    @property
    def own(self) -> bool:
        """Whether the product wrote the file: its units are certain, and its decimal mark is a point."""
        return self.separator == "," and self.headings[0] == OWN_DATE


def lay_out(text: str, parameters: Mapping[str, Parameter], rulings: Rulings) -> Layout:
    """Return how a file is laid out, by the keeper's rulings and otherwise by what is likely.

    Raises
    ------
    UnreadableError
        When it has no columns, nothing below the headings, or no rows that can be read.
    """
    found, said = _separator(text)
    separator = rulings["separator"] if rulings.get("separator") in SEPARATORS else found
    every = list(rows(text, separator))
    if not every:
        raise UnreadableError(Reason("csv_empty"))
    heading = _heading_row(every, parameters, rulings.get("heading", ""))
    width = len(every[heading - 1][1]) if heading else max(len(cells) for _, cells in every)
    if width < 2:
        raise UnreadableError(Reason("csv_one_column"))
    below = every[heading:]
    if not below:
        raise UnreadableError(Reason("csv_no_rows"))
    headings = _padded(every[heading - 1][1] if heading else [], width)
    texts = _texts(below, width)
    columns = _columns(headings, texts, parameters)
    by_content = tuple(
        bool(c.role) and not role_of(h) and c.role != "reading" for c, h in zip(columns, headings, strict=True)
    )
    columns = _ruled(columns, parameters, rulings)
    return Layout(
        separator, said or separator != found, heading, headings, columns, by_content, texts,
        *_series(below, columns, parameters, rulings),
    )  # fmt: skip


def stripped(cells: Sequence[str], width: int) -> list[str]:
    """Return the cells of a row without spaces around them, at least ``width`` of them, and an empty one behind."""
    return [text.strip() for text in cells] + [""] * (1 + max(0, width - len(cells)))


def index_of(columns: Sequence[Column], role: str) -> int:
    """Return the first column with a role, or -1: of a ``stripped`` row the empty cell."""
    return next((at for at, column in enumerate(columns) if column.role == role), -1)


def _separator(text: str) -> tuple[str, bool]:
    """Return the likeliest separator, and whether only with it the rows have columns and dates."""
    fits = {separator: _fit(text, separator) for separator in SEPARATORS}
    best = max(SEPARATORS, key=lambda separator: fits[separator])
    return best, [dated >= _HALF and even >= _HALF for dated, even, _, _ in fits.values()].count(True) == 1


def _fit(text: str, separator: str) -> tuple[float, float, int, int]:
    """Return how well a separator fits the first rows, what counts most first.

    The share of rows with a date, the share with as many cells as most have, how many those are, how often it stands there.
    """
    tried: list[list[str]] = []
    # What can be read counts; reading it all will say what is wrong.
    with suppress(UnreadableError):
        tried.extend(cells for _, cells in islice(rows(text[:_TRIED_SIGNS], separator), _TRIED_ROWS))
    parted = Counter(len(cells) for cells in tried if len(cells) > 1)
    often = text.count(separator, 0, _TRIED_SIGNS)
    if not parted:
        return 0.0, 0.0, 0, often
    width, number = parted.most_common(1)[0]
    dated = sum(any(is_date(text) for text in cells) for cells in tried if len(cells) > 1)
    return dated / len(tried), number / len(tried), width, often


def _heading_row(every: Rows, parameters: Mapping[str, Parameter], ruling: str) -> int:
    possible = ["0", *(str(row) for row, (_, cells) in enumerate(every[:HEADINGS_WITHIN], 1) if len(cells) > 1)]
    if ruling in possible:
        return int(ruling)
    scores = []
    for _, cells in every[:HEADINGS_WITHIN]:
        if any(is_date(text) for text in cells):
            break
        scores.append(sum(bool(role_of(text) or heading_of(text, parameters)) for text in cells))
    if not scores:
        return 0
    best = max(scores)
    # Without a word that is known the headings are whatever stands last above the dates.
    return scores.index(best) + 1 if best else len(scores) if len(scores) < min(HEADINGS_WITHIN, len(every)) else 0


def _padded(cells: Sequence[str], width: int) -> tuple[str, ...]:
    return tuple([text.strip() for text in cells] + [""] * (width - len(cells)))


def _texts(below: Rows, width: int) -> tuple[tuple[str, ...], ...]:
    found: list[dict[str, None]] = [{} for _ in range(width)]
    for _, cells in below:
        for seen, text in zip(found, cells, strict=False):
            seen[text] = None
    return tuple(tuple(text for text in seen if text.strip()) for seen in found)


def _columns(
    headings: Sequence[str], texts: Sequence[Sequence[str]], parameters: Mapping[str, Parameter]
) -> tuple[Column, ...]:
    roles: list[str] = []
    for text in headings:
        role = role_of(text)
        roles.append("" if role in roles else role)
    found = [
        Column(role)
        if role
        else Column("reading", named.parameter)
        if (named := heading_of(text, parameters))
        else Column()
        for role, text in zip(roles, headings, strict=True)
    ]
    dated = [at for at, cells in enumerate(texts) if _share(cells, is_date) >= _MOST_OF]
    date = roles.index("date") if "date" in roles else None
    if dated and (date is None or date not in dated):
        if date is not None:
            found[date] = Column()
        date = dated[0]
        found[date] = Column("date")
    timed = date is not None and any(parted(text)[1] for text in texts[date])
    clocks = [at for at, cells in enumerate(texts) if not found[at].role and _share(cells, is_clock) >= _MOST_OF]
    if clocks and not timed and not any(column.role == "time" for column in found):
        found[clocks[0]] = Column("time")
    return _one_form(found)


def _one_form(found: Sequence[Column]) -> tuple[Column, ...]:
    """Keep either a column for each parameter, or a column of parameters with one of values."""
    roles = {column.role for column in found}
    gone = {"reading"} if {"parameter", "value"} <= roles else {"parameter", "value", "unit"}
    return tuple(Column() if column.role in gone else column for column in found)


def _ruled(columns: Sequence[Column], parameters: Mapping[str, Parameter], rulings: Rulings) -> tuple[Column, ...]:
    """Return the columns as the keeper has them; what is given to one column is taken from another."""
    found = list(columns)
    for at in range(len(found)):
        ruling = rulings.get(f"column {at + 1}", "as it is")
        if ruling in ROLES:
            found = [Column() if column.role == ruling else column for column in found]
            found[at] = Column(ruling)
        elif ruling in parameters:
            found[at] = Column("reading", ruling)
        elif ruling == "":
            found[at] = Column()
    return tuple(found)


def _series(
    below: Rows, columns: Sequence[Column], parameters: Mapping[str, Parameter], rulings: Rulings
) -> tuple[tuple[Series, ...], tuple[tuple[str, ...], ...]]:
    at = {role: index_of(columns, role) for role in ("parameter", "value", "unit")}
    if at["parameter"] < 0 or at["value"] < 0:
        return (), ()
    values: dict[tuple[str, str], dict[str, None]] = {}
    for _, raw in below:
        cells = stripped(raw, len(columns))
        pair = cells[at["parameter"]], cells[at["unit"]]
        if pair[0] and (pair in values or len(values) < _MOST_SERIES):
            values.setdefault(pair, {})[cells[at["value"]]] = None
    found = []
    for number, (name, said) in enumerate(values, 1):
        named = heading_of(name, parameters, said)
        series = Series(name, said, named.parameter if named else "")
        ruling = rulings.get(f"series {number}", series.parameter)
        found.append(replace(series, parameter=ruling) if ruling == "" or ruling in parameters else series)
    return tuple(found), tuple(tuple(text for text in texts if text) for texts in values.values())


def _share(texts: Sequence[str], looks: Callable[[str], bool]) -> float:
    return sum(looks(text) for text in texts) / len(texts) if texts else 0.0
