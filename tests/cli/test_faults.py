"""A fault of seamcheck itself never looks like a verdict: exit code 2 and one sentence, whatever the command."""

import click
import pytest

from seamcheck.cli.group import COMMANDS, DEBUG, cli


class Fault(Exception):
    pass


def run(args, capfd):
    with pytest.raises(SystemExit) as left:
        cli.main(args)
    return left.value.code, capfd.readouterr()


@pytest.mark.parametrize("fault", [Fault("of\nits own"), RecursionError("deep"), MemoryError(), KeyError("joints")])
@pytest.mark.parametrize("name", COMMANDS)
def test_no_command_ends_in_a_traceback(name, fault, monkeypatch, capfd):
    command = cli.get_command(click.Context(cli), name)

    def breaks(*args, **more):
        raise fault

    monkeypatch.delenv(DEBUG, raising=False)
    monkeypatch.setattr(command, "invoke", breaks)
    monkeypatch.setattr(command, "parse_args", lambda context, args: [])
    code, said = run([name, "a", "b"], capfd)
    assert code == 2
    assert said.out == ""
    assert len(said.err.strip().splitlines()) == 1
    assert type(fault).__name__ in said.err
    monkeypatch.setenv(DEBUG, "1")
    code, said = run([name, "a", "b"], capfd)
    assert code == 2
    assert "Traceback" in said.err


def test_a_refusal_with_debug_is_still_a_refusal_after_its_traceback(tmp_path, capfd):
    code, said = run(
        ["review", str(tmp_path / "nothing.step"), "--collapse", "0.4", "--settings", "no.toml", "--debug"], capfd
    )
    assert code == 2
    assert "Traceback" in said.err
    assert "fault in seamcheck" not in said.err
    last = said.err.strip().splitlines()[-1]
    code, plain = run(["review", str(tmp_path / "nothing.step"), "--collapse", "0.4", "--settings", "no.toml"], capfd)
    assert (code, plain.err.strip()) == (2, last)
