"""What the user knows of the machines: the table of it, cells pasted into it, and whether it goes with the energy."""
