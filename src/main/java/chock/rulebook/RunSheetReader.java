package chock.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads {@code air/plan.yaml} as strictly as a limit: a number in the words is refused, for it would have no source. */
final class RunSheetReader {
    private static final Pattern BRACES = Pattern.compile("\\{[^}]*}?|}");

    private RunSheetReader() { }

    /** The plan; what is wrong with it goes into the faults behind the sheet. */
    static RunSheet read(Sheet sheet) {
        List<String> caution = sheet.texts("caution");
        if (caution.isEmpty()) {
            sheet.fault("caution", "no run under a roof without its caution", "Write caution: and a list.");
        }
        caution.forEach(words -> plain(sheet, "caution", words));
        caution.stream().filter(words -> BRACES.matcher(words).find()).forEach(words -> sheet.fault("caution", "a caution names no figure", "Leave the braces out."));
        List<RunSheet.Part> parts = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Sheet item : sheet.sheets("parts")) {
            String id = item.text("id");
            if (id != null && !ids.add(id)) {
                item.fault("id", "'" + id + "' stands twice", "Choose another.");
            }
            String title = item.text("title");
            boolean numbered = item.yes("numbered");
            boolean whenRefused = item.yes("when-refused");
            List<RunSheet.Line> lines = new ArrayList<>();
            for (Sheet line : item.sheets("lines")) {
                lines.add(line(line));
            }
            if (lines.isEmpty()) {
                item.fault("lines", "a part without lines says nothing", "Write lines: and a list.");
            }
            item.done();
            parts.add(new RunSheet.Part(id, title, numbered, whenRefused, List.copyOf(lines)));
        }
        if (!ids.containsAll(Set.of("who", "stop"))) {
            sheet.fault("parts", "a run needs to say who may be there and when to stop", "Write the parts who and stop.");
        }
        sheet.done();
        return new RunSheet(List.copyOf(caution), List.copyOf(parts));
    }

    private static RunSheet.Line line(Sheet line) {
        String say = line.text("say");
        RunSheet.Only only = line.optionalAs("only", text -> Sheet.wordOf(text, RunSheet.Only.class));
        if (say != null) {
            plain(line, "say", say);
            Set<String> known = Arrays.stream(RunSheet.Figure.values()).map(RunSheet.Figure::inBraces).collect(Collectors.toCollection(LinkedHashSet::new));
            BRACES.matcher(say).results().map(m -> m.group()).filter(name -> !known.contains(name))
                    .forEach(name -> line.fault("say", "'" + name + "' is not a figure of a run", "Known: " + String.join(", ", known) + "."));
        }
        line.done();
        return new RunSheet.Line(say, only);
    }

    private static void plain(Sheet sheet, String key, String words) {
        if (words.chars().anyMatch(Character::isDigit)) {
            sheet.fault(key, "a number in the words has no source", "Name a figure in braces instead.");
        }
    }
}
