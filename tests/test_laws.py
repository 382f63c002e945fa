"""The laws of the code: where the CAD kernel may be loaded, and who may print."""

import ast
import re
import subprocess
import sys
import tomllib
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGE = ROOT / "seamcheck"
MODULES = sorted(path for path in PACKAGE.rglob("*.py"))
KERNEL_ROOMS = ("assembly", "kernel")
FILLED = {"_Reading", "_Running", "OtherFiles", "Progress", "Field"}


@cache
def trees():
    """Read when a law is asked for: each process of a run collects all tests."""
    return {path: ast.parse(path.read_text(encoding="utf-8")) for path in MODULES}


def name_of(path):
    return str(path.relative_to(ROOT))


def room(path):
    return path.relative_to(PACKAGE).parts[0]


def imports(path):
    """Names of all modules that a file imports anywhere."""
    for node in ast.walk(trees()[path]):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            yield node.module or ""


def test_only_assembly_and_kernel_import_the_cad_kernel():
    kernel = ("OCP", "cadquery", "vtk", "vtkmodules")
    outside = [path for path in MODULES if room(path) not in KERNEL_ROOMS]
    assert [f"{name_of(p)}: {m}" for p in outside for m in imports(p) if m.split(".")[0] in kernel] == []


def test_nobody_but_the_command_line_prints_or_exits():
    found = []
    for path in MODULES:
        if room(path) in ("cli", "isolation", "__main__.py"):  # a child ends itself; it prints nothing either
            continue
        for node in ast.walk(trees()[path]):
            called = ast.unparse(node.func) if isinstance(node, ast.Call) else ""
            dotted = ast.unparse(node) if isinstance(node, ast.Attribute) else ""
            if called in ("print", "exit", "quit", "input") or dotted in ("sys.exit", "sys.stdout", "click.echo"):
                found.append(f"{name_of(path)}:{node.lineno} {called or dotted}")
    assert found == []


def test_every_module_says_what_it_is_for():
    assert [name_of(path) for path, tree in trees().items() if tree.body and not ast.get_docstring(tree)] == []


def test_what_the_rooms_hand_on_is_frozen():
    """Structs are frozen; those that are filled while something runs stand here by name."""
    open_ones = set()
    for tree in trees().values():
        for node in ast.walk(tree):
            bases = [ast.unparse(base) for base in getattr(node, "bases", ())]
            if isinstance(node, ast.ClassDef) and {"Struct", "msgspec.Struct"} & set(bases):
                options = {keyword.arg: ast.unparse(keyword.value) for keyword in node.keywords}
                open_ones |= {node.name} if options.get("frozen") != "True" else set()
    assert open_ones == FILLED


def test_records_come_into_being_quickly():
    # Python compiles five functions for every frozen dataclass: with 130 of them a tenth of a second a review
    assert [name_of(path) for path in MODULES if "dataclasses" in imports(path)] == []


def test_every_library_that_is_imported_is_declared():
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    extras = [need for name, needs in project["optional-dependencies"].items() if name != "dev" for need in needs]
    declared = {re.split(r"[<>=\[ ]", need)[0].lower() for need in (*project["dependencies"], *extras)}
    names = {
        "OCP": "cadquery-ocp",
        "markupsafe": "jinja2",
        "skfem": "scikit-fem",
    }  # import name -> distribution that brings it
    imported = {m.split(".")[0] for path in MODULES for m in imports(path)} - {"", "seamcheck"}
    foreign = {names.get(m, m) for m in imported if m not in sys.stdlib_module_names}
    assert foreign <= declared


def loaded_by(statement):
    code = f"{statement}; import sys; print(' '.join(m for m in sys.modules if '.' not in m))"
    return set(subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout.split())


@pytest.mark.parametrize(
    "statement",
    ["import seamcheck", "import seamcheck.cli", "import seamcheck.cli.review", "import seamcheck.settings.settings"],
)
def test_what_help_needs_loads_nothing_heavy(statement):
    heavy = {"OCP", "cadquery", "numpy", "scipy", "shapely", "rich", "jinja2", "jsonschema", "vtkmodules", "trimesh"}
    assert not loaded_by(statement) & heavy


def test_the_parent_of_a_review_needs_no_kernel():
    assert "OCP" not in loaded_by("import seamcheck.pipeline, seamcheck.judge.judge, seamcheck.document.make")


def test_the_public_names_exist():
    import seamcheck

    for name in seamcheck.__all__:
        assert getattr(seamcheck, name) is not None
    with pytest.raises(AttributeError):
        _ = seamcheck.nothing_of_that_name
