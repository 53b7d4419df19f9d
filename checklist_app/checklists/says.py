"""What the pages of a task call its work: a lift hangs, a lashed load travels, and the words say so."""
from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any


@dataclass(frozen=True)
class Says:
    """Words of one procedure; those of a lift stand here.

    `work`: what is done, after "the". `safe`: what to do when it was stopped. `still_open`: what may be answered then,
    at the stage `safe_at`. `held`: what stands at a hold point that is not signed, once a row of the group `held_with`
    is there, or at once. `done`: the tick that says that the work is done; `not_done`, `is_done`: the same in words.
    `reasons`: why somebody may have stopped. `how`: heading over how it is done, in a record; `rules`: what
    the rule set is called there; `statics`: what its sums leave out. The rest is what the closings mean.
    """

    work: str = "lift"
    safe: str = "Lower the load to the last safe place."
    still_open: str = "Lower, secure, photograph, land"
    safe_at: str = "move"
    held: str = "Lower to the last safe place. Nothing goes up until it is signed."
    held_with: str = "trial"
    done: str = "landed"
    not_done: str = "It does not stand on its landing place yet."
    is_done: str = "It stands on its landing place: it was carried out."
    completed: str = "It was lifted and set as signed."
    abandoned: str = "It was given up or refused. Nothing is moved any more."
    stopped: str = "It was stopped, and nobody goes on."
    how: str = "How it is slung"
    rules: str = "Rules that rate the slings"
    statics: str = ("The checks are statics of a load hanging at rest. Snatching, swinging, wind and pulling free are "
                    "not in them.")
    reasons: tuple[str, ...] = ("somebody was in the zone", "it hangs crooked", "a noise, or it sticks",
                                "gear looks wrong", "something else")
    unsigned: str = "It was lifted and set, and not every sign-off stood."

    def whole(self, verdict: str) -> str:
        """The verdict on the whole work.

        Example:
            >>> Says().whole("within limit"), Says(work="lashing").whole("cannot be assessed")
            ('The lift is within limit', 'The lashing cannot be assessed')
        """
        return f"The {self.work} {verdict}" if verdict.startswith("cannot") else f"The {self.work} is {verdict}"


A_LIFT = Says()


def says(data: Mapping[str, Any]) -> Says:
    """As a procedure writes it."""
    unknown = sorted(set(data) - {field.name for field in fields(Says)})
    if unknown:
        raise ValueError(f"a procedure says what no page asks for: {', '.join(unknown)}")
    given: dict[str, Any] = {name: tuple(said) if isinstance(said, list) else said for name, said in data.items()}
    return Says(**given)
