"""Flask blueprints, one per journey: parse, call one thing below, render."""
