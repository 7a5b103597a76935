-- Photos to entries, added and never changed. Their bytes lie in a folder beside SQLite, and with PostgreSQL in photo_bytes.
CREATE TABLE photo (
  machine    TEXT NOT NULL,
  entry      TEXT NOT NULL,
  digest     TEXT NOT NULL,
  width      INTEGER NOT NULL,
  height     INTEGER NOT NULL,
  size       BIGINT NOT NULL,
  written_by TEXT NOT NULL,
  written_at BIGINT NOT NULL,
  PRIMARY KEY (machine, entry, digest),
  FOREIGN KEY (machine, entry) REFERENCES entry (machine, id)
);
CREATE INDEX photo_digest ON photo (machine, digest);
CREATE TABLE photo_bytes (
  digest TEXT NOT NULL PRIMARY KEY,
  bytes  ${bytes} NOT NULL
);
CREATE TRIGGER photo_stays BEFORE UPDATE ON photo ${refuse};
CREATE TRIGGER photo_remains BEFORE DELETE ON photo ${refuse};
CREATE TRIGGER photo_bytes_stay BEFORE UPDATE ON photo_bytes ${refuse};
CREATE TRIGGER photo_bytes_remain BEFORE DELETE ON photo_bytes ${refuse};
