"""``seamcheck propose``: from parts that lie flat on each other, or a rib that breaks limits, to a rib that fits."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import click

from seamcheck.catalogue.voice import Voice, speaking, tr
from seamcheck.cli import review as one
from seamcheck.cli.compare import settings_options
from seamcheck.cli.outputs import voice_of, voice_options, written
from seamcheck.cli.shared import (
    SectionedCommand,
    file_options,
    one_sentence,
    option,
    run_limits,
    show,
    tell,
    wanted_files,
    write_file,
)

WRITE = "Write to files"
JOINT = "The joint (chosen if not given)"
DIMENSIONS = {
    "rib_width": "Width of the rib at the contact plane.",
    "rib_height": "Height of the rib above both trap floors.",
    "trap_inner": "Width of the inner flash trap.",
    "trap_outer": "Width of the outer flash trap.",
    "lowering": "How far the land beside the traps lies below the contact plane.",
}
OUTPUTS = {
    "step": "the proposed model; parts keep names and places",
    "tools": "the bodies that were cut away or added, as STEP, to use in your own CAD history",
    "dxf": "the dimensioned section as a drawing (needs ezdxf)",
    "json": "the proposal with the review that proves it, for other programs",
    "html": "the review page of the proposed model",
}


def _joint_options(command: Any) -> Any:
    for name, what in reversed(DIMENSIONS.items()):
        flag = f"--{name.replace('_', '-')}"
        command = option(flag, name, metavar="MM", type=float, section=JOINT, help=what)(command)
    return command


@click.command(cls=SectionedCommand, name="propose", short_help="Propose a weld rib, or mend one.")
@click.argument("models", nargs=-1, required=True, metavar="MODEL...", type=click.Path(path_type=Path))
@_joint_options
@option("--rib-on", type=click.Choice(["base", "cover"]), default="base", show_default=True, section=JOINT,
        help="The part that the rib is cut out of.")  # fmt: skip
@option("--draft", metavar="DEGREES", type=float, default=0.5, show_default=True, section=JOINT,
        help="Draft of the rib's flanks and the traps' walls.")  # fmt: skip
@option("--lip", metavar="MM", type=float, section=JOINT,
        help="Least width of the lip between a trap and the border of the contact. [default: 0.5]")  # fmt: skip
@option("--open", "open_sides", multiple=True, type=click.Choice(["inner", "outer"]), section=JOINT,
        help="Leave out the lip on this side; flash shows there.")  # fmt: skip
@file_options(OUTPUTS, WRITE)
@settings_options
@voice_options("terminal and --html")
@option("--quiet", "-q", is_flag=True, section=one.SHOW, help="Only the outcome, in one line.")
@run_limits(one.RUN, "each step")
@option("--debug", is_flag=True, section=one.RUN, help="On an error show the traceback.")
@one_sentence
def command(
    models: tuple[Path, ...],
    settings_file: Path | None,
    no_settings_file: bool,
    rib_on: str,
    draft: float,
    lip: float | None,
    open_sides: tuple[str, ...],
    quiet: bool,
    time_limit: float | None,
    memory_limit: float | None,
    debug: bool,
    **options: Any,
) -> None:
    """Propose a weld rib with flash traps for two parts that lie flat on each other, or mend a rib that breaks limits.

    MODEL is one assembly or several files that share a frame. The rib is cut out of the base along the whole contact:
    the land beside it is lowered so that the cover can sink, and a flash trap runs on each side. Dimensions are chosen
    for the widest margin to the nearest limit of the rules, then for the least material cut away. The proposed model
    is reviewed as any other; only one that breaks no must-fix limit is called a proposal. Where there is no
    room, the answer says where, how many millimetres are missing, and what would help. Where there is a rib already,
    only what breaks a limit is changed: a trap's floor or wall, a lip, the rib's width, the cover over it.

    \b
    seamcheck propose housing.step --step proposed.step --dxf section.dxf
    seamcheck propose lid.step case.step --rib-width 1.2 --tools tools.step

    Exit code: 0 proposed or nothing to do, 1 no proposal that holds, 2 not reviewed or wrong use.
    """
    from seamcheck.isolation.loading import load_little

    load_little()
    from seamcheck.pipeline import settings_for
    from seamcheck.proposal import text
    from seamcheck.proposal.language import spoken_proposal
    from seamcheck.proposal.propose import propose

    wanted = wanted_files(options, OUTPUTS, models, "the model")
    settings = one.with_options(settings_for(models, settings_file, not no_settings_file), options)
    fixed = {name: options[name] for name in DIMENSIONS if options[name] is not None}
    with one._progress(models) as progress:
        result = propose(
            list(models), settings, fixed=fixed, draft=draft, lip=lip, open_sides=open_sides, rib_on=rib_on,
            progress=progress,
            time_limit=time_limit, memory_limit=memory_limit, with_view="html" in wanted,
        )  # fmt: skip
    voice = voice_of(options)
    with speaking(voice):
        told = spoken_proposal(result.document)
        show(text.one_line(told) if quiet else text.full_report(told))
    for name, path in wanted.items():
        content = _make(name, result, voice)
        if content:
            write_file(path, content)
            tell(written(path, voice))
            continue
        with speaking(voice):
            tell(tr("Not written: {file}, there is no proposed joint.", file=path), err=True)
    raise SystemExit(result.exit_code)


def _make(name: str, result: Any, voice: Voice) -> str | bytes:
    if name == "json":
        return str(result.to_json())
    if not result.step:
        return b""
    if name in ("step", "tools"):
        content: bytes = getattr(result, name)
        return content
    if name == "dxf":
        from seamcheck.proposal.drawing import render_dxf

        return render_dxf(result.document)
    from seamcheck.proposal.language import spoken_proposal
    from seamcheck.report.html import render_html
    from seamcheck.report.language import spoken

    with speaking(voice):
        remedies = [(one.rule, one.fits, one.says) for one in spoken_proposal(result.document).remedies]
        reviewed = spoken(result.review.document)
        return render_html(reviewed, as_drawn=result.as_drawn, remedies=remedies)
