"""A cluster of two workers on this computer: prints its address and stays until its input ends.

A process of its own, because the tests themselves may not touch the network.
"""

import sys

from distributed import LocalCluster


def main() -> None:
    with LocalCluster(
        n_workers=2, threads_per_worker=1, processes=True, host="127.0.0.1", dashboard_address=None
    ) as cluster:
        sys.stdout.write(f"{cluster.scheduler_address}\n")
        sys.stdout.flush()
        sys.stdin.read()


if __name__ == "__main__":
    main()
