"""Runs of the part beside each other: lined up, smoothed with their energy kept, judged by their repeats."""
