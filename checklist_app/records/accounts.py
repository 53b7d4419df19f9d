"""Who may sign in: accounts, their PINs, and one-time codes that set a PIN."""

import hashlib
import secrets
import unicodedata
from datetime import datetime, timedelta

import peewee as p

from checklist_app.records import pins, sqlite
from checklist_app.records.account_tables import ROLES, Account, OneTimeCode, Session, Tries, create_account_tables
from checklist_app.records.database import SignedIn
from checklist_app.records.keys import Keys
from checklist_app.records.moments import moment

CODE_SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789"
CODE_LENGTH = 10
CODE_HOURS = 24
ENROLLED, STRANGER = "-enrolled", "-stranger"


class NameTaken(ValueError):
    """Two accounts would answer to one name."""


class LastAdministrator(ValueError):
    """Nobody would be left to run the registers of people."""


class WrongPin(PermissionError):
    """The PIN is not this person's, or there is no such account."""


class TooSoon(PermissionError):
    """Too many wrong PINs from there: `wait_s` seconds are left."""

    def __init__(self, wait_s: int) -> None:
        super().__init__(f"wait {wait_s} s")
        self.wait_s = wait_s


class Accounts:
    """The accounts in one database."""

    def __init__(self, database: p.Database) -> None:
        self.db = database
        create_account_tables(database)

    def add(self, person: str, name: str, role: str) -> None:
        """A new account without a PIN: a one-time code sets it.

        Raises:
            NameTaken: If somebody signs in by this name already.
        """
        try:
            Account.insert(person=person, name=tidy(name), name_key=name_key(name),
                           role=known_role(role)).execute(self.db)
        except p.IntegrityError as error:
            raise NameTaken(tidy(name)) from error

    def change(self, person: str, name: str, role: str, active: bool) -> None:
        """Name, role and whether the account is in use; one that is not loses its sessions.

        Raises:
            NameTaken: If somebody else signs in by this name.
            LastAdministrator: If this was the last administrator in use.
        """
        with sqlite.writing(self.db):
            stays = role == "administrator" and active
            if not stays and is_last_administrator(self.all(), person):
                raise LastAdministrator(person)
            try:
                Account.update(name=tidy(name), name_key=name_key(name), role=known_role(role), active=active).where(
                    Account.person == person).execute(self.db)
            except p.IntegrityError as error:
                raise NameTaken(tidy(name)) from error
            if not active:
                self._sign_out_everywhere(person)
                OneTimeCode.delete().where(OneTimeCode.person == person).execute(self.db)

    def get(self, person: str) -> Account | None:
        return Account.select().where(Account.person == person).first(self.db)

    def named(self, name: str) -> Account | None:
        """Who signs in by this name, however it is written in capitals and blanks."""
        return Account.select().where(Account.name_key == name_key(name)).first(self.db)

    def all(self) -> list[Account]:
        return list(Account.select().order_by(Account.name_key).execute(self.db))

    def on_device(self, device: str) -> list[Account]:
        """Who has signed in on this device before."""
        here = Tries.select(Tries.person).where(Tries.place == device)
        query = Account.select().where(Account.active, Account.person.in_(here)).order_by(Account.name_key)
        return list(query.execute(self.db)) if device else []

    def has_administrator(self) -> bool:
        """Whether somebody can already run the app: an administrator in use who has a PIN."""
        query = Account.select().where(Account.role == "administrator", Account.active, Account.pin_hash != "")
        return query.exists(self.db)

    def give_code(self, person: str | None, now: datetime) -> str:
        """A new one-time code; earlier ones for the same person are worth nothing."""
        code = "".join(secrets.choice(CODE_SIGNS) for _ in range(CODE_LENGTH))
        until = moment(now + timedelta(hours=CODE_HOURS))
        with sqlite.writing(self.db):
            OneTimeCode.delete().where(_of(person)).execute(self.db)
            OneTimeCode.insert(digest=_code_digest(code), person=person, until=until).execute(self.db)

        return f"{code[:5]}-{code[5:]}"

    def code(self, code: str, now: datetime) -> OneTimeCode | None:
        """The code, if it still is one."""
        found = OneTimeCode.select().where(OneTimeCode.digest == _code_digest(code), OneTimeCode.until >= moment(now))
        return found.first(self.db)

    def set_pin(self, person: str, pin: str, code: str, now: datetime) -> bool:
        """The PIN a one-time code allows to set, once; all earlier sign-ins of the person end."""
        kept = pins.hashed(pin)
        with sqlite.writing(self.db):
            if self.code(code, now) is None:
                return False
            OneTimeCode.delete().where(OneTimeCode.digest == _code_digest(code)).execute(self.db)
            Account.update(pin_hash=kept).where(Account.person == person).execute(self.db)
            self._sign_out_everywhere(person)
            Keys(self.db).end_of_person(person, now)
            Tries.update(wrong=0).where(Tries.person == person).execute(self.db)

        return True

    def check_pin(self, person: str, pin: str, device: str, now: datetime) -> None:
        """Pass when the PIN is this person's. A try counts before it is looked at: a hundred at once gain nothing.

        Args:
            device: Id of an enrolled device, empty for one that nobody knows.

        Raises:
            TooSoon: If too many wrong PINs came from there.
            WrongPin: If it is not.
        """
        account = self.get(person)
        if account is None or not account.active:
            pins.fits("", pin)
            raise WrongPin(person)
        place = self._count_try(person, device, now)
        if not pins.fits(account.pin_hash, pin):
            raise WrongPin(person)
        with sqlite.writing(self.db):
            for here in {place, device} - {""}:
                Tries.replace(person=person, place=here, wrong=0, last_at=moment(now)).execute(self.db)

    def _sign_out_everywhere(self, person: str) -> None:
        Session.delete().where(Session.person == person).execute(self.db)
        SignedIn.update(now=False).where(SignedIn.person == person).execute(self.db)

    def used_on(self, person: str, device: str, now: datetime) -> None:
        """This person has signed in on this device: from now on only tries made there slow him down there."""
        Tries.replace(person=person, place=device, wrong=0, last_at=moment(now)).execute(self.db)

    def _count_try(self, person: str, device: str, now: datetime) -> str:
        """One more try from there. Where the person has signed in before, nobody else's tries slow him down.

        A clock that ran ahead and was put right shuts nobody out until that day: one try, then it counts from now.
        """
        with sqlite.writing(self.db):
            rows = {row.place: row for row in Tries.select().where(Tries.person == person).execute(self.db)}
            place = device if device in rows else ENROLLED if device else STRANGER
            wrong = rows[place].wrong if place in rows else 0
            last = datetime.fromisoformat(rows[place].last_at) if wrong else now
            ends = now if last > now else last + timedelta(seconds=pins.wait_s(wrong))
            if ends > now:
                raise TooSoon(max(1, round((ends - now).total_seconds())))
            Tries.replace(person=person, place=place, wrong=wrong + 1, last_at=moment(now)).execute(self.db)

        return place


def is_last_administrator(accounts: list[Account], person: str) -> bool:
    """Whether nobody else in use is an administrator."""
    return {one.person for one in accounts if one.role == "administrator" and one.active} == {person}


def known_role(role: str) -> str:
    if role not in ROLES:
        raise ValueError(f"a role is one of: {', '.join(ROLES)}")

    return role


def tidy(name: str) -> str:
    """A name with single blanks and letters in one form."""
    return " ".join(unicodedata.normalize("NFC", name).split())


def name_key(name: str) -> str:
    """What two ways of writing one name have in common.

    Example:
        >>> name_key("  Ines   OKORO ")
        'ines okoro'
    """
    return tidy(name).casefold()


def _of(person: str | None) -> p.Expression:
    return OneTimeCode.person.is_null() if person is None else OneTimeCode.person == person


def _code_digest(code: str) -> str:
    plain = "".join(sign for sign in code.upper() if sign.isalnum())
    return hashlib.sha256(plain.encode()).hexdigest()
