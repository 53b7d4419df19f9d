"""Draws the app's icons for home screens, as in `static/icon.svg`: `python -m checklist_app.engine.icons`."""

from pathlib import Path

from PIL import Image, ImageDraw

STATIC = Path(__file__).resolve().parents[2] / "static"
SIDE = 32
SIZES_PX = (192, 512)
FINER = 4
GROUND, CHALK = "#e3e9e1", "#0a4385"
LINE = ((16, 0), (16, 8))
LINE_WIDTH = 3
BOB = ((7, 8), (25, 8), (25, 14), (16, 29), (7, 14))


def icon(size_px: int) -> Image.Image:
    """The icon at a size, drawn larger and made smaller so that its slopes are smooth."""
    scale = size_px * FINER / SIDE
    picture = Image.new("RGB", (size_px * FINER, size_px * FINER), GROUND)
    pen = ImageDraw.Draw(picture)
    pen.line([(x * scale, y * scale) for x, y in LINE], CHALK, round(LINE_WIDTH * scale))
    pen.polygon([(x * scale, y * scale) for x, y in BOB], CHALK)

    return picture.resize((size_px, size_px), Image.Resampling.LANCZOS)


def main() -> None:
    for size_px in SIZES_PX:
        icon(size_px).save(STATIC / f"icon-{size_px}.png", optimize=True)


if __name__ == "__main__":
    main()
