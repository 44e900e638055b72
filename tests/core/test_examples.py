"""The examples in the docstrings of core are what the code answers."""

import doctest
import pkgutil
from importlib import import_module

import core

MODULES = [
    module.name
    for module in pkgutil.walk_packages(core.__path__, "core.")
    if not module.name.startswith("core._data")
]


def test_examples() -> None:
    runner = doctest.DocTestRunner(optionflags=doctest.NORMALIZE_WHITESPACE)
    told: list[str] = []
    for name in MODULES:
        for test in doctest.DocTestFinder().find(import_module(name)):
            if test.examples:  # running nothing takes its time too: each run looks at all files anew
                runner.run(test, out=told.append)
    assert told == [], "".join(told)
    assert runner.tries > 100
