PRAGMA application_id = 1279351108;
PRAGMA user_version = 1;
CREATE TABLE device (
    number INTEGER PRIMARY KEY,         -- short name of the device within this file
    id     BLOB NOT NULL UNIQUE,        -- uuid, 16 bytes
    own    INTEGER NOT NULL DEFAULT 0   -- 1: the device this file is on
) STRICT;
INSERT INTO "device" VALUES (1, X'01A0C4506C00710AADEC89025CC1BEEB', 1);
CREATE UNIQUE INDEX device_own ON device (own) WHERE own = 1;
CREATE TABLE event (
    place  INTEGER PRIMARY KEY,         -- device number * 2^40 + seq: one event per device and seq, with no second index
    entity BLOB NOT NULL,               -- uuid, 16 bytes
    clock  INTEGER NOT NULL,            -- hybrid logical clock: unix ms * 2^16 + counter
    id     BLOB NOT NULL,               -- uuid, 16 bytes
    kind   TEXT NOT NULL,
    body   TEXT NOT NULL                -- JSON object
) STRICT;
INSERT INTO "event" VALUES (1099511627777, X'01A0C4506C007893A2EEFB32555E71C1', 117309440000000000, X'01A0C4506C0074768F8A4BAA5DC087B3', 'glaze', '{"name":"Winter ash","powder_density_e3":2600,"sensitivity":"medium","starting_laydown_mg_dm2":5500}');
INSERT INTO "event" VALUES (1099511627778, X'01A0C4506C0071BB94D8D101B5B9C34D', 117309440000000001, X'01A0C4506C007F9BADAE6F4C57A82AC2', 'bucket', '{"glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","mixed_at":1789913600000,"name":"Blue lid","volume_ul":12000000}');
INSERT INTO "event" VALUES (1099511627779, X'01A0C4506C007099AC6CD7363CA585E7', 117309440000000002, X'01A0C4506C007534A6A6B7FD0B63D0BA', 'form', '{"bare_foot_um":6000,"capacity_ul":350000,"class":"cylinder_mug","floor_um":5000,"inside_area_mm2":26400,"name":"Breakfast mug","profile":[[0,36000],[45500,42000,4500],[95000,41000]],"stage":"bisque","wall_um":4000}');
INSERT INTO "event" VALUES (1099511627780, X'01A0C4506C00791798DE357E3DA8CB43', 117309440000000003, X'01A0C4506C007E84B79630AF89EEE263', 'scale', '{"capacity_mg":5000000,"name":"Shelf scale","repeatability_mg":80,"step_mg":100}');
INSERT INTO "event" VALUES (1099511627781, X'01A0C4506C0077759C7701564F619AFC', 117309440000000004, X'01A0C4506C0070E2846865E9874614D7', 'check', '{"at":1789996400000,"bucket":"01a0c450-6c00-71bb-94d8-d101b5b9c34d","full_mg":312400,"how":"vessel","specific_gravity_e5":145000,"standard_uncertainty_e5":250,"temperature_mc":19500}');
INSERT INTO "event" VALUES (1099511627782, X'01A0C4506C00790C970B12C5D084962B', 117309440000000005, X'01A0C4506C0075ACA2685A072C6D7061', 'body', '{"bisque_density_mg_ml":1850,"name":"White stoneware","to_bisque_e4":600,"to_fired_e4":1250}');
INSERT INTO "event" VALUES (1099511627783, X'01A0C4506C007EF1BD0ED1548FCD1F84', 117309440000000006, X'01A0C4506C0070D6824E2EF3FC17879E', 'vessel', '{"empty_mg":104200,"name":"Jam jar","water_temperature_mc":20000,"with_water_mg":247900}');
INSERT INTO "event" VALUES (1099511627784, X'01A0C4506C00797385C5D1AAB99F0C43', 117309440000000007, X'01A0C4506C007B2E82445E4BE0F5BF8C', 'control', '{"area_mm2":26400,"at":1790000000000,"form":"01a0c450-6c00-7099-ac6c-d7363ca585e7","glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","net_mg":23000,"powder_density_e3":2600,"sg_uncertainty_e5":500,"specific_gravity_e5":145500,"zone":"inside"}');
INSERT INTO "event" VALUES (1099511627785, X'01A0C4506C0073F99CA7864A7135B6B9', 117309440000000008, X'01A0C4506C00716AA4B296EB9D18AB27', 'tile', '{"area_mm2":4200,"at":1790000000000,"dry_mg":1820,"glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","name":"Row 3","net_mg":3600,"specific_gravity_e5":145000}');
INSERT INTO "event" VALUES (1099511627786, X'01A0C4506C00710AADEC89025CC1BEEB', 117309440000000009, X'01A0C4506C007CA08749607E2C86B54B', 'preference', '{"area":"square_centimetre","code_pieces":true,"decimal":"comma","length":"millimetre","mass":"gram","speak":true,"tick":false,"volume":"millilitre"}');
INSERT INTO "event" VALUES (1099511627787, X'01A0C4506C007B339645445BCD27FF6C', 117309440000000010, X'01A0C4506C007C829FBF59108163A7FF', 'check', '{"at":1790000000000,"bucket":"01a0c450-6c00-71bb-94d8-d101b5b9c34d","flow_ms":14300,"full_mg":312400,"how":"vessel","note":"stirred, sieved; it''s smooth","specific_gravity_e5":145000,"standard_uncertainty_e5":250,"temperature_mc":19500,"vessel":"01a0c450-6c00-7ef1-bd0e-d1548fcd1f84"}');
INSERT INTO "event" VALUES (1099511627788, X'01A0C4506C007220A8397B1DCDAF6E78', 117309440000000011, X'01A0C4506C007E7091019FC66081D6DE', 'coat', '{"aim_mg":23400,"area_mm2":26400,"at":1790000000000,"bucket":"01a0c450-6c00-71bb-94d8-d101b5b9c34d","control":true,"form":"01a0c450-6c00-7099-ac6c-d7363ca585e7","glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","high_mg":25040,"laydown_mg_dm2":5170,"low_mg":21760,"net_mg":22000,"piece":"01a0c450-6c00-76c4-9d18-8009454ff88b","powder_density_e3":2600,"scale":"01a0c450-6c00-7917-98de-357e3da8cb43","sg_uncertainty_e5":250,"source":"starting","specific_gravity_e5":145000,"verdict":"within","zone":"inside"}');
INSERT INTO "event" VALUES (1099511627789, X'01A0C4515660710AADEC89025CC1BEEB', 117309443932160000, X'01A0C4515660730E8E6118E9685E28BF', 'coat', '{"aim_mg":23400,"area_mm2":26400,"at":1790000060000,"bucket":"01a0c450-6c00-71bb-94d8-d101b5b9c34d","form":"01a0c450-6c00-7099-ac6c-d7363ca585e7","glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","high_mg":25040,"laydown_mg_dm2":5620,"low_mg":21760,"net_mg":23919,"piece":"01a0c451-5660-7893-a2ee-fb32555e71c1","powder_density_e3":2600,"scale":"01a0c450-6c00-7917-98de-357e3da8cb43","sg_uncertainty_e5":250,"source":"starting","specific_gravity_e5":145000,"verdict":"within","zone":"inside"}');
INSERT INTO "event" VALUES (1099511627790, X'01A0C45240C07758B5DE1C9756CEBFC8', 117309447864320000, X'01A0C45240C074D9B03221373073E9A6', 'coat', '{"aim_mg":23400,"area_mm2":26400,"at":1790000120000,"bucket":"01a0c450-6c00-71bb-94d8-d101b5b9c34d","form":"01a0c450-6c00-7099-ac6c-d7363ca585e7","glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","high_mg":25040,"laydown_mg_dm2":5366,"low_mg":21760,"net_mg":22838,"piece":"01a0c452-40c0-787b-bcbf-dd7e532fc3f2","powder_density_e3":2600,"scale":"01a0c450-6c00-7917-98de-357e3da8cb43","sg_uncertainty_e5":250,"source":"starting","specific_gravity_e5":145000,"verdict":"within","zone":"inside"}');
INSERT INTO "event" VALUES (1099511627791, X'01A0C458A9607EAF92FEBE706064C02D', 117309475389440000, X'01A0C458A9607D46B3EF77BA057421AF', 'coat', '{"aim_mg":23400,"area_mm2":26400,"at":1790000540000,"bucket":"01a0c450-6c00-71bb-94d8-d101b5b9c34d","form":"01a0c450-6c00-7099-ac6c-d7363ca585e7","glaze":"01a0c450-6c00-7893-a2ee-fb32555e71c1","high_mg":25040,"laydown_mg_dm2":5703,"low_mg":21760,"net_mg":24271,"piece":"01a0c458-a960-73ec-abe5-44b589b6c8e9","powder_density_e3":2600,"scale":"01a0c450-6c00-7917-98de-357e3da8cb43","sg_uncertainty_e5":250,"source":"starting","specific_gravity_e5":145000,"verdict":"within","zone":"inside"}');
INSERT INTO "event" VALUES (1099511627792, X'01A0C458A9607EAF92FEBE706064C02D', 117309475389440001, X'01A0C4506C00736080F4BD6AE8F8F0AF', 'retract', '{"event":"01a0c458-a960-7d46-b3ef-77ba057421af"}');
CREATE INDEX event_entity ON event (entity);
CREATE TABLE chosen (
    name  TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE glaze (
    id                       BLOB PRIMARY KEY,
    name                     TEXT NOT NULL,
    sensitivity              TEXT NOT NULL,     -- low, medium, high
    powder_density_e3        INTEGER NOT NULL,  -- relative to water
    starting_laydown_mg_dm2  INTEGER NOT NULL,
    gone                     INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "glaze" VALUES (X'01A0C4506C007893A2EEFB32555E71C1', 'Winter ash', 'medium', 2600, 5500, 0);
CREATE TABLE bucket (
    id         BLOB PRIMARY KEY,
    glaze      BLOB NOT NULL,
    name       TEXT NOT NULL,
    volume_ul  INTEGER,
    mixed_at   INTEGER NOT NULL,
    gone       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "bucket" VALUES (X'01A0C4506C0071BB94D8D101B5B9C34D', X'01A0C4506C007893A2EEFB32555E71C1', 'Blue lid', 12000000, 1789913600000, 0);
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
INSERT INTO "check" VALUES (X'01A0C4506C0077759C7701564F619AFC', X'01A0C4506C0071BB94D8D101B5B9C34D', 1789996400000, 145000, 250, 'vessel', NULL, 312400, 19500, NULL, NULL);
INSERT INTO "check" VALUES (X'01A0C4506C007B339645445BCD27FF6C', X'01A0C4506C0071BB94D8D101B5B9C34D', 1790000000000, 145000, 250, 'vessel', X'01A0C4506C007EF1BD0ED1548FCD1F84', 312400, 19500, 14300, 'stirred, sieved; it''s smooth');
CREATE INDEX check_bucket ON "check" (bucket, at);
CREATE TABLE vessel (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    empty_mg              INTEGER NOT NULL,
    with_water_mg         INTEGER NOT NULL,
    water_temperature_mc  INTEGER NOT NULL,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "vessel" VALUES (X'01A0C4506C007EF1BD0ED1548FCD1F84', 'Jam jar', 104200, 247900, 20000, 0);
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
INSERT INTO "form" VALUES (X'01A0C4506C007099AC6CD7363CA585E7', 'Breakfast mug', 'cylinder_mug', 350000, 26400, NULL, 0, '[[0,36000],[45500,42000,4500],[95000,41000]]', NULL, 'bisque', NULL, 4000, 5000, NULL, NULL, 6000, NULL, NULL, NULL, NULL, NULL, NULL);
CREATE TABLE body (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    to_bisque_e4          INTEGER NOT NULL,     -- linear shrinkages, of the thrown size
    to_fired_e4           INTEGER NOT NULL,
    bisque_density_mg_ml  INTEGER,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "body" VALUES (X'01A0C4506C00790C970B12C5D084962B', 'White stoneware', 600, 1250, 1850, 0);
CREATE TABLE scale (
    id                BLOB PRIMARY KEY,
    name              TEXT NOT NULL,
    capacity_mg       INTEGER NOT NULL,
    step_mg           INTEGER NOT NULL,
    minimum_mg        INTEGER,
    repeatability_mg  INTEGER,
    gone              INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "scale" VALUES (X'01A0C4506C00791798DE357E3DA8CB43', 'Shelf scale', 5000000, 100, NULL, 80, 0);
CREATE TABLE coat (
    id                   BLOB PRIMARY KEY,
    piece                BLOB NOT NULL,
    form                 BLOB NOT NULL,
    bucket               BLOB NOT NULL,
    glaze                BLOB NOT NULL,
    zone                 TEXT NOT NULL,         -- code
    scale                BLOB NOT NULL,
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
    source               TEXT NOT NULL,         -- code: what the aim rests on
    verdict              TEXT NOT NULL,         -- code
    laydown_mg_dm2       INTEGER NOT NULL,
    control              INTEGER NOT NULL,      -- 1: the pot one keeps comparing with
    note                 TEXT,
    code                 TEXT                   -- on the foot; on the first coat of its piece
) STRICT, WITHOUT ROWID;
INSERT INTO "coat" VALUES (X'01A0C4506C007220A8397B1DCDAF6E78', X'01A0C4506C0076C49D188009454FF88B', X'01A0C4506C007099AC6CD7363CA585E7', X'01A0C4506C0071BB94D8D101B5B9C34D', X'01A0C4506C007893A2EEFB32555E71C1', 'inside', X'01A0C4506C00791798DE357E3DA8CB43', 1790000000000, NULL, NULL, 22000, 145000, 250, 2600, 26400, 23400, 21760, 25040, 'starting', 'within', 5170, 1, NULL, NULL);
INSERT INTO "coat" VALUES (X'01A0C4515660710AADEC89025CC1BEEB', X'01A0C45156607893A2EEFB32555E71C1', X'01A0C4506C007099AC6CD7363CA585E7', X'01A0C4506C0071BB94D8D101B5B9C34D', X'01A0C4506C007893A2EEFB32555E71C1', 'inside', X'01A0C4506C00791798DE357E3DA8CB43', 1790000060000, NULL, NULL, 23919, 145000, 250, 2600, 26400, 23400, 21760, 25040, 'starting', 'within', 5620, 0, NULL, NULL);
INSERT INTO "coat" VALUES (X'01A0C45240C07758B5DE1C9756CEBFC8', X'01A0C45240C0787BBCBFDD7E532FC3F2', X'01A0C4506C007099AC6CD7363CA585E7', X'01A0C4506C0071BB94D8D101B5B9C34D', X'01A0C4506C007893A2EEFB32555E71C1', 'inside', X'01A0C4506C00791798DE357E3DA8CB43', 1790000120000, NULL, NULL, 22838, 145000, 250, 2600, 26400, 23400, 21760, 25040, 'starting', 'within', 5366, 0, NULL, NULL);
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
INSERT INTO "control" VALUES (X'01A0C4506C00797385C5D1AAB99F0C43', X'01A0C4506C007099AC6CD7363CA585E7', X'01A0C4506C007893A2EEFB32555E71C1', 'inside', 23000, 145500, 500, 2600, 26400, 1790000000000, 0);
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
INSERT INTO "tile" VALUES (X'01A0C4506C0073F99CA7864A7135B6B9', X'01A0C4506C007893A2EEFB32555E71C1', 'Row 3', 4200, 3600, 1820, 145000, 1790000000000, 0);
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
    code_pieces INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "preference" VALUES (X'01A0C4506C00710AADEC89025CC1BEEB', 'gram', 'millilitre', 'square_centimetre', 'millimetre', 'comma', 1, 0, 1);
