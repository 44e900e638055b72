"""What Qt needs of a Linux system, looked for before Qt is: it ends the process when it finds too little."""

import ctypes
import os
import sys

#: shared library -> package that holds it, by the names of the Debian family
_LIBRARIES = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
}
#: wanted on top of them by the platform that speaks to an X server
_X11_LIBRARIES = {
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-shape.so.0": "libxcb-shape0",
}
ALL_PACKAGES = " ".join(_LIBRARIES.values())


def missing_packages() -> str:
    """The packages without which the window cannot open, parted by spaces; empty when nothing is missing."""
    if not sys.platform.startswith("linux"):
        return ""
    wanted = dict(_LIBRARIES)
    platform = os.environ.get("QT_QPA_PLATFORM", "").split(":")[0]
    if platform == "xcb" or (not platform and not os.environ.get("WAYLAND_DISPLAY")):
        wanted |= _X11_LIBRARIES
    return " ".join(package for library, package in wanted.items() if not _is_there(library))


def _is_there(library: str) -> bool:
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True
