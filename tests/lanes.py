"""Which tests follow each other in one process when a run of all is spread over several.

A file's tests stay together, and so do those of some folders: of `browser`, because two browsers at once are too much
for two cores, and with it `demo`, which looks at the same filled yard; of `phone`, which starts one engine; of
`mechanics`, at whose end stands what all of its tests compared.
"""

from xdist.scheduler import LoadScopeScheduling

TOGETHER = {"browser": "yard", "demo": "yard", "phone": "engine", "mechanics": "proofs"}


class Lanes(LoadScopeScheduling):
    """Whoever is free takes the next lane, in the order in which the tests were found: that of the browser first."""

    def _split_scope(self, nodeid: str) -> str:
        return lane(nodeid)


def lane(nodeid: str) -> str:
    """A folder's lane, or the file of a test."""
    file = nodeid.partition("::")[0]
    _, _, below = file.partition("/")
    return TOGETHER.get(below.partition("/")[0], file)
