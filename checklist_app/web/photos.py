"""Photos that came with a form: made small, turned upright, rid of hidden data; one that is so already stays."""

import warnings
from io import BytesIO

from PIL import Image, ImageOps, UnidentifiedImageError
from werkzeug.datastructures import FileStorage, MultiDict
from werkzeug.exceptions import RequestEntityTooLarge, UnsupportedMediaType

from checklist_app.checklists.answer import Photo

LARGEST_BYTES = 8 * 1024 * 1024
MOST_PIXELS = 64_000_000
LONGEST_SIDE_PX = 1600
QUALITY = 82
FORMATS = ("JPEG", "PNG", "WEBP")
MIME = "image/jpeg"
JFIF = 14
"""Bytes of the one segment that every JPEG has, when there is no small picture in it."""


def photos_of(files: "MultiDict[str, FileStorage]") -> dict[str, tuple[Photo, ...]]:
    """The pictures of a form by field; a field left empty brings none."""
    taken: dict[str, tuple[Photo, ...]] = {}
    for name in files:
        pictures = tuple(small(file) for file in files.getlist(name) if file.filename)
        if pictures:
            taken[name] = pictures

    return taken


def small(file: FileStorage) -> Photo:
    """One picture as a JPEG of at most 1600 pixels a side, with nothing in it but the picture.

    Raises:
        RequestEntityTooLarge: If the file or the picture is too large.
        UnsupportedMediaType: If it is no picture of a kind that is taken.
    """
    data = file.stream.read(LARGEST_BYTES + 1)
    if len(data) > LARGEST_BYTES:
        raise RequestEntityTooLarge("A photo may have 8 MB.")

    return Photo(MIME, re_encoded(data))


def is_small(picture: Image.Image, data: bytes) -> bool:
    """Whether a picture was made small and bare before. Then its bytes stay, so that a form that is sent twice, or is
    carried out here after a phone did so, names one picture."""
    segments = getattr(picture, "applist", [("", b"")])
    bare = all(name == "APP0" and len(said) == JFIF for name, said in segments)
    plain = picture.format == "JPEG" and picture.mode == "RGB" and "comment" not in picture.info
    return (plain and bare and data.endswith(b"\xff\xd9")
            and max(picture.size) <= LONGEST_SIDE_PX)


def re_encoded(data: bytes) -> bytes:
    try:
        with warnings.catch_warnings(), Image.open(BytesIO(data), formats=FORMATS) as picture:
            warnings.simplefilter("error", Image.DecompressionBombWarning)
            if picture.width * picture.height > MOST_PIXELS:
                raise RequestEntityTooLarge("This photo has more pixels than a camera makes.")
            if is_small(picture, data):
                picture.load()
                return data
            picture.draft("RGB", (LONGEST_SIDE_PX, LONGEST_SIDE_PX))
            upright = ImageOps.exif_transpose(picture).convert("RGB")
    except (UnidentifiedImageError, OSError, SyntaxError, ValueError, Image.DecompressionBombError,
            Image.DecompressionBombWarning) as error:
        raise UnsupportedMediaType("This is no photo that can be read. JPEG, PNG and WebP are taken.") from error
    upright.thumbnail((LONGEST_SIDE_PX, LONGEST_SIDE_PX))
    bare = Image.new("RGB", upright.size)
    bare.paste(upright)
    kept = BytesIO()
    bare.save(kept, "JPEG", quality=QUALITY, optimize=True)

    return kept.getvalue()
