"""The main window: layout, wiring, start."""
