package chock.useful;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The single of 1972 of the counts by file, for counting the same machine by other ways in: its blank record, and what somebody who looks finds. */
public final class PrintedMachine {
    private static final HonestRecord HONEST = HonestHistory.of(ModelSheets.singleOf1972(), List.of("road-test"), false);

    private PrintedMachine() { }

    /** The record without any entry. */
    public static byte[] blank() {
        return new String(HONEST.with(List.of()).text(), StandardCharsets.UTF_8).replace("entries:\n", "entries: []\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The moment it is judged at. */
    public static java.time.Instant moment() {
        return HONEST.moment();
    }

    /** What is found: empty where the honest record has nothing; without {@code is} where work was done. */
    public record Found(String is, String with) { }

    public static Optional<Found> found(String place, String what) {
        return HONEST.lines().stream().filter(l -> l.place().equals(place) && l.what().equals(what)).reduce((a, b) -> b).map(l -> new Found(l.is(), l.with()));
    }
}
