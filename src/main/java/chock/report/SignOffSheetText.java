package chock.report;

import java.util.List;

/** The sign-off sheet in plain text. */
public final class SignOffSheetText {
    private final Page page;

    private SignOffSheetText(boolean bold) {
        page = new Page(bold);
    }

    /** In lines of at most 80 columns. */
    public static String of(SignOffSheet sheet, boolean bold) {
        return new SignOffSheetText(bold).put(sheet);
    }

    private String put(SignOffSheet it) {
        Heading head = it.heading();
        page.heading("Sign-off: " + it.gate().says()).put(0, head.name().says() + ", frame " + head.frame().says() + ", engine " + head.engine().says());
        if (head.law() != null) {
            page.gap().heading("LAW NOT CHECKED HERE").put(0, head.law().says());
        }
        if (!it.holds()) {
            page.gap().heading("DOES NOT HOLD");
            it.failing().forEach(one -> page.put(2, "X ", one.says()));
        }
        page.gap().put(0, it.means().says()).put(0, "Until " + it.until().says() + ". It ends at once when anybody works on the machine.").gap();
        it.facts().forEach(one -> page.put(2, one.label() + ": ", one.told().says()));
        page.gap();
        it.signature().forEach(one -> page.put(2, one.label() + ": ", one.told().says()));
        section("The work was done by", it.workBy());
        section("To be known", it.notes());
        page.gap().heading("Looked at " + it.lookedAt().says());
        it.looked().forEach(one -> page.put(2, one.label() + ". ", one.told().says()));
        page.gap().heading("Findings: " + it.count().says());
        it.groups().forEach(this::group);
        section("Cautions", it.cautions());
        if (it.notAsked() != null) {
            page.gap().heading("Not asked, since it does not apply").put(2, it.notAsked().says());
        }
        if (it.critical() != null) {
            page.gap().heading("A later entry here voids it").put(2, it.critical().says());
        }
        page.gap().heading("Seal").put(0, it.seal());
        return page.gap().put(0, it.deferral().says()).toString();
    }

    private void group(SignOffSheet.Group group) {
        page.put(2, group.title());
        for (SignOffSheet.Row row : group.rows()) {
            page.put(4, "- ", row.says().says() + " (" + row.key().says() + (row.says().entries().isEmpty() ? "" : "; " + row.says().entries()) + ")");
            row.notes().forEach(note -> page.put(6, note.says()));
        }
    }

    private void section(String title, List<Told> lines) {
        if (!lines.isEmpty()) {
            page.gap().heading(title);
            lines.forEach(one -> page.put(2, "- ", one.says()));
        }
    }
}
