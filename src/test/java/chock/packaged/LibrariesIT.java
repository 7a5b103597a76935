package chock.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The libraries beside the program: the list the build writes names each of them and no other, and {@code docs/licences.md}
 * says under what terms they are handed on. Run with {@code -Dchock.approve=true} the page is written anew.
 */
class LibrariesIT {
    private static final String RENEW = "mvn -B verify -Dtest=HouseTest -Dit.test=LibrariesIT -DargLine=-Dchock.approve=true";
    private static final Path PAGE = Path.of("docs/licences.md");
    private static final Path LIST = Path.of("target/sbom.json");

    /** What a licence asks of who hands a library on. */
    private enum Asks {
        NOTHING("nothing"),
        NOTICE("its notice is kept"),
        FILES("copyleft for its own files: handed on unchanged, as a jar of its own"),
        LIBRARY("copyleft for the library: handed on unchanged, as a jar of its own that another version can take the place of");

        private final String words;

        Asks(String words) {
            this.words = words;
        }
    }

    private static final Map<String, Asks> TERMS = Map.ofEntries(
            Map.entry("0BSD", Asks.NOTHING), Map.entry("CC0-1.0", Asks.NOTHING),
            Map.entry("Apache-2.0", Asks.NOTICE), Map.entry("MIT", Asks.NOTICE), Map.entry("Bouncy Castle Licence", Asks.NOTICE),
            Map.entry("BSD-2-Clause", Asks.NOTICE), Map.entry("BSD-3-Clause", Asks.NOTICE),
            Map.entry("OFL-1.1", Asks.NOTICE),
            Map.entry("EPL-2.0", Asks.FILES), Map.entry("LGPL-2.1-or-later", Asks.LIBRARY));

    /** What a licence was read to be, and how that is known. */
    private record Reading(String licence, String known) { }

    /** Where the list leaves open what is meant; by the start of the name. */
    private static final Map<String, Reading> READ_BY_US = new TreeMap<>(Map.of(
            "com.github.librepdf:openpdf-fonts-extra", new Reading("OFL-1.1", "read in the library: the fonts, which are all of it that is used, carry the text of the SIL Open Font License 1.1"),
            "com.twelvemonkeys.", new Reading("BSD-3-Clause", "from memory: three clauses; its description says \"The BSD License\""),
            "org.antlr:antlr-runtime", new Reading("BSD-3-Clause", "from memory: three clauses; its description says \"BSD licence\""),
            "org.jfree:jfreechart", new Reading("LGPL-2.1-or-later", "from memory: version 2.1 or later; its description says \"GNU Lesser General Public Licence\" without a version"),
            "org.jline:", new Reading("BSD-3-Clause", "read in its description, whose link leads to the text with three clauses"),
            "tech.uom.lib:", new Reading("BSD-3-Clause", "from memory: three clauses; its description says \"BSD\"")));

    private record Library(String name, String version, List<String> stated, String sha256) {
        String taken() {
            return READ_BY_US.entrySet().stream().filter(e -> name.startsWith(e.getKey())).map(e -> e.getValue().licence).findFirst()
                    .orElseGet(() -> stated.stream().filter(TERMS::containsKey).min(Comparator.comparing(TERMS::get)).orElse(""));
        }
    }

    private final List<Library> libraries = new ArrayList<>();
    private final Map<String, Path> jars = new TreeMap<>();

