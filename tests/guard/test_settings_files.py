"""Settings files and tables that they name may be a stranger's: bounded, plain, below their own folder, never shown."""

from __future__ import annotations

import os
import time

import pytest
from guard_runs import seamcheck

from seamcheck.errors import UsageError
from seamcheck.pipeline import settings_for
from seamcheck.scanning.review_settings import reviewers_settings
from seamcheck.settings.file import parse_settings, read_settings
from seamcheck.settings.guard import MOST_BYTES
from seamcheck.settings.settings import Settings

SECRET = "s3cret-of-the-machine"


def refused(path) -> str:
    with pytest.raises(UsageError) as caught:
        read_settings(path)
    return str(caught.value)


def refused_option(path) -> str:
    with pytest.raises(UsageError) as caught:
        Settings().changed({"tolerance.file": str(path)})
    return str(caught.value)


def with_table(folder, name):
    (folder / "seamcheck.toml").write_text(f'[tolerance]\nfile = "{name}"\n', encoding="utf-8")
    return folder / "seamcheck.toml"


@pytest.mark.parametrize("name", ["absolute", "../out/t.csv", "link.csv", "sub/../../out/t.csv"])
def test_a_table_outside_of_the_settings_own_folder_is_not_read(tmp_path, name):
    (tmp_path / "in/sub").mkdir(parents=True)
    (tmp_path / "out").mkdir()
    (tmp_path / "out/t.csv").write_text(f"{SECRET}\n")
    if name == "link.csv":
        (tmp_path / "in/link.csv").symlink_to(tmp_path / "out/t.csv")
    told = refused(with_table(tmp_path / "in", str(tmp_path / "out/t.csv") if name == "absolute" else name))
    assert SECRET not in told
    assert "below the folder of the settings file" in told
    assert "--tolerance file=" in told  # what to do
    assert "line 2" in told


def test_a_table_below_the_settings_own_folder_is_read(tmp_path):
    (tmp_path / "tables").mkdir()
    (tmp_path / "tables/t.csv").write_text("gap, 0.02\n")
    assert read_settings(with_table(tmp_path, "tables/t.csv")).tolerances == {"gap": 0.02}


@pytest.mark.parametrize(
    "row", [f"{SECRET}:x:0:0", f"{SECRET}, 0.1", f"rib_width, {SECRET}", f"rib_width, 0.1 {SECRET}", f"1, 2, {SECRET}"]
)
@pytest.mark.parametrize("way", ["settings", "option"])
def test_what_a_table_holds_is_never_shown(tmp_path, row, way):
    (tmp_path / "t.csv").write_text(row + "\n")
    told = refused(with_table(tmp_path, "t.csv")) if way == "settings" else refused_option(tmp_path / "t.csv")
    assert SECRET not in told
    assert "line 1" in told


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
@pytest.mark.parametrize("kind", ["pipe", "device", "folder"])
@pytest.mark.parametrize("what", ["settings", "table"])
def test_what_is_no_plain_file_is_refused_at_once(tmp_path, kind, what):
    place = tmp_path / ("seamcheck.toml" if what == "settings" else "t.csv")
    if kind == "pipe":
        os.mkfifo(place)
    elif kind == "device":
        place.symlink_to("/dev/zero")
    else:
        place.mkdir()
    began = time.process_time()
    told = refused(place) if what == "settings" else refused_option(place)
    assert "no plain file" in told
    assert time.process_time() - began < 2


def test_the_parent_never_hangs_on_a_pipe_beside_a_model(tmp_path):
    (tmp_path / "model.step").write_text("ISO-10303-21;")
    os.mkfifo(tmp_path / "t.csv")
    with_table(tmp_path, "t.csv")
    done = seamcheck("review", "model.step", cwd=tmp_path, timeout=300)
    assert done.returncode == 2
    assert b"no plain file" in done.stderr


@pytest.mark.parametrize("kind", ["broken link", "device", "folder"])
def test_what_bears_the_name_is_never_passed_by(tmp_path, kind):
    """Passed by, a file of sharper limits that an archive holds as a broken link would be a pass under the defaults."""
    place = tmp_path / "seamcheck.toml"
    place.mkdir() if kind == "folder" else place.symlink_to("/dev/zero" if kind == "device" else "gone.toml")
    with pytest.raises(UsageError, match=r"seamcheck\.toml: "):
        settings_for([tmp_path / "model.step"])
    with pytest.raises(UsageError, match=r"seamcheck\.toml: "):
        reviewers_settings(None, tmp_path, [tmp_path / "models"])


