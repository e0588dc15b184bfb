"""Evenwater: slow, safe corrections and daily upkeep for coral reef tanks."""

__version__ = "0.1.0"
