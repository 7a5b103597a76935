package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import chock.board.store.Store;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
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
}
