"""What weighing sets works with."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.jobs import Jobs

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


@frozen
class WeighingTools:
    """What the dialog works with."""

    workbench: Workbench
    jobs: Jobs
    story: Story
