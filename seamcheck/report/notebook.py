"""A review in a notebook: a short form of the page, the page in a frame, and the stations as a table."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from markupsafe import Markup

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.errors import MissingLibrary
from seamcheck.report import bands, facts
from seamcheck.report.facts import Document
from seamcheck.report.summary import open_traps, sentences

if TYPE_CHECKING:
    import pandas

_FILL = {
    bands.UNKNOWN: "#b8bcbe", bands.WITHIN: "#8db8ad", bands.NEAR: "#c9a455", bands.BROKEN: "#b0103f",
    bands.WAIVED: "#a79bcb", bands.LOOK: "#8a5f00", bands.NOTED: "#9aa1a5",
}  # fmt: skip
_TALL = {bands.BROKEN: 12, bands.WAIVED: 10, bands.LOOK: 9, bands.NEAR: 6, bands.NOTED: 5}


def render_fragment(document: Document) -> str:
    """HTML for a notebook's output cell: verdict, findings and the unrolled seam; no script, no style."""
    parts = [
        Markup("<div><p><b>{}</b>: {}</p>").format(document["verdict"], facts.headline(document)),
        *(Markup("<p>{}</p>").format(line) for line in (*sentences(document), *open_traps(document))),
    ]
    rows = [
        Markup("<tr><td>{}</td><td>{} {}</td><td>{}{}</td><td>{}</td><td>{}</td></tr>").format(
            n.number,
            facts.MARKS.get(n.finding["severity"], ""),
            facts.finding_title(n.finding),
            n.finding["severity"],
            ", waived" if n.is_waived else "",
            facts.value_text(n.finding),
            facts.limit_words(document, n.finding),
        )
        for n in facts.numbered_findings(document)
    ]
    if rows:
        head = Markup("<tr><th>no.</th><th>rule</th><th>severity</th><th>value</th><th>limit</th></tr>")
        parts.append(Markup("<table><thead>{}</thead><tbody>{}</tbody></table>").format(head, Markup("").join(rows)))
    parts += [_strip(document, joint) for joint in facts.joints(document)]
    parts.append(Markup("<p><small>{}</small></p></div>").format(SHORT_CAUTION))
    return str(Markup("").join(parts))


def _strip(document: Document, joint: Any) -> Markup:
    """One row for each rule: its state along the unrolled paths, as SVG."""
    rows = [b for b in bands.bands(document, joint) if b.severity == "must-fix"]
    total = sum(float(c["length_mm"]) for c in joint["contours"]) or 1.0
    width, left, row = 560.0, 210.0, 17
    shapes: list[Markup] = []
    for k, band in enumerate(rows):
        y = 14 + row * k
        shapes.append(
            Markup('<text x="0" y="{}" font-size="12" fill="currentColor">{}</text>').format(y + 10, band.title)
        )
        start = 0.0
        for contour in joint["contours"]:
            s, length = contour["stations"]["s"], float(contour["length_mm"])
            for first, last, state in bands.runs(bands.track(document, joint, contour, band)):
                x0 = left + width * (start + (0.0 if first == 0 else (s[first - 1] + s[first]) / 2)) / total
                end = length if last == len(s) - 1 else (s[last] + s[last + 1]) / 2
                x1 = left + width * (start + end) / total
                tall = _TALL.get(state, 3)
                shapes.append(
                    Markup('<rect x="{:.1f}" y="{:.1f}" width="{:.1f}" height="{}" fill="{}"/>').format(
                        x0, y + 6 - tall / 2, max(x1 - x0, 0.8), tall, _FILL[state]
                    )
                )
            start += length
    height = 18 + row * len(rows)
    label = Markup("<title>{}</title>").format(f"Unrolled seam of joint {joint['id']}, {total:.1f} mm")
    size = Markup('<svg viewBox="0 0 {:.0f} {}" width="{:.0f}" height="{}" role="img">').format(
        left + width + 4, height, left + width + 4, height
    )
    return size + label + Markup("").join(shapes) + Markup("</svg>")


def render_frame(document: Document, height: int = 900) -> str:
    """The whole page in a frame of its own, for a notebook's output cell."""
    from seamcheck.report.html import render_html

    return str(
        Markup('<iframe srcdoc="{}" width="100%" height="{}" sandbox="allow-scripts allow-modals"></iframe>').format(
            render_html(document), int(height)
        )
    )


def stations_frame(document: Document) -> pandas.DataFrame:
    """All stations as a data frame: joint, path, station, s, x, y, z, and one column for each quantity.

    Columns are named by the quantity's key; lengths mm, areas mm², angles degrees; NaN where not measured.

    Raises
    ------
    MissingLibrary
        Without pandas.
    """
    try:
        import pandas
    except ImportError:
        raise MissingLibrary("A data frame", "notebook") from None
    tables = []
    for joint, contour in facts.paths(document):
        stations = contour["stations"]
        keys = [key for key in stations if key not in ("u", *"xyz", "s")]
        table = {"joint": joint["id"], "path": contour["id"], "station": range(len(stations["s"]))}
        table |= {axis: stations[axis] for axis in ("s", *"xyz")}
        table |= {key: facts.column_of(contour, key) for key in keys}
        tables.append(pandas.DataFrame(table))
    return pandas.concat(tables, ignore_index=True) if tables else pandas.DataFrame()
