package chock.rulebook;

import chock.record.Fault;
import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.model.Model;

/**
 * The files a rule book is made of, as text. Nothing in them is looked at before {@link #load}, which compiles and runs what
 * stands in the {@code *.drl} files among them: they are code.
 *
 * @param folder what they lie in, for messages
 * @param texts by name, such as {@code brakes/limits.yaml}
 */
public record RuleFiles(String folder, SortedMap<String, String> texts) {
    private static final String FOLDER = "rules";
    private static final Pattern PACKAGE = Pattern.compile("(?m)^package\\s+([\\w.]+)");

    public RuleFiles {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
    }

    /** @param texts by name, such as {@code brakes/limits.yaml} */
    public RuleFiles(SortedMap<String, String> texts) {
        this(FOLDER, texts);
    }

    /** Those inside the program. */
    public static RuleFiles shipped() {
        return new RuleFiles(RuleBookLoader.shippedFiles());
    }

    /**
     * Those below a folder laid out like {@code rules/} of the project.
     *
     * @throws UnusableInput when it is no folder, or a file in it is no text in UTF-8 of at most 1 MB
     */
    public static RuleFiles below(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw UnusableInput.of(folder.toString(), Files.exists(folder) ? "this is a file" : "there is no such folder", "Name a folder laid out like rules/ of the project");
        }
        SortedMap<String, String> texts = new TreeMap<>();
        List<Fault> faults = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            files.filter(Files::isRegularFile).forEach(file -> take(folder, file, texts, faults));
        } catch (IOException e) {
            throw UnusableInput.of(folder.toString(), "it cannot be read", "");
        }
        if (texts.isEmpty() && faults.isEmpty()) {
            throw UnusableInput.of(folder.toString(), "there is no file in it", "Name a folder laid out like rules/ of the project");
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new RuleFiles(folder.toString(), texts);
    }

    private static void take(Path folder, Path file, SortedMap<String, String> texts, List<Fault> faults) {
        String text = RuleText.read(file, file.toString(), "Name a folder with the files of a rule book and no others.", faults);
        if (text != null) {
            texts.put(folder.relativize(file).toString().replace('\\', '/'), text);
        }
    }

    /** {@code sha256:} over names and texts: the digest that the rule book made of them has. */
    public String digest() {
        return RuleBookLoader.digest(texts);
    }

    /**
     * The rule book made of them: that inside the program when they are its files, else with its rules compiled now.
     *
     * @throws UnusableInput when they are not sound, each fault with file and line
     */
    public RuleBook load() {
        RuleBook shipped = RuleBook.shipped();
        try {
            return digest().equals(shipped.digest()) ? shipped : new RuleBookLoader().load(new TreeMap<>(texts), this::compiled);
        } catch (UnusableInput e) {
            throw new UnusableInput(e.faults().stream().map(fault -> fault.file().startsWith(FOLDER) ? fault.in(folder + fault.file().substring(FOLDER.length())) : fault).toList());
        }
    }

    /** A package that says, letter for letter, what one inside the program says is taken from there: compiling it takes seconds. */
    private Rules compiled() {
        Map<String, SortedMap<String, String>> inside = byPackage(RuleBookLoader.shippedFiles());
        Map<String, SortedMap<String, String>> here = byPackage(texts);
        if (here.isEmpty()) {
            throw UnusableInput.of(FOLDER, "a rule book without rules decides nothing", "A rule book has its rules in *.drl files");
        }
        List<Model> models = new ArrayList<>(RuleBookLoader.models().stream().filter(model -> same(model.getPackageName(), here, inside)).toList());
        List<Fault> faults = Collections.synchronizedList(new ArrayList<>());
        models.addAll(here.entrySet().parallelStream().filter(one -> !same(one.getKey(), here, inside)).flatMap(one -> compiled(one.getValue(), faults).stream()).toList());
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        SortedMap<String, String> all = new TreeMap<>();
        here.values().forEach(all::putAll);
        return Rules.of(models, RuleReading.of(all));
    }

    private static boolean same(String name, Map<String, SortedMap<String, String>> here, Map<String, SortedMap<String, String>> inside) {
        return here.containsKey(name) && here.get(name).equals(inside.get(name));
    }

    private static Map<String, SortedMap<String, String>> byPackage(Map<String, String> files) {
        Map<String, SortedMap<String, String>> packages = new TreeMap<>();
        files.forEach((name, text) -> {
            if (name.endsWith(".drl")) {
                Matcher found = PACKAGE.matcher(text);
                packages.computeIfAbsent(found.find() ? found.group(1) : name, one -> new TreeMap<>()).put(name, text);
            }
        });
        return packages;
    }

    private List<Model> compiled(SortedMap<String, String> sources, List<Fault> faults) {
        try {
            return RuleBookLoader.modelsOf(RuleCompiler.compile(sources));
        } catch (RuleCompiler.NotCompiled e) {
            e.messages().forEach(m -> faults.add(new Fault(shown(m.file(), sources), Math.max(0, m.line()), "", m.text(), "Mend the rule, or use the chock this rule book was written for.")));
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(FOLDER + "/" + sources.firstKey(), 0, "", e.getMessage(), "Write a rule, or take the file away."));
        }
        return List.of();
    }

    /** A file as it is named in messages: the compiler knows its last name only. */
    private static String shown(String last, SortedMap<String, String> sources) {
        return FOLDER + "/" + sources.keySet().stream().filter(name -> name.equals(last) || name.endsWith("/" + last)).findFirst().orElse(sources.firstKey());
    }
}
