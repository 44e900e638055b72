"""Fuzz a target, led by coverage: ``python -m tests.fuzz TARGET SECONDS`` (needs ``pip install atheris``).

What makes a target raise is kept as a file ``crash-…`` in the working folder, and said.
"""

import sys
import tempfile
from pathlib import Path

import atheris

with atheris.instrument_imports(include=["core"]):
    from tests.fuzz.targets import TARGETS, seeds


def main(name: str, seconds: int) -> None:
    """Fuzz for so long; the process ends with the fuzzer."""
    folder = Path(tempfile.mkdtemp(prefix="samepart-fuzz-"))
    corpus = folder / "corpus"
    corpus.mkdir()
    for i, data in enumerate(seeds(name, folder)):
        (corpus / f"seed {i}").write_bytes(data)
    limits = [f"-max_total_time={seconds}", "-timeout=60", "-rss_limit_mb=4096", "-max_len=400000"]
    atheris.Setup([sys.argv[0], *limits, str(corpus)], lambda data: TARGETS[name](data, folder))
    atheris.Fuzz()


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]))
