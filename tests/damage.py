"""Ways to damage a STEP file, and ways to change its dress that a reader must not mind.

Every way takes the bytes of a sound file and a seeded ``random.Random`` and gives back other bytes; the same
seed gives the same bytes. ``DAMAGES`` spoil something, ``DRESSES`` change nothing that ISO 10303-21 gives a
meaning to. No CAD kernel here: it all is done on the text.
"""

from __future__ import annotations

import random
import re
import zlib
from collections.abc import Callable, Iterator
from typing import NamedTuple

Change = Callable[[bytes, random.Random], bytes]

DAMAGES: dict[str, Change] = {}
WAYS = DAMAGES
DRESSES: dict[str, Change] = {}

_RECORD = re.compile(rb"#(\d+)(\s*=\s*)((?:'(?:[^']|'')*'|[^';])*);", re.DOTALL)
_REFERENCE = re.compile(rb"#\d+")
_REAL = re.compile(rb"(?<=[(,])-?\d+\.\d*(?:E[+-]?\d+)?(?=[,)])")
_KEYWORD = re.compile(rb"\b[A-Z][A-Z0-9_]{4,}(?=\s*\()")


class Record(NamedTuple):
    """``#number = body;`` and where it stands in the file."""

    number: int
    body: bytes
    start: int
    end: int


class Variant(NamedTuple):
    """One damaged file."""

    way: str
    seed: int
    data: bytes


def variants(data: bytes, count: int, ways: dict[str, Change] = DAMAGES, first: int = 0) -> Iterator[Variant]:
    """``count`` variants, all ways in turn; the seed of a variant is its number."""
    names = sorted(ways)
    for seed in range(first, first + count):
        name = names[seed % len(names)]
        yield Variant(name, seed, ways[name](data, _random(name, seed)))


def _random(name: str, seed: int) -> random.Random:
    return random.Random(seed * 1_000_003 + zlib.crc32(name.encode()))


def records(data: bytes) -> list[Record]:
    """All records of the data section."""
    begin = max(data.find(b"DATA;"), 0)  # damage may have taken the word
    return [Record(int(m[1]), m[3], m.start(), m.end()) for m in _RECORD.finditer(data, begin)]


def damage(function: Change) -> Change:
    DAMAGES[function.__name__.replace("_", "-")] = function
    return function


def dress(function: Change) -> Change:
    DRESSES[function.__name__.replace("_", "-")] = function
    return function


def _some(data: bytes, pick: random.Random, holding: re.Pattern[bytes] | bytes = b"") -> Record:
    """A record whose body holds a pattern; any record if none does."""
    everything = records(data)
    if isinstance(holding, bytes):
        fitting = [r for r in everything if holding in r.body]
    else:
        fitting = [r for r in everything if holding.search(r.body)]
    return pick.choice(fitting or everything)


def _put(data: bytes, start: int, end: int, new: bytes) -> bytes:
    return data[:start] + new + data[end:]


def _rewrite(data: bytes, record: Record, body: bytes) -> bytes:
    return _put(data, record.start, record.end, b"#%d=%b;" % (record.number, body))


def _replace_one(data: bytes, pick: random.Random, pattern: re.Pattern[bytes], new: bytes) -> bytes:
    """Replace one random hit of a pattern within one record."""
    record = _some(data, pick, pattern)
    hits = list(pattern.finditer(record.body))
    if not hits:
        return data
    hit = pick.choice(hits)
    return _rewrite(data, record, _put(record.body, hit.start(), hit.end(), new))


# --- records and references -----------------------------------------------------------------------------


@damage
def delete_record(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick)
    return _put(data, record.start, record.end, b"")


@damage
def delete_many_records(data: bytes, pick: random.Random) -> bytes:
    for _ in range(pick.randint(2, 12)):
        data = delete_record(data, pick)
    return data


@damage
def swap_bodies(data: bytes, pick: random.Random) -> bytes:
    one, two = sorted(pick.sample(records(data), 2), key=lambda r: r.start)
    return _rewrite(_rewrite(data, two, one.body), one, two.body)


@damage
def duplicate_number(data: bytes, pick: random.Random) -> bytes:
    one, two = pick.sample(records(data), 2)
    return _rewrite(data, one._replace(number=two.number), one.body)


@damage
def dangling_reference(data: bytes, pick: random.Random) -> bytes:
    return _replace_one(data, pick, _REFERENCE, b"#%d" % pick.choice([0, 987_654, 2**31, 2**63, 10**30]))


