package chock.board;

import chock.assess.Assessment;
import chock.assess.GateVerdict;
import chock.board.store.Accounts.Account;
import chock.board.store.Kept;
import chock.board.store.Replies.Reply;
import chock.board.store.Signings;
import chock.board.store.Store;
import chock.board.store.Summary;
import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.RuleFiles;
import chock.signoff.Canonical;
import chock.signoff.KeyRack;
import chock.signoff.LedgerLine;
import chock.signoff.Ledgers;
import chock.signoff.NotSigned;
import chock.signoff.RulePack;
import chock.signoff.RulePacks;
import chock.signoff.SignOff;
import chock.signoff.SignOffs;
import chock.signoff.SigningKey;
import chock.signoff.TrustList;
import chock.signoff.TrustedKey;
import chock.signoff.Verification;
import chock.signoff.Verification.Holds;
import chock.signoff.Verification.Thing;
import chock.signoff.Verifier;
import chock.signoff.Withdrawals;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where releases are signed. Who signs is settled by the key bound to the account, its name and role by the trust list;
 * nothing typed says either.
 */
final class SigningDesk {
    private static final String FOLDER = "signoffs";

    private final chock.signoff.Shop workshop;
    private final Store store;
    private final Shop shop;
    private final Judging judging;
    private final Clock clock;
    private final LedgerWatch watch;
    private final Withdrawn withdrawn;
    private final Attempts tried = new Attempts(5, Duration.ofMinutes(15));

    /** @param workshop whose sign-offs are made here, or null where nothing is signed */
    SigningDesk(chock.signoff.Shop workshop, Store store, Shop shop, Judging judging, Clock clock) {
        this.workshop = workshop;
        this.store = store;
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
        this.watch = workshop == null ? null : new LedgerWatch(store, workshop.workshop(), clock);
        this.withdrawn = workshop == null ? null : new Withdrawn(workshop, store, clock);
    }

    /** What is wrong with the ledger beyond its own lines, or empty. */
    String alarm() {
        return watch == null ? "" : watch.alarm();
    }

    private List<LedgerLine> watched() {
        List<LedgerLine> lines = Files.exists(workshop.ledger()) ? Ledgers.lines(workshop.ledger()) : List.of();
        watch.fits(lines);
        return lines;
    }

    /** What is wrong in the ledger's own lines is told by whoever comes to read them. */
    private void watchedWhereSound() {
        try {
            watched();
        } catch (UnusableInput e) {
            // The verifier says so of a sign-off that it holds against the ledger.
        }
    }

    /** A lead says that lines of the ledger are lost for good. */
    synchronized int goBy(Visitor by, String reason) {
        workshop();
        List<LedgerLine> lines = watched();
        if (alarm().isEmpty()) {
            throw new Refusal(422, "The ledger is the one this board has seen; nothing is to be decided.");
        }
        if (reason.isBlank() || reason.length() > 500) {
            throw new Refusal(422, "Write the reason, in up to 500 letters.");
        }
        return watch.goBy(lines, by, reason.strip());
    }

    /**
     * Where somebody would sign.
     *
     * @param keyId the key bound to their account, or null
     * @param key the same on the trust list, or null
     * @param lacks why they cannot sign now, or empty
     * @param tried whether it is tried all the same, so that the ledger tells that somebody wanted to
     */
    record Seat(String keyId, TrustedKey key, String lacks, boolean tried) {
        boolean ready() {
            return lacks.isEmpty();
        }

        static Seat none(String lacks) {
            return new Seat(null, null, lacks, false);
        }
    }

    boolean isSetUp() {
        return workshop != null;
    }

    /** Whose sign-offs are made here. */
    chock.signoff.Shop workshop() {
        if (workshop == null) {
            throw new Refusal(422, "This board was started without the settings of a workshop, so nothing is signed or verified here.");
        }
        return workshop;
    }

    /** Whether somebody could sign now, and with which key. */
    Seat seat(Account account) {
        if (workshop == null) {
            return Seat.none("The board was started without the settings of a workshop.");
        }
        Optional<String> bound = store.read(lines -> lines.signings().key(account.id()));
        if (bound.isEmpty()) {
            return Seat.none("No key is bound to the account " + account.id() + ".");
        }
        String id = bound.get();
        try {
            TrustedKey key = TrustList.of(workshop.trust()).key(id).orElse(null);
            if (key != null && !same(key.name(), account.name())) {
                return new Seat(id, key, "The key bound to the account " + account.id() + " is " + key.name() + "'s, and the account is " + account.name() + "'s.", false);
            }
            if (!KeyRack.of(workshop).holds(id)) {
                return new Seat(id, key, "The file of the key bound to the account " + account.id() + " is not in the folder keys of the workshop.", false);
            }
            return new Seat(id, key, lacks(account, key), true);
        } catch (UnusableInput e) {
            return Seat.none("The trust list of the workshop cannot be read.");
        }
    }

