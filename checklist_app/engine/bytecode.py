"""Runs inside the engine at build time: the bytecode of one module."""
from importlib import _bootstrap_external
from importlib.util import source_hash


def bytecode(text: str, name: str) -> bytes:
    """Without docstrings, and marked by no date: the same source gives the same bytes."""
    source = text.encode()
    code = compile(source, name, "exec", dont_inherit=True, optimize=2)
    return bytes(_bootstrap_external._code_to_hash_pyc(code, source_hash(source), checked=False))
