"""Heat in the section of the seam while it is welded: 2-D conduction with melting, collapse and cooling.

``grid`` cuts the section into cells, ``field`` steps their temperatures, ``weld`` runs one section through a
weld, ``along`` takes a few sections of the seam and what lies between them.
"""
