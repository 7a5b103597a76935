package chock.assess.facts;

/** A stored reading that cannot be true, where nothing else has taken it away: it proves nothing, and it is not passed over either. */
public record ImpossibleReading(Wanted wanted, Evidence evidence) {

    public Required required() {
        return wanted.required();
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof ImpossibleReading o && o.evidence.equals(evidence) && o.wanted.equals(wanted);
    }

    @Override
    public int hashCode() {
        return 31 * wanted.hashCode() + evidence.hashCode();
    }
}
