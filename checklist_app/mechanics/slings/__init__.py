"""Slings: kinds and hitches, two rule sets, how many legs count, and what takes away from a rating."""
