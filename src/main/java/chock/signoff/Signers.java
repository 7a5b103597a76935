package chock.signoff;

import chock.record.Fault;
import chock.record.PersonName;
import chock.record.UnusableInput;
import chock.rulebook.Sheet;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Whose keys are believed. A lead says so with a key; every change is in the ledger, and the trust list is written from it. */
public final class Signers {
    private Signers() { }

    /**
     * Whose key this is, when it may sign now.
     *
     * @throws NotSigned when it is not on the trust list, not valid now, or revoked, or the list was changed by hand
     */
    static TrustedKey mayUse(SigningKey key, Shop shop, History history, Instant now) {
        TrustList written = TrustList.of(shop.trust());
        TrustedKey known = history.trust().key(key.id()).orElse(null);
        if (!written.key(key.id()).equals(history.trust().key(key.id()))) {
            String name = written.key(key.id()).map(TrustedKey::name).orElse("nobody");
            throw new NotSigned("the trust list " + shop.trust() + " gives this key to " + name + ", the ledger to " + (known == null ? "nobody" : known.name())
                    + (known != null && known.isRevoked() ? ", revoked" : "") + ": it was not changed by 'chock keys'. 'chock ledger recover' writes it anew from the ledger");
        }
        if (known == null) {
            throw new NotSigned("this key (" + key.id() + ") is not on the trust list " + shop.trust() + ". A lead puts it there with 'chock keys trust'");
        }
        mustBeValid(known, now);
        if (!known.role().maySignReleases()) {
            throw new NotSigned(known.name() + " has the role " + known.role().word() + ", and such a key cannot sign a release");
        }
        return known;
    }

    static void mustBeValid(TrustedKey key, Instant now) {
        if (key.isRevoked()) {
            throw new NotSigned("the key of " + key.name() + " was revoked on " + key.revoked() + ": " + key.reason() + ". Make a new one with 'chock keys new'");
        }
        if (!key.validAt(now)) {
            throw new NotSigned("the key of " + key.name() + " is good from " + key.from() + " until " + key.until() + ", and now it is " + now);
        }
    }

    /**
     * Puts a key on the trust list.
     *
     * @param publicKey the file with its public half, a JWK
     * @param name whose it is, in full
     * @param from first day, or null for now; for a key that is on the list, as it was
     * @param until last day
     * @param lead the key of a lead; on an empty list, the very key that is put on it
     * @return the key as it now stands on the list
     */
    public static TrustedKey trust(Shop shop, Path publicKey, String name, Role role, LocalDate from, LocalDate until, SigningKey lead, InstantSource clock) {
        String x = jwk(publicKey);
        if (name.isBlank()) {
            throw new NotSigned("a key needs the full name of its owner");
        }
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History history = History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            Optional<TrustedKey> before = history.trust().key(PublicKeys.thumbprint(x));
            Instant first = from != null ? from.atStartOfDay(shop.zone()).toInstant() : before.map(TrustedKey::from).orElse(now);
            Instant last = until.plusDays(1).atStartOfDay(shop.zone()).toInstant().minusSeconds(1);
            if (!last.isAfter(first) || !last.isAfter(now)) {
                throw new NotSigned("a key that is good until " + until + " is not good for anything now; give a later day");
            }
            TrustedKey key = new TrustedKey(PublicKeys.thumbprint(x), x, name.strip().replaceAll("\\s+", " "), role, first, last, null, null);
            if (before.isPresent() && !before.get().name().equals(key.name())) {
                throw new NotSigned("this key is " + before.get().name() + "'s, and stays so. " + key.name() + " makes one with 'chock keys new'");
            }
            PersonName.complaint(key.name()).ifPresent(wrong -> {
                throw new NotSigned("the name '" + key.name() + "' cannot be used: " + wrong);
            });
            history.trust().keys().stream().map(TrustedKey::name).filter(other -> !other.equals(key.name()) && PersonName.isSame(other, key.name())).findFirst().ifPresent(other -> {
                throw new NotSigned("the name '" + key.name() + "' looks like '" + other + "', whose key is on the list: write it as it stands there, or write what tells the two apart");
            });
            mayTrust(history, key, lead, now);
            ObjectNode line = JsonNodeFactory.instance.objectNode().put("by", lead.id());
            line.set("key", key.jwk());
            ledger.append(now, "key-trusted", line, lead);
            publish(shop, ledger);
            return key;
        }
    }

    private static void mayTrust(History history, TrustedKey key, SigningKey lead, Instant now) {
        TrustList trust = history.trust();
        if (trust.key(key.id()).filter(TrustedKey::isRevoked).isPresent()) {
            throw new NotSigned("this key was revoked, and stays so. Make a new one with 'chock keys new'");
        }
        if (trust.keys().isEmpty()) {
            if (!lead.id().equals(key.id()) || key.role() != Role.LEAD || !key.validAt(now)) {
                throw new NotSigned("the trust list is empty: the first key on it is that of a lead, put there with itself (--role lead, and --by with the same key)");
            }
            return;
        }
        mustBeLead(trust, lead, now);
    }

    static void mustBeLead(TrustList trust, SigningKey lead, Instant now) {
        TrustedKey by = trust.key(lead.id()).orElseThrow(() -> new NotSigned("the key given with --by (" + lead.id() + ") is not on the trust list; only a lead changes it"));
        mustBeValid(by, now);
        if (by.role() != Role.LEAD) {
            throw new NotSigned(by.name() + " is " + by.role().word() + "; only a lead changes the trust list");
        }
    }

    /**
     * Revokes a key, and with it every sign-off it was used for.
     *
     * @param keyId thumbprint of the key
     * @param reason why, for whoever reads a sign-off made with it
     */
    public static TrustedKey revoke(Shop shop, String keyId, String reason, SigningKey lead, InstantSource clock) {
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History history = History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            TrustedKey key = history.trust().key(keyId).orElseThrow(() -> new NotSigned("there is no key " + keyId + " on the trust list; 'chock keys list' shows them"));
            if (key.isRevoked()) {
                throw new NotSigned("the key of " + key.name() + " was revoked already, on " + key.revoked() + ": " + key.reason());
            }
            mustBeLead(history.trust(), lead, now);
            ledger.append(now, "key-revoked", JsonNodeFactory.instance.objectNode().put("by", lead.id()).put("keyId", keyId).put("name", key.name()).put("reason", reason), lead);
            history.signings().stream().filter(s -> s.keyId().equals(keyId) && history.voided(s.digest()).isEmpty())
                    .forEach(s -> ledger.append(now, "voided", Voids.line(s.digest(), s.record(), "the key of " + key.name() + " was revoked: " + reason), null));
            publish(shop, ledger);
            return key.revoked(now, reason);
        }
    }

    /** Writes the trust list as the ledger has it, and tells whether it was otherwise. */
    static boolean publish(Shop shop, OpenLedger ledger) {
        byte[] list = History.of(shop.ledger(), ledger.lines()).trust().bytes();
        if (Files.exists(shop.trust()) && Arrays.equals(Disk.read(shop.trust()), list)) {
            return false;
        }
        Disk.write(shop.trust(), list, false);
        return true;
    }

    /** The public key in a file. */
    static String jwk(Path file) {
        List<Fault> faults = new ArrayList<>();
        Sheet sheet = Sheet.one(file.toString(), new String(Disk.read(file), StandardCharsets.UTF_8), faults);
        String x = null;
        if (sheet != null) {
            x = TrustList.publicKey(sheet);
            sheet.optional("kid");
            sheet.done();
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return x;
    }
}