@pytest.mark.parametrize("holds", [f"password = {SECRET}", f"{SECRET} = 1", f'collapse = "{SECRET}"', "[[["])
def test_what_a_link_leads_to_is_never_shown(tmp_path, holds):
    (tmp_path / "secret").write_text(holds)
    (tmp_path / "models").mkdir()
    (tmp_path / "models/seamcheck.toml").symlink_to(tmp_path / "secret")
    for read in (
        lambda: settings_for([tmp_path / "models/model.step"]),
        lambda: reviewers_settings(None, tmp_path / "models", [tmp_path / "others"]),
    ):
        with pytest.raises(UsageError, match="a link to a file elsewhere") as caught:
            read()
        assert SECRET not in str(caught.value)
        assert "'" not in str(caught.value)  # not a character, not a key of it


def test_a_link_to_good_settings_is_read_and_passed_over_in_a_scanned_folder(tmp_path):
    (tmp_path / "common.toml").write_text("collapse = 0.3\n")
    (tmp_path / "models").mkdir()
    (tmp_path / "models/seamcheck.toml").symlink_to(tmp_path / "common.toml")
    assert settings_for([tmp_path / "models/model.step"]).collapse == 0.3
    settings, used, passed = reviewers_settings(None, tmp_path / "models", [tmp_path / "models"])
    assert (settings.collapse, used, passed) == (0.4, None, [tmp_path / "models/seamcheck.toml"])


def test_a_settings_file_has_a_size(tmp_path):
    (tmp_path / "seamcheck.toml").write_bytes(b"# " + b"x" * MOST_BYTES)
    assert "is larger than" in refused(tmp_path / "seamcheck.toml")
    (tmp_path / "t.csv").write_bytes(b"# " + b"x" * MOST_BYTES)
    assert "is larger than" in refused(with_table(tmp_path, "t.csv"))


BOMB_KEYS = "".join(f"k{n} = 1\n" for n in range(300_000))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("collapse = " + "9" * 400, "line 1: collapse must be"),
        ("collapse = " + "9" * 6000, "line 1"),
        ("[limits.rib-width]\nmin = " + "9" * 400, "line 2"),
        ("[scanner]\ndistance = " + "9" * 400, "line 2"),
        ("[clamp]\npressure = " + "9" * 400, "line 2"),
        ("[tolerance]\ngap = " + "9" * 400, "line 2"),
        ("[joint]\nbeam = [0, 0, " + "9" * 400 + "]", "line 2"),
        ('[[waivers]]\nrule = "rib-width"\nreason = "x"\nat = [0, 0, ' + "9" * 400 + "]", "line 4"),
        ("[material]\nwavelength = " + "9" * 400, "line 2"),
        (BOMB_KEYS, "is larger than"),
        (BOMB_KEYS[: MOST_BYTES - 10].rpartition("\n")[0], "There is no setting 'k0'"),
        ("x = " + "[" * 5000 + "]" * 5000, "nested more than"),
        ("a" + ".a" * 5000 + " = 1", "nested more than"),
        ("x = " + "{a=" * 3000 + "1" + "}" * 3000, "nested more than"),
        ("collapse = 0.4\x00", "line 1"),
        ("collapse = 0.4\nuntil = 2027-99-99", "line 2"),
    ],
    ids=lambda value: value[:14].replace("\n", " "),
)
def test_hostile_settings_are_one_sentence_at_once(tmp_path, text, says):
    (tmp_path / "seamcheck.toml").write_text(text, encoding="utf-8")
    began = time.process_time()
    told = refused(tmp_path / "seamcheck.toml")
    assert time.process_time() - began < 5
    assert says in told
    assert len(told) < 600
    assert "\n" not in told


def test_a_mark_at_the_start_is_no_fault(tmp_path):
    (tmp_path / "seamcheck.toml").write_bytes(b"\xef\xbb\xbfcollapse = 0.35\n")
    assert read_settings(tmp_path / "seamcheck.toml").collapse == 0.35


def test_long_numbers_of_options_are_one_sentence():
    for key in ("collapse", "rib-width.min", "scanner.distance", "tolerance.gap"):
        with pytest.raises(UsageError):
            Settings().changed({key: "9" * 400})
        with pytest.raises(UsageError):
            Settings().changed({key: 10**400})


def test_the_limits_of_size_leave_room_for_real_files():
    from seamcheck.settings.writing import as_toml

    text = as_toml()
    assert len(text.encode()) < MOST_BYTES / 4
    assert parse_settings(text).limits == Settings().limits
