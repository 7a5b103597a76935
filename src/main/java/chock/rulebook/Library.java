package chock.rulebook;

import chock.record.Entry;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words shared by all cards.
 *
 * @param places words behind the names in braces
 * @param works every work, with what it means
 * @param disturbing works that undo whatever lies on or below the part worked on
 * @param mendsNothing works that may undo a proof and mend nothing: a fault stays unless its card says that the work clears it
 * @param dangers what a known fault can do, and which gates it closes
 * @param ofTheDay what changes from hour to hour without work: there the latest look decides
 * @param besides aspects that may be written though no check asks for them
 * @param assembly how machines are put together, and what work does to each kind of proof
 * @param order the order in which the trade does things
 * @param looks the look that answers a question together with others, by place and aspect
 * @param synonyms how people at the bench say it otherwise
 * @param withdrawWithin how long after it was written one's own entry may be withdrawn as a slip
 * @param plainReasons reasons of a correction that bring no question
 */
public record Library(Map<String, List<String>> places, Map<String, String> works, Set<String> disturbing,
                      Set<String> mendsNothing, Dangers dangers, OfTheDay ofTheDay, Set<String> besides, Assembly assembly, TradeOrder order, Map<String, Look> looks, Synonyms synonyms, Duration withdrawWithin,
                      PlainReasons plainReasons) {

    /**
     * Places whose state is that of the day.
     *
     * @param places these, and what belongs to them
     * @param except these, and what belongs to them, are none
     */
    public record OfTheDay(List<String> places, List<String> except) {
        public boolean has(String point) {
            return within(places, point) && !within(except, point);
        }

        private static boolean within(List<String> places, String point) {
            return places.stream().anyMatch(place -> Entry.covers(place, point));
        }
    }
}
