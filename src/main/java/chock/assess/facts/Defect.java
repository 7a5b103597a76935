package chock.assess.facts;

import chock.record.Entry;

/** Something wrong that somebody reported in free words. */
public record Defect(Entry entry) {

    public String id() {
        return entry.id();
    }
}
