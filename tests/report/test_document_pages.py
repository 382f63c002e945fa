"""The pages made from the declarations are the ones that stand in docs/."""

import pytest

from seamcheck.report.rule_pages import DOCS, quantities_page, rules_page


@pytest.mark.parametrize(("name", "page"), [("rules.md", rules_page), ("quantities.md", quantities_page)])
def test_pages_in_docs_are_up_to_date(name, page):
    # after a change of a rule or quantity: python -m seamcheck.report.rule_pages
    assert (DOCS / name).read_text(encoding="utf-8") == page()
