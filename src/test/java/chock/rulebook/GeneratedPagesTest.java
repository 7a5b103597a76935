package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The pages written from the rule book: {@code docs/coverage.md} from the topics, and the table of documents in
 * {@code docs/sources.md}. Run with {@code -Dchock.approve=true} they are written anew; then read the difference.
 */
class GeneratedPagesTest {
    private static final String RENEW = "mvn -B test -Dtest=GeneratedPagesTest -DargLine=-Dchock.approve=true";
    private static final String TOPICS = "docs/topics.yaml";
    private static final String ITEMS = "docs/items.yaml";
    private static final Path DECISIONS = Path.of("docs/decisions");
    private static final Pattern DOCUMENTS = Pattern.compile("(<!-- documents of the rule book, written by a test -->\n)(.*?)(<!-- end of documents -->)", Pattern.DOTALL);

    private static final Pattern COUNTS = Pattern.compile("(<!-- counts of sources, written by a test -->\n)(.*?)(<!-- end of counts -->)", Pattern.DOTALL);

    private record Topic(String words, List<String> checks, List<String> decisions) { }

    /** An item of a periodic inspection. */
    private record Item(String number, String title, String read, List<String> checks, String why) { }

    private record Part(String title, List<Topic> topics) { }

    private final RuleBook book = RuleBook.shipped();
    private final List<Part> parts = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();

    @BeforeEach
    void readTheTopics() throws IOException {
        List<Fault> faults = new ArrayList<>();
        for (Sheet system : Sheet.list(TOPICS, Files.readString(Path.of(TOPICS)), faults)) {
            system.text("system");
            List<Topic> topics = new ArrayList<>();
            for (Sheet topic : system.sheets("topics")) {
                topics.add(new Topic(topic.text("topic"), topic.texts("checks"), topic.texts("decisions")));
                topic.done();
            }
            parts.add(new Part(system.text("title"), topics));
            system.done();
        }
        for (Sheet item : Sheet.list(ITEMS, Files.readString(Path.of(ITEMS)), faults)) {
            items.add(new Item(item.text("item"), item.text("title"), item.optional("read"), item.texts("checks"), item.optional("why")));
            item.done();
        }
        assertThat(faults).as(TOPICS + " and " + ITEMS).isEmpty();
        assertThat(parts).as("parts of " + TOPICS).isNotEmpty().allMatch(part -> !part.topics.isEmpty());
    }

    private Stream<Topic> topics() {
        return parts.stream().flatMap(part -> part.topics.stream());
    }

    @Test
    void everyTopicHasACheckOrADecision() {
        assertThat(topics().filter(topic -> topic.checks.isEmpty() && topic.decisions.isEmpty()).map(Topic::words))
                .as("topics answered by nothing: name the checks under checks: or the decision that says why not under decisions:").isEmpty();
    }

    @Test
    void everyCheckIsUnderATopicAndNoTopicNamesAnother() {
        Set<String> named = new TreeSet<>();
        topics().forEach(topic -> named.addAll(topic.checks));
        Set<String> homeless = new TreeSet<>(book.cards().keySet());
        homeless.removeAll(named);
        assertThat(homeless).as("checks under no topic: add them to " + TOPICS).isEmpty();
        named.removeAll(book.cards().keySet());
        assertThat(named).as("checks named in " + TOPICS + " that do not exist").isEmpty();
    }

    @Test
    void noTopicStandsTwiceOrNamesACheckTwice() {
        assertThat(parts).allSatisfy(part -> assertThat(part.topics.stream().map(Topic::words)).doesNotHaveDuplicates());
        assertThat(topics()).allSatisfy(topic -> assertThat(topic.checks).as(topic.words).doesNotHaveDuplicates());
    }

    @Test
    void everyItemOfAnInspectionHasChecksOrAReason() {
        assertThat(items).hasSizeGreaterThan(60).allSatisfy(item -> assertThat(item.checks.isEmpty()).as(item.number + ": checks, or the reason why there are none, and not both").isEqualTo(item.why != null));
        assertThat(items.stream().map(Item::number)).doesNotHaveDuplicates();
        assertThat(items).allSatisfy(item -> assertThat(book.cards().keySet()).as(item.number).containsAll(item.checks));
    }

    @Test
    void theCoveragePageIsWhatTheTopicsSay() throws IOException {
        compare(Path.of("docs/coverage.md"), coverage());
    }

    @Test
    void theCountsOfSourcesAreThoseOfTheRuleBook() throws IOException {
        Path page = Path.of("docs/sources.md");
        String text = Files.readString(page);
        Matcher place = COUNTS.matcher(text);
        assertThat(place.find()).as("the place for the counts in " + page).isTrue();
        compare(page, place.replaceFirst(Matcher.quoteReplacement(place.group(1) + SourceCounts.of(book) + place.group(3))));
    }

    @Test
    void theTableOfDocumentsIsWhatTheRuleBookCites() throws IOException {
        Path page = Path.of("docs/sources.md");
        String text = Files.readString(page);
        Matcher place = DOCUMENTS.matcher(text);
        assertThat(place.find()).as("the place for the table in " + page).isTrue();
        compare(page, place.replaceFirst(Matcher.quoteReplacement(place.group(1) + documents() + place.group(3))));
    }

