package chock.rehearse;

import chock.record.UnusableInput;
import io.cucumber.gherkin.GherkinParser;
import io.cucumber.messages.types.Envelope;
import io.cucumber.messages.types.Feature;
import io.cucumber.messages.types.FeatureChild;
import io.cucumber.messages.types.GherkinDocument;
import io.cucumber.messages.types.RuleChild;
import io.cucumber.messages.types.Scenario;
import io.cucumber.messages.types.Tag;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Which scenarios show what a check means: those below a tag that is its id.
 *
 * @param byCheck names of scenarios by file, by id of the check
 */
public record Scenarios(SortedMap<String, SortedMap<String, List<String>>> byCheck) {
    private static final String FOLDER = "features";

    /** Those inside the program. */
    public static Scenarios shipped() {
        URL folder = Scenarios.class.getResource("/" + FOLDER);
        if (folder == null) {
            throw new IllegalStateException("the program was built without its features");
        }
        try {
            if (!folder.getProtocol().equals("jar")) {
                return below(Path.of(folder.toURI()), FOLDER);
            }
            try (FileSystem jar = FileSystems.newFileSystem(folder.toURI(), Map.of())) {
                return below(jar.getPath("/" + FOLDER), FOLDER);
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("its features cannot be read", e);
        }
    }

    /**
     * Those of all feature files below a folder; none when the folder is not there.
     *
     * @param shown how the folder is named to the reader
     * @throws UnusableInput when a file is not written as scenarios are
     */
    public static Scenarios below(Path folder, String shown) throws IOException {
        Scenarios all = new Scenarios(new TreeMap<>());
        if (!Files.isDirectory(folder)) {
            return all;
        }
        List<Path> files;
        try (Stream<Path> walk = Files.walk(folder)) {
            files = walk.filter(f -> f.toString().endsWith(".feature")).sorted().toList();
        }
        for (Path file : files) {
            all.read(shown + "/" + folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
        }
        return all;
    }

    /** These and others. */
    public Scenarios and(Scenarios others) {
        SortedMap<String, SortedMap<String, List<String>>> all = new TreeMap<>(byCheck);
        others.byCheck.forEach((check, files) -> all.merge(check, files, (a, b) -> {
            SortedMap<String, List<String>> both = new TreeMap<>(a);
            both.putAll(b);
            return both;
        }));
        return new Scenarios(all);
    }

    /** By file, in order of name. */
    public SortedMap<String, List<String>> of(String check) {
        return byCheck.getOrDefault(check, new TreeMap<>());
    }

    private void read(String file, byte[] bytes) {
        GherkinParser parser = GherkinParser.builder().includeSource(false).includePickles(false).build();
        try (Stream<Envelope> envelopes = parser.parse(file, bytes)) {
            for (Envelope envelope : envelopes.toList()) {
                envelope.getParseError().ifPresent(e -> {
                    throw UnusableInput.of(file, "this is not written as scenarios are: " + e.getMessage(), "");
                });
                Optional<Feature> feature = envelope.getGherkinDocument().flatMap(GherkinDocument::getFeature);
                feature.ifPresent(f -> f.getChildren().forEach(child -> read(file, f.getTags(), child)));
            }
        }
    }

    private void read(String file, List<Tag> above, FeatureChild child) {
        child.getScenario().ifPresent(scenario -> add(file, above, scenario));
        child.getRule().ifPresent(rule -> {
            List<Tag> tags = new ArrayList<>(above);
            tags.addAll(rule.getTags());
            rule.getChildren().stream().map(RuleChild::getScenario).flatMap(Optional::stream).forEach(scenario -> add(file, tags, scenario));
        });
    }

    private void add(String file, List<Tag> above, Scenario scenario) {
        Stream.concat(above.stream(), scenario.getTags().stream()).map(tag -> tag.getName().substring(1)).distinct()
                .forEach(check -> byCheck.computeIfAbsent(check, c -> new TreeMap<>()).computeIfAbsent(file, f -> new ArrayList<>()).add(scenario.getName()));
    }
}
