"""Names that say nothing, of the same form as what they stand for."""

from collections import Counter
from collections.abc import Sequence

from attrs import frozen

from core.personal.kinds import Kind
from core.personal.search import Personal

#: addresses that nobody has: RFC 5737, RFC 3849, RFC 2606, and locally administered ones of IEEE 802; the
#: numbers of the RFCs are from memory
_NETWORKS = ("192.0.2", "198.51.100", "203.0.113")
_HOSTS = 254
#: and for the case that those do not suffice, some that are for trials of networks: RFC 2544
_MORE = "198.18"


@frozen
class Replacement:
    """A text and what stands for it."""

    kind: Kind
    text: str
    pseudonym: str


def pseudonyms(found: Sequence[Personal]) -> tuple[Replacement, ...]:
    """A pseudonym for each, numbered by kind, of the same form so that a log stays a log."""
    numbers: Counter[Kind] = Counter()
    taken = {personal.text for personal in found}
    made = []
    for personal in found:
        while True:
            numbers[personal.kind] += 1
            pseudonym = _pseudonym(personal.kind, personal.text, numbers[personal.kind])
            if pseudonym not in taken:
                break
        made.append(Replacement(personal.kind, personal.text, pseudonym))
    return tuple(made)


def _pseudonym(kind: Kind, text: str, n: int) -> str:
    if kind == "hardware address":
        sign = next((c for c in text if c in ":-"), "")
        return sign.join(f"{byte:02x}" for byte in (0x02, *n.to_bytes(5, "big")))
    if kind == "network address" and ":" in text:
        return f"2001:db8::{n:x}"
    if kind == "network address":
        block, host = divmod(n - 1, _HOSTS)
        return f"{_NETWORKS[block]}.{host + 1}" if block < len(_NETWORKS) else f"{_MORE}.{n >> 8}.{n & 255}"
    if kind == "position":
        return f"0.{n:0{max(len(text.rpartition('.')[2]), 2)}d}"
    return {
        "device name": f"device {n}",
        "e-mail address": f"person{n}@example.org",
        "user name in a path": f"user{n}",
        "network name": f"network {n}",
        "serial number": f"serial-{n:04d}",
    }[kind]
