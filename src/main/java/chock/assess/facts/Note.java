package chock.assess.facts;

/** Something to be known besides; changes no state. */
public record Note(Required required, String text) {
    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Note o && o.text.equals(text) && o.required.equals(required);
    }

    @Override
    public int hashCode() {
        return 31 * required.hashCode() + text.hashCode();
    }
}
