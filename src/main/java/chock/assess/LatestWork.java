package chock.assess;

import chock.assess.facts.Evidence;
import chock.assess.facts.Wanted;
import chock.assess.facts.Work;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Work that may take away a proof, in order of time. Of much work the last tells most: a part that was worked on a
 * thousand times is not told of a thousand times for every entry about it.
 *
 * @param <T> work as it was written, or work that it implies
 */
final class LatestWork<T> {
    /** How much of it is told of for one entry. */
    static final int TOLD = 4;

    private final List<T> byTime;
    private final Function<T, Work> work;

    LatestWork(List<T> some, Function<T, Work> work) {
        this.byTime = some.stream().sorted(Comparator.comparing((T one) -> work.apply(one).entry().at().latest())
                .thenComparing(one -> work.apply(one).entry().id())).toList();
        this.work = work;
    }

    /** The last of it that nobody withdrew and that may have come after what was wanted began. */
    List<T> mayFollow(Evidence evidence, Wanted wanted, Predicate<Work> withdrawn) {
        return last(wanted.began(evidence), one -> one.mayFollow(evidence, wanted) && !withdrawn.test(one));
    }

    /** The last of these, as far back as that instant. */
    List<T> last(Instant since, Predicate<Work> these) {
        List<T> found = new ArrayList<>(TOLD);
        for (int i = byTime.size() - 1; i >= 0 && found.size() < TOLD; i--) {
            Work one = work.apply(byTime.get(i));
            if (one.entry().at().latest().isBefore(since)) {
                break;
            }
            if (these.test(one)) {
                found.add(byTime.get(i));
            }
        }
        return found;
    }
}
