"""Paints the dose card in millimetres: one routine for preview, PDF, printer and tests."""
