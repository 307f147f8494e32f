"""The sources of power: a file each, and the registry that puts them in order of priority."""
