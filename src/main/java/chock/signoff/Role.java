package chock.signoff;

import java.util.Locale;

/** What somebody may do with a key. */
public enum Role {
    /** Signs. */ INSPECTOR,
    /** Signs, and says whose keys are believed. */ LEAD;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
