"""The bundle: a zip from which a stranger can find every figure of a study again.

Layout, version 1 (``assets/explain/bundle.md`` says the same for readers)::

    manifest.json      what is inside: every file with its SHA-256, every log with its own
    README.txt         how to check it
    values.json        the study's own values: machines, meters, runs, prices
    results.json       the figures, as ``samepart compare --json`` prints them
    readings.json      how each log was read
    tables/*.csv       every table in full
    report.html        the report
    logs/*             the raw logs, unless only their SHA-256 is kept

Rules: the same study makes the same bytes; nothing of a bundle is ever written to disk under a name that it
brings; everything in it is limited in size; what is damaged or changed is said of the file it is in.
"""
