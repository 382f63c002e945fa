"""What is measured over the whole interface of cover and base, not section by section.

Declarations and settings here load no numpy; ``seamcheck.interface.survey`` measures.
"""
