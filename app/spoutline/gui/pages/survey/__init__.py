"""Where the survey is answered: site, positions, questions, what hangs there today."""
