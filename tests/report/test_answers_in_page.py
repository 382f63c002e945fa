"""Decisions typed into the page come out as the file that a review reads."""

import pytest
from report_browser import browser, needs_browser
from report_documents import housing

from seamcheck.report import facts
from seamcheck.report.fields import Fields
from seamcheck.report.html.page import render_html
from seamcheck.report.letter import render_letter
from seamcheck.settings.answers import read_answers

TYPE = """
const put = (selector, value) => { const e = document.querySelector(selector); e.value = value; };
put("[data-answer='1'] [data-key=decision]", "accept");
put("[data-answer='1'] [data-key=text]", "Held in trials </script>");
put("[data-answer='1'] [data-key=by]", "A. Writer");
put("[data-answer='1'] [data-key=date]", "2026-11-28");
put("[data-question] [data-key=answer]", "On the short side.");
put("[data-role] [data-key=name]", "B. Reader");
window.saved = null;
URL.createObjectURL = (blob) => { blob.text().then((text) => { window.saved = text; }); return "blob:nothing"; };
HTMLAnchorElement.prototype.click = function () {};
document.querySelector("#save-answers").click();
"""


@needs_browser
def test_what_is_typed_is_saved_read_and_shown_again(tmp_path):
    document = housing(step=2.0)
    page = tmp_path / "page.html"
    page.write_text(render_html(document), "utf-8")
    with browser(tmp_path / "profile") as window:
        window.open(page)
        window.run(TYPE)
        window.wait("return window.saved !== null")
        (tmp_path / "answers.json").write_text(window.run("return window.saved"), "utf-8")
        assert "answers.json" in window.text("#saved")
        answers = read_answers(tmp_path / "answers.json")
        first = facts.numbered_findings(document)[0].finding
        (waiver,) = answers.waivers("answers.json")
        assert waiver.rule == first["rule"]
        assert waiver.contour == first["contour"]
        assert waiver.from_s <= first["from_s"] <= first["to_s"] <= waiver.to_s
        assert list(answers.answered()) == [facts.questions(document)[0][0]]
        assert answers.approval[0].name == "B. Reader"
        page.write_text(render_html(document, fields=Fields(answers=answers)), "utf-8")
        window.open(page)
        assert window.run("return document.querySelector(\"[data-answer='1'] [data-key=text]\").value").startswith(
            "Held"
        )
        assert window.run("return document.querySelector(\"[data-answer='1'] [data-key=decision]\").value") == "accept"
        assert window.run("return document.querySelector('[data-role] [data-key=name]').value") == "B. Reader"


def test_the_letter_asks_each_addressee_and_names_the_findings():
    document = housing(step=2.0)
    letter = render_letter(document)
    assert "## To the moulder" in letter
    assert letter.count("\n1. ") >= 2
    for numbered in facts.numbered_findings(document):
        if not numbered.is_waived and numbered.finding["severity"] != "note":
            assert f"- {numbered.number} (" in letter


@pytest.mark.parametrize("sign", ["*", "_", "[", "<", "`"])
def test_names_are_no_markup_in_the_letter(sign):
    document = housing(step=4.0, view=False)
    document["model"]["file"] = f"a{sign}b.step"
    assert f"a\\{sign}b.step" in render_letter(document)
