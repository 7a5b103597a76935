package chock.board;

import chock.board.store.Accounts.Account;
import chock.board.store.Kept;
import chock.board.store.Replies.Reply;
import chock.board.store.Signings;
import chock.board.store.Store;
import chock.board.store.Summary;
import chock.record.JobRecord;
import chock.record.ReadAs;
import chock.record.RecordForm;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.signoff.RecordVersion;
import chock.signoff.SignOff;
import chock.signoff.Verifier;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.function.Function;

/**
 * The shop's machines: taking records in, adding entries, giving records out. Everything written is first read and judged
 * as any record file is; what would be refused there is refused here.
 */
public final class Shop {
    private static final int LONGEST_ENTRY = 4000;
    private static final int LONGEST_REASON = 200;
    private static final int RUN_ATTEMPTS = 3;
    /** An entry dated further back than this says why it is written only now. */
    private static final Duration WRITTEN_LATE = Duration.ofHours(2);
    /** Why an entry is written late; it goes into the journal and not into the record. */
    static final String LATE = "late";
    static final String DATED_BACK = "entry dated back";

    private final Store store;
    private final Judging judging;
    private final Clock clock;
    private final Runnable undone;

    public Shop(Store store, Judging judging, Clock clock) {
        this(store, judging, clock, () -> { });
    }

    /** @param undone run after a write that voided a sign-off */
    Shop(Store store, Judging judging, Clock clock, Runnable undone) {
        this.store = store;
        this.judging = judging;
        this.clock = clock;
        this.undone = undone;
    }

    /** Somebody else wrote to the machine since it was looked at. */
    public static final class WrittenSince extends RuntimeException {
        private static final long serialVersionUID = 1L;

        WrittenSince(String id) {
            super("Somebody else has written to " + id + " since you looked at it. Look at it again, then write.");
        }
    }