    @BeforeEach
    void readTheListAndTheFolder() throws IOException, NoSuchAlgorithmException {
        for (JsonNode component : new ObjectMapper().readTree(LIST.toFile()).path("components")) {
            List<String> stated = new ArrayList<>();
            for (JsonNode licence : component.path("licenses")) {
                JsonNode one = licence.path("license");
                stated.add(licence.hasNonNull("expression") ? licence.get("expression").asText() : one.path(one.has("id") ? "id" : "name").asText());
            }
            String sha256 = "";
            for (JsonNode hash : component.path("hashes")) {
                sha256 = hash.path("alg").asText().equals("SHA-256") ? hash.path("content").asText() : sha256;
            }
            libraries.add(new Library(component.path("group").asText() + ":" + component.path("name").asText(), component.path("version").asText(), stated, sha256));
        }
        libraries.sort(Comparator.comparing(Library::name));
        try (Stream<Path> files = Files.list(Path.of("target/lib"))) {
            for (Path jar : files.sorted().toList()) {
                jars.put(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar))), jar);
            }
        }
        assertThat(libraries).as("libraries in " + LIST).isNotEmpty();
        assertThat(jars).as("jars beside the program").isNotEmpty();
    }

    @Test
    void everyLibraryBesideTheProgramIsInTheListAndTheOtherWayRound() {
        Map<String, String> listed = new TreeMap<>();
        libraries.forEach(library -> listed.put(library.sha256, library.name));
        assertThat(listed).as("no two of the list are one file").hasSameSizeAs(libraries);
        Map<String, Path> unlisted = new TreeMap<>(jars);
        unlisted.keySet().removeAll(listed.keySet());
        assertThat(unlisted.values()).as("jars in target/lib that %s does not name", LIST).isEmpty();
        listed.keySet().removeAll(jars.keySet());
        assertThat(listed.values()).as("libraries in %s that are not in target/lib", LIST).isEmpty();
    }

    @Test
    void theListIsTheSameInEveryBuild() throws IOException {
        JsonNode list = new ObjectMapper().readTree(LIST.toFile());
        assertThat(list.path("bomFormat").asText()).isEqualTo("CycloneDX");
        assertThat(list.has("serialNumber")).as("a number drawn anew in every build").isFalse();
        assertThat(list.path("metadata").has("timestamp")).as("the time of the build").isFalse();
    }

    @Test
    void everyLicenceLetsTheLibraryBeHandedOnBesideOurs() {
        assertThat(libraries).as("libraries with no licence we know: read it, and add it to TERMS only if it allows this")
                .filteredOn(library -> !TERMS.containsKey(library.taken())).isEmpty();
        assertThat(READ_BY_US.keySet()).as("readings for libraries that are no longer there")
                .allMatch(start -> libraries.stream().anyMatch(library -> library.name.startsWith(start)));
    }

    @Test
    void theJarOfTheProgramHoldsNoClassOfAnybodyElse() throws IOException {
        try (JarFile jar = new JarFile("target/chock.jar")) {
            List<String> classes = jar.stream().map(e -> e.getName()).filter(n -> n.endsWith(".class")).toList();
            assertThat(classes).hasSizeGreaterThan(500);
            assertThat(classes).as("copyleft is met by every library being a jar of its own").allMatch(n -> n.startsWith("chock/") || n.startsWith("rules/"));
        }
    }

    @Test
    void thePageOfLicencesIsWhatTheListSays() throws IOException {
        String renewed = page();
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(PAGE, renewed);
        } else {
            assertThat(Files.exists(PAGE) ? Files.readString(PAGE) : "").as("%s is out of date; renew it with: %s", PAGE, RENEW).isEqualTo(renewed);
        }
    }

    private String page() throws IOException {
        Map<String, Integer> counts = new TreeMap<>();
        libraries.forEach(library -> counts.merge(library.taken(), 1, Integer::sum));
        StringBuilder page = new StringBuilder("""
                # Libraries and their licences

                Written from the list of libraries of the build; not to be edited. Chock itself is under the Apache License 2.0 ([LICENSE](../LICENSE)). These libraries are handed on with it, each unchanged and as a file of its own in `lib`; `chock.jar` holds no class of theirs. That meets the licences that are copyleft: whoever gets Chock can put another version of such a library into its place, and gets its source from its makers under the name and version given here.

                ## By licence
                | licence | libraries | what it asks |
                |---|---|---|
                """);
        counts.forEach((licence, count) -> page.append("| ").append(licence).append(" | ").append(count).append(" | ").append(TERMS.get(licence).words).append(" |\n"));
        page.append("""

                ## By library
                "Stated" is what the library's own description says, as the list of the build writes it. Where it names several, one may choose, and "taken" is the choice. "Text" says whether the library carries the text of its licence: who hands on the folder `lib` adds the text for those that do not.

                | library | version | stated | taken | text |
                |---|---|---|---|---|
                """);
        for (Library library : libraries) {
            page.append("| ").append(library.name).append(" | ").append(library.version).append(" | ").append(String.join(" or ", library.stated)).append(" | ")
                    .append(library.taken()).append(" | ").append(carriesText(library) ? "yes" : "no").append(" |\n");
        }
        page.append("""

                ## Where "taken" is not what is stated
                The list turns the short words "BSD" and "The BSD License" into BSD-4-Clause. That is the list's guess, not the makers' word.

                | libraries | taken | how that is known |
                |---|---|---|
                """);
        READ_BY_US.forEach((start, reading) -> page.append("| ").append(start.endsWith(".") || start.endsWith(":") ? start + "*" : start)
                .append(" | ").append(reading.licence).append(" | ").append(reading.known).append(" |\n"));
        return page.toString();
    }

    private boolean carriesText(Library library) throws IOException {
        Path file = jars.get(library.sha256);
        assertThat(file).as(library.name).isNotNull();
        try (JarFile jar = new JarFile(file.toFile())) {
            return jar.stream().map(e -> e.getName().substring(e.getName().lastIndexOf('/') + 1).toUpperCase(Locale.ROOT))
                    .anyMatch(n -> n.matches("(LICEN[SC]E|COPYING|EPL|ABOUT)([-_. ].*)?|.*[-_]LICEN[SC]E([-_.].*)?") && !n.endsWith(".CLASS"));
        }
    }
}
