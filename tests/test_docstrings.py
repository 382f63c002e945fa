"""Public functions that take or return arrays say shape, unit, NaN and errors in their docstring.

A function's source is parsed, not run. What a docstring must name follows from the code: a shape and a unit where an
annotation holds an array, NaN where the body makes one, Raises where it raises.
"""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import seamcheck

PACKAGE = Path(seamcheck.__file__).parent
ROOMS = ("measure", "sections", "contour", "joint", "kernel")
SHAPE = re.compile(r"\((?:\.\.\.|[a-z]|\d+),(?: ?\w+)?(?:, ?\w+)*\)|any shape")
UNIT = re.compile(
    r"\b(?:mm|1/mm|degrees|rad|radians|J|J/mm|J/g|W|W/mm|N|N/mm|MPa|K|s|bool|[Ss]hare|ratio|count|dimensionless)\b|mm²|mm³|°|"
    r"\b(?:[Uu]nit vectors?|[Ii]ndex|[Ii]ndices|reasons?|(?:in|of) (?:the|its|their|any|one) unit)\b|\b[Mm]ask\b"
)


def public(tree: ast.Module) -> Iterator[tuple[str, ast.FunctionDef]]:
    """Public functions and methods of public classes, with their names."""
    for node in tree.body:
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
            yield node.name, node
        if isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            for item in node.body:
                if isinstance(item, ast.FunctionDef) and not item.name.startswith("_"):
                    yield f"{node.name}.{item.name}", item


def takes_arrays(function: ast.FunctionDef) -> bool:
    args = function.args
    notes = [a.annotation for a in (*args.posonlyargs, *args.args, *args.kwonlyargs)] + [function.returns]
    return any(re.search("ndarray|ArrayLike|Numbers", ast.unparse(note)) for note in notes if note is not None)


def makes_nan(node: ast.AST) -> bool:
    return (isinstance(node, ast.Attribute) and node.attr == "nan") or ast.unparse(node) == "float('nan')"


def lacks(function: ast.FunctionDef) -> list[str]:
    """What the docstring of a function leaves out."""
    said = ast.get_docstring(function) or ""
    body = [node for statement in function.body for node in ast.walk(statement)]
    wanted = {
        "a shape, as (n, 3)": SHAPE.search(said),
        "a unit, or what is counted": UNIT.search(said),
        "NaN": "NaN" in said or not any(makes_nan(node) for node in body),
        "Raises": "Raises" in said or not any(isinstance(n, ast.Raise) and n.exc is not None for n in body),
    }
    return [what for what, there in wanted.items() if not there]


@pytest.mark.parametrize("room", ROOMS)
def test_numeric_functions_say_shape_unit_nan_and_errors(room):
    missing = {}
    for file in sorted((PACKAGE / room).rglob("*.py")):
        for name, function in public(ast.parse(file.read_text("utf-8"))):
            if takes_arrays(function) and (lacking := lacks(function)):
                missing[f"{file.relative_to(PACKAGE)}:{name}"] = lacking
    assert missing == {}


def test_a_docstring_that_says_too_little_is_found():
    source = '''
def width(points: np.ndarray) -> np.ndarray:
    """How wide it is."""
    if not len(points):
        raise ValueError("nothing")
    return np.full(3, np.nan)
'''
    ((_, function),) = public(ast.parse(source))
    assert len(lacks(function)) == 4
