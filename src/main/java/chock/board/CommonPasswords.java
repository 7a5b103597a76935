package chock.board;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * Whether a password is one that many people use, by a short list inside the program and asking nobody: a password that long is
 * seldom on a list as a whole, and often put together from a few words that are.
 */
final class CommonPasswords {
    /** With fewer letters and figures of its own than this, a password is as good as its common words. */
    private static final int LEAST_OWN = 5;
    private static final List<String> ROWS = List.of("01234567890123456789", "98765432109876543210", "abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "asdfghjkl", "zxcvbnm");
    private static final List<String> WORDS = words();

    private CommonPasswords() { }

    static boolean isOne(String password) {
        String lower = password.toLowerCase(Locale.ROOT);
        return Math.min(own(lower), own(letters(lower))) < LEAST_OWN;
    }

    /** How many of its characters belong to no common word, row of keys, year or repetition, at the least; blanks and signs never do. */
    private static int own(String text) {
        int[] least = new int[text.length() + 1];
        for (int i = 1; i <= text.length(); i++) {
            least[i] = least[i - 1] + (Character.isLetterOrDigit(text.charAt(i - 1)) ? 1 : 0);
            for (int from = Math.max(0, i - 20); from <= i - 3; from++) {
                if (isCommon(text.substring(from, i))) {
                    least[i] = Math.min(least[i], least[from]);
                }
            }
        }
        return least[text.length()];
    }

    private static boolean isCommon(String piece) {
        return WORDS.contains(piece) || ROWS.stream().anyMatch(row -> row.contains(piece)) || piece.matches("(19|20)\\d\\d") || piece.chars().distinct().count() == 1;
    }

    private static String letters(String text) {
        return text.replace('0', 'o').replace('1', 'i').replace('3', 'e').replace('4', 'a').replace('5', 's').replace('7', 't').replace('@', 'a').replace('$', 's').replace('!', 'i');
    }

    private static List<String> words() {
        try (InputStream list = CommonPasswords.class.getResourceAsStream("/board/common-passwords.txt")) {
            return new String(list.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the list of common passwords inside the program cannot be read", e);
        }
    }
}
