"""Personal data in the logs and the words of a study: found, listed, and replaced where the user wishes."""
