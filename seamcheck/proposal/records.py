"""The record of a proposal: what was found, what is proposed, why it does not fit, how the review of it ended."""

from __future__ import annotations

from typing import Any

import msgspec


class Dimension(msgspec.Struct, frozen=True, kw_only=True):
    """One dimension of the proposed section, to be copied into a drawing."""

    key: str
    title: str
    value: float
    unit: str
    tolerance: float | None = None


class Bound(msgspec.Struct, frozen=True, kw_only=True):
    """One bound that the section holds: of a rule, of the room ('room') or of moulding ('mouldable')."""

    rule: str
    quantity: str
    value: float
    bound: float
    share: float


class Short(msgspec.Struct, frozen=True, kw_only=True):
    """A stretch of the seam where room is missing."""

    contour: str
    side: str
    from_s: float
    to_s: float
    at: tuple[float, float, float]
    room: float
    need: float
    missing: float


class JointProposal(msgspec.Struct, frozen=True, kw_only=True):
    """What is proposed for one joint.

    ``state`` is 'cut' (the joint was cut into the part), 'no-room' (it does not fit), 'not-flat' (there is no contact
    to cut a rib from) or 'has-rib'. ``carrier`` is the name of the part that carries the rib.
    """

    joint: str
    cover: str
    base: str
    carrier: str
    state: str
    message: str
    dimensions: tuple[Dimension, ...] = ()
    bounds: tuple[Bound, ...] = ()
    short: tuple[Short, ...] = ()
    instead: tuple[str, ...] = ()
    corner_radius: float | None = None
    seam_length: float | None = None
    room_inner: float | None = None
    room_outer: float | None = None
    depth: float | None = None
    removed_volume: float | None = None
    shortest_edge: float | None = None


class ProposalDocument(msgspec.Struct, frozen=True, kw_only=True):
    """Everything that a report of a proposal shows.

    ``outcome`` is 'proposed' (the proposed model was reviewed and holds), 'not-held' (it was cut, but its review finds
    what keeps it from being a proposal: see ``kept_from``), 'no-proposal' or 'not-reviewed'.
    """

    document: str
    schema_version: int
    seamcheck: str
    model: tuple[str, ...]
    outcome: str
    message: str
    joints: tuple[JointProposal, ...]
    kept_from: tuple[str, ...]
    named: tuple[str, ...]
    review: dict[str, Any] | None
    comparison: dict[str, Any] | None
    cautions: tuple[str, ...]
