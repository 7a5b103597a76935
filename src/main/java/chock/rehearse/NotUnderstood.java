package chock.rehearse;

import chock.record.Entry;
import chock.record.UnusableInput;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A step that has the form of a known one, and names something nobody knows. The message says what to write instead. */
final class NotUnderstood extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private static final Pattern ENTRY = Pattern.compile("entries\\[(\\d+)]");

    NotUnderstood(String message) {
        super(message);
    }

    /** Steps that are each understood, and together make a record that nobody could hand in. Entries are named by their ids, as findings name them. */
    static NotUnderstood refused(UnusableInput record, List<Entry> entries) {
        return new NotUnderstood(record.faults().stream().map(fault -> place(fault.path(), entries) + ": " + fault.what() + ". " + fault.advice()).collect(Collectors.joining("; ")));
    }

    private static String place(String path, List<Entry> entries) {
        Matcher entry = ENTRY.matcher(path);
        return entry.lookingAt() ? entries.get(Integer.parseInt(entry.group(1))).id() : path;
    }
}
