"""Photos that come with a form: made small, turned upright, nothing hidden in them, bombs refused."""

import struct
import zlib
from io import BytesIO

import pytest
from PIL import Image
from werkzeug.datastructures import FileStorage, MultiDict
from werkzeug.exceptions import RequestEntityTooLarge, UnsupportedMediaType

from checklist_app.web.photos import LARGEST_BYTES, photos_of, small

ORIENTATION, MAKER, GPS = 0x0112, 0x010F, 0x8825
ON_ITS_SIDE = 6


def file(data: bytes, name: str = "eye.jpg") -> FileStorage:
    return FileStorage(BytesIO(data), filename=name)


def picture(width: int, height: int, kind: str = "JPEG", mode: str = "RGB", **more: object) -> bytes:
    out = BytesIO()
    Image.new(mode, (width, height), 128 if mode == "L" else None).save(out, kind, **more)
    return out.getvalue()


def opened(data: bytes) -> Image.Image:
    return Image.open(BytesIO(data))


@pytest.mark.parametrize(("size", "wanted"), [
    ((4000, 3000), (1600, 1200)), ((3000, 4000), (1200, 1600)), ((640, 480), (640, 480)),
])
def test_a_photo_is_at_most_1600_pixels_a_side(size: tuple[int, int], wanted: tuple[int, int]) -> None:
    assert opened(small(file(picture(*size))).data).size == wanted


def test_what_the_camera_hid_in_it_is_gone() -> None:
    hidden = Image.Exif()
    hidden[MAKER] = "a maker's name"
    hidden.get_ifd(GPS)[1] = "N"
    data = picture(400, 300, exif=hidden, comment=b"a comment")
    assert b"a maker's name" in data
    kept = small(file(data)).data
    assert dict(opened(kept).getexif()) == {}
    assert b"a maker's name" not in kept
    assert b"a comment" not in kept


def test_a_photo_taken_on_its_side_stands_upright() -> None:
    turned = Image.Exif()
    turned[ORIENTATION] = ON_ITS_SIDE
    assert opened(small(file(picture(400, 300, exif=turned))).data).size == (300, 400)


@pytest.mark.parametrize(("kind", "mode"), [
    ("PNG", "RGBA"), ("PNG", "P"), ("PNG", "L"), ("WEBP", "RGB"), ("JPEG", "CMYK"),
])
def test_every_kind_becomes_a_jpeg(kind: str, mode: str) -> None:
    kept = small(file(picture(80, 60, kind, mode)))
    assert kept.mime == "image/jpeg"
    assert opened(kept.data).format == "JPEG"


@pytest.mark.parametrize("data", [
    b"", b"GIF89a", b"<svg/>", b"\xff\xd8\xff\xe0 no more", picture(80, 60)[:300], picture(80, 60, "GIF"),
])
def test_what_is_no_photo_is_refused_in_words(data: bytes) -> None:
    with pytest.raises(UnsupportedMediaType, match="no photo that can be read"):
        small(file(data))


def bomb(width: int, height: int) -> bytes:
    """A PNG of a few hundred bytes that says it is this large."""
    def chunk(name: bytes, data: bytes) -> bytes:
        return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))
    head = struct.pack(">IIBBBBB", width, height, 1, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(bytes(100))) + chunk(b"IEND", b"")


@pytest.mark.parametrize("side", [9_000, 12_000, 60_000])
def test_a_picture_that_unpacks_to_far_too_much_is_refused_before_it_is_unpacked(side: int) -> None:
    with pytest.raises((RequestEntityTooLarge, UnsupportedMediaType)):
        small(file(bomb(side, side)))


def test_a_file_that_is_too_large_is_refused() -> None:
    with pytest.raises(RequestEntityTooLarge, match="8 MB"):
        small(file(picture(80, 60) + bytes(LARGEST_BYTES)))


def test_a_field_left_empty_brings_no_photo() -> None:
    files = MultiDict([("left", file(picture(80, 60))), ("right", file(b"", name=""))])
    assert list(photos_of(files)) == ["left"]


def test_a_picture_that_is_small_and_bare_stays_to_the_byte() -> None:
    made = small(file(picture(4000, 3000))).data
    assert small(file(made)).data == made
    assert opened(made).size == (1600, 1200)


WHOSE = Image.Exif()
WHOSE[MAKER] = "whose"


@pytest.mark.parametrize("hidden", [{"exif": WHOSE}, {"comment": b"whose"}, {"icc_profile": b"profile"}])
def test_what_is_small_and_carries_something_is_made_anew(hidden: dict) -> None:
    brought = picture(400, 300, **hidden)
    kept = small(file(brought)).data
    assert kept != brought and small(file(kept)).data == kept
    assert small(file(kept + b"behind the picture")).data.endswith(b"\xff\xd9")
