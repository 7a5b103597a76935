package chock.cli;

import chock.record.UnusableInput;
import chock.report.Page;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a command works with: where it reads and prints, and the time of day. Results go to {@code out}, messages to
 * {@code err}.
 *
 * @param in standard input
 * @param out takes the result and nothing else
 * @param err takes messages
 * @param clock the only clock of the program
 * @param bold whether headings may be bold
 * @param trace file that takes the details when the program itself fails, or null
 * @param env the variables of the environment
 * @param prompt asks for a passphrase at the terminal; null where there is none
 */
record Bench(InputStream in, PrintStream out, PrintStream err, Clock clock, boolean bold, String trace, Map<String, String> env, Function<String, char[]> prompt) {
    static final int RELEASED = 0;
    static final int BLOCKED = 1;
    static final int UNUSABLE = 2;
    static final int FAILED = 3;

    /** A record is some hundred lines; anything much larger is another file, or one that never ends. */
    private static final int LARGEST = 5_000_000;

    /** A bench without variables and without a terminal. */
    Bench(InputStream in, PrintStream out, PrintStream err, Clock clock, boolean bold, String trace) {
        this(in, out, err, clock, bold, trace, Map.of(), null);
    }

    /**
     * The bytes of a file, or of standard input for {@code -}.
     *
     * @throws UnusableInput when it cannot be read, or is larger than 5 MB
     */
    byte[] read(String file) {
        try (InputStream source = open(file)) {
            byte[] bytes = source.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw UnusableInput.of(name(file), "it is larger than 5 MB", "Name a job record");
            }
            return bytes;
        } catch (IOException e) {
            throw UnusableInput.of(name(file), "it cannot be read", "");
        }
    }

    /**
     * The stream of a file, or of standard input for {@code -}.
     *
     * @throws UnusableInput when it cannot be opened
     */
    InputStream open(String file) {
        try {
            return file.equals("-") ? in : Files.newInputStream(path(file));
        } catch (NoSuchFileException e) {
            throw UnusableInput.of(file, "there is no such file", "");
        } catch (AccessDeniedException e) {
            throw UnusableInput.of(file, "it may not be read by this user", "");
        } catch (IOException e) {
            throw UnusableInput.of(name(file), "it cannot be read", "");
        }
    }

    /**
     * All bytes of a file of many records.
     *
     * @throws UnusableInput when it cannot be read
     */
    byte[] readAll(String file) {
        try {
            return Files.readAllBytes(path(file));
        } catch (IOException e) {
            throw UnusableInput.of(file, "it cannot be read", "");
        }
    }

    /**
     * A file the user named.
     *
     * @throws UnusableInput when it is a folder
     */
    static Path path(String file) {
        Path path;
        try {
            path = Path.of(file);
        } catch (InvalidPathException e) {
            throw UnusableInput.of(file, "this is not the name of a file", "");
        }
        if (Files.isDirectory(path)) {
            throw UnusableInput.of(file, "it is a folder", "Name the record file inside it");
        }
        return path;
    }

    /**
     * Writes a file the user named.
     *
     * @throws UnusableInput when it cannot be written
     */
    void write(String file, String text, boolean over) {
        write(file, text.getBytes(StandardCharsets.UTF_8), over);
    }

    /**
     * Writes a file the user named: whole, or not at all. What is there already is written over only when the user says so, and a
     * record, a key, a sign-off, a ledger or whatever else Chock reads is never written over.
     *
     * @param over whether another file may be written over
     * @throws UnusableInput when it cannot be written, or must not be
     */
    void write(String file, byte[] bytes, boolean over) {
        Path to = path(file);
        if (Files.exists(to) && !Files.isRegularFile(to) && !Files.isDirectory(to)) {
            toDevice(file, to, bytes);
            return;
        }
        Optional<String> kept = Files.isRegularFile(to) ? NeverOverwritten.of(to) : Optional.empty();
        if (kept.isPresent()) {
            throw UnusableInput.of(file, "this is " + kept.get() + ", and nothing is written over it", "Name another file");
        }
        if (Files.exists(to) && !over) {
            throw UnusableInput.of(file, "there is such a file already", "Name another file, or add --force to write over it");
        }
        if (to.toAbsolutePath().getParent() == null || !Files.isDirectory(to.toAbsolutePath().getParent())) {
            throw UnusableInput.of(file, "it cannot be written", "Name a file in a folder that is there");
        }
        replace(file, bytes);
    }

    private static void toDevice(String file, Path to, byte[] bytes) {
        try {
            Files.write(to, bytes);
        } catch (IOException e) {
            throw UnusableInput.of(file, "it cannot be written: " + e.getMessage(), "Name a file in a folder that is there");
        }
    }

    /**
     * Writes a file that is there already anew: afterwards it holds the old bytes or the new ones, never half of them.
     *
     * @throws UnusableInput when it cannot be written; then it is as it was
     */
    void replace(String file, byte[] bytes) {
        Path named = path(file);
        Path part = named.resolveSibling("." + named.getFileName() + ".part");
        try {
            Path to = Files.isSymbolicLink(named) ? named.toRealPath() : named;
            part = to.resolveSibling("." + to.getFileName() + ".part");
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            Files.move(part, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            discard(part);
            throw UnusableInput.of(file, "it cannot be written", "Nothing was changed; make room or name another place, and do it again");
        }
    }

    private static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // Hidden, and written over the next time.
        }
    }

    /** The name of a source in messages. */
    static String name(String file) {
        return file.equals("-") ? "standard input" : file;
    }

    /** The rule book inside the program. When it is not sound, that is the program's fault and not the user's. */
    RuleBook ruleBook() {
        try {
            return RuleBook.shipped();
        } catch (UnusableInput e) {
            throw new IllegalStateException("its rule book is not sound", e);
        }
    }

    /**
     * A rule book with the rules of a house in force.
     *
     * @param house the folder of the house, or null for none
     * @throws UnusableInput when the house is not sound; then none of it is in force
     */
    static RuleBook with(RuleBook book, String house) {
        if (house == null) {
            return book;
        }
        return book.with(HouseBook.read(folder(house)));
    }

    /** A folder the user named; whether it is there is seen by whoever reads it. */
    static Path folder(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw UnusableInput.of(name, "this is not the name of a folder", "");
        }
    }

    void print(String result) {
        out.print(result);
    }

    /** Prints a message, each of its lines cleaned of anything that could steer a terminal. */
    void say(String message) {
        message.lines().forEach(line -> err.print(Page.clean(line) + "\n"));
    }

    int refuse(UnusableInput input) {
        say(input.getMessage());
        return UNUSABLE;
    }

    /** Says why nothing was signed or changed. */
    int notSigned(String why) {
        say("Refused: " + why.replaceFirst("([^.])$", "$1."));
        return BLOCKED;
    }

    /** Says in one sentence that the program failed, and keeps the details only where the user asked for them. */
    int failed(Throwable cause) {
        String what = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        say("chock itself failed: " + what.strip().replaceAll("\\s+", " ") + (cause.getCause() instanceof UnusableInput unsound ? ":\n" + unsound.getMessage() : ""));
        if (trace != null) {
            try (PrintWriter details = new PrintWriter(trace, StandardCharsets.UTF_8)) {
                cause.printStackTrace(details);
            } catch (IOException e) {
                say("The details could not be written to " + trace + ".");
            }
        }
        return FAILED;
    }
}
