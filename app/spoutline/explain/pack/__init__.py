"""The words of the installer's papers, in each of their languages."""
