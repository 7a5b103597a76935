package chock.rehearse;

import chock.record.UnusableInput;
import io.cucumber.core.resource.Resource;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One file of scenarios.
 *
 * @param name as the user named it
 * @param text what stands in it
 */
record FeatureFile(String name, String text) implements Resource {
    private static final String ENDING = ".feature";
    private static final String SHIPPED = "features";

    /** The features inside the program. */
    static List<FeatureFile> shipped() {
        URL folder = FeatureFile.class.getResource("/" + SHIPPED);
        if (folder == null) {
            throw new IllegalStateException("the program was built without its features");
        }
        try {
            if (!folder.getProtocol().equals("jar")) {
                return below(Path.of(folder.toURI()), SHIPPED);
            }
            try (FileSystem jar = FileSystems.newFileSystem(folder.toURI(), Map.of())) {
                return below(jar.getPath("/" + SHIPPED), SHIPPED);
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("its features cannot be read", e);
        }
    }

    /**
     * The feature files named, and all below the folders named; each once.
     *
     * @throws UnusableInput when one is not there or cannot be read, is no feature file, or a folder has none
     */
    static List<FeatureFile> named(List<String> names) {
        List<FeatureFile> all = new ArrayList<>();
        for (String name : names) {
            Path path = path(name);
            if (!Files.exists(path)) {
                throw UnusableInput.of(name, "there is no such file or folder", "");
            }
            if (!Files.isDirectory(path) && !name.endsWith(ENDING)) {
                throw UnusableInput.of(name, "this is no feature file", "Scenarios stand in a file whose name ends in " + ENDING);
            }
            try {
                List<FeatureFile> found = Files.isDirectory(path) ? below(path, name.replaceFirst("/+$", "")) : List.of(new FeatureFile(name, text(path)));
                if (found.isEmpty()) {
                    throw UnusableInput.of(name, "there is no feature file in this folder", "Scenarios stand in files whose names end in " + ENDING);
                }
                all.addAll(found);
            } catch (IOException e) {
                throw UnusableInput.of(name, "it cannot be read as text", "Save it as UTF-8");
            }
        }
        return all.stream().distinct().toList();
    }

    /** Those in the folder of a house; none when it has no such folder. */
    static List<FeatureFile> ofHouse(Path folder) {
        try {
            return Files.isDirectory(folder) ? below(folder, folder.toString()) : List.of();
        } catch (IOException e) {
            throw UnusableInput.of(folder.toString(), "it cannot be read as text", "Save every file in it as UTF-8");
        }
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw UnusableInput.of(name, "this is not the name of a file", "");
        }
    }

    private static List<FeatureFile> below(Path folder, String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            List<FeatureFile> found = new ArrayList<>();
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING) && Files.isRegularFile(f)).sorted().toList()) {
                found.add(new FeatureFile(name + "/" + folder.relativize(file).toString().replace('\\', '/'), text(file)));
            }
            return found;
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Override
    public URI getUri() {
        try {
            return new URI("file", name, null);
        } catch (URISyntaxException e) {
            throw UnusableInput.of(name, "this is not the name of a file", "");
        }
    }

    @Override
    public InputStream getInputStream() {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
