"""What is true of the work on site: what an installer reads and tries there."""
