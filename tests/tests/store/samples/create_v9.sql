PRAGMA application_id = 1279351108;
PRAGMA user_version = 9;
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
    kind   INTEGER NOT NULL,            -- word
    body   BLOB NOT NULL                -- packed, as core/src/store/packed.rs says
) STRICT;
INSERT INTO "event" VALUES (1099511627777, X'01A0C4506C007893A2EEFB32555E71C1', 117309440000000000, 1, X'02050307105B5B226C656164222C22796573225D5D078C015B7B226E616D65223A22506F746173682066656C6473706172222C2270617274735F6533223A34323530307D2C7B226164646974696F6E223A747275652C2264656E736974795F6533223A343030302C226E616D65223A22436F7070657220636172626F6E617465222C2270617274735F6533223A323030302C2270726963655F6533223A33313530307D5D060A57696E746572206173680A280A05040A7C150B683602');
INSERT INTO "event" VALUES (1099511627778, X'01A0C4506C0071BB94D8D101B5B9C34D', 117309440000000001, 5, X'060B00E2040B4859040BE0630C05070E00102ABFA0010608426C7565206C69640C001BB700');
INSERT INTO "event" VALUES (1099511627779, X'01A0C4506C007099AC6CD7363CA585E7', 117309440000000002, 8, X'090A70170B305705050A0A88130A2067060D427265616B66617374206D7567072C5B5B302C33363030305D2C5B34353530302C34323030302C343530305D2C5B39353030302C34313030305D5D050B0AA00F');
INSERT INTO "event" VALUES (1099511627780, X'01A0C4506C00791798DE357E3DA8CB43', 117309440000000003, 12, X'0D0B404B4C060B5368656C66207363616C6509500964');
INSERT INTO "event" VALUES (1099511627781, X'01A0C4506C0077759C7701564F619AFC', 117309440000000004, 14, X'0F0E807D19C4A001051005110A18790B50C40405120B6836020AFA000A2C4C');
INSERT INTO "event" VALUES (1099511627782, X'01A0C4506C007EF1BD0ED1548FCD1F84', 117309440000065536, 19, X'140E006C50C4A00105150BA08601051606094269737175652031340BA8A60105170BF4E2000A1450');
INSERT INTO "event" VALUES (1099511627783, X'01A0C4506C00797385C5D1AAB99F0C43', 117309440000065537, 24, X'190E006C50C4A0010B20A10707245B3331323430302C3331323530302C3331323430302C3331323330302C3331323530305D051A0B84A107');
INSERT INTO "event" VALUES (1099511627784, X'01A0C4506C0070E2846865E9874614D7', 117309440000065538, 27, X'1C0A3A07060F57686974652073746F6E65776172650A58020AE204');
INSERT INTO "event" VALUES (1099511627785, X'01A0C4506C0073F99CA7864A7135B6B9', 117309440000065539, 29, X'1E0E006C50C4A001051006146265666F7265207468652062696720626F776C730B305705051F');
INSERT INTO "event" VALUES (1099511627786, X'01A0C4506C0074768F8A4BAA5DC087B3', 117309440000065540, 18, X'200B08970106074A616D206A61720A204E0B5CC803');
INSERT INTO "event" VALUES (1099511627787, X'01A0C4506C007F9BADAE6F4C57A82AC2', 117309440000065541, 33, X'220A20670E006C50C4A001052305070AD8590A280A0AF4010B5C38020524');
INSERT INTO "event" VALUES (1099511627788, X'01A0C4506C007534A6A6B7FD0B63D0BA', 117309440000065542, 37, X'260AAC0D0A68100E006C50C4A001052709020A1C0705070605526F7720330A100E0B683602');
INSERT INTO "event" VALUES (1099511627789, X'01A0C4506C00710AADEC89025CC1BEEB', 117309440000065543, 40, X'29052A0202052B052C052D06125461626C6574206279207468652073696E6B0201052E');
INSERT INTO "event" VALUES (1099511627790, X'01A0C4506C007E84B79630AF89EEE263', 117309440000065544, 14, X'2F0E006C50C4A001051005110ADC370B50C4040512061C737469727265642C207369657665643B206974277320736D6F6F74680B6836020AFA000A2C4C0530');
INSERT INTO "event" VALUES (1099511627791, X'01A0C4506C007220A8397B1DCDAF6E78', 117309440000131072, 49, X'320A685B0A20670E006C50C4A001051002052305070AD0610A32140A00550AF0550401A0C4506C0076C49D188009454FF88B0A280A051A0AFA0005330B68360205340524');
INSERT INTO "event" VALUES (1099511627792, X'01A0C4515660710AADEC89025CC1BEEB', 117309443932160000, 49, X'350A685B0A20670E605651C4A0010510052305070AD0610AF4150A00550A6F5D0401A0C45156607893A2EEFB32555E71C10A280A051A0AFA0005330B68360205340524');
INSERT INTO "event" VALUES (1099511627793, X'01A0C45240C07758B5DE1C9756CEBFC8', 117309447864320000, 49, X'350A685B0A20670EC04052C4A0010510052305070AD0610AF6140A00550A36590401A0C45240C0787BBCBFDD7E532FC3F20A280A051A0AFA0005330B68360205340524');
INSERT INTO "event" VALUES (1099511627794, X'01A0C458A9607EAF92FEBE706064C02D', 117309475389440000, 49, X'350A685B0A20670E60A958C4A0010510052305070AD0610A47160A00550ACF5E0401A0C458A96073ECABE544B589B6C8E90A280A051A0AFA0005330B68360205340524');
INSERT INTO "event" VALUES (1099511627795, X'01A0C458A9607EAF92FEBE706064C02D', 117309475389505536, 54, X'37053807027B7D0912');
CREATE INDEX event_entity ON event (entity);
CREATE TABLE word (
    number INTEGER PRIMARY KEY,
    text   TEXT NOT NULL UNIQUE         -- a kind, a code, an id, or the field names of a body, a line feed between them
) STRICT;
INSERT INTO "word" VALUES (1, 'glaze');
INSERT INTO "word" VALUES (10, 'cylinder_mug');
INSERT INTO "word" VALUES (11, 'bisque');
INSERT INTO "word" VALUES (12, 'scale');
INSERT INTO "word" VALUES (13, 'capacity_mg
name
repeatability_mg
step_mg');
INSERT INTO "word" VALUES (14, 'check');
INSERT INTO "word" VALUES (15, 'at
bucket
cup
flow_ms
full_mg
how
specific_gravity_e5
standard_uncertainty_e5
temperature_mc');
INSERT INTO "word" VALUES (16, '01a0c450-6c00-71bb-94d8-d101b5b9c34d');
INSERT INTO "word" VALUES (17, 'ford_4');
INSERT INTO "word" VALUES (18, 'vessel');
INSERT INTO "word" VALUES (19, 'bisque_lot');
INSERT INTO "word" VALUES (2, 'density_from
hazards
materials
name
powder_density_e3
sensitivity
starting_laydown_mg_dm2
working_sg_e5');
INSERT INTO "word" VALUES (20, 'at
body
bone_dry_mg
cone
name
soaked_mg
soaking
suspended_mg
water_temperature_mc');
INSERT INTO "word" VALUES (21, '01a0c450-6c00-70e2-8468-65e9874614d7');
INSERT INTO "word" VALUES (22, '04');
INSERT INTO "word" VALUES (23, 'boil');
INSERT INTO "word" VALUES (24, 'scale_test');
INSERT INTO "word" VALUES (25, 'at
known_mg
readings
scale
shown_mg');
INSERT INTO "word" VALUES (26, '01a0c450-6c00-7917-98de-357e3da8cb43');
INSERT INTO "word" VALUES (27, 'body');
INSERT INTO "word" VALUES (28, 'bisque_density_mg_ml
name
to_bisque_e4
to_fired_e4');
INSERT INTO "word" VALUES (29, 'bucket_entry');
INSERT INTO "word" VALUES (3, 'own');
INSERT INTO "word" VALUES (30, 'at
bucket
note
volume_ul
what');
INSERT INTO "word" VALUES (31, 'water');
INSERT INTO "word" VALUES (32, 'empty_mg
name
water_temperature_mc
with_water_mg');
INSERT INTO "word" VALUES (33, 'control');
INSERT INTO "word" VALUES (34, 'area_mm2
at
form
glaze
net_mg
powder_density_e3
sg_uncertainty_e5
specific_gravity_e5
zone');
INSERT INTO "word" VALUES (35, '01a0c450-6c00-7099-ac6c-d7363ca585e7');
INSERT INTO "word" VALUES (36, 'inside');
INSERT INTO "word" VALUES (37, 'tile');
INSERT INTO "word" VALUES (38, 'aim_mg
area_mm2
at
came_out
coats
dry_mg
glaze
name
net_mg
specific_gravity_e5');
INSERT INTO "word" VALUES (39, 'right');
INSERT INTO "word" VALUES (4, 'medium');
INSERT INTO "word" VALUES (40, 'preference');
INSERT INTO "word" VALUES (41, 'area
ask_dip
code_pieces
decimal
length
mass
phone
speak
tick
volume');
INSERT INTO "word" VALUES (42, 'square_centimetre');
INSERT INTO "word" VALUES (43, 'comma');
INSERT INTO "word" VALUES (44, 'millimetre');
INSERT INTO "word" VALUES (45, 'gram');
INSERT INTO "word" VALUES (46, 'millilitre');
INSERT INTO "word" VALUES (47, 'at
bucket
cup
flow_ms
full_mg
how
note
specific_gravity_e5
standard_uncertainty_e5
temperature_mc
vessel');
INSERT INTO "word" VALUES (48, '01a0c450-6c00-7476-8f8a-4baa5dc087b3');
INSERT INTO "word" VALUES (49, 'coat');
INSERT INTO "word" VALUES (5, 'bucket');
INSERT INTO "word" VALUES (50, 'aim_mg
area_mm2
at
bucket
control
form
glaze
high_mg
laydown_mg_dm2
low_mg
net_mg
piece
powder_density_e3
scale
sg_uncertainty_e5
source
specific_gravity_e5
verdict
zone');
INSERT INTO "word" VALUES (51, 'starting');
INSERT INTO "word" VALUES (52, 'within');
INSERT INTO "word" VALUES (53, 'aim_mg
area_mm2
at
bucket
form
glaze
high_mg
laydown_mg_dm2
low_mg
net_mg
piece
powder_density_e3
scale
sg_uncertainty_e5
source
specific_gravity_e5
verdict
zone');
INSERT INTO "word" VALUES (54, 'retract');
INSERT INTO "word" VALUES (55, 'device
seen
seq');
INSERT INTO "word" VALUES (56, '01a0c450-6c00-710a-adec-89025cc1beeb');
INSERT INTO "word" VALUES (6, 'depth_um
diameter_um
empty_mg
glaze
mixed_at
name
volume_ul');
INSERT INTO "word" VALUES (7, '01a0c450-6c00-7893-a2ee-fb32555e71c1');
INSERT INTO "word" VALUES (8, 'form');
INSERT INTO "word" VALUES (9, 'bare_foot_um
capacity_ul
class
floor_um
inside_area_mm2
name
profile
stage
wall_um');
CREATE TABLE chosen (
    name  TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "chosen" VALUES ('evidence', '4');
CREATE TABLE glaze (
    id                       BLOB PRIMARY KEY,
    name                     TEXT NOT NULL,
    sensitivity              TEXT NOT NULL,     -- low, medium, high
    powder_density_e3        INTEGER NOT NULL,  -- relative to water
    starting_laydown_mg_dm2  INTEGER NOT NULL,
    gone                     INTEGER NOT NULL
, targets TEXT, drift_answered_at INTEGER, materials TEXT, density_from TEXT, hazards TEXT, working_sg_e5 INTEGER) STRICT, WITHOUT ROWID;
INSERT INTO "glaze" VALUES (X'01A0C4506C007893A2EEFB32555E71C1', 'Winter ash', 'medium', 2600, 5500, 0, NULL, NULL, '[{"name":"Potash feldspar","parts_e3":42500},{"name":"Copper carbonate","parts_e3":2000,"addition":true,"density_e3":4000,"price_e3":31500}]', 'own', '[["lead","yes"]]', 145000);
CREATE TABLE bucket (
    id         BLOB PRIMARY KEY,
    glaze      BLOB NOT NULL,
    name       TEXT NOT NULL,
    volume_ul  INTEGER,
    mixed_at   INTEGER NOT NULL,
    gone       INTEGER NOT NULL
, diameter_um INTEGER, depth_um INTEGER, empty_mg INTEGER) STRICT, WITHOUT ROWID;
INSERT INTO "bucket" VALUES (X'01A0C4506C0071BB94D8D101B5B9C34D', X'01A0C4506C007893A2EEFB32555E71C1', 'Blue lid', 12000000, 1789913600000, 0, 285000, 320000, 812000);
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
, cup TEXT, gone INTEGER NOT NULL DEFAULT 0) STRICT, WITHOUT ROWID;
INSERT INTO "check" VALUES (X'01A0C4506C0077759C7701564F619AFC', X'01A0C4506C0071BB94D8D101B5B9C34D', 1789996400000, 145000, 250, 'vessel', NULL, 312400, 19500, 31000, NULL, 'ford_4', 0);
INSERT INTO "check" VALUES (X'01A0C4506C007E84B79630AF89EEE263', X'01A0C4506C0071BB94D8D101B5B9C34D', 1790000000000, 145000, 250, 'vessel', X'01A0C4506C0074768F8A4BAA5DC087B3', 312400, 19500, 14300, 'stirred, sieved; it''s smooth', 'ford_4', 0);
CREATE INDEX check_bucket ON "check" (bucket, at);
CREATE TABLE vessel (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    empty_mg              INTEGER NOT NULL,
    with_water_mg         INTEGER NOT NULL,
    water_temperature_mc  INTEGER NOT NULL,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "vessel" VALUES (X'01A0C4506C0074768F8A4BAA5DC087B3', 'Jam jar', 104200, 247900, 20000, 0);
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
, width_um INTEGER, height_um INTEGER, clay_mg INTEGER) STRICT, WITHOUT ROWID;
INSERT INTO "form" VALUES (X'01A0C4506C007099AC6CD7363CA585E7', 'Breakfast mug', 'cylinder_mug', 350000, 26400, NULL, 0, '[[0,36000],[45500,42000,4500],[95000,41000]]', NULL, 'bisque', NULL, 4000, 5000, NULL, NULL, 6000, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
CREATE TABLE body (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    to_bisque_e4          INTEGER NOT NULL,     -- linear shrinkages, of the thrown size
    to_fired_e4           INTEGER NOT NULL,
    bisque_density_mg_ml  INTEGER,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "body" VALUES (X'01A0C4506C0070E2846865E9874614D7', 'White stoneware', 600, 1250, 1850, 0);
CREATE TABLE scale (
    id                BLOB PRIMARY KEY,
    name              TEXT NOT NULL,
    capacity_mg       INTEGER NOT NULL,
    step_mg           INTEGER NOT NULL,
    minimum_mg        INTEGER,
    repeatability_mg  INTEGER,
    gone              INTEGER NOT NULL
, accuracy_class TEXT) STRICT, WITHOUT ROWID;
INSERT INTO "scale" VALUES (X'01A0C4506C00791798DE357E3DA8CB43', 'Shelf scale', 5000000, 100, NULL, 80, 0, NULL);
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
, confirmed INTEGER NOT NULL DEFAULT 0, added_mg INTEGER, rubbed_off_mg INTEGER, hand TEXT, dry_mg INTEGER, dry_uncertainty_mg INTEGER, dip_ms INTEGER) STRICT, WITHOUT ROWID;
INSERT INTO "coat" VALUES (X'01A0C4506C007220A8397B1DCDAF6E78', X'01A0C4506C0076C49D188009454FF88B', 35, 16, 7, 36, 26, 1790000000000, NULL, NULL, 22000, 145000, 250, 2600, 26400, 23400, 21760, 25040, 51, 52, 5170, 1, NULL, NULL, 0, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO "coat" VALUES (X'01A0C4515660710AADEC89025CC1BEEB', X'01A0C45156607893A2EEFB32555E71C1', 35, 16, 7, 36, 26, 1790000060000, NULL, NULL, 23919, 145000, 250, 2600, 26400, 23400, 21760, 25040, 51, 52, 5620, 0, NULL, NULL, 0, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO "coat" VALUES (X'01A0C45240C07758B5DE1C9756CEBFC8', X'01A0C45240C0787BBCBFDD7E532FC3F2', 35, 16, 7, 36, 26, 1790000120000, NULL, NULL, 22838, 145000, 250, 2600, 26400, 23400, 21760, 25040, 51, 52, 5366, 0, NULL, NULL, 0, NULL, NULL, NULL, NULL, NULL, NULL);
CREATE INDEX coat_at ON coat (at);
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
, number INTEGER, name TEXT, fires TEXT) STRICT, WITHOUT ROWID;
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
, left_out INTEGER NOT NULL DEFAULT 0) STRICT, WITHOUT ROWID;
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
INSERT INTO "control" VALUES (X'01A0C4506C007F9BADAE6F4C57A82AC2', X'01A0C4506C007099AC6CD7363CA585E7', X'01A0C4506C007893A2EEFB32555E71C1', 'inside', 23000, 145500, 500, 2600, 26400, 1790000000000, 0);
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
, came_out TEXT, coats INTEGER, aim_mg INTEGER) STRICT, WITHOUT ROWID;
INSERT INTO "tile" VALUES (X'01A0C4506C007534A6A6B7FD0B63D0BA', X'01A0C4506C007893A2EEFB32555E71C1', 'Row 3', 4200, 3600, 1820, 145000, 1790000000000, 0, 'right', 2, 3500);
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
, hand TEXT, ask_dip INTEGER NOT NULL DEFAULT 0) STRICT, WITHOUT ROWID;
INSERT INTO "preference" VALUES (X'01A0C4506C00710AADEC89025CC1BEEB', 'gram', 'millilitre', 'square_centimetre', 'millimetre', 'comma', 1, 0, 1, 'Tablet by the sink', NULL, 1);
CREATE INDEX coat_astray ON coat (piece)
    WHERE substr(hex(piece), 1, 12) NOT BETWEEN printf('%012X', at - 17280000000) AND printf('%012X', at + 86400000);
CREATE INDEX coat_control ON coat (glaze, zone, form, at) WHERE control;
CREATE TABLE piece (
    id    BLOB PRIMARY KEY,
    name  TEXT NOT NULL,
    code  TEXT,
    form  BLOB,
    at    INTEGER NOT NULL,
    gone  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX piece_at ON piece (at) WHERE NOT gone;
CREATE INDEX coat_dip ON coat (bucket, at) WHERE dip_ms IS NOT NULL;
CREATE TABLE scale_test (
    id        BLOB PRIMARY KEY,
    scale     BLOB NOT NULL,
    at        INTEGER NOT NULL,
    readings  TEXT,                             -- JSON array, mg
    known_mg  INTEGER,
    shown_mg  INTEGER,
    gone      INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "scale_test" VALUES (X'01A0C4506C00797385C5D1AAB99F0C43', X'01A0C4506C00791798DE357E3DA8CB43', 1790000000000, '[312400,312500,312400,312300,312500]', 500000, 500100, 0);
CREATE INDEX scale_test_scale ON scale_test (scale, at);
CREATE TABLE bisque_lot (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    body                  BLOB,
    cone                  TEXT,
    at                    INTEGER NOT NULL,     -- when it was fired
    soaking               TEXT NOT NULL,        -- code
    bone_dry_mg           INTEGER NOT NULL,
    soaked_mg             INTEGER NOT NULL,
    suspended_mg          INTEGER,              -- hanging in water
    water_temperature_mc  INTEGER NOT NULL,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "bisque_lot" VALUES (X'01A0C4506C007EF1BD0ED1548FCD1F84', 'Bisque 14', X'01A0C4506C0070E2846865E9874614D7', '04', 1790000000000, 'boil', 100000, 108200, 58100, 20500, 0);
CREATE TABLE bucket_entry (
    id         BLOB PRIMARY KEY,
    bucket     BLOB NOT NULL,
    at         INTEGER NOT NULL,
    what       TEXT NOT NULL,
    volume_ul  INTEGER,
    amount_mg  INTEGER,
    level_um   INTEGER,
    note       TEXT,
    gone       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO "bucket_entry" VALUES (X'01A0C4506C0073F99CA7864A7135B6B9', X'01A0C4506C0071BB94D8D101B5B9C34D', 1790000000000, 'water', 350000, NULL, NULL, 'before the big bowls', 0);
CREATE INDEX bucket_entry_bucket ON bucket_entry (bucket, at) WHERE NOT gone;
