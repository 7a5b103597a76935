package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.assess.Subjects;
import chock.note.Note;
import chock.note.Note.Candidate;
import chock.note.NoteReading;
import chock.record.JobRecord;
import chock.record.ReadAs;
import chock.record.RecordAdded;
import chock.record.RecordForm;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.report.Json;
import chock.report.NoteReport;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A spoken or typed line as proposed entries. */
@Command(name = "note", sortOptions = false, description = "Turn a spoken or typed line into proposed entries. What is not understood to its last word is asked; nothing is written before it is confirmed.",
        footer = {"", "Exit status: 0 everything was understood, or written; 1 something is asked or not understood; 2 unusable input or usage; 3 chock itself failed."})
final class NoteCommand implements Callable<Integer> {
    private static final int LONGEST = 4000;

    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;
    @Mixin private HouseOption house;

    @Parameters(index = "0", paramLabel = "RECORD", description = "Job record in YAML or JSON.")
    private String file;

    @Parameters(index = "1", paramLabel = "NOTE", description = "What was said, in quotes.")
    private String note;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "text or json. Default: text.")
    private String format;

    @Option(names = "--write", description = "Ask about each proposal and choice, and add what is confirmed to the record.")
    private boolean write;

    @Option(names = "--by", paramLabel = "ID", description = "Who writes; asked for with --write when it is left out.")
    private String by;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class, description = "As of this moment. Default: now.")
    private AsOf asOf;

    private BufferedReader answers;

    NoteCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (!format.equals("text") && !format.equals("json") || write && format.equals("json")) {
            throw new ParameterException(spec.commandLine(), write ? "--write asks on the terminal; leave --format out." : "A note comes as text or json.");
        }
        if (note.length() > LONGEST) {
            throw UnusableInput.of("the note", "it has " + note.length() + " letters", "Say it in several notes of at most " + LONGEST + " letters");
        }
        RuleBook book = house.inForce(bench);
        byte[] bytes = bench.read(file);
        Judging.Read read = new Records(bench, book, asOf).read(Bench.name(file), bytes);
        Subjects subjects = Subjects.of(read.record(), book, read.asOf());
        Note understood = NoteReading.of(read.record(), book, subjects).read(note);
        if (write) {
            return written(book, bytes, read, subjects, understood);
        }
        bench.print(format.equals("json") ? Json.pretty(NoteReport.json(understood)) : NoteReport.text(understood, subjects));
        return understood.choices().isEmpty() && understood.unknown().isEmpty() ? Bench.RELEASED : Bench.BLOCKED;
    }

    private int written(RuleBook book, byte[] bytes, Judging.Read read, Subjects subjects, Note understood) {
        if (file.equals("-") || read.record().form() < 2) {
            throw UnusableInput.of(Bench.name(file), "nothing can be written there", file.equals("-") ? "Name the record file" : "Write " + RecordForm.name(2) + " on its first line");
        }
        answers = new BufferedReader(new InputStreamReader(bench.in(), StandardCharsets.UTF_8));
        String writer = by == null ? asked("Who writes? (" + String.join(", ", read.record().people().stream().map(person -> person.id()).toList()) + ") ") : by;
        Writing writing = new Writing(book, bytes, read, writer);
        for (Note.Proposal one : understood.proposals()) {
            if (asked(NoteReport.words(one.entry()) + "\n  said: " + one.said() + "\n  Write it? [y/N] ").equalsIgnoreCase("y")) {
                writing.add(one.entry(), one.said());
            }
        }
        for (Note.Choice choice : understood.choices()) {
            StringBuilder question = new StringBuilder("said: " + choice.said() + "\n");
            for (int i = 0; i < choice.candidates().size(); i++) {
                question.append("  ").append(i + 1).append(". ").append(NoteReport.words(choice.candidates().get(i))).append('\n');
            }
            String number = asked(question + "  Which is true of the machine now? [number, blank for none] ");
            if (number.matches("\\d{1,2}") && Integer.parseInt(number) >= 1 && Integer.parseInt(number) <= choice.candidates().size()) {
                writing.add(choice.candidates().get(Integer.parseInt(number) - 1), choice.said());
            }
        }
        understood.unknown().forEach(one -> bench.print("Not understood: " + one + "\n"));
        return writing.done(subjects);
    }

    private String asked(String question) {
        bench.print(question);
        bench.out().flush();
        try {
            String line = answers.readLine();
            return line == null ? "" : line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException("the terminal cannot be read", e);
        }
    }

    /** The entries that are confirmed, each tried as it would be written before it counts. */
    private final class Writing {
        private final RuleBook book;
        private final byte[] before;
        private final Judging.Read read;
        private final String writer;
        private final int plain;
        private final List<ObjectNode> entries = new ArrayList<>();
        private final Set<String> toProve = new TreeSet<>();
        private final List<Candidate> works = new ArrayList<>();

        Writing(RuleBook book, byte[] before, Judging.Read read, String writer) {
            this.book = book;
            this.before = before;
            this.read = read;
            this.writer = writer;
            this.plain = RecordAdded.entriesOf(file, before);
        }

        void add(Candidate one, String said) {
            if (one.kind().equals("told") && book.vocabulary().works().containsKey(one.what())) {
                past(one);
                return;
            }
            String with = one.with();
            if (with == null && (one.kind().equals("measured") || one.kind().equals("done") && one.is() != null)) {
                with = asked("  With which instrument? (" + String.join(", ", read.record().instruments().stream().map(tool -> tool.id()).toList()) + ") ");
            }
            JobRecord record = read.record();
            ObjectNode entry = JsonNodeFactory.instance.objectNode();
            int number = 1;
            Set<String> used = new TreeSet<>(record.entries().stream().map(e -> e.id()).toList());
            entries.forEach(e -> used.add(e.get("id").asText()));
            while (used.contains("n" + number)) {
                number++;
            }
            int seq = record.entries().stream().mapToInt(e -> e.at().seq()).max().orElse(0) + entries.size() + 1;
            entry.put("id", "n" + number).put("at", read.asOf().atZone(record.zone()).toLocalDateTime().toString().substring(0, 16).replace('T', ' ')).put("seq", String.valueOf(seq)).put("by", writer)
                    .put("point", one.point()).put(one.kind(), one.what());
            if (one.is() != null) {
                entry.put("is", one.is());
            }
            if (with != null && !with.isEmpty()) {
                entry.put("with", with);
            }
            entry.put("note", said).put("note-is", "remark");
            List<ObjectNode> trial = new ArrayList<>(entries);
            trial.add(entry);
            try {
                RecordReader.read(file, RecordAdded.entries(file, before, trial), book.vocabulary(), read.asOf(), ReadAs.withEntries(plain, trial.size()));
                entries.add(entry);
                if (one.kind().equals("done")) {
                    works.add(one);
                }
            } catch (UnusableInput refused) {
                bench.say(refused.getMessage());
            }
        }

        /** Undated work is not written as work of today: it would prove what a check asks for. */
        private void past(Candidate one) {
            bench.print("  Work of another day: write it with its day, as an entry of the record.\n");
            works.add(one);
        }

        int done(Subjects subjects) {
            works.forEach(one -> toProve.addAll(subjects.undoneBy(one.point(), one.what())));
            if (!entries.isEmpty()) {
                if (!Arrays.equals(before, bench.read(file))) {
                    throw UnusableInput.of(file, "somebody wrote to it meanwhile", "Nothing was changed; do it again");
                }
                bench.replace(file, RecordAdded.entries(file, before, entries));
            }
            bench.print((entries.isEmpty() ? "Nothing was added" : entries.size() + (entries.size() == 1 ? " entry" : " entries") + " added") + " to " + file + ".\n");
            bench.print(NoteReport.toProve(toProve));
            return Bench.RELEASED;
        }
    }
}
