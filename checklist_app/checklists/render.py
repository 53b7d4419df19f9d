"""Templates to HTML. Only plain data goes in: no address maker, no session, no clock."""
from functools import cache
from typing import Any

from jinja2 import BaseLoader, Environment, FileSystemLoader, ModuleLoader, StrictUndefined

from checklist_app.checklists import words
from checklist_app.shipped import shipped

COMPILED = "compiled_templates"


@cache
def environment() -> Environment:
    """The one environment: what nobody gave is an error, what somebody typed is escaped."""
    made = Environment(
        loader=loader(),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    made.filters.update(words.FILTERS)
    return made


def loader() -> BaseLoader:
    """The templates; on a phone they come compiled, because reading one there takes longer than filling it."""
    compiled = shipped(COMPILED)
    return ModuleLoader(compiled) if compiled.is_dir() else FileSystemLoader(shipped("templates"))


def render(template: str, **context: Any) -> str:
    """The HTML of one template under `templates/`, such as "checklist/today.html"."""
    return environment().get_template(template).render(context)