@damage
def wrong_reference(data: bytes, pick: random.Random) -> bytes:
    return _replace_one(data, pick, _REFERENCE, b"#%d" % pick.choice(records(data)).number)


@damage
def self_reference(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, _REFERENCE)
    hit = pick.choice(list(_REFERENCE.finditer(record.body)))
    return _rewrite(data, record, _put(record.body, hit.start(), hit.end(), b"#%d" % record.number))


@damage
def circle_of_references(data: bytes, pick: random.Random) -> bytes:
    """A record that another one refers to refers back to it."""
    every = {r.number: r for r in records(data)}
    pairs = [
        (above.number, below.number)
        for above in every.values()
        for number in map(int, (m[1:] for m in _REFERENCE.findall(above.body)))
        if (below := every.get(number)) and _REFERENCE.search(below.body)
    ]
    if not pairs:
        return data
    above_number, below_number = pick.choice(pairs)
    below = every[below_number]
    hit = pick.choice(list(_REFERENCE.finditer(below.body)))
    return _rewrite(data, below, _put(below.body, hit.start(), hit.end(), b"#%d" % above_number))


@damage
def assembly_in_itself(data: bytes, pick: random.Random) -> bytes:
    """A usage whose component is its assembly, or two usages that make a circle."""
    usages = [r for r in records(data) if r.body.startswith(b"NEXT_ASSEMBLY_USAGE_OCCURRENCE")]
    if not usages:
        return data
    usage = pick.choice(usages)
    above, below = _REFERENCE.findall(usage.body)[:2]
    if pick.random() < 0.5:
        return _rewrite(data, usage, usage.body.replace(below, above))
    back = b"NEXT_ASSEMBLY_USAGE_OCCURRENCE('x','x','',%b,%b,$)" % (below, above)
    return _put(data, usage.end, usage.end, b"\n#%d=%b;" % (max(r.number for r in records(data)) + 1, back))


@damage
def shift_numbers(data: bytes, pick: random.Random) -> bytes:
    """From some record on all definitions move up by one, the references don't."""
    every = records(data)
    for record in reversed(every[pick.randrange(len(every)) :]):
        data = _rewrite(data, record._replace(number=record.number + 1), record.body)
    return data


# --- arguments ------------------------------------------------------------------------------------------


@damage
def mistype_keyword(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, _KEYWORD)
    hit = pick.choice(list(_KEYWORD.finditer(record.body)))
    at = pick.randrange(hit.start(), hit.end())
    return _rewrite(data, record, _put(record.body, at, at + 1, bytes([pick.choice(b"ABCXYZ_09")])))


@damage
def other_keyword(data: bytes, pick: random.Random) -> bytes:
    word = _KEYWORD.search(_some(data, pick, _KEYWORD).body)
    return _replace_one(data, pick, _KEYWORD, word[0] if word else b"PLANE")


@damage
def absurd_number(data: bytes, pick: random.Random) -> bytes:
    absurd = [
        b"NaN",
        b"1.E300",
        b"-1.E300",
        b"1.E400",
        b"INF",
        b"1.E-310",
        b"0.",
        b"-0.",
        b"9" * 400,
        b"1.#IND",
        b"nan",
    ]
    return _replace_one(data, pick, _REAL, pick.choice(absurd))


@damage
def many_absurd_numbers(data: bytes, pick: random.Random) -> bytes:
    new = pick.choice([b"NaN", b"1.E300", b"1.E100", b"0.", b"-1."])
    for _ in range(pick.randint(5, 40)):
        data = _replace_one(data, pick, _REAL, new)
    return data


@damage
def wrong_number(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, _REAL)
    hit = pick.choice(list(_REAL.finditer(record.body)))
    value = float(hit[0]) * pick.choice([-1.0, 0.5, 2.0, 1000.0, 1e-3, 1e12])
    return _rewrite(data, record, _put(record.body, hit.start(), hit.end(), f"{value:.12E}".encode()))


@damage
def no_direction(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, b"DIRECTION(")
    return _rewrite(data, record, _REAL.sub(b"0.", record.body))


@damage
def no_radius(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, re.compile(rb"CIRCLE|CYLINDRICAL_SURFACE|TOROIDAL_SURFACE|ELLIPSE"))
    return _rewrite(data, record, re.sub(rb",[^,()]+\)$", pick.choice([b",0.)", b",-3.)", b",1.E30)"]), record.body))


