package chock.signoff;

import chock.assess.Assessor;
import chock.assess.State;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import chock.rulebook.RuleBook;
import chock.signoff.Verification.Holds;
import chock.signoff.Verification.Thing;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Says of a sign-off, or of the seal from its paper, what holds. Asks nobody outside. */
public final class Verifier {
    /** Parts of a record that the release rests on; the others tell only what is claimed, sought and called. */
    private static final Set<String> DECIDING = Set.of("chock", "record", "workshop", "zone", "machine", "maker", "territory", "local-law", "one-person");

    private final TrustList trust;
    private final Shop shop;
    private final RuleBook book;
    private final Instant asOf;
    private final boolean judging;
    private final List<Thing> things = new ArrayList<>();

    /**
     * @param trust whose keys are believed
     * @param shop the shop whose ledger is looked at as well, or null
     * @param book the rule book at hand
     * @param asOf the moment it is to hold at
     */
    public Verifier(TrustList trust, Shop shop, RuleBook book, Instant asOf) {
        this(trust, shop, book, asOf, true);
    }

    private Verifier(TrustList trust, Shop shop, RuleBook book, Instant asOf, boolean judging) {
        this.trust = trust;
        this.shop = shop;
        this.book = book;
        this.asOf = asOf;
        this.judging = judging;
    }

    /** The same without judging the record again, for visitors who are not signed in: the sign-off is compared with the ledger and the record. */
    public Verifier comparing() {
        return new Verifier(trust, shop, book, asOf, false);
    }

    /** A file to look at. */
    public record Source(String name, byte[] bytes) { }

    /** What both a sign-off and a seal say. */
    private record Said(String record, String digest, String machine, String gate, Instant from, Instant until, ZoneId zone, String signer, String role, String keyId) {
        String title() {
            return gate + " of " + record + ": " + machine;
        }
    }

    /**
     * @param signOff the sign-off, or a seal
     * @param record the record as it is now, or null
     */
    public Verification verify(Source signOff, Source record) {
        Jws jws = Jws.parse(signOff.bytes());
        if (jws == null) {
            return unknown("This is no sign-off as chock writes it, or it was altered.");
        }
        List<LedgerLine> lines = shop == null ? List.of() : Ledgers.lines(shop.ledger());
        History history = shop == null ? null : History.of(shop.ledger(), lines);
        // Where the ledger is at hand it says whose key this is: a list put back from an older copy undoes no revocation.
        Optional<TrustedKey> key = (history == null ? trust : history.trust()).key(jws.keyId());
        if (key.isEmpty()) {
            return unknown("It is signed with the key " + jws.keyId() + ", which is not on the trust list; nothing in it is to be believed.");
        }
        if (!jws.isSignedBy(key.get().x())) {
            return unknown("The signature does not fit: something in it was altered after " + key.get().name() + " signed, or " + key.get().name() + " did not sign it.");
        }
        SignOff whole = jws.typ().equals(SignOff.TYP) ? SignOff.read(jws.payload()) : null;
        SignOff.Seal seal = jws.typ().equals(SignOff.Seal.TYP) ? SignOff.Seal.read(jws.payload()) : null;
        if (whole == null && seal == null) {
            return unknown("It is signed by " + key.get().name() + ", but it is no sign-off that this chock can read.");
        }
        Said said = whole != null ? said(whole) : said(seal, jws.keyId());
        Optional<History.Signing> found = history == null ? Optional.empty() : found(history, said, whole, Canonical.digest(signOff.bytes()));
        signature(said, key.get(), whole == null, found);
        time(said);
        if (whole != null) {
            itself(whole, key.get());
        }
        if (whole == null) {
            add("record", Holds.NOT_LOOKED_AT, "This is the seal alone; the findings and the record are held against the whole sign-off.");
        } else if (record == null) {
            add("record", Holds.NOT_LOOKED_AT, "The record was not given, so nobody looked whether it is the one signed, or whether anything was written since.");
            add("rule book", Holds.NOT_LOOKED_AT, ruleBook(whole) + "; without the record nothing was judged again.");
        } else {
            record(whole, record, history, found);
        }
        if (shop != null) {
            ledger(history, said, whole, seal, found);
        }
        return new Verification(said.title(), List.copyOf(things), whole, LedgerHead.of(lines).orElse(null));
    }

