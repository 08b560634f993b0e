"""The chain as a whole: joints, order, how it hangs, what goes with it."""
