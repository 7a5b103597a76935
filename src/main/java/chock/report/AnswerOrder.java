package chock.report;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.CRC32;

/**
 * The order in which answers are offered, on the screen and on paper: worked out from their letters, which know nothing of good and
 * bad. The same question has its answers in the same order at every place; in the order of the alphabet the good one would be the last
 * too often.
 */
public final class AnswerOrder {
    private AnswerOrder() { }

    public static List<String> mixed(String question, Stream<String> answers) {
        return new TreeSet<>(answers.toList()).stream().sorted(Comparator.comparingLong((String answer) -> sum(question + " " + answer)).thenComparing(answer -> answer)).toList();
    }

    private static long sum(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }
}
