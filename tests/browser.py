"""A browser without a window, driven over the DevTools protocol through a pipe: opens a file, types, clicks, saves.

Debian's ``chromium``; a machine without one skips the tests that ask for it and says so.
"""

from __future__ import annotations

import base64
import json
import os
import shutil
import signal
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from select import select
from typing import Any, Final

import pytest

CHROMIUM: Final = shutil.which("chromium") or shutil.which("chromium-browser")
needs_browser = pytest.mark.skipif(CHROMIUM is None, reason="no chromium on this machine: `apt install chromium`")
_LONGEST_S: Final = 60.0
_FIRST_AGREED: Final = 1_000_000_000  # numbers of answers to dialogs begin above those of commands
_FLAGS: Final = (
    "--headless=new --no-sandbox --disable-gpu --disable-dev-shm-usage --no-first-run --disable-extensions "
    "--disable-background-networking --disable-sync --disable-component-update --remote-debugging-pipe"
)


class Browser:
    """One page of a browser; every address that it asks for is in ``asked``, what its console says in ``said``."""

    def __init__(self, inbox: int, outbox: int) -> None:
        self._inbox, self._outbox, self._rest = inbox, outbox, b""
        self._count, self._agreed = 0, _FIRST_AGREED
        self.asked: list[str] = []
        self.said: list[str] = []
        target = self._send("Target.createTarget", url="about:blank")["targetId"]
        self._session = self._send("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        for domain in ("Page", "Runtime", "Network", "Log", "DOM"):
            self.send(f"{domain}.enable")

    def send(self, method: str, **parameters: object) -> dict[str, Any]:
        """Send a command to the page and return its result."""
        return self._send(method, self._session, **parameters)

    def open(self, path: Path, *, scripts: bool = True) -> None:
        """Open a file, without any network, and wait until it is there."""
        self.send("Network.emulateNetworkConditions", offline=True, latency=0, downloadThroughput=0, uploadThroughput=0)
        self.send("Emulation.setScriptExecutionDisabled", value=not scripts)
        self.send("Page.navigate", url=path.as_uri())
        self.until("document.readyState === 'complete' && location.protocol === 'file:'")

    def run(self, script: str) -> Any:
        """Return what a script in the page returns."""
        done = self.send("Runtime.evaluate", expression=script, returnByValue=True, awaitPromise=True)
        assert "exceptionDetails" not in done, done["exceptionDetails"]
        return done["result"].get("value")

    def until(self, condition: str) -> None:
        """Wait until a condition holds in the page."""
        end = time.monotonic() + _LONGEST_S
        while not self.run(f"Boolean({condition})"):
            assert time.monotonic() < end, condition
            time.sleep(0.05)

    def write(self, field: str, text: str) -> None:
        """Type into a field as a person does, over what stands there."""
        self.run(f"document.getElementById({json.dumps(field)}).closest('details').open = true")
        self.run(f"(f => {{ f.focus(); f.select(); }})(document.getElementById({json.dumps(field)}))")
        if text:
            self.send("Input.insertText", text=text)
        else:
            self.press("Backspace", 8)

    def press(self, key: str, code: int, text: str = "") -> None:
        """Press a key; ``code`` is the one that Windows numbers keys by."""
        for kind in ("keyDown", "keyUp"):
            pressed = {"text": text} if text and kind == "keyDown" else {}
            self.send("Input.dispatchKeyEvent", type=kind, key=key, code=key, windowsVirtualKeyCode=code, **pressed)

    def choose(self, field: str, value: str) -> None:
        """Choose an option of a list."""
        script = "((f, v) => { f.value = v; f.dispatchEvent(new Event('input', {bubbles: true})); })"
        self.run(f"{script}(document.getElementById({json.dumps(field)}), {json.dumps(value)})")

    def click(self, field: str) -> None:
        """Click in the middle of an element."""
        x, y = self._middle(field)
        self._mouse("mousePressed", x, y)
        self._mouse("mouseReleased", x, y)

    def draw(self, field: str, *, by: float = 60.0) -> None:
        """Draw a line from the middle of an element."""
        x, y = self._middle(field)
        self._mouse("mousePressed", x, y)
        for step in range(1, 6):
            self._mouse("mouseMoved", x + by * step / 5, y + 10 * (step % 2))
        self._mouse("mouseReleased", x + by, y)

    def give(self, field: str, *paths: Path) -> None:
        """Choose files in a field for files."""
        found = self.send("Runtime.evaluate", expression=f"document.getElementById({json.dumps(field)})")
        named = [str(path) for path in paths]
        self.send("DOM.setFileInputFiles", files=named, objectId=found["result"]["objectId"])

    def keep_downloads_in(self, folder: Path) -> None:
        """Let downloads go into a folder, unasked."""
        self._send("Browser.setDownloadBehavior", behavior="allow", downloadPath=str(folder), eventsEnabled=False)

    def show_as(self, width: int, height: int, scheme: str = "light", *, printed: bool = False) -> None:
        """Show the page as wide and high as a screen, in light or dark, or as it is printed."""
        self.send("Emulation.setDeviceMetricsOverride", width=width, height=height, deviceScaleFactor=1, mobile=True)
        wanted = [{"name": "prefers-color-scheme", "value": scheme}]
        self.send("Emulation.setEmulatedMedia", media="print" if printed else "", features=wanted)

    def picture(self, path: Path) -> None:
        """Keep what the screen shows as a PNG file."""
        path.write_bytes(base64.b64decode(self.send("Page.captureScreenshot", format="png")["data"]))

    def _middle(self, field: str) -> tuple[float, float]:
        box = self.run(
            f"(e => {{ e.scrollIntoView({{block: 'center'}}); const b = e.getBoundingClientRect();"
            f" return [b.x + b.width / 2, b.y + b.height / 2]; }})(document.getElementById({json.dumps(field)}))"
        )
        return box[0], box[1]

    def _mouse(self, kind: str, x: float, y: float) -> None:
        self.send("Input.dispatchMouseEvent", type=kind, x=x, y=y, button="left", buttons=1, clickCount=1)

    def _send(self, method: str, session: str | None = None, **parameters: object) -> dict[str, Any]:
        self._count += 1
        message = {"id": self._count, "method": method, "params": parameters}
        if session is not None:
            message["sessionId"] = session
        os.write(self._outbox, json.dumps(message).encode() + b"\0")
        while (answer := self._next()).get("id") != self._count:
            self._note(answer)
        assert "error" not in answer, (method, answer["error"])
        result: dict[str, Any] = answer["result"]
        return result

    def _note(self, event: dict[str, Any]) -> None:
        told = event.get("params", {})
        if event.get("method") == "Network.requestWillBeSent":
            self.asked.append(told["request"]["url"])
        elif event.get("method") == "Log.entryAdded":
            self.said.append(told["entry"]["text"])
        elif event.get("method") == "Runtime.exceptionThrown":
            self.said.append(str(told["exceptionDetails"]))
        elif event.get("method") == "Page.javascriptDialogOpening":
            # its answer, under a number that no command waits for, is passed over like an event
            self._agreed += 1
            answer = {"id": self._agreed, "method": "Page.handleJavaScriptDialog", "params": {"accept": True}}
            os.write(self._outbox, json.dumps({**answer, "sessionId": self._session}).encode() + b"\0")

    def _next(self) -> dict[str, Any]:
        while b"\0" not in self._rest:
            ready, _, _ = select([self._inbox], [], [], _LONGEST_S)
            assert ready, "the browser does not answer"
            piece = os.read(self._inbox, 1 << 20)
            assert piece, "the browser has ended"
            self._rest += piece
        message, _, self._rest = self._rest.partition(b"\0")
        read: dict[str, Any] = json.loads(message)
        return read


@contextmanager
def browser(folder: Path) -> Iterator[Browser]:
    """Start a browser with a profile of its own in ``folder``, and end it."""
    assert CHROMIUM is not None
    to_read, outbox = os.pipe()
    inbox, to_write = os.pipe()
    # it reads commands at 3 and answers at 4
    line = f'exec "$0" {_FLAGS} --user-data-dir="$1" 3<&{to_read} 4>&{to_write} about:blank'
    environment = {**os.environ, "HOME": str(folder)}
    process = subprocess.Popen(
        ["/bin/bash", "-c", line, CHROMIUM, str(folder / "profile")],
        pass_fds=(to_read, to_write),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        env=environment,
        start_new_session=True,
    )
    os.close(to_read)
    os.close(to_write)
    try:
        yield Browser(inbox, outbox)
    finally:
        os.close(outbox)
        os.close(inbox)
        os.killpg(process.pid, signal.SIGKILL)
        process.wait(timeout=10)
