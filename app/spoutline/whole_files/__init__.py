"""Files written whole or not at all, and never over what they are made from."""

from spoutline.whole_files.places import is_same_file, obstacle
from spoutline.whole_files.plan import InUse, OutputPlan, PlannedFile
from spoutline.whole_files.writing import Staged, staged, write_file, write_files

__all__ = [
    "InUse",
    "OutputPlan",
    "PlannedFile",
    "Staged",
    "is_same_file",
    "obstacle",
    "staged",
    "write_file",
    "write_files",
]
