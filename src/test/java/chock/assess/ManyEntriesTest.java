package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.SetAside;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Moment;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * A record in which one thing was written thousands of times is judged like any other: nobody can stop the shop with
 * it.
 */
class ManyEntriesTest {
    private static final int COPIES = 3_000;

    /** The last entry made that work, and so many more before it, a minute apart. */
    private static JobRecord copied(String work, int copies) throws IOException {
        JobRecord whole = Examples.read("lark-released.yaml");
        Entry last = whole.entries().stream().filter(e -> e.what().equals(work)).findFirst().orElseThrow();
        List<Entry> all = new ArrayList<>();
        for (int i = copies; i > 0; i--) {
            LocalDateTime at = LocalDateTime.of(last.at().date(), last.at().time()).minusMinutes(i);
            Moment then = new Moment(at.toLocalDate(), at.toLocalTime(), last.at().zone());
            all.add(new Entry("c" + i, then, last.by(), last.deed(), last.point(), last.what(), last.is(), last.with(),
                    null, null, null, 0));
        }
        all.addAll(whole.entries());
        return whole.withEntries(all);
    }

    @Test
    @Timeout(120)
    void workWrittenThousandsOfTimesIsJudgedAsWorkWrittenOnce() throws IOException {
        Assessment once = Examples.judge(copied("replaced", 0));
        Assessment often = Examples.judge(copied("replaced", COPIES));
        assertThat(states(often)).isEqualTo(states(once));
    }

    private static Map<String, State> states(Assessment assessment) {
        return assessment.gates().stream().flatMap(gate -> gate.findings().stream())
                .filter(finding -> !finding.check().equals("record.second-person"))
                .collect(Collectors.toMap(Finding::check, Finding::state, (a, b) -> a));
    }

    /** Of a thousand works that undid an entry the last few are told, and each entry is undone. */
    @Test
    void theLastWorkIsTold() throws IOException {
        Conclusions concluded = Assessor.conclude(copied("replaced", 50), Examples.BOOK, Examples.DAY);
        Map<String, List<SetAside>> undone = concluded.setAside().stream()
                .filter(aside -> aside.reason() == SetAside.Reason.UNDONE && aside.entry().startsWith("c"))
                .collect(Collectors.groupingBy(one -> one.wanted().name() + one.wanted().required() + one.entry()));
        assertThat(undone).isNotEmpty();
        assertThat(undone.values()).allSatisfy(by -> assertThat(by).hasSizeBetween(1, LatestWork.TOLD));
        assertThat(undone.values()).anySatisfy(by -> assertThat(by).hasSize(LatestWork.TOLD));
    }
}
