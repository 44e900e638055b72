"""The table of what the user knows of the machines, pasting into it, and whether it goes with the energy."""
