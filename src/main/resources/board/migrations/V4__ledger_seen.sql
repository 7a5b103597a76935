-- The highest line that the board has seen of the ledger of each workshop, and its digest: a ledger that is shorter or another one shows.
CREATE TABLE ledger_seen (
  workshop TEXT NOT NULL PRIMARY KEY,
  line     BIGINT NOT NULL,
  digest   TEXT NOT NULL,
  at       BIGINT NOT NULL
);