    private static Said said(SignOff s) {
        return new Said(s.record().id(), s.record().digest(), s.machine().words(), s.gate(), s.judged(), s.until(), s.clock(), s.signer().name(), s.signer().role(), s.signer().keyId());
    }

    private static Said said(SignOff.Seal s, String keyId) {
        return new Said(s.record(), s.digest(), s.machine() + ", frame " + s.frameNumber() + ", engine " + s.engineNumber(), s.gate(), Instant.parse(s.asOf()), Instant.parse(s.holdsUntil()),
                ZoneId.of(s.zone()), s.signer(), s.role(), keyId);
    }

    private Verification unknown(String says) {
        return new Verification("not a readable sign-off", List.of(new Thing("signature", Holds.NO, says)), null, null);
    }

    private void add(String thing, Holds holds, String says) {
        things.add(new Thing(thing, holds, says));
    }

    private static String shown(Instant moment, ZoneId zone) {
        return moment.atZone(zone).format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")) + " " + zone;
    }

    private void signature(Said said, TrustedKey key, boolean seal, Optional<History.Signing> found) {
        String what = seal ? "The seal is as " : "It is, letter for letter, as ";
        boolean own = said.signer().equals(key.name()) && said.role().equals(key.role().word()) && said.keyId().equals(key.id());
        add("signature", own ? Holds.YES : Holds.NO, own ? what + key.name() + " (" + key.role().word() + ") signed it on " + shown(said.from(), said.zone()) + "."
                : "It says it is by " + said.signer() + " (" + said.role() + "), but the key is " + key.name() + "'s (" + key.role().word() + ").");
        if (key.isRevoked()) {
            add("key", Holds.NO, "The key of " + key.name() + " was revoked on " + shown(key.revoked(), said.zone()) + ": " + key.reason() + ". What it signed is void.");
        } else if (!key.validAt(found.map(History.Signing::at).orElse(said.from()))) {
            add("key", Holds.NO, "The key of " + key.name() + " was good from " + shown(key.from(), said.zone()) + " until " + shown(key.until(), said.zone()) + ", and not when this was signed.");
        } else {
            add("key", Holds.YES, "The key of " + key.name() + " was on the trust list and good when "
                    + (found.isPresent() ? "the ledger took it in." : "this was signed, by the clock of who signed."));
        }
    }

    private void time(Said said) {
        if (asOf.isBefore(said.from())) {
            add("time", Holds.NO, "On " + shown(asOf, said.zone()) + " it was not signed yet.");
        } else if (said.until().isAfter(said.from().atZone(said.zone()).plus(book.longestRelease()).toInstant())) {
            add("time", Holds.NO, "It says that it holds until " + shown(said.until(), said.zone()) + ", and no release holds longer than " + book.longestRelease().getDays() + " days.");
        } else if (asOf.isAfter(said.until())) {
            add("time", Holds.NO, "It lapsed on " + shown(said.until(), said.zone()) + ".");
        } else {
            add("time", Holds.YES, "It holds until " + shown(said.until(), said.zone()) + " if nobody touches the machine.");
        }
    }

    /** What it says of itself: a genuine one was judged and signed at one moment, released, and carries its own seal. Told only when it does not fit. */
    private void itself(SignOff signOff, TrustedKey key) {
        List<String> wrong = new ArrayList<>();
        if (!signOff.signedAt().equals(signOff.asOf())) {
            wrong.add("it was judged at one moment and signed at another");
        }
        if (!signOff.verdict().equals("released")) {
            wrong.add("the gate is " + signOff.verdict() + ", and only a release is signed");
        }
        if (signOff.findings().isEmpty() || signOff.findings().stream().anyMatch(found -> !found.state().equals(State.MET.id()))) {
            wrong.add(signOff.findings().isEmpty() ? "it rests on no finding" : "one of its findings is not met");
        }
        Jws jws = Jws.parse(signOff.seal().getBytes(StandardCharsets.UTF_8));
        boolean own = jws != null && jws.typ().equals(SignOff.Seal.TYP) && jws.keyId().equals(key.id()) && jws.isSignedBy(key.x())
                && signOff.sealed().equals(SignOff.Seal.read(jws.payload()));
        if (!own) {
            wrong.add("the seal in it says something else");
        }
        if (!wrong.isEmpty()) {
            add("sign-off", Holds.NO, "It does not fit together: " + String.join("; ", wrong) + ".");
        }
    }

