"""What can hurt somebody while a test is run; it stands on every sheet and on the page that makes it."""

from core.language import mark

CAUTIONS = (
    mark(
        "Mains: use enclosed, approved plug-in meters within their rating; open neither a meter nor a "
        "machine. Work on mains wiring belongs to a qualified electrician under local codes."
    ),
    mark(
        "Hot parts: nozzle and bed burn. Do not pull the plug while the hot end is hot: its cooling fan "
        "stops too."
    ),
    mark(
        "Unattended machines: stay within reach, with a smoke alarm in the room and nothing that burns "
        "beside a machine; follow local rules."
    ),
)
