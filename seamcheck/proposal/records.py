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


class Change(msgspec.Struct, frozen=True, kw_only=True):
    """What is moved on a part that has a rib already; ``findings`` are the ids of those that asked for it."""

    part: str
    what: str
    by: float | None
    findings: tuple[str, ...]


class Left(msgspec.Struct, frozen=True, kw_only=True):
    """A finding for which nothing was moved, and why."""

    finding: str
    rule: str
    why: str


class Remedy(msgspec.Struct, frozen=True, kw_only=True):
    """What the proposal does for one finding of the model as it was drawn.

    ``fits`` is 'yes' where the proposed model's review no longer has the finding; ``says`` what was moved, or why not.
    """

    finding: str
    rule: str
    fits: str
    says: str


class JointProposal(msgspec.Struct, frozen=True, kw_only=True):
    """What is proposed for one joint.

    ``state`` is 'cut' (the joint was cut into the part), 'mended' (there is a rib, and what broke a limit was moved),
    'sound' (there is a rib that holds its limits), 'not-mended' (there is one, and nothing could be moved), 'no-room'
    (it does not fit) or 'not-flat' (there is no contact to cut a rib from). ``carrier`` is the name of the part that
    carries the rib.
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
    changes: tuple[Change, ...] = ()
    left: tuple[Left, ...] = ()


class ProposalDocument(msgspec.Struct, frozen=True, kw_only=True):
    """Everything that a report of a proposal shows.

    ``outcome`` is 'proposed' (the proposed model was reviewed and holds), 'not-held' (it was cut, but its review finds
    what keeps it from being a proposal: see ``kept_from``), 'nothing-to-do' (every joint has a rib that holds its
    limits), 'no-proposal' or 'not-reviewed'.
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
    remedies: tuple[Remedy, ...]
    review: dict[str, Any] | None
    comparison: dict[str, Any] | None
    cautions: tuple[str, ...]
