"""Tolerances from a table file: read, checked, named with its line."""

from __future__ import annotations

import pytest

from seamcheck.errors import UsageError
from seamcheck.settings.file import read_settings
from seamcheck.settings.settings import Settings

TABLE = """\ufeffquantity; tolerance
# of our own moulds, medium class
rib_width; ±0.05 mm
Free-travel ; 0.004 in   # after the second shot
"cover_thickness"; 0.06
flatness_rib\t0.1

""".replace("Free-travel", "free-travel")


def test_a_table_beside_the_settings_file_is_read(tmp_path):
    (tmp_path / "moulds.csv").write_text(TABLE, encoding="utf-8")
    (tmp_path / "seamcheck.toml").write_text('[tolerance]\nfile = "moulds.csv"\nrib_width = 0.03\n', encoding="utf-8")
    found = read_settings(tmp_path / "seamcheck.toml").tolerances
    assert found == pytest.approx(
        {"rib_width": 0.03, "free_travel": 0.1016, "cover_thickness": 0.06, "flatness_rib": 0.1}
    )


def test_an_option_names_a_table_as_well(tmp_path):
    (tmp_path / "moulds.csv").write_text("gap, 0.02\n", encoding="utf-8")
    assert Settings().changed({"tolerance.file": str(tmp_path / "moulds.csv")}).tolerances == {"gap": 0.02}


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("rib_width, 0.05\nrib_widht, 0.1\n", "line 2: there is no such quantity. Did you mean 'rib_width'?"),
        ("rib_width, wide\n", "line 1: the tolerance of rib_width must be a number or a length, 0 or more"),
        ("rib_width, -0.1\n", "line 1: the tolerance of rib_width must be a number or a length, 0 or more"),
        ("rib_width\n", "line 1: a row has a quantity and its tolerance"),
        ("gap, 0.1\n\ngap, 0.2\n", "line 3: gap stands there twice"),
        ("1, 3, 0.05\n", "line 1: a row has a quantity and its tolerance"),
    ],
)
def test_a_wrong_row_is_named_with_its_line(tmp_path, text, says):
    (tmp_path / "t.csv").write_text(text, encoding="utf-8")
    (tmp_path / "seamcheck.toml").write_text('[tolerance]\nfile = "t.csv"\n', encoding="utf-8")
    with pytest.raises(UsageError) as caught:
        read_settings(tmp_path / "seamcheck.toml")
    assert says in str(caught.value)


@pytest.mark.parametrize(("content", "says"), [(None, "can't be read"), (b"\xff\xfe\x00", "not UTF-8")])
def test_a_table_that_can_not_be_read_is_named(tmp_path, content, says):
    if content is not None:
        (tmp_path / "t.csv").write_bytes(content)
    with pytest.raises(UsageError, match=says):
        Settings().changed({"tolerance": {"file": str(tmp_path / "t.csv")}})
