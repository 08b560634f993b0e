"""What the page of a conversion shows of closings, of paths that stay live, and of what limits rest on."""

from __future__ import annotations

from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.workbench import Workbench
from spoutline.gui.models.conversion_nodes import conversion_nodes
from spoutline.model.survey import VapourStatus
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def test_a_path_that_stays_live_has_a_row_with_its_reason(workbench: Workbench) -> None:
    survey = demo_survey("conversion_balance")
    one, other = survey.positions[:2]
    other = other.model_copy(update={"vapour_wanted": VapourStatus.BALANCE})
    service = workbench.converting()
    conversion = service.convert(survey.model_copy(update={"positions": (one, other)}))
    nodes = conversion_nodes(conversion, service.words(Display(UnitSystem.US)))
    live = next(node for node in nodes if node.cells[0] == "What stays live, and why")
    assert all("1B" in child.cells[2] for child in live.children)
    basis = [child.cells for child in nodes[0].children[:2]]
    assert basis[0][0] == "Limits behind it"
    assert basis[1][0] == "Assumed"
