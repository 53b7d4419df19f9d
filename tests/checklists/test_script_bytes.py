"""The page's script and the server make the same bytes and digests, and refuse the same values."""

import json
import random
import shutil
import subprocess
import unicodedata
from pathlib import Path

import pytest

from checklist_app.checklists.canonical import LARGEST_WHOLE, NotCanonical, as_typed, canonical, digest
from checklist_app.checklists.entry import read

SCRIPTS = Path(__file__).parents[2] / "static" / "js"
RUN = """
import { createInterface } from "node:readline";
const { asTyped, bytes, canonical } = await import(process.argv[1] + "/canonical.js");
const { sha256 } = await import(process.argv[1] + "/sha256.js");
for await (const line of createInterface({ input: process.stdin })) {
  const value = JSON.parse(line, (key, item) => (typeof item === "string" ? asTyped(item) : item));
  let answer;
  try {
    const text = canonical(value);
    answer = { text, digest: sha256(bytes(text)) };
  } catch (error) {
    answer = { refused: error.constructor.name };
  }
  console.log(JSON.stringify(answer));
}
"""
SEED = 20261125
AWKWARD = ["e\u0301", "\u212b", "\u1100\u1161", "ﬁ", "½", '"', "\\", "/", "\b", "\n", "\x00", "\x1f", "\x7f", "\u2028",
           "\u2029", "\ufeff", "\u200d", "\U0001f3d7", "\ud7ff", "\ue000", "\uffff", "1,250", "−", "°", "</script>"]
VALUES = ("number", "choice", "tick", "text", "pick", "withdrawn")


@pytest.fixture(scope="module")
def node() -> str:
    """Path of Node.js; without it the test is skipped, which is a failure under CI."""
    found = shutil.which("node")
    if found is None:
        pytest.skip("no Node.js on this machine: install Debian's package nodejs to compare the page's script")
    return found


def in_script(node, lines):
    done = subprocess.run([node, "--input-type=module", "-e", RUN, str(SCRIPTS)], input="\n".join(lines),
                          capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.split("\n") if line]


def typed(value):
    """The same value with every text composed once, as each side does where it makes a text."""
    if isinstance(value, str):
        return as_typed(value)
    if isinstance(value, list):
        return [typed(item) for item in value]
    return {key: typed(item) for key, item in value.items()} if isinstance(value, dict) else value


def random_text(rng):
    """Letters that both sides' releases of Unicode know."""
    length = rng.randrange(14)
    letters = [rng.choice(AWKWARD) if rng.random() < 0.4 else chr(rng.randrange(0x3000)) for _ in range(length)]
    return "".join(letter for letter in letters if unicodedata.category(letter[0]) not in ("Cn", "Cs"))


def random_value(rng):
    kind = rng.choice(VALUES)
    if kind == "number":
        return {"type": kind, "text": random_text(rng), "unit": rng.choice(["kg", "m", "°"]), "how": random_text(rng)}
    if kind == "choice":
        beside = [rng.randbytes(4).hex(), {"a1": None, "a": True, "b_2": []}]
        return {"type": kind, "text": random_text(rng), "of": beside}
    if kind == "tick":
        return {"type": kind, "text": rng.choice(["yes", "no", "cannot_see"])}
    if kind == "text":
        return {"type": kind, "part": rng.randbytes(32).hex()}
    if kind == "pick":
        return {"type": kind, "subject": "gear/L-07", "version": rng.randbytes(32).hex(), "point": random_text(rng)}
    return {"type": kind, "beside": rng.choice([0, -1, LARGEST_WHOLE, -LARGEST_WHOLE])}


def random_entry(rng):
    return {"form": 1, "about": ["task", f"t-d-{rng.randrange(99)}"],
            "path": rng.choice([["mass_kg"], ["leg", "1-left"], ["leg", "2-right", "sling"]]),
            "value": random_value(rng),
            "replaces": sorted({rng.randbytes(32).hex() for _ in range(rng.randrange(4))}), "author": "p-1",
            "device": "d-1", "counter": rng.randrange(1, LARGEST_WHOLE), "at": "2026-11-25T08:00:00Z"}


def test_a_thousand_random_entries_have_the_same_bytes_and_digests(node):
    rng = random.Random(SEED)
    entries = [random_entry(rng) for _ in range(1000)]
    for entry, there in zip(entries, in_script(node, map(json.dumps, entries)), strict=True):
        here = canonical(typed(entry))
        assert there == {"text": here.decode(), "digest": digest(here)}, f"seed {SEED}"
        assert read(here).digest == there["digest"]


def test_texts_of_every_length_round_a_block_have_the_same_digest(node):
    texts = ["x" * length for length in [*range(200), 1000, 65_536, 1_000_000]]
    for text, there in zip(texts, in_script(node, map(json.dumps, texts)), strict=True):
        assert there["digest"] == digest(canonical(text)), len(text)


@pytest.mark.parametrize("line", [
    "1.5", "9007199254740992", "-9007199254740992", '"\\ud800"', '"a\\udfffb"', '{"10":1}', '{"2":1,"10":2}',
    '{"Key":1}',
    '{"__proto__":1}', '{"a b":1}', '{"":1}', '{"ä":1}', '{"a\\n":1}', "[" * 10 + "]" * 10,
])
def test_what_one_side_refuses_the_other_refuses_too(node, line):
    with pytest.raises(NotCanonical):
        canonical(json.loads(line))
    assert in_script(node, [line]) == [{"refused": "NotCanonical"}]


def test_zero_is_zero_whatever_its_sign(node):
    assert in_script(node, ["-0", "0"]) == [{"text": "0", "digest": digest(b"0")}] * 2


def test_eight_deep_is_the_same_on_both_sides(node):
    deep = "[" * 8 + "1" + "]" * 8
    assert in_script(node, [deep])[0]["text"].encode() == canonical(json.loads(deep))
