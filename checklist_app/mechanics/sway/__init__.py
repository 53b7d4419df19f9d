"""What moves a hanging load: wind, starting and stopping, the tag line; and how far people keep away."""
