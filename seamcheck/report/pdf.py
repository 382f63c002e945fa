"""The page as PDF, printed by a browser that is on the machine."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path

from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.isolation.imports import program
from seamcheck.report.facts import Document
from seamcheck.report.fields import Fields
from seamcheck.report.html import render_html

BROWSERS = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "microsoft-edge",
    "msedge",
)
"""Commands that print a page without a window (all of one family; others have no such option)."""

PLACES = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    r"C:\Program Files\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
)

PAPERS = ("A4", "letter")

PAPER = "SEAMCHECK_PAPER"
"""Environment variable that names the paper where the caller does not: A4 (also without it) or letter."""


class NoBrowser(SeamcheckError):
    """No browser that can print was found."""

    def __str__(self) -> str:
        return (
            "A PDF is printed by a browser, and none was found (looked for chromium, chrome and edge). "
            "Install chromium, or name a browser in the environment variable SEAMCHECK_BROWSER, or write the "
            "page with --html and print it there."
        )


class PrintFailed(SeamcheckError):
    """The browser did not print the page."""

    def __init__(self, browser: str, why: str) -> None:
        super().__init__(browser, why)
        self.browser, self.why = browser, why

    def __str__(self) -> str:
        return f"{self.browser} did not print the page: {self.why} Write it with --html and print it there."


def find_browser() -> str | None:
    """Path of a browser that prints, None where there is none; SEAMCHECK_BROWSER goes first."""
    named = os.environ.get("SEAMCHECK_BROWSER")
    if named:
        return program(named)
    for name in (*BROWSERS, *PLACES):
        found = program(name)
        if found:
            return found
    return None


def render_pdf(
    document: Document, paper: str | None = None, fields: Fields | None = None, time_limit: float = 120.0
) -> bytes:
    """The printed page.

    Parameters
    ----------
    document : review document
    paper : 'A4' or 'letter'; None for the one that the environment variable SEAMCHECK_PAPER names, else A4
    fields : title, project ... of the report
    time_limit : seconds for the browser

    Raises
    ------
    NoBrowser, PrintFailed
    UsageError
        If there is no such paper.
    """
    paper = _paper(paper or os.environ.get(PAPER) or PAPERS[0])
    browser = find_browser()
    if browser is None:
        raise NoBrowser()
    with tempfile.TemporaryDirectory(prefix="seamcheck-", ignore_cleanup_errors=True) as folder:
        page, target = Path(folder, "review.html"), Path(folder, "review.pdf")
        page.write_text(render_html(document, paper=paper, fields=fields), encoding="utf-8", errors="replace")
        command = [
            browser, "--headless=new", "--disable-gpu", "--no-first-run", "--disable-background-networking",
            "--disable-sync", "--disable-extensions", f"--user-data-dir={Path(folder, 'profile')}",
            "--no-pdf-header-footer", "--virtual-time-budget=30000", f"--print-to-pdf={target}",
            page.as_uri(),
        ]  # fmt: skip
        if sys.platform.startswith("linux") and os.geteuid() == 0:
            command.insert(1, "--no-sandbox")  # the browser refuses to start its sandbox for the superuser
        try:
            done = subprocess.run(command, capture_output=True, timeout=time_limit, check=False)
        except subprocess.TimeoutExpired:
            raise PrintFailed(browser, f"it took longer than {time_limit:g} s.") from None
        except OSError as error:
            raise PrintFailed(browser, f"{error}.") from error
        if not target.is_file() or target.stat().st_size == 0:
            said = done.stderr.decode("utf-8", "replace").strip().splitlines() or ["it said nothing"]
            raise PrintFailed(browser, f"{said[-1]}.")
        return target.read_bytes()


def _paper(name: str) -> str:
    """The paper as it is called here, whatever its capitals."""
    for paper in PAPERS:
        if paper.lower() == name.strip().lower():
            return paper
    raise UsageError(f"There is no paper {name!r}; --paper and {PAPER} take {' or '.join(PAPERS)}.")
