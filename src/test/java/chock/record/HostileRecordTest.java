package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bytes that mean harm, or that somebody's disk made up. */
@Timeout(60)
class HostileRecordTest {

    private static UnusableInput refusal(byte[] bytes) {
        UnusableInput refusal = catchThrowableOfType(UnusableInput.class, () -> Words.read(bytes));
        assertThat(refusal).as("must be refused").isNotNull();
        return refusal;
    }

    private static UnusableInput refusal(String text) {
        return refusal(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aliasesAreNotFollowed() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            // Ten times the line before: 10 000 000 000 values, if anybody followed them.
            bomb.append("a").append(i).append(": &a").append(i).append(" [").append(String.join(", ", Collections.nCopies(10, "*a" + (i - 1)))).append("]\n");
        }
        assertThat(refusal(bomb.toString()).faults()).filteredOn(f -> f.what().startsWith("an alias")).hasSize(90);
    }

    @Test
    void mergeKeyIsRefused() {
        assertThat(refusal(Words.good().replace("front-wheel: {", "front-wheel: &w {").replace("rear-wheel: {", "rear-wheel: {<<: *w, ")))
                .hasMessageContaining("an alias (*) stands here").hasMessageContaining("'<<' is not known here");
    }

    @Test
    void aTooLargeFileIsRefusedUnread() {
        byte[] large = new byte[6_000_000];
        Arrays.fill(large, (byte) '[');
        assertThat(refusal(large)).hasMessage("record.yaml: the file is 6000000 bytes; at most 5 MB (5000000 bytes) are read. A record is of one machine; keep pictures and papers beside it");
    }

    @Test
    void aLargeFileOfCommentsIsRead() {
        String text = Words.good() + "# nothing\n".repeat(400_000);
        assertThat(Words.read(text).id()).isEqualTo("HV-0142");
    }

    @Test
    void tooManyValuesAreRefused() {
        assertThat(refusal("chock: [" + "1,".repeat(200_000) + "1]")).hasMessageContaining("more than 100,000 values");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x: %s1%s", "{\"x\": %s1%s}"})
    void depth200IsRefused(String form) {
        assertThat(refusal(form.formatted("[".repeat(200), "]".repeat(200)))).hasMessageContaining("nested more than 12 deep");
        assertThat(refusal(form.formatted("{\"a\":".repeat(200), "}".repeat(200)))).hasMessageContaining("nested more than 12 deep");
    }

    @Test
    void depthOf100000OpenBracketsIsRefused() {
        assertThat(refusal("[".repeat(100_000))).hasMessageContaining("nested more than 12 deep");
    }

    @Test
    void depthUnderADoubledKeyIsRefusedToo() {
        assertThat(refusal("x: 1\nx: " + "[".repeat(5000) + "]".repeat(5000)).faults()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
    void utf16IsRefusedByName(String name) {
        assertThat(refusal(Words.good().getBytes(Charset.forName(name)))).hasMessage("record.yaml: the file is in UTF-16. Save it as UTF-8");
    }

    @Test
    void randomBytesAreRefused() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            byte[] bytes = new byte[1 + random.nextInt(400)];
            random.nextBytes(bytes);
            assertThat(refusal(bytes).faults()).isNotEmpty();
        }
    }

    @Test
    void emptyBytesAreRefused() {
        assertThat(refusal(new byte[0])).hasMessageContaining("the file is empty");
        assertThat(refusal(" \n\n")).hasMessageContaining("the file is empty");
    }

