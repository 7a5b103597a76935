package chock.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.tree.ClassNode;

/**
 * A step of the build: lambdas, and what the compiler leaves open in records, become plain classes and plain code. The
 * JVM would put both together when they are first used, every time the program starts: a tenth of a millisecond for each
 * of some eight hundred lambdas, more than a millisecond for each kind of record that is compared. Plain classes lie
 * ready in the archive.
 */
public final class PlainClasses {
    /** What stands in the name of a class that was made here, between the class it is for and a number. */
    static final String MADE = "$$P";

    private final Map<String, ClassNode> read = new TreeMap<>();
    private final Map<String, ClassNode> changed = new TreeMap<>();

    private PlainClasses() { }

    /**
     * Rewrites the classes in some rooms of the program where they lie.
     *
     * @param args the folder of class files, and behind it the rooms below it, such as {@code chock/assess}
     */
    public static void main(String[] args) throws IOException {
        Path classes = Path.of(args[0]);
        for (String room : List.of(args).subList(1, args.length)) {
            inFolder(classes, classes.resolve(room));
        }
    }

    private static void inFolder(Path classes, Path room) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(room)) {
            files = all.filter(file -> file.toString().endsWith(".class")).sorted().toList();
        }
        Map<String, byte[]> bytes = new TreeMap<>();
        for (Path file : files) {
            if (!file.toString().contains(MADE)) {
                bytes.put(nameOf(classes, file), Files.readAllBytes(file));
            }
        }
        Map<String, byte[]> plain = of(bytes);
        for (Path file : files) {
            String name = nameOf(classes, file);
            int made = name.indexOf(MADE);
            // What was made for a class that is no longer there, or was just compiled anew.
            if (made > 0 && (!bytes.containsKey(name.substring(0, made)) || plain.containsKey(name.substring(0, made)))) {
                Files.delete(file);
            }
        }
        for (Map.Entry<String, byte[]> one : plain.entrySet()) {
            Files.write(classes.resolve(one.getKey() + ".class"), one.getValue());
        }
    }

    private static String nameOf(Path classes, Path file) {
        String name = classes.relativize(file).toString().replace('\\', '/');
        return name.substring(0, name.length() - ".class".length());
    }

    /**
     * @param classes class files by name, with slashes
     * @return those that are other now, and those that were made
     */
    static Map<String, byte[]> of(Map<String, byte[]> classes) {
        PlainClasses plain = new PlainClasses();
        classes.forEach((name, bytes) -> {
            ClassNode node = new ClassNode();
            new ClassReader(bytes).accept(node, 0);
            plain.read.put(name, node);
        });
        List.copyOf(plain.read.values()).forEach(plain::rewrite);
        Map<String, byte[]> written = new TreeMap<>();
        plain.changed.forEach((name, node) -> {
            ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
            node.accept(writer);
            written.put(name, writer.toByteArray());
        });
        return written;
    }

    private void rewrite(ClassNode node) {
        boolean records = PlainRecord.rewrite(node);
        List<ClassNode> lambdas = PlainLambda.rewrite(node);
        if (records || !lambdas.isEmpty()) {
            changed.put(node.name, node);
        }
        if (!lambdas.isEmpty()) {
            // What is private in the class is open to those it shares a nest with.
            ClassNode host = node.nestHostClass == null ? node : read.get(node.nestHostClass);
            host.nestMembers = host.nestMembers == null ? new ArrayList<>() : host.nestMembers;
            for (ClassNode lambda : lambdas) {
                lambda.nestHostClass = host.name;
                host.nestMembers.add(lambda.name);
                changed.put(lambda.name, lambda);
            }
            changed.put(host.name, host);
        }
    }
}
