"""What is kept so that a signature made away from the server can be judged: keys, contacts, comparisons."""

import peewee as p


class SignKey(p.Model):
    """A key made in a phone, for one person there. Only its public half ever leaves the phone.

    `id` is the SHA-256 of the public point. `ended_at` is empty while the key is good. `how` is what opens it: the PIN,
    or the phone's screen lock; then `credential` is what the phone calls it, `rp_id` the name it was made for, and
    `origin` the pages on which it signs.
    """

    id = p.CharField(64, primary_key=True)
    device = p.CharField(64, index=True)
    person = p.CharField(64, index=True)
    public = p.CharField(130)
    made_at = p.CharField(20)
    ended_at = p.CharField(20, default="")
    ended_why = p.CharField(200, default="")
    how = p.CharField(16, default="phone-key", constraints=[p.SQL("DEFAULT 'phone-key'")])
    credential = p.CharField(2046, default="", constraints=[p.SQL("DEFAULT ''")])
    rp_id = p.CharField(253, default="", constraints=[p.SQL("DEFAULT ''")])
    origin = p.CharField(300, default="", constraints=[p.SQL("DEFAULT ''")])


class Contact(p.Model):
    """When a device was last told how far receipts go: a signature names that number, and so its last contact."""

    device = p.CharField(64)
    number = p.BigIntegerField()
    at = p.CharField(20)

    class Meta:
        primary_key = p.CompositeKey("device", "number")


class Comparison(p.Model):
    """One evaluation by a phone, made again here. What differs is kept whole: `said` and `found` here."""

    digest = p.CharField(64, primary_key=True)
    task = p.CharField(64, index=True)
    device = p.CharField(64)
    code = p.CharField(64)
    at = p.CharField(20)
    outcome = p.CharField(16)
    words = p.CharField(400, default="")
    said = p.BlobField(null=True)
    found = p.BlobField(null=True)
    looked_by = p.CharField(64, default="")


TABLES = (SignKey, Contact, Comparison)
