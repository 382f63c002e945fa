-- The store of a scan: store.sqlite in the folder named with --out. docs/scan.md explains it with examples.
-- Texts are UTF-8, lengths mm, areas mm², angles degrees. NULL: not measured, or does not apply.

CREATE TABLE settings (
    settings TEXT NOT NULL PRIMARY KEY,  -- hash of everything that a review goes by
    file TEXT,                           -- name of the settings file
    toml TEXT NOT NULL                   -- all settings, as `seamcheck settings` writes them
) STRICT;

-- One review of one content. The name of the file belongs to the key, as it stands in the review document.
CREATE TABLE reviews (
    review TEXT NOT NULL PRIMARY KEY,    -- hash of names, contents, settings and version
    settings TEXT NOT NULL REFERENCES settings,
    seamcheck TEXT NOT NULL,             -- version
    verdict TEXT NOT NULL CHECK (verdict IN ('pass', 'attention', 'fail', 'not-reviewed')),
    reason_code TEXT,                    -- why not reviewed
    reason TEXT,
    step_schema TEXT NOT NULL,
    length_unit TEXT NOT NULL,
    parts INTEGER NOT NULL,
    solids INTEGER NOT NULL,
    faces INTEGER NOT NULL,
    seams INTEGER NOT NULL,
    seam_length REAL,
    must_fix INTEGER NOT NULL,           -- findings by severity, waived ones left out
    attention INTEGER NOT NULL,
    notes INTEGER NOT NULL,
    waived INTEGER NOT NULL,
    exceeds REAL,                        -- gravest finding: how far beyond its limit, as a share of the limit
    picture TEXT NOT NULL,               -- the seam seen along the beam, for the index page
    again TEXT NOT NULL CHECK (again IN ('no', 'with-higher-limits', 'next-scan')),
    CHECK ((verdict = 'not-reviewed') = (reason_code IS NOT NULL))
) STRICT;
CREATE INDEX reviews_by_settings ON reviews (settings);

CREATE TABLE documents (
    review TEXT NOT NULL PRIMARY KEY REFERENCES reviews ON DELETE CASCADE,
    zlib_json BLOB NOT NULL              -- the review document, JSON compressed with zlib (RFC 1950)
) STRICT;

-- How a review went; nothing here says anything about the model.
CREATE TABLE efforts (
    review TEXT NOT NULL PRIMARY KEY REFERENCES reviews ON DELETE CASCADE,
    seconds REAL NOT NULL,
    tries INTEGER NOT NULL,
    time_limit REAL,                     -- seconds
    memory_limit REAL,                   -- MB
    finished TEXT NOT NULL               -- UTC
) STRICT;

CREATE TABLE pages (
    review TEXT NOT NULL PRIMARY KEY REFERENCES reviews ON DELETE CASCADE,
    file TEXT NOT NULL                   -- below pages/
) STRICT;

CREATE TABLE findings (
    review TEXT NOT NULL REFERENCES reviews ON DELETE CASCADE,
    n INTEGER NOT NULL,                  -- 1 is the gravest
    finding TEXT NOT NULL,               -- id, the same in the next revision of the model
    rule TEXT NOT NULL,
    severity TEXT NOT NULL CHECK (severity IN ('must-fix', 'attention', 'note')),
    waived INTEGER NOT NULL CHECK (waived IN (0, 1)),
    waiver TEXT,                         -- its reason
    quantity TEXT NOT NULL,
    value REAL,
    bound REAL,                          -- the limit
    margin REAL,                         -- negative: beyond the limit
    unit TEXT NOT NULL,
    state TEXT NOT NULL,                 -- outside; at risk: only in the worst case of its tolerance
    tolerance REAL, worst_case REAL,
    joint TEXT,
    contour TEXT,
    x REAL, y REAL, z REAL,
    from_s REAL, to_s REAL, length REAL,
    message TEXT NOT NULL,
    remedy TEXT NOT NULL,
    PRIMARY KEY (review, n)
) STRICT;
CREATE INDEX findings_by_rule ON findings (rule, severity);

CREATE TABLE quantities (                -- along the seam; contour '' is the whole seam
    review TEXT NOT NULL REFERENCES reviews ON DELETE CASCADE,
    joint TEXT NOT NULL,
    contour TEXT NOT NULL,
    quantity TEXT NOT NULL,
    least REAL, median REAL, most REAL,
    PRIMARY KEY (review, joint, contour, quantity)
) STRICT, WITHOUT ROWID;

CREATE TABLE interface_values (          -- one value for the whole joint
    review TEXT NOT NULL REFERENCES reviews ON DELETE CASCADE,
    joint TEXT NOT NULL,
    quantity TEXT NOT NULL,
    value REAL,
    x REAL, y REAL, z REAL,
    why TEXT NOT NULL,
    PRIMARY KEY (review, joint, quantity)
) STRICT, WITHOUT ROWID;

CREATE TABLE materials (                 -- where the settings name materials
    review TEXT NOT NULL REFERENCES reviews ON DELETE CASCADE,
    joint TEXT NOT NULL,
    cover TEXT, base TEXT,
    pair TEXT,                           -- what is known about welding the two
    transmission_least REAL, transmission_median REAL,  -- percent
    trap_fill_most REAL,
    window_place TEXT,                   -- where the planned collapse lies in the window of good collapses
    window_lowest REAL, window_highest REAL,
    PRIMARY KEY (review, joint)
) STRICT, WITHOUT ROWID;

