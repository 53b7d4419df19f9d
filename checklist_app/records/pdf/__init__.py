"""The record on paper: one writer, one drawing back end, one page layout."""
