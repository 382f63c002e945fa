"""The reviewed model as STEP with mid-line, seam faces and finding markers as named, coloured bodies."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping, Sequence
from os import PathLike
from pathlib import Path
from typing import Any

import numpy as np

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.report import facts, plan
from seamcheck.report.facts import Document
from seamcheck.report.loosened import loosened
from seamcheck.sections.pieces import Piece, lines_and_arcs

_COLOUR = {
    "must-fix": (0.69, 0.06, 0.25, 1.0), "attention": (0.67, 0.45, 0.0, 1.0), "note": (0.45, 0.48, 0.5, 1.0),
    "waived": (0.42, 0.34, 0.63, 1.0), "line": (0.06, 0.33, 0.77, 1.0),
    "rib": (0.16, 0.44, 0.37, 1.0), "opposite": (0.42, 0.68, 0.62, 1.0),
}  # fmt: skip
_SEAM_FACES = {
    "rib": (("rib", "rib top"), ("opposite", "opposite the rib")),
    "flat": (("rib", "flat of the contact"), ("opposite", "opposite the contact")),
}
_FLAT = 1e-4
"""mm: a path whose stations lie within this of a plane normal to the beam is written as lines and arcs."""


class OtherModel(SeamcheckError):
    """The model beside a review document is not the one that was reviewed."""

    def __init__(self, file: str) -> None:
        super().__init__(file)
        self.file = file

    def __str__(self) -> str:
        return (
            f"{self.file!r} is not the file that was reviewed (its SHA-256 differs). Review it anew, or name "
            "the file that the review document was made from."
        )


def render_step(document: Document, models: Sequence[str | PathLike[str]], time_limit: float = 600.0) -> bytes:
    """The marked STEP file.

    Parameters
    ----------
    document : review document
    models : the files that were reviewed, in the same order; read again in a child process
    time_limit : seconds

    Raises
    ------
    OtherModel
        If a file is not the one that was reviewed.
    NotReviewed, StepNotWritten
        If the models can't be read, or the file can't be written.
    """
    from seamcheck.isolation import run_isolated, written_by_child

    paths = [Path(model) for model in models]
    _check_models(document, paths)
    with tempfile.TemporaryDirectory(prefix="seamcheck-") as folder:
        target = Path(folder, "marked.step")
        roles = {part["id"]: part["role"] for part in document["model"]["parts"]}
        marks = (mid_lines(document), plates(document), seam_faces(document) + finding_faces(document))
        run_isolated(
            "seamcheck.kernel.write_step:write_marked_step",
            (paths, *marks, roles, _notes(document), target),
            time_limit_s=time_limit,
            writable=[folder],
        )
        return written_by_child(target)


def mid_lines(document: Document) -> list[dict[str, Any]]:
    """Every path as lines and arcs, or from station to station where it does not lie in a plane."""
    result = []
    for joint, contour in facts.paths(document):
        points = facts.points_of(contour)
        if len(points) < 2:
            continue
        frame = plan.plan_frame(joint["beam"])
        levels = points @ frame.toward
        name = f"seam {joint['id']} {contour['id']}, mid-line"
        if float(np.ptp(levels)) <= _FLAT:
            pieces = lines_and_arcs(frame.flat(points), contour["closed"])
            lifted = [[_lift(p, frame, float(levels.mean())) for p in _through(piece)] for piece in pieces]
        else:
            ring = np.vstack([points, points[:1]]) if contour["closed"] else points
            lifted = [[ring[i].tolist(), ring[i + 1].tolist()] for i in range(len(ring) - 1)]
        result.append({"name": name, "colour": _COLOUR["line"], "pieces": lifted})
    return result


def _through(piece: Piece) -> list[tuple[float, float]]:
    """Start and end of a line; start, middle and end of an arc."""
    if piece.bulge == 0.0:
        return [piece.start, piece.end]
    start, end = np.array(piece.start), np.array(piece.end)
    chord = end - start
    # The bulge is the height of the arc over half its chord; counter-clockwise arcs lie right of the chord.
    middle = (start + end) / 2 + piece.bulge / 2 * np.array([chord[1], -chord[0]])
    return [piece.start, (float(middle[0]), float(middle[1])), piece.end]


def _lift(p: tuple[float, float], frame: plan.PlanFrame, level: float) -> list[float]:
    lifted = p[0] * frame.right + p[1] * frame.up + level * frame.toward
    return [float(c) for c in lifted]


def plates(document: Document) -> list[dict[str, Any]]:
    """Every finding with a place, as a plate in its section plane."""
    result = []
    for numbered in facts.numbered_findings(document):
        finding = numbered.finding
        joint = next((j for j in facts.joints(document) if j["id"] == finding.get("joint")), None)
        if finding.get("at") is None or joint is None:
            continue
        frame = plan.plan_frame(joint["beam"])
        contour = next((c for c in joint["contours"] if c["id"] == numbered.contour), None)
        u = frame.right.tolist()
        if contour is not None and numbered.station is not None:
            u = contour["stations"]["u"][numbered.station]
        waived = ", waived" if numbered.is_waived else ""
        result.append(
            {
                "name": f"finding {numbered.number}, {facts.finding_title(finding)}, {finding['severity']}{waived}",
                "colour": _colour(numbered),
                "at": list(finding["at"]),
                "u": list(u),
                "v": frame.toward.tolist(),
            }
        )
    return result


def seam_faces(document: Document) -> list[dict[str, Any]]:
    """The rib's top and what faces it on the other part, one body each for every joint."""
    return [
        {
            "name": f"seam {joint['id']}, {what}",
            "colour": _COLOUR[key],
            "part": faces[0]["part"],
            "faces": [face["face"] for face in faces],
        }
        for joint in facts.joints(document)
        for key, what in _SEAM_FACES["flat" if joint["rib_on"] == "none" else "rib"]
        if (faces := (joint.get("seam_faces") or {}).get(key))
    ]


def finding_faces(document: Document) -> list[dict[str, Any]]:
    """Every face that a finding names, once, in the colour of the gravest of its findings."""
    named: dict[tuple[str, int], list[facts.Numbered]] = {}
    for numbered in facts.numbered_findings(document):
        for face in numbered.finding.get("faces") or ():
            if face.get("face", -1) >= 0 and numbered.finding["severity"] != "note":
                named.setdefault((face["part"], face["face"]), []).append(numbered)
    return [
        {
            "name": f"face of finding {', '.join(str(n.number) for n in findings)}",
            "colour": _colour(findings[0]),
            "part": part,
            "faces": [face],
        }
        for (part, face), findings in named.items()
    ]


def _colour(numbered: facts.Numbered) -> tuple[float, float, float, float]:
    kind = "waived" if numbered.is_waived else str(numbered.finding["severity"])
    return _COLOUR.get(kind, _COLOUR["note"])


def _check_models(document: Document, paths: Sequence[Path]) -> None:
    from seamcheck.assembly.source import file_facts

    model: Mapping[str, Any] = document["model"]
    known = [entry["sha256"] for entry in model.get("files") or [model]]
    if len(paths) != len(known):
        raise UsageError(f"The review is of {len(known)} files; {len(paths)} were named. Name the same ones.")
    for k, path in enumerate(paths):
        if file_facts(path).sha256 != known[k]:
            raise OtherModel(path.name)


def _notes(document: Document) -> list[str]:
    return [
        f"Seam review of {document['model']['file']}: {facts.headline(document)}. {loosened(document)} {SHORT_CAUTION}"
    ]
