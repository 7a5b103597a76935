package chock.spark;

import java.io.Serializable;

/**
 * One line of an archive.
 *
 * @param file where it is from
 * @param at where it begins: bytes from the beginning of a file of lines, or the number of the row in a table
 * @param length its bytes without the line end, also where not all of them were kept
 * @param bytes its bytes; of a line longer than a record may be only the beginning
 * @param unit what {@code at} counts: {@code byte} or {@code row}
 */
record Line(String file, long at, long length, byte[] bytes, String unit) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The bytes to be judged, or null when there are more than a record may have. */
    byte[] whole() {
        return bytes.length < length ? null : bytes;
    }

    /** How it is called in messages. */
    String where() {
        return file + ", " + unit + " " + at;
    }
}
