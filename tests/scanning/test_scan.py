"""A scan with workers that review nothing: what is found, kept, reviewed again, told and refused."""

import csv
import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from scan_fakes import Fakes, document, dump, model, rows

import seamcheck
from seamcheck.errors import UsageError
from seamcheck.scanning import files as files_module
from seamcheck.scanning import run as run_module
from seamcheck.scanning import store as store_module
from seamcheck.scanning.errors import ScanStopped
from seamcheck.scanning.store import Store, open_to_read
from seamcheck.settings.file import read_settings

HERE = Path(__file__).parent


@pytest.fixture
def place(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "in").mkdir()
    return tmp_path


def scan(place, workers=None, **options):
    """A scan of in/ into out/; returns its result and the jobs that it gave out."""
    workers = workers or Fakes()
    result = seamcheck.scan(place / "in", place / "out", workers=workers, **options)
    assert workers.closed
    return result, workers.jobs


def paths(place):
    return dict(rows(place / "out", "SELECT path, coalesce(reason_code, verdict) FROM results ORDER BY path"))


# Which models


def test_every_file_becomes_a_row_whatever_it_is(place):
    found = place / "in"
    model(found, "a/ws-1.step", "fail", 1)
    model(found, "a/b/WS-2.STP", "pass", 2)
    model(found, "plain.stpz", "pass", 3)
    model(found, "single.step", "refused", 4)
    (found / "lfs.step").write_text("version https://git-lfs.github.com/spec/v1\noid sha256:00\nsize 3\n")
    (found / "link.step").symlink_to(found / "a/ws-1.step")
    os.mkfifo(found / "pipe.step")
    (found / "letter.pdf").write_text("x")
    (found / ".git").mkdir()
    model(found, ".git/x.step")
    result, jobs = scan(place)
    assert paths(place) == {
        "a/ws-1.step": "fail", "a/b/WS-2.STP": "pass", "plain.stpz": "pass", "single.step": "single-part",
        "lfs.step": "lfs-pointer", "link.step": "link", "pipe.step": "unreadable",
    }  # fmt: skip
    assert result.models == 7
    assert dict(result.verdicts) == {"fail": 1, "pass": 2, "not-reviewed": 4}
    assert dict(result.other_files) == {".pdf": 1}
    assert len(jobs) == 4


def test_links_are_followed_when_asked_and_circles_end(place):
    model(place / "elsewhere", "x.step")
    (place / "in/there").symlink_to(place / "elsewhere")
    (place / "in/round").symlink_to(place / "in")
    scan(place, follow_links=True)
    assert list(paths(place)) == ["there/x.step"]


def test_patterns_replace_the_default_ones(place):
    model(place / "in", "lid-1.step")
    model(place / "in", "Case-1.STEP")
    scan(place, patterns=["case-*.step"])
    assert list(paths(place)) == ["Case-1.STEP"]
    with pytest.raises(UsageError, match="files, not folders"):
        scan(place, patterns=["a/*.step"])


def test_pairs_by_their_names_and_by_a_list(place):
    for name in ("ws-1-lid.step", "ws-1-case.stp", "ws-2-lid.step", "top.step", "bottom.step"):
        model(place / "in", f"s/{name}", n=hash(name) % 100)
    (place / "pairs.txt").write_text("# cover, base\n\nin/s/top.step, in/s/bottom.step\n")
    _, jobs = scan(place, pairs=["lid=case"], pair_list=place / "pairs.txt")
    assert sorted(paths(place)) == ["s/top.step + bottom.step", "s/ws-1-lid.step + ws-1-case.stp", "s/ws-2-lid.step"]
    assert sorted([f.name for f in job.files] for job in jobs) == [
        ["top.step", "bottom.step"], ["ws-1-lid.step", "ws-1-case.stp"], ["ws-2-lid.step"],
    ]  # fmt: skip


@pytest.mark.parametrize(("text", "words"), [("a.step\n", "line 1"), ("a.step, a.step\n", "different files")])
def test_a_list_of_pairs_that_makes_no_sense_names_its_line(place, text, words):
    (place / "pairs.txt").write_text(text)
    with pytest.raises(UsageError, match=words):
        scan(place, pair_list=place / "pairs.txt")


