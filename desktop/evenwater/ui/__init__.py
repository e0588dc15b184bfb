"""Widgets, sheets and chart. Knows screens, session and card; computes nothing."""
