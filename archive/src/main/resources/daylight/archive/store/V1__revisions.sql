-- What was written, revision by revision. Nothing is ever changed or removed here, but that a
-- content may be taken out for good; its digest stays.
CREATE TABLE revision (
  seq       INTEGER PRIMARY KEY,
  book      TEXT    NOT NULL,
  entry     TEXT    NOT NULL,
  number    INTEGER NOT NULL CHECK (number > 0),
  parent    TEXT,
  section   TEXT    NOT NULL,
  place     DOUBLE PRECISION NOT NULL,
  format    INTEGER NOT NULL,
  content   TEXT,
  digest    TEXT    NOT NULL,
  withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
  made_at   TEXT    NOT NULL,
  person    TEXT    NOT NULL,
  device    TEXT    NOT NULL,
  UNIQUE (book, entry, number)
);

CREATE TRIGGER revision_stays BEFORE DELETE ON revision
BEGIN
  SELECT RAISE(ABORT, 'a revision is never removed');
END;

CREATE TRIGGER revision_is_not_changed BEFORE UPDATE ON revision
WHEN NEW.content IS NOT NULL
  OR NEW.seq IS NOT OLD.seq OR NEW.book IS NOT OLD.book OR NEW.entry IS NOT OLD.entry
  OR NEW.number IS NOT OLD.number OR NEW.parent IS NOT OLD.parent
  OR NEW.section IS NOT OLD.section OR NEW.place IS NOT OLD.place
  OR NEW.format IS NOT OLD.format OR NEW.digest IS NOT OLD.digest
  OR NEW.withdrawn IS NOT OLD.withdrawn OR NEW.made_at IS NOT OLD.made_at
  OR NEW.person IS NOT OLD.person OR NEW.device IS NOT OLD.device
BEGIN
  SELECT RAISE(ABORT, 'a revision is never changed');
END;

-- Derived from the revisions, and made anew from them at any time.
CREATE TABLE entry_now (
  book    TEXT NOT NULL,
  entry   TEXT NOT NULL,
  parent  TEXT,
  section TEXT NOT NULL,
  place   DOUBLE PRECISION NOT NULL,
  content TEXT NOT NULL,
  seq     INTEGER NOT NULL REFERENCES revision (seq),
  PRIMARY KEY (book, entry)
);

CREATE TABLE site_now (
  book       TEXT PRIMARY KEY,
  name       TEXT NOT NULL,
  address    TEXT NOT NULL,
  visits     INTEGER NOT NULL,
  last_visit TEXT,
  changed_at TEXT NOT NULL
);