def test_a_listed_file_that_is_not_there_is_a_row(place):
    model(place / "in", "top.step")
    (place / "in/pairs.txt").write_text("top.step, bottom.step\n")
    scan(place, pair_list=place / "in/pairs.txt")
    assert paths(place) == {"top.step + bottom.step": "unreadable"}


def test_suppliers_are_the_first_folder_below(place):
    model(place / "in", "north/deep/a.step", n=1)
    model(place / "in", "b.step", n=2)
    with zipfile.ZipFile(place / "in/box.zip", "w") as archive:
        archive.writestr("inner/c.step", "ISO-10303-21;\n/* pass 3 */\nEND-ISO-10303-21;")
    (place / "in/south").mkdir()
    os.link(place / "in/box.zip", place / "in/south/box.zip")

    class Unpacking(Fakes):
        def outcome(self, job):
            from msgspec.structs import replace

            target = place / "unpacked.step"
            if job.files[0].member is not None:
                from seamcheck.scanning.archives import read

                target.write_bytes(read(Path(job.files[0].place), job.files[0].member, 10**6))
                job = replace(job, files=(replace(job.files[0], place=str(target)),))
            return super().outcome(job)

    scan(place, Unpacking())
    found = dict(rows(place / "out", "SELECT path, supplier FROM results"))
    assert found == {
        "north/deep/a.step": "north", "b.step": "", "box.zip/inner/c.step": "", "south/box.zip/inner/c.step": "south",
    }  # fmt: skip


# Only what changed


def test_a_second_scan_reviews_only_what_changed(place):
    a = model(place / "in", "a.step", "pass", 1)
    model(place / "in", "b.step", "fail", 2)
    assert len(scan(place)[1]) == 2
    before = dump(place / "out")
    assert scan(place)[1] == []
    assert dump(place / "out") == before
    model(place / "in", "a.step", "fail", 3)
    model(place / "in", "copy/b.step", "fail", 2)  # the same name and content: the same review
    assert [job.files[0].place for job in scan(place)[1]] == [str(a)]
    assert len(scan(place, collapse=0.35)[1]) == 2
    assert len(scan(place, again=True)[1]) == 2


def test_a_file_is_read_again_only_where_it_may_have_changed(place, monkeypatch):
    read = []
    of_before = files_module.hash_file
    monkeypatch.setattr(run_module, "hash_file", lambda path: read.append(path.name) or of_before(path))
    monkeypatch.setattr(files_module, "_SETTLED_NS", -(10**12))  # these files need not be two seconds old

    def read_by_a_scan():
        read.clear()
        jobs = scan(place)[1]
        return sorted(read), [Path(job.files[0].place).name for job in jobs]

    a, b = (model(place / "in", name, "pass", n) for n, name in enumerate(("a.step", "b.step")))
    times = a.stat()
    assert read_by_a_scan() == (["a.step", "b.step"], ["a.step", "b.step"])
    assert read_by_a_scan() == ([], [])
    model(place / "in", "a.step", "pass", 7)  # as long as before, and as old:
    os.utime(a, ns=(times.st_atime_ns, times.st_mtime_ns))
    assert a.stat().st_size == times.st_size
    assert read_by_a_scan() == (["a.step"], ["a.step"])
    twin = model(place / "in", "twin.part", "pass", 8)
    os.utime(twin, ns=(times.st_atime_ns, times.st_mtime_ns))
    os.replace(twin, a)  # another file in its place
    assert read_by_a_scan() == (["a.step"], ["a.step"])
    b.chmod(0o600)
    assert read_by_a_scan() == (["b.step"], [])


def test_a_file_that_changed_just_now_is_read_again(place, monkeypatch):
    read = []
    of_before = files_module.hash_file
    monkeypatch.setattr(run_module, "hash_file", lambda path: read.append(path.name) or of_before(path))
    model(place / "in", "a.step", "pass", 1)
    scan(place)
    assert rows(place / "out", "SELECT count(*) FROM stamps") == [(0,)]
    scan(place)
    assert read == ["a.step", "a.step"]


