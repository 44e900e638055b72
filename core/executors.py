"""Where logs are analysed: here and now, in processes of this computer, or on a cluster that the user names.

Rules: a log is analysed by a pure function of its file, so that nothing of the answer depends on the place.
The network is reached only when the user has named a cluster, and only through Dask's own client.
"""

import os
from collections.abc import Iterator, Sequence
from concurrent.futures import CancelledError, Executor
from contextlib import AbstractContextManager, contextmanager, nullcontext
from importlib import metadata
from pathlib import Path
from typing import Final

from core import __version__

#: from so many logs on they are analysed by several processes ...
MANY_LOGS = 200
#: ... unless one is so large that handing its trace over costs more than that saves [bytes]
LARGE_LOG: Final = 32_000_000
#: how long to wait for a cluster [s]
_PATIENCE_S: Final = 5.0
_SCHEMES: Final = ("tcp://", "tls://")


class NoCluster(Exception):
    """The cluster that was named cannot be used; the text says why and what would mend it."""


def local_processes(paths: Sequence[Path]) -> AbstractContextManager[Executor | None]:
    """Processes of this computer for many logs; none for a few, read before the first process has started.

    Parameters
    ----------
    paths : sequence of Path
        Files, and folders that are walked.
    """
    from concurrent.futures import ProcessPoolExecutor
    from multiprocessing import get_context

    from core.logs import find_files

    files, _ = find_files(paths)
    cores = os.cpu_count() or 1
    if cores < 2 or len(files) < MANY_LOGS or any(path.stat().st_size > LARGE_LOG for path, _ in files):
        return nullcontext()
    return ProcessPoolExecutor(min(cores, len(files)), mp_context=get_context("spawn"))


@contextmanager
def cluster(address: str) -> Iterator[Executor]:
    """The workers of a Dask cluster, for as long as they are needed.

    Every worker must have the same version of this program, and find the logs under the same paths.

    Parameters
    ----------
    address : str
        Of the cluster's scheduler, such as ``"tcp://farm:8786"``.

    Raises
    ------
    NoCluster
        If Dask is not installed, nobody answers at the address, or a worker cannot do the work.
    """
    if not address.startswith(_SCHEMES):
        raise NoCluster(f"{address} is no address of a cluster; it looks like tcp://HOST:PORT")
    try:
        from distributed import Client, KilledWorker
        from distributed.comm.core import CommClosedError
    except ImportError as error:
        raise NoCluster(
            "a cluster needs the library Dask, which is not installed here; "
            'install it with: python -m pip install "samepart[farm]"'
        ) from error
    _hush()
    try:
        client = Client(address, timeout=_PATIENCE_S, set_as_default=False)
    except (OSError, ValueError) as error:
        raise NoCluster(
            f"no cluster answers at {address}; start its scheduler there, "
            "or leave --on away to use this computer"
        ) from error
    try:
        # an answer from each worker: its version, or what went wrong when it was asked
        _check_workers(address, client.run(metadata.version, "samepart", on_error="return"))
        yield client.get_executor(pure=False)
    except (KilledWorker, CommClosedError, CancelledError) as error:
        raise NoCluster(
            f"the cluster at {address} was lost before all logs were read, and nothing was written; "
            "start it again, or leave --on away to use this computer"
        ) from error
    finally:
        client.close()


def _hush() -> None:
    """Keep Dask's own log off standard error, where each line is a message of ours."""
    import logging

    logging.getLogger("distributed").setLevel(logging.CRITICAL)


def _check_workers(address: str, versions: dict[str, str | BaseException]) -> None:
    if not versions:
        raise NoCluster(f"the cluster at {address} has no workers; start at least one")
    for worker, version in sorted(versions.items()):
        if not isinstance(version, str):
            raise NoCluster(f"the worker {worker} has no samepart; install version {__version__} there")
        if version != __version__:
            raise NoCluster(
                f"the worker {worker} has samepart {version} and this computer {__version__}; "
                "one answer needs one version everywhere"
            )