    @Test
    void aSecondDocumentIsRefusedEvenWhenItIsGood() {
        assertThat(refusal(Words.good() + "---\n" + Words.good())).hasMessageContaining("a second document begins here");
        assertThat(refusal(Words.good() + "---\n")).hasMessageContaining("a second document begins here");
        assertThat(refusal(new String(Words.bytes("good.json"), StandardCharsets.UTF_8) + "{}")).hasMessageContaining("a second document begins here");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", ".nan", ".NaN", ".inf", "-.inf", "Infinity", "-Infinity"})
    void whatIsNotANumberIsRefused(String word) {
        assertThat(refusal(Words.good().replace("volts: 6", "volts: " + word)).faults()).extracting(Fault::path, Fault::what)
                .containsExactly(tuple("machine.volts", "'" + word + "' is not a number"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity"})
    void whatIsNotANumberIsRefusedInJson(String word) {
        String json = new String(Words.bytes("good.json"), StandardCharsets.UTF_8).replace("\"volts\": 6", "\"volts\": " + word);
        assertThat(refusal(json)).hasMessageContaining("machine.volts: '" + word + "' is not a number");
    }

    /** Set when anything in a file brings it to life. */
    public static final class Trap {
        static volatile boolean sprung;

        public Trap() {
            spring();
        }

        public Trap(String text) {
            spring();
        }

        private static void spring() {
            sprung = true;
        }
    }

    @Test
    void tagsMakeNothing() {
        Trap.sprung = false;
        String trap = "!!" + Trap.class.getName();
        for (String value : List.of(trap + " {}", trap + " []", trap + " [x]", trap + " x", "!!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[]]]",
                "!<tag:yaml.org,2002:" + Trap.class.getName() + "> x", "!local x", "!!binary AAAA")) {
            assertThat(refusal(Words.good().replace("marque: Tarnbeck", "marque: " + value))).as(value).hasMessageContaining("a tag (!) stands here");
        }
        assertThat(refusal(trap + "\n" + Words.good())).hasMessageContaining("a tag (!) stands here");
        assertThat(refusal("%TAG ! tag:yaml.org,2002:\n---\n" + Words.good().replace("marque: Tarnbeck", "marque: !" + Trap.class.getName() + " x"))).hasMessageContaining("a tag (!) stands here");
        assertThat(Trap.sprung).isFalse();
    }

    @Test
    void messagesCarryNoControlCharacters() {
        UnusableInput refusal = refusal(Words.good().replace("drive: chain", "\"dr\\e[31mive\\n\": \"\\u202Echain\""));
        assertThat(refusal.getMessage().lines()).allSatisfy(line -> assertThat(line).startsWith("record.yaml").doesNotContainPattern("[\\p{Cntrl}\\p{Cf}]"));
    }

    @Test
    void damagedFilesGiveARecordOrARefusal() {
        byte[] yaml = Words.bytes("good.yaml");
        byte[] json = Words.bytes("good.json");
        Random random = new Random(20_261_125);
        int refused = 0;
        for (int i = 0; i < 2_000; i++) {
            byte[] bytes = damaged(i % 2 == 0 ? yaml : json, random);
            Throwable thrown = catchThrowable(() -> Words.read(bytes));
            if (thrown != null) {
                assertThat(thrown).as("mutation %d: %s", i, new String(bytes, StandardCharsets.UTF_8)).isInstanceOf(UnusableInput.class);
                assertThat(((UnusableInput) thrown).faults()).isNotEmpty();
                refused++;
            }
        }
        // Both must have happened, or the damage was too small or too great to show anything.
        assertThat(refused).isBetween(500, 1_990);
    }

    private static byte[] damaged(byte[] good, Random random) {
        byte[] bytes = good.clone();
        String signs = "{}[]:,-#&*!|>'\"%@`\n \t?~0159ae±\u0000\u00ff";
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(bytes.length);
            int to = Math.min(bytes.length, at + 1 + random.nextInt(random.nextBoolean() ? 3 : 200));
            byte[] sign = String.valueOf(signs.charAt(random.nextInt(signs.length()))).getBytes(StandardCharsets.UTF_8);
            byte[] middle = switch (random.nextInt(5)) {
                case 0 -> new byte[0];
                case 1 -> sign;
                case 2 -> joined(sign, Arrays.copyOfRange(bytes, at, to));
                case 3 -> joined(Arrays.copyOfRange(bytes, at, to), Arrays.copyOfRange(bytes, at, to));
                default -> new byte[] {(byte) random.nextInt(256)};
            };
            bytes = joined(joined(Arrays.copyOf(bytes, at), middle), Arrays.copyOfRange(bytes, to, bytes.length));
            if (bytes.length == 0) {
                return sign;
            }
        }
        return bytes;
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
