-- The ledger. What stands in body is hashed; run, kind, at and by are drawn out of it for searching.
CREATE TABLE ledger (
    seq      INTEGER PRIMARY KEY,
    run      TEXT NOT NULL,
    kind     TEXT NOT NULL,
    at       TEXT NOT NULL,
    "by"     TEXT NOT NULL,
    body     TEXT NOT NULL,
    previous TEXT NOT NULL,
    hash     TEXT NOT NULL
) STRICT;

CREATE INDEX ledger_of_run ON ledger (run);

CREATE TRIGGER ledger_is_never_changed BEFORE UPDATE ON ledger
BEGIN
    SELECT RAISE(ABORT, 'an entry of the ledger is never changed');
END;

CREATE TRIGGER ledger_is_never_shortened BEFORE DELETE ON ledger
BEGIN
    SELECT RAISE(ABORT, 'an entry of the ledger is never taken away');
END;

-- Also keeps INSERT OR REPLACE from replacing, which the two above do not see.
CREATE TRIGGER ledger_is_added_to_at_the_end BEFORE INSERT ON ledger
WHEN NEW.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM ledger)
BEGIN
    SELECT RAISE(ABORT, 'an entry goes to the end of the ledger');
END;

-- "TWLG": tells a ledger from any other SQLite file.
PRAGMA application_id = 1415007303;
