"""What the user knows of the machines: its table, cells pasted into it, whether it goes with the energy."""
