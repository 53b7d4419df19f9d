"""A prompt as a form asks it: what it is about, where its answer goes, and what kind of answer it takes."""

import json
from collections.abc import Mapping
from dataclasses import dataclass

from checklist_app.checklists.entry import Path
from checklist_app.checklists.values import HEX

Form = Mapping[str, tuple[str, ...]]


@dataclass(frozen=True)
class Asked:
    """One prompt of a form. Its field is named by its path; companions by `.how`, `.dont_know` and so on."""

    about: Path
    path: Path
    type: str
    """number, choice, tick, date, text, photo or pick."""
    unit: str = ""
    choices: tuple[str, ...] = ()
    other_answers: bool = True
    """Whether *don't know* and *not used* are answers here."""

    @property
    def name(self) -> str:
        """Name of its field."""
        return "/".join(self.path)

    def one(self, form: Form, companion: str = "") -> str:
        """What the form says in its field, or in a companion of it, without the blanks around."""
        return next(iter(form.get(self.name + companion, ())), "").strip()

    def is_in(self, form: Form) -> bool:
        """Whether the form asked this at all: an unticked box sends nothing by itself."""
        return any(name == self.name or name.startswith(f"{self.name}.") for name in form)

    def seen(self, form: Form) -> tuple[str, ...] | None:
        """Digests of what stood at this prompt when the page was made; none if the form does not say."""
        try:
            said = json.loads(self.one(form, ".seen") or "null")
        except (ValueError, RecursionError):
            return None
        shown = said.get("replaces") if isinstance(said, dict) else None
        if not isinstance(shown, list) or not all(isinstance(name, str) and HEX.match(name) for name in shown):
            return None
        return tuple(shown)

    def data(self, replaces: tuple[str, ...]) -> str:
        """What the page's script must know of this prompt, as `data-prompt` and as the `.seen` field hold it."""
        said = {"about": self.about, "path": self.path, "type": self.type, "unit": self.unit, "replaces": replaces}
        return json.dumps(said, ensure_ascii=False)