def test_what_is_gone_leaves_the_list_and_comes_back_without_a_review(place):
    a = model(place / "in", "a.step", "fail", 1)
    model(place / "in", "b.step", "fail", 2)
    scan(place)
    content = a.read_bytes()
    a.unlink()
    scan(place)
    assert list(paths(place)) == ["b.step"]
    a.write_bytes(content)
    assert scan(place)[1] == []
    assert list(paths(place)) == ["a.step", "b.step"]


def test_copies_of_one_model_share_a_review(place):
    for folder in "abc":
        model(place / "in", f"{folder}/same.step", "fail")
    assert len(scan(place)[1]) == 1
    assert rows(place / "out", "SELECT count(*), count(DISTINCT review) FROM models") == [(3, 1)]


def test_a_page_that_is_missing_is_made_again(place):
    model(place / "in", "a.step", "fail")
    scan(place)
    (page,) = (place / "out/pages").glob("*.html")
    page.unlink()
    assert len(scan(place)[1]) == 1
    assert page.is_file()
    page.unlink()
    assert scan(place, pages="none")[1] == []


def test_settings_that_change_a_review_change_its_key():
    from datetime import date

    from msgspec.structs import replace

    from seamcheck.scanning.review_settings import settings_hash
    from seamcheck.settings.material import MaterialSettings
    from seamcheck.settings.waivers import Waiver

    plain = seamcheck.Settings()
    waived = replace(plain, waivers=(Waiver("gap", "seen", contour="c1", until=date(2027, 6, 30)),))
    different = [
        plain,
        plain.changed({"collapse": 0.5}),
        plain.changed({"rib-width.min": 0.61}),
        plain.changed({"cover": "lid"}),
        plain.changed({"corner-radius.severity": "note"}),
        replace(plain, material=MaterialSettings(None, None, ((2.0, 40.0),))),
        waived,
        replace(waived, today=date(2027, 7, 1)),
    ]
    assert len({settings_hash(settings) for settings in different}) == 8
    assert settings_hash(replace(plain, today=date(2027, 7, 1))) == settings_hash(plain)
    assert settings_hash(replace(waived, today=date(2027, 6, 30))) == settings_hash(
        replace(waived, today=date(2027, 1, 1))
    )


def test_time_and_memory_that_ran_out_are_tried_again_with_more(place):
    from msgspec.structs import replace

    class Slow(Fakes):
        def outcome(self, job):
            again = "with-higher-limits" if job.time_limit < 100 else "no"
            return replace(super().outcome(job), again=again)

    model(place / "in", "a.step", "refused")
    assert len(scan(place, Slow(), time_limit=10)[1]) == 1
    assert len(scan(place, Slow(), time_limit=10)[1]) == 0
    assert len(scan(place, Slow(), time_limit=120)[1]) == 1
    assert len(scan(place, Slow(), time_limit=600)[1]) == 0


# What comes to a bad end


def test_a_lost_review_is_tried_twice_and_again_by_the_next_scan(place):
    model(place / "in", "a.step", "lost", 1)
    model(place / "in", "b.step", "once-lost", 2)
    model(place / "in", "c.step", "fail", 3)
    assert len(scan(place)[1]) == 2 + 2 + 1
    assert paths(place) == {"a.step": "crashed", "b.step": "fail", "c.step": "fail"}
    assert rows(place / "out", "SELECT tries FROM efforts JOIN models USING (review) ORDER BY path") == [
        (2,),
        (2,),
        (1,),
    ]
    assert [job.files[0].name for job in scan(place)[1]] == ["a.step", "a.step"]