    private String lacks(Account account, TrustedKey key) {
        Instant now = clock.instant();
        return key == null ? "The key bound to the account " + account.id() + " is not on the trust list."
                : key.isRevoked() ? "The key of " + key.name() + " was revoked: " + key.reason() + "."
                : now.isBefore(key.from()) || now.isAfter(key.until()) ? "The key of " + key.name() + " is not good today." : "";
    }

    /** As the one who signs is told apart from the one who worked: neither case nor blanks make another person. */
    static boolean same(String one, String other) {
        return one.replaceAll("\\s+", " ").strip().toLowerCase(Locale.ROOT).equals(other.replaceAll("\\s+", " ").strip().toLowerCase(Locale.ROOT));
    }

    /** Keys a lead can bind: those on the trust list. */
    List<TrustedKey> keys() {
        return workshop == null || !Files.exists(workshop.trust()) ? List.of() : TrustList.of(workshop.trust()).keys();
    }

    /** Says with which key somebody signs; an empty id: with none. */
    void bind(Visitor by, String id, String keyId) {
        Account account = store.read(lines -> lines.accounts().find(id)).orElseThrow(Refusal::notFound);
        if (!keyId.isEmpty()) {
            TrustedKey key = keys().stream().filter(k -> k.id().equals(keyId)).findFirst().orElseThrow(() -> new Refusal(422, "This key is not on the trust list. 'chock keys trust' puts it there."));
            if (!same(key.name(), account.name())) {
                throw new Refusal(422, "This key is " + key.name() + "'s, and the account is " + account.name() + "'s. Nobody signs with another's key.");
            }
        }
        store.change(lines -> {
            Optional<String> holder = keyId.isEmpty() ? Optional.empty() : lines.signings().holder(keyId);
            if (holder.isPresent() && !holder.get().equals(id)) {
                throw new Refusal(409, "This key is bound to the account " + holder.get() + " already.");
            }
            lines.signings().bind(id, keyId.isEmpty() ? null : keyId);
            lines.events().add(clock.instant(), by.account().id(), keyId.isEmpty() ? "key taken from account" : "key bound to account", null, id + (keyId.isEmpty() ? "" : ", " + keyId));
        });
    }

    /** Binds somebody to the one key in their name, where there is just one; for the demo. */
    void bindOwn(String id) {
        Account account = store.read(lines -> lines.accounts().find(id)).orElseThrow();
        List<TrustedKey> own = keys().stream().filter(key -> same(key.name(), account.name())).toList();
        if (own.size() == 1) {
            store.change(lines -> lines.signings().bind(id, own.get(0).id()));
        }
    }

    /**
     * Signs a release of the record as it was looked at.
     *
     * @param seen version of the record looked at
     * @param once what makes the same signing happen only once, or null
     * @return the sign-off as kept
     * @throws Refusal when this person may not sign, the passphrase is wrong or was wrong too often, or there is nothing to sign
     * @throws Shop.WrittenSince when somebody wrote to it in between
     */
    Signings.Line sign(Account by, String id, long seen, Gate gate, String passphrase, String once) {
        Optional<Signings.Line> earlier = earlier(by, once);
        if (earlier.isPresent()) {
            return earlier.get();
        }
        Kept kept = shop.find(id).orElseThrow(Refusal::notFound);
        if (kept.version() != seen) {
            throw new Shop.WrittenSince(id);
        }
        Seat seat = seat(by);
        if (!seat.ready() && !seat.tried()) {
            throw refused(by, id, gate, seat.lacks(), 403);
        }
        SigningKey key = unlock(by, seat.keyId(), passphrase, "Nothing was signed.", (why, status) -> refused(by, id, gate, why, status));
        synchronized (this) {
            Optional<Signings.Line> twin = earlier(by, once);
            return twin.isPresent() ? twin.get() : signed(by, kept, gate, key, once);
        }
    }

    private Optional<Signings.Line> earlier(Account by, String once) {
        return once == null ? Optional.empty() : store.read(lines -> lines.replies().find(by.id(), once).flatMap(reply -> lines.signings().find(reply.body())));
    }

