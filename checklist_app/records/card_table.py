"""The catalogue of records: what they are looked up by. It is made from the sealed text and can be made again."""

import peewee as p


class Card(p.Model):
    """One record. `said` holds every name, tag and place in it, in lower case, for the search field."""

    digest = p.CharField(64, primary_key=True)
    number = p.IntegerField(index=True)
    day = p.CharField(10, index=True)
    title = p.CharField(200)
    operation = p.CharField(80)
    place = p.CharField(200)
    verdict = p.CharField(32)
    closing = p.CharField(40)
    governs = p.CharField(200)
    used = p.CharField(60)
    highest = p.IntegerField(null=True)
    voids = p.IntegerField()
    stops = p.IntegerField()
    signed_by = p.CharField(300)
    said = p.TextField()


TABLES = (Card,)
