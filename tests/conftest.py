"""How many examples hypothesis tries: few while working, more where the slow tests run too.

The draws are the same at each run, so that a change is judged by what it changed; `--hypothesis-profile=explore` draws
others each time.
"""

from __future__ import annotations

import pytest
from hypothesis import settings

settings.register_profile("quick", max_examples=25, deadline=None, derandomize=True)
settings.register_profile("deep", max_examples=100, deadline=None, derandomize=True)
settings.register_profile("explore", max_examples=300, deadline=None)


def pytest_configure(config: pytest.Config) -> None:
    if config.getoption("hypothesis_profile", default=None) is None:
        settings.load_profile("quick" if config.option.markexpr == "not slow" else "deep")
