"""Languages of the window: the files for translators, and what keeps them whole."""