    /**
     * @param nothing what then was not done, in a sentence
     * @param refused writes down why not
     */
    private SigningKey unlock(Account by, String keyId, String passphrase, String nothing, BiFunction<String, Integer, Refusal> refused) {
        Instant now = clock.instant();
        Duration wait = tried.wait(by.id(), now);
        if (!wait.isZero()) {
            throw new Refusal(429, "Too many wrong passphrases. Wait " + (wait.toMinutes() + 1) + " minutes. " + nothing, wait.toSeconds() + 1);
        }
        // Counted before it is looked at, so that many at once gain nothing.
        tried.failed(by.id(), now);
        char[] words = passphrase.toCharArray();
        try {
            SigningKey key = KeyRack.of(workshop).unlock(keyId, words).orElseThrow(() -> refused.apply("The passphrase does not open the key of " + by.name() + ".", 403));
            tried.forget(by.id());
            return key;
        } catch (NotSigned | UnusableInput e) {
            throw refused.apply("The file of the key of " + by.name() + " cannot be used.", 422);
        } finally {
            Arrays.fill(words, ' ');
        }
    }

    private Refusal refused(Account by, String id, Gate gate, String why, int status) {
        store.write(lines -> lines.events().add(clock.instant(), by.id(), "not signed", id, gate.id() + ". " + why));
        return new Refusal(status, why + " Nothing was signed.");
    }

    private Signings.Line signed(Account by, Kept kept, Gate gate, SigningKey key, String once) {
        watched();
        if (!alarm().isEmpty()) {
            throw refused(by, kept.id(), gate, alarm(), 503);
        }
        byte[] record = bytes(kept);
        SignOffs.Signed signed;
        try {
            signed = SignOffs.sign(workshop, key, judging.book(), folder().resolve(fileName(kept.id()) + ".json"), record, gate, null, clock);
        } catch (NotSigned e) {
            throw refused(by, kept.id(), gate, e.getMessage().replaceFirst("([^.])$", "$1."), 422);
        }
        byte[] jws = read(signed.file());
        Signings.Line done = store.write(lines -> {
            Signings.Line line = keep(lines, signed.signOff(), jws, kept.version(), by.id(), signed.line());
            lines.events().add(clock.instant(), by.id(), "signed", kept.id(), gate.id() + " until " + signed.signOff().holdsUntil() + ", line " + signed.line() + " of the ledger");
            if (once != null) {
                lines.replies().keep(by.id(), once, new Reply("", 201, line.id(), String.valueOf(kept.version())), clock.instant());
            }
            return line;
        });
        keepRuleBook(by, key);
        watched();
        return done;
    }

    /** Keeps the rule book when a lead signs, so that a later version of chock can judge by it. */
    private void keepRuleBook(Account by, SigningKey key) {
        try {
            if (RulePacks.mayKeep(workshop, key, clock)) {
                RulePacks.keep(workshop, new RulePack.Source(RuleFiles.shipped(), judging.book()), key, clock);
            }
        } catch (NotSigned | UnusableInput e) {
            store.write(lines -> lines.events().add(clock.instant(), by.id(), "rule book not kept", null, e.getMessage()));
        }
    }

    /** Keeps a sign-off; what was written to the machine while it was signed may void it at once. */
    private Signings.Line keep(Store.Lines lines, SignOff signOff, byte[] jws, long version, String account, int number) {
        String digest = Canonical.digest(jws);
        Signings.Line line = new Signings.Line(digest.substring(7, 23), signOff.record().id(), version, signOff.gate(), Instant.parse(signOff.signedAt()), signOff.until(), signOff.signer().name(),
                signOff.signer().role(), signOff.signer().keyId(), account, number, digest, null, null);
        long now = lines.records().hold(line.machine());
        if (lines.signings().add(line, Canonical.digest(signOff.seal().getBytes(StandardCharsets.US_ASCII)), new String(jws, StandardCharsets.US_ASCII)) && now != version) {
            Kept newest = lines.records().find(line.machine()).orElseThrow();
            shop.undo(lines, newest, judging.read(newest, clock.instant()), clock.instant());
        }
        return line;
    }

    static byte[] bytes(Kept kept) {
        return kept.record().toString().getBytes(StandardCharsets.UTF_8);
    }

    /** A name that leads nowhere else; where letters had to go, a piece of the digest keeps two machines apart. */
    private static String fileName(String id) {
        String safe = id.replaceAll("[^A-Za-z0-9-]", "_");
        safe = safe.length() > 60 ? safe.substring(0, 60) : safe;
        return safe.equals(id) ? safe : safe + "-" + Canonical.digest(id.getBytes(StandardCharsets.UTF_8)).substring(7, 15);
    }

