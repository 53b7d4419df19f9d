"""A comparison that held, taken apart: our value, theirs and the difference, as a person reads them."""

import ast
import re
from collections.abc import Iterator
from typing import Any, NamedTuple

COMPARED = re.compile(r"^(.*?) (==|is|<=|>=|<|>) (.*)$", re.DOTALL)
AROUND = re.compile(r" ± ([\d.e+-]+)")
BOUNDS = {"<": "less than ", "<=": "at most ", ">": "more than ", ">=": "at least "}
FEW, SAME = 3, 1e-9


class Compared(NamedTuple):
    """Both sides as they were printed, and the sign between them."""

    ours: str
    sign: str
    theirs: str


def values(compared: list[Compared]) -> tuple[str, str, str]:
    """Ours, theirs and the difference; of many comparisons how many they were and what they were held to."""
    if len(compared) <= FEW and not any(cut_off(each) for each in compared):
        told = [one(each) for each in compared]
        return "; ".join(each[0] for each in told), "; ".join(each[1] for each in told), "; ".join(
            dict.fromkeys(each[2] for each in told if each[2]))
    held = max((bound for each in compared if (bound := tolerance(each)) is not None), default=None)

    return f"{len(compared)} comparison{'s' * (len(compared) > 1)}", "", (
        f"each within {held:.1g}" if held is not None else "all hold")


def cut_off(compared: Compared) -> bool:
    """Whether it was too long to be printed in full, or is several conditions in one."""
    return any("..." in side or " and " in side or " or " in side for side in (compared.ours, compared.theirs))


def one(compared: Compared) -> tuple[str, str, str]:
    """Our value, theirs and the difference of a single comparison."""
    ours, theirs = value(compared.ours), value(compared.theirs)
    bound = BOUNDS.get(compared.sign, "")

    return shown(ours), bound + shown(theirs), "" if bound else difference(ours, theirs)


def tolerance(compared: Compared) -> float | None:
    """What the comparison was allowed."""
    if cut_off(compared):
        return None
    around = AROUND.search(compared.theirs)
    if around:
        return float(around.group(1))
    bound = value(compared.theirs)

    return bound if compared.sign in ("<", "<=") and isinstance(bound, float) else None


def value(text: str) -> Any:
    """A printed value as what it is, or the text."""
    plain = re.sub(r"np\.float64\(([^)]*)\)", r"\1", AROUND.sub("", text))
    plain = re.sub(r"^approx\((.*)\)$", r"\1", plain)
    try:
        return worked(ast.parse(plain, mode="eval").body)
    except (ValueError, SyntaxError):
        return plain


def worked(node: ast.expr) -> Any:
    """A number, a sequence of them, or a little arithmetic of them."""
    if isinstance(node, ast.BinOp):
        left, right = worked(node.left), worked(node.right)
        signs = {ast.Add: left + right, ast.Sub: left - right, ast.Mult: left * right}
        return left / right if isinstance(node.op, ast.Div) else signs[type(node.op)]
    if isinstance(node, ast.Tuple | ast.List):
        return tuple(worked(each) for each in node.elts)
    found = ast.literal_eval(node)

    return float(found) if isinstance(found, int) and not isinstance(found, bool) else found


def shown(found: Any) -> str:
    """A value as a person reads it: six digits; of a choice its words."""
    if found in ("", ()):
        return "nothing"
    if isinstance(found, bool):
        return "yes" if found else "no"
    if isinstance(found, float):
        return f"{found:.6g}"
    if isinstance(found, tuple):
        return ", ".join(shown(each) for each in found)
    choice = re.match(r"<\w+\.\w+: '?(.*?)'?>$", str(found))

    return choice.group(1) if choice else str(found)


def difference(ours: Any, theirs: Any) -> str:
    """The greatest difference of numbers; none where both are the same."""
    pairs = list(numbers(ours, theirs))
    furthest = max((abs(a - b) for a, b in pairs), default=0.0)

    return f"{furthest:.1g}" if furthest > SAME * max((abs(b) for _, b in pairs), default=1.0) else "none"


def numbers(ours: Any, theirs: Any) -> Iterator[tuple[float, float]]:
    """The numbers that stand for each other on both sides."""
    if isinstance(ours, float) and isinstance(theirs, float):
        yield ours, theirs
    elif isinstance(ours, tuple) and isinstance(theirs, tuple):
        for a, b in zip(ours, theirs, strict=False):
            yield from numbers(a, b)
