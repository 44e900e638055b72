"""Every code that the numbers can raise has a sentence, and every sentence takes the facts it is given."""

import re
from pathlib import Path

import core
from core.energy.sentences import SENTENCES

FILES = ("energy/total.py", "beds/share.py", "beds/ways.py", "energy/lottery.py")


def test_codes_and_sentences_are_the_same() -> None:
    text = "".join((Path(core.__file__).parent / name).read_text("utf-8") for name in FILES)
    used = set(re.findall(r'"((?:energy|bed)\.[a-z_]+)"', text))
    assert used == set(SENTENCES)


def test_sentences_end_and_fit() -> None:
    for sentence in SENTENCES.values():
        assert sentence.endswith(".")
        assert "  " not in sentence
