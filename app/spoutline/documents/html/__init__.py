"""Papers as HTML: for screen readers, for any window width, and to be sent in a mail."""
