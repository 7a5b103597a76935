package chock.report;

/** The tag in plain text, for a label printer or a look at the terminal. */
public final class TagText {
    private TagText() { }

    /** In lines of at most 80 columns. */
    public static String of(Tag tag, boolean bold) {
        Page page = new Page(bold);
        Heading head = tag.heading();
        page.heading(head.name().says()).put(0, head.record().says() + ", frame " + head.frame().says());
        if (head.law() != null) {
            page.gap().heading("LAW NOT CHECKED HERE").put(0, head.law().says());
        }
        if (tag.warning() != null) {
            page.gap().heading(tag.warning());
        }
        for (Tag.Panel gate : tag.gates()) {
            page.gap().heading(gate.gate().says() + ": " + gate.word()).put(2, gate.means().says()).put(2, gate.until().says());
            gate.holding().forEach(one -> page.put(2, "- ", one.says()));
            if (gate.more() > 0) {
                page.put(2, "- ", "and " + gate.more() + " more: see the work sheet");
            }
            gate.heldBack().forEach(one -> page.put(2, "! ", one.says()));
        }
        if (!tag.defects().isEmpty()) {
            page.gap().heading("Open defects");
            tag.defects().forEach(one -> page.put(2, "! ", one.says()));
        }
        if (!tag.cautions().isEmpty()) {
            page.gap().heading("Caution: carbon monoxide");
            tag.cautions().forEach(one -> page.put(2, "! ", one.says()));
        }
        page.gap().put(0, "Every gate that does not stand here counts as closed. An open gate closes at once when anybody works on the machine.");
        page.put(0, head.workshop().says() + "; judged " + head.judged().says() + ". This tag is no sign-off.");
        return page.gap().put(0, head.notice()).toString();
    }
}
