/** Spoken and typed lines: what they may mean as entries of a record. Deterministic, on this machine alone, and without guessing. */
package chock.note;
