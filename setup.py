"""Packages of the distribution; everything else is declared in pyproject.toml.

The sample models lie at the top of the project and are installed as ``seamcheck/sample_models``, without the script
that draws them. pyproject.toml has no way to say that beside "every package that is found".
"""

from setuptools import find_packages, setup
from setuptools.command.build_py import build_py

SAMPLES = "seamcheck.sample_models"


class Build(build_py):
    """Takes the files of the sample models, and no module from beside them."""

    def find_package_modules(self, package: str, package_dir: str) -> list[tuple[str, str, str]]:
        return [] if package == SAMPLES else super().find_package_modules(package, package_dir)


setup(
    packages=[*find_packages(include=["seamcheck", "seamcheck.*"]), SAMPLES],
    package_dir={SAMPLES: "sample_models"},
    cmdclass={"build_py": Build},
)
