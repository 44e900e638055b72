"""What the machine did, read from the power alone: levels, stretches of heating, runs of the part."""

from core.activity.finder import find
from core.activity.second_look import second_look
from core.activity.values import Activity, Stretch

__all__ = ["Activity", "Stretch", "find", "second_look"]
