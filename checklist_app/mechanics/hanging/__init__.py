"""How a load hangs on slings from above, in space: attitude, pulls, and how far it is from going over."""
