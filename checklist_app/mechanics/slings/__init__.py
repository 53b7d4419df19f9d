"""Slings: kinds and hitches, two rule sets, how many legs count, and what takes away from a rating.

Which function answers what:

- what is on the label, and is there one: `label.labelled_wll_t`, `label.labelled_fibre`
- one leg by its own pull: `rules.hitch_factor` × what these leave: `choke.choke_angle_factor`,
  `bends.labelled_bend_factor` (US basket: `bends.us_basket_bend_factor`), `edges.…_factor`, `temperature.…_factor`
- a sling in a basket or laid double: each part by its own pull, and `rules.basket_factor` on the load beside it
- all legs together, symmetric (`legs.leg_angles_alike`, `legs.plan_angles_alike`): `rules.bridle_wll_t`; where the size
  is known the printed cell too: `chain_wll`, `rope_wll`, `us_chain_wll`; the lower counts
- three of four legs counted: show `legs.pull_if_two_carry`
- cautions: `legs.nearly_vertical_below_deg`, `choke.choke_angle_up_to_deg`
- states: `chemicals.fibre_is_attacked`, `chemicals.steel_is_attacked`, `edges.webbing_eye_bears`,
  `wrap.choke_holds_upright`
- does it stay: `slip.friction_needed` against `slip.friction_coefficient` or `slip.measured_friction`;
  a round body in one basket: `wrap.basket_roll_couple_knm`

A function named `…_factor` gives the share of the WLL that is left, and refuses where nothing may be lifted.
"""
