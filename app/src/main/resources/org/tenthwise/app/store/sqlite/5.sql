-- Runs that were made in another store and came in from there. Their entries stand here as that store wrote them, apart
-- from the ledger; its entries of the kind "imported" say what they must be. Releases that know step 4 alone take the
-- tables for foreign.

-- The stores they are from: by the fingerprint of the key that signs there and the hash of the first entry there. The
-- number is the entry of the ledger here that says the first runs came in.
CREATE TABLE imported_from (
    station INTEGER PRIMARY KEY,
    sign    TEXT NOT NULL UNIQUE,
    "key"   TEXT NOT NULL,
    store   TEXT NOT NULL,
    UNIQUE ("key", store)
) STRICT;

CREATE TABLE imported (
    station  INTEGER NOT NULL,
    seq      INTEGER NOT NULL,
    run      TEXT NOT NULL,
    kind     TEXT NOT NULL,
    at       TEXT NOT NULL,
    "by"     TEXT NOT NULL,
    body     TEXT NOT NULL,
    previous TEXT NOT NULL,
    hash     TEXT NOT NULL,
    PRIMARY KEY (station, seq)
) STRICT, WITHOUT ROWID;

CREATE INDEX imported_of_run ON imported (station, run);

CREATE TRIGGER imported_is_never_changed BEFORE UPDATE ON imported
BEGIN
    SELECT RAISE(ABORT, 'an entry that came in is never changed');
END;

CREATE TRIGGER imported_is_never_shortened BEFORE DELETE ON imported
BEGIN
    SELECT RAISE(ABORT, 'an entry that came in is never taken away');
END;

-- Keeps INSERT OR REPLACE from replacing, which the two above do not see.
CREATE TRIGGER imported_is_never_replaced BEFORE INSERT ON imported
WHEN EXISTS (SELECT 1 FROM imported WHERE station = NEW.station AND seq = NEW.seq)
    OR NOT EXISTS (SELECT 1 FROM imported_from WHERE station = NEW.station)
BEGIN
    SELECT RAISE(ABORT, 'an entry that came in stands at its own place');
END;

CREATE TRIGGER imported_from_is_never_changed BEFORE UPDATE ON imported_from
BEGIN
    SELECT RAISE(ABORT, 'where entries came from is never changed');
END;

CREATE TRIGGER imported_from_is_never_shortened BEFORE DELETE ON imported_from
BEGIN
    SELECT RAISE(ABORT, 'where entries came from is never taken away');
END;

CREATE TRIGGER imported_from_is_never_replaced BEFORE INSERT ON imported_from
WHEN EXISTS (SELECT 1 FROM imported_from WHERE station = NEW.station OR sign = NEW.sign)
BEGIN
    SELECT RAISE(ABORT, 'where entries came from is said once');
END;