@damage
def drop_argument(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, b",")
    pieces = record.body.split(b",")
    del pieces[pick.randrange(1, len(pieces))]
    body = b",".join(pieces)
    return _rewrite(data, record, body if body.endswith(b")") else body + b")")


@damage
def extra_argument(data: bytes, pick: random.Random) -> bytes:
    return _replace_one(data, pick, re.compile(rb","), pick.choice([b",,", b",$,", b",#1,", b",'x',", b",(1.),"]))


@damage
def unset_argument(data: bytes, pick: random.Random) -> bytes:
    value = re.compile(rb"(?<=[(,])(?:#\d+|-?\d+\.[\dE+-]*|\.[A-Z]+\.)(?=[,)])")
    return _replace_one(data, pick, value, pick.choice([b"$", b"*", b"''", b"()"]))


@damage
def empty_list(data: bytes, pick: random.Random) -> bytes:
    return _replace_one(data, pick, re.compile(rb"(?<=,)\(#\d+(?:,\s*#\d+)*\)"), b"()")


@damage
def flipped_sense(data: bytes, pick: random.Random) -> bytes:
    for _ in range(pick.randint(1, 8)):
        record = _some(data, pick, re.compile(rb"\.[TF]\."))
        flag = pick.choice(list(re.finditer(rb"\.[TF]\.", record.body)) or [None])
        if flag is not None:
            new = b".F." if flag[0] == b".T." else b".T."
            data = _rewrite(data, record, _put(record.body, flag.start(), flag.end(), new))
    return data


@damage
def no_length_unit(data: bytes, pick: random.Random) -> bytes:
    """The contexts lose their units, or the length unit's record goes."""
    if pick.random() < 0.5:
        return re.sub(rb"GLOBAL_UNIT_ASSIGNED_CONTEXT\s*\(\s*\([^)]*\)\s*\)", b"", data)
    for record in records(data):
        if b"LENGTH_UNIT" in record.body:
            return _put(data, record.start, record.end, b"")
    return data


@damage
def missing_face(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, b"CLOSED_SHELL")
    hits = list(re.finditer(rb"#\d+,", record.body))
    if not hits:
        return data
    hit = pick.choice(hits)
    return _rewrite(data, record, _put(record.body, hit.start(), hit.end(), b""))


@damage
def face_twice(data: bytes, pick: random.Random) -> bytes:
    record = _some(data, pick, b"CLOSED_SHELL")
    hits = list(re.finditer(rb"#\d+,", record.body))
    if not hits:
        return data
    hit = pick.choice(hits)
    return _rewrite(data, record, _put(record.body, hit.start(), hit.start(), hit[0]))


# --- the text as such -----------------------------------------------------------------------------------


@damage
def truncate(data: bytes, pick: random.Random) -> bytes:
    return data[: pick.randrange(len(data))]


@damage
def truncate_and_close(data: bytes, pick: random.Random) -> bytes:
    """Cut in the middle, and the end lines put on again."""
    begin = max(data.find(b"DATA;"), 0)  # damage may have taken the word + 5
    return data[: pick.randrange(begin, len(data))] + b"\nENDSEC;\nEND-ISO-10303-21;\n"


@damage
def cut_out_a_block(data: bytes, pick: random.Random) -> bytes:
    start = pick.randrange(len(data))
    return _put(data, start, start + pick.randint(1, 4096), b"")


@damage
def repeat_a_block(data: bytes, pick: random.Random) -> bytes:
    start = pick.randrange(len(data))
    return _put(data, start, start, data[start : start + pick.randint(1, 4096)])


@damage
def random_bytes(data: bytes, pick: random.Random) -> bytes:
    changed = bytearray(data)
    for _ in range(pick.randint(1, 30)):
        changed[pick.randrange(len(changed))] = pick.randrange(256)
    return bytes(changed)


@damage
def flipped_bit(data: bytes, pick: random.Random) -> bytes:
    changed = bytearray(data)
    changed[pick.randrange(len(changed))] ^= 1 << pick.randrange(8)
    return bytes(changed)


@damage
def nul_bytes(data: bytes, pick: random.Random) -> bytes:
    at = pick.randrange(len(data))
    return _put(data, at, at + pick.choice([0, 50]), b"\0" * pick.choice([1, 512, 4096]))


@damage
def open_bracket_or_quote(data: bytes, pick: random.Random) -> bytes:
    at = pick.randrange(data.index(b"DATA;"), len(data))
    return _put(data, at, at, pick.choice([b"(", b")", b"'", b"(((", b"/*", b";", b"\\X2\\", b"=", b'"']))


