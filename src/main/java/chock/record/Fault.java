package chock.record;

import java.util.Comparator;

/**
 * One thing wrong with an input file.
 *
 * @param file the file as the user named it
 * @param line line, from 1; 0 for the file as a whole
 * @param path where in the document, such as {@code entries[3].is}; empty for the whole
 * @param what what is wrong
 * @param advice what to write instead
 */
public record Fault(String file, int line, String path, String what, String advice) implements Comparable<Fault> {

    /** The same fault of a file that is named otherwise. */
    public Fault in(String other) {
        return new Fault(other, line, path, what, advice);
    }

    @Override
    public int compareTo(Fault other) {
        return Comparator.comparing(Fault::file).thenComparingInt(Fault::line).thenComparing(Fault::path).thenComparing(Fault::what).compare(this, other);
    }

    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + ": " + (path.isEmpty() ? "" : path + ": ") + what + (advice.isEmpty() ? "" : ". " + advice);
    }
}
