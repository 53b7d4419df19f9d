"""Where the files that travel with the program lie, in a checkout and in an installed wheel."""

from pathlib import Path


def shipped(name: str) -> Path:
    """Folder `static`, `templates` or `demo_data`: inside the package in a wheel, beside it in a checkout."""
    package = Path(__file__).parent
    inside = package / name

    return inside if inside.is_dir() else package.parent / name
