"""The fill-in form: a workbook whose cells are laid out from the scenario models and read back into raw scenario data."""
