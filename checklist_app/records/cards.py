"""Cards of the catalogue: made from sealed texts, thrown away and made again at will."""

from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.records import chain, figures, sqlite
from checklist_app.records.card_table import Card
from checklist_app.records.store import Store


def card(record: Mapping[str, Any], digest: str) -> Any:
    """The statement that puts a record's card into the catalogue."""
    return Card.insert(digest=digest, **facts(record))


def facts(record: Mapping[str, Any]) -> dict[str, Any]:
    """What the card of a record says."""
    check = figures.governing(record)
    standing = [one["name"] for one in record["signoffs"] if one["standing"] == "stands"]

    return {
        "number": record["number"], "day": record["day"], "title": record["title"][:200],
        "operation": record["operation_words"][:80], "place": record["place"][:200], "verdict": record["verdict"],
        "closing": record["closing"]["text"], "governs": figures.title(check)[:200] if check is not None else "",
        "used": figures.used(check)[:60] if check is not None else "", "highest": highest(record),
        "voids": len([one for one in record["signoffs"] if one["void"] or one["intervals"]]),
        "stops": len([event for event in record["events"] if event["kind"] == "stop"]),
        "signed_by": ", ".join(dict.fromkeys(standing))[:300], "said": " ".join(said(record)).lower(),
    }


def highest(record: Mapping[str, Any]) -> int | None:
    """The highest utilisation of any strength check at its worst, in per cent rounded up."""
    shares = [float((check.get("worst") or check).get("utilisation") or 0) for check in record["evaluation"]["checks"]
              if check["kind"] == "strength"]
    return -int(-max(shares) * 100 // 1) if shares else None


def said(record: Mapping[str, Any]) -> Iterator[str]:
    """Every word a record is looked for by: number, load, place, gear, people."""
    yield f"{record['number']:04d}"
    yield from (record["title"], record["load"], record["place"], record["operation_words"], record["closing"]["words"])
    for piece in record["kit"]:
        yield from (piece["tag"], piece["kind"], f"gear:{piece['tag']}|")
    for person in record["people"]:
        yield from (person["name"], f"person:{person['name']}|")
    for one in (*record["signoffs"], *record.get("guests", ())):
        yield from (one["name"], f"person:{one['name']}|")


def make_again(store: Store) -> None:
    """Throw the catalogue away and make it from the sealed texts."""
    with sqlite.writing(store.database):
        Card.delete().execute(store.database)
        for one in chain.everything(store):
            card(one.record, one.digest).execute(store.database)
