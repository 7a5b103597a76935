/** Sign-offs: the canonical form, keys and trust, signing, verifying, and the ledger. Judges nothing by itself. */
package chock.signoff;
