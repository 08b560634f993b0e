"""How much of a file is taken in: the bounds of every reader, and the few ways to read within them.

A file from elsewhere may be damaged, made by a faulty program, or made to harm. Every bound is far above what an honest
file needs and low enough that the worst file within it costs seconds and some hundred megabytes. What is beyond a
bound is refused with the file, the place, what stands there and what would be right; nothing is cut off silently.
"""
