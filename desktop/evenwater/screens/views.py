"""What a sheet, its chart and its card show: frozen rows, sentences and series, ready to paint."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Bar:
    """How near one limit is: ``share`` is value over bound, ``text`` says both with their unit."""

    code: str
    label: str
    text: str
    share: float
    binds: bool = False
    over: bool = False


@dataclass(frozen=True)
class WorkLine:
    """One line of arithmetic in the keeper's own units: what it is, how it is reckoned, what it gives."""

    what: str
    how: str
    gives: str


@dataclass(frozen=True)
class Offer:
    """A reading the keeper can choose with one click: the words on the button, and what it enters."""

    words: str
    text: str
    unit: str


@dataclass(frozen=True)
class Message:
    """A sentence for the keeper; ``path`` is the field it belongs to, or empty."""

    text: str
    path: str = ""
    code: str = ""
    offers: tuple[Offer, ...] = ()


@dataclass(frozen=True)
class AnswerView:
    """The right half of the Correct sheet.

    ``state`` is ``"empty"`` (something is still to be filled in), ``"answered"``, ``"refused"``, or ``"stop"`` where a plan that
    is followed must not be followed on.
    ``messages`` are refusals or what is still missing, ``remarks`` amber notes on an answer,
    ``cautions`` the handling lines of the chemical, shown before its numbers, ``side_effects`` what else the plan does.
    """

    state: str
    figure: str = ""
    figure_unit: str = ""
    second: str = ""
    third: str = ""
    set_by: str = ""
    bars: tuple[Bar, ...] = ()
    working: tuple[WorkLine, ...] = ()
    side_effects: tuple[WorkLine, ...] = ()
    cautions: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    messages: tuple[Message, ...] = ()
    spoken: str = ""


@dataclass(frozen=True)
class WaterRow:
    """The chart's row of pH and aragonite saturation along the ramp.

    Series share ``times`` [s since the epoch, UTC], shape (k,): ``ph`` before the doses, ``ph_after`` right after one,
    and ``saturation``. ``ph_name`` and ``saturation_name`` stand at the ends of the lines.
    """

    times: Floats
    ph: Floats
    ph_after: Floats
    saturation: Floats
    ph_name: str
    saturation_name: str


@dataclass(frozen=True)
class RetestMark:
    """A reading on the ramp of a followed plan: instant [s since the epoch], value in the keeper's unit, place.

    ``place`` is ``"inside"``, ``"above"`` or ``"below"`` the band.
    """

    at: float
    value: float
    place: str


@dataclass(frozen=True)
class ChartView:
    """The ramp and the doses below it, in the keeper's unit.

    Series share ``times`` [s since the epoch, UTC], shape (n,); ``doses_at`` [s] and ``doses_ml``
    [mL] have shape (m,). ``fastest`` is the steepest allowed line as (times, values), each of
    shape (2,). ``ramp_end`` [s] is where the correction ends and upkeep begins. ``now`` [s] is given for a plan that is
    followed: its pace stands, and ``retests`` lie on it.
    """

    times: Floats
    plan: Floats
    low: Floats
    high: Floats
    uptake_stops: Floats
    nothing: Floats
    target: float
    fastest: tuple[Floats, Floats]
    doses_at: Floats
    doses_ml: Floats
    ramp_end: float
    measured_at: float
    measured: float
    unit: str
    title: str
    decimals: int = 2
    labels: Mapping[str, str] = field(default_factory=dict)
    water: WaterRow | None = None
    retests: tuple[RetestMark, ...] = ()
    now: float | None = None

    @property
    def followed(self) -> bool:
        """Whether the plan was started, so that its pace can be chosen no more."""
        return self.now is not None


@dataclass(frozen=True)
class DoseRow:
    """One rule of the card: when, how much, of what, and the pump's setting; never two in one row."""

    when: str
    dose: str
    additive: str
    setting: str


@dataclass(frozen=True)
class CardView:
    """Everything the dose card says, in the order in which it is needed.

    ``plan_id`` ends in its check characters. ``cautions`` are printed whole. ``ramp`` is the small
    chart; ``write_in`` the number of rows to write in; ``draft`` the words stamped across a card
    that must not be followed, empty on a card that may be.
    """

    title: str
    system: str
    volume: str
    plan_id: str
    issued: str
    replace: str
    valid_until: str
    additive: str
    formula: str
    strength: str
    rows: tuple[DoseRow, ...]
    maximum: str
    stop: str
    retest: str
    refill: str
    totals: str
    whole_jug: str
    separation: str
    cautions: tuple[str, ...]
    remarks: tuple[str, ...]
    emergency: str
    write_in: int
    ramp: ChartView | None = None
    draft: str = ""