    private Path folder() {
        Path folder = workshop.file().toAbsolutePath().getParent().resolve(FOLDER);
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("the folder of the sign-offs cannot be made", e);
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException("what was just written cannot be read", e);
        }
    }

    /**
     * Makes store and ledger agree: what the store found void goes into the ledger, what the ledger has void goes into the
     * store, and a sign-off that got its line but not its place in the store, as in a crash, is taken in.
     */
    synchronized void keepUp() {
        if (workshop == null) {
            return;
        }
        List<LedgerLine> ledger = watched();
        if (!alarm().isEmpty()) {
            // A ledger that is not the right one settles nothing, and nothing is written to it.
            return;
        }
        Map<String, LedgerLine> voided = new LinkedHashMap<>();
        ledger.stream().filter(line -> line.kind().equals("voided")).forEach(line -> voided.putIfAbsent(line.text("signOff"), line));
        Set<String> kept = new HashSet<>(store.read(lines -> lines.signings().digests()));
        List<LedgerLine> more = ledger.stream().filter(line -> line.kind().equals("signed") && !kept.contains(line.text("signOff"))).toList();
        more.forEach(this::takeIn);
        Set<String> told = new HashSet<>();
        store.read(lines -> lines.signings().voided()).forEach(line -> told.add(line.digest()));
        voided.forEach((digest, line) -> {
            if (!told.contains(digest)) {
                store.change(lines -> lines.signings().byDigest(digest).ifPresent(found -> lines.signings().undo(found.id(), line.at(), line.text("why"))));
            }
        });
        withdrawn.end(ledger, !more.isEmpty());
        store.read(lines -> lines.signings().voided()).stream().filter(line -> !voided.containsKey(line.digest())).forEach(line -> Ledgers.voided(workshop, line.machine(), Map.of(line.digest(), line.why()), clock));
        watched();
    }

    /**
     * Withdraws a rule book or a check with the key bound to the account of a lead, and ends what rests on it.
     *
     * @throws Refusal when this person may not, the passphrase is wrong or was wrong too often, or it was withdrawn already
     * @throws UnusableInput when it cannot be meant
     */
    synchronized Withdrawals.Done withdraw(Account by, Withdrawals.What what, String passphrase) {
        workshop();
        what.mustBeMeant();
        BiFunction<String, Integer, Refusal> no = (why, status) -> {
            store.write(lines -> lines.events().add(clock.instant(), by.id(), "not withdrawn", null, why));
            return new Refusal(status, why + " Nothing was withdrawn.");
        };
        Seat seat = seat(by);
        if (!seat.ready()) {
            throw no.apply(seat.lacks(), 403);
        }
        SigningKey key = unlock(by, seat.keyId(), passphrase, "Nothing was withdrawn.", no);
        watched();
        if (!alarm().isEmpty()) {
            throw no.apply(alarm(), 503);
        }
        Withdrawals.Done done;
        try {
            done = Withdrawals.withdraw(workshop, judging.book(), what, key, clock);
        } catch (NotSigned e) {
            throw no.apply(e.getMessage().replaceFirst("([^.])$", "$1."), 422);
        }
        store.write(lines -> lines.events().add(clock.instant(), by.id(), "withdrawn", null, done.made().words(workshop.zone()) + ", line " + done.made().line() + " of the ledger"));
        keepUp();
        return done;
    }

    /**
     * Who withdrew what a release judged now rests on, in words.
     *
     * @throws Refusal when the ledger cannot be read, so that nobody knows
     */
    Optional<String> withdrawn(Assessment assessment) {
        if (workshop == null || assessment.gates().stream().noneMatch(GateVerdict::released)) {
            return Optional.empty();
        }
        try {
            return withdrawn.why(watched(), assessment);
        } catch (UnusableInput e) {
            throw new Refusal(503, "The ledger cannot be read, so nobody can tell whether this was withdrawn. The ledger page tells an inspector why.");
        }
    }

    /** @throws Refusal when a release in it rests on what was withdrawn: no paper says then that the machine may be used */
    Assessment mustNotBeWithdrawn(Assessment assessment) {
        withdrawn(assessment).ifPresent(words -> {
            throw new Refusal(422, "No paper was made. " + words + ". Judge by a rule book in which that is mended.");
        });
        return assessment;
    }

    private void takeIn(LedgerLine line) {
        for (String name : List.of(line.text("file"), "." + line.text("file") + ".part")) {
            // The name comes from a file others may have written.
            if (name.matches("[A-Za-z0-9._-]+")) {
                Path file = folder().resolve(name);
                byte[] jws = Files.isRegularFile(file) ? read(file) : new byte[0];
                Optional<SignOff> signOff = Canonical.digest(jws).equals(line.text("signOff")) ? SignOff.written(jws) : Optional.empty();
                if (signOff.isPresent() && shop.find(signOff.get().record().id()).isPresent()) {
                    store.write(lines -> keep(lines, signOff.get(), jws, 0, "", line.number()));
                    return;
                }
            }
        }
    }

    /**
     * Says of a sign-off, or of the seal from its paper, what holds; against the record as it is now, and the ledger.
     *
     * @param given as it was read or typed; blanks and line ends in it are passed over
     * @param known whether the visitor is signed in. For anybody else nothing is judged, so that strangers cannot keep the board busy:
     *     the sign-off is compared with the ledger, the record and the last verdict on the machine.
     */
    Looked verify(byte[] given, boolean known) {
        chock.signoff.Shop by = workshop();
        byte[] text = new String(given, StandardCharsets.ISO_8859_1).replaceAll("\\s+", "").getBytes(StandardCharsets.ISO_8859_1);
        Optional<Signings.Line> kept = store.read(lines -> lines.signings().byDigest(Canonical.digest(text)));
        byte[] whole = kept.map(line -> store.read(lines -> lines.signings().text(line.id())).getBytes(StandardCharsets.US_ASCII)).orElse(text);
        Optional<Kept> record = SignOff.written(whole).flatMap(signOff -> shop.find(signOff.record().id()));
        Verifier verifier = new Verifier(TrustList.of(by.trust()), by, judging.book(), clock.instant());
        Verification looked = (known ? verifier : verifier.comparing()).verify(new Verifier.Source("sign-off", whole), record.map(one -> new Verifier.Source(one.id(), bytes(one))).orElse(null));
        Verification found = known || looked.signOff() == null || record.isEmpty() ? looked : with(looked, lastJudged(record.get().id(), looked.signOff().gate()));
        watchedWhereSound();
        if (!alarm().isEmpty()) {
            return new Looked(with(found, Stream.of(new Thing("ledger seen", Holds.NO, alarm()))), kept.orElse(null));
        }
        // Should the ledger not carry it yet, this board knows all the same.
        Optional<Signings.Line> gone = kept.filter(Signings.Line::isVoid).filter(line -> found.holds());
        return new Looked(with(found, gone.stream().map(line -> new Thing("board", Holds.NO, "It is void since " + line.voidedAt() + ": " + line.why() + "."))), kept.orElse(null));
    }

    private static Verification with(Verification found, Stream<Thing> more) {
        return new Verification(found.title(), Stream.concat(found.things().stream(), more).toList(), found.signOff(), found.head());
    }

    /** What blocks the gate by the last verdict on the machine; nothing when it is released or no longer sought. */
    private Stream<Thing> lastJudged(String machine, String gate) {
        return store.read(lines -> lines.floor().gates(machine)).stream().filter(one -> one.gate().equals(gate) && !one.released())
                .map(one -> new Thing("board", one.faults() > 0 ? Holds.NO : Holds.NOT_LOOKED_AT, "By the record as it is now, the gate is blocked: "
                        + one.held().stream().map(Summary.Held::check).distinct().collect(Collectors.joining(", ")) + (one.open() > one.held().size() ? " and more." : ".")));
    }

    /** @param kept the sign-off in the store, or null */
    record Looked(Verification found, Signings.Line kept) { }

    Looked verify(String id) {
        String text = store.read(lines -> lines.signings().find(id).map(line -> lines.signings().text(id))).orElseThrow(Refusal::notFound);
        return verify(text.getBytes(StandardCharsets.US_ASCII), true);
    }

    /**
     * The ledger, newest line first.
     *
     * @param sound what was found of it, in a sentence
     * @param more whether older lines follow
     */
    record Page(boolean holds, String sound, List<LedgerLine> lines, boolean more) { }

    Page ledger(String machine, int from, int most) {
        chock.signoff.Shop of = workshop();
        List<LedgerLine> all = new ArrayList<>();
        String fault;
        int count = 0;
        try {
            Ledgers.Checked checked = Ledgers.verify(of);
            fault = checked.fault();
            count = checked.lines();
            all.addAll(watched());
            fault = fault == null && !alarm().isEmpty() ? alarm() : fault;
        } catch (UnusableInput e) {
            fault = e.getMessage();
        }
        java.util.Collections.reverse(all);
        List<LedgerLine> asked = all.stream().filter(line -> machine.isEmpty() || line.text("record").equals(machine)).skip(from).limit(most + 1L).toList();
        return new Page(fault == null, fault == null ? count + (count == 1 ? " line, as it was written." : " lines, each as it was written.") : fault.replaceFirst("([^.])$", "$1."),
                asked.stream().limit(most).toList(), asked.size() > most);
    }
}