    private void record(SignOff signOff, Source source, History history, Optional<History.Signing> found) {
        RecordVersion version;
        JobRecord plain;
        JobRecord record;
        Instant at = asOf.isBefore(signOff.judged()) ? signOff.judged() : asOf;
        try {
            version = RecordVersion.of(source.name(), source.bytes());
            plain = RecordReader.read(source.name(), source.bytes(), book.vocabulary(), at);
            record = book.heldAgainstRegister(plain, at);
        } catch (UnusableInput e) {
            add("record", Holds.NO, "The record given cannot be read, so it is not the one signed: " + e.getMessage().lines().findFirst().orElse(""));
            return;
        }
        RecordVersion.Difference difference = version.since(signOff.record().items());
        List<String> broken = broken(difference);
        broken = broken.isEmpty() ? otherwise(signOff, record) : broken;
        if (!broken.isEmpty()) {
            add("record", Holds.NO, "The record is not the one signed: " + String.join("; ", broken) + ".");
            add("rule book", Holds.NOT_LOOKED_AT, ruleBook(signOff) + "; another record cannot be judged in its place.");
            return;
        }
        boolean same = version.digest().equals(signOff.record().digest());
        add("record", Holds.YES, same ? version.file().equals(signOff.record().file()) ? "The record is the one signed, byte for byte."
                : "The record says what the one signed said; its file has been laid out otherwise since (comments, blanks, quotes)."
                : difference.added().isEmpty() && difference.changed().isEmpty() ? "The record says what the one signed said, in another order."
                : "Everything that was signed stands in the record unchanged; it has been added to since.");
        if (!judging) {
            since(signOff, record, difference, signOff.criticalPoints());
            add("rule book", found.isPresent() ? Holds.YES : Holds.NOT_LOOKED_AT, ruleBook(signOff) + (found.isPresent() ? " when it was signed. The ledger lists this sign-off, so its findings are as signed. Not judged again here."
                    : "; not judged again here."));
            return;
        }
        // What was found out about an instrument since then voids it below; the findings signed are those of that moment.
        JobRecord then = asSigned(signOff, book.heldAgainstRegister(plain, signOff.judged()));
        RuleBook there = book.at(signOff.place() == null ? null : signOff.place().position());
        Rejudged rejudged = new Rejudged(then, Assessor.assess(then, there, List.of(Gate.of(signOff.gate()).orElseThrow()), signOff.judged()), book);
        since(signOff, record, difference, rejudged.criticalPoints(signOff));
        again(signOff, rejudged, shop == null ? null : replay(signOff, source, at, history), RecordVersion.digestWithout(source.name(), source.bytes(), difference.added()).equals(signOff.record().digest()));
    }

    /** Judging by the rule book signed by, done when it is wanted. */
    private Supplier<Replay.Result> replay(SignOff signOff, Source source, Instant at, History history) {
        return () -> new Replay(shop, history, signOff).run(kept -> asSigned(signOff, kept.heldAgainstRegister(RecordReader.read(source.name(), source.bytes(), kept.vocabulary(), at), signOff.judged())));
    }

    /** What the sign-off says of the record otherwise than the record does. */
    private static List<String> otherwise(SignOff signOff, JobRecord record) {
        List<String> other = new ArrayList<>();
        SignOff.OfRecord of = signOff.record();
        if (!of.id().equals(record.id()) || !of.workshop().equals(record.workshop())) {
            other.add("the sign-off names record " + of.id() + " of " + of.workshop());
        }
        if (!signOff.machine().equals(SignOff.OfMachine.of(record.machine()))) {
            other.add("the sign-off names another machine, " + signOff.machine().words());
        }
        if (!signOff.zone().equals(record.zone().getId()) || !signOff.territory().equals(record.territory())) {
            other.add("the sign-off names " + signOff.territory() + " on the clock of " + signOff.zone());
        }
        record.entries().stream().filter(entry -> of.items().containsKey("entry " + entry.id()) && entry.at().earliest().isAfter(signOff.judged()))
                .findFirst().ifPresent(entry -> other.add("entry " + entry.id() + " of " + entry.at() + " is said to be signed, and is later than the sign-off"));
        return other;
    }

    /** Without the entries that were written since. */
    private static JobRecord asSigned(SignOff signOff, JobRecord record) {
        return record.withEntries(record.entries().stream().filter(entry -> signOff.record().items().containsKey("entry " + entry.id())).toList());
    }

