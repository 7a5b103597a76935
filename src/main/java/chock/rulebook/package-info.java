/** Checks, limits, sources and local codes in force: the model, the strict loading, and which limit applies. */
package chock.rulebook;
