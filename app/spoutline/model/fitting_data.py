"""The figures that a swivel or an adaptor adds to those of every part, each declared here and only here."""

from __future__ import annotations

from typing import Annotated

from spoutline.frozen import frozen
from spoutline.model.figure import Figure
from spoutline.model.part_kind import PartKind
from spoutline.model.quantity import Dimension


@frozen(kw_only=True)
class SwivelData:
    """What a swivel or swivel-breakaway adds: planes of rotation."""

    planes: Annotated[
        int,
        Figure(
            column="planes",
            dimension=Dimension.COUNT,
            least=1,
            most=3,
            holds="planes in which it turns",
            label="planes_of_rotation",
            tells=3,
            bare=True,
        ),
    ]


@frozen(kw_only=True)
class AdaptorData:
    """What an adaptor or splitter adds."""

    closes_vapour: Annotated[
        bool,
        Figure(
            kinds=(PartKind.ADAPTOR,),
            column="closes_vapour",
            holds="closes the vapor port of a coaxial end",
            label="closes_the_vapour_path",
        ),
        Figure(
            kinds=(PartKind.SPLITTER,),
            holds="closes the vapor port of a coaxial end",
            label="closes_the_vapour_path",
        ),
    ]
    needs_vapour_return: Annotated[
        bool, Figure(holds="joins a separate vapor return pipe", label="needs_a_vapour_return")
    ]
