"""Order files of suppliers: how each wants them is kept in the book, what stands in them comes from quotations."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING

from pydantic import ValidationError

from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.model.quotation import Quotation
    from spoutline.model.quoted_option import QuotedLine, QuotedOption
    from spoutline.model.supplier_layout import OrderFileForm, SupplierLayout
    from spoutline.planning.refit.supplier_orders import OrderHead, SupplierOrder


class SupplierOrderService:
    """Layouts and order files. Methods may be called from several threads; bad input raises ``InputFault``."""

    def __init__(self, book: Callable[[], Book]) -> None:
        self._book = book

    def all(self) -> tuple[SupplierLayout, ...]:
        """Return the layouts of the book by supplier."""
        return self._book().supplier_layouts.all()

    def of(self, supplier: str) -> SupplierLayout | None:
        """Return the layout of a supplier, whatever the capitals of its name; None where the book has none."""
        return self._book().supplier_layouts.of(supplier)

    def named(self, supplier: str) -> SupplierLayout:
        """Return the layout of a supplier; raise ``InputFault`` where the book has none."""
        from spoutline.book.supplier_layouts import unknown

        found = self.of(supplier)
        if found is None:
            raise unknown(supplier)
        return found

    def keep(self, said: Mapping[str, object], before: SupplierLayout | None) -> SupplierLayout:
        """Keep a layout as its fields were said in the place of the one read before, and return it."""
        layout = layout_of(said)
        self._book().supplier_layouts.keep(layout, before)
        return layout

    def remove(self, supplier: str) -> SupplierLayout:
        """Take the layout of a supplier out of the book."""
        return self._book().supplier_layouts.remove(supplier)

    def orders(self, quotation: Quotation, option: str = "") -> tuple[SupplierOrder, ...]:
        """Return what is ordered from each supplier for an option; its title may be left out where there is only one.

        Raise ``InputFault`` with the titles where there is no such option.
        """
        from spoutline.planning.refit.supplier_orders import supplier_orders

        return supplier_orders(option_of(quotation, option).lines, self.all())

    def shared_out(self, lines: Sequence[QuotedLine]) -> tuple[SupplierOrder, ...]:
        """Return what is ordered from each supplier of these lines, by name of the supplier."""
        from spoutline.planning.refit.supplier_orders import supplier_orders

        return supplier_orders(lines, self.all())

    def foreseen(self, lines: Sequence[QuotedLine], layout: SupplierLayout) -> SupplierOrder:
        """Return what would be ordered from a supplier if the book kept this layout for it; nothing is kept."""
        from spoutline.model.supplier_layout import folded_supplier_name
        from spoutline.planning.refit.supplier_orders import SupplierOrder, supplier_orders

        name = folded_supplier_name(layout.supplier)
        others = [one for one in self.all() if folded_supplier_name(one.supplier) != name]
        orders = supplier_orders(lines, (*others, layout))
        found = next((one for one in orders if folded_supplier_name(one.supplier) == name), None)
        return found or SupplierOrder(layout, (), is_usual=False)

    def order(self, quotation: Quotation, supplier: str, option: str = "") -> SupplierOrder:
        """Return what is ordered from one supplier; raise ``InputFault`` naming those of whom something is."""
        from spoutline.model.supplier_layout import folded_supplier_name

        orders = self.orders(quotation, option)
        wanted = folded_supplier_name(supplier)
        found = next((one for one in orders if folded_supplier_name(one.supplier) == wanted), None)
        if found is None:
            names = ", ".join(one.supplier for one in orders)
            raise InputFault((InputProblem("", "supplier", repr(supplier), names),))
        return found

    def shown(self, order: SupplierOrder, head: OrderHead) -> tuple[tuple[str, ...], ...]:
        """Return the rows of a supplier's order as its text file has them."""
        from spoutline.documents.quotation.supplier_files import order_table, shown_rows

        return shown_rows(order_table(order, head), order.layout)

    def file(self, order: SupplierOrder, head: OrderHead, form: OrderFileForm | None = None) -> bytes:
        """Return a supplier's order as the file that its layout asks for, or in another ``form``."""
        from spoutline.documents.quotation.supplier_files import order_file

        return order_file(order, head, form)

    def file_names(self, orders: Sequence[SupplierOrder], head: OrderHead) -> tuple[str, ...]:
        """Return the name of the file of each order, with the ending that its layout asks for."""
        from spoutline.documents.quotation.supplier_files import order_file_names

        return order_file_names(orders, head)

    def json(self, orders: Sequence[SupplierOrder], quotation: Quotation, revision: int, option: str) -> str:
        """Return the orders of all suppliers as a JSON document."""
        from spoutline.documents.json.supplier_orders import OrderFile, supplier_orders_json
        from spoutline.documents.quotation.supplier_files import order_table, shown_rows
        from spoutline.planning.refit.supplier_orders import head_of

        head = head_of(quotation, revision)
        tables = [(one, order_table(one, head)) for one in orders]
        files = [OrderFile(one, table.headings, shown_rows(table, one.layout)) for one, table in tables]
        return supplier_orders_json(files, quotation, revision, option_of(quotation, option).title)


def layout_of(said: Mapping[str, object]) -> SupplierLayout:
    """Return the layout that fields tell; raise ``InputFault`` with every fault."""
    from spoutline.book.survey_faults import problems_of
    from spoutline.model.supplier_layout import SupplierLayout

    try:
        return SupplierLayout.model_validate(dict(said))
    except ValidationError as fault:
        raise InputFault(problems_of(fault, SupplierLayout, "")) from fault


def option_of(quotation: Quotation, title: str) -> QuotedOption:
    """Return the option of a title, empty where there is only one; raise ``InputFault`` with the titles."""
    if not title and len(quotation.options) == 1:
        return quotation.options[0]
    found = next((one for one in quotation.options if one.title == title), None)
    if found is None:
        titles = ", ".join(f"“{one.title}”" for one in quotation.options)
        raise InputFault((InputProblem("", "option", repr(title), titles),))
    return found