CREATE TABLE joints (
    review TEXT NOT NULL REFERENCES reviews ON DELETE CASCADE,
    joint TEXT NOT NULL,
    cover TEXT NOT NULL, base TEXT NOT NULL,  -- names of the parts
    kind TEXT NOT NULL,                  -- weld-rib, plain-wall, flat-lap, stepped-lap, tongue-groove, ledge
    confidence REAL,                     -- 0 to 1, how far the evidence carries this reading; NULL: not weighed
    rib_on TEXT NOT NULL CHECK (rib_on IN ('base', 'cover', 'none')),
    modelled_state TEXT NOT NULL,        -- touching, gap, overlap ...
    length REAL,
    contours INTEGER NOT NULL,
    stations INTEGER NOT NULL,
    PRIMARY KEY (review, joint)
) STRICT, WITHOUT ROWID;

CREATE TABLE parts (
    review TEXT NOT NULL REFERENCES reviews ON DELETE CASCADE,
    part TEXT NOT NULL,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    solids INTEGER NOT NULL,
    faces INTEGER NOT NULL,
    PRIMARY KEY (review, part)
) STRICT, WITHOUT ROWID;

CREATE TABLE lines (                     -- what the lists show of a review, from the tables above
    review TEXT NOT NULL PRIMARY KEY REFERENCES reviews ON DELETE CASCADE,
    rule TEXT, message TEXT, remedy TEXT, -- of the gravest finding that is not waived
    broken TEXT NOT NULL,                -- rules with a must-fix or attention finding, a blank between two
    kinds TEXT NOT NULL,                 -- of its joints, a blank between two
    confidence REAL,                     -- the least of its joints
    measured TEXT NOT NULL               -- the quantities of the lists, JSON
) STRICT, WITHOUT ROWID;

-- What the last scan found in its folders, one row each; nothing that it found is missing here.
CREATE TABLE models (
    folder TEXT NOT NULL,                -- as named on the command line
    path TEXT NOT NULL,                  -- below the folder; of a file in an archive: ARCHIVE/FILE
    supplier TEXT NOT NULL,              -- first folder below the scanned one, '' without one
    name TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('waiting', 'reviewed', 'skipped')),
    awaits TEXT,                         -- the review that this content needs
    review TEXT REFERENCES reviews ON DELETE SET NULL,
    reason_code TEXT,                    -- why skipped
    reason TEXT,
    PRIMARY KEY (folder, path),
    CHECK ((state = 'skipped') = (reason_code IS NOT NULL))
) STRICT;
CREATE INDEX models_by_awaits ON models (awaits);
CREATE INDEX models_by_review ON models (review);

CREATE TABLE model_files (               -- the files of a model, the first one is the cover's of a pair
    folder TEXT NOT NULL,
    path TEXT NOT NULL,
    n INTEGER NOT NULL,
    name TEXT NOT NULL,
    place BLOB NOT NULL,                 -- path as the system gives it
    member INTEGER,                      -- number within an archive
    bytes INTEGER NOT NULL,
    sha256 TEXT,
    PRIMARY KEY (folder, path, n),
    FOREIGN KEY (folder, path) REFERENCES models ON DELETE CASCADE
) STRICT;

CREATE TABLE stamps (                    -- files that need not be read again as long as their stamp is the same
    place BLOB NOT NULL PRIMARY KEY,     -- path as the system gives it
    stamp TEXT NOT NULL,                 -- size, times of writing and change, number of the file
    sha256 TEXT NOT NULL,
    bytes INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE ignored_settings (          -- settings files beside models: never used
    folder TEXT NOT NULL,
    path TEXT NOT NULL,
    PRIMARY KEY (folder, path)
) STRICT;

CREATE TABLE other_files (               -- files that no pattern names
    ending TEXT NOT NULL PRIMARY KEY,
    files INTEGER NOT NULL
) STRICT;

CREATE TABLE scans (                     -- one row for each time that seamcheck scan ran
    scan INTEGER PRIMARY KEY,
    started TEXT NOT NULL,               -- UTC
    ended TEXT,
    seamcheck TEXT NOT NULL,
    settings TEXT NOT NULL REFERENCES settings,
    folders TEXT NOT NULL,               -- JSON
    how TEXT NOT NULL CHECK (how IN ('running', 'complete', 'stopped'))
) STRICT;

-- What most questions need: every model of the last scan with its verdict.
CREATE VIEW results AS
SELECT
    m.folder, m.path, m.supplier, m.name,
    CASE WHEN m.state = 'waiting' THEN 'waiting' ELSE coalesce(r.verdict, 'not-reviewed') END AS verdict,
    coalesce(r.reason_code, m.reason_code) AS reason_code,
    coalesce(r.reason, m.reason) AS reason,
    r.parts, r.solids, r.faces, r.seams, r.seam_length,
    r.must_fix, r.attention, r.notes, r.waived, r.exceeds,
    r.length_unit, r.step_schema, r.picture,
    p.file AS page, m.review, r.settings, r.seamcheck
FROM models AS m
LEFT JOIN reviews AS r ON r.review = m.review
LEFT JOIN pages AS p ON p.review = m.review;
