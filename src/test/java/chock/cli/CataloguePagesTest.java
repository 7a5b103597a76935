package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rehearse.Scenarios;
import chock.report.CheckInWords;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages in {@code docs/rules/}, one a check. Run with {@code -Dchock.approve=true} they are written anew; then read the difference. */
class CataloguePagesTest {
    private static final Path FOLDER = Path.of("docs/rules");
    private static final String RENEW = "mvn -B test -Dtest=CataloguePagesTest -DargLine=-Dchock.approve=true";
    private static final RuleBook BOOK = RuleBook.shipped();

    private static SortedMap<String, String> pages() throws IOException {
        Scenarios scenarios = Scenarios.below(Path.of("features"), "features");
        SortedMap<String, String> pages = new TreeMap<>();
        pages.put("README.md", Catalogue.index(BOOK));
        BOOK.cards().values().forEach(card -> pages.put(Catalogue.file(card), Catalogue.page(CheckInWords.of(card, BOOK, scenarios.of(card.id())))));
        return pages;
    }

    private static Set<String> there() throws IOException {
        Set<String> there = new TreeSet<>();
        if (Files.isDirectory(FOLDER)) {
            try (Stream<Path> files = Files.walk(FOLDER)) {
                files.filter(Files::isRegularFile).forEach(f -> there.add(FOLDER.relativize(f).toString().replace('\\', '/')));
            }
        }
        return there;
    }

    @Test
    void thePagesAreWhatTheRuleBookSays() throws IOException {
        SortedMap<String, String> pages = pages();
        assertThat(pages).hasSize(BOOK.cards().size() + 1);
        if (Boolean.getBoolean("chock.approve")) {
            for (String old : there()) {
                Files.delete(FOLDER.resolve(old));
            }
            for (Map.Entry<String, String> page : pages.entrySet()) {
                Files.createDirectories(FOLDER.resolve(page.getKey()).getParent());
                Files.writeString(FOLDER.resolve(page.getKey()), page.getValue());
            }
        }
        assertThat(there()).as("pages; renew them with: " + RENEW).isEqualTo(pages.keySet());
        for (Map.Entry<String, String> page : pages.entrySet()) {
            assertThat(Files.readString(FOLDER.resolve(page.getKey()))).as("%s is out of date; renew it with: %s", page.getKey(), RENEW).isEqualTo(page.getValue());
        }
    }

    @Test
    void everyPageNamesItsScenarios() throws IOException {
        assertThat(pages().entrySet()).filteredOn(p -> !p.getKey().equals("README.md")).isNotEmpty().allMatch(p -> p.getValue().contains("| Shown in | features/"));
    }

    @Test
    void theTerminalSaysTheSameAsThePage() throws IOException {
        Scenarios scenarios = Scenarios.below(Path.of("features"), "features");
        CheckInWords check = CheckInWords.of(BOOK.cards().get("brakes.pad-thickness"), BOOK, scenarios.of("brakes.pad-thickness"));
        String shown = Run.of("rules", "brakes.pad-thickness").out().replaceAll("\\s+", " ");
        String page = Catalogue.page(check);
        assertThat(check.rows()).hasSizeGreaterThan(10).allSatisfy(row -> {
            assertThat(shown).contains(row.label() + ":", row.words().replaceAll("\\s+", " ").substring(0, Math.min(60, row.words().length())));
            assertThat(page).contains(row.words());
        });
    }
}
