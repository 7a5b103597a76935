package chock.spark;

import org.apache.spark.sql.SparkSession;

/** Makes tables in Parquet out of lines, and prints tables, for the tests alone. */
final class Tables {
    private Tables() { }

    /** @param args {@code to-table} or {@code to-text}, from where, and to where */
    public static void main(String[] args) {
        try (SparkSession spark = SparkSession.builder().master("local[1]").config("spark.ui.enabled", "false").getOrCreate()) {
            if (args[0].equals("to-table")) {
                spark.read().option("lineSep", "\n").text(args[1]).withColumnRenamed("value", "record").coalesce(1).write().parquet(args[2]);
            } else {
                spark.read().parquet(args[1]).toJSON().collectAsList().forEach(System.out::println);
            }
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
