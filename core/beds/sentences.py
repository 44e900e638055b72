"""Sentences on the bed of a run and on what is plausible for a machine."""

SENTENCES: dict[str, str] = {
    "bed.no_temperature": (
        "A hold test of this machine would tell the bed's part if the bed's temperature in the run were "
        "known: set the bed temperature of the test, or note that of the run."
    ),
    "bed.fault": (
        "the program itself failed on a way to the bed's part ({what}, at {where}); please report this, with "
        "the log if you may"
    ),
    "plausible.mean_w": (
        "{machine}: {value:.0f} W on average is outside what machines of this kind usually draw "
        "({low:.0f} to {high:.0f} W); check the unit of the power column and which stretches count as runs."
    ),
    "plausible.bed_share": (
        "{machine}: a bed share of {value:.0f} % is outside the usual {low:.0f} to {high:.0f} %; "
        "check what was taken for the bed."
    ),
    "plausible.standby_w": (
        "{machine}: {value:.1f} W doing nothing is outside the usual {low:.0f} to {high:.0f} W; "
        "check that the level was standby, with nothing else plugged in behind the meter."
    ),
    "plausible.hold_w": (
        "{machine}: a bed held at {bed_c:.0f} °C with {value:.0f} W is {times:.1f} times the heat that a "
        "plate of {area:.1f} dm² must lose ({floor:.0f} W by {method}), outside the usual "
        "{low:.1f} to {high:.1f}; check the bed's area, the temperatures, and what else was on."
    ),
}
