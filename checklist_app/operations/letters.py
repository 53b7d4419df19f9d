"""How wide words are set in the bold cut of the product's face; a test holds the figures against the face itself."""

from collections.abc import Mapping

WIDTHS: Mapping[int, str] = {
    200: " '", 240: "`ijl", 250: "!ł", 260: ",.:|", 270: ";I·", 280: "()J[]", 290: "{}", 360: "r", 370: "\"",
    380: "f", 390: "/\\t°", 410: "*", 470: "szśźż", 490: "-?L", 500: "axäą", 510: "kvy", 520: "F^cgć", 530: "eę",
    540: "ET_bopquóöü", 550: "d", 560: "PYZhnßń", 570: "SX", 580: "AÄ", 590: "B", 600: "+<=>V~±×−", 610: "#KR",
    630: "$0123456789", 640: "C", 650: "DOQUÖÜ", 660: "G", 670: "HN", 680: "&", 740: "w–", 780: "M", 840: "m",
    870: "W", 940: "%", 990: "@",
}
"""Letters by their advance, in thousandths of the size, to the nearest ten."""
EM_PARTS, UNKNOWN = 1000.0, 640
WIDE = {letter: wide for wide, letters in WIDTHS.items() for letter in letters}


def width(words: str, size: float) -> float:
    """How wide words are at a size, in the size's unit.

    Example:
        >>> width("1.05 t", 17.0)
        46.58
    """
    parts = 0
    for letter in words:
        parts = parts + WIDE.get(letter, UNKNOWN)

    return parts * size / EM_PARTS
