"""Procedures as data; entries become an evaluation and a fragment of HTML."""
