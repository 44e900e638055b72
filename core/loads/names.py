"""What a step of a switch-on test can be called: the loads of a material-extrusion machine."""

from typing import Final

from attrs import frozen

from core.language import mark, tr

#: key of what is on before the first step
ELECTRONICS: Final = "electronics"
#: a name belongs to the step found this near [s]
NEAR_S: Final = 20.0


@frozen
class Load:
    """A load.

    Parameters
    ----------
    key : str
        As kept in studies.
    word : str
        As people read it, in English.
    in_processing : bool
        Whether it draws its watts all through processing: a heater that heats up does not.
    held_by : str
        For a heater that heats up, the load that it is once it holds its temperature.
    """

    key: str
    word: str
    in_processing: bool = True
    held_by: str = ""

    @property
    def title(self) -> str:
        """As people read it, in the language of the window."""
        return tr(self.word)


LOADS: Final[tuple[Load, ...]] = (
    Load(ELECTRONICS, mark("electronics")),
    Load("fans", mark("fans that always run")),
    Load("part fan", mark("part fan")),
    Load("motors holding", mark("motors holding")),
    Load("motors moving", mark("motors moving")),
    Load("hot end heating", mark("hot end heating"), in_processing=False, held_by="hot end holding"),
    Load("hot end holding", mark("hot end holding")),
    Load("bed heating", mark("bed heating"), in_processing=False, held_by="bed holding"),
    Load("bed holding", mark("bed holding")),
    Load("lamp", mark("lamp")),
    Load("screen", mark("screen")),
    Load("camera", mark("camera")),
)
BY_KEY: Final = {load.key: load for load in LOADS}
#: heating up, by what it becomes
HEATING_OF: Final = {load.held_by: load.key for load in LOADS if load.held_by}


@frozen
class StepName:
    """The user's word for a step of a switch-on test.

    Parameters
    ----------
    log_id : str
    at_s : float
        When the step is, on the log's clock: a step found near it carries the name. [s]
    load : str
        Key of a load; empty for none, where the program would say one.
    """

    log_id: str
    at_s: float
    load: str


@frozen
class IdleLoad:
    """The user's word on whether a load of a machine runs while the machine is idle."""

    machine_id: str
    load: str
    is_idle: bool
