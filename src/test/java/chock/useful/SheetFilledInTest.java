package chock.useful;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessor;
import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.SheetTakenIn;
import chock.report.SessionSheet;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The single of 1972 from nothing to a released road test by the printed sessions, and what has to be typed on them. */
@Tag("slow")
class SheetFilledInTest {
    /** 3,072 was the mark; seat, plate, reflector and the mark on the silencer came to be asked, and take 47 more. */
    private static final int MOST_TYPED = 3_120;
    private static final HonestRecord HONEST = HonestHistory.of(ModelSheets.singleOf1972(), List.of("road-test"), false);

    /** Fills blanks in as a shop would, and counts what it types. */
    private static final class Hand {
        private final List<String> typed = new ArrayList<>();
        private final List<String> blank = new ArrayList<>();
        private LocalDateTime clock;

        Hand(LocalDateTime clock) {
            this.clock = clock;
        }

        String fill(String sheet) {
            StringBuilder filled = new StringBuilder();
            String part = "";
            boolean instruments = false;
            boolean work = false;
            for (String line : sheet.split("\n")) {
                String key = line.strip().replaceFirst(":.*", "");
                if (line.startsWith("  #")) {
                    work = line.endsWith(": work.");
                }
                if (line.strip().startsWith("#") || !line.startsWith("    ")) {
                    filled.append(line);
                } else if (line.startsWith("      ")) {
                    filled.append(answered(line, instruments ? tool(key) : answer(part, key)));
                } else if (key.equals("at")) {
                    clock = clock.plusMinutes(20);
                    filled.append(answered(line, clock.toString().replace('T', ' ')));
                } else if (key.equals("by")) {
                    filled.append(answered(line, work ? "tom" : "ida"));
                } else {
                    instruments = key.equals("with");
                    part = key;
                    filled.append(line);
                }
                filled.append('\n');
            }
            return filled.toString();
        }

        private String answered(String line, String answer) {
            if (answer == null) {
                blank.add(line.strip());
                return line;
            }
            typed.add(answer);
            return line.replaceFirst(":.*", ": ") + answer;
        }

        private static String tool(String what) {
            return HONEST.lines().stream().filter(l -> l.what().equals(what) && l.with() != null).map(HonestRecord.Line::with).findFirst().orElse(null);
        }

        private static String answer(String part, String key) {
            List<String> words = List.of(key.split(" "));
            String what = words.get(words.size() - 1);
            boolean kind = words.size() > 1 && List.of("tried", "seen", "told", "done").contains(words.get(words.size() - 2));
            int place = words.size() - (kind ? 2 : 1);
            String point = place == 0 ? part : part + "/" + words.get(0);
            return HONEST.lines().stream().filter(l -> l.place().equals(point) && l.what().equals(what)).reduce((a, b) -> b)
                    .map(l -> l.is() == null ? "yes" : l.is().matches("[A-Za-z0-9][A-Za-z0-9 ./°±%·Ωµ+-]*") ? l.is().replace("N·m", "Nm") : TextNode.valueOf(l.is()).toString()).orElse(null);
        }
    }

    @Test
    void aWholeMachineTakesLittleMoreThanThreeKilobytesOfAnswers() {
        byte[] record = HONEST.with(List.of()).text();
        record = new String(record, StandardCharsets.UTF_8).replace("entries:\n", "entries: []\n").getBytes(StandardCharsets.UTF_8);
        JobRecord blank = RecordReader.read("r.yaml", record, HonestRecord.BOOK.vocabulary(), HONEST.moment());
        String sheet = SessionSheet.of(OrderOfWork.of(blank, HonestRecord.BOOK, Gate.ROAD_TEST, HONEST.moment()), HonestRecord.BOOK);
        assertThat(sheet.lines()).allMatch(line -> line.length() <= 120);
        Hand hand = new Hand(HONEST.asOf().minusMinutes(118));
        String filled = hand.fill(sheet);

        SheetTakenIn taken = SheetTakenIn.of("sheet.yaml", filled.getBytes(StandardCharsets.UTF_8), "r.yaml", record, HonestRecord.BOOK.vocabulary(), HONEST.moment());
        assertThat(taken.refused()).isEmpty();
        JobRecord read = RecordReader.read("r.yaml", taken.record(), HonestRecord.BOOK.vocabulary(), HONEST.moment());
        assertThat(read.entries()).hasSameSizeAs(taken.entries());
        Map<String, String> open = new LinkedHashMap<>();
        Assessor.assess(read, HonestRecord.BOOK, read.seeks(), HONEST.moment()).gates().get(0).open().forEach(f -> open.put(f.check(), f.state() + ": " + f.says()));
        int bytes = String.join("\n", hand.typed).getBytes(StandardCharsets.UTF_8).length;
        assertThat(open).isEmpty();
        assertThat(bytes).isLessThanOrEqualTo(MOST_TYPED);

        // The same sheet again adds nothing.
        SheetTakenIn again = SheetTakenIn.of("sheet.yaml", filled.getBytes(StandardCharsets.UTF_8), "r.yaml", taken.record(), HonestRecord.BOOK.vocabulary(), HONEST.moment());
        assertThat(again.entries()).isEmpty();
        assertThat(again.refused()).isEmpty();
        assertThat(again.there()).isEqualTo(taken.entries().size());
        assertThat(again.record()).isEqualTo(taken.record());
    }
}
