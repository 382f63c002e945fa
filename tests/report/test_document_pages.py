"""The pages made from the declarations are the ones that stand in docs/."""

import pytest

from seamcheck.report.rule_pages import DOCS, quantities_page, rules_page, settings_page

PAGES = [("rules.md", rules_page), ("quantities.md", quantities_page), ("settings.md", settings_page)]


@pytest.mark.parametrize(("name", "page"), PAGES)
def test_pages_in_docs_are_up_to_date(name, page):
    # after a change of a rule, quantity or setting: python -m seamcheck.report.rule_pages
    assert (DOCS / name).read_text(encoding="utf-8") == page()
