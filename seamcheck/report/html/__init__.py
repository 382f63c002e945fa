"""The review page: one self-contained HTML file made from a review document."""

from seamcheck.report.html.page import render_html

__all__ = ["render_html"]
