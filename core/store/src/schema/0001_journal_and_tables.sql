-- The journal. It only grows; every other table below it can be made again from it.

CREATE TABLE device (
    number INTEGER PRIMARY KEY,         -- short name of the device within this file
    id     BLOB NOT NULL UNIQUE,        -- uuid, 16 bytes
    own    INTEGER NOT NULL DEFAULT 0   -- 1: the device this file is on
) STRICT;
CREATE UNIQUE INDEX device_own ON device (own) WHERE own = 1;

CREATE TABLE event (
    place  INTEGER PRIMARY KEY,         -- device number * 2^40 + seq: one event per device and seq, with no second index
    entity BLOB NOT NULL,               -- uuid, 16 bytes
    clock  INTEGER NOT NULL,            -- hybrid logical clock: unix ms * 2^16 + counter
    kind   INTEGER NOT NULL,            -- word
    body   BLOB NOT NULL                -- packed, as core/src/store/packed.rs says
) STRICT;
CREATE INDEX event_entity ON event (entity);

-- What is said again and again in the journal. The numbers mean something in this file only, and are never given anew.

CREATE TABLE word (
    number INTEGER PRIMARY KEY,
    text   TEXT NOT NULL UNIQUE         -- a kind, a code, an id, or the field names of a body, a line feed between them
) STRICT;

-- What is only of this phone and not journalled: the last choices, and what is half typed.

