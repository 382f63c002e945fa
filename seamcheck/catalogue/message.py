"""A sentence with its key and with what goes into it, so that another language or unit can be made from it."""

from __future__ import annotations

from collections.abc import Mapping

import msgspec
from msgspec import UNSET, UnsetType

from seamcheck.catalogue.field_types import Count, Real
from seamcheck.catalogue.units import shown


class Amount(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A number in a sentence: its value, its unit, and to how many decimals people read it."""

    value: Real
    unit: str
    decimals: Count

    def __str__(self) -> str:
        return shown(self.value, self.unit, self.decimals)


Args = Mapping[str, Amount | str]
"""What goes into a sentence: numbers with their units, and words such as names of parts."""


class Message(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """One sentence: its key, what goes into it, and its English text.

    ``parts`` are sentences within it: name of the place -> the sentences that stand there, one after the other.
    """

    key: str
    args: dict[str, Amount | str]
    text: str
    parts: dict[str, list[Message]] | UnsetType = UNSET


def values_of(message: Message) -> dict[str, Amount | str | list[Sentence]]:
    """What was filled into a message, as another one of the same places takes it."""
    parts = {} if message.parts is UNSET else message.parts
    return {**message.args, **{name: [Sentence.of(one) for one in said] for name, said in parts.items()}}


class Sentence(str):
    """English text that knows its key and what was filled in (catalogue/say.py); a plain str to all who only read it.

    Attributes
    ----------
    message : the same as a record of the document
    """

    message: Message

    @classmethod
    def of(cls, message: Message) -> Sentence:
        """The text of a message, which remembers it."""
        sentence = cls(message.text)
        sentence.message = message
        return sentence

    def __reduce__(self) -> tuple[object, ...]:
        return Sentence, (str(self),), {"message": self.message}  # no call: a parent takes no other from a child


NOTE = "note"
"""Key of a sentence that has none of its own, such as one of an earlier version's document."""


def message_of(text: str) -> Message:
    """The record of a sentence; of plain text one that has no key of its own."""
    return text.message if isinstance(text, Sentence) else Message(NOTE, {}, str(text))
