"""What planning works with: the rule tables, the parts, and who listens."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.model.limit import RuleTables
from spoutline.planning.protocols import PartStore
from spoutline.search.listener import Listener


@dataclass(frozen=True, slots=True)
class Desk:
    """Handed from use case to use case; ``listener`` watches and may stop the searches."""

    tables: RuleTables
    parts: PartStore
    listener: Listener | None = None
