"""The installer's papers: pack, caution sheet, commissioning form and record, inspection plan."""
