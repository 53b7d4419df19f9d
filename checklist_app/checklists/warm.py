"""What a phone reads once, before the memory of its started checks is kept for the next start."""

from jinja2 import FileSystemLoader

from checklist_app.checklists.answer import addresses
from checklist_app.checklists.procedure import procedures
from checklist_app.checklists.render import environment


def warm() -> None:
    """The pages, the procedures, the templates where they came uncompiled. Nothing of anybody's task is known here."""
    addresses()
    procedures()
    made = environment()
    if isinstance(made.loader, FileSystemLoader):
        for name in made.list_templates(extensions=["html"]):
            made.get_template(name)
