package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When a limit is due to be looked up again. */
class OverdueTest {
    private final RuleBook book = RuleBook.shipped();

    @Test
    void aLimitIsOverdueTheDayAfterItsPeriodRanOut() {
        assertThat(book.reviewEvery()).isEqualTo(Period.ofYears(2));
        Limit first = book.limits().get(0);
        LocalDate due = first.reviewed().plusYears(2);
        assertThat(book.overdue(List.of(first), due)).isEmpty();
        assertThat(book.overdue(List.of(first), due.plusDays(1))).containsExactly(new Overdue(first, due));
    }

    @Test
    void codesAreHeldToItToo() {
        List<Overdue> all = book.overdue(LocalDate.of(2099, 1, 1));
        long rows = book.limits().size() + book.codes().values().stream().mapToLong(c -> c.limits().size()).sum();
        assertThat(all).hasSize((int) rows).anyMatch(o -> o.words().startsWith("GB "));
        assertThat(all).isSortedAccordingTo(java.util.Comparator.comparing(Overdue::due));
    }
}
