"""Sentences for what can go wrong while a study is open: code -> sentence with {facts}."""

SENTENCES = {
    "session.read_only": (
        "the study is open for reading only, so nothing was changed; "
        "save it under another name and go on there"
    ),
    "session.no_folder": (
        "no study can be kept in {folder} ({why}); give this user the right to write there, or free some room"
    ),
    "session.no_file": "no study is open, so the logs were not read; open one, or start a new one",
    "session.gone": "the file was read but could not be copied into the study ({why}); drop it again",
    "session.changed_meanwhile": (
        "the file changed while it was being read, so nothing of it was kept; "
        "drop it again when it is complete"
    ),
    "session.known": "this log is in the study already, so it was not added again",
}
