"""Every number by which a joint is recognised, once, with the cases that decided it.

Cases are drawn models of the tests (``builder.hard`` and ``builder.joints``). Shares are 0 to 1, lengths mm.
"""

from __future__ import annotations

# which faces face each other ------------------------------------------------------------------------------------

LARGEST_GAP = 1.0
"""Parts drawn further apart than this do not face each other: floating-over-a-wall (0.5), side-by-side (0.6)."""

LARGEST_OVERLAP = 1.2
"""A rib drawn deeper than this into the other part does not count: rib-welded overlaps by the collapse (0.4)."""

NEAR = 3.5
"""Faces further from the other part are ignored; trap floors are not: snap-plug, deep-groove (2.2)."""

LEAST_SHARE = 0.4
"""Of a face, that must be opposed: board-in-a-holder, lid-on-a-broad-plate (0.34)."""

BAND_SHARE = 0.5
"""Of a whole band, that must be opposed: land-with-tabs."""

# which of them are bands -----------------------------------------------------------------------------------------

NARROWEST, WIDEST = 0.1, 12.0
"""Mean width of a band: micro-rib (0.3); wall-80, chamfered-broad-top (6.4), block-under-a-plate (11)."""

SAME_LEVEL = 0.1
"""Bands whose gaps differ by less are one seam: the floor beside micro-rib lies 0.15 lower, lowered-stretch
0.5."""

LONGEST_DROP = 0.9
"""A stretch of rib may lie lower than the rest by up to this: lowered-stretch (0.5)."""

FALLS = 0.75
"""Of a rib's border, beside which the surface falls away: ledges (0.5) are none, ribs (rib-on-base) have 0.9 or
more."""

# what lies beside a band -----------------------------------------------------------------------------------------

IS_BESIDE = 0.2
"""Of a band's border, that shows a trap, a rise or a filled step for it to decide the kind: one side of an open
seam with junctions is about 0.4, jitter at corners below 0.05: ledge-10, wall-80."""

WIDEST_WALL = 2.5
"""A plain wall up to here melts like a rib, wider is a flat lap (DOMAIN.md 9b of the trade's facts): wall-25. So is a
wider band beside one open floor: rim-in-the-lid (3.0)."""

WIDEST_RIB = 4.0
"""A ridge that is wider melts nowhere as a whole, it is a flat lap: strips-below-a-display (5), broad-rib (3)."""

OVERLAPS = 2.0
"""Band widths to which a wall of the other part reaches down right beside the band for two walls to overlap:
overlapping-shells (3.6); a skirt that only centres is lower (tight-skirt: 1.5)."""

SHOULDER, BOTH_SIDES = 0.4, 0.6
"""Of a rib's border, beside which a trap's floor lies, at least (rib-flush-inside: 0.5; tray-with-tabs: 0.3); and from
where on it lies on both sides. A band higher than wide beside one open floor is a wall (wall-above-a-shelf: 1.9)."""

FLATTEST_RIB, FLATTEST_STEP, HIGH_ENOUGH = 0.3, 0.5, 0.4
"""Height of a rib over its width, with floors on both sides or on one, or in mm, at least: butting-shells (a decorative
step, 0.14) and wall-with-a-shadow-step (0.33, on one side) are none, low-rib (0.3) and broad-low-rib (0.25, but
0.45 mm) are."""

# where light comes in --------------------------------------------------------------------------------------------

FREE_ENOUGH = 0.5
"""Of the seam, over which the beam path must be free: rib-on-base (1.0), half-covered."""

THIN, OPAQUE = 4.0, 8.0
"""mm of plastic that light passes well, and that it hardly passes: stepped-tight (3); shaded-by-a-bezel (10 mm from
below)."""

CLEARLY_THINNER = 1.5
"""Times thicker must the other part be for the thinner one to be the cover: rib-on-a-plate-under-a-hood (1.05)."""

ON_NORMAL = 5.0
"""Degrees: a plane seam whose normal lies so near the pull has its normal as the light: draft-inside (0.9);
slanted-10 keeps its pull."""

PULL_SHOWN = 2.0
"""Times less must the flanks lean to the pull than to the normal of a plane seam: else they show none, as where they
lean by themselves: leaning-wall."""

# what speaks for and against a reading ---------------------------------------------------------------------------

