-- What is drawn from the ledger for lists, suggestions and a history: written with the entries it comes from and never
-- otherwise, no part of the chain, and made anew from the entries wherever its form is another. A change here is a new
-- form: raise the number in DrawnTables.
CREATE TABLE drawn_form (
    form TEXT NOT NULL,
    seq  INTEGER NOT NULL,
    hash TEXT NOT NULL
) STRICT;

CREATE TABLE drawn_run (
    begun      INTEGER PRIMARY KEY,
    run        TEXT NOT NULL UNIQUE,
    part       TEXT NOT NULL,
    revision   TEXT NOT NULL,
    serial     TEXT NOT NULL,
    lot        TEXT NOT NULL,
    machine    TEXT NOT NULL,
    plan       TEXT NOT NULL,
    begun_at   TEXT NOT NULL,
    "by"       TEXT NOT NULL,
    people     TEXT NOT NULL,
    last       INTEGER NOT NULL,
    last_at    TEXT NOT NULL,
    worked     INTEGER NOT NULL, -- seconds since 1970 at last_at
    issue      TEXT,
    in_hand    INTEGER,
    outcome    TEXT,
    concessions INTEGER,
    contested  INTEGER,
    open       INTEGER NOT NULL, -- neither closed nor put away
    closed_by  TEXT,
    closed_as  TEXT,
    purpose    TEXT NOT NULL,
    piece      INTEGER
) STRICT;

CREATE INDEX drawn_run_by_machine ON drawn_run (open, machine, last);
CREATE INDEX drawn_run_by_state ON drawn_run (open, last);
CREATE INDEX drawn_run_by_time ON drawn_run (open, worked, last);
CREATE INDEX drawn_run_by_part ON drawn_run (part, revision, serial);
CREATE INDEX drawn_run_in_turn ON drawn_run (part, begun);

CREATE TABLE drawn_characteristic (
    run         INTEGER NOT NULL,
    step        INTEGER NOT NULL,
    place       INTEGER NOT NULL,
    name        TEXT NOT NULL,
    balloon     TEXT,
    designator  TEXT,
    class       TEXT NOT NULL,
    lower       TEXT,
    upper       TEXT,
    unit        TEXT,
    places      INTEGER NOT NULL,
    verdict     TEXT NOT NULL,
    distance    TEXT,
    "limit"     TEXT,
    inside      INTEGER,
    value       TEXT,
    disposition TEXT,
    signed_by   TEXT,
    "by"        TEXT,
    at          TEXT,
    kind        TEXT,
    gauge       TEXT,
    asked       INTEGER NOT NULL, -- whether it is in the run
    PRIMARY KEY (run, step)
) STRICT, WITHOUT ROWID;

-- What a series over parts needs of a characteristic that is judged by a size. Sizes in millimetres, seconds of arc or
-- the unit of a scale.
CREATE TABLE drawn_size (
    run         INTEGER NOT NULL,
    step        INTEGER NOT NULL,
    operation   INTEGER NOT NULL,
    followed_by TEXT NOT NULL,
    kind        TEXT NOT NULL,
    requirement TEXT NOT NULL,
    bounds      TEXT NOT NULL,
    cut         TEXT, -- as it was cut
    cut_least   TEXT,
    cut_greatest TEXT,
    size        TEXT, -- in hand
    least       TEXT,
    greatest    TEXT,
    cuts        INTEGER NOT NULL,
    far_off     INTEGER NOT NULL,
    conceded    INTEGER NOT NULL,
    expanded    TEXT,
    entry       INTEGER NOT NULL,
    at          TEXT NOT NULL,
    last_entry  INTEGER NOT NULL,
    people      TEXT NOT NULL,
    gauges      TEXT NOT NULL,
    PRIMARY KEY (run, step)
) STRICT, WITHOUT ROWID;

CREATE TABLE drawn_tool (
    seq       INTEGER PRIMARY KEY,
    run       INTEGER NOT NULL,
    operation INTEGER NOT NULL, -- 0 for all
    words     TEXT NOT NULL
) STRICT;

CREATE INDEX drawn_tool_of_run ON drawn_tool (run);

CREATE TABLE drawn_matter (
    run     INTEGER NOT NULL,
    place   INTEGER NOT NULL,
    kind    TEXT NOT NULL,
    "check" INTEGER NOT NULL, -- 0 for the whole run
    about   TEXT NOT NULL,
    number  TEXT NOT NULL,
    "by"    TEXT NOT NULL,
    since   TEXT NOT NULL,
    PRIMARY KEY (run, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE drawn_reading (
    seq     INTEGER PRIMARY KEY,
    run     INTEGER NOT NULL,
    step    INTEGER NOT NULL,
    pass    INTEGER NOT NULL,
    replaced INTEGER NOT NULL,
    place   TEXT NOT NULL,
    repeat  INTEGER NOT NULL,
    figure  TEXT NOT NULL,
    unit    TEXT NOT NULL,
    value   TEXT,
    places  INTEGER NOT NULL,
    verdict TEXT,
    kind    TEXT,
    gauge   TEXT,
    "by"    TEXT NOT NULL,
    at      TEXT NOT NULL,
    struck  TEXT
) STRICT;

CREATE INDEX drawn_reading_of_step ON drawn_reading (run, step);

CREATE TABLE drawn_gauge (
    seq       INTEGER PRIMARY KEY,
    run       INTEGER NOT NULL,
    step      INTEGER NOT NULL,
    kind      TEXT NOT NULL,
    gauge     TEXT NOT NULL,
    reference TEXT
) STRICT;

CREATE INDEX drawn_gauge_by_mark ON drawn_gauge (kind, gauge, run);
CREATE INDEX drawn_gauge_by_reference ON drawn_gauge (reference, run);

-- People, machines, lots and gauges by name, each with the run last worked on that has it.
CREATE TABLE drawn_name (
    what  TEXT NOT NULL,
    "of"  TEXT NOT NULL,
    name  TEXT NOT NULL,
    run   INTEGER NOT NULL,
    place INTEGER NOT NULL,
    PRIMARY KEY (what, "of", name)
) STRICT, WITHOUT ROWID;
