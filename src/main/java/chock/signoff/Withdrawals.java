package chock.signoff;

import chock.assess.Assessment;
import chock.assess.GateVerdict;
import chock.record.UnusableInput;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.nio.file.Files;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Withdraws what was found wrong later. A lead says so with a key, and every sign-off that rests on it ends. */
public final class Withdrawals {
    private static final int LONGEST_REASON = 500;

    private Withdrawals() { }

    /**
     * What is to be withdrawn.
     *
     * @param check id of a check, or null for a whole rule book
     * @param ruleBook digest of a rule book, or null for every one until now
     * @param alsoNotAsked true when sign-offs end as well whose machine was not asked the check
     * @param reason why, in up to 500 letters
     */
    public record What(String check, String ruleBook, boolean alsoNotAsked, String reason) {
        /** @throws UnusableInput when this cannot be meant, whatever stands in the ledger */
        public void mustBeMeant() {
            if (check == null && ruleBook == null) {
                throw UnusableInput.of("what is withdrawn", "neither a check nor a rule book is named", "Name a check, a rule book by its digest, or a check of one rule book");
            }
            if (ruleBook != null && !Withdrawal.DIGEST.matcher(ruleBook).matches()) {
                throw UnusableInput.of("rule book", "'" + ruleBook + "' is not the digest of a rule book",
                        "Write sha256: and 64 figures of 0-9 and a-f, as 'chock rules', 'chock verify' and each sign-off sheet show it");
            }
            if (check == null && alsoNotAsked) {
                throw UnusableInput.of("what is withdrawn", "a rule book is withdrawn as a whole, with all it asks and does not ask", "Name a check, or leave out that it was not asked");
            }
            if (reason.isBlank() || reason.strip().length() > LONGEST_REASON || reason.strip().lines().count() > 1) {
                throw UnusableInput.of("reason", reason.isBlank() ? "no reason is written" : reason.strip().length() > LONGEST_REASON ? "it is longer than " + LONGEST_REASON + " letters" : "it has more than one line",
                        "Say why, in up to " + LONGEST_REASON + " letters; whoever verifies such a sign-off reads it");
            }
        }
    }

    /**
     * What was withdrawn.
     *
     * @param ended how many sign-offs of the ledger ended with it
     * @param unknown how many lines of sign-offs do not say what they rest on: an earlier program wrote them
     */
    public record Done(Withdrawal made, int ended, int unknown) { }

