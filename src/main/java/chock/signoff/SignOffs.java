package chock.signoff;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.quantity.Measured;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Fault;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.PersonName;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.rulebook.Applied;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Signs: judges a record now, and puts the name of the key's owner to a release. */
public final class SignOffs {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    /** Of a record written anew, so many differences are told one by one. */
    private static final int MOST_TOLD = 10;
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private final Shop shop;
    private final SigningKey key;
    private final RuleBook book;
    private final Path file;
    private final byte[] bytes;
    private final Gate gate;

    private SignOffs(Shop shop, SigningKey key, RuleBook book, Path file, byte[] bytes, Gate gate) {
        this.shop = shop;
        this.key = key;
        this.book = book;
        this.file = file;
        this.bytes = bytes;
        this.gate = gate;
    }

    /**
     * What was signed.
     *
     * @param file the sign-off
     * @param line its line in the ledger
     */
    public record Signed(Path file, SignOff signOff, int line) { }

    /**
     * Signs a release at this moment. When it returns, the sign-off and its line in the ledger are on the disk.
     *
     * @param record the file of the record
     * @param bytes what is in it
     * @param out where the sign-off goes, or null: beside the record
     * @param clock read once, while the ledger is held
     * @throws NotSigned when there is nothing to sign, or this key may not; the refusal is in the ledger
     * @throws UnusableInput when a file cannot be used or written; then nothing was signed
     */
    public static Signed sign(Shop shop, SigningKey key, RuleBook book, Path record, byte[] bytes, Gate gate, Path out, InstantSource clock) {
        return new SignOffs(shop, key, book, record, bytes, gate).sign(out, clock);
    }