    private static List<String> broken(RecordVersion.Difference difference) {
        List<String> broken = new ArrayList<>();
        difference.keptRemoved().forEach(item -> broken.add(item + " was taken out"));
        difference.keptChanged().forEach(item -> broken.add(item + " says something else"));
        difference.parts().stream().filter(DECIDING::contains).forEach(part -> broken.add("'" + part + "' says something else"));
        return broken;
    }

    /**
     * What in a record voids a sign-off made of an earlier version of it: something signed that says something else now, or
     * the first later entry about a critical place.
     *
     * @param version the record as it is now, and {@code record} the same read
     * @param words of the rule book in force
     */
    public static Optional<String> undone(SignOff signOff, RecordVersion version, JobRecord record, Vocabulary words) {
        List<String> broken = broken(version.since(signOff.record().items()));
        return !broken.isEmpty() ? Optional.of(String.join("; ", broken))
                : Critical.touched(Voids.later(record, signOff.record().items()), signOff.criticalPoints(), words).map(Critical.Noted::words);
    }

    private void since(SignOff signOff, JobRecord record, RecordVersion.Difference difference, List<String> criticalPoints) {
        List<Critical.Noted> later = Voids.later(record, signOff.record().items());
        Optional<Critical.Noted> touched = Critical.touched(later, criticalPoints, book.vocabulary());
        if (touched.isPresent()) {
            add("since", Holds.NO, "Since then " + touched.get().words() + ", where somebody gets hurt when something is wrong: that voids it. Judge the record again, and sign it again.");
        } else {
            List<String> added = new ArrayList<>(difference.added());
            difference.parts().stream().filter(part -> !added.contains("part " + part)).forEach(part -> added.add("'" + part + "'"));
            add("since", Holds.YES, added.isEmpty() ? "Nothing was written since." : "What was written since touches nothing safety-critical: " + String.join(", ", added) + ".");
        }
    }

    private String ruleBook(SignOff signOff) {
        return "It was judged by rule book " + signOff.ruleBook().version() + " (" + signOff.ruleBook().digest() + ")";
    }

    private void again(SignOff signOff, Rejudged rejudged, Supplier<Replay.Result> replay, boolean same) {
        boolean own = signOff.ruleBook().digest().equals(book.digest());
        if (own && same) {
            List<String> differences = rejudged.differences(signOff);
            add("rule book", differences.isEmpty() ? Holds.YES : Holds.NO, ruleBook(signOff) + ", the one at hand; "
                    + (differences.isEmpty() ? "judged again by it, the gate is released with the same findings."
                    : "judged again by it, this is not as signed: " + String.join(", ", differences) + "."));
            return;
        }
        List<String> faults = rejudged.faults();
        if (!faults.isEmpty()) {
            add("rule book", Holds.NO, ruleBook(signOff) + "; by the rule book at hand the same record has a fault: " + String.join(", ", faults) + ".");
        } else if (own) {
            add("rule book", Holds.NOT_LOOKED_AT, ruleBook(signOff) + ", the one at hand; only the very record signed can be judged again by it.");
        } else if (!same) {
            add("rule book", Holds.NOT_LOOKED_AT, ruleBook(signOff) + "; only the very record signed can be judged again by it." + today(rejudged));
        } else if (replay == null) {
            add("rule book", Holds.NOT_LOOKED_AT, ruleBook(signOff) + "; not judged again: this version of chock has another." + today(rejudged));
        } else {
            Replay.Result result = replay.get();
            add("rule book", result.holds(), ruleBook(signOff) + result.says() + today(rejudged));
        }
    }

    private static String today(Rejudged rejudged) {
        List<String> open = rejudged.open();
        return open.isEmpty() ? " By the rule book at hand the same record is released." : " By the rule book at hand it would be held: " + String.join(", ", open) + ".";
    }

    private static Optional<History.Signing> found(History history, Said said, SignOff whole, String digest) {
        return whole != null ? history.signing(digest) : history.signings().stream().filter(s -> s.record().equals(said.record()) && s.gate().equals(said.gate()) && s.at().equals(said.from()) && s.keyId().equals(said.keyId())).findFirst();
    }

