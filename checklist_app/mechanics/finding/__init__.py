"""Mass and centre of gravity: added up from parts, weighed, or worked back from a trial, each with its spread."""
