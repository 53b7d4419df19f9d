"""The app: one store, the guards, the routes."""

from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from flask import Flask

from checklist_app.records.accounts import Accounts
from checklist_app.records.notices import NoticeBoard
from checklist_app.records.seal import DEMONSTRATION
from checklist_app.records.sessions import Sessions
from checklist_app.records.store import Store
from checklist_app.web import (
    access,
    bringing,
    canonical,
    engine,
    enrol,
    entries,
    faults,
    https_pages,
    item_actions,
    lesser,
    news,
    parity,
    people,
    phones,
    pressing,
    proofs,
    registers,
    sealing,
    sealing_pages,
    security,
    shell,
    sign_in,
    start,
    static,
    travelling,
    trust,
    waiting,
)
from checklist_app.web import records as record_pages

KIB = 1024
DEFAULTS: dict[str, Any] = {
    "CLOCK": lambda: datetime.now(UTC),
    "ZONE": None,
    "SITE": None,
    "MAX_CONTENT_LENGTH": 1024 * KIB,
    "MAX_FORM_MEMORY_SIZE": 1024 * KIB,
    "MAX_FORM_PARTS": 2000,
}


def create_app(folder: str | Path, **overrides: Any) -> Flask:
    """The app over the data in a folder, which is made if it is not there.

    Args:
        folder: Holds `checklist.db`, `parts/`, `records/`, `backups/`.
        overrides: Settings in capitals; `CLOCK` gives the instant, `ZONE` the workshop's time zone, `SITE` tells
            where https answers, `DEMO` marks pages.

    Raises:
        LookupError: If a route does not say who may open it.
    """
    app = Flask(__name__, static_folder=None, template_folder=None)
    store = Store(Path(folder))
    app.config.update(DEFAULTS | {"DEMO": (store.folder / DEMONSTRATION).exists()} | overrides)
    keep(app, store)
    security.protect(app)
    canonical.send_on(app)
    access.guard(app)
    lesser.stand_in_the_way(app)
    app.after_request(pressing.press)
    app.after_request(static.with_edition)
    faults.explain(app)
    for module in (static, engine, start, sign_in, people, phones, enrol, registers, item_actions, entries, news,
                   parity, bringing, shell, proofs, sealing_pages, record_pages, https_pages, trust, waiting,
                   travelling):
        app.register_blueprint(module.blueprint)
    access.refuse_undeclared(app)
    with app.app_context():
        sealing.seal_what_was_left()

    return app


def keep(app: Flask, store: Store) -> None:
    """One store for the whole app."""
    app.extensions["store"] = store
    app.extensions["accounts"] = Accounts(store.database)
    app.extensions["sessions"] = Sessions(store.database)
    app.extensions["notices"] = NoticeBoard(store)
    app.teardown_appcontext(lambda _: store.close())
