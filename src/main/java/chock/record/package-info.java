/** The job record: all that was written about one machine. Reads files, refuses what cannot be relied on, says where and why. */
package chock.record;
