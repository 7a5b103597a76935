package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import chock.board.store.Store;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Strangers at the door, many and patient. */
class PeopleTest {
    @TempDir private Path folder;

    @Test
    void one_account_cannot_be_tried_from_many_addresses() {
        try (Store store = Store.open(folder.resolve("store").toString())) {
            People people = new People(store, Clock.fixed(Bench.NOON, ZoneOffset.UTC));
            String secret = people.first().orElseThrow();
            int refused = 0;
            for (int i = 0; i < 60; i++) {
                String address = "10.0." + i / 4 + "." + i;
                Refusal wrong = catchThrowableOfType(Refusal.class, () -> people.signIn("lead", "guess", address));
                refused += wrong.status() == 429 ? 1 : 0;
            }
            assertThat(refused).as("of sixty guesses from sixty addresses").isEqualTo(20);
            assertThatThrownBy(() -> people.signIn("lead", secret, "10.9.9.9")).as("even the right one, for a quarter of an hour").hasMessageContaining("Too many attempts");
        }
    }

    @Test
    void what_cannot_be_an_id_is_refused_and_kept_nowhere() {
        try (Store store = Store.open(folder.resolve("store").toString())) {
            People people = new People(store, Clock.fixed(Bench.NOON, ZoneOffset.UTC));
            people.first().orElseThrow();
            String long5 = "x".repeat(5_000_000);
            for (int i = 0; i < 15; i++) {
                String id = long5 + i;
                Refusal wrong = catchThrowableOfType(Refusal.class, () -> people.signIn(id, "guess", "10.0.0.1"));
                assertThat(wrong.status()).as("all are counted under one key, whatever they are").isEqualTo(i < 5 ? 401 : 429);
            }
        }
    }

    @Test
    void a_password_that_many_people_use_is_refused_without_asking_anybody() {
        for (String common : List.of("password1234", "Password2026!", "P@ssw0rd2026", "123456789012", "qwertyuiop123", "passwordpassword", "iloveyou2024", "Welcome12345", "letmeinletmein", "aaaaaaaaaaaa", "1q2w3e4r1q2w3e4r",
                "Summer2025Summer", "motorcycle2026", "admin admin admin", "abcdefghijkl", "trustno1trustno1")) {
            assertThat(Passwords.complaint(common, "ida")).as(common).contains("that many people use");
        }
        for (String own : List.of("quite another thing", "own words of k7m2p-9xq4r", "chalk bicycle lantern river", "vrqd-m2k9-x7tp-nh4w", "Zündkerzenschlüssel 14")) {
            assertThat(Passwords.complaint(own, "ida")).as(own).isNull();
        }
        for (int i = 0; i < 1000; i++) {
            assertThat(Passwords.complaint(Passwords.oneTime(), "ida-marrow")).isNull();
        }
    }
}
