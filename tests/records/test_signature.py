"""Signatures are made by the page's own script, in Node's WebCrypto; the server verifies them, and nothing else."""

import json
import shutil
import subprocess
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric import ec, utils
from hypothesis import example, given
from hypothesis import strategies as st

from checklist_app.records.signature import der, fits, is_public_point
from tests.records.signing_phone import public, raw

SCRIPTS = Path(__file__).parents[2] / "static" / "js"
STATEMENT = '{"form":"statement/1","meaning":"I rigged it: 5° and ½ m"}'.encode()
ORDER = 0xFFFFFFFF00000000FFFFFFFFFFFFFFFFBCE6FAADA7179E84F3B9CAC2FC632551
MANY = 300
RUN = """
const { makeKey, openKey, signatureOf } = await import(process.argv[1] + "/phone_key.js");
const chunks = []; for await (const chunk of process.stdin) chunks.push(chunk);
const data = new Uint8Array(Buffer.concat(chunks));
const made = await makeKey("4711");
const key = await openKey(made.kept, "4711");
const said = { public: made.public, iterations: made.kept.iterations, extractable: key.extractable, usages: key.usages,
               wrong: await openKey(made.kept, "4712"), signatures: [] };
for (let n = 0; n < Number(process.argv[2]); n += 1) said.signatures.push(await signatureOf(key, data));
said.readable = Buffer.from(made.kept.wrapped).includes(Buffer.from(made.public, "hex"));
console.log(JSON.stringify(said));
"""


@pytest.fixture(scope="module")
def said() -> dict:
    """What the page's script made of a statement."""
    node = shutil.which("node")
    if node is None:
        pytest.skip("no Node.js on this machine: install Debian's package nodejs to sign as a browser does")
    done = subprocess.run([node, "--input-type=module", "-e", RUN, str(SCRIPTS), str(MANY)], input=STATEMENT,
                          capture_output=True, check=True)
    return json.loads(done.stdout)


def test_the_server_verifies_what_the_script_signed(said: dict) -> None:
    key = bytes.fromhex(said["public"])
    made = [bytes.fromhex(text) for text in said["signatures"]]
    assert all(fits(key, one, STATEMENT) for one in made)
    assert len(set(made)) == MANY, "no two signatures are the same"
    assert len({len(der(one)) for one in made}) > 1, "as ASN.1 their length varies"


def test_nothing_else_is_verified(said: dict) -> None:
    key, made = bytes.fromhex(said["public"]), bytes.fromhex(said["signatures"][0])
    other = public(ec.generate_private_key(ec.SECP256R1()))
    for wrong in ((key, made, STATEMENT + b" "), (key, made, STATEMENT[:-1]), (other, made, STATEMENT),
                  (key, der(made), STATEMENT), (key, made[:-1], STATEMENT), (key, made[32:] + made[:32], STATEMENT),
                  (key[:-1], made, STATEMENT), (b"", made, STATEMENT), (key, b"", STATEMENT),
                  (key, bytes(64), STATEMENT)):
        assert not fits(*wrong)


def test_the_key_comes_out_for_signing_only_and_a_wrong_pin_opens_nothing(said: dict) -> None:
    assert said["extractable"] is False and said["usages"] == ["sign"] and said["wrong"] is None
    assert said["readable"] is False and said["iterations"] >= 600_000


def test_anybody_can_make_a_second_signature_from_a_first_so_it_names_nothing(said: dict) -> None:
    key, made = bytes.fromhex(said["public"]), bytes.fromhex(said["signatures"][0])
    second = made[:32] + (ORDER - int.from_bytes(made[32:], "big")).to_bytes(32, "big")
    assert second != made and fits(key, second, STATEMENT)


@given(st.binary(min_size=64, max_size=64))
@example(bytes(64))
@example(bytes(31) + b"\x80" + bytes(31) + b"\x7f")
@example(b"\xff" * 64)
def test_the_encoding_is_the_one_that_the_library_makes(signature: bytes) -> None:
    r, s = (int.from_bytes(half, "big") for half in (signature[:32], signature[32:]))
    assert der(signature) == utils.encode_dss_signature(r, s)


@given(st.binary(max_size=80))
def test_any_bytes_are_judged_without_an_accident(junk: bytes) -> None:
    key = ec.generate_private_key(ec.SECP256R1())
    assert fits(public(key), raw(key, junk), junk)
    assert not fits(public(key), junk, STATEMENT)
    assert not is_public_point(junk) or len(junk) == 65
