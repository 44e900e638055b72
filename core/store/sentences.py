"""Sentences of the study file, one a code: what is wrong, why, and what would mend it."""

SENTENCES: dict[str, str] = {
    "store.missing": "there is no such file; it may have been moved or renamed",
    "store.is_folder": "this is a folder; open a study inside it, or drop the folder to read the logs in it",
    "store.not_a_study": "this is no study; if it is a meter log, drop it on the window to import it",
    "store.foreign": "this is a database of another program, not a study; it was left as it is",
    "store.newer": (
        "this study was written by a newer version of Samepart (format {version}; this one knows {known}); "
        "update Samepart to open it; the file was left as it is"
    ),
    "store.newer_field": (
        "this study was written by a newer version of Samepart ({what}); "
        "update Samepart to open it; the file was left as it is"
    ),
    "store.damaged": (
        "this study is damaged and cannot be read ({what}); it was left as it is: "
        "open a copy or a backup of it, or import its logs into a new study"
    ),
    "store.in_use": (
        "this study is open in another window, so it can be looked at but not changed here; "
        "close it there and open it again, or save a copy under another name"
    ),
    "store.read_only": (
        "this study, or the folder it is in, is write-protected, so it can be looked at but not changed; "
        "save a copy of it elsewhere to go on"
    ),
    "store.old_read_only": (
        "this study was written by an older version (format {version}) and must be brought up to date, "
        "but nothing can be written here; copy it to a folder of your own and open the copy"
    ),
    "store.migrated": "brought up to date from format {version}; the study as it was is kept: {backup}",
    "store.exists": "there is a file of this name already; choose another name",
    "store.same_file": "a study cannot be copied onto itself; choose another name",
    "store.disk_full": "the disk is full and nothing more could be saved; make room on it, then go on",
    "store.disk_error": "the disk could not be read or written ({what}); save a copy of the study elsewhere",
    "store.cannot_write": "nothing can be written here ({what}); save a copy of the study elsewhere",
    "store.no_permission": "the system lets nobody open or write it here ({what}); check the permissions",
    "store.busy": "another program is using this file; wait until it has finished, then try again",
    "store.blob_missing": "a log of this study is not in the file ({digest}); import the log again",
    "store.blob_damaged": "a log kept in this study is damaged ({digest}); import the log again",
}
