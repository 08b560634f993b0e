"""Property tests of the calculations count no time: a busy machine is no defect of a formula."""

from __future__ import annotations

from hypothesis import settings

settings.register_profile("calculations", deadline=None)
settings.load_profile("calculations")
