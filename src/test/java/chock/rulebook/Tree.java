package chock.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The rule book in a folder of source files, cut down to one system and the general reasoning. */
public final class Tree {
    private Tree() { }

    public static RuleBook load(Path rules, String system) throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        SortedMap<String, String> drl = new TreeMap<>();
        List<Path> all;
        try (Stream<Path> walk = Files.walk(rules)) {
            all = walk.filter(Files::isRegularFile).toList();
        }
        for (Path file : all) {
            String name = rules.relativize(file).toString().replace('\\', '/');
            if (name.equals("book.yaml") || name.startsWith("evidence/") || name.startsWith(system + "/")) {
                files.put(name, Files.readString(file));
                if (name.endsWith(".drl")) {
                    drl.put(name, Files.readString(file));
                }
            }
        }
        Map<String, byte[]> made = compiled(drl);
        Rules compiled = Rules.of(RuleBookLoader.modelsOf(made), RuleBookLoader.kinds().and(RuleBookLoader.kindsOf(made)));
        return new RuleBookLoader(RuleBook.shipped().vocabulary().points()).load(files, () -> compiled);
    }

    // Under a package of their own, or the class loader would find the shipped ones first.
    private static Map<String, byte[]> compiled(SortedMap<String, String> drl) {
        SortedMap<String, String> renamed = new TreeMap<>();
        drl.forEach((name, text) -> renamed.put("tree/" + name, text.replaceFirst("package rules\\.", "package rules.tree.")));
        return RuleCompiler.compile(renamed);
    }
}
