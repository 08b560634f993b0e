"""What if one answer were another: the survey with it, and what becomes of sets, checks, parts and money."""
