"""The place where logs are analysed changes nothing of the answer, and says what is wrong with itself."""

import json
import os
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from importlib.util import find_spec
from pathlib import Path

import pytest

from core.executors import NoCluster, cluster
from tests.core.benches import alike, trace
from tests.core.test_analysis import written

ROOT = Path(__file__).parents[2]
MAIN = "import sys; from gui.command import main; sys.exit(main(sys.argv[1:]))"
NOT_INSTALLED = "import sys; sys.modules['distributed'] = None; "

with_dask = pytest.mark.skipif(find_spec("distributed") is None, reason="the extra [farm] is not installed")


def samepart(*arguments: str | Path, first: str = "", folder: Path) -> subprocess.CompletedProcess[str]:
    """The program in a process of its own, since these tests may not touch the network themselves."""
    return subprocess.run(
        [sys.executable, "-c", first + MAIN, *(str(a) for a in arguments)],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        timeout=120,
    )


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("farm")
    (folder / "logs").mkdir()
    for i, (name, level_w) in enumerate({"alder": 60.0, "birch": 66.0, "rowan": 90.0}.items()):
        written(folder / "logs" / f"{name}.csv", trace(alike(2, level_w=level_w, seed=i), seed=i))
    (folder / "logs" / "noise.csv").write_text("nothing,here\n")
    return folder


@contextmanager
def two_workers(folder: Path) -> Iterator[str]:
    """The address of a cluster of two workers whose working folder is `folder`."""
    with subprocess.Popen(
        [sys.executable, "-m", "tests.core.local_cluster"],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        yield process.stdout.readline().strip()
        process.stdin.close()


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    with two_workers(tmp_path_factory.mktemp("cluster")) as address:
        yield address


@with_dask
def test_a_cluster_of_two_workers_answers_bit_for_bit_the_same(logs: Path, address: str) -> None:
    here = samepart("compare", "logs", "--json", folder=logs)
    there = samepart("compare", "logs", "--json", "--on", address, folder=logs)
    assert here.returncode == there.returncode == 3  # the file that is no log
    assert there.stderr == here.stderr
    assert there.stdout == here.stdout
    machines = json.loads(there.stdout)["machines"]
    assert [(m["machine"], m["mean"]["runs"]) for m in machines] == [("alder", 2), ("birch", 2), ("rowan", 2)]


@with_dask
def test_workers_that_are_lost(tmp_path: Path) -> None:
    code = (
        "import os, sys\n"
        "from core.executors import NoCluster, cluster\n"
        "try:\n"
        "    with cluster(sys.argv[1]) as executor:\n"
        "        executor.submit(os._exit, 1).result(60)\n"
        "except NoCluster as error:\n"
        "    print(error)\n"
    )
    with two_workers(tmp_path) as address:
        answer = subprocess.run(
            [sys.executable, "-c", code, address], cwd=ROOT, capture_output=True, text=True, timeout=120
        )
    assert answer.stdout.startswith(f"the cluster at {address} was lost before all logs were read")


@with_dask
def test_nobody_at_the_address(logs: Path) -> None:
    answer = samepart("compare", "logs", "--on", "tcp://127.0.0.1:9", folder=logs)
    assert answer.returncode == 2
    assert answer.stdout == ""
    assert answer.stderr == (
        "samepart compare: no cluster answers at tcp://127.0.0.1:9; "
        "start its scheduler there, or leave --on away to use this computer\n"
    )


def test_dask_is_not_installed(logs: Path) -> None:
    answer = samepart("compare", "logs", "--on", "tcp://127.0.0.1:9", first=NOT_INSTALLED, folder=logs)
    assert answer.returncode == 2
    (line,) = answer.stderr.splitlines()
    assert line.startswith("samepart compare: a cluster needs the library Dask, which is not installed here")
    assert "samepart[farm]" in line


@pytest.mark.parametrize("address", ["farm", "farm:8786", "http://farm:8786", ""])
def test_what_is_no_address_of_a_cluster(address: str) -> None:
    with pytest.raises(NoCluster, match=r"looks like tcp://HOST:PORT"), cluster(address):
        pass


def test_without_a_cluster_dask_is_not_loaded(logs: Path) -> None:
    code = MAIN.replace("sys.exit(", "print(", 1) + "; print('distributed' in sys.modules, file=sys.stderr)"
    answer = subprocess.run(
        [sys.executable, "-c", code, "compare", str(logs / "logs" / "alder.csv")],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert answer.stderr.splitlines()[-1] == "False"


def test_workers_that_cannot_do_the_work() -> None:
    from core import __version__
    from core.executors import _check_workers

    _check_workers("tcp://farm:1", {"tcp://a:1": __version__})
    for versions, told in (
        ({}, "has no workers"),
        ({"tcp://a:1": __version__, "tcp://b:1": "0.0.1"}, "tcp://b:1 has samepart 0.0.1"),
        ({"tcp://a:1": ImportError("samepart")}, "tcp://a:1 has no samepart"),
    ):
        with pytest.raises(NoCluster, match=told):
            _check_workers("tcp://farm:1", versions)
