<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>A cell of this row is no number: {text}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hold test of this machine would tell the bed&apos;s part if the bed&apos;s temperature in the run were known: set the bed temperature of the test, or note that of the run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A log holds this run already, and knows more of it; of the row only its conditions were used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A same-load check in Wh needs its start and end; this one was not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A same-load check takes two filled rows with the same name and two meters; this one was not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All {count:figure|figures} came out as its maker has them, to the last digit kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An archive lies inside an archive inside an archive. Unpack it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another table begins before this line, with other headings. Put each table into a file of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another table with other headings begins further down and was left out. Put it into its own file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>At the first layer the bed was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the first layer the nozzle was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between runs {short_machine} rested {short} and {long_machine} {long} (medians): a bed that is still warm spares a part of the warm-up; let all cool to the same temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the checks on one load {meter} most likely reads {error} too {way}, more than its accuracy of ±{limit} % allows; repeat the check, state the accuracy anew, or use another meter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commas stand both between the cells and within numbers, and it is not clear which are which: {row}. Export it with semicolons between the cells, with quotes around them, or with decimal points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day and month could be either in {sample}; taken as {taken}: {why}. Set the order in the Reading panel if it is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day and month could be either; taken as {taken}, because only so time runs on evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each value is held for {rows} rows: the meter measures less often than it writes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From run to run all machines took {way} and {way}, {rise} from the first to the last (by one line through all runs, p = {p:.3f}); whatever changed favours the machine that was tested at the right time: make the runs again in a shuffled order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be read ({why}); check the path and your right to read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be read as a run sheet: {why}; save it as CSV text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It ends before it starts; the duration is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has no column named {missing}; a run sheet has the columns machine, run, start, end and energy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is none of the bundle&apos;s logs, so it was passed over: a bundle is only checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its duration was not noted, so its mean power is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column holds power or energy (columns: {columns}). Name it in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column tells the time (columns: {columns}). Name the time column in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No prices by date were found. A row needs a date and time, such as 2026-01-31 16:30, and a price.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No row could be used: the first time could not be read in: {text}. Name the time column, or its order of day and month, in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No row could be used: the first time is {text}, and a log can only be from {first} to {last}. Set the meter&apos;s clock, or name another time column in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rows of values were found; it begins with: {first_line}. Save the log as comma-separated text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No study can be kept in {folder} ({why}); give this user the right to write there, or free some room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No study is open, so the logs were not read; open one, or start a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is stated for the energy counter; taken as {unit}. Set it in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is stated for the power and it never exceeds {highest}; taken as watts. Set kW in the Reading panel if that is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is stated for the power; at up to {highest} it must be milliwatts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody stated the accuracy of {meters}: taken as ±1 % of reading and ±0.3 W; enter what the data sheet states.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was added to the file since it was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One study at a time: {other} is left aside; compare them one after another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only an energy counter is logged; the power is its slope, in steps of {step_wh} Wh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only one bundle is read at a time; {other} was passed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only volts and amperes are known, so this is apparent power in VA, which is more than the real power ({column}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {count:row|rows} could be used, and a trace needs two. Save a longer log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Personal data in {name} could not be replaced without changing how it is read, so the log itself is not given away, only its SHA-256.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power in {power_unit} adds up to {ratio} times what the counter gained in {counter_unit}. Check the units in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown from the next start on</source>
        <translation>Gilt ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Some characters do not fit the encoding {encoding}. Choose another in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some dates state an offset from UTC and others do not. Write it with all of them or with none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamps are cut to {tick_s} s, up to {most:row has|rows have} the same; they were spread evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The JSON holds no list of rows. Export a list of objects, or one object a line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The JSON is cut or damaged. Export it again, best with one object a line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The archive is damaged and nothing in it could be unpacked. Copy it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The archive is damaged; what could be unpacked is shown. Copy it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed began at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; begin every run from the same state, best from room temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part came out as {percent:.0f} % of the run, which cannot be: the levels were not what they seemed. A hold test or a run with the bed off would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: it shows no warm-up at full power to tell what the heater draws. A run from cold, or a hold test, would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: no heater is seen to switch on and off ({changes} changes). A hold test or a run with the bed off would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: the heater is off in only {off_percent:.0f} % of the values. A hold test or a run with the bed off would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: the heater switches faster than the meter looks, so that the low level ({off_w:.0f} W) is a mixture. A hold test or a run with the bed off would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: values averaged over {interval_s:.0f} s mix the heater&apos;s on and off. Log faster, or make a hold test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen in this run: what switches ({step_w:.0f} W) is no larger than the rest of the machine and may be the hot end. A hold test or a run with the bed off would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part cannot be seen: processing has only {rows} values. Log at least every 30 s, or make a hold test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bed&apos;s part of a run without energy cannot be told.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bundle could not be written ({why}); give another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bundle has layout {version}, which a newer version of Samepart made; this one knows layouts up to {known}. Bring Samepart up to date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bundle holds only the SHA-256 of the log {name} ({expected}), so what depends on it is missing; give the bundle together with the folder of its logs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bundle is damaged ({what}); ask whoever made it for another copy, or copy it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bundle was not opened: it holds a file called {name!r}, which no bundle of Samepart does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bundle was not opened: {name} unpacks to more than {limit_mb} MB, which no study&apos;s file does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock was put by {hours} h at {at} (summer time); the trace runs on evenly over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column file is damaged ({error}). Write it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The database has no table with a time and a power column. Export the log as CSV instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The database is damaged ({error}). Copy it again while its program is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dates are not all written in one way. Write them as 2026-01-31 16:30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The elapsed time starts again {count:time|times}; how long the {count:~pause was|pauses were} is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The energy ({energy:.6g} Wh) is not what the display counted ({counted:.6g} Wh); the energy as written is taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The energy column falls again and again: it was taken as the energy of each interval.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The energy column holds nothing that could be used. Name another column in the Reading panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The energy counter leaps {count:time|times} by more than any load could draw; {count:~the leap was|the leaps were} taken out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The energy counter starts again {count:time|times}; it was made to run on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file changed while it was being read, so nothing of it was kept; drop it again when it is complete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file changed while it was read; rows may be missing. Read it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file claims {bytes} bytes but hardly any are stored: it is a hole. Copy the log again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file could not be read ({error}). Please report it with a shortened sample.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file could not be read: {error}. Copy it to another disk and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has grown: read on from where it ended, {rows:more row|more rows}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has {megabytes} MB, too much for prices. Keep the dates that matter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file holds no text. Save the prices as CSV: a date with time, and a price.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is empty. Save the log again on the meter&apos;s side.</source>
        <translation>Die Datei ist leer. Das Log am Messgerät noch einmal speichern.</translation>
    </message>
    <message>
        <source>The file is one line of {bytes} characters. A log has a line for each row; export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file may not be read by this user. Change its permissions or copy it elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file no longer begins with what was read from it, so the study was left as it is; to take the file as it is now, choose &apos;Read the file again&apos; on the Logs page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file no longer holds what was read from it as the log of {machine}, so the study was left as it is; add the file as a new log if that is what it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was read anew as it is now; what you decided about its runs was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was read but could not be copied into the study ({why}); drop it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first and the last cell of a sheet are more than {limit} cells apart. Delete what stands far from the log, or save the log as CSV.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first and the last date lie too far apart. Remove rows with a wrong date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder holds more than {limit} files; the rest is left out. Name a smaller folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder holds no file that could be a log. Name a folder that does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The headings are repeated {count:time|times} in the file; {count:~that line was|those lines were} passed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line holds no name with a value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is no JSON object.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The log has clock times but no date; a time that falls back counts as the next day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The log has its newest row first and was turned round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The log {name} could not be put into the bundle ({why}); only its SHA-256 is in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The log {name} is not the one that the figures were made from: its SHA-256 begins {found}, that of the bundle {expected}. It was left out; find the unchanged file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logs were taken in different ways ({ways}): a slowly sampled log says less of a switching bed; use one interval for all machines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The machines count as measured with {count} meters, so the error of a meter does not cancel between them; if one meter measured them all, say so; if not, hold one steady load against each meter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The machines were measured with {count} meters that were held against each other on one load; what the checks leave open is in the intervals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The nozzle was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; set one temperature for all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power adds up to {by_power_wh} Wh, the counter to {by_counter_wh} Wh. Check the kind of sampling and the units.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power adds up to {power_wh:.1f} Wh and the energy counter says {counter_wh:.1f} Wh, further apart than both explain; the surer one, {used:.1f} Wh, is used. Pulses that keep step with the meter&apos;s values can do this, and so can a column or a unit that was read wrongly: look at how the log was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices do not follow each other every minute to every day. Save half-hourly or hourly prices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room was at {own:.0f} °C with {machines} and at {usual:.0f} °C with {others}; test in one room and season, because a warm room spares the bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row could not be taken apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row has no energy; fill it in, in Wh or as two readings of the display.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row has {bytes} characters and is no row of a log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row has {cells:cell|cells} where {usual:is|are} usual. It may be cut or run into another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row names no machine; it was not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rows are numbered ({column}) and nothing tells the time; each row was taken as one second. Write a line such as Interval: 10 s above the headings, or export the log with its times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rows of one log of {machine} name different meters ({meters}); a log is of one meter, so choose it on the Logs page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rows {rows} have no energy yet; fill them in, in Wh or as two readings of the display.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same bytes as {other}; counted once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spreadsheet could not be opened ({error}). Save it again as xlsx or as CSV.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The standby power of {machine} is not known: the program itself failed on it ({what}, at {where}); please report this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The study is open for reading only, so nothing was changed; save it under another name and go on there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the {place} is not known of {machines} while it is of others; note it, or nobody can tell whether it was the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time in this row could not be read: {text}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time in this row is of a year that no log can be from (before {first} or after {last}): {text}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The times do not lie on an even grid. Save prices that each hold for the same time, such as half an hour; if the clock changes in the file, name the zone first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up shows a heater that the values each {interval_s:.0f} s then show hardly ever, or always, on. It may keep step with the meter and be missed, or met, each time: the interval is +-{percent:.0f} %. Log faster, average, or use a meter with an energy counter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are headings but no row of values below them ({first_line}). Save the log again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such file. Check the name and the folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no time zone called {zone}. Choose one such as Europe/Berlin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a folder, not a file. Name the files in it, or drop the folder on the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a pipe, a socket or a device, not an ordinary file. Save its data to a file first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is {what}, not a table of values. Export the log as text (CSV) or as a spreadsheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This link leads back to itself, so it is not followed. Name the file directly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This link points to a file that is not there. Restore the file or name it directly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This log is in the study already, so it was not added again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row has been read before; it was not used again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row holds no date with a price and was left out: &quot;{text}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two ways to the bed&apos;s part disagree: {first} says {first_percent:.0f} %, {second} says {second_percent:.0f} %, and +-{u_percent:.0f} % was expected at most. Check that both were made at the same bed temperature and in the same room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unpacked it would be larger than {limit_mb} MB, so it is not unpacked. Unpack it by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a value each {interval_s:.0f} s and no energy counter, which of the heater&apos;s pulses were met is chance: +-{percent:.0f} % of the energy. A meter that logs each second, averages, or has a counter would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {bytes} bytes the file is too large to be read at once. Split it by month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hold test: the bed was kept warm with no part made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a log kept in this study is damaged ({digest}); import the log again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a log of this study is not in the file ({digest}); import the log again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a study cannot be copied onto itself; choose another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a switch-on test: loads were turned on one after another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another part: its duration and energy do not agree with the runs of the compared part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another part: its duration or energy differs from the runs of the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program is using this file; wait until it has finished, then try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off, or another part: shorter than the run under way as the log ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off, or another part: shorter than the runs of the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken off: it ends early, with less energy than a whole part takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brought up to date from format {version}; the study as it was is kept: {backup}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heating with no part made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heating with no part made: it draws far less than this machine does while it makes the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heating with no part made: the motors do not move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its edges leave nothing of the log between them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its log has not been read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept warm with no part made: the motors do not move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out by hand: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made with the bed off: it tells the bed&apos;s part of the other runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no energy: the two readings of the display are the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing can be written here ({what}); save a copy of the study elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>row {row}</source>
        <translation>Zeile {row}</translation>
    </message>
    <message>
        <source>said to be no run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken for a run because it lasts as long and draws as the others do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk could not be read or written ({what}); save a copy of the study elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full and nothing more could be saved; make room on it, then go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log begins in the middle of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log begins or ends in the middle of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log begins while it warms up: its first seconds may be missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log ends in the middle of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log holds runs of several lengths, none made more often; the longest is taken for the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the log shows no idle before or after it, so where it begins and ends is not seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the program itself failed on a way to the bed&apos;s part ({what}, at {where}); please report this, with the log if you may</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the program itself failed on it ({what}, at {where}); please report this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the program itself failed on it ({what}, at {where}); please report this, with the file if you may</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the system lets nobody open or write it here ({what}); check the permissions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is a file of this name already; choose another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such file; it may have been moved or renamed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a database of another program, not a study; it was left as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder; open a study inside it, or drop the folder to read the logs in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no study; if it is a meter log, drop it on the window to import it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this study is damaged and cannot be read ({what}); it was left as it is: open a copy or a backup of it, or import its logs into a new study</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this study is open in another window, so it can be looked at but not changed here; close it there and open it again, or save a copy under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this study was written by a newer version of Samepart (format {version}; this one knows {known}); update Samepart to open it; the file was left as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this study was written by a newer version of Samepart ({what}); update Samepart to open it; the file was left as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this study was written by an older version (format {version}) and must be brought up to date, but nothing can be written here; copy it to a folder of your own and open the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this study, or the folder it is in, is write-protected, so it can be looked at but not changed; save a copy of it elsewhere to go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether a part was made cannot be told: the meter shows no change as small as motors make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:figure|figures} came out otherwise than its maker has them, first {where}: {here}, not {there} (the bundle was made by {program}, this is {this}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:figure|figures} of {of} could not be checked, because {logs:log|logs} of the bundle could not be read here; the others came out as its maker has them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:gap of|gaps of together} {seconds} s, {percent} % of the log.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:row has|rows have} no value for the power and {count:~was|were} passed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:row repeats|rows repeat} the one before exactly and {count:~was|were} counted once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:row shows|rows show} a negative power. The meter may be plugged in the wrong way round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:row was|rows were} out of order in time and {count:~was|were} sorted in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:row|rows} could not be used, the first at line {first}. The Reading panel lists {count:~it|them}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:stamp has|stamps have} two different values; the later one was taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:time has|times have} two prices; the one further down counts. Remove the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count:zero byte was|zero bytes were} taken out, as a logger leaves them when its power fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} files continue one log and were joined: {files}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} prices are missing; energy used then is not priced. Add the missing rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machines} were tested {days} days apart, and the room is not known of all: note its temperature, or test in one week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine} has a log too, and the row names no date: if the log holds this run, it counts twice; write the date, or take the row out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine} took {difference} more by {high} than by {low}, and the accuracy of both allows {allowed}; hold one steady load against each meter, and measure all machines with one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: processing took {percent} less time than in its other runs; check that the part was finished and made with the same settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: processing took {percent} longer than in its other runs, as after a pause; leave it out if it was interrupted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: the warm-up took {seconds} against {usual} in its other runs, as after a warm start; let the bed cool to room temperature before each run, or leave this one out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: the {place} was at {own:.0f} °C against {usual:.0f} °C in its other runs; leave it out, or make it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: {energy} Wh lies far from its other runs (Grubbs&apos; test: {statistic:.2f}, limit {limit:.2f}); look for a cause before leaving it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: {seconds} from the first heating to the first motion against {usual} in its other run; one was a warm start or the other soaked the bed: start each run alike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: {seconds} from the first heating to the first motion against {usual} in its other runs, as after a soak of the bed; start each run alike, or compare processing only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}, {run}: {share} of its time lies in gaps of the log; its energy there is known only within wide limits; leave it out, or use a meter with a counter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: a bed held at {bed_c:.0f} °C with {value:.0f} W is {times:.1f} times the heat that a plate of {area:.1f} dm² must lose ({floor:.0f} W by {method}), outside the usual {low:.1f} to {high:.1f}; check the bed&apos;s area, the temperatures, and what else was on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: a bed share of {value:.0f} % is outside the usual {low:.0f} to {high:.0f} %; check what was taken for the bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: its runs took from {short} to {long}; the same part made with the same settings takes nearly the same time, so look for a setting that differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: its runs took {way} and {way} in the order of making, {rise} from the first to the last (by a line through them, p = {p:.3f}); look for what changed, and make the runs again in a shuffled order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: no complete run of the part was found, so it is not in the comparison.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: one run only, so the spread from run to run is not known; make at least two more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: the edges of {runs} were set by hand and the others by the program; use one rule for all, or hand them back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: the meter shows steps of {step:.3g} W, {share} of its mean power; a meter with finer steps would say more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: two runs only, so its interval is wide; a third narrows it most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: {runs} left out by hand with no reason given; say why, or count what was left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: {value:.0f} W on average is outside what machines of this kind usually draw ({low:.0f} to {high:.0f} W); check the unit of the power column and which stretches count as runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{machine}: {value:.1f} W doing nothing is outside the usual {low:.0f} to {high:.0f} W; check that the level was standby, with nothing else plugged in behind the meter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{member} in the archive is locked with a password. Unpack it by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} in the bundle is no longer what it was when the bundle was made; figures made from it may not be those of its maker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent:.0f} % of the run&apos;s time lies in gaps of the log: too much to bridge from the power alone. Run it again with the meter logging throughout, or use a meter with an energy counter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent:.1f} % of the run&apos;s time lies in gaps of the log; they are bridged, and their doubt is in the interval. A log without gaps would narrow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{reading:.6g} and {other:.6g} Wh are too far apart for one load: check the digits and the unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{runs} of {machines} began {state} and the others {usual}, as was noted with them; begin every run from the same state.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{runs} of {machines} were read off a display by hand while other runs were logged: a reading is good to the display&apos;s last digit, and a slip leaves no trace; log all machines alike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} of its time lies in gaps of the log and no energy counter bridges them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text!r} is no energy; write a number, such as 21.4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text!r} is no temperature in degrees Celsius, such as 21.5; it was not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text!r} is no time such as 2026-06-15 14:30 or 14:30; the duration is not known.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
