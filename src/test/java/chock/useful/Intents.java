package chock.useful;

import java.util.List;

/** Which gates each of the fifty records seeks, and whether one person works alone there. */
final class Intents {
    private static final List<List<String>> IN_TURN = List.of(List.of("road-test"), List.of("road-test", "hand-over"), List.of("first-start"), List.of("road-test"), List.of("indoor-run"),
            List.of("first-start", "indoor-run", "road-test", "hand-over"), List.of("road-test"), List.of("on-show"), List.of("hand-over"), List.of("road-test"), List.of("non-runner"));

    private Intents() { }

    static List<String> of(int number) {
        List<String> gates = IN_TURN.get(number % IN_TURN.size());
        boolean runs = gates.stream().anyMatch(g -> g.equals("first-start") || g.equals("indoor-run"));
        return runs && !ModelSheets.of(number).combustion() ? List.of("road-test") : gates;
    }

    static HonestRecord record(int number) {
        return HonestHistory.of(ModelSheets.of(number), of(number), number % 9 == 4);
    }
}
