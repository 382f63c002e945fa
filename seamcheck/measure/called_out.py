"""Which of the files' call-outs hold for the whole rib top, or for all that it meets: flatness from the model."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

import numpy as np

from seamcheck.assembly.parts import Assembly, CallOut
from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.measure.table import Survey

_WHOLE = 0.99  # share of the stations that the called-out faces must carry
_MOST = 5.0  # mm: no seam is out of flat by more; a larger value has a wrong unit
_ON = {"flatness_rib": "rib-top", "flatness_cover": "opposite"}

Seams = Sequence[tuple[Joint, Survey]]


def called_out(assembly: Assembly, seams: Seams, given: Mapping[str, float]) -> tuple[dict[str, float], list[str]]:
    """Entries for the tolerance table from the model, and sentences on every call-out.

    Parameters
    ----------
    given : tolerances of the settings; these win

    Returns
    -------
    mm by 'flatness_rib' and 'flatness_cover', of several call-outs the largest; a profile of a surface holds its form
    within the same zone (ISO 1101), and counts where no flatness is called out
    """
    found: dict[str, dict[str, CallOut]] = {}
    said: list[str] = []
    for callout in assembly.callouts:
        file, kind, value = repr(assembly.files[callout.file].name), callout.kind, callout.value
        if value > _MOST:
            said.append(say("callout.absurd", file=file, kind=kind, value=value))
            continue
        shares = list(_shares(callout, seams))
        for key, share in shares:
            if share >= _WHOLE:
                known = found.setdefault(key, {}).get(kind)
                if known is None or known.value < value:
                    found[key][kind] = callout
            else:
                said.append(say("callout.partly", file=file, kind=kind, value=value, share=100 * share, what=_ON[key]))
        if not shares:
            said.append(say("callout.elsewhere", file=file, kind=kind, value=value))
    taken: dict[str, float] = {}
    for key, kinds in found.items():
        callout = kinds.get("flatness") or kinds["profile"]
        told: dict[str, str | float] = {
            "file": repr(assembly.files[callout.file].name), "kind": callout.kind, "value": callout.value,
            "what": _ON[key],
        }  # fmt: skip
        if key in given:
            said.append(say("callout.overruled", **told, name=key, given=given[key]))
        else:
            taken[key] = callout.value
            said.append(say("callout.taken", **told, name=key))
    return taken, list(dict.fromkeys(said))


def _shares(callout: CallOut, seams: Seams) -> Iterator[tuple[str, float]]:
    """Entry of the tolerance table, and the share of a seam's stations that stands on the called-out faces."""
    for joint, survey in seams:
        for key, part, column in (
            ("flatness_rib", joint.rib_part, "rib_face"),
            ("flatness_cover", joint.counter_part, "cover_face"),
        ):
            if joint.parts[part].file != callout.file:
                continue
            faces = np.concatenate([getattr(path, column) for path in survey.paths])
            entities = joint.parts[part].entities
            known = faces[(faces >= 0) & (faces < len(entities))]
            if not len(known):
                continue
            on = [entities[face] is not None and entities[face].number in callout.faces for face in known.tolist()]
            if any(on):
                yield key, float(np.mean(on))
