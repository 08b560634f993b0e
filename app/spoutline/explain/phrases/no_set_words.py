"""The sentences that tell why a position has no set, with the placeholders that are filled."""

from __future__ import annotations

from typing import Final

NO_SET_PLACEHOLDERS: Final[dict[str, tuple[str, ...]]] = {
    "no_set_annex": (),
    "no_set_way": (),
    "no_set_means": (),
    "no_set_note": (),
    "no_set_cannot": (),
    "no_set_ways": (),
    "no_set_single": ("demands",),
    "no_set_together": ("demands",),
    "no_set_gap": (),
    "no_set_checks": (),
    "no_set_slot": ("slot", "there"),
    "no_set_slot_left": ("slot", "left", "there"),
    "no_set_slot_empty": ("slot",),
    "no_set_joints": ("slot", "there"),
    "no_set_line_one": ("count", "line"),
    "no_set_line_many": ("count", "line"),
    "no_set_near": ("part",),
    "no_set_itself": ("part",),
    "no_set_others_one": ("count",),
    "no_set_others_many": ("count",),
    "no_set_part": ("place", "part", "price"),
    "no_set_missed": ("sentence", "miss"),
    "no_set_figure": ("line", "asked", "attained", "miss", "numbers"),
    "no_set_asked": ("part",),
    "no_set_refused": ("part",),
    "no_set_without": ("part",),
    "no_set_allow": ("part",),
    "no_set_sell": ("liquid", "today"),
    "no_set_recover": ("wanted", "today"),
    "no_set_again": ("answer",),
    "no_set_days": ("needed", "asked"),
    "no_set_wish": ("line",),
    "no_set_elsewhere": (),
    "no_set_lacking": ("demands",),
    "no_set_no_way": (),
}
