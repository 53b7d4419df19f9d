"""Lashing: what a load must withstand on its way, what holds it, and what would.

Which function answers what:

- whose rules: `rule_sets.RULES` (edition read, g, factors), `transport.sea_area`, `demands.demand`; at sea by Annex 13
  `css_forces.ship_forces` and `css_forces.ship_demand`, its own balances in `css_balance`; vans `demands.van_demand`
- friction: `friction.friction` by pair and state, `friction.worst_friction` for what nobody knows,
  `slings.slip.measured_friction` for a measured one
- lashings: `label.tie_down_tension_dan`, `label.measured_tension_dan`, `label.weakest_dan`; `angles.lie` from its ends,
  `angles.angles_agree` with what was measured; `direct.direct_legs` and `direct.tie_down_strands` by kind; which face
  they hold: `crossing.crosses`
- the formulas of the rules, one plane at a time: `tie_down`, `direct`, `blocking`, `tipping`, `lift_off`, `cfr_393`
- everything together in space: `lashed_body.lashed_body` → `prepared.prepared` → `holding.held`, per face and direction
- pallet, floor, forks: `pallet`; deck and axles: `vehicle`; weights and papers: `freight`
- what would make it hold: `changes`, `tie_down.count`

Forces in daN as on the labels, weights by the g of the rule set, `downward` the share of the weight that remains.
"""
