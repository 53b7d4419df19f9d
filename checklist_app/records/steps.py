"""From each schema to the next. The words of a step are never changed once it has been published."""

import peewee as p

KEYS_OF_PHONES = (
    'CREATE TABLE "signkey" ("id" VARCHAR(64) NOT NULL PRIMARY KEY, "device" VARCHAR(64) NOT NULL, '
    '"person" VARCHAR(64) NOT NULL, "public" VARCHAR(130) NOT NULL, "made_at" VARCHAR(20) NOT NULL, '
    '"ended_at" VARCHAR(20) NOT NULL, "ended_why" VARCHAR(200) NOT NULL)',
    'CREATE INDEX "signkey_device" ON "signkey" ("device")',
    'CREATE INDEX "signkey_person" ON "signkey" ("person")',
    'CREATE TABLE "contact" ("device" VARCHAR(64) NOT NULL, "number" INTEGER NOT NULL, "at" VARCHAR(20) NOT NULL, '
    'PRIMARY KEY ("device", "number"))',
    'CREATE TABLE "comparison" ("digest" VARCHAR(64) NOT NULL PRIMARY KEY, "task" VARCHAR(64) NOT NULL, '
    '"device" VARCHAR(64) NOT NULL, "code" VARCHAR(64) NOT NULL, "at" VARCHAR(20) NOT NULL, '
    '"outcome" VARCHAR(16) NOT NULL, "words" VARCHAR(400) NOT NULL, "said" BLOB, "found" BLOB, '
    '"looked_by" VARCHAR(64) NOT NULL)',
    'CREATE INDEX "comparison_task" ON "comparison" ("task")',
)

SCREEN_LOCKS = (
    """ALTER TABLE "signkey" ADD COLUMN "how" VARCHAR(16) NOT NULL DEFAULT 'phone-key'""",
    """ALTER TABLE "signkey" ADD COLUMN "credential" VARCHAR(2046) NOT NULL DEFAULT ''""",
    """ALTER TABLE "signkey" ADD COLUMN "rp_id" VARCHAR(253) NOT NULL DEFAULT ''""",
    """ALTER TABLE "signkey" ADD COLUMN "origin" VARCHAR(300) NOT NULL DEFAULT ''""",
)


def to_schema_2(database: p.Database) -> None:
    """Phones sign away from the server: their keys, their contacts, and their evaluations held against the server's."""
    for words in KEYS_OF_PHONES:
        database.execute_sql(words)


def to_schema_3(database: p.Database) -> None:
    """Keys that a phone's screen lock opens, beside those that a PIN opens: every key so far is one of these."""
    for words in SCREEN_LOCKS:
        database.execute_sql(words)
