"""The parts, the seam and the findings as one binary glTF file, for viewers and documents."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.document.view import Mesh, unpack_view
from seamcheck.errors import MissingLibrary, UsageError
from seamcheck.report import bands, facts, plan
from seamcheck.report.facts import Document

_RGBA = {
    "cover": (0.44, 0.66, 0.74, 0.35),
    "base": (0.79, 0.72, 0.58, 1.0),
    "other": (0.72, 0.74, 0.72, 1.0),
    bands.UNKNOWN: (0.45, 0.48, 0.50, 1.0),
    bands.WITHIN: (0.16, 0.44, 0.37, 1.0),
    bands.NEAR: (0.67, 0.50, 0.10, 1.0),
    bands.BROKEN: (0.69, 0.06, 0.25, 1.0),
    bands.WAIVED: (0.42, 0.34, 0.63, 1.0),
    bands.LOOK: (0.54, 0.37, 0.0, 1.0),
    bands.NOTED: (0.16, 0.44, 0.37, 1.0),
}
"""Colour of a role or a state, red green blue and opacity 0..1."""

# glTF counts in metres with y upward; the model in millimetres with z upward.
_TO_GLTF = np.array([[1e-3, 0, 0, 0], [0, 0, 1e-3, 0], [0, -1e-3, 0, 0], [0, 0, 0, 1]])


def render_glb(document: Document) -> bytes:
    """The file's bytes. Without the document's part "view" it holds the seam and the findings alone.

    Raises
    ------
    MissingLibrary
        Without trimesh.
    """
    try:
        import trimesh
    except ImportError:
        raise MissingLibrary("A glTF model", "glb") from None
    scene = trimesh.Scene(base_frame="world")
    scene.graph.update(frame_from="world", frame_to="model", matrix=_TO_GLTF)
    _, meshes = unpack_view(document.get("view"))
    names = facts.part_names(document)
    roles = {part["id"]: part.get("role") or "other" for part in document["model"].get("parts") or ()}
    taken: set[str] = set()

    def add(mesh: Any, name: str) -> None:
        unique = name
        for k in range(2, 10_000):
            if unique not in taken:
                break
            unique = f"{name} ({k})"
        taken.add(unique)
        scene.add_geometry(mesh, node_name=unique, geom_name=unique, parent_node_name="model")

    for part in meshes:
        role = roles.get(part.part, "other")
        add(_body(trimesh, part, _RGBA.get(role, _RGBA["other"])), names.get(part.part, part.part))
    for joint, contour in facts.paths(document):
        add(_seam(trimesh, document, joint, contour), f"seam {joint['id']} {contour['id']}")
    for numbered in facts.numbered_findings(document):
        marker = _marker(trimesh, document, numbered)
        if marker is not None:
            add(marker, f"finding {numbered.number} {numbered.finding['rule']}")
    if not scene.geometry:
        raise UsageError("There is nothing to write as a 3-D model: the model was not reviewed.")
    scene.metadata.update(
        seamcheck=document["seamcheck"], verdict=document["verdict"], caution=SHORT_CAUTION, unit="metre"
    )
    return bytes(scene.export(file_type="glb"))


def _material(trimesh: Any, colour: tuple[float, float, float, float]) -> Any:
    clear = colour[3] < 1.0
    return trimesh.visual.material.PBRMaterial(
        baseColorFactor=list(colour),
        metallicFactor=0.0,
        roughnessFactor=0.8,
        alphaMode="BLEND" if clear else "OPAQUE",
        doubleSided=clear,
    )


def _body(trimesh: Any, part: Mesh, colour: tuple[float, float, float, float]) -> Any:
    mesh = trimesh.Trimesh(part.positions.astype(float), part.triangles, process=False)
    mesh.visual = trimesh.visual.TextureVisuals(material=_material(trimesh, colour))
    return mesh


def _seam(trimesh: Any, document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any]) -> Any:
    """A tube along the mid-line, coloured by the worst state of every station."""
    points, u = facts.points_of(contour), np.asarray(contour["stations"]["u"], dtype=float).reshape(-1, 3)
    v = plan.plan_frame(joint["beam"]).toward
    median = (contour["summary"].get("rib_width") or {}).get("median") or 1.5
    n, ring = len(points), 8
    angle = np.arange(ring) * 2 * np.pi / ring
    offset = np.cos(angle)[None, :, None] * u[:, None, :] + np.sin(angle)[None, :, None] * v
    vertices = (points[:, None, :] + 0.3 * median * offset).reshape(-1, 3)
    last = n if contour["closed"] else n - 1
    i, k = (grid.ravel() for grid in np.meshgrid(np.arange(last), np.arange(ring), indexing="ij"))
    j, m = (i + 1) % n, (k + 1) % ring
    a, b, c, d = i * ring + k, j * ring + k, j * ring + m, i * ring + m
    triangles = np.vstack([np.column_stack([a, b, c]), np.column_stack([a, c, d])])
    states = [bands.track(document, joint, contour, band) for band in bands.bands(document, joint)]
    state = bands.worst_state(states, n)
    colours = np.array([[round(255 * c) for c in _RGBA[int(s)]] for s in np.repeat(state, ring)], dtype=np.uint8)
    return trimesh.Trimesh(vertices, triangles, vertex_colors=colours.reshape(-1, 4), process=False)


def _marker(trimesh: Any, document: Document, numbered: facts.Numbered) -> Any:
    """A thin plate in the section plane at the finding's place, beside the seam on both sides."""
    at = numbered.finding.get("at")
    joint = next((j for j in facts.joints(document) if j["id"] == numbered.finding.get("joint")), None)
    if at is None or joint is None:
        return None
    v = plan.plan_frame(joint["beam"]).toward
    u = plan.plan_frame(joint["beam"]).right
    contour = next((c for c in joint["contours"] if c["id"] == numbered.contour), None)
    if contour is not None and numbered.station is not None:
        u = np.asarray(contour["stations"]["u"][numbered.station], dtype=float)
    frame = np.eye(4)
    frame[:3, 0], frame[:3, 1], frame[:3, 2], frame[:3, 3] = np.cross(v, u), u, v, at
    plate = trimesh.creation.box(extents=(0.15, 8.0, 8.0), transform=frame)
    state = bands.WAIVED if numbered.is_waived else bands.BROKEN
    if not numbered.is_waived and numbered.finding["severity"] != "must-fix":
        state = bands.LOOK if numbered.finding["severity"] == "attention" else bands.UNKNOWN
    colour = (*_RGBA[state][:3], 0.5)
    plate.visual = trimesh.visual.TextureVisuals(material=_material(trimesh, colour))
    return plate
