"""The questions about place and reach: outlet, hook and every vehicle filler."""

from __future__ import annotations

from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.port import Gender, ThreadStandard
from spoutline.model.port_sizes import sizes_of
from spoutline.model.quantity import Dimension
from spoutline.model.survey import OutletDirection, Position

_LENGTH = Measure(Dimension.LENGTH)
_OFFERED = frozenset({"1/2", "3/4", "1", "1-1/4", "1-1/2"})  # pipe sizes of dispensers, common practice, no source


def _sizes(position: Position) -> tuple[str, ...]:
    sizes = sizes_of(position.outlet.thread)
    return tuple(size for size in sizes if size in _OFFERED) or sizes


OUTLET_QUESTIONS: tuple[Question, ...] = (
    Question(
        path=("outlet", "thread"),
        step=Step.PLACE,
        group="Dispenser outlet",
        title="&Thread standard",
        help="Taper NPT and parallel G look alike and do not seal with each other.",
        source="ASME B1.20.1, ISO 228-1",
        entry=Entry.CHOICE,
        options=(
            Option(ThreadStandard.NPT, "NPT", "Taper, 60°"),
            Option(ThreadStandard.G, "G", "Parallel, 55°"),
            Option(ThreadStandard.M, "Metric", "Vacuum-assist coaxial"),
            Option(ThreadStandard.UN, "Unified", "Balance coaxial"),
        ),
    ),
    Question(
        path=("outlet", "size"),
        step=Step.PLACE,
        group="Dispenser outlet",
        title="Thread si&ze",
        help="As the standard writes it, or as people say it: 3/4, 0.75 in, 19 mm, DN 20.",
        source="ASME B1.20.1, ISO 228-1",
        entry=Entry.SUGGESTED,
        suggestions=_sizes,
    ),
    Question(
        path=("outlet", "gender"),
        step=Step.PLACE,
        group="Dispenser outlet",
        title="Gen&der",
        help="Of the dispenser's own thread.",
        source="Seen on site",
        entry=Entry.CHOICE,
        options=(Option(Gender.FEMALE, "Female"), Option(Gender.MALE, "Male")),
    ),
    Question(
        path=("outlet", "direction"),
        step=Step.PLACE,
        group="Dispenser outlet",
        title="Outlet p&oints",
        help="Decides how the whip hose bends in a drive-off.",
        source="Seen on site",
        entry=Entry.CHOICE,
        options=(Option(OutletDirection.DOWN, "Downwards"), Option(OutletDirection.SIDEWAYS, "Sideways")),
    ),
    Question(
        path=("outlet", "height_m"),
        step=Step.PLACE,
        group="Dispenser outlet",
        title="O&utlet height",
        help="Above the ground the hose hangs over.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=_LENGTH,
    ),
    Question(
        path=("outlet", "pull_strength_n"),
        step=Step.PLACE,
        group="Dispenser outlet",
        title="Pull that the outlet &bears",
        help="From the dispenser's maker. It must outlast the breakaway.",
        source="Dispenser maker's data",
        entry=Entry.QUANTITY,
        measure=Measure(Dimension.FORCE),
        empty_means="an assumed figure, to be confirmed",
    ),
    Question(
        path=("hook", "distance_m"),
        step=Step.PLACE,
        group="Nozzle hook",
        title="Outlet to hook, &level",
        help="Horizontal distance from the outlet to the nozzle at rest.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=_LENGTH,
    ),
    Question(
        path=("hook", "height_m"),
        step=Step.PLACE,
        group="Nozzle hook",
        title="Hoo&k height",
        help="Of the nozzle's inlet at rest, above the ground.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=_LENGTH,
    ),
)


def filler_questions(index: int | None) -> tuple[Question, ...]:
    """Return the questions about one filler: the main one for None, else ``other_fillers[index]``."""
    root: tuple[str | int, ...] = ("filler",) if index is None else ("other_fillers", index)
    group = "Vehicle filler" if index is None else f"Further filler {index + 1}"
    return (
        Question(
            path=(*root, "label"),
            step=Step.PLACE,
            group=group,
            title="Name",
            help="Near side, far side, high tank, boat deck.",
            source="Free text",
            entry=Entry.TEXT,
        ),
        Question(
            path=(*root, "distance_m"),
            step=Step.PLACE,
            group=group,
            title="Outlet to fille&r, level" if index is None else "Outlet to filler, level",
            help="Horizontal distance from the point below the outlet.",
            source="Measured on site",
            entry=Entry.QUANTITY,
            measure=_LENGTH,
        ),
        Question(
            path=(*root, "height_m"),
            step=Step.PLACE,
            group=group,
            title="&Filler height" if index is None else "Filler height",
            help="Above the same ground; negative below a dock.",
            source="Measured on site",
            entry=Entry.QUANTITY,
            measure=_LENGTH,
        ),
        Question(
            path=(*root, "plan_legs_m"),
            step=Step.PLACE,
            group=group,
            title="Wa&y round the vehicle" if index is None else "Way round the vehicle",
            help="Legs of the way seen from above, separated by semicolons, where the hose must go round a corner.",
            source="Measured on site",
            entry=Entry.QUANTITIES,
            measure=_LENGTH,
            empty_means="the straight way",
        ),
    )
