"""Every page as a picture, for eyes: ``python -m tests.screens FOLDER``."""
