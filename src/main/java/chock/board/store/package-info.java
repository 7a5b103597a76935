/** What was written, kept: records, accounts and who did what, in SQLite or PostgreSQL. Judges nothing. */
package chock.board.store;
