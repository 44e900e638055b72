"""The demo study before its logs are read into it."""

from core import edits
from core.study import Study

PART = "hose clip"
BED_C = 60.0


def demo_study(study_id: str = "demo") -> Study:
    """An empty study with the demo's name, part and bed temperature, marked as invented."""
    study = edits.new_study(study_id, name="Hose clip study", invented=True).study
    study = edits.rename_part(study, PART).study
    return edits.set_bed_c(study, BED_C).study
