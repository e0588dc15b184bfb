"""What holds in every test here besides what the test asks."""

from __future__ import annotations

from tests.engine.leading import reasons_lead_somewhere

__all__ = ["reasons_lead_somewhere"]
