"""A report as a Word document that people go on editing."""
