"""The one way in which making a card fails: an exception that carries a Reason, not prose."""

from __future__ import annotations

from evenwater.engine.reasons import Reason


class CardFailed(Exception):
    """The card was not written or printed; nothing half-made was left behind.

    ``reason.code`` is one of ``card_fonts_missing`` (params ``face``), ``card_not_written`` (params ``file``,
    ``detail``), ``card_not_painted`` (params ``detail``), ``card_paper_refused`` (params ``wanted``,
    ``got``) and ``card_does_not_fit``.
    """

    def __init__(self, reason: Reason) -> None:
        super().__init__(reason.code, dict(reason.params))
        self.reason = reason
