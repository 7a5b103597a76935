-- The same script for SQLite and PostgreSQL; only how a table is told never to change its lines differs.
${refusing};

CREATE TABLE machine (
  id            TEXT NOT NULL PRIMARY KEY,
  version       BIGINT NOT NULL,
  workshop      TEXT NOT NULL,
  marque        TEXT NOT NULL,
  model         TEXT NOT NULL,
  frame_number  TEXT NOT NULL,
  engine_number TEXT NOT NULL,
  words         TEXT NOT NULL,
  written_at    BIGINT NOT NULL,
  nearest       BIGINT,
  lapses        BIGINT,
  again         BIGINT,
  book          TEXT NOT NULL
);
CREATE INDEX machine_written ON machine (written_at, id);
CREATE INDEX machine_nearest ON machine (nearest, id);
CREATE INDEX machine_lapses ON machine (lapses, id);
CREATE INDEX machine_again ON machine (again);
CREATE INDEX machine_book ON machine (book);

CREATE TABLE sheet (
  machine    TEXT NOT NULL REFERENCES machine (id),
  version    BIGINT NOT NULL,
  written_by TEXT NOT NULL,
  written_at BIGINT NOT NULL,
  json       TEXT NOT NULL,
  PRIMARY KEY (machine, version)
);
CREATE TABLE entry (
  machine    TEXT NOT NULL REFERENCES machine (id),
  seq        BIGINT NOT NULL,
  id         TEXT NOT NULL,
  version    BIGINT NOT NULL,
  written_by TEXT NOT NULL,
  written_at BIGINT NOT NULL,
  json       TEXT NOT NULL,
  PRIMARY KEY (machine, seq),
  UNIQUE (machine, id)
);
CREATE TABLE event (
  id      TEXT NOT NULL PRIMARY KEY,
  at      BIGINT NOT NULL,
  account TEXT NOT NULL,
  action  TEXT NOT NULL,
  machine TEXT,
  detail  TEXT NOT NULL
);
CREATE INDEX event_at ON event (at, id);

CREATE TRIGGER sheet_stays BEFORE UPDATE ON sheet ${refuse};
CREATE TRIGGER sheet_remains BEFORE DELETE ON sheet ${refuse};
CREATE TRIGGER entry_stays BEFORE UPDATE ON entry ${refuse};
CREATE TRIGGER entry_remains BEFORE DELETE ON entry ${refuse};
CREATE TRIGGER event_stays BEFORE UPDATE ON event ${refuse};
CREATE TRIGGER event_remains BEFORE DELETE ON event ${refuse};

-- What the rule book made of each machine when it was last written to; worked out anew from the entries at any time.
CREATE TABLE standing (
  machine     TEXT NOT NULL REFERENCES machine (id),
  gate        TEXT NOT NULL,
  place       INTEGER NOT NULL,
  released    INTEGER NOT NULL,
  holds_until BIGINT,
  faults      INTEGER NOT NULL,
  doubts      INTEGER NOT NULL,
  stales      INTEGER NOT NULL,
  missings    INTEGER NOT NULL,
  mets        INTEGER NOT NULL,
  undecided   INTEGER NOT NULL,
  PRIMARY KEY (machine, gate)
);
CREATE INDEX standing_gate ON standing (gate, released, machine);
CREATE INDEX standing_until ON standing (holds_until);
CREATE TABLE holding (
  machine  TEXT NOT NULL REFERENCES machine (id),
  gate     TEXT NOT NULL,
  place    INTEGER NOT NULL,
  check_id TEXT NOT NULL,
  state    TEXT NOT NULL,
  critical INTEGER NOT NULL,
  says     TEXT NOT NULL,
  PRIMARY KEY (machine, gate, check_id)
);
CREATE INDEX holding_check ON holding (check_id, gate, machine);

CREATE TABLE account (
  id          TEXT NOT NULL PRIMARY KEY,
  name        TEXT NOT NULL UNIQUE,
  role        TEXT NOT NULL,
  secret      TEXT NOT NULL,
  must_change INTEGER NOT NULL,
  active      INTEGER NOT NULL,
  made_at     BIGINT NOT NULL
);
CREATE TABLE session (
  token   TEXT NOT NULL PRIMARY KEY,
  account TEXT NOT NULL REFERENCES account (id),
  form    TEXT NOT NULL,
  made_at BIGINT NOT NULL,
  seen_at BIGINT NOT NULL
);
-- The answer to a write, kept so that the same write sent twice is done once.
CREATE TABLE reply (
  account TEXT NOT NULL,
  key     TEXT NOT NULL,
  digest  TEXT NOT NULL,
  status  INTEGER NOT NULL,
  body    TEXT NOT NULL,
  tag     TEXT,
  at      BIGINT NOT NULL,
  PRIMARY KEY (account, key)
);
-- The instrument last used by each person for each thing measured.
CREATE TABLE habit (
  account    TEXT NOT NULL,
  aspect     TEXT NOT NULL,
  instrument TEXT NOT NULL,
  PRIMARY KEY (account, aspect)
);
