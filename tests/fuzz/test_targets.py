"""Good and damaged bytes go through every target; with atheris there, some are led by coverage.

``SAMEPART_FUZZ_S=600`` damages for ten minutes a target; ``SAMEPART_FUZZ_SEED`` takes another sequence.
"""

import os
import random
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.core.logs.test_mutations import damaged
from tests.fuzz.targets import TARGETS, seeds

_FEW = 30


@pytest.mark.parametrize("name", TARGETS)
def test_damaged_bytes_are_answered_or_refused(name: str, tmp_path: Path) -> None:
    seed = int(os.environ.get("SAMEPART_FUZZ_SEED", "3"))
    until = time.monotonic() + float(os.environ.get("SAMEPART_FUZZ_S", "0"))
    good = seeds(name, tmp_path)
    for data in good[:20]:
        TARGETS[name](data, tmp_path)
    count = 0
    while count < _FEW or time.monotonic() < until:
        rng = random.Random(f"{seed} {count}")
        data = damaged(rng.choice(good), rng)
        try:
            TARGETS[name](data, tmp_path)
        except Exception as error:
            raise AssertionError(f"seed {seed}, input {count} of {name}") from error
        count += 1


@pytest.mark.parametrize("name", TARGETS)
def test_bytes_led_by_coverage(name: str, tmp_path: Path) -> None:
    pytest.importorskip("atheris")
    done = subprocess.run(
        [sys.executable, "-m", "tests.fuzz", name, "5"],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr[-3000:]
