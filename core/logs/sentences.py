"""A sentence for every problem that reading a log can meet: what, why, and what would mend it.

Rules: fields in braces are facts of the problem, ``{count:row|rows}`` with the word for one or many; file
and row are put before the sentence by whoever shows it.
"""

SENTENCES: dict[str, str] = {
    "file.missing": "There is no such file. Check the name and the folder.",
    "file.dead_link": "This link points to a file that is not there. Restore the file or name it directly.",
    "file.loop": "This link leads back to itself, so it is not followed. Name the file directly.",
    "file.not_ordinary": (
        "This is a pipe, a socket or a device, not an ordinary file. Save its data to a file first."
    ),
    "file.unreadable": "The file may not be read by this user. Change its permissions or copy it elsewhere.",
    "file.folder": "This is a folder, not a file. Name the files in it, or drop the folder on the window.",
    "file.empty_folder": "The folder holds no file that could be a log. Name a folder that does.",
    "file.too_many": "The folder holds more than {limit} files; the rest is left out. Name a smaller folder.",
    "file.sparse": (
        "The file claims {bytes} bytes but hardly any are stored: it is a hole. Copy the log again."
    ),
    "file.failed": "The file could not be read: {error}. Copy it to another disk and try again.",
    "file.changed": "The file changed while it was read; rows may be missing. Read it again.",
    "log.empty": "The file is empty. Save the log again on the meter's side.",
    "log.no_rows": "There are headings but no row of values below them ({first_line}). Save the log again.",
    "log.too_few_rows": "Only {count:row|rows} could be used, and a trace needs two. Save a longer log.",
    "log.times_outside": (
        "No row could be used: the first time is {text}, and a log can only be from {first} to {last}. "
        "Set the meter's clock, or name another time column in the Reading panel."
    ),
    "log.times_unreadable": (
        "No row could be used: the first time could not be read in: {text}. Name the time column, or its "
        "order of day and month, in the Reading panel."
    ),
    "log.no_table": (
        "No rows of values were found; it begins with: {first_line}. Save the log as comma-separated text."
    ),
    "log.not_a_log": (
        "This is {what}, not a table of values. Export the log as text (CSV) or as a spreadsheet."
    ),
    "log.line_too_long": (
        "The file is one line of {bytes} characters. A log has a line for each row; export it again."
    ),
    "log.minutes_or_hours": (
        "The times could be hours and minutes or minutes and seconds; they are taken as minutes and seconds. "
        "If they are hours and minutes, save the log with seconds."
    ),
    "log.no_time": (
        "No column tells the time (columns: {columns}). Name the time column in the Reading panel."
    ),
    "log.no_power": "No column holds power or energy (columns: {columns}). Name it in the Reading panel.",
    "log.nothing_counted": (
        "The energy column holds nothing that could be used. Name another column in the Reading panel."
    ),
    "log.too_large": "With {bytes} bytes the file is too large to be read at once. Split it by month.",
    "log.unforeseen": "The file could not be read ({error}). Please report it with a shortened sample.",
    "log.nested_archive": "An archive lies inside an archive inside an archive. Unpack it first.",
    "log.archive_too_large": (
        "Unpacked it would be larger than {limit_mb} MB, so it is not unpacked. Unpack it by hand."
    ),
    "log.archive_unreadable": "The archive is damaged and nothing in it could be unpacked. Copy it again.",
    "log.archive_damaged": "The archive is damaged; what could be unpacked is shown. Copy it again.",
    "log.archive_locked": "{member} in the archive is locked with a password. Unpack it by hand.",
    "log.sheet_damaged": "The spreadsheet could not be opened ({error}). Save it again as xlsx or as CSV.",
    "log.sheet_too_wide": (
        "The first and the last cell of a sheet are more than {limit} cells apart. Delete what stands far "
        "from the log, or save the log as CSV."
    ),
    "log.too_many_parts": (
        "It holds {count} logs or sheets, more than the {limit} that are looked at in one file. Save those "
        "that are needed in files of their own."
    ),
    "log.too_large_unpacked": (
        "Its columns would take more than {limit_mb} MB, too much to be read at once. Split it by month, or "
        "leave out columns."
    ),
    "log.columns_damaged": "The column file is damaged ({error}). Write it again.",
    "log.database_damaged": "The database is damaged ({error}). Copy it again while its program is closed.",
    "log.database_slow": (
        "The database gave hardly a row in {seconds} s. Copy its rows into a plain table, or export the log "
        "as CSV."
    ),
    "log.database_foreign": (
        "The database has no table with a time and a power column. Export the log as CSV instead."
    ),
    "log.json_damaged": "The JSON is cut or damaged. Export it again, best with one object a line.",
    "log.json_no_rows": "The JSON holds no list of rows. Export a list of objects, or one object a line.",
    "log.xml_damaged": (
        "The XML is cut or damaged at line {line}; what stands before it is shown. Export it again."
    ),
    "log.encoding_doubtful": (
        "Some characters do not fit the encoding {encoding}. Choose another in the Reading panel."
    ),
    "log.nul_bytes": (
        "{count:zero byte was|zero bytes were} taken out, as a logger leaves them when its power fails."
    ),
    "log.side_by_side": (
        "{count} logs stand side by side in this table, each with its own time; this one is in columns "
        "{first} to {last}."
    ),
    "log.refused_rows": (
        "{count:row|rows} could not be used, the first at line {first}. The Reading panel lists "
        "{count:~it|them}."
    ),
    "log.repeated_headings": (
        "The headings are repeated {count:time|times} in the file; {count:~that line was|those lines were} "
        "passed over."
    ),
    "log.other_table": (
        "Another table with other headings begins further down and was left out. Put it into its own file."
    ),
    "log.missing_values": (
        "{count:row has|rows have} no value for the power and {count:~was|were} passed over."
    ),
    "log.decimal_comma_unclear": (
        "Commas stand both between the cells and within numbers, and it is not clear which are which: {row}. "
        "Export it with semicolons between the cells, with quotes around them, or with decimal points."
    ),
    "log.date_order_by_steps": (
        "Day and month could be either; taken as {taken}, because only so time runs on evenly."
    ),
    "log.date_order_doubtful": (
        "Day and month could be either in {sample}; taken as {taken}: {why}. Set the order in the"
        " Reading panel if it is wrong."
    ),
    "log.time_of_day_only": (
        "The log has clock times but no date; a time that falls back counts as the next day."
    ),
    "log.no_year": (
        "No year is written beside the dates, so the log is read as elapsed time. "
        "Save it with the year if the date matters."
    ),
    "log.rows_counted": (
        "The rows are numbered ({column}) and nothing tells the time; each row was taken as one second. "
        "Write a line such as Interval: 10 s above the headings, or export the log with its times."
    ),
    "log.zone_unknown": "There is no time zone called {zone}. Choose one such as Europe/Berlin.",
    "log.zone_letters_doubtful": (
        "{letters} behind the times means several zones; taken as {taken}. Export the log with its offset "
        "from UTC if it is another."
    ),
    "log.zone_letters_unknown": (
        "{letters} behind the times is no time zone that is known, so they are taken as local time. Choose "
        "the zone in the Reading panel."
    ),
    "log.hours_lost": (
        "The times show minutes and seconds without the hour; where they fall back, one hour is taken as "
        "passed. Export the log with its hours."
    ),
    "log.newest_first": "The log has its newest row first and was turned round.",
    "log.unsorted": "{count:row was|rows were} out of order in time and {count:~was|were} sorted in.",
    "log.clock_restarts": (
        "The elapsed time starts again {count:time|times}; how long the "
        "{count:~pause was|pauses were} is not known."
    ),
    "log.clock_put": (
        "The clock was put by {hours} h at {at} (summer time); the trace runs on evenly over it."
    ),
    "log.repeated_rows": (
        "{count:row repeats|rows repeat} the one before exactly and {count:~was|were} counted once."
    ),
    "log.stand_in": (
        "{count:row shows|rows show} {value} where the logger measured nothing; {count:~it was|they were} "
        "taken as no value."
    ),
    "log.two_values_one_time": (
        "{count:stamp has|stamps have} two different values; the later one was taken."
    ),
    "log.stamps_cut": (
        "Stamps are cut to {tick_s} s, up to {most:row has|rows have} the same; they were spread evenly."
    ),
    "log.counter_reset": "The energy counter starts again {count:time|times}; it was made to run on.",
    "log.counter_leap": (
        "The energy counter leaps {count:time|times} by more than any load could draw; "
        "{count:~the leap was|the leaps were} taken out."
    ),
    "log.energy_per_interval": (
        "The energy column falls again and again: it was taken as the energy of each interval."
    ),
    "log.counter_unit_doubtful": (
        "No unit is stated for the energy counter; taken as {unit}. Set it in the Reading panel."
    ),
    "log.unit_mega": "The unit is taken as {unit}: with a small m the values would be those of no machine.",
    "log.unit_unknown": (
        "'{unit}' in the heading '{column}' is no unit that is known; the values are taken as {taken}. "
        "Export the log in W and kWh, or set the unit in the Reading panel."
    ),
    "log.power_and_counter_differ": (
        "Power in {power_unit} adds up to {ratio} times what the counter gained in "
        "{counter_unit}. Check the units in the Reading panel."
    ),
    "log.power_in_milliwatts": "No unit is stated for the power; at up to {highest} it must be milliwatts.",
    "log.power_unit_doubtful": (
        "No unit is stated for the power and it never exceeds {highest}; taken as watts. Set kW "
        "in the Reading panel if that is meant."
    ),
    "log.power_from_counter": (
        "Only an energy counter is logged; the power is its slope, in steps of {step_wh} Wh."
    ),
    "log.apparent_power": (
        "Only volts and amperes are known, so this is apparent power in VA, which is more than "
        "the real power ({column})."
    ),
    "log.negative_power": (
        "{count:row shows|rows show} a power below zero, down to {lowest_w} W and {back_wh} Wh in all. "
        "{count:~It was|They were} left as written; if the meter is at fault, choose under Power below "
        "zero."
    ),
    "log.power_back": (
        "{count:row shows|rows show} a power below zero, down to {lowest_w} W. {count:~It was|They were} "
        "left as written, but the counter leaves out those {back_wh} Wh; choose under Power below zero."
    ),
    "log.negative_noise": (
        "{count:row is|rows are} a little below zero, at most to {lowest_w} W: noise of a meter at rest, "
        "left as written so that the mean stays right."
    ),
    "log.power_turned": (
        "{percent} % of the energy is below zero, and no machine gives power back: the meter was the "
        "wrong way round. The power is taken with the opposite sign{counter}."
    ),
    "log.power_sizes": (
        "{count:row shows|rows show} a power below zero, but only without the {count:~sign|signs} does the "
        "power add up to the {counter_wh} Wh of the counter (with them: {signed_wh} Wh). So the signs "
        "were dropped."
    ),
    "log.negative_chosen": (
        "{count:row shows|rows show} a power below zero, down to {lowest_w} W; taken as you chose."
    ),
    "log.energies_differ": (
        "The power adds up to {by_power_wh} Wh, the counter to {by_counter_wh} Wh. Check the kind"
        " of sampling and the units."
    ),
    "log.gaps": "{count:gap of|gaps of together} {seconds} s, {percent} % of the log.",
    "log.values_held": "Each value is held for {rows} rows: the meter measures less often than it writes.",
    "log.joined": "{count} files continue one log and were joined: {files}.",
    "row.cells": (
        "The row has {cells:cell|cells} where {usual:is|are} usual. It may be cut or run into another."
    ),
    "row.too_long": "The row has {bytes} characters and is no row of a log.",
    "row.unreadable": "The row could not be taken apart.",
    "row.time": "The time in this row could not be read: {text}.",
    "row.time_outside": (
        "The time in this row is of a year that no log can be from (before {first} or after {last}): {text}."
    ),
    "row.number": "A cell of this row is no number: {text}.",
    "row.json": "The line is no JSON object.",
    "row.other_table": (
        "Another table begins before this line, with other headings. Put each table into a file of its own."
    ),
    "row.pairs": "The line holds no name with a value.",
}
