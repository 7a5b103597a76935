package chock.report;

import java.util.List;

/** The condition statement in plain text. */
public final class StatementText {
    private final Page page;

    private StatementText(boolean bold) {
        page = new Page(bold);
    }

    /** In lines of at most 80 columns. */
    public static String of(Statement it, boolean bold) {
        return new StatementText(bold).write(it);
    }

    private String write(Statement it) {
        Heading head = it.heading();
        page.put(0, head.workshop().says() + "; record " + head.record().says() + "; " + head.judged().says()).gap();
        page.heading(head.name().says()).put(0, "Condition statement for whoever takes it over").gap();
        if (head.law() != null) {
            page.heading("LAW NOT CHECKED HERE").put(0, head.law().says()).gap();
        }
        if (!it.rideable()) {
            page.heading("NOT TO BE RIDDEN");
        }
        it.standing().forEach(one -> page.put(0, one.says()));
        section("What is still open", it.open(), null);
        section("What was made safe", it.safe(), null);
        page.gap().heading("The machine");
        it.identity().forEach(line -> page.put(2, line.label() + ": ", with(line.told())));
        section("Deviations and parts that are not original", it.deviations(), "Nothing is written down.");
        section("To be known", it.notes(), null);
        section("Remarks in the record", it.remarks(), null);
        section("Said of it and contradicted by the record", it.contradicted(), null);
        section("Said of it and unproven: do not rely on it", it.unproven(), null);
        section("Said of it and borne out by the record", it.proven(), null);
        section("Licensed inspections", it.inspections(), null);
        ridingIn(it);
        section("Stop at once when there is", it.stop(), null);
        if (!it.due().isEmpty()) {
            page.gap().heading("Next due: good to the end of the day, then to be asked again");
            it.due().forEach(due -> {
                page.put(2, due.day().says());
                due.what().forEach(one -> page.put(4, one.label() + ": ", one.told().says()));
            });
        }
        section("Cautions", it.cautions(), null);
        done(it);
        measured(it);
        page.gap().put(0, head.notice()).put(0, "This statement says what the record carries and no more. It is no sign-off.");
        return page.put(0, "Local code: ", it.localCode().says()).put(0, "Rule book: ", head.ruleBook().says()).toString();
    }

    private static String with(Told told) {
        return told.entries().isEmpty() ? told.says() : told.says() + " (" + told.entries() + ")";
    }

    private void section(String title, List<Told> lines, String none) {
        if (lines.isEmpty() && none == null) {
            return;
        }
        page.gap().heading(title);
        lines.forEach(one -> page.put(2, "- ", with(one)));
        if (lines.isEmpty()) {
            page.put(2, none);
        }
    }

    private void ridingIn(Statement it) {
        if (!it.ridingIn().isEmpty()) {
            page.gap().heading("Riding it in");
            it.ridingIn().forEach(restraint -> {
                page.put(2, restraint.because().says());
                restraint.lines().forEach(line -> page.put(4, "- ", line.says()));
            });
        }
    }

    private void done(Statement it) {
        page.gap().heading("What was done");
        it.done().forEach(part -> {
            page.put(2, part.where().says());
            part.work().forEach(one -> page.put(4, "- ", with(one)));
        });
        if (it.done().isEmpty()) {
            page.put(2, "Nothing is written down.");
        }
    }

    private void measured(Statement it) {
        page.gap().heading("What was measured");
        it.measured().forEach(read -> page.put(2, "- ", with(read.where()) + ": " + read.value().says()
                + (read.allowed() == null ? "" : ", " + read.allowed().says() + (read.source() > 0 ? " [" + read.source() + "]" : ""))));
        if (it.measured().isEmpty()) {
            page.put(2, "Nothing is written down.");
        }
        for (int i = 0; i < it.sources().size(); i++) {
            page.put(2, "[" + (i + 1) + "] ", it.sources().get(i).says());
        }
    }
}
