"""How many examples hypothesis tries: few while working, more where the slow tests run too."""

from __future__ import annotations

import pytest
from hypothesis import settings

settings.register_profile("quick", max_examples=25, deadline=None)
settings.register_profile("deep", max_examples=100, deadline=None)


def pytest_configure(config: pytest.Config) -> None:
    settings.load_profile("quick" if config.option.markexpr == "not slow" else "deep")
