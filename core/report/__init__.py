"""The report of a study: what it says as blocks, and the one HTML file that is made of them."""
