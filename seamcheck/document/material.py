"""Records of a joint's part "material": light, pair, melt, collapse window, heat, energy and ranges.

Present only where the settings have a ``[material]`` table; each of its sections only where its inputs are given.
"""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import UNSET, Meta, UnsetType

from seamcheck.catalogue.field_types import Count, Point, Real, Share
from seamcheck.catalogue.message import Message

Texts = list[str]
Numbers = list[Real | None]


class Section(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """One object with just these keys; all are needed but those that are UNSET."""


class KnownValue(Section, frozen=True, kw_only=True):
    """A number and how well it is known."""

    value: Real | None
    unit: str
    standing: Literal["measured", "given", "source", "common practice", "from memory", "assumption", "computed"]
    source: str | UnsetType = UNSET
    low: Real | UnsetType | None = UNSET
    high: Real | UnsetType | None = UNSET


class CompoundUsed(Section, frozen=True, kw_only=True):
    """A material as it was taken."""

    name: str
    polymer: str
    kind: str
    window_c: Annotated[Numbers, Meta(description="°C between which its melt can be welded")]
    window_standing: str
    glass_percent: Real | UnsetType | None = UNSET
    mineral_percent: Real | UnsetType | None = UNSET
    carbon_percent: Real | UnsetType | None = UNSET


class PlaqueUsed(Section, frozen=True, kw_only=True):
    """Total transmission of a plaque."""

    thickness_mm: Real | None
    percent: Real | None


class MaterialSettingsUsed(Section, frozen=True, kw_only=True):
    """What the settings say of the materials of this joint, defaults among them."""

    cover: CompoundUsed | None
    base: CompoundUsed | None
    plaques: list[PlaqueUsed]
    numbers: dict[str, KnownValue]


class PairRecord(Section, frozen=True, kw_only=True):
    """Whether the polymers of cover and base weld to each other."""

    cover: str
    base: str
    verdict: str
    standing: str
    message: str
    why: Texts
    solubility_difference: Real | None
    interaction: Real | None
    interface_width_nm: Real | None
    window_c: Numbers
    window_overlap_k: Real | None
    limits: Texts


class TransmissionLimit(Section, frozen=True, kw_only=True):
    """A bound of the transmission, and where it comes from."""

    percent: Real | None
    standing: str
    meaning: str


class TransmissionOfContour(Section, frozen=True, kw_only=True):
    """Transmission along one contour; at, s_mm, light_path_mm, low, high: of its lowest value."""

    contour: str
    least_percent: Real | None
    median_percent: Real | None
    most_percent: Real | None
    at: Point | None
    s_mm: Real | None
    light_path_mm: Real | None
    low_percent: Real | None
    high_percent: Real | None
    diffuse_form_percent: Real | None
    carried_on_mm: Annotated[Real | None, Meta(description="of seam under more plastic than the thickest plaque has")]
    farthest_of_plaque: Annotated[Real | None, Meta(description="longest light path over the thickest plaque")]
    beyond_plaques_mm: Annotated[Real | None, Meta(description="of seam with a light path beyond reach_mm")]


class DimStretch(Section, frozen=True, kw_only=True):
    """A stretch with less transmission than is comfortable, and how thin the cover would have to be."""

    contour: str
    what: str
    from_s_mm: Real | None
    to_s_mm: Real | None
    length_mm: Real | None
    at: Point | None
    percent: Real | None
    light_path_mm: Real | None
    thin_to_mm: Real | None
    thin_by_mm: Real | None


class TransmissionSection(Section, frozen=True, kw_only=True):
    """Transmission of the cover as its plaques give it."""

    form: str
    surface_term: Real | None
    extinction_per_mm: Real | None
    surface_term_standing: str
    index: KnownValue
    surface_limit_percent: Real | None
    limit_path_28_mm: Real | None
    limits: list[TransmissionLimit]
    reach_mm: Real | None
    reach_standing: str
    contours: list[TransmissionOfContour]
    places: list[DimStretch]
    notes: Texts


class Fill(Section, frozen=True, kw_only=True):
    """Fill of a flash trap along a contour, and where it is fullest."""

    most: Real | None
    median: Real | None
    at: Point | None
    s_mm: Real | None


class MeltOfContour(Section, frozen=True, kw_only=True):
    """Volumes of melt and traps along one contour."""

    contour: str
    length_mm: Real | None
    measured_length_mm: Real | None
    melt_volume_inner_mm3: Real | UnsetType | None = UNSET
    melt_volume_outer_mm3: Real | UnsetType | None = UNSET
    trap_volume_inner_mm3: Real | UnsetType | None = UNSET
    trap_volume_outer_mm3: Real | UnsetType | None = UNSET
    trap_fill: Fill | UnsetType = UNSET
    trap_fill_inner: Fill | UnsetType = UNSET
    trap_fill_outer: Fill | UnsetType = UNSET


class MeltSection(Section, frozen=True, kw_only=True):
    """Melt against the volume of the flash traps."""

    expansion: KnownValue
    trap_fill_limit: KnownValue
    contours: list[MeltOfContour]
    notes: Texts


class WindowBound(Section, frozen=True, kw_only=True):
    """One end of the collapse window and what sets it."""

    value_mm: Real | None
    cause: str
    at: Point | None
    contour: str | UnsetType = UNSET
    s_mm: Real | UnsetType | None = UNSET


class WindowPicture(Section, frozen=True, kw_only=True):
    """What the window's picture draws, one value for each collapse."""

    trap_fill_limit: Real | None
    collapse_mm: Numbers
    closed_share: Numbers
    trap_fill: Numbers
    trap_fill_inner: Numbers
    trap_fill_outer: Numbers
    travel_left_mm: Numbers


class WindowSection(Section, frozen=True, kw_only=True):
    """Smallest and largest collapse that the geometry can take."""

    place: Literal["inside", "too small", "too large", "empty window"]
    planned_mm: Real | None
    width_mm: Real | None
    lowest: WindowBound
    highest: WindowBound | None
    uppers: list[WindowBound]
    unknown: Texts
    inputs: dict[str, KnownValue]
    picture: WindowPicture | UnsetType = UNSET


class Computed(Section, frozen=True, kw_only=True):
    """One result, how it was computed, and how well its inputs are known."""

    key: str
    value: Real | None
    unit: str
    title: str
    how: str
    inputs: Texts
    standing: str
    low: Real | UnsetType | None = UNSET
    high: Real | UnsetType | None = UNSET


class Effect(Section, frozen=True, kw_only=True):
    """How a result moves with an input."""

    down_percent: Real | None
    up_percent: Real | None


class Sensitivity(Section, frozen=True, kw_only=True):
    """What a change of one input does to the results."""

    input: str
    change_percent: Real | None
    effects: dict[str, Effect]


class TightestTurn(Section, frozen=True, kw_only=True):
    """The tightest turn of the path and what it asks of the scanner."""

    least_corner_radius_mm: Real | None
    at: Point | None
    contour: str
    acceleration_mm_s2: Real | None
    how: str
    slowed_to_mm_s: Real | UnsetType | None = UNSET


class EnergySection(Section, frozen=True, kw_only=True):
    """Energy, time and force."""

    results: list[Computed]
    inputs: dict[str, KnownValue]
    sensitivity: list[Sensitivity]
    corners: TightestTurn | None
    notes: Texts


class HeatCourse(Section, frozen=True, kw_only=True):
    """Collapse over time at the place that melts last."""

    time_s: Numbers
    collapse_mm: Numbers


class HeatSection(Section, frozen=True, kw_only=True):
    """What the heat model says."""

    kind: Literal["repeated passes", "single pass"] | None
    says: Texts
    given: Annotated[str, Meta(description="inputs that times and temperatures hang on")] = msgspec.field(name="with")
    not_evaluated: Texts
    discretisation_percent: Real | UnsetType | None = UNSET
    slowest_at: Point | UnsetType | None = UNSET
    course: HeatCourse | UnsetType = UNSET


class Quantiles(Section, frozen=True, kw_only=True):
    """5, 50 and 95 % of the random combinations lie at or below these."""

    p05: Real | None
    p50: Real | None
    p95: Real | None


class UncertaintySection(Section, frozen=True, kw_only=True):
    """What random combinations of tolerances give."""

    combinations: Count
    seed: int
    varied: Texts
    ranges: dict[str, Quantiles]
    shares: dict[str, Share]


class Material(Section, frozen=True, kw_only=True):
    """Light, polymer pair, melt, collapse window, heat, energy and ranges of one joint."""

    settings: MaterialSettingsUsed
    collapse_mm: Real | None
    notes: Texts
    cautions: Texts
    pair: PairRecord | UnsetType = UNSET
    transmission: TransmissionSection | UnsetType = UNSET
    melt: MeltSection | UnsetType = UNSET
    window: WindowSection | UnsetType = UNSET
    heat: HeatSection | UnsetType = UNSET
    energy: EnergySection | UnsetType = UNSET
    uncertainty: UncertaintySection | UnsetType = UNSET
    messages: Annotated[
        list[Message] | UnsetType, Meta(description="the sentences of these sections with their keys")
    ] = UNSET
