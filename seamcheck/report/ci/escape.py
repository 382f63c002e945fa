"""Text of models and messages made safe for XML, Markdown, addresses and annotations."""

from __future__ import annotations

import re

_NOT_XML = "[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]"
"""What XML 1.0 (fifth edition, section 2.2, production Char) does not allow, not even escaped."""


def xml_text(text: str) -> str:
    """Text with nothing that XML does not allow; escaping < & > is the writer's work."""
    return re.sub(_NOT_XML, "\N{REPLACEMENT CHARACTER}", text)


def one_line(text: str) -> str:
    """Text on one line without control characters."""
    return "".join(c if c.isprintable() else " " if c in "\t\n\r" else "\N{REPLACEMENT CHARACTER}" for c in str(text))


def markdown(text: str) -> str:
    """Text that Markdown shows as it is: no mark-up, no link, no mention, no entity, on one line.

    ASCII punctuation is escaped by a backslash (CommonMark 0.31, section 2.4). '@' and '#' get a character of no
    width behind them, as hosts turn '@name' and '#12' into links after Markdown has been read.
    """
    text = re.sub(r"\s+", " ", one_line(text)).strip()
    text = re.sub(r"([@#])(?=\w)", "\\1\u200b", text)
    return re.sub(r"([\\`*_\[\]<>|~&$])", r"\\\1", text).replace("\\&", "&amp;").replace("\\<", "&lt;")


def code(text: str, in_table: bool = True) -> str:
    """Text as a code span of Markdown, whatever it holds; '–' for none."""
    text = re.sub(r"\s+", " ", one_line(text)).strip()
    if not text:
        return "–"
    fence = "`" * (1 + max((len(run) for run in re.findall(r"`+", text)), default=0))
    room = " " if text.startswith("`") or text.endswith("`") else ""
    span = f"{fence}{room}{text}{room}{fence}"
    return span.replace("|", "\\|") if in_table else span


def address(path: str) -> str:
    """A path as a URI reference (RFC 3986): what is not allowed there is percent-encoded.

    A path from the root on becomes a file URI (RFC 8089), and so does one that begins with a drive's letter or, with
    its machine as the host, one on a share (appendix E). A first segment with ':' would be read as a scheme, so
    './' goes before it.
    """
    from urllib.parse import quote

    try:
        data = path.encode("utf-8", "surrogateescape")  # names of files that are no UTF-8
    except UnicodeEncodeError:
        data = path.encode("utf-8", "surrogatepass")
    encoded = quote(data, safe="/-._~!$&'()*+,;=@:")
    if re.match(r"//[^/]", path):
        return f"file:{encoded}"
    if re.match(r"/|[A-Za-z]:/", path):
        return f"file:///{encoded.lstrip('/')}"
    return f"./{encoded}" if ":" in encoded.partition("/")[0] else encoded


def command_data(text: str) -> str:
    """The message of a workflow command: '%' and line breaks as %XX."""
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


def command_property(text: str) -> str:
    """A property of a workflow command: ':' and ',' as well, which separate properties and message."""
    return command_data(text).replace(":", "%3A").replace(",", "%2C")
