"""Keys of earlier versions are answered with the one that holds now."""

import pytest

from seamcheck.catalogue.former import FORMER_QUANTITIES, FORMER_RULES
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.errors import UsageError
from seamcheck.settings.file import parse_settings
from seamcheck.settings.reading import unknown


@pytest.mark.parametrize(("old", "new"), FORMER_RULES.items())
def test_a_waiver_and_a_limit_of_a_former_rule_name_the_new_one(old, new):
    assert old not in RULES
    assert new in RULES
    for text in (
        f"[[waivers]]\nrule = '{old}'\nreason = 'seen'\ncontour = 'c1'\n",
        f"[limits.{old}]\nseverity = 'off'\n",
    ):
        with pytest.raises(UsageError) as refused:
            parse_settings(text)
        assert f"{new!r}" in str(refused.value)
        assert "any more" in str(refused.value)


@pytest.mark.parametrize(("old", "new"), FORMER_QUANTITIES.items())
def test_a_tolerance_of_a_former_quantity_names_the_new_one(old, new):
    assert old not in QUANTITIES
    assert new in QUANTITIES
    with pytest.raises(UsageError) as refused:
        parse_settings(f"[tolerance]\n{old} = 0.1\n")
    assert f"{new!r}" in str(refused.value)


@pytest.mark.parametrize(("word", "named"), [("turn_radius", "corner_radius"), ("turn-radius", "corner-radius")])
def test_a_former_name_of_a_rule_and_a_quantity_is_answered_in_the_kind_it_is_written_in(word, named):
    sentence = unknown(word, (*RULES, *QUANTITIES), "rule or quantity")
    assert f"it is {named!r}" in sentence
