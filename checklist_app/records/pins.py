"""PINs: which are refused, how they are kept, and how long the next try must wait."""

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError

SHORTEST, LONGEST = 4, 8
RUNS = "01234567890", "09876543210"
KEYPAD_COLUMN = ("2580", "0852")
FREE_TRIES = 3
FIRST_WAIT_S = 5
LONGEST_WAIT_S = 900

HASHER = PasswordHasher(time_cost=2, memory_cost=19_456, parallelism=1)
NOBODYS_HASH = HASHER.hash("no account has this")


def pin_fault(pin: str) -> str:
    """Why this cannot be a PIN, in words; empty when it can.

    Example:
        >>> pin_fault("4711"), pin_fault("123")
        ('', 'A PIN has 4 to 8 digits.')
        >>> pin_fault("2345")
        'This PIN is guessed first. No run of digits, no repeats, no year.'
    """
    if not (pin.isascii() and pin.isdigit() and SHORTEST <= len(pin) <= LONGEST):
        return f"A PIN has {SHORTEST} to {LONGEST} digits."
    if any(pin in run for run in RUNS) or _repeats(pin) or _is_year(pin) or pin in KEYPAD_COLUMN:
        return "This PIN is guessed first. No run of digits, no repeats, no year."

    return ""


def hashed(pin: str) -> str:
    """What is kept of a PIN (argon2id, its own salt)."""
    return HASHER.hash(pin)


def fits(pin_hash: str, pin: str) -> bool:
    """Whether the PIN is the one. Without a hash it takes as long, so that time does not tell who has an account."""
    try:
        return HASHER.verify(pin_hash or NOBODYS_HASH, pin) and bool(pin_hash)
    except (VerificationError, InvalidHashError):
        return False


def wait_s(wrong: int) -> int:
    """How long to wait after so many wrong PINs in a row.

    Example:
        >>> [wait_s(wrong) for wrong in (0, 2, 3, 4, 5, 20)]
        [0, 0, 5, 10, 20, 900]
    """
    if wrong < FREE_TRIES:
        return 0

    return min(FIRST_WAIT_S << min(wrong - FREE_TRIES, 10), LONGEST_WAIT_S)


def _repeats(pin: str) -> bool:
    """One block of digits again and again: 7777, 4747, 123123."""
    return any(len(pin) % size == 0 and pin == pin[:size] * (len(pin) // size) for size in range(1, len(pin) // 2 + 1))


def _is_year(pin: str) -> bool:
    return len(pin) == 4 and pin[:2] in ("19", "20")
