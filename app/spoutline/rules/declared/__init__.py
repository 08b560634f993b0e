"""Every rule declared once: its name, and the table of what is declared about it."""
