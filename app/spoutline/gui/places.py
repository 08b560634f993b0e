"""The places of the work on a station, in the order in which a job passes through them."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.gui.actions import ActionId


class Place(StrEnum):
    """Where a person can be in the window."""

    START = "start"
    SURVEY = "survey"
    POSITIONS = "positions"
    PARTS = "parts"
    QUOTATION = "quotation"
    CONVERSION = "conversion"
    INSTALLER = "installer"
    CATALOGUES = "catalogues"


@frozen(kw_only=True)
class PlaceRecord:
    """A place: what it is called on the switcher, and the command that leads there."""

    place: Place
    title: str
    action: ActionId


PLACES: tuple[PlaceRecord, ...] = (
    PlaceRecord(place=Place.START, title="Start", action=ActionId.START),
    PlaceRecord(place=Place.SURVEY, title="Survey", action=ActionId.WALK),
    PlaceRecord(place=Place.POSITIONS, title="All positions", action=ActionId.GRID),
    PlaceRecord(place=Place.PARTS, title="Parts list", action=ActionId.BILL),
    PlaceRecord(place=Place.QUOTATION, title="Quotation", action=ActionId.QUOTATIONS),
    PlaceRecord(place=Place.CONVERSION, title="Conversion", action=ActionId.CONVERSION),
    PlaceRecord(place=Place.INSTALLER, title="Installer's work", action=ActionId.INSTALLER),
    PlaceRecord(place=Place.CATALOGUES, title="Catalogs", action=ActionId.CATALOGUES),
)
