package chock.report;

import chock.assess.Subjects;
import chock.note.Note;
import chock.note.Note.Candidate;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/** What a note may mean, as text and as JSON. */
public final class NoteReport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private NoteReport() { }

    /** {@code {proposals: [{point, kind, what, is, with, said}], choices: [{said, candidates: [{point, kind, what, is}]}], unknown: [said]}}. */
    public static ObjectNode json(Note note) {
        ObjectNode json = NODES.objectNode();
        ArrayNode proposals = json.putArray("proposals");
        note.proposals().forEach(one -> proposals.add(entry(one.entry()).put("with", one.entry().with()).put("said", one.said())));
        ArrayNode choices = json.putArray("choices");
        note.choices().forEach(choice -> {
            ObjectNode node = choices.addObject().put("said", choice.said());
            ArrayNode candidates = node.putArray("candidates");
            choice.candidates().forEach(one -> candidates.add(entry(one)));
        });
        ArrayNode unknown = json.putArray("unknown");
        note.unknown().forEach(unknown::add);
        return json;
    }

    private static ObjectNode entry(Candidate one) {
        return NODES.objectNode().put("point", one.point()).put("kind", one.kind()).put("what", one.what()).put("is", one.is());
    }

    /** One entry on a line: {@code front-brake/control, tried: lever-feel firm}. */
    public static String words(Candidate one) {
        return one.point() + ", " + one.kind() + ": " + one.what() + (one.is() == null ? "" : " " + one.is()) + (one.with() == null ? "" : " with " + one.with());
    }

    /** For the terminal. */
    public static String text(Note note, Subjects subjects) {
        StringBuilder text = new StringBuilder();
        Set<String> toProve = new TreeSet<>();
        if (!note.proposals().isEmpty()) {
            text.append("PROPOSED: nothing is written yet\n");
            note.proposals().forEach(one -> text.append("  + ").append(words(one.entry())).append("\n      said: ").append(one.said()).append('\n'));
        }
        note.choices().forEach(choice -> {
            text.append("ASKED: ").append(choice.said()).append('\n');
            choice.candidates().forEach(one -> text.append("  ? ").append(words(one)).append('\n'));
            choice.candidates().stream().filter(one -> one.kind().equals("told")).forEach(one -> toProve.addAll(subjects.undoneBy(one.point(), one.what())));
        });
        note.unknown().forEach(one -> text.append("NOT UNDERSTOOD: ").append(one).append('\n'));
        note.proposals().stream().filter(one -> one.entry().kind().equals("done")).forEach(one -> toProve.addAll(subjects.undoneBy(one.entry().point(), one.entry().what())));
        return text + toProve(toProve);
    }

    /** What work undoes, and is to be proven after it. */
    public static String toProve(Collection<String> keys) {
        return keys.isEmpty() ? "" : "TO PROVE after this work:\n" + String.join("", keys.stream().map(key -> "  - " + key + "\n").toList());
    }
}
