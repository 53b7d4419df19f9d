"""Engineering: one module per topic, one function per clause; pure arithmetic."""
