"""Where certificates and keys lie: `tls/` in the folder of the data, readable by its owner only, whole or not there.

A key and its certificate share one file, so that no crash can leave the two of them apart.
"""

import json
import os
from pathlib import Path
from typing import Any

from cryptography import x509
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric import ec

from checklist_app.records.parts import fsync_folder
from checklist_app.web.tls.certificates import Pair

FOLDER = "tls"
ROOT, SERVER = "root.pem", "server.pem"
PEM = serialization.Encoding.PEM


class Cabinet:
    """The folder `tls` of one server."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder / FOLDER
        self.folder.mkdir(mode=0o700, parents=True, exist_ok=True)

    @property
    def server_path(self) -> Path:
        return self.folder / SERVER

    def pair(self, name: str) -> Pair | None:
        """A certificate with its key, or None where none was made yet.

        Raises:
            ValueError: If the file is damaged: a root is never made anew over another one, as every phone trusts that.
        """
        path = self.folder / name
        if not path.exists():
            return None
        data = path.read_bytes()
        try:
            key = serialization.load_pem_private_key(data, None)
            certificate = x509.load_pem_x509_certificate(data)
        except ValueError as error:
            raise ValueError(f"{path} is damaged: put it back from a backup") from error
        if not isinstance(key, ec.EllipticCurvePrivateKey) or key.public_key() != certificate.public_key():
            raise ValueError(f"{path} is damaged: its key is another certificate's; put it back from a backup")

        return Pair(certificate, key)

    def keep(self, name: str, pair: Pair) -> None:
        private = pair.key.private_bytes(PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption())
        self._write(name, private + pair.certificate.public_bytes(PEM))

    def said(self, name: str) -> Any:
        """What was noted under a name; None where nothing was."""
        path = self.folder / f"{name}.json"
        return json.loads(path.read_text("utf-8")) if path.exists() else None

    def note(self, name: str, value: Any) -> None:
        self._write(f"{name}.json", json.dumps(value).encode())

    def _write(self, name: str, data: bytes) -> None:
        """Written aside, on the disk, then under its name, and the folder on the disk too."""
        aside, path = self.folder / f"{name}.{os.getpid()}.unfinished", self.folder / name
        aside.unlink(missing_ok=True)
        with os.fdopen(os.open(aside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        aside.replace(path)
        fsync_folder(self.folder)
