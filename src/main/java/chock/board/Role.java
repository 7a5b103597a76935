package chock.board;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody is in the workshop. */
enum Role {
    TECHNICIAN, INSPECTOR, LEAD;

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Role> of(String word) {
        return Arrays.stream(values()).filter(r -> r.word().equals(word)).findFirst();
    }
}