    /**
     * Writes into the ledger that somebody wanted to sign and had not the passphrase. Whose key it is was not proven, so the
     * line names the file and nobody.
     *
     * @param why what is wrong with the key or the passphrase
     * @return what to refuse with: that, and what kept it out of the ledger when something did
     */
    public static UnusableInput keyStayedClosed(Shop shop, RuleBook book, Path record, byte[] bytes, Gate gate, Path keyFile, UnusableInput why, InstantSource clock) {
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            String id = RecordReader.read(record.toString(), bytes, book.vocabulary(), now).id();
            ledger.append(now, "refused", MAKE.objectNode().put("record", id).put("gate", gate.id())
                    .put("why", "the key file " + keyFile.getFileName() + " was not opened, so that nobody is proven to have asked"), null);
            return why;
        } catch (UnusableInput unwritten) {
            return new UnusableInput(Stream.concat(why.faults().stream(), unwritten.faults().stream()).toList());
        } catch (NotSigned unwritten) {
            return new UnusableInput(Stream.concat(why.faults().stream(), Stream.of(new Fault(shop.ledger().toString(), 0, "", "this refusal is not in it: " + unwritten.getMessage(), ""))).toList());
        }
    }

    private Signed sign(Path out, InstantSource clock) {
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History history = History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            JobRecord record = book.heldAgainstRegister(RecordReader.read(file.toString(), bytes, book.vocabulary(), now), now);
            RecordVersion version = RecordVersion.of(file.toString(), bytes);
            Path to = out != null ? out : file.resolveSibling(stem(file) + "." + gate + "." + STAMP.format(now) + ".jws");
            ObjectNode saw = null;
            try {
                TrustedKey signer = Signers.mayUse(key, shop, history, now);
                String house = shop.houseOf(book);
                ours(record);
                withItsRegister();
                RecordVersion.Difference difference = Continuity.check(record, version, history.seen(record.id()));
                saw = saw(difference, version);
                voidEarlier(ledger, history, record, now);
                Assessment assessment = Assessor.assess(record, book, List.of(gate), now);
                GateVerdict verdict = assessment.gates().get(0);
                Withdrawals.mustNotBeWithdrawn(history, RestsOn.of(assessment, verdict), ledger.nextNumber(), shop.zone());
                released(record, verdict);
                List<String> notes = new ArrayList<>();
                notTheOnlyWorker(record, signer, notes);
                knownElsewhere(record, version, history, notes);
                if (record.register() != null) {
                    notes.add("The instruments were held against the register of the workshop (" + record.register().digest() + ").");
                }
                List<String> changed = history.seen(record.id()).lastSigned() == null ? List.of() : difference.parts();
                SignOff signOff = statement(record, version, assessment, verdict, house, signer, notes, changed,
                        new SignOff.Position(ledger.nextNumber(), "sha256:" + ledger.lastDigest()));
                return write(ledger, signOff, saw, now, to, key);
            } catch (NotSigned refusal) {
                throw logged(ledger, refusal, record, saw, now);
            }
        }
    }

    private static String stem(Path file) {
        return file.getFileName().toString().replaceFirst("\\.(ya?ml|json)$", "");
    }

    private void ours(JobRecord record) {
        if (!record.workshop().equals(shop.workshop())) {
            throw new NotSigned("record " + record.id() + " is of '" + record.workshop() + "', and " + shop.file() + " speaks for '" + shop.workshop() + "'");
        }
    }

    private void withItsRegister() {
        if (shop.instruments() != null && !book.hasRegister()) {
            throw new NotSigned(shop.file() + " names the register " + shop.instruments() + ", and the record was judged without it");
        }
    }

    private static ObjectNode saw(RecordVersion.Difference difference, RecordVersion version) {
        ObjectNode saw = MAKE.objectNode();
        difference.added().forEach(item -> saw.put(item, version.items().get(item)));
        difference.changed().forEach(item -> saw.put(item, version.items().get(item)));
        return saw;
    }

    private void voidEarlier(OpenLedger ledger, History history, JobRecord record, Instant now) {
        Voids.of(record, history, book.vocabulary()).forEach((digest, why) -> ledger.append(now, "voided", Voids.line(digest, record.id(), why), null));
    }

    private void released(JobRecord record, GateVerdict verdict) {
        if (verdict.released()) {
            return;
        }
        List<String> counts = new ArrayList<>();
        for (State state : State.values()) {
            long count = verdict.open().stream().filter(f -> f.state() == state).count();
            if (count > 0) {
                counts.add(count + " " + state.id());
            }
        }
        counts.addAll(verdict.ruleBookFaults());
        String first = verdict.open().stream().findFirst().map(f -> ". First of all, " + f.check() + ": " + f.says()).orElse(".");
        throw new NotSigned(record.id() + " is blocked at " + gate + ": " + String.join(", ", counts) + first);
    }

    /** Who did all the work alone cannot be the one who vouches for it, unless the workshop says that one works alone. */
    private static void notTheOnlyWorker(JobRecord record, TrustedKey signer, List<String> notes) {
        Set<String> workers = workers(record);
        if (workers.size() != 1 || !same(workers.iterator().next(), signer.name())) {
            return;
        }
        if (!record.onePerson()) {
            throw new NotSigned(signer.name() + " did all the work on " + record.id() + " and cannot be the one to sign it. Somebody else signs; where one person works alone, the record says 'one-person: yes'");
        }
        notes.add("One person works alone in this workshop: the work and the signature are " + signer.name() + "'s, and nobody else looked.");
    }

    /** Who did work, or who wrote anything where no work was done. */
    static Set<String> workers(JobRecord record) {
        Set<String> names = new TreeSet<>();
        record.entries().stream().filter(e -> e.deed() == Deed.DONE).map(Entry::by).map(record::nameOf).forEach(names::add);
        if (names.isEmpty()) {
            record.entries().stream().map(Entry::by).map(record::nameOf).forEach(names::add);
        }
        return names;
    }

    /** As {@code people} tells two names apart: neither case nor blanks make another person. */
    private static boolean same(String one, String other) {
        return PersonName.isSame(one, other);
    }

    /** What the ledger knows of this machine under other records: it may have been refused there, and written down anew. */
    private static void knownElsewhere(JobRecord record, RecordVersion version, History history, List<String> notes) {
        String frame = record.machine().frameNumber();
        String engine = record.machine().engineNumber();
        history.signings().stream().filter(s -> !s.record().equals(record.id()) && SameMachine.is(frame, engine, s.frame(), s.engine()))
                .map(History.Signing::record).distinct().forEach(other -> notes.add("This frame was signed before under record " + other + "; what stands there was not looked at."));
        Map<String, History.Refusal> refused = new TreeMap<>();
        history.refusals().stream().filter(r -> !r.record().equals(record.id()) && SameMachine.is(frame, engine, r.frame(), r.engine()))
                .forEach(refusal -> refused.put(refusal.record(), refusal));
        refused.values().forEach(refusal -> notes.add("This machine was refused at " + refusal.gate() + " under record " + refusal.record() + " on "
                + refusal.at().atZone(record.zone()).toLocalDate() + ": " + refusal.why().replaceFirst("\\.$", "") + ". "
                + otherwise(version.since(history.seen(refusal.record()).items()))));
    }

    private static String otherwise(RecordVersion.Difference difference) {
        List<String> told = new ArrayList<>();
        difference.keptRemoved().stream().filter(item -> item.startsWith("entry ")).forEach(item -> told.add(item + " is not in this record"));
        difference.keptChanged().stream().filter(item -> item.startsWith("entry ")).forEach(item -> told.add(item + " says something else here"));
        if (told.isEmpty()) {
            return "All that was seen of it then stands in this record unchanged.";
        }
        String more = told.size() > MOST_TOLD ? " and " + (told.size() - MOST_TOLD) + " more" : "";
        return "Of what was seen of it then, " + String.join(", ", told.subList(0, Math.min(MOST_TOLD, told.size()))) + more + ".";
    }

    private SignOff statement(JobRecord record, RecordVersion version, Assessment assessment, GateVerdict verdict, String house, TrustedKey signer,
                              List<String> notes, List<String> changed, SignOff.Position position) {
        List<String> known = new ArrayList<>(notes);
        known.addAll(toBeKnown(assessment));
        SignOff.OfMachine machine = SignOff.OfMachine.of(record.machine());
        SignOff.Signer by = new SignOff.Signer(signer.name(), signer.role().word(), signer.id());
        String asOf = assessment.asOf().toString();
        SignOff.Seal seal = new SignOff.Seal(SignOff.Seal.FORM, record.id(), version.digest(), machine.marque() + " " + machine.model(), machine.frameNumber(), machine.engineNumber(),
                gate.id(), asOf, verdict.holdsUntil().toString(), record.zone().getId(), by.name(), by.role());
        return new SignOff(SignOff.FORM, new SignOff.OfRecord(record.id(), record.workshop(), version.digest(), version.file(), new TreeMap<>(version.items())), machine, gate.id(), verdict.verdict(),
                asOf, verdict.holdsUntil().toString(), record.zone().getId(), SignOff.OfPlace.of(book.position()), record.territory(), assessment.localCode(), assessment.recordedLaw(),
                new SignOff.OfRuleBook(assessment.ruleBookVersion(), assessment.ruleBookDigest()), house, found(verdict),
                notAsked(verdict), cautions(verdict), List.copyOf(known), Critical.points(verdict, record), List.copyOf(workers(record)),
                changed, Assessment.NOTICE, by, asOf, position, Jws.sign(SignOff.bytes(seal), SignOff.Seal.TYP, key));
    }

    /** What the record tells besides its findings. */
    static List<String> toBeKnown(Assessment assessment) {
        return assessment.disclosures().toBeKnown().stream().map(one -> one.says()).toList();
    }

    /** Checks of the gate that do not apply to the machine. */
    static List<String> notAsked(GateVerdict verdict) {
        return verdict.notApplicable().stream().map(GateVerdict.NotApplicable::check).toList();
    }

    /** Where people get hurt, each caution once. */
    static List<String> cautions(GateVerdict verdict) {
        List<String> cautions = new ArrayList<>(verdict.run() == null || verdict.run().sheet() == null ? List.of() : verdict.run().sheet().caution());
        verdict.findings().stream().map(Finding::caution).filter(c -> c != null && !cautions.contains(c)).distinct().forEach(cautions::add);
        return List.copyOf(cautions);
    }

    /** Each check of a verdict, in short. */
    static List<SignOff.Found> found(GateVerdict verdict) {
        return verdict.findings().stream().map(f -> new SignOff.Found(f.check(), f.state().id(), f.critical(), f.says(), amount(f.measured()), against(f.limit()), f.notes(), f.evidence())).toList();
    }

    private static SignOff.Amount amount(Measured measured) {
        return measured == null ? null : new SignOff.Amount(measured.value().value().toPlainString(), measured.value().unit().symbol(),
                measured.uncertainty() == null ? null : measured.uncertainty().differenceTo(measured.value().unit()).value().toPlainString());
    }

    private static SignOff.Against against(Applied limit) {
        return limit == null ? null : new SignOff.Against(limit.id(), limit.bounds().words(), limit.source().words());
    }

    /** First the sign-off under a hidden name, then its line in the ledger, then its own name: what has its name is in the ledger. */
    static Signed write(OpenLedger ledger, SignOff signOff, ObjectNode saw, Instant now, Path to, SigningKey key) {
        if (Files.exists(to)) {
            throw UnusableInput.of(to.toString(), "there is such a file already", "A sign-off is never written over; give another name with --out");
        }
        byte[] jws = Jws.sign(signOff.bytes(), SignOff.TYP, key).getBytes(StandardCharsets.US_ASCII);
        Path part = Disk.prepare(to, jws, false);
        LedgerLine line;
        try {
            line = ledger.append(now, "signed", line(signOff, jws, saw, to), key);
        } catch (UnusableInput e) {
            Disk.discard(part);
            throw e;
        }
        try {
            Disk.arrive(part, to);
        } catch (UnusableInput e) {
            throw UnusableInput.of(to.toString(), "it was signed, and is line " + line.number() + " of the ledger, but the file could not be given its name", "It lies whole in " + part + ": rename it");
        }
        return new Signed(to, signOff, line.number());
    }

    private static ObjectNode line(SignOff signOff, byte[] jws, ObjectNode saw, Path to) {
        ObjectNode line = MAKE.objectNode().put("record", signOff.record().id()).put("machine", signOff.machine().marque() + " " + signOff.machine().model())
                .put("frame", signOff.machine().frameNumber()).put("engine", signOff.machine().engineNumber()).put("gate", signOff.gate())
                .put("holdsUntil", signOff.holdsUntil()).put("recordDigest", signOff.record().digest()).put("signOff", Canonical.digest(jws)).put("file", to.getFileName().toString());
        line.putObject("signer").put("name", signOff.signer().name()).put("role", signOff.signer().role()).put("keyId", signOff.signer().keyId());
        signOff.criticalPoints().forEach(line.putArray("criticalPoints")::add);
        RestsOn.of(signOff).writeTo(line);
        line.set("saw", saw);
        return line;
    }

    private NotSigned logged(OpenLedger ledger, NotSigned refusal, JobRecord record, ObjectNode saw, Instant now) {
        ObjectNode line = MAKE.objectNode().put("record", record.id()).put("frame", record.machine().frameNumber())
                .put("engine", record.machine().engineNumber()).put("gate", gate.id()).put("keyId", key.id()).put("why", refusal.getMessage());
        if (saw != null) {
            line.set("saw", saw);
        }
        try {
            ledger.append(now, "refused", line, null);
            return refusal;
        } catch (UnusableInput e) {
            return new NotSigned(refusal.getMessage() + "\nThis refusal is not in the ledger: " + e.getMessage());
        }
    }
}
