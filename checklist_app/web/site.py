"""Where this server answers: the one https name, the http addresses beside it, and whether https is in use already."""

import threading
from dataclasses import dataclass, field
from typing import Any, cast

from flask import current_app

from checklist_app.web.tls.cabinet import Cabinet
from checklist_app.web.tls.keeper import Certificates
from checklist_app.web.tls.reach import in_link

HTTPS_PORT, HTTP_PORT = 443, 80
IN_USE = "https-in-use"
DEVICE_SIGNED_IN = "the first sign-in by https"


@dataclass
class Site:
    """What `serve` sets up and pages ask. Without https there is none."""

    certificates: Certificates
    cabinet: Cabinet
    name: str = ""
    https_port: int = HTTPS_PORT
    http_urls: tuple[str, ...] = ()
    announced: str = ""
    not_announced: str = ""
    lock: threading.Lock = field(default_factory=threading.Lock)
    said: dict[str, Any] | None = None

    def __post_init__(self) -> None:
        self.said = self.cabinet.said(IN_USE)

    def https(self, path: str = "/") -> str:
        """The address of a page at the one https name."""
        port = "" if self.https_port == HTTPS_PORT else f":{self.https_port}"
        return f"https://{in_link(self.name)}{port}{path}"

    @property
    def https_in_use(self) -> bool:
        """Whether http is for entering and checking only."""
        return self.said is not None and bool(self.said["on"])

    def say(self, on: bool, at: str, by: str) -> None:
        """An administrator's word, which holds until the next one."""
        with self.lock:
            said = {"on": on, "at": at, "by": by}
            self.cabinet.note(IN_USE, said)
            self.said = said

    def somebody_signed_in(self, at: str) -> None:
        """By https: so phones can, and https is in use from now on, unless an administrator has said otherwise."""
        if self.said is None:
            self.say(True, at, DEVICE_SIGNED_IN)


def site() -> Site | None:
    """Where this server answers by https, if it does."""
    return cast(Site | None, current_app.config["SITE"])
