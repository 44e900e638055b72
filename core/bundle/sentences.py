"""Sentences for what can be wrong with a bundle: code -> sentence with {facts}."""

SENTENCES = {
    "bundle.damaged": (
        "The bundle is damaged ({what}); ask whoever made it for another copy, or copy it again."
    ),
    "bundle.newer": (
        "The bundle has layout {version}, which a newer version of Samepart made; this one knows layouts up "
        "to {known}. Bring Samepart up to date."
    ),
    "bundle.unsafe": (
        "The bundle was not opened: it holds a file called {name!r}, which no bundle of Samepart does."
    ),
    "bundle.too_large": (
        "The bundle was not opened: {name} unpacks to more than {limit_mb} MB, which no study's file does."
    ),
    "bundle.file_changed": (
        "{name} in the bundle is no longer what it was when the bundle was made; figures made from it may "
        "not be those of its maker."
    ),
    "bundle.log_changed": (
        "The log {name} is not the one that the figures were made from: its SHA-256 begins {found}, that of "
        "the bundle {expected}. It was left out; find the unchanged file."
    ),
    "bundle.log_missing": (
        "The bundle holds only the SHA-256 of the log {name} ({expected}), so what depends on it is missing; "
        "give the bundle together with the folder of its logs."
    ),
    "bundle.logs_missing": (
        "The bundle holds only the SHA-256 of {count:log|logs} ({names}), so what depends on them is "
        "missing; give the bundle together with the folder of its logs."
    ),
    "bundle.passed_over": "It is none of the bundle's logs, so it was passed over: a bundle is only checked.",
    "bundle.one_only": "Only one bundle is read at a time; {other} was passed over.",
    "bundle.figures_same": (
        "All {count:figure|figures} came out as its maker has them, to the last digit kept."
    ),
    "bundle.figures_unchecked": (
        "{count:figure|figures} of {of} could not be checked, because {logs:log|logs} of the bundle could "
        "not be read here; the others came out as its maker has them."
    ),
    "bundle.figures_differ": (
        "{count:figure|figures} came out otherwise than its maker has them, first {where}: {here}, not "
        "{there} (the bundle was made by {program}, this is {this})."
    ),
    "bundle.not_written": "The bundle could not be written ({why}); give another place.",
    "bundle.log_not_had": (
        "The log {name} could not be put into the bundle ({why}); only its SHA-256 is in it."
    ),
}