    /**
     * Withdraws a rule book, or a check.
     *
     * @param book the rule book at hand
     * @throws NotSigned when the key is not that of a lead, or this was withdrawn already
     * @throws UnusableInput when it cannot be meant, or the ledger cannot be written
     */
    public static Done withdraw(Shop shop, RuleBook book, What what, SigningKey lead, InstantSource clock) {
        what.mustBeMeant();
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History history = History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            TrustedKey by = mustBeLead(history.trust(), lead, now);
            Withdrawal made = new Withdrawal(ledger.nextNumber(), now, by.name(), what.check() == null ? List.of() : names(what.check(), book, history), what.ruleBook(),
                    what.ruleBook() == null ? known(book, history) : Set.of(), what.alsoNotAsked(), what.reason().strip());
            history.withdrawals().stream().filter(earlier -> earlier.covers(made)).findFirst().ifPresent(earlier -> {
                throw new NotSigned("this was withdrawn already: " + earlier.words(shop.zone()));
            });
            ledger.append(now, Withdrawal.KIND, made.said(lead.id()), lead);
            List<History.Signing> ended = history.signings().stream()
                    .filter(s -> history.voided(s.digest()).isEmpty() && s.rests() != null && made.ends(s.rests(), s.line())).toList();
            ended.forEach(s -> ledger.append(now, "voided", Voids.line(s.digest(), s.record(), made.words(shop.zone())), null));
            return new Done(made, ended.size(), (int) history.signings().stream().filter(s -> s.rests() == null && history.voided(s.digest()).isEmpty()).count());
        }
    }

    private static TrustedKey mustBeLead(TrustList trust, SigningKey lead, Instant now) {
        TrustedKey by = trust.key(lead.id()).orElseThrow(() -> new NotSigned("this key (" + lead.id() + ") is not on the trust list; only a lead withdraws"));
        Signers.mustBeValid(by, now);
        if (by.role() != Role.LEAD) {
            throw new NotSigned(by.name() + " is " + by.role().word() + "; only a lead withdraws");
        }
        return by;
    }

    /** The check by all its ids: sign-offs of earlier rule books name it as it was called then. A slip of the pen would withdraw nothing, so an id nobody knows is refused. */
    private static List<String> names(String check, RuleBook book, History history) {
        Set<String> names = new LinkedHashSet<>(List.of(check));
        for (Card card : book.cards().values()) {
            if (card.id().equals(check) || card.formerly().contains(check)) {
                names.add(card.id());
                names.addAll(card.formerly());
            }
        }
        boolean known = names.size() > 1 || book.cards().containsKey(check)
                || history.signings().stream().map(History.Signing::rests).filter(Objects::nonNull).anyMatch(rests -> rests.asked().contains(check) || rests.notAsked().contains(check));
        if (!known) {
            throw UnusableInput.of("check", "'" + check + "' is a check neither of the rule book at hand nor of a sign-off in the ledger",
                    "'chock rules' lists the ids; a check of a rule book that is gone is withdrawn with its whole rule book");
        }
        return List.copyOf(names);
    }

    private static Set<String> known(RuleBook book, History history) {
        Set<String> known = new HashSet<>(Set.of(book.digest()));
        history.signings().stream().map(History.Signing::rests).filter(Objects::nonNull).map(RestsOn::ruleBook).forEach(known::add);
        return known;
    }

    /** Everything withdrawn in the ledger of a workshop, oldest first. */
    public static List<Withdrawal> all(Shop shop) {
        return Files.exists(shop.ledger()) ? Ledgers.history(shop.ledger()).withdrawals() : List.of();
    }

    /** Who withdrew what a sign-off rests on, in words; empty when nobody did. */
    public static Optional<String> why(List<Withdrawal> withdrawn, SignOff signOff, ZoneId zone) {
        RestsOn rests = RestsOn.of(signOff);
        return withdrawn.stream().filter(one -> one.ends(rests, signOff.ledger().line())).findFirst().map(one -> one.words(zone));
    }

    /** The same of a release judged now; at a gate that is held nothing rests on anything. */
    public static Optional<String> why(List<Withdrawal> withdrawn, Assessment assessment, ZoneId zone) {
        return assessment.gates().stream().filter(GateVerdict::released).map(verdict -> RestsOn.of(assessment, verdict))
                .flatMap(rests -> withdrawn.stream().filter(one -> one.ends(rests, Integer.MAX_VALUE))).findFirst().map(one -> one.words(zone));
    }

    /**
     * @param rests what somebody is about to sign
     * @throws NotSigned when that was withdrawn
     */
    static void mustNotBeWithdrawn(History history, RestsOn rests, int next, ZoneId zone) {
        history.withdrawals().stream().filter(one -> one.ends(rests, next)).findFirst().ifPresent(one -> {
            throw new NotSigned(one.words(zone) + ". " + INSTEAD);
        });
    }

    /** What to do where a release rests on what was withdrawn. */
    public static final String INSTEAD = "Sign by a rule book with another digest, in which that is mended: a later chock, or other house rules";

    /**
     * Who withdrew what a sign-off rests on, each in words.
     *
     * @param signing its line in the ledger
     * @param whole the sign-off itself, or null when only its seal or its line is at hand
     */
    static List<String> ending(History history, History.Signing signing, SignOff whole, ZoneId zone) {
        List<RestsOn> rests = new ArrayList<>();
        if (whole != null) {
            rests.add(RestsOn.of(whole));
        }
        if (signing.rests() != null) {
            rests.add(signing.rests());
        }
        return history.withdrawals().stream().filter(one -> rests.stream().anyMatch(on -> one.ends(on, signing.line()))).map(one -> one.words(zone)).toList();
    }

    /** What was withdrawn after a line that does not say what it rests on, each in words: nobody can tell from the line whether it ended. */
    static List<String> perhaps(History history, History.Signing signing, ZoneId zone) {
        return signing.rests() != null ? List.of() : history.withdrawals().stream().filter(one -> one.line() > signing.line()).map(one -> one.words(zone)).toList();
    }
}
