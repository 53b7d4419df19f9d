"""What is kept: database, registers, entries, sign-offs, seals, PDF, search."""
