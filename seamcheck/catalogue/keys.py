"""Types of fields that hold the key of a rule or of a quantity."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES

RuleKey = Annotated[str, Meta(extra_json_schema={"enum": list(RULES)})]
QuantityKey = Annotated[str, Meta(extra_json_schema={"enum": list(QUANTITIES)})]
