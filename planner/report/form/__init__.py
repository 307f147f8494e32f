"""The fill-in form: a workbook laid out from the scenario models and read back into raw scenario data."""
