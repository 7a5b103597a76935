package chock.assess;

import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Listing;
import chock.rulebook.Card;
import chock.rulebook.LimitFor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What to do first about a check that is open. A fault is put right. What is only missing, stale or doubtful is looked at, tried,
 * measured or looked up first: nobody fits new pads because nobody measured the old ones.
 */
final class FirstToDo {
    private FirstToDo() { }

    /** What clears a check in this state at this place, the worst of its places, or null when it is met. */
    static String about(Card card, State state, String point, Conclusions concluded) {
        return switch (state) {
            case MET -> null;
            case FAULT -> card.remedy();
            default -> concluded.required(card.id()).stream().filter(required -> required.point().equals(point)).findFirst()
                    .map(required -> open(card, required, concluded)).orElse(card.remedy());
        };
    }

    private static String open(Card card, Required worst, Conclusions concluded) {
        // In the order of the card: what the rules concluded comes in any.
        List<Wanted> wanted = concluded.of(worst, Wanted.class).stream()
                .sorted(Comparator.comparingInt(want -> card.wants().indexOf(want.want()))).toList();
        String lookUp = wanted.stream().map(Wanted::limit).filter(limit -> limit != null && limit.lacks())
                .map(LimitFor::toDo).findFirst().orElse("");
        List<String> proven = concluded.of(worst, Standing.class).stream().map(standing -> standing.wanted().name()).toList();
        List<Wanted> open = wanted.stream().filter(want -> !proven.contains(want.name())).toList();
        if (open.isEmpty() && !lookUp.isEmpty()) {
            return lookUp;
        }
        // Where work is wanted, the work is what is to be done.
        if (card.wants().stream().anyMatch(want -> want.weakest() == Deed.DONE)) {
            return (lookUp + " " + card.remedy()).strip();
        }
        // Whatever stands is not good enough, such as two readings that differ: all of it again.
        String first = (lookUp + " " + looks(open.isEmpty() ? wanted : open)).strip();
        return first.isEmpty() ? card.remedy() : first + " If the result is not good: " + card.remedy();
    }

    /** {@code Look at the date mark; measure the gap at rest and the gap when on; write down the result.} */
    private static String looks(List<Wanted> open) {
        Map<String, List<String>> byVerb = new LinkedHashMap<>();
        open.forEach(want -> {
            String what = "the " + want.want().aspect().replace('-', ' ');
            List<String> named = byVerb.computeIfAbsent(verb(want.want().weakest()), verb -> new ArrayList<>());
            if (!named.contains(what)) {
                named.add(what);
            }
        });
        if (byVerb.isEmpty()) {
            return "";
        }
        String all = byVerb.entrySet().stream().map(verb -> verb.getKey() + " " + Listing.and(verb.getValue())).collect(Collectors.joining("; "));
        return Character.toUpperCase(all.charAt(0)) + all.substring(1) + "; write down the result.";
    }

    private static String verb(Deed weakest) {
        return switch (weakest) {
            case MEASURED -> "measure";
            case TRIED -> "try";
            case SEEN -> "look at";
            default -> "find out";
        };
    }
}
