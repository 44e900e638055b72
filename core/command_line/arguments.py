"""What the command line understands. Light: nothing slow is imported to show help."""

import argparse
from pathlib import Path
from typing import NoReturn

from core import __version__

BUNDLES = ("with-logs", "hashes-only")
BOUNDARIES = ("warm-up and processing", "processing only", "until cooled")

OVERVIEW = """\
usage: samepart                    open the window
       samepart FILE...            open the window with a study, or with meter logs
       samepart demo               the demo study in the window; with no screen: print the comparison
       samepart inspect FILE...    say how each log is read; nothing is stored
       samepart compare FILE...    find the runs and print the comparison
       samepart --version | --help

What the same part costs in energy on different material-extrusion machines.
A FILE may be a meter log, several logs of one machine, a study, a bundle, or a folder of logs.
"samepart inspect --help" and "samepart compare --help" tell of their options.

Exit status: 0 done; 2 the arguments are wrong; 3 a file could not be read (others still are).
"""

_FILES = "a meter log, a study, a bundle, or a folder of logs"


class _Parser(argparse.ArgumentParser):
    """Tells in one line what is wrong with the arguments, and where help is."""

    def error(self, message: str) -> NoReturn:
        self.exit(2, f'{self.prog}: {message}; "{self.prog} --help" lists what there is\n')


def inspect_parser() -> argparse.ArgumentParser:
    """The arguments of ``samepart inspect``."""
    return _of_files("inspect", "Say how each log is read. Nothing is stored.", "+")


def compare_parser() -> argparse.ArgumentParser:
    """The arguments of ``samepart compare``."""
    parser = _of_files(
        "compare", "Find the runs of the part in meter logs and compare what it costs on each machine.", "*"
    )
    parser.add_argument(
        "--run-sheet",
        type=Path,
        metavar="SHEET.csv",
        help="a filled run sheet: a row a run with machine, start, end and energy",
    )
    parser.add_argument(
        "--boundary",
        choices=BOUNDARIES,
        help="what belongs to a run; default: that of the study, or the first",
    )
    parser.add_argument(
        "--on",
        metavar="tcp://HOST:PORT",
        help="have the logs read by the workers of a Dask cluster, which must find them under the same paths "
        "and have this version; what is sent is not encrypted unless the address begins with tls://",
    )
    parser.add_argument(
        "--out", type=Path, metavar="FOLDER", help="also write tables, images and the report there"
    )
    parser.add_argument("--style", choices=("light", "dark"), default="light", help="style of the images")
    parser.add_argument(
        "--bundle",
        choices=BUNDLES,
        help="with --out: also write a bundle from which others can find every figure again, with the raw "
        "logs inside or only their SHA-256",
    )
    parser.add_argument(
        "--replace-personal",
        action="store_true",
        help="with --out: replace names of devices, addresses, serial numbers and the like in what is "
        "written; figures stay as they are",
    )
    return parser


def _of_files(command: str, description: str, how_many: str) -> argparse.ArgumentParser:
    """What the commands that read files have in common."""
    parser = _Parser(prog=f"samepart {command}", description=description, allow_abbrev=False)
    parser.add_argument("files", nargs=how_many, type=Path, metavar="FILE", help=_FILES)
    parser.add_argument("--json", action="store_true", help="print JSON instead of text")
    return parser


def version() -> str:
    """The line that ``samepart --version`` prints."""
    return f"samepart {__version__}"