@damage
def deep_nesting(data: bytes, pick: random.Random) -> bytes:
    depth = pick.choice([1_000, 20_000, 200_000])
    close = b")" * (depth if pick.random() < 0.5 else 0)
    return _replace_one(data, pick, re.compile(rb"(?<=,)(?:#\d+|\$|'')(?=[,)])"), b"(" * depth + close)


@damage
def long_text(data: bytes, pick: random.Random) -> bytes:
    return _replace_one(data, pick, re.compile(rb"'[^']*'"), b"'" + b"x" * pick.choice([5_000, 300_000]) + b"'")


@damage
def bad_header(data: bytes, pick: random.Random) -> bytes:
    return pick.choice(
        [
            re.sub(rb"FILE_SCHEMA\s*\([^;]*;", b"FILE_SCHEMA(('NO_SUCH_SCHEMA'));", data),
            re.sub(rb"FILE_SCHEMA\s*\([^;]*;", b"", data),
            re.sub(rb"HEADER;.*?ENDSEC;", b"", data, count=1, flags=re.DOTALL),
            data.replace(b"DATA;", b"", 1),
            re.sub(rb"FILE_NAME\s*\([^;]*;", b"FILE_NAME($,$,$,$,$,$,$);", data),
            data.replace(b"ISO-10303-21;", b"ISO-10303-21", 1),
        ]
    )  # fmt: skip


# --- dresses: the same model, written otherwise ---------------------------------------------------------


@dress
def as_it_is(data: bytes, pick: random.Random) -> bytes:
    return data


@dress
def crlf(data: bytes, pick: random.Random) -> bytes:
    return data.replace(b"\r\n", b"\n").replace(b"\n", b"\r\n")


@dress
def one_line(data: bytes, pick: random.Random) -> bytes:
    """No line breaks after the header (a break inside a text would be part of it; there is none)."""
    begin = max(data.find(b"DATA;"), 0)  # damage may have taken the word
    return data[:begin] + re.sub(rb"\s*[\r\n]+\s*", b"", data[begin:])


@dress
def comments(data: bytes, pick: random.Random) -> bytes:
    """Comments that look like records between the records."""
    for record in reversed(records(data)):
        if pick.random() < 0.2:
            data = _put(data, record.start, record.start, b"/* #7=CLOSED_SHELL('',(#8));\n\n*/ ")
    return data


@dress
def broken_lines(data: bytes, pick: random.Random) -> bytes:
    """A line break after every comma outside texts."""
    begin = max(data.find(b"DATA;"), 0)  # damage may have taken the word
    pieces = re.split(rb"('(?:[^']|'')*')", data[begin:])
    return data[:begin] + b"".join(p if p.startswith(b"'") else p.replace(b",", b",\n  ") for p in pieces)


@dress
def other_numbers(data: bytes, pick: random.Random) -> bytes:
    """All records numbered anew, with gaps and in no order; they stand where they stood."""
    begin = max(data.find(b"DATA;"), 0)  # damage may have taken the word
    old = [r.number for r in records(data)]
    new = dict(zip(old, pick.sample(range(10, 50 * len(old)), len(old)), strict=True))
    pieces = re.split(rb"('(?:[^']|'')*')", data[begin:])
    body = [p if p.startswith(b"'") else _REFERENCE.sub(lambda m: b"#%d" % new[int(m[0][1:])], p) for p in pieces]
    return data[:begin] + b"".join(body)


@dress
def long_exponents(data: bytes, pick: random.Random) -> bytes:
    """Real numbers as some programs write them: all with an exponent of three digits."""

    def written(found: re.Match[bytes]) -> bytes:
        digits, exponent = f"{float(found[0]):.16E}".split("E")
        return f"{digits}E{int(exponent):+04d}".encode()

    for record in reversed(records(data)):
        if record.body.startswith((b"CARTESIAN_POINT", b"DIRECTION", b"CIRCLE", b"VECTOR")):
            data = _rewrite(data, record, _REAL.sub(written, record.body))
    return data


@dress
def byte_order_mark(data: bytes, pick: random.Random) -> bytes:
    return b"\xef\xbb\xbf" + data


@dress
def trailing_bytes(data: bytes, pick: random.Random) -> bytes:
    return data + pick.choice([b"\n\n\n", b"\0" * 700, b"   ", b"\x1a"])