    private void ledger(History history, Said said, SignOff whole, SignOff.Seal seal, Optional<History.Signing> found) {
        if (!history.trust().key(said.keyId()).equals(trust.key(said.keyId()))) {
            add("ledger", Holds.NO, "The trust list does not say of this key what the ledger says: somebody changed it by hand.");
        } else if (found.isEmpty() || whole != null && found.get().line() != whole.ledger().line()) {
            add("ledger", Holds.NO, "The ledger of " + shop.workshop() + " does not know it.");
        } else if (seal != null && !found.get().isSealedBy(seal)) {
            add("ledger", Holds.NO, "It is not what line " + found.get().line() + " of the ledger of " + shop.workshop() + " says was signed then: the seal names another machine, digest, role or end.");
        } else {
            ended(history, found.get(), whole);
        }
    }

    /** What the ledger says of a sign-off it knows: voided, resting on what was withdrawn, or neither. */
    private void ended(History history, History.Signing signing, SignOff whole) {
        String line = "It is line " + signing.line() + " of the ledger";
        List<String> withdrawn = Withdrawals.ending(history, signing, whole, shop.zone());
        List<String> perhaps = whole != null ? List.of() : Withdrawals.perhaps(history, signing, shop.zone());
        Optional<String> voided = history.voided(signing.digest());
        if (voided.isPresent()) {
            List<String> why = Stream.concat(voided.stream(), withdrawn.stream()).distinct().toList();
            add("ledger", Holds.NO, line + ", and was voided there: " + String.join("; ", why) + ".");
        } else if (!withdrawn.isEmpty()) {
            add("ledger", Holds.NO, line + ", and rests on what was withdrawn there: " + String.join("; ", withdrawn) + ".");
        } else if (!perhaps.isEmpty()) {
            add("ledger", Holds.NO, line + ", which an earlier chock wrote without what it rests on, and may rest on what was withdrawn there: " + String.join("; ", perhaps)
                    + ". Verify the sign-off file itself.");
        } else {
            add("ledger", Holds.YES, line + ", and nothing there voids it.");
        }
    }

    /**
     * Writes into the ledger what entries written since void, so that it stays void though somebody took them out again.
     *
     * @return what could not be done, or null
     */
    public static String note(Shop shop, RuleBook book, Source source, InstantSource clock) {
        try {
            Instant now = clock.instant();
            JobRecord record = book.heldAgainstRegister(RecordReader.read(source.name(), source.bytes(), book.vocabulary(), now), now);
            History before = Ledgers.history(shop.ledger());
            if (Voids.of(record, before, book.vocabulary()).isEmpty()) {
                return null;
            }
            try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
                Instant at = ledger.now(now);
                Voids.of(record, History.of(shop.ledger(), ledger.lines()), book.vocabulary()).forEach((digest, why) -> ledger.append(at, "voided", Voids.line(digest, record.id(), why), null));
            }
            return null;
        } catch (UnusableInput | NotSigned e) {
            return "The ledger does not carry this yet: " + e.getMessage();
        }
    }

    /**
     * How the last sign-off of a record stands at each gate, in sentences; empty when it was never signed.
     *
     * @param record the record as it is now
     * @param words of the rule book in force
     * @param asOf the moment to tell it for
     */
    public static List<String> standing(Shop shop, JobRecord record, Vocabulary words, Instant asOf) {
        History history = Ledgers.history(shop.ledger());
        Map<String, History.Signing> last = new LinkedHashMap<>();
        history.signings().stream().filter(s -> s.record().equals(record.id()) && !s.at().isAfter(asOf)).sorted(Comparator.comparing(History.Signing::line)).forEach(s -> last.put(s.gate(), s));
        return last.values().stream().map(s -> "The sign-off at " + s.gate() + " by " + s.name() + " of " + shown(s.at(), record.zone()) + standing(shop.zone(), s, history, record, words, asOf)).toList();
    }

    private static String standing(ZoneId zone, History.Signing s, History history, JobRecord record, Vocabulary words, Instant asOf) {
        Optional<String> why = history.voided(s.digest()).or(() -> Withdrawals.ending(history, s, null, zone).stream().findFirst()).or(() -> Voids.since(record, s, words).map(Critical.Noted::words));
        if (why.isPresent()) {
            return " is void: " + why.get() + ".";
        }
        List<String> perhaps = asOf.isAfter(s.until()) ? List.of() : Withdrawals.perhaps(history, s, zone);
        if (!perhaps.isEmpty()) {
            return " may rest on what was withdrawn; verify its file: " + String.join("; ", perhaps) + ".";
        }
        return asOf.isAfter(s.until()) ? " lapsed on " + shown(s.until(), record.zone()) + "." : " stands until " + shown(s.until(), record.zone()) + ".";
    }
}
