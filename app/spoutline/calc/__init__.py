"""Pure physics: hydraulics, reach, hanging curve, pull, bond, permeation."""
