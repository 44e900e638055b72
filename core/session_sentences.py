"""Sentences for what can go wrong while a study is open: code -> sentence with {facts}."""

SENTENCES = {
    "session.read_only": (
        "The study is open for reading only, so nothing was changed; save it under another name and go on "
        "there."
    ),
    "session.no_folder": (
        "No study can be kept in {folder} ({why}); give this user the right to write there, or free some "
        "room."
    ),
    "session.no_file": "No study is open, so the logs were not read; open one, or start a new one.",
    "session.gone": "The file was read but could not be copied into the study ({why}); drop it again.",
    "session.changed_meanwhile": (
        "The file changed while it was being read, so nothing of it was kept; drop it again when it is "
        "complete."
    ),
    "session.known": "This log is in the study already, so it was not added again.",
    "session.sheet": "Taken as a filled run sheet: {what}.",
    "session.grown": "The file has grown: read on from where it ended, {rows:more row|more rows}.",
    "session.read_anew": "The file was read anew as it is now; what you decided about its runs was kept.",
    "session.not_grown": "Nothing was added to the file since it was read.",
    "session.changed_otherwise": (
        "The file no longer begins with what was read from it, so the study was left as it is; to take "
        "the file as it is now, choose 'Read the file again' on the Logs page."
    ),
    "session.not_in_file": (
        "The file no longer holds what was read from it as the log of {machine}, so the study was left as "
        "it is; add the file as a new log if that is what it is."
    ),
}
