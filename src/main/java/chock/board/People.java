package chock.board;

import chock.board.store.Accounts;
import chock.board.store.Accounts.Account;
import chock.board.store.Accounts.Session;
import chock.board.store.Store;
import chock.record.PersonName;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Signing in and out, and who may. */
final class People {
    static final Duration UNUSED = Duration.ofHours(4);
    static final Duration LONGEST = Duration.ofHours(12);
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    private static final String WRONG = "The id or the password is not right.";

    private final Store store;
    private final Clock clock;
    private final Passwords passwords = new Passwords();
    private final Attempts byPerson = new Attempts(5, Duration.ofMinutes(15));
    private final Attempts byAddress = new Attempts(20, Duration.ofMinutes(15));
    /** From however many addresses. */
    private final Attempts byAccount = new Attempts(40, Duration.ofMinutes(15));

    People(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** What the browser is given, and never kept as such. */
    record SignedIn(String cookie, Visitor visitor) { }

    /** Makes the first account; the answer is its one-time secret, or empty when there are accounts. */
    Optional<String> first() {
        String secret = Passwords.oneTime();
        String hash = passwords.hash(secret);
        return store.write(lines -> {
            if (!lines.accounts().none()) {
                return Optional.<String>empty();
            }
            lines.accounts().add(new Account("lead", "Shop lead", Role.LEAD.word(), hash, true, true), clock.instant());
            lines.events().add(clock.instant(), "lead", "first account made", null, "lead, lead");
            return Optional.of(secret);
        });
    }

    /** @throws Refusal 401 when wrong, 429 when tried too often */
    SignedIn signIn(String id, String password, String address) {
        Instant now = clock.instant();
        // What cannot be an id is kept nowhere, however long it is.
        boolean canBe = ID.matcher(id).matches();
        String person = canBe ? id + " " + address : "nobody " + address;
        String asked = canBe ? id : "nobody";
        Duration wait = Stream.of(byPerson.wait(person, now), byAddress.wait(address, now), byAccount.wait(asked, now)).max(Comparator.naturalOrder()).orElseThrow();
        if (!wait.isZero()) {
            throw new Refusal(429, "Too many attempts. Wait " + (wait.toMinutes() + 1) + " minutes, or ask the lead for a new password.", wait.toSeconds() + 1);
        }
        // Counted before it is looked at, so that many at once gain nothing.
        byPerson.failed(person, now);
        byAddress.failed(address, now);
        byAccount.failed(asked, now);
        Account account = !canBe ? null : store.read(lines -> lines.accounts().find(id)).filter(Account::active).orElse(null);
        if (!passwords.fits(password, account == null ? null : account.secret())) {
            store.write(lines -> lines.events().add(now, account == null ? "nobody" : account.id(), "sign-in refused", null, "from " + address));
            throw new Refusal(401, WRONG);
        }
        byPerson.forget(person);
        byAddress.forget(address);
        byAccount.forget(asked);
        return begin(account, now);
    }

    private SignedIn begin(Account account, Instant now) {
        String cookie = Passwords.random();
        Session session = new Session(digest(cookie), account.id(), Passwords.random(), now, now);
        store.change(lines -> {
            lines.accounts().endBefore(now.minus(LONGEST), now.minus(UNUSED));
            lines.accounts().begin(session);
            lines.events().add(now, account.id(), "signed in", null, account.role());
        });
        return new SignedIn(cookie, visitor(session, account));
    }

    /** Who holds this cookie, or empty when it is worth nothing (any more). */
    Optional<Visitor> holder(String cookie) {
        Instant now = clock.instant();
        if (cookie == null || cookie.length() > 100) {
            return Optional.empty();
        }
        Session session = store.read(lines -> lines.accounts().session(digest(cookie))).orElse(null);
        if (session == null || session.madeAt().plus(LONGEST).isBefore(now) || session.seenAt().plus(UNUSED).isBefore(now)) {
            return Optional.empty();
        }
        if (session.seenAt().plus(Duration.ofMinutes(5)).isBefore(now)) {
            store.change(lines -> lines.accounts().seen(session.token(), now));
        }
        return store.read(lines -> lines.accounts().find(session.account())).filter(Account::active).map(account -> visitor(session, account));
    }

    private static Visitor visitor(Session session, Account account) {
        return new Visitor(account, Role.of(account.role()).orElseThrow(), session.form(), session.token());
    }

    void signOut(Visitor visitor) {
        store.change(lines -> lines.accounts().endOne(visitor.token()));
    }

    /** Sets one's own password; every session ends and a new one begins. */
    SignedIn changeOwn(Visitor visitor, String old, String fresh, String address) {
        Instant now = clock.instant();
        String person = visitor.account().id() + " " + address;
        if (!byPerson.wait(person, now).isZero()) {
            throw new Refusal(429, "Too many attempts. Wait a quarter of an hour.", 900);
        }
        if (!passwords.fits(old, visitor.account().secret())) {
            byPerson.failed(person, now);
            throw new Refusal(422, "The present password is not right.");
        }
        String complaint = old.equals(fresh) ? "The new password is the old one." : Passwords.complaint(fresh, visitor.account().id());
        if (complaint != null) {
            throw new Refusal(422, complaint);
        }
        String hash = passwords.hash(fresh);
        store.change(lines -> {
            lines.accounts().secret(visitor.account().id(), hash, false);
            lines.events().add(now, visitor.account().id(), "password changed", null, "by themselves");
        });
        return begin(store.read(lines -> lines.accounts().find(visitor.account().id())).orElseThrow(), now);
    }

    List<Account> all() {
        return store.read(lines -> lines.accounts().all());
    }

    /** Adds a person; the answer is their one-time password. */
    String add(Visitor by, String id, String name, String role) {
        if (id == null || !ID.matcher(id).matches()) {
            throw new Refusal(422, "Write a short id of letters, figures, dots and dashes, such as ida.");
        }
        if (name == null || name.isBlank() || name.length() > 80) {
            throw new Refusal(422, "Write the full name, up to 80 letters.");
        }
        PersonName.complaint(name).ifPresent(wrong -> {
            throw new Refusal(422, "This name cannot be used: " + wrong + ".");
        });
        Role as = role(role);
        String secret = Passwords.oneTime();
        Account account = new Account(id, name.strip(), as.word(), passwords.hash(secret), true, true);
        store.change(lines -> {
            boolean same = lines.accounts().all().stream().anyMatch(other -> PersonName.isSame(other.name(), account.name()));
            if (same || !lines.accounts().add(account, clock.instant())) {
                throw new Refusal(409, "The id or the name is taken. Entries are told apart by both.");
            }
            lines.events().add(clock.instant(), by.account().id(), "account made", null, id + ", " + as.word());
        });
        return secret;
    }

    private static Role role(String word) {
        return Role.of(word == null ? "" : word).orElseThrow(() -> new Refusal(422, "Write technician, inspector or lead."));
    }

    /** Changes what somebody is and whether they may sign in. One lead always remains. */
    void change(Visitor by, String id, String role, boolean active) {
        Role as = role(role);
        store.change(lines -> {
            Accounts accounts = lines.accounts();
            accounts.find(id).orElseThrow(Refusal::notFound);
            accounts.standing(id, as.word(), active);
            if (accounts.leads() == 0) {
                throw new Refusal(422, "One lead must remain who can sign in. Make somebody else lead first.");
            }
            lines.events().add(clock.instant(), by.account().id(), "account changed", null, id + ", " + as.word() + (active ? "" : ", may sign in no more"));
        });
    }

    /** Gives somebody a new one-time password. */
    String renew(Visitor by, String id) {
        String secret = Passwords.oneTime();
        String hash = passwords.hash(secret);
        store.change(lines -> {
            lines.accounts().find(id).orElseThrow(Refusal::notFound);
            lines.accounts().secret(id, hash, true);
            lines.events().add(clock.instant(), by.account().id(), "password renewed", null, id);
        });
        return secret;
    }

    private static String digest(String cookie) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(cookie.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
