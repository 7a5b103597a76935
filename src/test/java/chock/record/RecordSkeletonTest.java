package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RecordSkeletonTest {
    private final String form = RecordSkeleton.yaml(Words.VOCABULARY);

    /** What stands in each blank, in the order of the form. */
    private static final List<String> ANSWERS = List.of("HV-0143", "Hollow Vale Motor Works", "Europe/London", "GB", "no", "[road-test]",
            "Tarnbeck", "Lark 250", "TB25-10383", "none", "motorcycle", "1974", "1974-06-14", "120 km/h", "2",
            "two-stroke", "246 cc", "1", "premix", "points", "air", "drum", "cable", "0", "riveted", "yes", "drum", "rod", "0", "riveted", "yes", "no",
            "steel", "yes", "yes", "steel", "yes", "yes", "chain", "6",
            "kick", "1", "manual", "cable", "girder", "rigid", "yes", "no", "yes", "1", "2", "no", "unknown", "wet", "yes", "no", "Lark 250 rider's handbook", "4", "ida", "drum", "[]", "[tyres.pressure]", "ida", "Ida Marrow", "inspector",
            "cal-1", "caliper", "by-kind", "2026-03-02", "2027-03-02", "e1", "2026-11-20 09:40", "ida", "front-wheel/tyre", "condition", "sound", "[]");

    /** Lines of keys with nothing behind them, which are not the head of lines indented further. */
    private List<Integer> blanks() {
        List<String> lines = form.lines().toList();
        return IntStream.range(0, lines.size()).filter(i -> lines.get(i).matches(" *(- )?[a-z.-]+:( *#.*)?"))
                .filter(i -> !isHead(lines, i)).mapToObj(i -> i + 1).toList();
    }

    private static boolean isHead(List<String> lines, int at) {
        return lines.subList(at + 1, lines.size()).stream().filter(l -> !l.isBlank() && !l.strip().startsWith("#")).findFirst()
                .filter(next -> indent(next) > indent(lines.get(at))).isPresent();
    }

    private static int indent(String line) {
        return line.replaceFirst("- ", "  ").length() - line.replaceFirst("- ", "  ").stripLeading().length();
    }

    @Test
    void everyBlankIsRefusedAndNothingElse() {
        UnusableInput refusal = catchThrowableOfType(UnusableInput.class, () -> Words.read(form));
        assertThat(blanks()).hasSameSizeAs(ANSWERS);
        assertThat(refusal.faults()).extracting(Fault::line).containsExactlyElementsOf(blanks());
        assertThat(refusal.faults()).allSatisfy(f -> assertThat(f.what()).isEqualTo("this is empty"));
    }

    @Test
    void filledInItIsARecord() {
        String[] lines = form.split("\n");
        List<Integer> blanks = blanks();
        for (int i = 0; i < blanks.size(); i++) {
            String line = lines[blanks.get(i) - 1];
            lines[blanks.get(i) - 1] = line.substring(0, line.indexOf(':') + 1) + " " + ANSWERS.get(i);
        }
        JobRecord record = Words.read(String.join("\n", lines));
        assertThat(record.id()).isEqualTo("HV-0143");
        assertThat(record.entry("e1").orElseThrow().is()).isEqualTo(new Value.Answer("sound"));
    }

    @Test
    void everyWordOfTheRuleBookIsListed() {
        assertThat(form).contains(Words.VOCABULARY.points()).contains(Words.VOCABULARY.aspects().keySet()).contains(Words.VOCABULARY.works().keySet())
                .contains(Words.VOCABULARY.instruments().keySet()).contains(Words.VOCABULARY.limits().keySet()).contains("condition (cracked or sound or twisted)");
    }
}
