"""Sentences for personal data in what is given to others: code -> sentence with {facts}."""

SENTENCES = {
    "personal.kept_back": (
        "Personal data in {name} could not be replaced without changing how it is read, so the log itself is "
        "not given away, only its SHA-256."
    ),
}
