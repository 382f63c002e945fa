"""Judging one joint: its columns, and the findings as they are made."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from types import MappingProxyType
from typing import Any

import msgspec
import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.interface_rules import NEEDS
from seamcheck.catalogue.kind_words import keyed, speaks_of_rib, word_of, worded
from seamcheck.catalogue.message import Amount, Message, Sentence, values_of
from seamcheck.catalogue.messages import WORDINGS, message, wording
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import TEXTS, Value, english, places_of, sentence
from seamcheck.judge.bounds import JudgedPath, JudgedSeam
from seamcheck.judge.findings import OUTSIDE, Face, Finding, JointResult
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import Stretch, cell_lengths
from seamcheck.settings.settings import Settings

OF_RIBS = ("rib-missing", "traps-missing")
"""Rules that ask for a rib where there is none."""


class DraftFinding(msgspec.Struct, frozen=True, eq=False):
    """A finding with what its name is made from.

    Attributes
    ----------
    finding : still without a name
    side : which column on which side of its limit
    place : (3,) mm, middle of the stretch, or of the path that it is the whole of; None for the whole seam
    stations : indices of its stations; None where it lies on none
    """

    finding: Finding
    side: str
    place: np.ndarray | None
    stations: np.ndarray | None = None


class JointJudge:
    """Makes the findings of one joint under one set of settings."""

    def __init__(
        self, joint: JointResult, settings: Settings, part_names: Mapping[str, str] = MappingProxyType({})
    ) -> None:
        self.joint, self.settings, self.part_names = joint, settings, part_names
        self.seam = JudgedSeam(joint, settings)
        self.is_flat = self.seam.is_flat

    def applies(self, rule: Rule) -> bool:
        """An optional rule applies where the joint has one of its quantities at all, and the settings what it needs."""
        if not rule.optional:
            return True
        if rule.key in NEEDS and not getattr(self.settings, NEEDS[rule.key]):
            return False
        survey = self.joint.survey
        return any(
            check.column in survey.interface or any(check.column in path.columns for path in survey.paths)
            for check in rule.checks
        )

    def finding(self, rule: Rule, key: str, args: Mapping[str, Value]) -> Finding:
        """A finding about the joint in the words of a key of WORDINGS, not yet placed."""
        texts, says = wording(key), message(key, args)
        severity: Any = self.settings.severity(rule.key)
        return Finding(
            id="", rule=rule.key, severity=severity, quantity=rule.quantities[0],
            column=None, value=None, limit=None, unit=rule.unit, margin=None, joint=self.joint.id, contour=None,
            at=None, station=None, from_s=None, to_s=None, length_mm=None, faces=(), message=says.text,
            harm=texts.harm, remedy=english(texts.remedy, says.args, {}), also=(), state=OUTSIDE,
            tolerance=None, worst_case=None, waived=None, key=key, args=says.args, messages=(says,),
        )  # fmt: skip

    def on_stretch(
        self,
        rule: Rule,
        view: JudgedPath,
        stretch: Stretch,
        station: int,
        key: str,
        args: Mapping[str, Value],
        side: str,
    ) -> DraftFinding:
        """A finding on one stretch of a path, located at a station."""
        path = view.path
        finding = self.finding(rule, key, args)
        finding = replace(
            finding,
            contour=path.id,
            at=point(path.points[station]),
            station=station,
            from_s=stretch.from_s,
            to_s=stretch.to_s,
            length_mm=stretch.length,
            faces=self.faces(path, station),
        )
        weights = cell_lengths(path.s, path.length, path.closed)
        place = weights @ path.points / weights.sum() if stretch.is_whole else view.place(stretch.middle)
        return DraftFinding(finding, f"{side}.{'whole' if stretch.is_whole else ''}", place, stretch.stations)

    def seam_finding(
        self, rule: str, args: Mapping[str, Value], also: tuple[str, ...] = (), key: str = ""
    ) -> DraftFinding:
        """A finding about the whole seam of the joint, in the words of a key; '' for those of the rule."""
        finding = self.finding(RULES[rule], key or rule, args)
        length = sum(view.path.length for view in self.seam.paths)
        first = self.seam.paths[0].path if self.seam.paths else None
        finding = replace(
            finding,
            length_mm=float(length),
            at=None if first is None or not len(first.points) else point(first.points[len(first.points) // 2]),
            contour=first.id if first is not None and len(self.seam.paths) == 1 else None,
            also=also,
        )
        return DraftFinding(finding, "whole", None)

    def faces(self, path: PathSurvey, station: int) -> tuple[Face, ...]:
        """The faces at a station."""
        survey = self.joint.survey
        pairs = ((survey.rib_part, int(path.rib_face[station])), (survey.counter_part, int(path.cover_face[station])))
        return tuple(Face(part, face, None, None) for part, face in pairs if part and face >= 0)


def in_words(finding: Finding, key: str, args: Mapping[str, Amount | str]) -> Finding:
    """The finding with remedy and harm of another key, and with further values to fill in."""
    texts, known = wording(key), {**finding.args, **args}
    return replace(finding, key=key, args=known, harm=texts.harm, remedy=english(texts.remedy, known, {}))


def of_kind(finding: Finding, kind: str) -> Finding:
    """The finding in the words of a kind of joint: what it says of a rib is said of the wall or band in its place."""
    word = word_of(kind)
    if not word or finding.rule in OF_RIBS:
        return finding

    def own(key: str, titles: Sequence[str] = ()) -> str:
        texts = WORDINGS.get(key)
        own_texts = (texts.says, texts.remedy, texts.harm) if texts else (TEXTS.get(key, ""),)
        speaks = speaks_of_rib(*own_texts, *titles)
        return keyed(key, word) if speaks else key

    def told(one: Message) -> Message:
        values = values_of(one)
        within = {n: [told(part.message) for part in parts] for n, parts in values.items() if isinstance(parts, list)}
        key = own(one.key, _titles(one))
        if key == one.key and not within:
            return one
        values |= {name: [Sentence.of(part) for part in parts] for name, parts in within.items()}
        template = wording(key).says if one.key in WORDINGS else worded(TEXTS[one.key], word if key != one.key else "")
        return sentence(key, template, values).message

    said = [told(one) for one in finding.messages]
    result = replace(finding, messages=tuple(said), message=" ".join(m.text for m in said))
    return in_words(result, own(finding.key), {}) if own(finding.key) != finding.key else result


def _titles(said: Message) -> list[str]:
    """The titles of quantities that stand in a sentence."""
    template = WORDINGS[said.key].says if said.key in WORDINGS else TEXTS.get(said.key, "")
    named = [name for name, kind in places_of(template).items() if kind in ("quantity", "title")]
    return [QUANTITIES[str(said.args[name])].title for name in named if said.args.get(name) in QUANTITIES]


def saying(finding: Finding, *more: Message) -> Finding:
    """The finding with further sentences; a sentence that it says already is not said twice."""
    messages = tuple({said.text: said for said in (*finding.messages, *more)}.values())
    return replace(finding, messages=messages, message=" ".join(said.text for said in messages))


def faces_of(entry: Mapping[str, Any]) -> tuple[Face, ...]:
    """The faces that a value of the whole interface names."""
    return tuple(Face(face["part"], face["face"], None, None) for face in entry.get("faces", ()))


def point(place: np.ndarray) -> tuple[float, float, float]:
    """(3,) as three plain numbers."""
    x, y, z = (float(c) for c in place)
    return x, y, z
