"""The rough middle of a band-shaped polygon: Voronoi graph of its border, pruned, cut into chains."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import networkx as nx
import numpy as np
import shapely
from scipy.spatial import Voronoi
from shapely import Polygon

_SPLINTER = 0.1  # of the longest connected part: shorter ones are what a narrow place cut off
_SPUR = 2.2  # a side branch shorter than this many local half-widths only leads into a corner


@dataclass(frozen=True, slots=True, eq=False)
class Chain:
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
    graph = _inner_graph(region, width)
    chains: list[Chain] = []
    nodes: dict[int, np.ndarray] = {}
    for part in _long_parts(graph):
        found, junctions = _chains(_prune(part))
        chains += found
        nodes |= junctions
    return chains, nodes


def _long_parts(graph: nx.Graph) -> list[nx.Graph]:
    """The connected parts of the graph that are no mere splinters, the longest first."""
    parts = [graph.subgraph(nodes).copy() for nodes in nx.connected_components(graph)]
    if not parts:
        return []
    length = [part.size(weight="weight") for part in parts]
    order = sorted(range(len(parts)), key=lambda i: -length[i])
    return [parts[i] for i in order if length[i] > _SPLINTER * max(length)]


def _inner_graph(region: Polygon, width: float) -> nx.Graph:
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
    graph = nx.Graph()
    used = np.unique(ridges)
    reach = shapely.distance(region.boundary, shapely.points(vertices[used]))
    graph.add_nodes_from((int(i), {"at": vertices[i], "reach": float(r)}) for i, r in zip(used, reach, strict=True))
    graph.add_weighted_edges_from((int(a), int(b), float(d)) for (a, b), d in zip(ridges, length, strict=True))
    return graph


def _prune(graph: nx.Graph) -> nx.Graph:
    """Remove the side branches that lead into corners, shortest first."""
    if not len(graph):
        return graph
    while True:
        spurs: dict[int, list[tuple[float, list[int]]]] = {}
        for leaf in [n for n, degree in graph.degree if degree == 1]:
            branch, length = [leaf], 0.0
            node, before = leaf, None
            while graph.degree[node] <= 2:
                ahead = [n for n in graph.neighbors(node) if n != before]
                if not ahead:
                    break
                length += graph.edges[node, ahead[0]]["weight"]
                before, node = node, ahead[0]
                branch.append(node)
            if graph.degree[node] > 2 and length < _SPUR * graph.nodes[node]["reach"]:
                spurs.setdefault(node, []).append((length, branch[:-1]))
        # the two corners of an end face go together: one alone would pass for the rib's own end
        spurs = {node: found for node, found in spurs.items() if graph.degree[node] > len(found)}
        if not spurs:
            return graph
        shortest = min(spurs, key=lambda node: (min(spurs[node])[0], node))
        for _, branch in spurs[shortest]:
            graph.remove_nodes_from(branch)


def _chains(graph: nx.Graph) -> tuple[list[Chain], dict[int, np.ndarray]]:
    at = nx.get_node_attributes(graph, "at")
    junctions = {n for n, degree in graph.degree if degree > 2}
    ends = {n for n, degree in graph.degree if degree == 1}
    chains: list[Chain] = []
    done: set[frozenset[int]] = set()
    for start in sorted(junctions | ends):
        for ahead in sorted(graph.neighbors(start)):
            if frozenset((start, ahead)) in done:
                continue
            walk = [start, ahead]
            while walk[-1] not in junctions | ends:
                walk.append(next(n for n in graph.neighbors(walk[-1]) if n != walk[-2]))
            done.update(frozenset(pair) for pair in pairwise(walk))
            marks = tuple(n if n in junctions else None for n in (walk[0], walk[-1]))
            chains.append(Chain(np.array([at[n] for n in walk]), False, (marks[0], marks[1])))
    if not junctions and not ends and len(graph):
        walk = [next(iter(graph))]
        walk.append(next(graph.neighbors(walk[0])))
        while walk[-1] != walk[0]:
            walk.append(next(n for n in graph.neighbors(walk[-1]) if n != walk[-2]))
        chains.append(Chain(np.array([at[n] for n in walk[:-1]]), True, (None, None)))
    return chains, {n: at[n] for n in junctions}
