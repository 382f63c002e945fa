"""Recognise files that carry the ending of a STEP file and hold something else."""

from __future__ import annotations

import re

_BEGINNINGS: tuple[tuple[bytes, str], ...] = (
    (b"\x1f\x8b", "gzip"), (b"BZh", "bzip2"), (b"\xfd7zXZ\0", "xz"), (b"7z\xbc\xaf\x27\x1c", "7z"),
    (b"\x28\xb5\x2f\xfd", "zstd"), (b"Rar!", "rar"), (b"PK\x03\x04", "zip"), (b"PK\x05\x06", "zip-empty"),
    (b"version https://git-lfs", "lfs"), (b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"), (b"%PDF", "pdf"),
    (b"\x89PNG", "png"), (b"\xff\xd8\xff", "jpeg"), (b"\xd0\xcf\x11\xe0", "ole"), (b"AC10", "dwg"), (b"glTF", "gltf"),
    (b"**ABCDEFGHIJKLMNOPQRSTUVWXYZ", "kernel"), (b"DBRep_DrawableShape", "brep"), (b"CASCADE Topology", "brep"),
)  # fmt: skip

_IGES_START = re.compile(rb"[^\r\n]{72}S {0,6}0*1\s*[\r\n]")  # column 73 of the first line (IGES 5.3, 2.2.4)
_DXF_START = re.compile(rb"\s*(?:999\s[^\r\n]*[\r\n]+\s*)?0\s*[\r\n]+SECTION\b")
_OBJ_START = re.compile(
    rb"(?:#[^\r\n]*[\r\n]+|mtllib [^\r\n]*[\r\n]+|o [^\r\n]*[\r\n]+)*v +-?[\d.]+ +-?[\d.]+ +-?[\d.]+"
)


def what_it_is(raw: bytes) -> str | None:
    """What a file is that is no STEP text, as the catalogue calls it: 'gzip' of ``not-step.gzip``; or None."""
    for beginning, meaning in _BEGINNINGS:
        if raw.startswith(beginning):
            return meaning
    head = raw[:4096]
    if b"ISO-10303-21" in head:
        return None
    if b"I\0S\0O\0-" in head:
        return "utf-16"
    text = head.lstrip(b"\xef\xbb\xbf \t\r\n").lower()
    if text.startswith((b"<!doctype html", b"<html")):
        return "html"
    if text.startswith(b"<?xml") or text.startswith(b"<"):
        return "xml"
    if text.startswith((b"{", b"[")):
        return "json"
    if text.startswith(b"solid ") or _is_binary_stl(raw):
        return "stl"
    if text.startswith(b"ply"):
        return "ply"
    if _IGES_START.match(head):
        return "iges"
    if _DXF_START.match(head):
        return "dxf"
    if _OBJ_START.match(head):
        return "obj"
    if b"\0" in head:
        return "binary"
    return None


def _is_binary_stl(raw: bytes) -> bool:
    """80 bytes of header, a count, then 50 bytes for each triangle."""
    return len(raw) >= 84 and len(raw) == 84 + 50 * int.from_bytes(raw[80:84], "little")