def test_a_model_that_changes_while_it_is_reviewed_counts_as_what_was_read(place):
    import hashlib

    from msgspec.structs import replace

    file = model(place / "in", "a.step", "fail", 1)

    class Changing(Fakes):
        def outcome(self, job):
            model(place / "in", "a.step", "fail", 2)
            outcome = super().outcome(job)
            read = hashlib.sha256(file.read_bytes()).hexdigest()
            return replace(outcome, digest=replace(outcome.digest, files=(read,)))

    scan(place, Changing())
    assert rows(place / "out", "SELECT state FROM models") == [("reviewed",)]
    assert scan(place)[1] == []  # its new content is known


def test_a_copy_of_a_model_that_changes_meanwhile_is_reviewed_all_the_same(place):
    import hashlib

    from msgspec.structs import replace

    first = model(place / "in", "a/same.step", "fail", 1)
    model(place / "in", "b/same.step", "fail", 1)

    class Changing(Fakes):
        def outcome(self, job):
            if job.files[0].place == str(first):
                model(place / "in", "a/same.step", "fail", 2)
            outcome = super().outcome(job)
            read = hashlib.sha256(Path(job.files[0].place).read_bytes()).hexdigest()
            return replace(outcome, digest=replace(outcome.digest, files=(read,)))

    scan(place, Changing())
    assert rows(place / "out", "SELECT state, count(*), count(DISTINCT review) FROM models") == [("reviewed", 2, 2)]


def test_a_review_that_the_store_does_not_take_costs_its_own_row(place):
    from msgspec.structs import replace

    class Odd(Fakes):
        def outcome(self, job):
            outcome = super().outcome(job)
            rows = outcome.digest
            if job.files[0].name == "b.step":  # two findings of one number
                rows = replace(rows, findings=[rows.findings[0], rows.findings[0]])
            return replace(outcome, digest=rows)

    for n, name in enumerate("abc"):
        model(place / "in", f"{name}.step", "fail", n)
    scan(place, Odd())
    assert paths(place) == {"a.step": "fail", "b.step": "crashed", "c.step": "fail"}
    assert "can't be stored" in rows(place / "out", "SELECT reason FROM results WHERE path = 'b.step'")[0][0]


def test_no_room_to_start_a_child_is_told(place):
    import errno

    class NoHandles(Fakes):
        def outcome(self, job):
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    model(place / "in", "a.step")
    with pytest.raises(ScanStopped, match="The disk is full"):
        scan(place, NoHandles())


@pytest.mark.parametrize("options", [{"cluster": "tcp://x:1", "jobs": 2}, {"shared": True}, {"pages": "some"}])
def test_options_that_do_not_go_together(place, options):
    with pytest.raises(UsageError):
        seamcheck.scan(place / "in", place / "out", **options)


def test_ctrl_c_keeps_what_is_done_and_writes_the_lists(place):
    for n in range(6):
        model(place / "in", f"{n}.step", "interrupt" if n == 4 else "fail", n)
    with pytest.raises(KeyboardInterrupt):
        scan(place, Fakes(count=1))
    done = [path for path, state in rows(place / "out", "SELECT path, state FROM models") if state == "reviewed"]
    assert done
    assert "stopped before its end" in (place / "out/index.html").read_text()
    assert rows(place / "out", "SELECT how FROM scans") == [("stopped",)]
    model(place / "in", "4.step", "fail", 4)
    _, jobs = scan(place)
    assert len(jobs) == 6 - len(done)
    assert rows(place / "out", "SELECT how FROM scans ORDER BY scan") == [("stopped",), ("complete",)]


KILLED = """
import sys
sys.path.insert(0, {here!r})
from scan_fakes import Fakes
import seamcheck
seamcheck.scan("in", "out", workers=Fakes(kill_after={after}))
"""


def test_a_killed_scan_loses_no_finished_review(place):
    for n in range(8):
        model(place / "in", f"{n}.step", "fail", n)
    for after in (3, 2):
        code = KILLED.format(here=str(HERE), after=after)
        env = os.environ | {"PYTHONPATH": os.pathsep.join(sys.path)}
        ended = subprocess.run([sys.executable, "-c", code], cwd=place, env=env)
        assert ended.returncode == -9
    before = rows(place / "out", "SELECT count(*) FROM reviews")[0][0]
    assert before >= 3
    _, jobs = scan(place)
    assert len(jobs) == 8 - before
    whole = place / "whole"
    seamcheck.scan(place / "in", whole, workers=Fakes())
    assert dump(place / "out") == dump(whole)


