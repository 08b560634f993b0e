"""What can go wrong outside the trade: bad input, a failing store, a defect of ours."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.worded import Worded


@frozen
class InputProblem:
    """One fault in outside data: where, what was found, what would be right; ``is_missing`` where nothing was found."""

    place: str  # file, or file and line; empty for typed input
    field: str
    value: str
    wanted: str
    is_missing: bool = False

    def __str__(self) -> str:
        return self.worded()

    def worded(self) -> Worded:
        """Return the problem as one sentence."""
        figures = {"field": self.field, "value": self.value, "wanted": self.wanted}
        if not self.place:
            return Worded("{field}: {value} is not usable; {wanted}", **figures)
        return Worded("{place}: {field}: {value} is not usable; {wanted}", place=self.place, **figures)


@frozen
class InputNote:
    """Something about usable outside data that a person should see: how it was understood, what will not work."""

    place: str  # file, or file and line; empty for typed input
    field: str
    value: str
    told: str

    def __str__(self) -> str:
        return self.worded()

    def worded(self) -> Worded:
        """Return the note as one sentence."""
        figures = {"field": self.field, "value": self.value, "told": self.told}
        if not self.place:
            return Worded("{field}: {value} {told}", **figures)
        return Worded("{place}: {field}: {value} {told}", place=self.place, **figures)


class InputFault(Exception):
    """Outside data cannot be used; carries every problem found, not just the first."""

    def __init__(self, problems: tuple[InputProblem, ...]) -> None:
        self.problems = problems
        lines = {f"line{number}": problem.worded() for number, problem in enumerate(problems)}
        super().__init__(Worded("\n".join(f"{{{name}}}" for name in lines), **lines))


class StoreFault(Exception):
    """The environment failed: a file, a database, a missing library. Shown plainly to the user."""


class BusyStore(StoreFault):
    """The store does not answer for now: locked by another, or its server cannot be reached. Later it may."""


class ReadOnlyStore(StoreFault):
    """The store may be read but not written by this person."""


class DamagedStore(StoreFault):
    """The file is no sound book: empty, cut off, damaged or another program's. It was left as it is."""


class NewerStore(StoreFault):
    """A newer version of the program wrote the store, which was left as it is.

    Parameters
    ----------
    place
        The store as a message names it.
    form, known_form
        The form in which it lies, and the newest that this program knows.
    written_by, program
        The version that wrote it, empty where it is not noted; the version of this program.
    """

    def __init__(self, place: str, *, form: str, written_by: str, known_form: str, program: str) -> None:
        self.place, self.form, self.known_form = place, form, known_form
        self.written_by, self.program = written_by, program
        newer = "a newer version of Spoutline"
        super().__init__(
            Worded(
                "{place} was written by {by} (its form is {form}). This is Spoutline {program}, which knows forms up "
                "to {known_form}; it changed nothing. Use the newer program, restore a backup that was made before, or "
                "name another database.",
                place=place,
                by=Worded("Spoutline {version} or a later one", version=written_by) if written_by else newer,
                form=form,
                program=program,
                known_form=known_form,
            )
        )


class Cancelled(Exception):
    """The person asked for the work to stop."""


class Undecided(Exception):
    """A question took more than one question may take: it is neither answered nor shown to have no answer."""

    def __init__(self) -> None:
        super().__init__(
            Worded(
                "Not decided: so many sets of parts differ by a hair here that it takes more work to say than one "
                "question may. Ask for a part by its number, or loosen a limit a little, and ask again."
            )
        )
