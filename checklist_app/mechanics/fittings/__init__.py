"""Fittings in the load path: shackles, hooks, links, eyebolts and hoist rings; every table is a step."""
