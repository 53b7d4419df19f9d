"""An invented yard, filled into a fresh folder by running the real code."""
