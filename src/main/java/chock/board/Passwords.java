package chock.board;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;

/** Passwords as they are kept: salted Argon2id (RFC 9106), 16 MB and two passes each. */
final class Passwords {
    private static final int LEAST = 12;
    private static final int MOST = 200;
    /** A password that takes fewer guesses than ten to this power is easy; from here on the library calls it very unguessable. */
    private static final int LEAST_GUESSES = 10;
    /** So many characters are looked at. */
    private static final int MEASURED = 100;
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final char[] EASY = "abcdefghjkmnpqrstuvwxyz23456789".toCharArray();

    private static final Argon2PasswordEncoder ARGON2 = Argon2PasswordEncoder.defaultsForSpringSecurity_v5_8();
    /** Of a password nobody has. */
    private static final String NOBODY = ARGON2.encode(random());

    String hash(String password) {
        return ARGON2.encode(password);
    }

    /** @param hash as kept, or null when there is no such account: that takes as long, so that nobody learns who is there */
    boolean fits(String password, String hash) {
        boolean fits = password.length() <= MOST && ARGON2.matches(password, hash == null ? NOBODY : hash);
        return fits && hash != null;
    }

    /** What is wrong with a new password, or null. */
    static String complaint(String password, String accountId) {
        if (password.codePointCount(0, password.length()) < LEAST) {
            return "A password has at least " + LEAST + " characters. Several words are easier to remember than signs.";
        }
        if (password.length() > MOST) {
            return "A password has at most " + MOST + " characters.";
        }
        if (isEasy(password, accountId)) {
            return "This password is easy to guess: it is made of words, dates or rows of keys that many people use. Take several words that have nothing to do with each other.";
        }
        return password.toLowerCase(java.util.Locale.ROOT).contains(accountId.toLowerCase(java.util.Locale.ROOT)) ? "A password does not contain the id it is for." : null;
    }

    // Asked of a library with lists of its own; nobody outside is asked. Its time grows with the square of the length.
    private static boolean isEasy(String password, String accountId) {
        return new Zxcvbn().measure(password.substring(0, Math.min(MEASURED, password.length())), List.of(accountId)).getGuessesLog10() < LEAST_GUESSES;
    }

    /** A secret to be typed once, of letters and figures that are not mistaken for each other; over 95 bits. */
    static String oneTime() {
        StringBuilder secret = new StringBuilder();
        for (int i = 0; i < 20; i++) {
            secret.append(i > 0 && i % 5 == 0 ? "-" : "").append(EASY[RANDOM.nextInt(EASY.length)]);
        }
        return secret.toString();
    }

    /** 256 random bits. */
    static String random() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
