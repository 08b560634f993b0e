"""Draws the icons of packaging/icons/ from the vector ones: the same bytes for the same drawing.

Usage, in the project's environment: python packaging/icons.py

Windows reads spoutline.ico, macOS spoutline.icns, desktops that show no vectors the PNG files.
"""

from __future__ import annotations

import os
import sys
from io import BytesIO
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[1]
VECTOR = PROJECT / "packaging" / "linux" / "spoutline.svg"
FOLDER = PROJECT / "packaging" / "icons"
ICO_SIZES = (16, 24, 32, 48, 64, 128, 256)
PNG_SIZES = (48, 64, 128, 256)
ICNS_SIZES = (16, 32, 64, 128, 256, 512)


def png(size: int) -> bytes:
    """Return the icon as PNG, ``size`` pixels wide and high, clear where nothing is drawn."""
    from PySide6.QtCore import QBuffer, QIODevice
    from PySide6.QtGui import QImage, QPainter
    from PySide6.QtSvg import QSvgRenderer

    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(0)
    painter = QPainter(image)
    QSvgRenderer(str(VECTOR)).render(painter)
    painter.end()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")
    return bytes(buffer.data().data())


def main() -> int:
    """Draw all icons and return the exit code."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PIL import Image
    from PySide6.QtGui import QGuiApplication

    app = QGuiApplication(sys.argv[:1])
    FOLDER.mkdir(exist_ok=True)
    for size in PNG_SIZES:
        (FOLDER / f"spoutline-{size}.png").write_bytes(png(size))
    for name, sizes in (("spoutline.ico", ICO_SIZES), ("spoutline.icns", ICNS_SIZES)):
        images = [Image.open(BytesIO(png(size))) for size in sizes]
        named = {"sizes": [(size, size) for size in sizes]} if name.endswith("ico") else {}
        images[-1].save(FOLDER / name, append_images=images[:-1], **named)
    app.quit()
    return 0


if __name__ == "__main__":
    sys.exit(main())
