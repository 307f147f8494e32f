"""Commands of the command line that are more than a few lines; `cli.py` registers them."""
