"""https on the workshop's own network: the workshop's certificates, their keeping, and the door they open."""
