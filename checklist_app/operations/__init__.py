"""How the gear of one operation hangs together, which checks it needs, and its drawing."""
