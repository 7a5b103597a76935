package chock.rulebook;

import chock.record.UnusableInput;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.internal.builder.InternalKieBuilder;
import org.kie.internal.builder.conf.ParallelRulesBuildThresholdOption;

/**
 * Turns DRL into the classes of Drools' executable model. The build runs it once over {@code rules/}, so that no
 * compiler stands on the start-up path; the build plug-in for this reported success on no rules at all.
 */
public final class RuleCompiler {
    static final String INDEX = "META-INF/chock/rule-models";
    static final String FILES = "META-INF/chock/rule-files";

    private RuleCompiler() { }

    /** One thing the compiler does not understand, and where. */
    record Wrong(String file, int line, String text) { }

    /** Rules that do not compile. */
    static final class NotCompiled extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final transient List<Wrong> messages;

        NotCompiled(List<Wrong> messages) {
            super("the rules do not compile:" + messages.stream().map(m -> "\n  " + m.file + ":" + m.line + ": " + m.text).collect(java.util.stream.Collectors.joining()));
            this.messages = messages;
        }

        List<Wrong> messages() {
            return messages;
        }
    }

    /**
     * Compiles every DRL file below the first folder into the second, unless nothing changed since the last time.
     *
     * @param folders the rules folder and the folder for class files
     */
    public static void main(String[] folders) throws IOException, NoSuchAlgorithmException {
        Path rules = Path.of(folders[0]);
        Path classes = Path.of(folders[1]);
        // Rules compiled side by side number their patterns in the order the threads come by, and no two builds are equal.
        System.setProperty(ParallelRulesBuildThresholdOption.PROPERTY_NAME, Integer.toString(Integer.MAX_VALUE));
        boolean anew = compile(rules, classes);
        pack(rules, classes.resolve(Packed.NAME), anew);
    }

    /** Leaves what is quick to read, or nothing when the rule book is not sound: then the program says at its start what is wrong. */
    private static void pack(Path rules, Path packed, boolean anew) throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        names(rules).lines().forEach(name -> files.put(name, text(rules.resolve(name))));
        if (!anew && Files.exists(packed) && digestOf(packed).equals(RuleBookLoader.digest(files))) {
            return;
        }
        Files.deleteIfExists(packed);
        try {
            Files.write(packed, RuleBookLoader.pack(files).bytes());
        } catch (UnusableInput unsound) {
            // Nothing is packed; the program reads the files themselves and says what is wrong in them.
        }
    }

    private static String digestOf(Path packed) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(packed))) {
            return Packed.read(in).digest();
        }
    }

    /** True when anything had to be compiled. */
    private static boolean compile(Path rules, Path classes) throws IOException, NoSuchAlgorithmException {
        Map<String, String> sources = new TreeMap<>();
        try (Stream<Path> files = Files.walk(rules)) {
            files.filter(f -> f.toString().endsWith(".drl")).forEach(f -> sources.put(rules.relativize(f).toString().replace('\\', '/'), text(f)));
        }
        Path stamp = classes.resolveSibling("rules.stamp");
        String now = stamp(sources, classes);
        if (Files.exists(stamp) && Files.readString(stamp).equals(now) && Files.exists(classes.resolve(INDEX))) {
            Files.writeString(classes.resolve(FILES), names(rules));
            return false;
        }
        Map<String, byte[]> compiled = compile(sources);
        compiled.put(FILES, names(rules).getBytes(StandardCharsets.UTF_8));
        for (Map.Entry<String, byte[]> file : compiled.entrySet()) {
            Path target = classes.resolve(file.getKey());
            Files.createDirectories(target.getParent());
            Files.write(target, file.getValue());
        }
        Files.writeString(stamp, now);
        return true;
    }

    /** What the compiled rules rest on: every rule file, and the classes that rules speak of. */
    private static String stamp(Map<String, String> sources, Path classes) throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        for (Map.Entry<String, String> file : sources.entrySet()) {
            digest.update((file.getKey() + '\n' + file.getValue()).getBytes(StandardCharsets.UTF_8));
        }
        for (String room : List.of("quantity", "figure", "record", "rulebook", "assess")) {
            try (Stream<Path> files = Files.walk(classes.resolve("chock").resolve(room))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    digest.update(Files.readAllBytes(file));
                }
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    // A jar cannot list its own folders, so the build writes down which files make up the rule book.
    private static String names(Path rules) throws IOException {
        try (Stream<Path> files = Files.walk(rules)) {
            return files.filter(Files::isRegularFile).map(f -> rules.relativize(f).toString().replace('\\', '/')).sorted()
                    .collect(java.util.stream.Collectors.joining("\n", "", "\n"));
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    // Some is found only in the Java a rule was turned into, which nobody wrote: then the rule that has the word is named.
    private static Wrong wrong(Message message, Map<String, String> sources) {
        String path = message.getPath() == null ? "" : message.getPath();
        String word = message.getText().split("\\s")[0];
        if (path.endsWith(".java")) {
            for (Map.Entry<String, String> source : sources.entrySet()) {
                List<String> lines = source.getValue().lines().toList();
                for (int i = 0; i < lines.size(); i++) {
                    if (lines.get(i).contains(word)) {
                        return new Wrong(last(source.getKey()), i + 1, message.getText());
                    }
                }
            }
        }
        return new Wrong(last(path), message.getLine(), message.getText());
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /**
     * @param sources DRL by name, such as {@code brakes/brakes.drl}
     * @return class files by name, under {@link #INDEX} the names of the model classes, and what each rule is for
     * @throws IllegalArgumentException when a rule does not compile, or there is none
     */
    static Map<String, byte[]> compile(Map<String, String> sources) {
        if (sources.isEmpty()) {
            throw new IllegalArgumentException("no rule files were found");
        }
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        // The compiler looks for its own services with the class loader of the thread. In a process that loads the program with a
        // class loader of its own, as Apache Spark does, a thread of the common pool has another and finds none.
        thread.setContextClassLoader(RuleCompiler.class.getClassLoader());
        try {
            return compiled(sources);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    private static Map<String, byte[]> compiled(Map<String, String> sources) {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        sources.forEach((name, text) -> files.write("src/main/resources/rules/" + name, text));
        files.generateAndWritePomXML(services.newReleaseId("chock", "rules", "1"));
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> wrong = builder.getResults().getMessages(Message.Level.ERROR);
        if (!wrong.isEmpty()) {
            List<Message> ofTheRules = wrong.stream().filter(m -> !m.getText().startsWith("Java source of ")).toList();
            throw new NotCompiled((ofTheRules.isEmpty() ? wrong : ofTheRules).stream().map(m -> wrong(m, sources)).distinct().toList());
        }
        InternalKieModule module = (InternalKieModule) ((InternalKieBuilder) builder).getKieModuleIgnoringErrors();
        Map<String, byte[]> out = new LinkedHashMap<>();
        StringBuilder models = new StringBuilder();
        module.getFileNames().stream().sorted().forEach(name -> {
            if (name.endsWith(".class") && !name.startsWith("org/")) {
                out.put(name, module.getBytes(name));
            } else if (name.endsWith("/drools-model")) {
                new String(module.getBytes(name), StandardCharsets.UTF_8).lines().map(String::strip)
                        .filter(line -> line.startsWith("rules.")).forEach(line -> models.append(line).append('\n'));
            }
        });
        if (models.isEmpty()) {
            throw new IllegalArgumentException("the rule files hold no rules");
        }
        out.put(INDEX, models.toString().getBytes(StandardCharsets.UTF_8));
        out.put(RuleKinds.FILE, RuleReading.of(sources).text().getBytes(StandardCharsets.UTF_8));
        return out;
    }
}
