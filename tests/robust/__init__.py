"""Input that nobody would give: mutated scenarios, forms and weather files, and whole runs with extreme numbers.

`python -m tests.robust` tries many and counts what comes of them; the tests beside it try fewer of the same, by seed.
"""
