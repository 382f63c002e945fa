"""A headless browser for the page's tests: chromium through selenium, with software WebGL."""

from __future__ import annotations

import json
import shutil
import time
from contextlib import contextmanager
from pathlib import Path

import pytest

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
DRIVER = shutil.which("chromedriver")

needs_browser = pytest.mark.skipif(
    CHROMIUM is None or DRIVER is None, reason="chromium and chromedriver are not on this machine"
)


class Browser:
    """One window; what it logged and asked for is at hand."""

    def __init__(self, driver) -> None:
        self.driver = driver

    def open(self, path: Path) -> None:
        self.driver.get(path.as_uri())
        self.wait("return document.documentElement.dataset.ready === 'yes'")

    def run(self, script: str, *args):
        return self.driver.execute_script(script, *args)

    def wait(self, script: str, seconds: float = 15.0) -> None:
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            if self.run(script):
                return
            time.sleep(0.03)
        raise AssertionError(f"not within {seconds:g} s: {script}\n{self.complaints()}")

    def complaints(self) -> list[str]:
        """Errors and warnings in the console; notes of the graphics driver about its own speed left out."""
        return [
            entry["message"]
            for entry in self.driver.get_log("browser")
            if entry["level"] in ("SEVERE", "WARNING") and "GL Driver Message" not in entry["message"]
        ]

    def requests(self) -> list[str]:
        """Addresses asked for, the page itself and data within it left out."""
        asked = []
        for entry in self.driver.get_log("performance"):
            message = json.loads(entry["message"])["message"]
            if message["method"] == "Network.requestWillBeSent":
                asked.append(message["params"]["request"]["url"])
        return [url for url in asked if not url.startswith(("file:", "data:", "blob:"))]

    def key(self, selector: str, *keys: str) -> None:
        from selenium.webdriver.common.by import By

        self.run("document.querySelector(arguments[0]).focus()", selector)
        self.driver.find_element(By.CSS_SELECTOR, selector).send_keys(*keys)

    def click(self, selector: str) -> None:
        from selenium.webdriver.common.by import By

        self.driver.find_element(By.CSS_SELECTOR, selector).click()

    def text(self, selector: str) -> str:
        return self.run("return document.querySelector(arguments[0])?.textContent ?? ''", selector)


@contextmanager
def browser(profile: Path, width: int = 1440, height: int = 900, dark: bool = False):
    """A browser with a fresh profile that talks to no network of its own accord."""
    from selenium import webdriver
    from selenium.webdriver.chrome.options import Options
    from selenium.webdriver.chrome.service import Service

    options = Options()
    options.binary_location = CHROMIUM
    for argument in (
        "--headless=new", "--no-sandbox", "--disable-gpu", "--use-angle=swiftshader",
        "--enable-unsafe-swiftshader", "--disable-background-networking", "--no-first-run",
        "--hide-scrollbars",
        f"--window-size={width},{height}", f"--user-data-dir={profile}",
    ):  # fmt: skip
        options.add_argument(argument)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
    driver = webdriver.Chrome(options=options, service=Service(DRIVER))
    try:
        size = {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": False}
        driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", size)
        media = [
            {"name": "prefers-color-scheme", "value": "dark" if dark else "light"},
            {"name": "prefers-reduced-motion", "value": "reduce"},
        ]
        driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"features": media})
        yield Browser(driver)
    finally:
        driver.quit()
