package chock.useful;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.GateVerdict;
import chock.assess.OrderOfWork;
import chock.assess.State;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A job record as text: everything above the entries, and the entries one to a line. It is judged by what the program reads out
 * of that text.
 *
 * @param sheet the machine
 * @param gates the gates it seeks
 * @param head the blocks of the file before its entries
 * @param lines the entries
 * @param asOf the moment of judgement, as the clock of the shop shows it
 */
record HonestRecord(ModelSheet sheet, List<String> gates, ObjectNode head, List<Line> lines, LocalDateTime asOf) {
    static final RuleBook BOOK = RuleBook.shipped();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    /** One entry: {@code more} holds the keys only some have. */
    record Line(String id, LocalDateTime at, String by, String place, String verb, String what, String is, String with, Map<String, String> more) {
        String key() {
            return place + " " + what;
        }

        boolean isWork() {
            return verb.equals("done");
        }

        Line saying(String other) {
            return new Line(id, at, by, place, verb, what, other, with, more);
        }

        Line at(LocalDateTime other) {
            return new Line(id, other, by, place, verb, what, is, with, more);
        }

        Line by(String other) {
            return new Line(id, at, other, place, verb, what, is, with, more);
        }

        Line named(String other) {
            return new Line(other, at, by, place, verb, what, is, with, more);
        }

        Line and(String key, String value) {
            Map<String, String> all = new LinkedHashMap<>(more);
            all.put(key, value);
            return new Line(id, at, by, place, verb, what, is, with, all);
        }

        private String json() {
            ObjectNode node = JSON.createObjectNode().put("id", id).put("at", MINUTE.format(at)).put("by", by).put("point", place).put(verb, what);
            if (is != null) {
                node.put("is", is);
            }
            if (with != null) {
                node.put("with", with);
            }
            more.forEach(node::put);
            return node.toString();
        }
    }

    HonestRecord with(List<Line> other) {
        return new HonestRecord(sheet, gates, head, List.copyOf(other), asOf);
    }

    HonestRecord with(ObjectNode otherHead) {
        return new HonestRecord(sheet, gates, otherHead, lines, asOf);
    }

    HonestRecord and(List<Line> added) {
        List<Line> all = new ArrayList<>(lines);
        all.addAll(added);
        return with(all);
    }

    HonestRecord judgedAt(LocalDateTime other) {
        return new HonestRecord(sheet, gates, head, lines, other);
    }

    /** The last entry of this kind at this place. */
    Line last(String place, String what) {
        return lines.stream().filter(l -> l.key().equals(place + " " + what)).reduce((a, b) -> b).orElseThrow(() -> new IllegalStateException("no entry " + what + " at " + place));
    }

    byte[] text() {
        StringBuilder text = new StringBuilder();
        head.properties().forEach(block -> text.append(block.getKey()).append(": ").append(block.getValue()).append('\n'));
        text.append("entries:\n");
        lines.forEach(line -> text.append("  - ").append(line.json()).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    Instant moment() {
        return asOf.atZone(ZoneId.of(sheet.zone())).toInstant();
    }

    JobRecord read() {
        return RecordReader.read("record.yaml", text(), BOOK.vocabulary(), moment());
    }

    Assessment judged() {
        JobRecord record = read();
        return Assessor.assess(record, BOOK, record.seeks(), moment());
    }

    /** The verdict at one gate alone. */
    GateVerdict at(Gate gate) {
        return Assessor.assess(read(), BOOK, List.of(gate), moment()).gates().get(0);
    }

    /** What the program says remains for one gate, in its order. */
    OrderOfWork order(Gate gate) {
        return OrderOfWork.of(read(), BOOK, gate, moment());
    }

    /** What blocks it, a line a check; empty when every gate it seeks is released. */
    List<String> blockedBy() {
        return judged().gates().stream().flatMap(HonestRecord::open).distinct().toList();
    }

    static Stream<String> open(GateVerdict gate) {
        List<String> open = gate.open().stream().filter(f -> f.state() != State.MET).map(f -> f.check() + " " + f.state() + ": " + f.says()).collect(Collectors.toList());
        gate.ruleBookFaults().forEach(open::add);
        if (open.isEmpty() && !gate.released()) {
            open.add("blocked at " + gate.gate().id() + " without a finding");
        }
        return open.stream();
    }

    boolean released() {
        return judged().allReleased();
    }
}
