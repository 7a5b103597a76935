package chock.assess;

import chock.rulebook.RuleBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.runtime.KieSession;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** Until the first session stands, in a fresh process each time: as the program does it, and with the rules compiled at the start. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(5)
public class StartBench {
    @Benchmark
    public Object packedAndCompiledByTheBuild() {
        KieSession session = RuleBook.shipped().rules().proving().newKieSession();
        session.dispose();
        return session;
    }

    @Benchmark
    public Object compiledAtTheStart() throws IOException {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        try (Stream<Path> all = Files.walk(Path.of("rules"))) {
            all.filter(f -> f.toString().endsWith(".drl")).forEach(f -> files.write("src/main/resources/" + f, text(f)));
        }
        services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        KieSession session = services.newKieContainer(services.getRepository().getDefaultReleaseId()).newKieSession();
        session.dispose();
        return session;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
