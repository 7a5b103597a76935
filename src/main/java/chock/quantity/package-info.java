/** A value with its unit and its uncertainty, and how it compares with a bound. Knows nothing of motorcycles. */
package chock.quantity;
