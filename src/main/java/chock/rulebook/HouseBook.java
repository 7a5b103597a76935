package chock.rulebook;

import chock.record.Fault;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The rules of one house, as its folder holds them: limits it tightens and checks it adds. Read, and not yet held against
 * a rule book; {@link RuleBook#with(HouseBook)} does that.
 *
 * @param name what the house calls its rules
 * @param digest {@code sha256:} over every file that decides; scenarios and notes are not among them
 * @param folder the folder as the operator named it
 * @param files text by name, such as {@code limits.yaml}
 */
public record HouseBook(String name, String digest, String folder, SortedMap<String, String> files) {
    static final String LIMITS = "limits.yaml";
    static final String CHECKS = "checks.yaml";
    private static final String NAME = "house.yaml";
    private static final String FEATURES = "features";

    /**
     * Reads a folder with {@code house.yaml} and at least one of {@code limits.yaml}, {@code checks.yaml}.
     *
     * @throws UnusableInput when it is no such folder
     */
    public static HouseBook read(Path folder) {
        String shown = folder.toString();
        if (!Files.isDirectory(folder)) {
            throw UnusableInput.of(shown, Files.exists(folder) ? "this is a file" : "there is no such folder", "Name a folder with house.yaml, and limits.yaml or checks.yaml, in it");
        }
        List<Fault> faults = new ArrayList<>();
        SortedMap<String, String> files = new TreeMap<>();
        try (Stream<Path> list = Files.list(folder)) {
            list.sorted().forEach(file -> take(shown, file, files, faults));
        } catch (IOException e) {
            throw UnusableInput.of(shown, "it cannot be read", "");
        }
        String name = null;
        if (files.containsKey(NAME)) {
            Sheet sheet = Sheet.one(shown + "/" + NAME, files.get(NAME), faults);
            if (sheet != null) {
                name = sheet.text("name");
                sheet.done();
            }
        } else {
            faults.add(new Fault(shown + "/" + NAME, 0, "", "there is no such file, so this is not a house folder", "Write it, with one line: name: and what the house calls its rules."));
        }
        if (!files.containsKey(LIMITS) && !files.containsKey(CHECKS) && files.containsKey(NAME)) {
            faults.add(new Fault(shown, 0, "", "the house neither tightens a limit nor adds a check", "Write limits.yaml or checks.yaml, or leave --house out."));
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new HouseBook(name, RuleBookLoader.digest(files), shown, files);
    }

    private static void take(String folder, Path file, SortedMap<String, String> files, List<Fault> faults) {
        String name = file.getFileName().toString();
        if (name.startsWith(".") || name.endsWith(".md")) {
            return;
        }
        if (Files.isDirectory(file) ? !name.equals(FEATURES) : !isKnown(name)) {
            faults.add(useless(folder + "/" + name));
        } else if (!Files.isDirectory(file)) {
            String text = RuleText.read(file, folder + "/" + name, "Name a house folder.", faults);
            if (text != null) {
                files.put(name, text);
            }
        }
    }

    /**
     * A house of which the files are at hand.
     *
     * @param folder what it is called in messages
     * @throws UnusableInput when a house has no use for one of them
     */
    public static HouseBook of(String name, String folder, SortedMap<String, String> files) {
        List<Fault> faults = files.keySet().stream().filter(file -> !isKnown(file)).map(file -> useless(folder + "/" + file)).toList();
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new HouseBook(name, RuleBookLoader.digest(files), folder, files);
    }

    private static boolean isKnown(String name) {
        return name.equals(NAME) || name.equals(LIMITS) || name.equals(CHECKS) || name.endsWith(".drl");
    }

    private static Fault useless(String shown) {
        return new Fault(shown, 0, "", "a house folder has no use for this", "Known are house.yaml, limits.yaml, checks.yaml, *.drl, the folder features, and *.md for notes.");
    }

    /** A house that asks for nothing yet. */
    public static HouseBook named(String name) {
        SortedMap<String, String> files = new TreeMap<>(Map.of(NAME, "name: " + TextNode.valueOf(name) + "\n"));
        return new HouseBook(name, RuleBookLoader.digest(files), "house", files);
    }

    /** Its limits, as written in {@code limits.yaml}; empty when it tightens none. */
    public String limits() {
        return files.getOrDefault(LIMITS, "");
    }

    /** This house with further rows under its limits; its digest is that of the folder that holds them. */
    public HouseBook withLimits(String rows) {
        SortedMap<String, String> changed = new TreeMap<>(files);
        String before = limits();
        changed.put(LIMITS, before + (before.isEmpty() || before.endsWith("\n") ? "" : "\n") + rows);
        return new HouseBook(name, RuleBookLoader.digest(changed), folder, changed);
    }

    /** The folder of the house's scenarios; it need not be there. */
    public Path features() {
        return Path.of(folder, FEATURES);
    }

    /** A file as it is named in messages. */
    String shown(String name) {
        return folder + "/" + name;
    }
}
