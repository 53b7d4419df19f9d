"""The pages of a task. Every module here registers the addresses it answers."""
