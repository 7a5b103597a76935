package chock.assess.facts;

import java.util.List;

/**
 * What the machine was built with, as far as the record says.
 *
 * @param shownBy the document, or the two people, it rests on; null when it rests on one person alone
 * @param lacking fields of the description of which it must be known and is not written; empty when nothing is open
 */
public record AsBuiltFact(String shownBy, List<String> lacking) {
    public boolean isShown() {
        return shownBy != null;
    }

    public boolean isWhole() {
        return lacking.isEmpty();
    }
}
