package chock.board;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.board.store.Kept;
import chock.board.store.Summary;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.ReadAs;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import chock.signoff.Canonical;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Holds what is kept against the rule book. */
public final class Judging {
    private static final String PROGRAM = program();

    private final RuleBook book;
    private final String settings;

    public Judging(RuleBook book) {
        this(book, null);
    }

    /** @param workshop whose settings bear on verdicts too, or null */
    public Judging(RuleBook book, chock.signoff.Shop workshop) {
        this.book = book;
        this.settings = workshop == null ? "no workshop" : digest(workshop.file());
    }

    public RuleBook book() {
        return book;
    }

    /**
     * Reads what is kept as any record is read.
     *
     * @throws chock.record.UnusableInput with everything that is wrong with it
     */
    JobRecord read(Kept kept, Instant asOf) {
        return read(kept, asOf, ReadAs.STORED);
    }

    /**
     * The same before it is kept.
     *
     * @param as what of it is being written, and refused where it cannot be true
     */
    JobRecord read(Kept kept, Instant asOf, ReadAs as) {
        return book.heldAgainstRegister(RecordReader.read(kept.id(), kept.record().toString().getBytes(StandardCharsets.UTF_8), book.vocabulary(), asOf, as), asOf);
    }

    Assessment assess(JobRecord record, List<Gate> gates, Instant asOf) {
        return Assessor.assess(record, book, gates, asOf);
    }

    /** What the list shows of this record: the gates it seeks. It is kept, so it says when it has to be judged again. */
    Summary summary(JobRecord record, Instant asOf) {
        Assessor.Judged judged = Assessor.judge(record, book, record.seeks(), asOf);
        List<GateVerdict> gates = judged.assessment().gates();
        Instant again = Stream.concat(Stream.ofNullable(judged.mayChange()), gates.stream().map(GateVerdict::holdsUntil).filter(Objects::nonNull).map(until -> until.plusSeconds(1)))
                .min(Instant::compareTo).orElse(null);
        return new Summary(key(), gates.stream().map(Judging::ofGate).toList(), again);
    }

    /**
     * What judges here: the rule book with its house, the workshop's settings and register, and the program, whose code reasons too. What
     * was judged under another key is judged again.
     */
    public String key() {
        return book.digest() + " " + settings + " " + book.registerDigest() + " " + PROGRAM;
    }

    /** {@code sha256:} over the program file; of classes in a folder, as in tests, nothing is known. */
    private static String program() {
        try {
            Path file = Path.of(Judging.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            return Files.isRegularFile(file) ? digest(file) : "unpacked";
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program file has no path", e);
        }
    }

    private static String digest(Path file) {
        try {
            return Canonical.digest(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }

    static Summary.OfGate ofGate(GateVerdict gate) {
        List<Summary.Held> held = gate.open().stream()
                .map(f -> new Summary.Held(f.check(), f.state().id(), f.critical(), f.says())).toList();
        return new Summary.OfGate(gate.gate().id(), gate.released(), gate.holdsUntil(), count(gate, State.FAULT), count(gate, State.DOUBT),
                count(gate, State.STALE), count(gate, State.MISSING), count(gate, State.MET), gate.ruleBookFaults().size(), held);
    }

    private static int count(GateVerdict gate, State state) {
        return (int) (state == State.MET ? gate.findings() : gate.open()).stream().filter(f -> f.state() == state).count();
    }
}
