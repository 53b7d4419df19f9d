"""Runs inside the engine at build time: the templates as Python, so that no phone has to read them."""
from jinja2.loaders import ModuleLoader

from checklist_app.checklists.render import environment


def templates() -> dict[str, str]:
    """The text of a module for each template, by the file name under which it is looked for."""
    made = environment()
    assert made.loader is not None
    found = {}
    for name in made.list_templates():
        source, _, _ = made.loader.get_source(made, name)
        found[ModuleLoader.get_module_filename(name)] = made.compile(source, name, None, raw=True, defer_init=True)

    return found
