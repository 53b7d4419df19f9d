"""Pre-lift and lashing checklists that check the load as entries are made."""

__version__ = "0.1.0"
