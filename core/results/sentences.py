"""Sentences of the comparison and its fairness, one a code: what, where, why, and what would mend it."""

SENTENCES: dict[str, str] = {
    # why a stretch does not count
    "stretch.other part": (
        "another part: its duration and energy do not agree with the runs of the compared part"
    ),
    "stretch.broken off": "broken off: it ends early, with less energy than a whole part takes",
    "stretch.cut": "the log begins or ends in the middle of it",
    "stretch.heating": "heating with no part made",
    "stretch.hold test": "a hold test: the bed was kept warm with no part made",
    "stretch.switch-on test": "a switch-on test: loads were turned on one after another",
    "stretch.nothing": "said to be no run",
    "stretch.bed_off": "made with the bed off: it tells the bed's part of the other runs",
    "stretch.left_out": "left out by hand: {reason}",
    "stretch.left_out_no_reason": "left out by hand",
    "stretch.no_energy": "no energy: the two readings of the display are the same",
    "stretch.gaps": "{share} of its time lies in gaps of the log and no energy counter bridges them",
    "stretch.no_trace": "its log has not been read",
    "stretch.fault": "the program itself failed on it ({what}, at {where}); please report this",
    "stretch.too_short": "its edges leave nothing of the log between them",
    "standby.fault": (
        "The standby power of {machine} is not known: the program itself failed on it ({what}, at {where}); "
        "please report this."
    ),
    "typed.no_duration": "Its duration was not noted, so its mean power is not known.",
    # files and studies
    "analysis.named_twice": "It is named twice; counted once.",
    "analysis.same_bytes": "The same bytes as {other}; counted once.",
    "analysis.fault": (
        "the program itself failed on it ({what}, at {where}); please report this, with the file if you may"
    ),
    "analysis.one_study": "One study at a time: {other} is left aside; compare them one after another.",
    "study.unreadable": "It cannot be read ({why}); check the path and your right to read it.",
    # run sheets
    "sheet.unreadable": "It could not be read as a run sheet: {why}; save it as CSV text.",
    "sheet.no_columns": (
        "It has no column named {missing}; a run sheet has the columns machine, run, start, end and energy."
    ),
    "sheet.no_machine": "The row names no machine; it was not used.",
    "sheet.no_energy": "The row has no energy; fill it in, in Wh or as two readings of the display.",
    "sheet.no_energies": (
        "The rows {rows} have no energy yet; fill them in, in Wh or as two readings of the display."
    ),
    "sheet.energies_differ": (
        "The energy ({energy:.6g} Wh) is not what the display counted ({counted:.6g} Wh); "
        "the energy as written is taken."
    ),
    "sheet.bad_temperature": "{text!r} is no temperature in degrees Celsius, such as 21.5; it was not used.",
    "sheet.logged": (
        "A log holds this run already, and knows more of it; of the row only its conditions were used."
    ),
    "sheet.known": "This row has been read before; it was not used again.",
    "sheet.meters_of_log": (
        "The rows of one log of {machine} name different meters ({meters}); a log is of one meter, "
        "so choose it on the Logs page."
    ),
    "sheet.check_alone": (
        "A same-load check takes two filled rows with the same name and two meters; this one was not used."
    ),
    "sheet.check_no_time": "A same-load check in Wh needs its start and end; this one was not used.",
    "sheet.check_apart": (
        "{reading:.6g} and {other:.6g} Wh are too far apart for one load: check the digits and the unit."
    ),
    "sheet.beside_log": (
        "{machine} has a log too, and the row names no date: if the log holds this run, it counts twice; "
        "write the date, or take the row out."
    ),
    "sheet.bad_number": "{text!r} is no energy; write a number, such as 21.4.",
    "sheet.bad_time": "{text!r} is no time such as 2026-06-15 14:30 or 14:30; the duration is not known.",
    "sheet.ends_before_start": "It ends before it starts; the duration is not known.",
    # fairness
    "fair.no_run": "{machine}: no complete run of the part was found, so it is not in the comparison.",
    "fair.one_run": (
        "{machine}: one run only, so the spread from run to run is not known; make at least two more."
    ),
    "fair.few_runs": "{machine}: two runs only, so its interval is wide; a third narrows it most.",
    "fair.warm_start": (
        "{machine}, {run}: the warm-up took {seconds} against {usual} in its other runs, "
        "as after a warm start; let the bed cool to room temperature before each run, or leave this one out."
    ),
    "fair.soak": (
        "{machine}, {run}: {seconds} from the first heating to the first motion "
        "against {usual} in its other runs, as after a soak of the bed; "
        "start each run alike, or compare processing only."
    ),
    "fair.unlike_starts": (
        "{machine}, {run}: {seconds} from the first heating to the first motion "
        "against {usual} in its other run; one was a warm start or the other soaked the bed: "
        "start each run alike."
    ),
    "fair.long": (
        "{machine}, {run}: processing took {percent} longer than in its other runs, as after a pause; "
        "leave it out if it was interrupted."
    ),
    "fair.short": (
        "{machine}, {run}: processing took {percent} less time than in its other runs; "
        "check that the part was finished and made with the same settings."
    ),
    "fair.durations": (
        "{machine}: its runs took from {short} to {long}; the same part made with the same settings takes "
        "nearly the same time, so look for a setting that differs."
    ),
    "fair.outlier": (
        "{machine}, {run}: {energy} Wh lies far from its other runs "
        "(Grubbs' test: {statistic:.2f}, limit {limit:.2f}); look for a cause before leaving it out."
    ),
    "fair.gaps": (
        "{machine}, {run}: {share} of its time lies in gaps of the log; "
        "its energy there is known only within wide limits; leave it out, or use a meter with a counter."
    ),
    "fair.meters": (
        "The machines count as measured with {count} meters, so the error of a meter does not cancel between "
        "them; if one meter measured them all, say so; if not, hold one steady load against each meter."
    ),
    "fair.meters_checked": (
        "The machines were measured with {count} meters that were held against each other on one load; "
        "what the checks leave open is in the intervals."
    ),
    "fair.meter_beyond": (
        "By the checks on one load {meter} most likely reads {error} too {way}, more than its accuracy of "
        "±{limit} % allows; repeat the check, state the accuracy anew, or use another meter."
    ),
    "fair.meters_differ": (
        "{machine} took {difference} more by {high} than by {low}, and the accuracy of both allows "
        "{allowed}; hold one steady load against each meter, and measure all machines with one."
    ),
    "fair.accuracy": (
        "Nobody stated the accuracy of {meters}: taken as ±1 % of reading and ±0.3 W; "
        "enter what the data sheet states."
    ),
    "fair.sampling": (
        "The logs were taken in different ways ({ways}): a slowly sampled log says less of a switching bed; "
        "use one interval for all machines."
    ),
    "fair.resolution": (
        "{machine}: the meter shows steps of {step:.3g} W, {share} of its mean power; "
        "a meter with finer steps would say more."
    ),
    "fair.hand": (
        "{machine}: the edges of {runs} were set by hand and the others by the program; "
        "use one rule for all, or hand them back."
    ),
    "fair.left_out": (
        "{machine}: {runs} left out by hand with no reason given; say why, or count what was left out."
    ),
    "fair.typed": (
        "{runs} of {machines} were read off a display by hand while other runs were logged: a reading is "
        "good to the display's last digit, and a slip leaves no trace; log all machines alike."
    ),
    "fair.bed_temperature": (
        "The bed was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; "
        "set one temperature for all."
    ),
    "fair.room_temperature": (
        "The room was at {own:.0f} °C with {machines} and at {usual:.0f} °C with {others}; "
        "test in one room and season, because a warm room spares the bed."
    ),
    "fair.start_temperature": (
        "The bed began at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; "
        "begin every run from the same state, best from room temperature."
    ),
    "fair.nozzle_temperature": (
        "The nozzle was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; "
        "set one temperature for all."
    ),
    "fair.first_layer_bed": (
        "At the first layer the bed was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; "
        "set one temperature for all."
    ),
    "fair.first_layer_nozzle": (
        "At the first layer the nozzle was at {own:.0f} °C on {machines} and at {usual:.0f} °C on {others}; "
        "set one temperature for all."
    ),
    "fair.run_temperature": (
        "{machine}, {run}: the {place} was at {own:.0f} °C against {usual:.0f} °C in its other runs; "
        "leave it out, or make it again."
    ),
    "fair.starting_state": (
        "{runs} of {machines} began {state} and the others {usual}, as was noted with them; "
        "begin every run from the same state."
    ),
    "fair.not_noted": (
        "The temperature of the {place} is not known of {machines} while it is of others; "
        "note it, or nobody can tell whether it was the same."
    ),
    "fair.drift": (
        "{machine}: its runs took {way} and {way} in the order of making, {rise} from the first to the last "
        "(by a line through them, p = {p:.3f}); look for what changed, and make the runs again in a "
        "shuffled order."
    ),
    "fair.common_drift": (
        "From run to run all machines took {way} and {way}, {rise} from the first to the last "
        "(by one line through all runs, p = {p:.3f}); whatever changed favours the machine that was "
        "tested at the right time: make the runs again in a shuffled order."
    ),
    "fair.rests": (
        "Between runs {short_machine} rested {short} and {long_machine} {long} (medians): a bed that is "
        "still warm spares a part of the warm-up; let all cool to the same temperature."
    ),
    "fair.far_apart": (
        "{machines} were tested {days} days apart, and the room is not known of all: "
        "note its temperature, or test in one week."
    ),
}
