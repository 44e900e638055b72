"""Every table of a study, each in full for files and rounded for readers."""

from core.report.tables.method import method_table
from core.report.tables.of_study import StudyTable, study_table, study_tables, tables_there

__all__ = ["StudyTable", "method_table", "study_table", "study_tables", "tables_there"]
