"""A handshake between two ends in memory, by the library that most programs verify with (OpenSSL)."""

import ssl
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat

from checklist_app.web.tls.certificates import Pair

ROUNDS = 6


def pem(path: Path, pair: Pair, with_key: bool = True) -> Path:
    private = pair.key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()) if with_key else b""
    path.write_bytes(private + pair.certificate.public_bytes(Encoding.PEM))
    return path


def trusted(above: Pair, served: Pair, host: str, folder: Path, *between: x509.Certificate) -> bool:
    """Whether somebody who trusts the root shakes hands with this server.

    Raises:
        ssl.SSLError: If he refuses.
    """
    there = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    chain = pem(folder / "server.pem", served)
    with chain.open("ab") as file:
        file.writelines(one.public_bytes(Encoding.PEM) for one in between)
    there.load_cert_chain(chain)
    here = ssl.create_default_context(cafile=str(pem(folder / "root.pem", above, with_key=False)))
    to_server, to_client = ssl.MemoryBIO(), ssl.MemoryBIO()
    client = here.wrap_bio(to_client, to_server, server_hostname=host)
    server = there.wrap_bio(to_server, to_client, server_side=True)
    for _ in range(ROUNDS):
        done = step(client)
        if step(server) and done:
            return True
    raise AssertionError("the two ends never finished")


def step(end: ssl.SSLObject) -> bool:
    try:
        end.do_handshake()
    except ssl.SSLWantReadError:
        return False
    return True


def refused_because(above: Pair, served: Pair, host: str, folder: Path, *between: x509.Certificate) -> str:
    try:
        trusted(above, served, host, folder, *between)
    except ssl.SSLCertVerificationError as error:
        return error.verify_message
    raise AssertionError(f"it was trusted for {host}")
