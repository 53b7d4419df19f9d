"""Standard gravity, for the operations whose rules do not print a value of their own."""

STANDARD_GRAVITY_M_S2 = 9.80665  # BIPM_SI_BROCHURE: conventional value, 3rd CGPM 1901
