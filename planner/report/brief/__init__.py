"""The brief: one HTML page for a phone and for one sheet of paper, its charts drawn in it, nothing fetched."""
