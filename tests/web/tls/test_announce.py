"""The name ending in .local: heard by whoever asks for it, and a refusal in words where there is no network for it."""

import gc
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing

import pytest
from zeroconf import ServiceInfo, Zeroconf

from checklist_app.web.tls.announce import SERVICE, Announcement, NotAnnounced


def heard() -> ServiceInfo | None:
    """What a neighbour hears of the announced name."""
    with closing(Announcement("some-shed.local", 8443, ["127.0.0.1"])), \
            closing(Zeroconf(interfaces=["127.0.0.1"])) as asking:
        return asking.get_service_info(SERVICE, f"Checklist on some-shed.{SERVICE}")


def test_whoever_asks_the_network_hears_the_name_and_its_address() -> None:
    with ThreadPoolExecutor(1) as fresh:  # the browser's driver leaves a loop in this thread, which the library takes
        found = fresh.submit(heard).result()
    assert found is not None
    assert (found.server, found.port, found.parsed_addresses()) == ("some-shed.local.", 8443, ["127.0.0.1"])


@pytest.mark.filterwarnings("ignore:.*:pytest.PytestUnraisableExceptionWarning", "ignore:unclosed:ResourceWarning")
def test_an_address_that_this_machine_does_not_have_is_refused_in_words() -> None:
    with pytest.raises(NotAnnounced, match="this network carries no names"):
        Announcement("some-shed.local", 8443, ["203.0.113.9"])
    gc.collect()  # the library leaves its socket to the collector when it fails: here, not in another test
