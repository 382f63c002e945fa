"""The rough middle of a band-shaped polygon: Voronoi graph of its border, pruned and divided into chains."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

import numpy as np
import shapely
from msgspec import Struct
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components
from scipy.spatial import Voronoi
from shapely import Polygon

_SPLINTER = 0.1  # of the longest connected part: shorter ones are what a narrow place cut off
_SPUR = 2.2  # a side branch shorter than this many local half-widths only leads into a corner


class Chain(Struct, frozen=True, eq=False):
    """A stretch of the skeleton: points (n, 2) mm; closed; ends: node numbers of junctions, None for an open end."""

    points: np.ndarray
    closed: bool
    ends: tuple[int | None, int | None]


def skeleton(region: Polygon, width: float) -> tuple[list[Chain], dict[int, np.ndarray]]:
    """Chains of the medial axis of one polygon, and the places (2,) mm of its junctions by number.

    Parameters
    ----------
    region : a band, with holes where it runs in loops
    width : mm, typical width of the band; sets the sampling of the border

    Notes
    -----
    The Voronoi vertices of border samples approach the medial axis (Brandt and Algazi, CVGIP: Image
    Understanding 55, 1992). Exactness comes later, from equidistance.
    """
    places, reach, network = _inner_network(region, width)
    chains: list[Chain] = []
    nodes: dict[int, np.ndarray] = {}
    for part in _long_parts(network):
        found, junctions = _chains(_pruned(part, reach), places)
        chains += found
        nodes |= junctions
    return chains, nodes


Network = dict[int, dict[int, float]]
"""A graph: node -> its neighbours -> mm to each; nodes in order of their numbers."""


def _long_parts(network: Network) -> list[Network]:
    """The connected parts of the graph that are no mere splinters, the longest first."""
    if not network:
        return []
    nodes = np.array(list(network))
    start = np.repeat(nodes, [len(ahead) for ahead in network.values()])
    end = np.array([node for ahead in network.values() for node in ahead])
    graph = coo_array(
        (np.ones(len(start)), (np.searchsorted(nodes, start), np.searchsorted(nodes, end))), shape=(len(nodes),) * 2
    )
    _, label = connected_components(graph, directed=False)
    parts: list[Network] = [{} for _ in range(int(label.max()) + 1)]
    for node, part in zip(nodes.tolist(), label.tolist(), strict=True):
        parts[part][node] = network[node]
    length = [sum(sum(ahead.values()) for ahead in part.values()) / 2 for part in parts]
    order = sorted(range(len(parts)), key=lambda i: -length[i])
    return [parts[i] for i in order if length[i] > _SPLINTER * max(length)]


def _inner_network(region: Polygon, width: float) -> tuple[np.ndarray, dict[int, float], Network]:
    """Voronoi vertices (n, 2) mm, the distance to the border in mm where ridges fork, and the ridges inside."""
    border = shapely.get_coordinates(shapely.segmentize(region.boundary, width / 4))
    border = np.unique(np.round(border, 7), axis=0)
    centre = border.mean(axis=0)
    voronoi = Voronoi(border - centre)
    vertices = voronoi.vertices + centre
    shapely.prepare(region)
    inside = shapely.contains_xy(region, vertices[:, 0], vertices[:, 1])
    ridges = np.asarray(voronoi.ridge_vertices)
    ridges = ridges[(ridges >= 0).all(axis=1)]
    ridges = ridges[inside[ridges].all(axis=1)]
    # a ridge may leave the region between two vertices that lie inside
    lines = shapely.linestrings(vertices[ridges])
    ridges = ridges[shapely.covers(region, lines)]
    length = np.linalg.norm(vertices[ridges[:, 0]] - vertices[ridges[:, 1]], axis=1)
    network: Network = {node: {} for node in np.unique(ridges).tolist()}
    for (a, b), d in zip(ridges.tolist(), length.tolist(), strict=True):
        network[a][b] = network[b][a] = d
    forks = [node for node, ahead in network.items() if len(ahead) > 2]
    reach = shapely.distance(region.boundary, shapely.points(vertices[forks]))
    return vertices, dict(zip(forks, reach.tolist(), strict=True)), network


def _pruned(network: Network, reach: Mapping[int, float]) -> Network:
    """Without the side branches that lead into corners, shortest first; ``network`` is consumed."""
    if not network:
        return network
    while True:
        spurs: dict[int, list[tuple[float, list[int]]]] = {}
        for leaf in [node for node, ahead in network.items() if len(ahead) == 1]:
            branch, length = [leaf], 0.0
            node, before = leaf, -1
            while len(network[node]) <= 2:
                ahead = [n for n in network[node] if n != before]
                if not ahead:
                    break
                length += network[node][ahead[0]]
                before, node = node, ahead[0]
                branch.append(node)
            if len(network[node]) > 2 and length < _SPUR * reach[node]:
                spurs.setdefault(node, []).append((length, branch[:-1]))
        # the two corners of an end face go together: one alone would look like the rib's own end
        spurs = {node: found for node, found in spurs.items() if len(network[node]) > len(found)}
        if not spurs:
            return network
        shortest = min(spurs, key=lambda node: (min(spurs[node])[0], node))
        for _, branch in spurs[shortest]:
            for node in branch:
                for other in network.pop(node):
                    network[other].pop(node, None)


def _chains(network: Network, places: np.ndarray) -> tuple[list[Chain], dict[int, np.ndarray]]:
    junctions = {node for node, ahead in network.items() if len(ahead) > 2}
    ends = {node for node, ahead in network.items() if len(ahead) == 1}
    chains: list[Chain] = []
    done: set[frozenset[int]] = set()
    for start in sorted(junctions | ends):
        for ahead in sorted(network[start]):
            if frozenset((start, ahead)) in done:
                continue
            walk = [start, ahead]
            while walk[-1] not in junctions | ends:
                walk.append(next(n for n in network[walk[-1]] if n != walk[-2]))
            done.update(frozenset(pair) for pair in pairwise(walk))
            marks = tuple(n if n in junctions else None for n in (walk[0], walk[-1]))
            chains.append(Chain(places[walk], False, (marks[0], marks[1])))
    if not junctions and not ends and network:
        walk = [next(iter(network))]
        walk.append(next(iter(network[walk[0]])))
        while walk[-1] != walk[0]:
            walk.append(next(n for n in network[walk[-1]] if n != walk[-2]))
        chains.append(Chain(places[walk[:-1]], True, (None, None)))
    return chains, {node: places[node] for node in junctions}
