package chock.useful;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessor;
import chock.record.JobRecord;
import chock.record.RecordReader;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What it takes to bring the single of 1972 from nothing to a released road test in a file. */
@Tag("slow")
class SessionsByFileTest {
    private static final int MOST_LINES = 90;
    /** 9,400 until seat, plate, reflector and the mark on the silencer came to be asked. */
    private static final int MOST_BYTES = 9600;

    private static final String[][] NAMES = {{"caliper", "cal-1"}, {"micrometer", "mic-1"}, {"dial-indicator", "dial-1"}, {"depth-gauge", "tread-1"}, {"steel-rule", "rule-1"},
        {"protractor", "prot-1"}, {"pressure-gauge", "gauge-1"}, {"scale", "scale-1"}, {"timer", "watch-1"}, {"thermometer", "therm-1"}, {"multimeter", "meter-1"},
        {"compression-gauge", "comp-1"}, {"feeler-gauge", "feel-1"}, {"tachometer", "tach-1"}, {"beam-setter", "beam-1"}, {"timing-disc", "disc-1"}, {"torque-wrench", "wren-1"}};

    @Test
    void aWholeMachineTakesAtMostNinetyLines() throws Exception {
        HonestRecord record = HonestHistory.of(ModelSheets.singleOf1972(), List.of("road-test"), false);
        ArrayNode entries = new ObjectMapper().createArrayNode();
        for (HonestRecord.Line line : record.lines()) {
            ObjectNode entry = node(record, line);
            if (entry.has("with")) {
                entry.put("with", shortName(entry.get("with").asText()));
            }
            entries.add(entry);
        }
        AsSessions.Typed typed = AsSessions.of(entries);
        assertThat(typed.rest()).isEmpty();
        StringBuilder text = new StringBuilder();
        record.head().properties().forEach(block -> text.append(block.getKey()).append(": ").append(block.getValue()).append('\n'));
        String sessions = typed.sessions();
        String whole = shortNames(text.toString()) + "entries: []\n" + sessions;
        JobRecord read = RecordReader.read("typed.yaml", whole.getBytes(StandardCharsets.UTF_8), HonestRecord.BOOK.vocabulary(), record.moment());
        assertThat(read.entries()).hasSameSizeAs(record.lines());
        assertThat(Assessor.assess(read, HonestRecord.BOOK, read.seeks(), record.moment()).allReleased()).isTrue();
        List<String> lines = sessions.lines().toList();
        assertThat(lines).allMatch(line -> line.length() <= 120).hasSizeLessThanOrEqualTo(MOST_LINES);
        assertThat(sessions.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(MOST_BYTES);
    }

    /** The generator calls each instrument by its kind; a shop calls it cal-1. */
    private static String shortName(String kind) {
        return Arrays.stream(NAMES).filter(name -> name[0].equals(kind)).map(name -> name[1]).findFirst().orElse(kind);
    }

    private static String shortNames(String text) {
        String named = text;
        for (String[] name : NAMES) {
            named = named.replace("\"id\":\"" + name[0] + "\"", "\"id\":\"" + name[1] + "\"");
        }
        return named;
    }

    private static ObjectNode node(HonestRecord record, HonestRecord.Line line) throws Exception {
        String text = new String(record.with(List.of(line)).text(), StandardCharsets.UTF_8);
        return (ObjectNode) new ObjectMapper().readTree(text.substring(text.indexOf("  - {") + 4));
    }
}
