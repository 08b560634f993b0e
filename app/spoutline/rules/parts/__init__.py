"""What a part can break by itself, and what each part brings to a chain."""
