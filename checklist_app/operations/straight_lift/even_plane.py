"""How a load shares itself out over legs that give alike: the plane in which the upright parts of their pulls lie."""

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.exact import let
from checklist_app.mechanics.vectors import Vec


def even_plane(eyes: tuple[Vec, ...]) -> tuple[float, float, float]:
    """The plane over the picks in which the upright parts lie: three sums, solved."""
    x = y = xx = xy = yy = 0.0
    for eye in eyes:
        x, y = x + eye.x, y + eye.y
        xx, xy, yy = xx + eye.x * eye.x, xy + eye.x * eye.y, yy + eye.y * eye.y
    x, y, xx, xy, yy = let("sum_x", x), let("sum_y", y), let("sum_xx", xx), let("sum_xy", xy), let("sum_yy", yy)
    middle = let("minor_1", xx * yy - xy * xy)
    along = let("minor_2", xy * y - x * yy)
    aside = let("minor_3", x * xy - xx * y)
    whole = let("determinant", 4.0 * middle + x * along + y * aside)
    if not whole > 0.0:
        raise OutOfRangeError("four eyes", "in one line", "eyes that span an area", "STATICS_HANGING_BODY")

    return let("even", middle / whole), let("even_along", along / whole), let("even_aside", aside / whole)