def test_two_scans_into_one_folder(place):
    model(place / "in", "a.step")

    class Meanwhile(Fakes):
        def outcome(self, job):
            with pytest.raises(ScanStopped, match=rf"Another scan is writing into .*process {os.getpid()} on"):
                seamcheck.scan(place / "in", place / "out", workers=Fakes())
            return super().outcome(job)

    scan(place, Meanwhile())
    assert paths(place) == {"a.step": "fail"}


@pytest.mark.parametrize("table", ["reviews", "findings", "pages"])
def test_a_full_disk_is_told_and_leaves_the_store_whole(place, table, monkeypatch):
    """SQLite's own way to a full disk: PRAGMA max_page_count (SQLite documentation, pragma.html)."""
    for n in range(40):
        model(place / "in", f"{n}.step", "fail", n)
    make = Store.__init__

    def small(self, *args, **more):
        make(self, *args, **more)
        self._db.execute("PRAGMA max_page_count = 120")

    monkeypatch.setattr(Store, "__init__", small)
    with pytest.raises(ScanStopped, match=r"The disk is full: .*store\.sqlite can't be written.*kept"):
        scan(place)
    monkeypatch.setattr(Store, "__init__", make)
    kept = len(dump(place / "out")["reviews"])
    assert 0 < kept < 40
    _, jobs = scan(place)
    assert len(jobs) == 40 - kept
    assert rows(place / "out", f"SELECT count(DISTINCT review) FROM {table}") == [(40,)]


def test_a_full_disk_under_a_page_or_the_index(place, monkeypatch):
    import errno

    model(place / "in", "a.step")

    def full(handle):
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr("seamcheck.scanning.files.os.fsync", full)
    with pytest.raises(ScanStopped, match="The disk is full"):
        scan(place)
    assert rows(place / "out", "SELECT count(*) FROM reviews") == [(0,)]  # its page could not be written
    assert not list((place / "out").rglob("*.part"))


def test_a_folder_that_can_not_be_written(place):
    model(place / "in", "a.step")
    with pytest.raises(ScanStopped, match="can't be written"):  # no folder can be made there, not even by root
        seamcheck.scan(place / "in", "/proc/out", workers=Fakes())
    (place / "file").write_text("x")
    with pytest.raises(UsageError, match="is a file"):
        seamcheck.scan(place / "in", place / "file", workers=Fakes())


def test_a_store_of_an_older_form_is_put_aside_and_the_scan_goes_on(place):
    import sqlite3

    model(place / "in", "a.step")
    scan(place)
    file, said = place / "out" / store_module.NAME, []
    for n, name in enumerate(("store-version-0.sqlite", "store-version-0-2.sqlite")):
        db = sqlite3.connect(file)
        db.execute("PRAGMA user_version = 0")
        db.close()
        before = file.read_bytes()
        with pytest.raises(ScanStopped, match="puts it aside"):
            open_to_read(place / "out")
        result, jobs = scan(place, on_progress=lambda progress: said.append(progress.note))
        assert (place / "out" / name).read_bytes() == before
        assert result.verdicts["fail"] == 1
        assert len(jobs) == 1
        assert any(name in note for note in said), n


def test_stores_of_other_kinds_and_versions_stay_untouched(place):
    import sqlite3

    model(place / "in", "a.step")
    scan(place)
    file = place / "out" / store_module.NAME
    for pragma, words in (
        (f"user_version = {store_module.SCHEMA_VERSION + 1}", "a newer seamcheck"),
        ("application_id = 5", "another program"),
    ):
        db = sqlite3.connect(file)
        db.execute(f"PRAGMA {pragma}")
        db.close()
        before = file.read_bytes()
        with pytest.raises(ScanStopped, match=words):
            scan(place)
        assert file.read_bytes() == before
    file.write_bytes(b"no database" * 1000)
    with pytest.raises(ScanStopped, match="not the store of a scan"):
        scan(place)


