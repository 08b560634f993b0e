"""What a frozen program goes without: modules that it never imports, and files that it never opens.

packaging/try_bundle.sh holds that nothing is missed: every paper, the window, a quotation with sets chosen together.
"""

from __future__ import annotations

import re
from typing import Final

# QtGui's own plugins need DBus; of the rest the window imports Core, Gui, Widgets, Svg and PrintSupport
_QT: Final = (
    *("Concurrent", "Designer", "Help", "Network", "OpenGL", "OpenGLWidgets", "Qml", "Quick", "QuickControls2"),
    *("QuickTest", "QuickWidgets", "Sql", "Test", "UiTools", "Xml"),
)
# the mixed-integer solver needs optimize, and what that imports
_SCIPY: Final = (
    *("cluster", "datasets", "differentiate", "fftpack", "integrate", "interpolate", "io", "misc", "ndimage", "odr"),
    *("signal", "stats"),
)
LEFT_OUT_MODULES: Final = [
    *(f"PySide6.Qt{name}" for name in _QT),
    *(f"scipy.{name}" for name in _SCIPY),
    *("IPython", "PIL._avif", "PIL._webp", "curses", "lib2to3", "matplotlib", "mypy", "numba", "pandas"),
    *("pydoc_data", "pytest", "readline", "setuptools", "tkinter"),
]
# a theme of GTK must come from the desktop it belongs to; without it Qt asks the desktop's portal for its dialogs
_OF_GTK: Final = (
    r"libg[dt]k-3|libgdk_pixbuf|libgio-2|libgmodule-2|libgobject-2|libepoxy|libcairo|libpixman|libpango|libharfbuzz"
    r"|libgraphite2|libatk|libatspi|libfribidi|libthai|libdatrie|libmount|libblkid|libselinux|libX(cursor|inerama"
    r"|composite|damage)|libjpeg\.so\.62"
)
_LOCALES: Final = "root|en|de|es|fr"  # of dates and figures on papers: those of model.language
_FILES: Final = re.compile(
    rf"^({_OF_GTK})"
    rf"|^babel/locale-data/(?!({_LOCALES})[_.])"
    r"|^PySide6/Qt/lib/libQt6(Qml|Quick|Network|Sql|Test|VirtualKeyboard|Labs|Pdf|EglF[Ss])\w*\.so"
    r"|^PySide6/Qt/(qml|translations/(?!qt(base)?_(de|es|fr)\.))"
    r"|^PySide6/Qt/plugins/(networkinformation|tls|sqldrivers|qmltooling|virtualkeyboard|generic|egldeviceintegrations)/"
    r"|^PySide6/Qt/plugins/platforms/libq(eglfs|linuxfb|minimal|vkkhrdisplay|vnc)"
    r"|^PySide6/Qt/plugins/platformthemes/libqgtk3"
    r"|^PySide6/Qt/plugins/wayland-graphics-integration-client/libvulkan"
    r"|^PySide6/Qt/plugins/platforminputcontexts/libqtvirtualkeyboard"
    r"|^PySide6/Qt/plugins/imageformats/libq(pdf|tga|tiff|wbmp|webp|icns)\."
    r"|(^|/)tests?/"
)


def is_left_out(place: str) -> bool:
    """Say whether the file at ``place`` in the folder of libraries stays away."""
    return _FILES.search(place.replace("\\", "/")) is not None
