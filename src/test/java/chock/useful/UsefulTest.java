package chock.useful;

import static org.assertj.core.api.Assertions.assertThat;

import chock.useful.UsefulNumbers.Cured;
import chock.useful.UsefulNumbers.Tried;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A tool that blocks everything would pass every test of safety. A part of the numbers is counted in every build, all of them
 * with {@code -Dchock.useful=whole}, and then the table in {@code docs/reliability.md} must say the same; with
 * {@code -Dchock.approve=true} as well it is written anew.
 */
@Tag("slow")
class UsefulTest {
    private static final boolean WHOLE = "whole".equals(System.getProperty("chock.useful"));
    private static final Path PAGE = Path.of("docs/reliability.md");
    private static final Pattern TABLE = Pattern.compile("(?<=<!-- usefulness -->\n).*?(?=<!-- end of usefulness -->)", Pattern.DOTALL);
    private static final String RENEW = "mvn -B test -Dtest=UsefulTest -DargLine='-Dchock.useful=whole -Dchock.approve=true'";

    private static List<Tried> honest;
    private static Map<HarmlessChange, List<Tried>> harmless;
    private static Map<Comeback, Orders.Outcome> comebacks;
    private static List<Cured> faults;
    private static JsonNode approved;

    @BeforeAll
    static void count() throws IOException {
        approved = new YAMLMapper().readTree(Path.of("src/test/resources/useful/approved.yaml").toFile());
        honest = UsefulNumbers.honest();
        harmless = UsefulNumbers.harmless(WHOLE ? 1 : 12);
        comebacks = UsefulNumbers.comebacks(WHOLE);
        faults = UsefulNumbers.faults(WHOLE ? 4 : 90, WHOLE);
    }

    @Test
    void everyCompleteHonestRecordIsReleased() {
        assertThat(honest).hasSize(50);
        assertThat(UsefulNumbers.wrong(honest)).isEmpty();
    }

    @Test
    void atMostOneHarmlessChangeInAHundredBlocks() {
        List<Tried> all = harmless.values().stream().flatMap(List::stream).toList();
        assertThat(all).hasSize(WHOLE ? 500 : 41);
        assertThat(harmless.values()).allSatisfy(tried -> assertThat(tried).isNotEmpty());
        assertThat(UsefulNumbers.wrong(all)).hasSizeLessThanOrEqualTo(all.size() / 100);
    }

    /** The most it may take was counted by hand; a look is one entry, and may have several answers. Where it takes more today, that is approved, and may only shrink. */
    @Test
    void everydayWorkIsReleasedAgainInFewEntries() {
        assertThat(comebacks).hasSize(6);
        comebacks.forEach((work, outcome) -> {
            assertThat(outcome.released()).as(work + " still blocked by " + outcome.open()).isTrue();
            JsonNode missed = approved.get("takes-more").path(work.name());
            assertThat(outcome.entries()).as(work.words() + ": " + outcome.lines().stream().map(HonestRecord.Line::key).toList())
                    .isLessThanOrEqualTo(missed.isMissingNode() ? work.most() : missed.asInt());
        });
    }

    @Test
    void everySingleBadResultClosesAGate() {
        assertThat(faults).hasSizeGreaterThan(WHOLE ? 200 : 8);
        assertThat(faults.stream().filter(f -> f.closed().isEmpty()).map(f -> f.fault().words())).isEmpty();
    }

    @Test
    void theOrderOfWorkEndsReleasedAndAsksForLittleThatIsNotNeeded() {
        Map<String, String> known = new TreeMap<>();
        approved.get("orders-longer").properties().forEach(e -> known.put(e.getKey(), e.getValue().asText()));
        List<String> wrong = new ArrayList<>();
        for (Cured cured : faults) {
            if (!known.containsKey(cured.fault().place() + " " + cured.fault().aspect()) || cured.orders().values().stream().anyMatch(o -> !o.released())) {
                wrong.addAll(cured.words());
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void theRecordOfASingleOf1972DoesNotGrow() {
        assertThat(UsefulNumbers.net()).isPositive().isLessThanOrEqualTo(UsefulNumbers.MOST_ENTRIES);
        assertThat(UsefulNumbers.netLooks()).isPositive().isLessThan(UsefulNumbers.net());
    }

    @Test
    void thePageShowsTheWholeOfIt() throws IOException {
        String page = Files.readString(PAGE);
        Matcher shown = TABLE.matcher(page);
        assertThat(shown.find()).as("%s has a table of usefulness", PAGE).isTrue();
        if (WHOLE) {
            String counted = UsefulTable.of(honest, harmless, comebacks, faults, UsefulNumbers.net(), UsefulNumbers.netLooks());
            if (Boolean.getBoolean("chock.approve")) {
                Files.writeString(PAGE, shown.replaceFirst(Matcher.quoteReplacement(counted)));
            } else {
                assertThat(shown.group()).as("%s is out of date; renew it with: %s", PAGE, RENEW).isEqualTo(counted);
            }
        }
    }
}