    /** There is a machine of this id already. */
    public static final class Taken extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Taken(String id) {
            super("There is a record " + id + " already. Give this one a number of its own, or add entries to the other.");
        }
    }

    /** The record belongs to a person of another name under this id. */
    public static final class OtherPerson extends RuntimeException {
        private static final long serialVersionUID = 1L;

        OtherPerson(String record, String id, String theirs, String yours) {
            super("In " + record + " the id " + id + " stands for " + theirs + ", not for " + yours + ". Ask the lead for an account with another id.");
        }
    }

    /**
     * What a write did.
     *
     * @param event id of the line in the shop's journal
     */
    public record Done(String machine, long version, List<String> entries, Summary before, Summary after, String event) { }

    /** A key under which the same write is done only once, and the digest of what was asked. */
    public record Once(String account, String key, String digest, Function<Done, String> body) { }

    public Optional<Kept> find(String id) {
        return store.read(lines -> lines.records().find(id));
    }

    /**
     * Takes a record file in.
     *
     * @throws UnusableInput when the file would be refused anywhere
     * @throws Taken when there is one of this id
     */
    public Done take(String fileName, byte[] bytes, String by, Once once) {
        Instant now = clock.instant();
        ObjectNode written = RecordReader.written(fileName, bytes);
        JobRecord record = RecordReader.read(fileName, bytes, judging.book().vocabulary(), now, ReadAs.WRITTEN);
        if (record.id().matches("\\.{1,2}")) {
            // No address leads there: browsers take it for a way up.
            throw UnusableInput.of(fileName, "'" + record.id() + "' is no number to call a machine by", "Give the record a number of its own, such as HV-0142");
        }
        Kept kept = kept(record.id(), written);
        Summary summary = judging.summary(judging.book().heldAgainstRegister(record, now), now);
        return store.write(lines -> {
            if (!lines.records().add(kept, summary, by, now)) {
                throw new Taken(record.id());
            }
            String event = lines.events().add(now, by, "record taken in", record.id(), kept.entries().size() + " entries");
            return keep(lines, once, 201, new Done(record.id(), 1, record.entries().stream().map(e -> e.id()).toList(), null, summary, event), now);
        });
    }

    private static Kept kept(String id, ObjectNode written) {
        ObjectNode sheet = written.deepCopy();
        List<ObjectNode> entries = new ArrayList<>();
        for (JsonNode entry : (ArrayNode) sheet.remove("entries")) {
            entries.add((ObjectNode) entry);
        }
        return new Kept(id, 1, sheet, entries);
    }

    /**
     * Adds entries in somebody's own name.
     *
     * @param seen version of the record they had before them
     * @param entries without {@code id}, {@code by} and {@code seq}, which are given here; without {@code at}: now, and in the
     *     order of the list; with {@code late}, the reason, where {@code at} lies more than two hours back
     * @throws UnusableInput when an entry would be refused in a record file
     * @throws WrittenSince when somebody else wrote in between
     */
    public Done write(String id, long seen, List<ObjectNode> entries, Account by, Once once) {
        Kept kept = find(id).orElseThrow();
        if (kept.version() != seen) {
            throw new WrittenSince(id);
        }
        Instant now = clock.instant();
        JobRecord before = judging.read(kept, now);
        ObjectNode sheet = withPerson(kept, before, by);
        List<ObjectNode> further = named(kept, entries, by, now.atZone(before.zone()).toLocalDateTime().toString().substring(0, 16).replace('T', ' '));
        List<Noted> late = late(id, further, before.zone(), now);
        Kept next = kept.with(sheet == null ? kept.sheet() : sheet, further);
        ReadAs as = ReadAs.withEntriesFrom(kept.entries().size());
        if (!RunBeside.isRun(further)) {
            return commit(kept, next, as, sheet, further, "entries written", by.id(), once, now, List.of(), late);
        }
        for (int attempt = 1; ; attempt++) {
            try {
                return commit(kept, next, as, sheet, further, "entries written", by.id(), once, now, beside(id, by, now), late);
            } catch (RunBeside.WrittenMeanwhile other) {
                // Somebody wrote to a machine beside it: the exhaust is in the room all the same, so it is told to what stands there now.
                if (attempt == RUN_ATTEMPTS) {
                    throw new WrittenSince(other.machine());
                }
            }
        }
    }

    /** Takes the reasons out of entries that are dated back, and refuses those that have none. */
    private static List<Noted> late(String record, List<ObjectNode> entries, ZoneId zone, Instant now) {
        List<Noted> late = new ArrayList<>();
        for (ObjectNode entry : entries) {
            String at = entry.get("at").asText();
            String reason = entry.path(LATE).asText("").strip();
            entry.remove(LATE);
            // Who corrects an entry writes why in any case.
            String why = reason.isEmpty() && entry.has("corrects") ? entry.path("reason").asText("").strip() : reason;
            if (isLongAgo(at, zone, now)) {
                if (why.isEmpty() || why.length() > LONGEST_REASON) {
                    throw UnusableInput.of(record, "the entry of " + at + " is written more than two hours later, and does not say why", "Write the reason as late, in up to " + LONGEST_REASON + " letters; leave at out when it is of now");
                }
                late.add(new Noted(DATED_BACK, entry.get("id").asText() + " of " + at + ": " + why));
            }
        }
        return late;
    }

    /** What is no moment is left for the reader to refuse; a day without an hour may be any hour of it. */
    private static boolean isLongAgo(String at, ZoneId zone, Instant now) {
        try {
            String tidy = at.strip().replace(' ', 'T');
            Instant moment = LocalDateTime.parse(tidy.length() == 10 ? tidy + "T00:00" : tidy.substring(0, Math.min(16, tidy.length()))).atZone(zone).toInstant();
            return moment.isBefore(now.minus(WRITTEN_LATE));
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** What every other machine whose air was read in the room is told of a run there. */
    private List<RunBeside> beside(String runner, Account by, Instant now) {
        List<String> others = store.read(lines -> lines.records().readInTheRoom()).stream().filter(id -> !id.equals(runner)).toList();
        List<RunBeside> told = new ArrayList<>();
        for (String id : others) {
            Kept kept = find(id).orElseThrow();
            if (RunBeside.isToldAlready(kept)) {
                continue;
            }
            JobRecord before = judging.read(kept, now);
            Account inTheirs = RunBeside.as(by, before);
            ObjectNode sheet = withPerson(kept, before, inTheirs);
            List<ObjectNode> line = named(kept, List.of(RunBeside.line(runner)), inTheirs, now.atZone(before.zone()).toLocalDateTime().toString().substring(0, 16).replace('T', ' '));
            Kept next = kept.with(sheet == null ? kept.sheet() : sheet, line);
            JobRecord record = judging.read(next, now);
            told.add(new RunBeside(kept, next, sheet, line, record, judging.summary(record, now)));
        }
        return told;
    }

    /**
     * Changes what stands beside the entries: gates sought, instruments, maker's figures, claims, and the form of the record,
     * to the newest one only. What is new or changed of the maker's figures and of what it was built with was read by who is
     * signed in, and by nobody else yet. Dated changes of its description are added,
     * each with the field it changes. Otherwise the description, the record's number and its people's names stay: they decide
     * what earlier entries mean.
     */
    public Done changeSheet(String id, long seen, ObjectNode changes, Account by, Once once) {
        Kept kept = find(id).orElseThrow();
        if (kept.version() != seen) {
            throw new WrittenSince(id);
        }
        ObjectNode with = withPerson(kept, judging.read(kept, clock.instant()), by);
        ObjectNode sheet = with == null ? kept.sheet().deepCopy() : with;
        List<Noted> readings = new ArrayList<>();
        changes.fields().forEachRemaining(change -> {
            if (change.getKey().equals(LOCAL_LAW)) {
                throw UnusableInput.of(id, "local-law cannot be changed here: what the law of a place says is read by two people from its text", "Take the record in as a file with local-law in it, under a number of its own");
            }
            if (!CHANGEABLE.contains(change.getKey())) {
                throw UnusableInput.of(id, change.getKey() + " cannot be changed here", "Change one of " + String.join(", ", CHANGEABLE));
            }
            if (change.getKey().equals("chock") && !change.getValue().asText().equals(RecordForm.name(RecordForm.NEWEST))) {
                throw UnusableInput.of(id, "a record is moved to the newest form only", "Write " + RecordForm.name(RecordForm.NEWEST));
            }
            switch (change.getKey()) {
                case AS_BUILT -> ((ObjectNode) sheet.get("machine")).set(AS_BUILT, SecondReader.asBuilt(id, kept.sheet().at("/machine/as-built"), change.getValue(), by, readings));
                case "maker" -> sheet.set("maker", SecondReader.maker(id, kept.sheet().path("maker"), change.getValue(), by, readings));
                case CHANGES -> change.getValue().forEach(row -> changeMachine((ObjectNode) sheet.get("machine"), inTheNameOf(by, row)));
                default -> sheet.set(change.getKey(), change.getValue());
            }
        });
        Set<String> parts = names(changes).stream().map(name -> name.equals(AS_BUILT) || name.equals(CHANGES) ? "machine" : name).collect(Collectors.toSet());
        return commit(kept, kept.with(sheet, List.of()), ReadAs.withParts(parts), sheet, List.of(), "sheet changed: " + String.join(", ", names(changes)), by.id(), once, clock.instant(), List.of(), readings);
    }

    /**
     * Seconds a maker's figure, or what the machine was built with: somebody else than who read it has read the same.
     *
     * @param said what they read, with nothing left out
     */
    public Done second(String id, long seen, ObjectNode said, Account by, Once once) {
        Kept kept = find(id).orElseThrow();
        if (kept.version() != seen) {
            throw new WrittenSince(id);
        }
        ObjectNode with = withPerson(kept, judging.read(kept, clock.instant()), by);
        ObjectNode sheet = with == null ? kept.sheet().deepCopy() : with;
        Noted seconded = SecondReader.second(id, sheet, said, by,
                (account, reading) -> store.read(lines -> lines.events().has(id, account, reading.action(), reading.detail())));
        return commit(kept, kept.with(sheet, List.of()), ReadAs.STORED, sheet, List.of(), "sheet changed: seconded-by", by.id(), once, clock.instant(), List.of(), List.of(seconded));
    }

    private static final String AS_BUILT = "as-built";
    private static final String CHANGES = "changes";
    private static final String LOCAL_LAW = "local-law";
    private static final List<String> CHANGEABLE = List.of("seeks", "instruments", "maker", "claims", "chock", AS_BUILT, CHANGES);

    /** Nobody writes in another's name. What is no set of keys is left for the reader to refuse. */
    private static JsonNode inTheNameOf(Account by, JsonNode written) {
        return written instanceof ObjectNode keys ? keys.deepCopy().put("by", by.id()) : written;
    }

    /** Adds a dated change, and describes the machine as it is after it. */
    private static void changeMachine(ObjectNode machine, JsonNode change) {
        machine.withArrayProperty(CHANGES).add(change);
        String[] path = change.path("field").asText().split("\\.");
        ObjectNode part = machine;
        for (int i = 0; i < path.length - 1 && part != null; i++) {
            part = part.get(path[i]) instanceof ObjectNode below ? below : null;
        }
        // A field that is not there is refused with the change that names it.
        if (part != null && part.has(path[path.length - 1]) && change.has("to")) {
            part.set(path[path.length - 1], change.get("to"));
        }
    }

    private static List<String> names(ObjectNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private Done commit(Kept kept, Kept next, ReadAs as, ObjectNode sheet, List<ObjectNode> further, String action, String by, Once once, Instant now, List<RunBeside> besides,
            List<Noted> readings) {
        JobRecord record = judging.read(next, now, as);
        Summary after = judging.summary(record, now);
        Summary before = new Summary("", store.read(lines -> lines.floor().gates(kept.id())), null);
        List<String> ids = further.stream().map(e -> e.get("id").textValue()).toList();
        List<String> voided = new ArrayList<>();
        Done written = store.write(lines -> {
            if (!lines.records().append(kept.id(), kept.version(), sheet, further, after, by, now)) {
                throw new WrittenSince(kept.id());
            }
            further.stream().filter(e -> e.has("measured")).forEach(e -> lines.accounts().habit(by, e.get("measured").textValue(), e.get("with").textValue()));
            further.stream().filter(e -> e.has("done") && e.has("with")).forEach(e -> lines.accounts().habit(by, e.get("done").textValue(), e.get("with").textValue()));
            voided.addAll(undo(lines, next, record, now));
            for (RunBeside other : besides) {
                String id = other.kept().id();
                if (!lines.records().append(id, other.kept().version(), other.sheet(), other.line(), other.after(), by, now)) {
                    throw new RunBeside.WrittenMeanwhile(id);
                }
                voided.addAll(undo(lines, other.next(), other.record(), now));
                lines.events().add(now, by, "a run beside it", id, other.line().get(0).get("id").textValue() + " written: " + kept.id() + " was run in the room");
            }
            readings.forEach(reading -> lines.events().add(now, by, reading.action(), kept.id(), reading.detail()));
            String event = lines.events().add(now, by, action, kept.id(), Effect.words(ids, before, after) + (voided.isEmpty() ? "" : "." + String.join("", voided)));
            return keep(lines, once, 201, new Done(kept.id(), next.version(), ids, before, after, event), now);
        });
        if (!voided.isEmpty()) {
            undone.run();
        }
        return written;
    }

    /** Marks the sign-offs that a record no longer bears out as void, in the same write that made it so; says of each that it is. */
    List<String> undo(Store.Lines lines, Kept kept, JobRecord record, Instant now) {
        List<Signings.Line> standing = lines.signings().standing(kept.id());
        if (standing.isEmpty()) {
            return List.of();
        }
        RecordVersion version = RecordVersion.of(kept.id(), kept.record().toString().getBytes(StandardCharsets.UTF_8));
        List<String> says = new ArrayList<>();
        for (Signings.Line line : standing) {
            SignOff signOff = SignOff.written(lines.signings().text(line.id()).getBytes(StandardCharsets.US_ASCII)).orElseThrow();
            Verifier.undone(signOff, version, record, judging.book().vocabulary()).ifPresent(why -> {
                lines.signings().undo(line.id(), now, why);
                says.add(" The sign-off at " + line.gate() + " by " + line.signer() + " is void now: " + why + ".");
            });
        }
        return says;
    }

    /** The answer is kept in the same write as what it answers: there is never one without the other. */
    private static Done keep(Store.Lines lines, Once once, int status, Done done, Instant now) {
        if (once != null && once.key() != null && !lines.replies().keep(once.account(), once.key(),
                new Reply(once.digest(), status, once.body().apply(done), String.valueOf(done.version())), now)) {
            throw new WrittenSince(done.machine());
        }
        return done;
    }

    private static ObjectNode withPerson(Kept kept, JobRecord record, Account by) {
        var known = record.people().stream().filter(p -> p.id().equals(by.id())).findFirst();
        if (known.isPresent()) {
            if (!known.get().name().equals(by.name())) {
                throw new OtherPerson(record.id(), by.id(), known.get().name(), by.name());
            }
            return null;
        }
        ObjectNode sheet = kept.sheet().deepCopy();
        ((ArrayNode) sheet.get("people")).addObject().put("id", by.id()).put("name", by.name()).put("role", by.role());
        return sheet;
    }

    private static List<ObjectNode> named(Kept kept, List<ObjectNode> entries, Account by, String now) {
        Set<String> used = new HashSet<>();
        kept.entries().forEach(e -> used.add(e.get("id").textValue()));
        List<ObjectNode> named = new ArrayList<>();
        int next = kept.entries().size() + 1;
        boolean numbered = !kept.sheet().get("chock").textValue().equals(RecordForm.name(1));
        int seq = kept.entries().stream().mapToInt(e -> e.path("seq").asInt(0)).max().orElse(0);
        for (ObjectNode entry : entries) {
            while (used.contains("e" + next)) {
                next++;
            }
            ObjectNode one = entry.objectNode();
            one.put("id", "e" + next).put("at", now);
            // A time that somebody typed proves no order within its minute; the board's own clock does.
            if (numbered && !entry.has("at")) {
                one.put("seq", ++seq);
            }
            one.put("by", by.id());
            entry.fields().forEachRemaining(field -> {
                if (field.getKey().equals("id") || field.getKey().equals("by")) {
                    throw UnusableInput.of(kept.id(), field.getKey() + " is given by the board: entries are written in the name of who signed in", "Leave it out");
                }
                if (field.getKey().equals("seq")) {
                    throw UnusableInput.of(kept.id(), "seq is given by the board to entries that it dates itself", "Leave it out; leave at out as well when the entry is of now");
                }
                one.set(field.getKey(), field.getValue());
            });
            if (one.toString().length() > LONGEST_ENTRY) {
                throw UnusableInput.of(kept.id(), "an entry of " + one.toString().length() + " letters", "Write one thing in one entry, with up to " + LONGEST_ENTRY + " letters in all");
            }
            used.add("e" + next);
            named.add(one);
        }
        return named;
    }

    /**
     * Judges again what was judged under another key, or what may have run out by itself.
     *
     * @param unjudged by id, why a record could not be judged; these are passed over, so that one of them never keeps the others
     *        waiting, and further ones are added. They count as held until they can be judged.
     * @return how many were looked at; 0 when nothing is left
     */
    public int judgeAgain(int most, Map<String, RuntimeException> unjudged) {
        Instant now = clock.instant();
        List<String> due = new ArrayList<>(store.read(lines -> lines.records().toJudgeAgain(judging.key(), now, most + unjudged.size())));
        due.removeAll(unjudged.keySet());
        for (String id : due) {
            Optional<Kept> found = find(id);
            if (found.isEmpty()) {
                continue;
            }
            Kept kept = found.get();
            JobRecord record;
            Summary summary;
            try {
                record = judging.read(kept, now);
                summary = judging.summary(record, now);
            } catch (RuntimeException e) {
                unjudged.put(id, e);
                continue;
            }
            keepSummary(kept, record, summary, now);
        }
        return due.size();
    }

    /** What was found out about an instrument reaches a signed record though nobody writes to it. */
    private void keepSummary(Kept kept, JobRecord record, Summary summary, Instant now) {
        List<String> voided = new ArrayList<>();
        store.write(lines -> {
            boolean newest = lines.records().summarise(kept.id(), kept.version(), summary);
            if (newest) {
                voided.addAll(undo(lines, kept, record, now));
            }
            return newest;
        });
        if (!voided.isEmpty()) {
            store.change(lines -> lines.events().add(now, "board", "judged again", kept.id(), String.join("", voided).strip()));
            undone.run();
        }
    }
}
