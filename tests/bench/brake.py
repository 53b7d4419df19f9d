"""Slows a browser down as a slower processor would: python tests/bench/brake.py PID TIMES, until it is terminated.

The browser's own emulation reaches the page's main thread and not its workers. So every renderer below the process is
stopped for its share of each short slice, all its threads alike; network and disk keep their speed.
"""

import os
import signal
import sys
import time
from pathlib import Path

SLICE_S = 0.004
LOOK_AGAIN_S = 0.1
RENDERER = b"--type=renderer"


def below(root: int) -> list[int]:
    """Renderers among the descendants of a process."""
    parents, found = {}, []
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            parents[int(folder.name)] = int((folder / "stat").read_text().rpartition(")")[2].split()[1])
            if RENDERER in (folder / "cmdline").read_bytes():
                found.append(int(folder.name))
        except (OSError, ValueError):
            continue  # it has just ended
    return [process for process in found if descends(process, root, parents)]


def descends(process: int, root: int, parents: dict[int, int]) -> bool:
    while process in parents:
        process = parents[process]
        if process == root:
            return True
    return False


def tell(processes: list[int], what: signal.Signals) -> None:
    for process in processes:
        try:
            os.kill(process, what)
        except ProcessLookupError:
            continue


def main(root: int, times: float) -> None:
    processes, looked, done = list[int](), 0.0, list[int]()
    signal.signal(signal.SIGTERM, lambda *_: done.append(1))
    ran = SLICE_S
    while not done:
        if time.monotonic() - looked > LOOK_AGAIN_S:
            processes, looked = below(root), time.monotonic()
        tell(processes, signal.SIGSTOP)
        time.sleep(ran * (times - 1))
        tell(processes, signal.SIGCONT)
        start = time.monotonic()
        time.sleep(SLICE_S)
        ran = time.monotonic() - start  # who woke late stops longer
    tell(processes, signal.SIGCONT)


if __name__ == "__main__":
    main(int(sys.argv[1]), float(sys.argv[2]))
