"""Sets that are agreed: made, matched with a survey, and judged anew against the survey and rules of today."""
