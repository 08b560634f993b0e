"""What a person writes about a job as TOML text: every fault is reported with its field."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from pydantic import ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_text
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.faults import InputFault
from spoutline.model.pack import PackJob


def read_pack_job(path: Path) -> PackJob:
    """Return the job in the UTF-8 file ``path``; raise ``InputFault`` naming what is wrong, file faults included."""
    text = bounded_text(path, BOUNDS.toml_bytes, "file", "a readable UTF-8 job file is needed")
    return pack_job_from_toml(text, str(path))


def pack_job_from_toml(text: str, place: str) -> PackJob:
    """Return the job in a TOML text that came from ``place``; raise ``InputFault`` with every fault."""
    table = toml_table(text, place, "job")
    try:
        return PackJob.model_validate(table)
    except ValidationError as fault:
        problems = problems_of(fault, PackJob, place)
        raise InputFault(tuple(replace(one, field=one.field.replace("survey", "job")) for one in problems)) from fault
