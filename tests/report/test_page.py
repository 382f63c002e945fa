"""The page as text: escaped names, strict policy, size, cautions, colours that can be told apart."""

import html.parser
import re
from importlib import resources

import pytest
from report_documents import HOSTILE, hostile, housing, not_reviewed

from seamcheck.catalogue.cautions import CAUTIONS
from seamcheck.report import bands, facts
from seamcheck.report.html import render_html


class Elements(html.parser.HTMLParser):
    """All elements with their attributes, read by the standard library."""

    def __init__(self, text):
        super().__init__()
        self.found = []
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        self.found.append((tag, dict(attrs)))


def test_a_typical_page_stays_below_3_mb():
    assert len(render_html(housing()).encode()) < 3_000_000


def test_names_become_no_elements_and_no_attributes():
    tame, wild = Elements(render_html(housing(step=2.0))).found, Elements(render_html(hostile())).found
    assert not [e for e in wild if e[0] == "img" or any(name.startswith("on") for name in e[1])]
    assert sum(tag == "script" for tag, _ in wild) == sum(tag == "script" for tag, _ in tame) == 2
    text = render_html(hostile())
    assert HOSTILE not in text
    assert "&lt;img src=x onerror=alert(1)&gt;" in text


def test_the_policy_allows_only_what_stands_in_the_page():
    text = render_html(housing(step=2.0))
    policy = next(a["content"] for t, a in Elements(text).found if a.get("http-equiv") == "Content-Security-Policy")
    assert policy.startswith("default-src 'none'")
    assert "unsafe" not in policy
    assert "http" not in policy
    links = [a for _, a in Elements(text).found if "src" in a or str(a.get("href", "#"))[0] != "#"]
    assert links == []
    assert not [a for _, a in Elements(text).found if "style" in a]  # the policy would drop them


@pytest.mark.parametrize("document", [housing(step=2.0), not_reviewed()], ids=["reviewed", "not-reviewed"])
def test_cautions_stand_in_every_page(document):
    import markupsafe

    text = render_html(document)
    for caution in CAUTIONS:
        assert str(markupsafe.escape(caution)) in text
    assert "It is not an approval" in text


def test_a_page_without_scripts_still_has_every_finding_with_value_limit_harm_and_remedy():
    document = housing(step=2.0)
    text = re.sub(r"<script.*?</script>", "", render_html(document), flags=re.S)
    for n in facts.numbered_findings(document):
        assert f'id="finding-{n.number}"' in text
        for line in (n.finding["message"], n.finding["harm"], n.finding["remedy"]):
            assert line.replace("'", "&#39;") in text
        assert facts.value_text(n.finding) in text


def test_the_same_document_gives_the_same_page():
    assert render_html(housing(step=2.0)) == render_html(housing(step=2.0))


def tokens(dark: bool) -> dict[str, str]:
    style = resources.files("seamcheck.report.html").joinpath("page.css").read_text("utf-8")
    block = re.search(r':root\[data-theme="dark"\][^{]*\{(.*?)\}' if dark else r":root \{(.*?)\}", style, re.S)
    return dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6})", block[1]))


def luminance(colour: str) -> float:
    # Relative luminance, WCAG 2.2, section "Definitions".
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
@pytest.mark.parametrize("ink", ["ink", "soft", "broken", "near", "waived", "within", "walker", "limit"])
@pytest.mark.parametrize("ground", ["paper", "sheet", "raised"])
def test_text_stands_out_from_its_ground(dark, ink, ground):
    # WCAG 2.2, success criterion 1.4.3 (AA): at least 4.5 to 1 for text.
    colours = tokens(dark)
    high, low = sorted((luminance(colours[ink]), luminance(colours[ground])), reverse=True)
    assert (high + 0.05) / (low + 0.05) >= 4.5


def test_states_follow_the_findings_and_not_a_comparison_of_their_own():
    document = housing()
    joint, contour = document["joints"][0], document["joints"][0]["contours"][0]
    rows = {b.rule: b for b in bands.bands(document, joint)}
    state = bands.track(document, joint, contour, rows["clamp-land"])
    finding = next(f for f in document["findings"] if f["rule"] == "clamp-land")
    s = contour["stations"]["s"]
    for i, value in enumerate(s):
        assert (state[i] == bands.BROKEN) == (finding["from_s"] <= value <= finding["to_s"])
    assert rows["clamp-land"].words == "at least 1 mm"
    assert rows["rib-width"].words == "0.6 to 2 mm"
    assert rows["rib-uniformity"].words == "1.35 to 1.65 mm"  # 10 % of the median of 1.5
    document["findings"] = []
    assert bands.BROKEN not in bands.track(document, joint, contour, rows["clamp-land"])


def test_findings_come_in_the_order_of_harm():
    document = housing()
    document["findings"][0]["waived"] = {"reason": "accepted"}
    ordered = facts.numbered_findings(document)
    assert ordered[-1].finding["id"] == document["findings"][0]["id"]
    live = [n.finding["severity"] for n in ordered if not n.is_waived]
    assert live == sorted(live, key=["must-fix", "attention", "note"].index)
    assert [n.number for n in ordered] == list(range(1, len(ordered) + 1))


def test_a_value_that_was_not_judged_counts_neither_as_within_nor_as_broken():
    # Drawn in the welded position the gap is not judged: no finding, though the value lies beyond the limit.
    document = housing(step=2.0)
    joint, contour = document["joints"][0], document["joints"][0]["contours"][0]
    for key in ("gap", "gap_min", "gap_max"):
        contour["stations"][key] = [-0.4] * len(contour["stations"]["s"])
    row = next(b for b in bands.bands(document, joint) if b.rule == "contact-gap")
    assert set(bands.track(document, joint, contour, row)) == {bands.UNKNOWN}


def test_what_is_closest_to_a_limit_breaks_none():
    document = housing()
    for place in bands.tightest(document):
        assert place.share >= 0
        assert place.title not in {facts.rule_title(f["rule"]) for f in document["findings"]}


@pytest.mark.parametrize(
    ("value", "decimals", "text"), [(-0.03, 1, "0.0"), (-0.004, 2, "0.00"), (-32.0, 1, "-32.0"), (0.06, 1, "0.1")]
)
def test_no_coordinate_is_minus_nothing(value, decimals, text):
    assert facts.coordinate(value, decimals) == text
