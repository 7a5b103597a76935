package chock.signoff;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody may do with a key. */
public enum Role {
    /** Signs. */ INSPECTOR,
    /** Signs, and says whose keys are believed. */ LEAD;

    /** The role of that word. */
    public static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
