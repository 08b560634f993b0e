"""What people write for the size of a port, read as the size that they mean or refused with the sizes of the thread.

The sizes and their millimetres follow from 1 in = 25.4 mm (1959); DN beside inches as ASME B36.10M prints them
(memory); threads per inch of 1/2 to 1-1/4 from public tables of ASME B1.20.1 and ISO 228-1. That people call the
sizes so is common practice, no source.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.stations import position, tables
from spoutline.model.port import FlowPath, ThreadStandard
from spoutline.model.port_sizes import dn_of, path_of_thread, read_size, sizes_of, thread_named, usual_size
from spoutline.model.requirement import Refusal, RefusalStatus
from spoutline.model.survey import Outlet, Site
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.requirement import requirement_for

NPT, G, M, UN = ThreadStandard.NPT, ThreadStandard.G, ThreadStandard.M, ThreadStandard.UN


@pytest.mark.parametrize("thread", [NPT, G])
@pytest.mark.parametrize(
    ("text", "size"),
    [
        *(
            (text, "3/4")
            for text in ('3/4"', "3/4 in", "3/4 in.", "¾", "¾″", "0.75", ".75", "0,75", "19 mm", "19.05 mm")
        ),
        *((text, "3/4") for text in ("DN 20", "dn20", " 3 / 4 ", "3/4 inch", "3/4''", "0.75 IN")),
        *((text, "1-1/4") for text in ("1-1/4", "1 1/4", "1¼", "1 ¼ in", "5/4", "1.25", "32 mm", "DN 32")),
        *((text, "1") for text in ("1", '1"', "25 mm", "25.4 mm", "DN 25", "1.0")),
        *((text, "1/2") for text in ("½", "13 mm", "12.7 mm", "DN 15", "0.5 in")),
    ],
)
def test_what_people_write_is_the_size_that_they_mean(thread: ThreadStandard, text: str, size: str) -> None:
    assert read_size(text, thread) == size


@pytest.mark.parametrize(
    ("text", "thread", "size"),
    [
        ("3/4 NPT", NPT, "3/4"),
        ("NPT 3/4", NPT, "3/4"),
        ("3/4-14 NPT", NPT, "3/4"),  # as ASME B1.20.1 designates the thread
        ("1-11.5 NPT", NPT, "1"),
        ("1-1/4-11 1/2 NPT", NPT, "1-1/4"),
        ("G 3/4", G, "3/4"),
        ("G3/4", G, "3/4"),
        ("1 BSPP", G, "1"),
        ("1 BSP", G, "1"),
        ("5/8", G, "5/8"),
        ("16 mm", G, "5/8"),
        ("1-11", G, "1"),
        ("34x1.5", M, "34x1.5"),
        ("M34x1.5", M, "34x1.5"),
        ("M 34 × 1,5", M, "34x1.5"),
        ("34*1.5 mm", M, "34x1.5"),
        ("1-7/8-12", UN, "1-7/8-12"),
        ('1 7/8" - 12 UN', UN, "1-7/8-12"),
        ("1.875-12", UN, "1-7/8-12"),
    ],
)
def test_a_thread_named_beside_the_size_and_its_pitch_are_understood(
    text: str, thread: ThreadStandard, size: str
) -> None:
    assert read_size(text, thread) == size


@pytest.mark.parametrize(
    ("text", "thread", "told"),
    [
        ("7/8", NPT, "it is a size of G threads"),
        ("5/8", NPT, "3/8, 1/2, 3/4, 1, 1-1/4"),
        ("3/4 G", NPT, "the text names G and the thread is NPT"),
        ("3/4 NPT", G, "the text names NPT and the thread is G"),
        ("3/4 BSP", NPT, "let both say the same"),
        ("34x1.5", NPT, "it is a size of M threads"),
        ("0.75", M, "34x1.5"),
        ("3/4", UN, "1-7/8-12"),
        ("34", M, "34x1.5"),  # a diameter alone would mean the coarse pitch (ISO 965-1)
        ("M34", M, "34x1.5"),
        ("M34x2", M, "34x1.5"),
        ("1-7/8", UN, "1-7/8-12"),  # 8, 12 and 16 threads per inch are all in ASME B1.1
        ("20", NPT, "the sizes of NPT threads"),  # DN 20, or 20 in?
        ("20 mm", NPT, "the sizes of NPT threads"),  # DN 20 measures no 20 mm, and no size is called so
        ("26.67 mm", NPT, "the sizes of NPT threads"),  # the outside diameter of 3/4, not its name
        ("3/4-11.5 NPT", NPT, "the sizes of NPT threads"),  # 3/4 has 14 threads per inch
        ("R 3/4", G, "the sizes of G threads"),  # a taper thread of another standard (ISO 7-1)
        ("3/4 NPTF", NPT, "the sizes of NPT threads"),  # another standard (ASME B1.20.3)
        ("3/0", NPT, "the sizes of NPT threads"),
        ("large", NPT, "ASME B1.20.1"),
        ("", G, "ISO 228-1"),
        ("9" * 5000, NPT, "the sizes of NPT threads"),
    ],
)
def test_what_could_be_another_size_is_refused_with_the_sizes_of_the_thread(
    text: str, thread: ThreadStandard, told: str
) -> None:
    with pytest.raises(ValueError, match="the sizes of") as refused:
        read_size(text, thread)
    assert told in str(refused.value)


@pytest.mark.parametrize("thread", list(ThreadStandard))
def test_every_size_reads_as_itself_and_the_usual_one_is_among_them(thread: ThreadStandard) -> None:
    assert [read_size(size, thread) for size in sizes_of(thread)] == list(sizes_of(thread))
    assert usual_size(thread) in sizes_of(thread)


@given(st.text(max_size=50), st.sampled_from(list(ThreadStandard)))
def test_any_text_is_read_or_refused_and_a_reading_reads_as_itself(text: str, thread: ThreadStandard) -> None:
    try:
        size = read_size(text, thread)
    except ValueError as refused:
        assert "the sizes of" in str(refused)
    else:
        assert read_size(size, thread) is size


def test_dn_stands_beside_pipe_sizes_only() -> None:
    """DN and inches: ASME B36.10M; ISO 6708 defines DN (memory)."""
    pairs = {"1/2": 15, "3/4": 20, "1": 25, "1-1/4": 32, "1-1/2": 40, "2": 50}
    assert {size: dn_of(size, NPT) for size in sizes_of(NPT) if size in pairs} == pairs
    assert dn_of(usual_size(M), M) is None


def test_a_size_may_name_its_thread() -> None:
    named = ("3/4 NPT", "G 1", "M34x1.5", "1-7/8-12 UN", "3/4", "1 BSP")
    assert [thread_named(text) for text in named] == [NPT, G, M, UN, None, None]


@pytest.mark.parametrize("thread", list(ThreadStandard))
@pytest.mark.parametrize("path", list(FlowPath))
def test_a_path_that_its_thread_does_not_carry_is_a_finding(thread: ThreadStandard, path: FlowPath) -> None:
    """A pipe thread holds one bore; M34 carries vacuum assist, 1-7/8 balance (common practice, no source)."""
    carried = {NPT: FlowPath.SINGLE, G: FlowPath.SINGLE, M: FlowPath.VACUUM_ASSIST, UN: FlowPath.BALANCE}[thread]
    assert path_of_thread(thread) is carried
    found = requirement_for(position(outlet=Outlet(thread=thread, path=path)), Site(name="A"), tables())
    told = [one for one in found.findings if one.rule_id == RuleId.PATH_ON_THREAD]
    if path is carried:
        assert not isinstance(found, Refusal)
        assert not told
        return
    assert isinstance(found, Refusal)
    assert found.status is RefusalStatus.NO_SET
    assert {(fact.name, fact.value) for fact in told[0].facts} >= {("thread", thread), ("path", path)}
