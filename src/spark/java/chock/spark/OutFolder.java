package chock.spark;

import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;

/**
 * The folder an archive is judged into. {@code archive.json} says by what it is judged, {@code slices} which files were planned
 * together and which of those are done, {@code rows} what came of them. A slice is done when {@code slices/N.done.json} is there,
 * which is written last; rows of any other slice are written over.
 */
final class OutFolder implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final String name;
    private final Path root;
    private final FileSystem files;
    private boolean held;

    OutFolder(String name, Configuration conf) {
        try {
            this.name = name;
            this.root = new Path(name);
            this.files = root.getFileSystem(conf);
        } catch (IOException | IllegalArgumentException e) {
            throw UnusableInput.of(name, "it cannot be reached: " + e.getMessage(), "Name a folder after --out");
        }
    }

    /**
     * Makes the folder, or goes on in one that was begun under the same terms.
     *
     * @param terms what decides what comes of a record: of two runs into one folder it has to be the same
     * @throws UnusableInput when another run is using it, it is of other terms, or it is no such folder
     */
    void open(JsonNode terms) {
        try {
            Path about = new Path(root, "archive.json");
            if (!files.exists(about)) {
                if (files.exists(root) && files.listStatus(root).length > 0) {
                    throw UnusableInput.of(name, "it is there already, and no archive was judged into it", "Name a new folder");
                }
                files.mkdirs(root);
                hold();
                write(about, terms.toPrettyString() + "\n");
                return;
            }
            hold();
            JsonNode before = read(about);
            TreeSet<String> keys = new TreeSet<>();
            terms.fieldNames().forEachRemaining(keys::add);
            before.fieldNames().forEachRemaining(keys::add);
            for (String key : keys) {
                if (!terms.path(key).equals(before.path(key))) {
                    throw UnusableInput.of(name, "it was begun with " + key + " " + said(before.path(key)) + ", and this run has " + said(terms.path(key)),
                            "Rows of both in one folder could not be told apart: name a new folder, or go on as it was begun");
                }
            }
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private static String said(JsonNode value) {
        return value.isMissingNode() ? "none" : value.toString();
    }

    /** Two runs at once would write over each other's slices. */
    private void hold() throws IOException {
        Path running = new Path(root, "running.json");
        String host = InetAddress.getLocalHost().getHostName();
        String own = JSON.createObjectNode().put("host", host).put("process", ProcessHandle.current().pid()).toPrettyString() + "\n";
        try (OutputStream out = files.create(running, false)) {
            out.write(own.getBytes(StandardCharsets.UTF_8));
        } catch (FileAlreadyExistsException e) {
            JsonNode other = read(running);
            boolean ended = other.path("host").asText().equals(host) && ProcessHandle.of(other.path("process").asLong()).filter(ProcessHandle::isAlive).isEmpty();
            if (!ended) {
                throw UnusableInput.of(name, "process " + other.path("process") + " on " + other.path("host").asText() + " is judging into it",
                        "Wait for it; when it has ended without a word, delete " + running + " and begin again");
            }
            try (OutputStream out = files.create(running, true)) {
                out.write(own.getBytes(StandardCharsets.UTF_8));
            }
        }
        held = true;
    }

    private UnusableInput unwritable(IOException e) {
        return UnusableInput.of(name, "it cannot be read and written: " + e.getMessage(), "Name a folder that the driver and every executor can write to");
    }

    /** Every slice that was planned, in order. */
    List<Slice> planned() {
        List<Slice> slices = new ArrayList<>();
        try {
            Path folder = new Path(root, "slices");
            if (files.exists(folder)) {
                for (FileStatus file : files.listStatus(folder)) {
                    if (file.getPath().getName().matches("\\d+\\.json")) {
                        slices.add(Slice.read(read(file.getPath())));
                    }
                }
            }
        } catch (IOException e) {
            throw unwritable(e);
        }
        slices.sort((a, b) -> Integer.compare(a.number(), b.number()));
        return slices;
    }

    void plan(Slice slice) {
        put("slices/" + slice.name() + ".json", slice.json());
    }

    /** What was counted in a slice; empty when it is not done. */
    Optional<JsonNode> done(Slice slice) {
        try {
            Path done = new Path(root, "slices/" + slice.name() + ".done.json");
            return files.exists(done) ? Optional.of(read(done)) : Optional.empty();
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    void done(Slice slice, JsonNode counted) {
        put("slices/" + slice.name() + ".done.json", counted + "\n");
    }

    /** Where the rows of a slice go. */
    String rows(Slice slice) {
        return new Path(root, "rows/slice=" + slice.name()).toString();
    }

    String at(String path) {
        return new Path(root, path).toString();
    }

    /** Writes a file as a whole: a reader finds the old one or the new one. */
    void put(String path, String text) {
        try {
            write(new Path(root, path), text);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private void write(Path file, String text) throws IOException {
        Path part = new Path(file.getParent(), "." + file.getName() + ".part");
        try (OutputStream out = files.create(part, true)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        if (files.exists(file)) {
            files.delete(file, false);
        }
        if (!files.rename(part, file)) {
            throw new IOException(file + " could not be put in place");
        }
    }

    private JsonNode read(Path file) throws IOException {
        try (InputStream in = files.open(file)) {
            return JSON.readTree(in);
        }
    }

    @Override
    public void close() {
        if (held) {
            try {
                files.delete(new Path(root, "running.json"), false);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
