package chock.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

/** A class that was made plain does what it did. */
class PlainClassesTest {
    private static final Path TESTS = Path.of("target/test-classes");

    private static Map<String, byte[]> sample() throws IOException {
        Map<String, byte[]> classes = new TreeMap<>();
        try (Stream<Path> files = Files.list(TESTS.resolve("chock/build"))) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("PlainSample")).toList()) {
                String name = TESTS.relativize(file).toString().replace('\\', '/').replaceFirst("\\.class$", "");
                classes.put(name, Files.readAllBytes(file));
            }
        }
        return classes;
    }

    @Test
    @SuppressWarnings("unchecked")
    void it_comes_to_the_same() throws IOException, ReflectiveOperationException {
        Map<String, byte[]> classes = sample();
        Map<String, byte[]> plain = PlainClasses.of(classes);
        assertThat(plain.keySet()).contains("chock/build/PlainSample$$P0", "chock/build/PlainSample$Every");
        plain.forEach((name, bytes) -> assertThat(leftOpen(bytes)).as(name).isZero());
        classes.putAll(plain);
        ClassLoader loader = new ClassLoader(getClass().getClassLoader()) {
            @Override
            protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
                byte[] bytes = classes.get(name.replace('.', '/'));
                if (bytes == null) {
                    return super.loadClass(name, resolve);
                }
                Class<?> known = findLoadedClass(name);
                return known != null ? known : defineClass(name, bytes, 0, bytes.length);
            }
        };
        Class<?> changed = loader.loadClass("chock.build.PlainSample");
        assertThat(changed).isNotSameAs(PlainSample.class);
        List<String> told = ((Supplier<List<String>>) changed.getDeclaredConstructor().newInstance()).get();
        assertThat(told).hasSizeGreaterThan(25).isEqualTo(new PlainSample().get());
    }

    @Test
    void it_is_made_plain_once() throws IOException {
        Map<String, byte[]> classes = sample();
        classes.putAll(PlainClasses.of(classes));
        assertThat(PlainClasses.of(classes)).isEmpty();
    }

    /** Where judging passes through, the build left nothing to put together at the start. */
    @ParameterizedTest
    @ValueSource(strings = {"quantity", "figure", "record", "rulebook", "assess", "report", "cli"})
    void the_build_has_done_it(String room) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("target/classes/chock").resolve(room))) {
            List<Path> classes = files.filter(file -> file.toString().endsWith(".class")).toList();
            assertThat(classes).isNotEmpty();
            for (Path file : classes) {
                try (InputStream in = Files.newInputStream(file)) {
                    assertThat(leftOpen(in.readAllBytes())).as(file.toString()).isZero();
                }
            }
        }
    }

    private static long leftOpen(byte[] bytes) {
        ClassNode node = new ClassNode();
        new ClassReader(bytes).accept(node, 0);
        return node.methods.stream().flatMap(method -> Stream.of(method.instructions.toArray()))
                .filter(step -> step instanceof InvokeDynamicInsnNode open && !open.bsm.getName().equals("altMetafactory")).count();
    }
}
