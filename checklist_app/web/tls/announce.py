"""The name ending in .local, told to the network by multicast DNS (RFC 6762)."""

import socket
from collections.abc import Sequence

from zeroconf import Error, IPVersion, ServiceInfo, Zeroconf

SERVICE = "_https._tcp.local."


class NotAnnounced(Exception):
    """The network does not take the name; the words say why."""


class Announcement:
    """A name that this machine answers for until it is taken back."""

    def __init__(self, name: str, port: int, addresses: Sequence[str]) -> None:
        """
        Raises:
            NotAnnounced: If the network cannot be told.
        """
        self.name, self.port, self.addresses = name, port, tuple(addresses)
        try:
            self.network = Zeroconf(interfaces=list(addresses), ip_version=IPVersion.V4Only)
        except OSError as error:
            raise NotAnnounced(f"this network carries no names: {error}") from error
        self.info = self._info()
        try:
            self.network.register_service(self.info, cooperating_responders=True)
        except (Error, OSError) as error:
            self.network.close()
            raise NotAnnounced(f"the name {name} could not be told to the network: "
                               f"{error or type(error).__name__}") from error

    def close(self) -> None:
        self.network.close()

    def _info(self) -> ServiceInfo:
        instance = f"Checklist on {self.name.partition('.')[0]}.{SERVICE}"
        return ServiceInfo(SERVICE, instance, port=self.port, server=f"{self.name}.",
                           addresses=[socket.inet_aton(one) for one in self.addresses], properties={"path": "/"})
