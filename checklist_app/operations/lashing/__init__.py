"""Lashing: a load on its pallet, and a load on a vehicle; what both operations are made of."""
