"""A scan under other limits takes what was measured from the scan before."""

import hashlib
from datetime import date

import pytest
from msgspec.structs import replace

from seamcheck.samples import samples
from seamcheck.scanning.job import Job, JobFile, Outcome, review_job
from seamcheck.settings.settings import Settings


def test_with_other_limits_a_model_is_not_measured_again(tmp_path, monkeypatch):
    file = next(s.file for s in samples() if s.name == "rib-height")
    place = JobFile(file.name, str(file), None, hashlib.sha256(file.read_bytes()).hexdigest())

    def reviewed(kept: str, settings: Settings) -> Outcome:
        job = Job("k", "v", (place,), replace(settings, today=date(2026, 1, 1)), "none", 60, 4000, 10**6, kept)
        return review_job(job, lambda *stage: None)

    other = Settings().changed({"rib-height.severity": "note", "sink-travel.severity": "note"})
    first, fresh = reviewed(str(tmp_path / "kept"), Settings()), reviewed("", other)
    monkeypatch.setattr("seamcheck.pipeline.review_model", lambda *a, **k: pytest.fail("measured again"))
    again = reviewed(str(tmp_path / "kept"), other)
    assert (first.digest.review["verdict"], again.digest.review["verdict"]) == ("fail", "pass")
    assert again.digest == fresh.digest