CARRIES = 0.7
"""Confidence from which a reading is a joint; below it is named with what speaks against it: wall-20 (1.0)."""

# weights: (value that speaks against, value that supports, least weight), linear between; or values and weights

LAP_SHOWN = (0.2, 0.4, 0.7)
"""Of a border, that shows the mark of a ledge, a tongue or a step: bezel-on-a-ledge (0.5), stepped-tight (0.5)."""

AROUND = (0.05, 0.45, 0.45)
"""Of what lies within the smaller part's outline seen along the light, that a closed band encloses:
right joints 0.43 and more, knurled-screw less."""

OPEN_RIB = (0.4, 0.8, 0.5)
"""Of an open rib's border, beside which a floor lies lower: rib-along-a-bar (1.0), board-on-a-ridge (0.64)."""

HELD = 0.65
"""The base lies wholly inside the box of the cover: a board in its holder; lens-from-inside is the other way round."""

NAMED_STRIP = 0.75
"""An open strip without a rib along a side: a seam only where the user names the parts, and nothing else speaks against
it: side gaps of plugs (plug-010, named) stay below `CARRIES`."""

WAY_FREE = (0.5, 0.95, 0.6)
"""Of the seam, with a free way for the light: tongue-on-the-base, screws-on-a-flat-lid (0.9)."""

THROUGH_LAP = ((2.5, 4.0, 5.0, 8.0, 12.0), (1.0, 0.85, 0.5, 0.4, 0.3))
"""mm of plastic that the light passes, and the weight: half-shells (12), bearing-in-a-bore (7)."""

LAP_APART = ((0.05, 0.15, 0.2, 0.3), (1.0, 0.85, 0.6, 0.2))
"""mm between the faces, and the weight: floating-over-a-wall (0.5), stepped-outer-only (0)."""

OPPOSED = (0.5, 0.9, 0.5)
"""Of the band, over which the other part lies: half-covered (0.5), frame-as-a-lid."""

TALL = (-2.5, -1.2, 0.6)
"""Minus the cover's height along the light over its shorter side: drawer-in-a-sleeve (2.6)."""

BRIDGED = 0.18
"""Of the seam's length, that an interruption may take for the seam still to enclose something: as much as one side that
is open for a plug: plate-over-an-opening; base-half-as-long ends on a whole side."""

ALONG = 0.5
"""Of the smaller part's length, over which an open rib must run: rib-along-a-bar (1.0)."""

ON_EACH_OTHER = 0.15
"""mm between faces without a rib that still lie on each other: floating-over-a-wall (0.5) does not,
axle-in-a-housing (0.1) does."""

MARGIN = (-1.0, -0.5, 0.5)
"""Minus what the next way to read the same parts is worth over this one: from 0.8 on nothing else may speak against it
for it to carry: rib-on-a-plate-under-a-hood, lens-from-inside."""

VOID = 0.1
"""Of what a wall or lap encloses, that must be empty: a screw's shank fills it (knurled-screw), not wall-80."""

THROUGH_HOLE = (-0.16, -0.05, 0.45)
"""Minus what of the enclosed area is open through both parts: ring-on-a-tube closes nothing, bezel-on-a-ledge
has the base's floor below its window."""

SMALL = 0.25
"""Of the largest part's diagonal: a wall or lap of a smaller part is that of a nut, washer or screw:
nuts-in-pockets."""

OF_ITS_OWN, RING_HEIGHT = 0.85, 3.0
"""Volume of a part over that of a prism of its outline and height, from which it is one; and the height in widths up to
which such a ring is a rib or a gasket drawn by itself (gasket-between: 0.75), no tube (tube-with-two-caps: 13)."""

INLAID = (-0.4, -0.2, 0.4)
"""Minus the area over which the two parts also lie on each other the other way round, over the band's: an inlay that
the other part holds from both sides (inlaid-ring: 0.48) is no cover; right joints have 0.01 at most."""

THROUGH = 0.02
"""Of the smaller part's volume, that parts share which are not assembled: printed-across-the-walls (0.16), and
rim-in-the-lid, of which else the depth of two faces would be told; snaps and press fits share less."""

THROUGH_A_LITTLE = 5e-4
"""The same where nothing else tells why the parts carry no seam: plate-across-the-walls (0.01)."""

TOUCHING = 0.02
"""mm: the modelled state is 'touching' up to this gap or overlap: rib-small-gap (0.05) is none."""
