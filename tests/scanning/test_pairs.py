"""Names that belong together."""

import pytest

from seamcheck.errors import UsageError
from seamcheck.scanning.pairs import paired, rules_from
from seamcheck.scanning.patterns import Patterns, stem, unpacked_name


@pytest.mark.parametrize(
    ("names", "rules", "groups"),
    [
        (["a-case.step", "a-lid.step"], ["lid=case"], [("a-lid.step", "a-case.step")]),
        (["A-LID.STP", "a-case.step.gz"], ["lid=case"], [("A-LID.STP", "a-case.step.gz")]),
        (["a-lid.step", "b-case.step"], ["lid=case"], [("a-lid.step",), ("b-case.step",)]),
        (["lid.step", "case.step", "case.stp"], ["lid=case"], [("lid.step",), ("case.step",), ("case.stp",)]),
        (["top-top.step", "bottom-top.step"], ["top=bottom"], [("top-top.step", "bottom-top.step")]),
        (["a1.step", "b1.step", "c1.step"], ["a=b", "b=c"], [("a1.step", "b1.step"), ("c1.step",)]),
        (["x.step"], [], [("x.step",)]),
    ],
)
def test_pairs(names, rules, groups):
    assert sorted(paired(names, rules_from(rules))) == sorted(groups)
    assert sorted(n for g in paired(names, rules_from(rules)) for n in g) == sorted(names)  # none is lost or doubled


@pytest.mark.parametrize("text", ["lid", "lid=", "=case", "lid=lid", ""])
def test_a_rule_is_two_words(text):
    with pytest.raises(UsageError, match="lid=case"):
        rules_from([text])


@pytest.mark.parametrize(
    ("name", "inner", "first"),
    [
        ("a.step.gz", "a.step", "a"),
        ("a.stpz", "a.stp", "a"),
        ("a.STPZ", "a.STP", "a"),
        ("v1.2.step", "v1.2.step", "v1.2"),
    ],
)
def test_names_within_archives(name, inner, first):
    assert unpacked_name(name) == inner
    assert stem(name) == first


def test_patterns_take_upper_and_lower_case_alike():
    for name in ("a.STEP", "b.Stp", "c.stpz", "d.step.GZ", "e.zip", "f.p21"):
        assert Patterns().match(name)
    for name in ("a.step.txt", "step", "a.igs", "a.gz"):
        assert not Patterns().match(name)