    private static void compare(Path page, String renewed) throws IOException {
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(page, renewed);
        } else {
            assertThat(Files.exists(page) ? Files.readString(page) : "").as("%s is out of date; renew it with: %s", page, RENEW).isEqualTo(renewed);
        }
    }

    private String coverage() throws IOException {
        StringBuilder page = new StringBuilder("""
                # What is checked, by topic

                Written from [topics.yaml](topics.yaml); not to be edited. `chock rules ID` explains any of these checks.
                """);
        for (Part part : parts) {
            page.append("\n## ").append(part.title).append("\n| topic | answered by |\n|---|---|\n");
            for (Topic topic : part.topics) {
                List<String> answers = new ArrayList<>();
                topic.checks.forEach(id -> answers.add("`" + id + "`"));
                for (String number : topic.decisions) {
                    answers.add("[decision " + number + "](decisions/" + decision(number) + ")");
                }
                page.append("| ").append(topic.words).append(" | ").append(String.join(", ", answers)).append(" |\n");
            }
        }
        return page.append(inspection()).toString();
    }

    private String inspection() {
        StringBuilder table = new StringBuilder("""

                ## Item by item of a periodic inspection
                Written from [items.yaml](items.yaml). The numbers are those of Directive 2014/45/EU, Annex I, for vehicles of category L; the
                inspection manual of Great Britain for motorcycles follows them. Annex I itself, and sections 1 to 3, 7 and 8 of the manual, were
                not at hand: where nothing else is said, number and title are from memory, and the wording of an item is nowhere claimed. This table
                shows what is asked, and proves no conformity with either. Items of cars, lorries, trailers and buses are left out.

                | item | what | read | answered by |
                |---|---|---|---|
                """);
        items.forEach(item -> table.append("| ").append(item.number).append(" | ").append(item.title).append(" | ").append(item.read == null ? "from memory" : item.read).append(" | ")
                .append(item.why != null ? item.why : item.checks.stream().map(id -> "`" + id + "`").collect(Collectors.joining(", "))).append(" |\n"));
        return table.toString();
    }

    private static String decision(String number) throws IOException {
        try (Stream<Path> files = Files.list(DECISIONS)) {
            List<String> named = files.map(file -> file.getFileName().toString()).filter(name -> name.matches("0*" + number + "-.*\\.md")).toList();
            assertThat(named).as("decision " + number + " in " + DECISIONS).hasSize(1);
            return named.get(0);
        }
    }

    /** One row for each document and way of knowing it, with the places of the rule book that cite it. */
    private String documents() {
        Map<String, Map<String, Set<String>>> cited = new TreeMap<>();
        book.limits().forEach(limit -> cite(cited, limit.source(), limit.id().replaceFirst("\\..*", "")));
        book.codes().values().forEach(code -> {
            code.limits().forEach(limit -> cite(cited, limit.source(), code.code()));
            code.setsNone().values().forEach(source -> cite(cited, source, code.code()));
        });
        book.ride().ifPresent(ride -> sources(ride).forEach(source -> cite(cited, source, "ride plan")));
        assertThat(cited).as("documents cited").isNotEmpty();
        StringBuilder table = new StringBuilder("| document | kind | how known | cited in |\n|---|---|---|---|\n");
        cited.forEach((document, ways) -> ways.forEach((way, where) ->
                table.append("| ").append(document).append(" | ").append(way).append(" | ").append(String.join(", ", where)).append(" |\n")));
        return table.toString();
    }

    private static void cite(Map<String, Map<String, Set<String>>> cited, Source source, String where) {
        if (source.document() != null) {
            cited.computeIfAbsent(source.document(), document -> new TreeMap<>())
                    .computeIfAbsent(source.kind().words() + " | " + known(source), way -> new TreeSet<>()).add(where);
        }
    }

    // A limit of the general files that is the maker's can only be one the maker put on the part: nobody has his manual at hand here.
    private static String known(Source source) {
        return source.kind() == Source.Kind.MAKER ? "as it stands on the part" : source.known().words();
    }

    private static List<Source> sources(RideSheet ride) {
        List<Source> all = new ArrayList<>();
        List<RideSheet.Line> lines = new ArrayList<>(ride.stop());
        lines.addAll(ride.back());
        for (RideSheet.Step step : ride.steps()) {
            lines.addAll(step.doing());
            lines.addAll(step.feel());
            add(all, step.upTo());
        }
        for (RideSheet.Restraint restraint : ride.restraints()) {
            lines.addAll(restraint.lines());
            lines.addAll(restraint.back());
            add(all, restraint.upTo());
        }
        lines.stream().filter(line -> line.source() != null).forEach(line -> all.add(line.source()));
        return all;
    }

    private static void add(List<Source> all, RideSheet.Ceiling ceiling) {
        if (ceiling != null) {
            all.add(ceiling.source());
        }
    }
}
