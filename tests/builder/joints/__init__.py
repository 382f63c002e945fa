"""Cases of recognition: which joint two parts have, or why there is none to weld.

``JOINTS`` maps a name to a function that draws the case; ``write_model`` of ``builder.hard`` writes it as STEP.
"""

from .company import COMPANY
from .laps import LAPS
from .plugs import PLUGS
from .ribs import RIBS
from .seen import SEEN
from .several import SEVERAL
from .shells import SHELLS
from .strange import STRANGE
from .truth import JointCase, JointTruth, half
from .unseated import UNSEATED
from .walls import WALLS

JOINTS = {**RIBS, **WALLS, **LAPS, **PLUGS, **UNSEATED, **SEVERAL, **COMPANY, **STRANGE, **SEEN, **SHELLS}

__all__ = ["JOINTS", "JointCase", "JointTruth", "half"]
