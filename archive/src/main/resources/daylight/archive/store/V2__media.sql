-- Files by their content, and what each book calls them. A name may come to mean another content;
-- the last one holds, and what it meant before stays.
CREATE TABLE media (
  digest  TEXT    PRIMARY KEY,
  bytes   BIGINT  NOT NULL CHECK (bytes >= 0),
  kept_at TEXT    NOT NULL
);

CREATE TABLE media_name (
  seq     INTEGER PRIMARY KEY,
  book    TEXT    NOT NULL,
  name    TEXT    NOT NULL,
  digest  TEXT    NOT NULL REFERENCES media (digest),
  made_at TEXT    NOT NULL,
  person  TEXT    NOT NULL,
  device  TEXT    NOT NULL
);

CREATE INDEX media_name_of_book ON media_name (book, name);

CREATE TRIGGER media_name_stays BEFORE DELETE ON media_name
BEGIN
  SELECT RAISE(ABORT, 'a name of a file is never removed');
END;

CREATE TRIGGER media_name_is_not_changed BEFORE UPDATE ON media_name
BEGIN
  SELECT RAISE(ABORT, 'a name of a file is never changed');
END;
