package chock.record;

import java.util.Locale;

/** What the person did who wrote an entry, strongest evidence first. */
public enum Deed {
    /** A value read off an instrument. */ MEASURED,
    /** A function tried by the writer. */ TRIED,
    /** Looked at by the writer. */ SEEN,
    /** Said by somebody else. */ TOLD,
    /** Taken for granted. */ ASSUMED,
    /** Work on a part. */ DONE,
    /** An instrument found out of tolerance. */ FOUND_OUT,
    /** Inspected by a licensed person. */ INSPECTED,
    /** Something wrong, in free words. */ DEFECT,
    /** A defect found closed. */ CLOSED;

    /** The key of an entry in a record file, such as {@code measured}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** True for what can prove something about the machine. */
    public boolean isEvidence() {
        return ordinal() <= ASSUMED.ordinal();
    }

    /** True when this is at least as strong as the weakest kind a check accepts. */
    public boolean atLeast(Deed weakest) {
        return isEvidence() && ordinal() <= weakest.ordinal();
    }
}
