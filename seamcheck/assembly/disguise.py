"""Recognise files that carry the ending of a STEP file and hold something else."""

from __future__ import annotations

import re

_UNPACK = "Unpack it and name the STEP file inside."
_EXPORT = "Export the model as STEP (AP203, AP214 or AP242)."
_MESH = "It holds triangles, not exact faces. " + _EXPORT

_BEGINNINGS: tuple[tuple[bytes, str], ...] = (
    (b"\x1f\x8b", f"a gzip archive. {_UNPACK}"),
    (b"BZh", f"a bzip2 archive. {_UNPACK}"),
    (b"\xfd7zXZ\0", f"an xz archive. {_UNPACK}"),
    (b"7z\xbc\xaf\x27\x1c", f"a 7z archive. {_UNPACK}"),
    (b"\x28\xb5\x2f\xfd", f"a zstd archive. {_UNPACK}"),
    (b"Rar!", f"a RAR archive. {_UNPACK}"),
    (b"PK\x03\x04", f"a zip archive (or a CAD format packed as one). {_UNPACK}"),
    (b"PK\x05\x06", f"an empty zip archive. {_EXPORT}"),
    (
        b"version https://git-lfs",
        "a Git LFS pointer, not the model itself. Run `git lfs pull` and try again.",
    ),
    (b"\xff\xfe", "text in UTF-16. Save it as plain text (ASCII or UTF-8), or export the model again."),
    (b"\xfe\xff", "text in UTF-16. Save it as plain text (ASCII or UTF-8), or export the model again."),
    (b"%PDF", f"a PDF document. {_EXPORT}"),
    (b"\x89PNG", f"a PNG picture. {_EXPORT}"),
    (b"\xff\xd8\xff", f"a JPEG picture. {_EXPORT}"),
    (b"\xd0\xcf\x11\xe0", f"a CAD program's own file format. {_EXPORT}"),
    (b"AC10", f"a DWG drawing. {_EXPORT}"),
    (b"glTF", f"a glTF model. {_MESH}"),
    (b"**ABCDEFGHIJKLMNOPQRSTUVWXYZ", f"a CAD kernel's own text format. {_EXPORT}"),
    (b"DBRep_DrawableShape", f"a CAD kernel's own text format (BREP). {_EXPORT}"),
    (b"CASCADE Topology", f"a CAD kernel's own text format (BREP). {_EXPORT}"),
)

_IGES_START = re.compile(rb"[^\r\n]{72}S {0,6}0*1\s*[\r\n]")  # column 73 of the first line (IGES 5.3, 2.2.4)
_DXF_START = re.compile(rb"\s*(?:999\s[^\r\n]*[\r\n]+\s*)?0\s*[\r\n]+SECTION\b")
_OBJ_START = re.compile(
    rb"(?:#[^\r\n]*[\r\n]+|mtllib [^\r\n]*[\r\n]+|o [^\r\n]*[\r\n]+)*v +-?[\d.]+ +-?[\d.]+ +-?[\d.]+"
)


def what_it_is(raw: bytes) -> str | None:
    """What a file is that is no STEP text, as the rest of the sentence 'NAME is ...', or None."""
    for beginning, meaning in _BEGINNINGS:
        if raw.startswith(beginning):
            return meaning
    head = raw[:4096]
    if b"ISO-10303-21" in head:
        return None
    if b"I\0S\0O\0-" in head:
        return "text in UTF-16. Save it as plain text (ASCII or UTF-8), or export the model again."
    text = head.lstrip(b"\xef\xbb\xbf \t\r\n").lower()
    if text.startswith((b"<!doctype html", b"<html")):
        return "a web page (HTML), perhaps the page that offers the download. Download the file itself."
    if text.startswith(b"<?xml") or text.startswith(b"<"):
        return f"an XML file. {_EXPORT}"
    if text.startswith((b"{", b"[")):
        return f"a JSON file. {_EXPORT}"
    if text.startswith(b"solid ") or _is_binary_stl(raw):
        return f"an STL mesh. {_MESH}"
    if text.startswith(b"ply"):
        return f"a PLY mesh. {_MESH}"
    if _IGES_START.match(head):
        return f"an IGES file. {_EXPORT}"
    if _DXF_START.match(head):
        return f"a DXF drawing. {_EXPORT}"
    if _OBJ_START.match(head):
        return f"an OBJ mesh. {_MESH}"
    if b"\0" in head:
        return f"a binary file, not STEP text. {_EXPORT}"
    return None


def _is_binary_stl(raw: bytes) -> bool:
    """80 bytes of header, a count, then 50 bytes for each triangle."""
    return len(raw) >= 84 and len(raw) == 84 + 50 * int.from_bytes(raw[80:84], "little")
