package chock.note;

import chock.assess.Subjects;
import chock.note.Note.Candidate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A sentence and what it has to become. */
record Spoken(String sentence, Set<String> proposals, List<String> asked, boolean unknown, boolean anything) {
    static final RuleBook BOOK = RuleBook.shipped();
    static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");

    static JobRecord record(String example) {
        try {
            return RecordReader.read(example, Files.readAllBytes(Path.of("docs/examples", example)), BOOK.vocabulary(), DAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static NoteReading reading(String example) {
        JobRecord record = record(example);
        return NoteReading.of(record, BOOK, Subjects.of(record, BOOK, DAY));
    }

    static List<Spoken> all(String file) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/note", file)).stream().filter(line -> !line.isBlank() && !line.startsWith("#")).map(Spoken::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Spoken of(String line) {
        String[] halves = line.split("\\|");
        Set<String> proposals = new TreeSet<>();
        List<String> asked = new ArrayList<>();
        boolean unknown = false;
        boolean anything = false;
        for (String part : halves[1].split(";")) {
            String one = part.strip();
            switch (one.charAt(0)) {
                case '+' -> proposals.add(one.substring(1));
                case '?' -> asked.add(one.substring(1));
                case '-' -> unknown = true;
                case '*' -> anything = true;
                default -> throw new IllegalArgumentException(line);
            }
        }
        return new Spoken(halves[0].strip(), proposals, asked, unknown, anything);
    }

    static String told(Candidate one) {
        return one.point() + " " + one.kind() + " " + one.what() + (one.is() == null ? "" : " " + one.is()) + (one.with() == null ? "" : " with " + one.with());
    }

    private static Set<String> proposed(Note note) {
        Set<String> proposed = new TreeSet<>();
        note.proposals().forEach(one -> proposed.add(told(one.entry())));
        return proposed;
    }

    boolean isRight(Note note) {
        boolean plain = !anything && !unknown && asked.isEmpty();
        return proposed(note).equals(proposals) && asked.stream().allMatch(want -> note.choices().stream().anyMatch(choice -> choice.candidates().stream().anyMatch(one -> told(one).equals(want))))
                && (!unknown || !note.unknown().isEmpty()) && (!plain || note.choices().isEmpty() && note.unknown().isEmpty());
    }

    /** What is proposed and is no meaning of the sentence at all. */
    Set<String> wrong(Note note) {
        Set<String> wrong = proposed(note);
        wrong.removeAll(proposals);
        return wrong;
    }
}
