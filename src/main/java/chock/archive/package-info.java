/** Many records at once: one line of bytes in, what came of it out. Knows neither files nor the engine that spreads the work. */
package chock.archive;
