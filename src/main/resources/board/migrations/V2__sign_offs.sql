-- Sign-offs as they were signed, and what voided them; added to, never changed. The ledger beside them is the workshop's own.
CREATE TABLE sign_off (
  id          TEXT NOT NULL PRIMARY KEY,
  machine     TEXT NOT NULL REFERENCES machine (id),
  version     BIGINT NOT NULL,
  gate        TEXT NOT NULL,
  signed_at   BIGINT NOT NULL,
  holds_until BIGINT NOT NULL,
  signer      TEXT NOT NULL,
  role        TEXT NOT NULL,
  key_id      TEXT NOT NULL,
  account     TEXT NOT NULL,
  line        BIGINT NOT NULL,
  digest      TEXT NOT NULL UNIQUE,
  seal        TEXT NOT NULL UNIQUE,
  jws         TEXT NOT NULL
);
CREATE INDEX sign_off_machine ON sign_off (machine, gate, signed_at);
CREATE INDEX sign_off_at ON sign_off (signed_at, id);
CREATE TABLE sign_off_void (
  sign_off TEXT NOT NULL PRIMARY KEY REFERENCES sign_off (id),
  at       BIGINT NOT NULL,
  why      TEXT NOT NULL
);
CREATE TRIGGER sign_off_stays BEFORE UPDATE ON sign_off ${refuse};
CREATE TRIGGER sign_off_remains BEFORE DELETE ON sign_off ${refuse};
CREATE TRIGGER sign_off_void_stays BEFORE UPDATE ON sign_off_void ${refuse};
CREATE TRIGGER sign_off_void_remains BEFORE DELETE ON sign_off_void ${refuse};

-- With which key each person signs; a lead says so.
CREATE TABLE signer (
  account TEXT NOT NULL PRIMARY KEY REFERENCES account (id),
  key_id  TEXT NOT NULL UNIQUE
);
