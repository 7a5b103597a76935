/** An archive judged on Apache Spark. Everything of Spark stays here; what is judged, and how, stands in {@code chock.archive}. */
package chock.spark;
