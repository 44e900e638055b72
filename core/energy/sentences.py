"""Sentences for what energy, bed share and uncertainty have to say of a run: what, why, how to mend."""

SENTENCES: dict[str, str] = {
    "energy.gaps": (
        "{percent:.1f} % of the run's time lies in gaps of the log; they are bridged, and their doubt is in"
        " the interval. A log without gaps would narrow it."
    ),
    "energy.gaps_many": (
        "{percent:.0f} % of the run's time lies in gaps of the log: too much to bridge from the power "
        "alone. Run it again with the meter logging throughout, or use a meter with an energy counter."
    ),
    "energy.gaps_counted": (
        "{percent:.1f} % of the run's time lies in gaps of the log; the energy counter tells what was used in"
        " them."
    ),
    "energy.ways_disagree": (
        "The power adds up to {power_wh:.1f} Wh and the energy counter says {counter_wh:.1f} Wh, further "
        "apart than both explain; the surer one, {used:.1f} Wh, is used. Pulses that keep step with the "
        "meter's values can do this, and so can a column or a unit that was read wrongly: look at how the "
        "log was read."
    ),
    "energy.sampling_lottery": (
        "With a value each {interval_s:.0f} s and no energy counter, which of the heater's pulses were met "
        "is chance: +-{percent:.0f} % of the energy. A meter that logs each second, averages, or has a "
        "counter would tell."
    ),
    "energy.heater_unseen": (
        "The warm-up shows a heater that the values each {interval_s:.0f} s then show hardly ever, or always,"
        " on. It may keep step with the meter and be missed, or met, each time: the interval is "
        "+-{percent:.0f} %. Log faster, average, or use a meter with an energy counter."
    ),
    "energy.in_step": (
        "The heater seems to run in step with the values each {interval_s:.0f} s: they meet it at the same "
        "few moments of its cycle, so what each misses does not even out: +-{percent:.1f} % of the energy. A "
        "meter that logs at another interval, averages, or has a counter would tell."
    ),
    "bed.no_energy": "The bed's part of a run without energy cannot be told.",
    "bed.few_rows": (
        "The bed's part cannot be seen: processing has only {rows} values. Log at least every 30 s, or make"
        " a hold test."
    ),
    "bed.not_switching": (
        "The bed's part cannot be seen in this run: no heater is seen to switch on and off ({changes} "
        "changes). A hold test or a run with the bed off would tell."
    ),
    "bed.averaged": (
        "The bed's part cannot be seen in this run: values averaged over {interval_s:.0f} s mix the "
        "heater's on and off. Log faster, or make a hold test."
    ),
    "bed.never_off": (
        "The bed's part cannot be seen in this run: the heater is off in only {off_percent:.0f} % of the "
        "values. A hold test or a run with the bed off would tell."
    ),
    "bed.too_fast": (
        "The bed's part cannot be seen in this run: the heater switches faster than the meter looks, so "
        "that the low level ({off_w:.0f} W) is a mixture. A hold test or a run with the bed off would tell."
    ),
    "bed.mixed": (
        "The bed's part cannot be seen in this run: short pulses of the bed, or those of the hot end, blur "
        "the level with the heater off, and two ways to it disagree. A hold test or a run with the bed off "
        "would tell."
    ),
    "bed.in_step": (
        "The bed's part cannot be seen in this run: the values, {interval_s:.0f} s apart, show the heater on "
        "more seldom than a bed that took {warm_up_s:.0f} s to warm up needs it. They may keep step with its "
        "pulses. Log faster, use a meter with an energy counter, or make a hold test."
    ),
    "bed.no_plateau": (
        "The bed's part cannot be seen in this run: it shows no warm-up at full power to tell what the "
        "heater draws. A run from cold, or a hold test, would tell."
    ),
    "bed.hot_end": (
        "The bed's part cannot be seen in this run: what switches ({step_w:.0f} W) is no larger than the "
        "rest of the machine and may be the hot end. A hold test or a run with the bed off would tell."
    ),
    "bed.no_sense": (
        "The bed's part came out as {percent:.0f} % of the run, which cannot be: the levels were not what "
        "they seemed. A hold test or a run with the bed off would tell."
    ),
    "bed.ways_disagree": (
        "Two ways to the bed's part disagree: {first} says {first_percent:.0f} %, {second} says "
        "{second_percent:.0f} %, and +-{u_percent:.0f} % was expected at most. Check that both were made at"
        " the same bed temperature and in the same room."
    ),
}
