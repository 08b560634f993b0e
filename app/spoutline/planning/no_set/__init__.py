"""Why a position has no set, in full: every conflict, and every way out on trial."""
