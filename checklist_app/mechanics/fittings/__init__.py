"""Fittings in the load path: shackles, hooks, links, eyebolts and hoist rings; every table is a step.

Which function answers what:

- shackle: `shackles.side_load_factor`, `shackles.gathered_legs_factor`, `shackles.pin_use_factor`,
  `shackles.shackle_temperature_factor` on the marked WLL; does the marking belong to the size:
  `shackle_sizes.marking_fits_size`
- hook: `hooks.hook_loading_factor`, `hooks.legs_in_hook_factor`; link or ring: `hooks.master_link_factor`,
  `hooks.link_hangs_free`
- eye bolt or eye nut: `eye_rating.eye_wll_t` by its marking (tables in `din_eyes`, `bs_eyes`, `us_eyes`),
  `eye_use.eye_use_factor`, `din_eyes.eye_temperature_factor`; a pair as load: `bs_eyes.collar_pair_wll_t`; a single
  one under a load that can turn: `eye_use.single_eye_stays`
- how cold any of them may get: `cold.coldest_c`
- swivel hoist ring: `hoist_rings.hoist_ring_wll_t`, `hoist_rings.hoist_ring_thread_holds`

Angles at an eye count from the axis of its thread, at a shackle from in line, between legs as included angle.
"""
