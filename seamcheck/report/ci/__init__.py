"""Outputs for continuous integration: SARIF, JUnit XML, Markdown and annotations, each for one review or many."""
