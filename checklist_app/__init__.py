"""Pre-lift and lashing checklists that check the load as entries are made."""
