"""Hard models: parts as strangers draw them, with what must come out.

``HARD`` maps a name to a function that makes the model; ``write_model`` writes it as STEP::

    model = HARD["saddle"]()
    write_model(path, model)
    model.seams[0].paths[0].value("rib_width", points)
"""

from .brinks import BRINKS
from .clutter import CLUTTER
from .housings import HOUSINGS
from .lids import LIDS
from .marred import MARRED
from .pieces import PIECES
from .refused import REFUSED
from .ribs import RIBS
from .seams import SEAMS
from .strangers import STRANGERS
from .topology import TOPOLOGY
from .tree import bodies, write_model
from .truth import HardModel, Node, PathTruth, SeamTruth

HARD = {
    **SEAMS,
    **RIBS,
    **STRANGERS,
    **PIECES,
    **HOUSINGS,
    **CLUTTER,
    **TOPOLOGY,
    **MARRED,
    **LIDS,
    **BRINKS,
    **REFUSED,
}

__all__ = [
    "BRINKS",
    "CLUTTER",
    "HARD",
    "HOUSINGS",
    "LIDS",
    "MARRED",
    "PIECES",
    "REFUSED",
    "RIBS",
    "SEAMS",
    "STRANGERS",
    "TOPOLOGY",
    "HardModel",
    "Node",
    "PathTruth",
    "SeamTruth",
    "bodies",
    "write_model",
]