def test_another_program_that_reads_is_waited_for(place, monkeypatch):
    import sqlite3
    import threading

    model(place / "in", "a.step")
    scan(place)
    reader = sqlite3.connect(place / "out" / store_module.NAME, check_same_thread=False)
    reader.execute("BEGIN")
    reader.execute("SELECT * FROM models").fetchall()
    threading.Timer(2.5, reader.close).start()
    model(place / "in", "b.step", n=2)
    told = []
    scan(place, on_progress=lambda progress: told.append(progress.note))
    assert any("holds" in note for note in told)
    assert list(paths(place)) == ["a.step", "b.step"]


# Settings of the reviewer only


def test_settings_beside_models_are_named_and_never_used(place, capsys):
    model(place / "in", "s/a.step")
    (place / "in/s/seamcheck.toml").write_text("collapse = 0.1\n")
    result, jobs = scan(place)
    assert jobs[0].settings.collapse == 0.4
    assert [Path(name).parts[-3:] for name in result.ignored_settings] == [("in", "s", "seamcheck.toml")]
    assert "in/s/seamcheck.toml" in (place / "out/index.html").read_text()


def test_settings_come_from_the_working_folder_or_the_out_folder_or_the_option(place, monkeypatch):
    model(place / "in", "a.step")
    (place / "seamcheck.toml").write_text("collapse = 0.31\n")
    assert scan(place)[1][0].settings.collapse == 0.31
    (place / "out/seamcheck.toml").write_text("collapse = 0.32\n")
    assert scan(place)[1][0].settings.collapse == 0.32
    (place / "in/own.toml").write_text("collapse = 0.33\n")
    assert scan(place, settings=place / "in/own.toml")[1][0].settings.collapse == 0.33
    assert scan(place, settings=read_settings(place / "in/own.toml"), collapse=0.34)[1][0].settings.collapse == 0.34
    (place / "out/seamcheck.toml").unlink()
    (place / "in/seamcheck.toml").write_text("collapse = 0.1\n")
    monkeypatch.chdir(place / "in")  # who stands in the scanned folder has not chosen what lies there
    assert scan(place, again=True)[1][0].settings.collapse == 0.4


# The store and the lists


def test_the_store_holds_what_the_document_says(place):
    model(place / "in", "a.step", "fail")
    scan(place)
    with open_to_read(place / "out") as store:
        (row,) = store.results()
        document = store.document(row["review"])
        assert row["must_fix"] == sum(f["severity"] == "must-fix" and not f["waived"] for f in document["findings"])
        found = {f["id"]: f for f in document["findings"]}
        for finding in store.rows("SELECT * FROM findings"):
            told = found[finding["finding"]]
            assert [finding["x"], finding["y"], finding["z"]] == (told["at"] or [None] * 3)
            assert (finding["value"], finding["rule"], finding["message"]) == (
                told["value"],
                told["rule"],
                told["message"],
            )
        summary = document["joints"][0]["summary"]
        for quantity in store.rows("SELECT * FROM quantities WHERE contour = ''"):
            told = summary[quantity["quantity"]]
            assert (quantity["least"], quantity["median"], quantity["most"]) == (
                told["min"],
                told["median"],
                told["max"],
            )
        assert {q["quantity"] for q in store.rows("SELECT quantity FROM quantities")} == {
            key for key, value in summary.items() if value is not None
        }


HOSTILE = "=cmd|' <img src=x onerror=alert(1)>' {{7*7}}';DROP TABLE models;--.step"


