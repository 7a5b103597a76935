/** The trade's computations as pure functions; each names its source. */
package chock.figure;
