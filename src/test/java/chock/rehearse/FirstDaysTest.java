package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.JobRecord;
import chock.rulebook.Limit;
import chock.rulebook.LocalCode;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The first day of every limit: a machine to which it speaks is held against it on that day, and not on the day before; one that
 * says always holds whatever day is judged. Which
 * days these are stands in a list that was read and approved; {@code -Dchock.approve=true} writes it anew. So no scenario has to
 * judge in a year in which nobody judged.
 */
class FirstDaysTest {
    private static final Path APPROVED = Path.of("src/test/resources/limits/first-days.txt");
    private static final RuleBook BOOK = RuleBook.shipped();

    static Stream<Limit> limits() {
        return BOOK.allLimits().stream();
    }

    @ParameterizedTest
    @MethodSource("limits")
    void fromItsFirstDayAndNoDayBefore(Limit limit) throws ReflectiveOperationException {
        JobRecord machine = spokenTo(limit);
        if (limit.isAlways()) {
            assertThat(inForce(limit, machine, LocalDate.of(1900, 1, 1))).as("whatever day is judged").contains(limit);
            return;
        }
        assertThat(inForce(limit, machine, limit.from().minusDays(1))).as("the day before").doesNotContain(limit);
        assertThat(inForce(limit, machine, limit.from())).as("the first day").contains(limit);
    }

    @Test
    void theFirstDaysAreThoseThatWereApproved() throws IOException {
        List<String> lines = limits().map(FirstDaysTest::line).sorted().toList();
        if (Boolean.getBoolean("chock.approve")) {
            Files.createDirectories(APPROVED.getParent());
            Files.writeString(APPROVED, String.join("\n", lines) + "\n");
        }
        assertThat(Files.readAllLines(APPROVED)).as("%s; renew it with: mvn -B test -Dtest=FirstDaysTest -DargLine=-Dchock.approve=true and read the difference", APPROVED).isEqualTo(lines);
    }

    private static String line(Limit limit) {
        StringBuilder line = new StringBuilder(limit.id());
        if (limit.territory() != null) {
            line.append(" in ").append(limit.territory());
        }
        if (limit.registeredFrom() != null) {
            line.append(", registered from ").append(limit.registeredFrom());
        }
        if (limit.registeredBefore() != null) {
            line.append(", registered before ").append(limit.registeredBefore());
        }
        if (limit.fasterThan() != null) {
            line.append(", faster than ").append(limit.fasterThan());
        }
        return line + ": " + (limit.isAlways() ? "always" : "from " + limit.from());
    }

    /** What is in force for this machine, the common limit and the law. */
    private static List<Limit> inForce(Limit limit, JobRecord machine, LocalDate day) {
        return BOOK.limitFor(limit.id(), "machine", machine, day).rests();
    }

    private static JobRecord spokenTo(Limit limit) throws ReflectiveOperationException {
        SpokenBench bench = new SpokenBench(BOOK);
        bench.say("a motorcycle with one hydraulic disc in front and a rod drum behind");
        if (limit.registeredFrom() != null) {
            bench.say("the machine is first registered " + limit.registeredFrom());
        } else if (limit.registeredBefore() != null) {
            bench.say("the machine is first registered " + limit.registeredBefore().minusDays(1));
        }
        if (limit.fasterThan() != null) {
            bench.say("the top speed is 200 km/h");
        }
        if (limit.territory() != null) {
            LocalCode code = BOOK.codes().get(limit.territory());
            bench.say("the territory is " + Stream.of("GB", "US-VA", "US-MD", "DE", "FR").filter(code::covers).findFirst().orElseThrow());
        }
        return bench.record();
    }
}
