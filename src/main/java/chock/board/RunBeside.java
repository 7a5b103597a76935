package chock.board;

import chock.board.store.Accounts.Account;
import chock.board.store.Kept;
import chock.board.store.Summary;
import chock.record.JobRecord;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;

/**
 * What another machine in the room is told when an engine was run there: what was read of the room before no longer counts.
 *
 * @param kept the other record, before
 * @param next the same with the line
 * @param sheet what stands above its entries, when its people change, else null
 * @param line the line
 * @param record the record with it, as read
 * @param after how it is judged then
 */
record RunBeside(Kept kept, Kept next, ObjectNode sheet, List<ObjectNode> line, JobRecord record, Summary after) {
    private static final String WORK = "run-beside";
    private static final Set<String> READ_OF_A_RUN = Set.of("peak", "run-minutes");
    private static final Set<String> READ_OF_THE_ROOM = Set.of("background", "peak", "other-engines");

    /** Somebody wrote to the other machine between reading it and telling it. */
    static final class WrittenMeanwhile extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final String machine;

        WrittenMeanwhile(String machine) {
            super(machine, null, false, false);
            this.machine = machine;
        }

        String machine() {
            return machine;
        }
    }

    /** True when lines say that an engine was run under the roof. */
    static boolean isRun(List<ObjectNode> lines) {
        return lines.stream().anyMatch(line -> line.path("point").asText().equals("room/run") && READ_OF_A_RUN.contains(line.path("measured").asText(line.path("seen").asText())));
    }

    /** True when nothing was read of the room since the last run beside it. */
    static boolean isToldAlready(Kept kept) {
        boolean told = true;
        for (ObjectNode entry : kept.entries()) {
            String what = entry.path("measured").asText(entry.path("seen").asText());
            if (entry.path("done").asText().equals(WORK)) {
                told = true;
            } else if (entry.path("point").asText().startsWith("room") && READ_OF_THE_ROOM.contains(what)) {
                told = false;
            }
        }
        return told;
    }

    /** The writer as the other record can name them: where their id stands for somebody else there, under another id. */
    static Account as(Account by, JobRecord record) {
        String id = by.id();
        for (int n = 2; isAnother(id, by.name(), record); n++) {
            id = by.id() + "-" + n;
        }
        return id.equals(by.id()) ? by : new Account(id, by.name(), by.role(), null, false, true);
    }

    private static boolean isAnother(String id, String name, JobRecord record) {
        return record.people().stream().anyMatch(person -> person.id().equals(id) && !person.name().equals(name));
    }

    /** The line. It is dated when it is written: what was read between the run and that is read again, which is the safe side. */
    static ObjectNode line(String runner) {
        ObjectNode line = JsonNodeFactory.instance.objectNode();
        line.put("point", "room").put("done", WORK).put("note", runner + " was run in this room");
        return line;
    }
}