CREATE TABLE chosen (
    name  TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The folds: one table per kind of entity, one row per entity. Units are in the names: mg, ul (microlitres), ms,
-- mm2, um, mg_dm2 (mg per dm2), e4 (ten-thousandths), mc (thousandths of a degree Celsius); e3 and e5 are thousandths and hundred-thousandths.
-- Moments (at, mixed_at) are unix ms. Ids are made in order of time, so new rows go to the end of each table.
-- Coats are by far the most: where one names what there are few of, the number of its word lies in the column.

CREATE TABLE glaze (
    id                       BLOB PRIMARY KEY,
    name                     TEXT NOT NULL,
    sensitivity              TEXT NOT NULL,     -- low, medium, high
    powder_density_e3        INTEGER NOT NULL,  -- relative to water
    starting_laydown_mg_dm2  INTEGER NOT NULL,
    gone                     INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE bucket (
    id         BLOB PRIMARY KEY,
    glaze      BLOB NOT NULL,
    name       TEXT NOT NULL,
    volume_ul  INTEGER,
    mixed_at   INTEGER NOT NULL,
    gone       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE "check" (
    id                       BLOB PRIMARY KEY,
    bucket                   BLOB NOT NULL,
    at                       INTEGER NOT NULL,
    specific_gravity_e5      INTEGER NOT NULL,
    standard_uncertainty_e5  INTEGER NOT NULL,  -- of the specific gravity
    how                      TEXT NOT NULL,     -- vessel, volume, hydrometer, typed
    vessel                   BLOB,
    full_mg                  INTEGER,           -- the vessel full of glaze
    temperature_mc           INTEGER,
    flow_ms                  INTEGER,           -- time through the flow cup
    note                     TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX check_bucket ON "check" (bucket, at);

CREATE TABLE vessel (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    empty_mg              INTEGER NOT NULL,
    with_water_mg         INTEGER NOT NULL,
    water_temperature_mc  INTEGER NOT NULL,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE form (
    id                BLOB PRIMARY KEY,
    name              TEXT NOT NULL,
    class             TEXT NOT NULL,            -- code of the shape class
    capacity_ul       INTEGER,
    inside_area_mm2   INTEGER,
    outside_area_mm2  INTEGER,
    gone              INTEGER NOT NULL,
    profile           TEXT,                     -- JSON array of [height, radius] or [height, radius, wall], um
    traced_e4         INTEGER,                  -- relative uncertainty of a profile from a photograph
    stage             TEXT,                     -- thrown, bisque, fired: the profile's
    body              BLOB,
    wall_um           INTEGER,
    floor_um          INTEGER,
    foot_width_um     INTEGER,
    foot_height_um    INTEGER,
    bare_foot_um      INTEGER,
    overlap_um        INTEGER,
    fill_um           INTEGER,
    handle_length_um  INTEGER,
    handle_girth_um   INTEGER,
    extra_area_mm2    INTEGER,
    bisque_mg         INTEGER
) STRICT, WITHOUT ROWID;

CREATE TABLE body (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    to_bisque_e4          INTEGER NOT NULL,     -- linear shrinkages, of the thrown size
    to_fired_e4           INTEGER NOT NULL,
    bisque_density_mg_ml  INTEGER,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE scale (
    id                BLOB PRIMARY KEY,
    name              TEXT NOT NULL,
    capacity_mg       INTEGER NOT NULL,
    step_mg           INTEGER NOT NULL,
    minimum_mg        INTEGER,
    repeatability_mg  INTEGER,
    gone              INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE coat (
    id                   BLOB PRIMARY KEY,
    piece                BLOB NOT NULL,
    form                 INTEGER NOT NULL,      -- word: its id
    bucket               INTEGER NOT NULL,      -- word: its id
    glaze                INTEGER NOT NULL,      -- word: its id
    zone                 INTEGER NOT NULL,      -- word: code
    scale                INTEGER NOT NULL,      -- word: its id
    at                   INTEGER NOT NULL,
    bare_mg              INTEGER,
    glazed_mg            INTEGER,
    net_mg               INTEGER NOT NULL,      -- wet weight
    specific_gravity_e5  INTEGER NOT NULL,
    sg_uncertainty_e5    INTEGER NOT NULL,
    powder_density_e3    INTEGER NOT NULL,
    area_mm2             INTEGER NOT NULL,
    aim_mg               INTEGER NOT NULL,
    low_mg               INTEGER NOT NULL,
    high_mg              INTEGER NOT NULL,
    source               INTEGER NOT NULL,      -- word: code of what the aim rests on
    verdict              INTEGER NOT NULL,      -- word: code
    laydown_mg_dm2       INTEGER NOT NULL,
    control              INTEGER NOT NULL,      -- 1: the pot one keeps comparing with
    note                 TEXT,
    code                 TEXT                   -- on the foot; on the first coat of its piece
) STRICT, WITHOUT ROWID;
CREATE INDEX coat_at ON coat (at);
CREATE INDEX coat_control ON coat (glaze, zone, at) WHERE control;
CREATE INDEX coat_code ON coat (code, at) WHERE code IS NOT NULL;

CREATE TABLE kiln (
    id         BLOB PRIMARY KEY,
    name       TEXT NOT NULL,
    round      INTEGER NOT NULL,
    across_um  INTEGER NOT NULL,                -- width or diameter of a shelf
    deep_um    INTEGER,
    shelves    INTEGER NOT NULL,
    gone       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE firing (
    id         BLOB PRIMARY KEY,
    kiln       BLOB NOT NULL,
    at         INTEGER NOT NULL,
    cone       TEXT NOT NULL,
    cone_kind  TEXT NOT NULL,                   -- code
    state      TEXT NOT NULL,                   -- code
    program    TEXT,
    fired_at   INTEGER,
    top_mc     INTEGER,
    minutes    INTEGER,
    witnesses  TEXT,                            -- JSON array of [cone, reading or '']
    checked    TEXT,
    note       TEXT,
    gone       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX firing_at ON firing (at) WHERE NOT gone;

CREATE TABLE placement (
    id      BLOB PRIMARY KEY,
    firing  BLOB NOT NULL,
    piece   BLOB NOT NULL,
    shelf   INTEGER NOT NULL,
    x_e4    INTEGER NOT NULL,                   -- of the shelf's width, from the left
    y_e4    INTEGER NOT NULL,                   -- from the front
    gone    INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX placement_firing ON placement (firing) WHERE NOT gone;
CREATE INDEX placement_piece ON placement (piece) WHERE NOT gone;

CREATE TABLE finding (
    id       BLOB PRIMARY KEY,
    firing   BLOB NOT NULL,
    piece    BLOB NOT NULL,
    at       INTEGER NOT NULL,
    inside   TEXT,                              -- codes of thickness
    outside  TEXT,
    overlap  TEXT,
    faults   TEXT,                              -- JSON array of [fault, where]
    liking   INTEGER,                           -- 1 to 5
    note     TEXT,
    again    INTEGER NOT NULL                   -- 1: to be fired again
) STRICT, WITHOUT ROWID;
CREATE INDEX finding_piece ON finding (piece, firing);
CREATE INDEX finding_again ON finding (at) WHERE again;
CREATE INDEX finding_fault ON finding (at) WHERE faults IS NOT NULL;

CREATE TABLE photo (
    id      BLOB PRIMARY KEY,
    piece   BLOB NOT NULL,
    firing  BLOB,
    sha256  TEXT NOT NULL,
    at      INTEGER NOT NULL,
    width   INTEGER NOT NULL,
    height  INTEGER NOT NULL,
    gone    INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX photo_piece ON photo (piece) WHERE NOT gone;
CREATE INDEX photo_sha256 ON photo (sha256);

CREATE TABLE control (
    id                   BLOB PRIMARY KEY,
    form                 BLOB NOT NULL,
    glaze                BLOB NOT NULL,
    zone                 TEXT NOT NULL,         -- code
    net_mg               INTEGER NOT NULL,      -- wet weight
    specific_gravity_e5  INTEGER NOT NULL,
    sg_uncertainty_e5    INTEGER NOT NULL,
    powder_density_e3    INTEGER NOT NULL,
    area_mm2             INTEGER NOT NULL,
    at                   INTEGER NOT NULL,
    gone                 INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX control_glaze ON control (glaze, zone, at) WHERE NOT gone;

CREATE TABLE tile (
    id                   BLOB PRIMARY KEY,
    glaze                BLOB NOT NULL,
    name                 TEXT NOT NULL,
    area_mm2             INTEGER NOT NULL,
    net_mg               INTEGER,               -- wet weight
    dry_mg               INTEGER,               -- dry weight
    specific_gravity_e5  INTEGER,
    at                   INTEGER NOT NULL,
    gone                 INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX tile_glaze ON tile (glaze, at) WHERE NOT gone;

CREATE TABLE preference (
    id       BLOB PRIMARY KEY,                  -- the device that prefers it
    mass     TEXT NOT NULL,                     -- codes of units
    volume   TEXT NOT NULL,
    area     TEXT NOT NULL,
    length   TEXT NOT NULL,
    decimal  TEXT NOT NULL,
    speak    INTEGER NOT NULL,
    tick     INTEGER NOT NULL,
    code_pieces INTEGER NOT NULL,
    phone    TEXT                               -- what it is called
) STRICT, WITHOUT ROWID;
