package chock.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.drools.model.Model;

/** The shipped rule book cut down to one system and the general reasoning, without local codes: for tests that judge thousands of records. */
public final class OneSystem {
    private OneSystem() { }

    public static RuleBook of(String system) {
        return of(system, text -> text);
    }

    /** The same, with the words of its files changed. */
    public static RuleBook of(String system, UnaryOperator<String> change) {
        SortedMap<String, String> files = new TreeMap<>();
        text(RuleCompiler.FILES).lines().filter(name -> name.equals("book.yaml") || name.equals("undoing.yaml") || name.equals("order.yaml") || name.startsWith("evidence/") || name.startsWith(system + "/"))
                .forEach(name -> files.put(name, change.apply(text("rules/" + name))));
        List<Model> models = new ArrayList<>();
        text(RuleCompiler.INDEX).lines().filter(name -> name.startsWith("rules." + system + ".") || name.startsWith("rules.evidence.")).forEach(name -> models.add(model(name)));
        Rules rules = Rules.of(models, RuleBookLoader.kinds());
        return new RuleBookLoader(RuleBook.shipped().vocabulary().points()).load(files, () -> rules);
    }

    private static Model model(String name) {
        try {
            return (Model) Class.forName(name).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(String resource) {
        try (InputStream in = OneSystem.class.getClassLoader().getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
