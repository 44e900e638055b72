"""Why a stretch of a log is no run of the part, or not surely one: a sentence for every reason."""

SENTENCES: dict[str, str] = {
    "run.cut_at_start": "the log begins in the middle of it",
    "run.cut_at_end": "the log ends in the middle of it",
    "run.begins_hot": "the log begins while it warms up: its first seconds may be missing",
    "run.whole_log": "the log shows no idle before or after it, so where it begins and ends is not seen",
    "run.heated_without_processing": "heating with no part made: the motors do not move",
    "run.held_without_processing": "kept warm with no part made: the motors do not move",
    "run.far_below_the_runs": (
        "heating with no part made: it draws far less than this machine does while it makes the part"
    ),
    "run.movement_unseen": (
        "whether a part was made cannot be told: the meter shows no change as small as motors make"
    ),
    "run.like_the_others": "taken for a run because it lasts as long and draws as the others do",
    "run.loads_one_by_one": "a switch-on test: loads were turned on one after another",
    "run.another_part": "another part: its duration or energy differs from the runs of the part",
    "run.shorter_than_the_part": "broken off, or another part: shorter than the runs of the part",
    "run.shorter_than_one_cut": "broken off, or another part: shorter than the run under way as the log ends",
    "run.one_of_several_lengths": (
        "the log holds runs of several lengths, none made more often; the longest is taken for the part"
    ),
}
