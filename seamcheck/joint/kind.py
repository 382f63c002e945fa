"""Which kind of joint a band is, from what lies beside it."""

from __future__ import annotations

import numpy as np

from seamcheck.catalogue.kinds import FLAT_LAP, LEDGE, PLAIN_WALL, STEPPED_LAP, TONGUE_GROOVE, WELD_RIB
from seamcheck.joint.constants import (
    BOTH_SIDES,
    FALLS,
    FLATTEST_RIB,
    FLATTEST_STEP,
    FREE_ENOUGH,
    HIGH_ENOUGH,
    IS_BESIDE,
    SHOULDER,
    WIDEST_RIB,
    WIDEST_WALL,
)
from seamcheck.joint.profile import FILLED, GROOVE, LEVEL, RISE, TRAP, BorderProfile


def kind_of(border: BorderProfile, falls: float, width: float) -> str:
    """The kind of joint.

    Parameters
    ----------
    beside : what lies beside the band
    falls : 0 to 1 of its border beside which the surface falls away or ends
    width : mm, of the band

    Returns
    -------
    a key of KINDS
    """
    share = border.share
    one_side = share[TRAP] <= BOTH_SIDES and border.walled < IS_BESIDE
    flattest = FLATTEST_STEP if one_side else FLATTEST_RIB
    high = np.isfinite(border.height) and border.height >= min(flattest * width, HIGH_ENOUGH)
    is_wall = one_side and (border.height > width or width > WIDEST_WALL)  # and its part's own floor beside it
    if share[TRAP] >= SHOULDER and falls >= FALLS and high and not is_wall and width <= WIDEST_RIB:
        return WELD_RIB
    behind_a_skirt = border.skirted if border.height > width else 0.0
    filled = share[FILLED] + behind_a_skirt
    if filled + share[GROOVE] >= IS_BESIDE:
        return TONGUE_GROOVE if filled >= FALLS or share[GROOVE] >= filled else STEPPED_LAP
    if share[RISE] >= IS_BESIDE:
        return LEDGE
    if border.backed >= FREE_ENOUGH:
        return STEPPED_LAP  # two walls overlap
    in_a_channel = min(border.wrapped, border.channel) >= FREE_ENOUGH  # a channel of the cover takes the wall's top in
    if border.wrapped >= IS_BESIDE and not in_a_channel:
        return STEPPED_LAP
    return PLAIN_WALL if width <= WIDEST_WALL and share[LEVEL] < IS_BESIDE else FLAT_LAP
