"""What a stock lacks as orders to suppliers: the lines with their prices, and what all of them share."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from spoutline.frozen import frozen

if TYPE_CHECKING:
    from datetime import date

    from spoutline.bootstrap.quotations import QuotationService
    from spoutline.bootstrap.stores import EditionOf
    from spoutline.model.part_ref import PartRef
    from spoutline.model.quotation_terms import Terms
    from spoutline.model.quoted_option import QuotedLine
    from spoutline.model.stock_entry import StockLine
    from spoutline.model.usual_terms import UsualTerms
    from spoutline.planning.refit.supplier_orders import OrderHead


@frozen(kw_only=True)
class StockOrder:
    """What is to be ordered: priced lines by part, their head, and parts that the catalogue lacks, left out."""

    lines: tuple[QuotedLine, ...]
    head: OrderHead
    left_out: tuple[PartRef, ...] = ()


class StockOrderService:
    """Orders of what a stock lacks. Methods may be called from several threads."""

    def __init__(self, quoting: Callable[[], QuotationService], catalogue: EditionOf) -> None:
        self._quoting, self._catalogue = quoting, catalogue

    def order(self, lines: Sequence[StockLine], *, number: str, dated: date, site: str = "") -> StockOrder:
        """Return what lines of a stock order: the pieces of all places, in whole packs.

        List prices are those that hold on the day, costs follow the buying discounts of the usual terms; what no list
        and no terms state is not known. Raise ``InputFault`` for faulty price lists or usual terms.

        Parameters
        ----------
        lines
            Lines of a stock; those that order nothing are left out.
        number
            What the order is called, under which the supplier's papers are to come back; empty for one by the day.
        dated
            Day of the order.
        site
            For what it is ordered; the places of the lines where empty.
        """
        from spoutline.planning.pricing.price_book import PriceBook
        from spoutline.planning.pricing.selling import Pricer
        from spoutline.planning.refit.priced_lines import quoted_line
        from spoutline.planning.refit.quantities import PartQuantity
        from spoutline.planning.refit.supplier_orders import OrderHead

        wanted: Counter[PartRef] = Counter()
        for line in lines:
            if line.order:
                wanted[line.balance.part] += line.order
        parts = {part.ref: part for part in self._catalogue().parts(sorted(wanted))} if wanted else {}
        quoting = self._quoting()
        terms = _terms(quoting.terms().usual_terms(), dated)
        pricer = Pricer(
            terms,
            PriceBook(quoting.terms().price_lists_for(self._catalogue()), dated) if wanted else PriceBook((), dated),
        )
        priced = tuple(
            quoted_line(
                PartQuantity(
                    part=parts[ref],
                    mass_kg=parts[ref].mass_kg,
                    fitted=wanted[ref],
                    spares=0,
                    pack_rest=-wanted[ref] % parts[ref].pack_quantity,
                ),
                pricer,
            )
            for ref in sorted(parts)
        )
        places = sorted({line.balance.place for line in lines if line.order})
        head = OrderHead(
            number=number.strip() or dated.isoformat(),
            dated=dated,
            currency=terms.currency,
            site=site or ", ".join(places),
        )
        return StockOrder(lines=priced, head=head, left_out=tuple(sorted(wanted.keys() - parts.keys())))


def _terms(usual: UsualTerms, dated: date) -> Terms:
    """Return terms by which costs are reckoned: buying discounts and exchange rates of the usual ones."""
    from spoutline.model.quotation_terms import Heading, Recipient, Seller, Terms

    return Terms(
        seller=Seller(name="-"),
        customer=Recipient(name="-"),
        heading=Heading(number="-", dated=dated),
        currency=usual.currency,
        exchange=usual.exchange,
        buying=usual.buying,
    )
