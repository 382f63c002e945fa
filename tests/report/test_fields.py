"""Fields of a report: shown, escaped, printed on every sheet, and never part of the document."""

import base64
from datetime import date

import pytest
from report_documents import HOSTILE, housing

from seamcheck.errors import UsageError
from seamcheck.report.fields import page_footer, read_fields
from seamcheck.report.html.page import render_html

PNG = b"\x89PNG\r\n\x1a\n" + bytes(20)


def test_fields_stand_at_the_top_of_the_page_and_are_escaped():
    page = render_html(
        housing(step=4.0, view=False), fields=read_fields({"project": "Weather station", "author": HOSTILE})
    )
    assert "<b>Weather station</b>" in page
    assert HOSTILE not in page
    assert "report-fields" in page


def test_a_page_without_fields_has_no_empty_frame():
    assert '<div class="report-fields">' not in render_html(housing(step=4.0, view=False))


def test_the_date_is_the_one_given_or_today():
    assert read_fields({"date": "2031-05-06"}).values["date"] == "2031-05-06"
    assert read_fields({"date": "today"}, date(2031, 5, 7)).values["date"] == "2031-05-07"
    assert "date" not in read_fields({"title": "x"}).values


def test_a_logo_is_embedded_as_a_picture(tmp_path):
    for name, content, kind in (("a.png", PNG, "image/png"), ("a.svg", b"<svg xmlns='x'/>", "image/svg+xml")):
        (tmp_path / name).write_bytes(content)
        logo = read_fields({"logo": str(tmp_path / name)}).logo
        assert logo == f"data:{kind};base64,{base64.b64encode(content).decode()}"


@pytest.mark.parametrize("content", [b"GIF89a", b"<html><script>", b"\x89PNG\r\n\x1a\n" + bytes(500_000)])
def test_anything_else_is_refused_as_a_logo(content, tmp_path):
    (tmp_path / "logo").write_bytes(content)
    with pytest.raises(UsageError):
        read_fields({"logo": str(tmp_path / "logo")})


@pytest.mark.parametrize("pairs", [{"colour": "red"}, {"title": "x" * 500}])
def test_a_wrong_field_is_one_sentence(pairs):
    with pytest.raises(UsageError):
        read_fields(pairs)


def test_the_footer_says_model_revision_and_hash_and_cannot_end_its_string():
    # CSS Syntax Level 3, 4.3.7: a backslash and hex digits are one escaped sign; quotes and braces never stand bare.
    style = page_footer(read_fields({"revision": 'B"}{'}), 'a"b\\c}.step', "ab" * 32)
    assert "abababababab" in style
    assert style.count('"') == 2
    assert style.count("{") == style.count("}") == 2
    assert "revision" in style
