"""English."""

from planner.text.en import cautions, checks, checks_pipeline, checks_works, run, studies
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = (
    run.SENTENCES
    | studies.SENTENCES
    | checks.SENTENCES
    | checks_pipeline.SENTENCES
    | checks_works.SENTENCES
    | cautions.SENTENCES
)
