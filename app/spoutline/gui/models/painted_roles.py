"""Answers all that Qt paints a cell with in one call: asked role by role, most answers would be that there is none."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, cast

from PySide6.QtCore import QAbstractItemModel, QAbstractProxyModel, Qt

if TYPE_CHECKING:
    from PySide6.QtCore import QModelIndex, QModelRoleData, QModelRoleDataSpan, QPersistentModelIndex

    Index = QModelIndex | QPersistentModelIndex
    _Model = QAbstractItemModel
    _Proxy = QAbstractProxyModel
else:
    _Model = _Proxy = object  # Qt's classes take no other of Qt beside them

_ROLE = Qt.ItemDataRole
LEFT: Final = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
RIGHT: Final = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
# the mark of a row is painted by its delegate, and colours are those of the style sheet
UNANSWERED: Final = frozenset(
    map(int, (_ROLE.DecorationRole, _ROLE.BackgroundRole, _ROLE.ForegroundRole, _ROLE.CheckStateRole))
)


class PaintedRoles(_Model):
    """A model that has no answer to some roles, ever, and is not asked for them."""

    def multiData(self, index: Index, roles: QModelRoleDataSpan | QModelRoleData) -> None:
        """Qt: answer several roles of a cell."""
        _answer(self, index, roles)


class PaintedProxy(_Proxy):
    """An order or choice of the rows of such a model: the row is looked up once for all roles."""

    def multiData(self, index: Index, roles: QModelRoleDataSpan | QModelRoleData) -> None:
        """Qt: answer several roles of a cell."""
        _answer(self.sourceModel(), self.mapToSource(index), roles)


def _answer(model: QAbstractItemModel, index: Index, roles: QModelRoleDataSpan | QModelRoleData) -> None:
    span = cast("QModelRoleDataSpan", roles)  # Qt calls with nothing else
    for place in range(span.length()):
        asked = span[place]  # type: ignore[index]
        role = asked.role()
        if role in UNANSWERED:
            asked.clearData()
        else:
            asked.setData(model.data(index, role))