def test_names_from_strangers_stay_text(place):
    model(place / "in", f"@SUM(A1)/{HOSTILE}", "hostile")
    model(place / "in", "new\nline\x1b[31m.step", "pass", 2)
    with open(os.fsencode(place / "in") + b"/not-utf8-\xff.step", "wb") as file:
        file.write(b"ISO-10303-21;\n/* pass 3 */\nEND-ISO-10303-21;\n")
    result, _ = scan(place)
    assert dict(result.verdicts) == {"fail": 1, "pass": 2}
    page = (place / "out/index.html").read_text()
    assert "<img src=x" not in page
    assert "{{7" not in page
    with (place / "out/index.csv").open(newline="") as file:
        table = list(csv.DictReader(file))
    assert [row["path"] for row in table] == [
        "'@SUM(A1)/" + HOSTILE, "new\\nline\\x1b[31m.step", "not-utf8-\\xff.step",
    ]  # fmt: skip
    assert not [cell for row in table for cell in row.values() if cell.startswith(("=", "+", "@", "\t", "\r"))]
    (name,) = [file.name for file in (place / "out/pages").iterdir()]
    assert name.isascii()
    assert set(name) <= set("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.")


def test_names_that_are_spelled_alike_are_two_rows(place):
    model(place / "in", "a-\\xff.step", "pass", 1)
    for name in (b"a-\xff.step", b"b.\xfe", b"b.\xff"):
        with open(os.fsencode(place / "in") + b"/" + name, "wb") as file:
            file.write(b"ISO-10303-21;\n/* pass 2 */\nEND-ISO-10303-21;\n")
    result, jobs = scan(place)
    assert sorted(paths(place)) == ["a-\\xff.step", "a-\\xff.step (2)"]
    assert len(jobs) == 2
    assert result.other_files.total() == 2


def test_models_of_one_name_have_pages_of_their_own(place):
    model(place / "in", "a/ws.step", "fail", 1)
    model(place / "in", "b/ws.step", "fail", 2)
    scan(place)
    assert len(list((place / "out/pages").iterdir())) == 2


def test_the_table_has_a_line_for_each_model_worst_first(place):
    model(place / "in", "z.step", "fail", 1)
    model(place / "in", "a.step", "pass", 2)
    model(place / "in", "m.step", "refused", 3)
    scan(place)
    with (place / "out/index.csv").open(newline="") as file:
        table = list(csv.DictReader(file))
    assert [(row["path"], row["verdict"]) for row in table] == [
        ("z.step", "fail"), ("m.step", "not-reviewed"), ("a.step", "pass"),
    ]  # fmt: skip
    least = document("fail")["joints"][0]["summary"]["rib_width"]["min"]
    assert float(table[0]["rib_width_mm_least"]) == least
    assert (place / "out" / table[0]["page"]).is_file()


@pytest.mark.parametrize(
    ("kinds", "code", "strict", "accepted"),
    [
        (["pass", "pass"], 0, 0, 0),
        (["pass", "fail"], 1, 1, 1),
        (["pass", "refused"], 2, 2, 0),
        (["fail", "refused"], 1, 1, 1),
        (["refused"], 2, 2, 2),
        ([], 2, 2, 2),
    ],
)
def test_exit_codes(place, kinds, code, strict, accepted):
    for n, kind in enumerate(kinds):
        model(place / "in", f"{n}.step", kind, n)
    result, _ = scan(place)
    assert result.exit_code() == code
    assert result.exit_code(strict=True) == strict
    assert result.exit_code(accept=["single-part"]) == accepted
    assert result.exit_code(accept=["no-seam"]) == code
    assert result.exit_code(accept=["any"]) == accepted


@pytest.mark.parametrize(
    ("folders", "words"), [(["nothing"], "no folder"), (["in/a.step"], "seamcheck review"), (["in", "in/b"], "lies in")]
)
def test_wrong_folders_are_told(place, folders, words):
    model(place / "in", "a.step")
    (place / "in/b").mkdir()
    with pytest.raises(UsageError, match=words):
        seamcheck.scan(folders, place / "out", workers=Fakes())


def test_the_out_folder_may_lie_in_a_scanned_one(place):
    model(place / "in", "a.step")
    for _ in range(2):
        seamcheck.scan(place / "in", place / "in/out", workers=Fakes())
    assert json.loads(rows(place / "in/out", "SELECT folders FROM scans")[0][0]) == [str(place / "in")]
    assert rows(place / "in/out", "SELECT path FROM models") == [("a.step",)]
