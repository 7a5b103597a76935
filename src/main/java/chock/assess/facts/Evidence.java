package chock.assess.facts;

import chock.record.Calibration;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Instrument;
import chock.record.NoteIs;
import chock.record.Value;

/**
 * An entry that says something about the machine, work included.
 *
 * @param entry the entry
 * @param key point and aspect together, as {@link Entry#key} makes it
 * @param instrument what it was measured with, or null
 * @param misplaced whether the key is that of the nearest check, because no check reads the entry at its own place
 * @param settled whether a check that reads it at its own place was settled by it, without the rules
 */
public record Evidence(Entry entry, String key, Instrument instrument, boolean misplaced, boolean settled) {

    /** An entry at its own place. */
    public Evidence(Entry entry, String key, Instrument instrument) {
        this(entry, key, instrument, false, false);
    }

    /** The same, of which a check was settled. */
    public Evidence asSettled() {
        return new Evidence(entry, key, instrument, misplaced, true);
    }

    // An entry is known by its id, and the engine compares often; a misplaced one is read at other places besides its own.
    @Override
    public boolean equals(Object other) {
        return other instanceof Evidence e && e.id().equals(id()) && e.key.equals(key);
    }

    @Override
    public int hashCode() {
        return id().hashCode();
    }

    public String id() {
        return entry.id();
    }

    /** True when measured with an instrument that was not inside its calibration on that day. */
    public boolean outOfCalibration() {
        return instrument != null && !calibration().covers(entry.at().date());
    }

    /** The calibration of its instrument that it rests on; null without an instrument. */
    public Calibration calibration() {
        return instrument == null ? null : instrument.calibrationFor(entry.at().date());
    }

    /** What it says there is, as written; null for work. */
    public String says() {
        return entry.is() == null ? null : entry.is().toString();
    }

    /** What was measured, tried or seen, or the work. */
    public String aspect() {
        return entry.what();
    }

    /** True for an entry about a condition that a place is looked for; work, what is read elsewhere and what a check was settled by are not. */
    public boolean isStatement() {
        return !misplaced && !settled && entry.deed().isEvidence();
    }

    /** True for work, at its own place. */
    public boolean isWork() {
        return !misplaced && entry.deed() == Deed.DONE;
    }

    /** True when its writer says that the note on it is a defect. */
    public boolean isNotedAsDefect() {
        return entry.noteIs() == NoteIs.DEFECT;
    }

    /** True when there is a note on it, and its writer does not say whether that is a defect. */
    public boolean hasOpenNote() {
        return entry.noteIs() == null && entry.note() != null && !entry.note().isBlank();
    }

    /** The entry as the nearest check reads it. */
    public Evidence readAs(Wanted wanted) {
        return new Evidence(entry, wanted.key(), instrument, true, false);
    }

    /** What the instrument was used for: {@code read}, or the work done with it. */
    public String taken() {
        return entry.deed() == Deed.DONE ? entry.what() : "read";
    }

    /** True when it says on what paper it rests. */
    public boolean namesDocument() {
        return entry.note() != null && !entry.note().isBlank();
    }

    /** True when a note on it that is no defect begins with these words and goes on. */
    public boolean saysHow(String beginning) {
        String note = entry.note() == null ? "" : entry.note().strip();
        return !isNotedAsDefect() && note.regionMatches(true, 0, beginning, 0, beginning.length()) && note.substring(beginning.length()).matches("[\\s,;:.-]+\\w.*");
    }

    /** True when the writer measured, tried or saw it. */
    public boolean isFirstHand() {
        return entry.deed().atLeast(Deed.SEEN);
    }

    /** True when somebody else looked at that part, at what carries it or at something on it, certainly after the work. */
    public boolean looksAgainAt(Work work) {
        return looksAgainAt(work, work.entry().point());
    }

    /** The same at a part that the work reached, though it was done elsewhere. */
    public boolean looksAgainAt(Work work, String part) {
        Entry done = work.entry();
        return isFirstHand() && !entry.by().equals(done.by()) && entry.at().surelyAfter(done.at()) && (Entry.covers(entry.point(), part) || Entry.covers(part, entry.point()));
    }

    /** True when this is certainly later. Of two of one moment nobody knows which came first, and what they are called does not tell. */
    public boolean laterThan(Evidence other) {
        return entry.at().surelyAfter(other.entry.at());
    }

    /** True when it was written on another day. */
    public boolean isAnotherDayThan(Correction other) {
        return !entry.at().date().equals(other.entry().at().date());
    }

    /** True when the writer measured, tried or saw it, at least as well as the other. */
    public boolean isAsStrongAs(Evidence other) {
        return isFirstHand() && entry.deed().ordinal() <= other.entry.deed().ordinal();
    }

    /** True when the writer looked later at what the other had only heard or taken for granted. */
    public boolean looksBetterThan(Evidence other) {
        return isFirstHand() && !other.isFirstHand() && laterThan(other);
    }

    /** A total order by time, entries of one moment by id: to tell of them in, or to take each pair once. It decides nothing. */
    public boolean newerThan(Evidence other) {
        int order = entry.at().earliest().compareTo(other.entry.at().earliest());
        return order > 0 || order == 0 && entry.id().compareTo(other.entry.id()) > 0;
    }

    /** True when what it says cannot be true of any machine. */
    public boolean impossible() {
        return entry.is() instanceof Value.Impossible;
    }

    /** Why it cannot be true, in words without a full stop, with its id; for one that is {@link #impossible} only. */
    public String whyImpossible() {
        return ((Value.Impossible) entry.is()).says() + " (" + id() + ")";
    }

    /** True when it answers with this word. */
    public boolean says(String word) {
        return entry.is() instanceof Value.Answer answer && answer.word().equals(word);
    }
}
