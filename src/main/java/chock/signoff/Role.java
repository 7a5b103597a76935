package chock.signoff;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody may do with a key. */
public enum Role {
    /** Signs. */ INSPECTOR,
    /** Signs, and says whose keys are believed. */ LEAD,
    /** Signs rule books, not releases. */ AUTHOR;

    /** The role of that word. */
    public static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }

    /** True when this one's keys sign releases. */
    boolean maySignReleases() {
        return this != AUTHOR;
    }

    /** True when a rule book packed by this one is read: its rules are code. */
    boolean mayPackRules() {
        return this != INSPECTOR;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
