"""What a tablet's page needs to judge a reading as it is typed, from the same limits and units as everything else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from spoutline.documents.pack.form_fields import ItemField, item_field
from spoutline.explain.plan.story import Story
from spoutline.model.plan import PositionPlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import ReadingBand, RecordItem, RecordItemId
from spoutline.rules.work.records import kept_range, record_items, usual_range
from spoutline.units.accepted import ACCEPTED
from spoutline.units.unit_lines import to_core


def judged_fields(
    number: int, plan: PositionPlan, story: Story, bands: Mapping[RecordItemId, ReadingBand]
) -> Iterator[tuple[str, dict[str, object]]]:
    """Yield the name of each field that takes a reading, with what it is judged by; limits in SI, None for none."""
    for item in record_items(plan):
        if item.applies and item.dimension is not None:
            yield item_field(number, item.id, ItemField.READING), _judged_by(item, item.dimension, story, bands)


def _judged_by(
    item: RecordItem, dimension: Dimension, story: Story, bands: Mapping[RecordItemId, ReadingBand]
) -> dict[str, object]:
    low, high = kept_range(item)
    usual_low, usual_high = usual_range(item, bands.get(item.id))
    return {
        "units": {unit: to_core(1.0, unit, dimension) for unit in ACCEPTED[dimension]},
        "bare": story.display.unit(dimension),
        "onTape": story.display.on_a_tape(dimension),  # then feet and inches need their units
        "isLength": dimension is Dimension.LENGTH,
        "isResistance": dimension is Dimension.RESISTANCE,
        "low": low,
        "high": high,
        "usualLow": usual_low,
        "usualHigh": usual_high,
        "example": story.display.example(dimension),
    }
