"""The use cases of an installer: load the van, swap a part on site, keep the inspections."""
