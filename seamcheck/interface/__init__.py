"""What is measured over the whole interface of cover and base, not section by section."""

from seamcheck.interface.survey import survey_interface

__all__ = ["survey_interface"]
