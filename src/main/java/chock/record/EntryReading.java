package chock.record;

import chock.quantity.Measured;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import java.time.Year;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Reads the entries, each for itself and then against one another. */
final class EntryReading {
    private static final List<String> ALL_DEEDS = Arrays.stream(Deed.values()).map(Deed::key).toList();
    /** Keys of which each belongs to some kinds of entry only. */
    static final List<String> PARTICULAR = List.of("point", "is", "with", "instrument", "licence", "inspector", "document", "dangers");

    /** As many places as an advice may name. */
    private static final int MOST_PLACES = 6;
    static final int MOST_SEQ = 999_999;
    /** Work that names the cause of a fault under reason. */
    static final String EXAMINED = "examined";

    private final Reading read;
    private final Uncertainty uncertainty;
    private final Set<String> people;
    private final Set<String> instrumentIds;
    private final Map<String, Instrument> instruments;
    private final Year built;
    private final int form;
    private final Map<String, Integer> lines;

    /**
     * @param people ids of the people, or null when not all are known
     * @param instrumentIds ids of the instruments, or null when not all are known
     * @param built the year the machine was built, or null when that is not known
     * @param form of the file
     */
    EntryReading(Reading read, Set<String> people, Set<String> instrumentIds, Map<String, Instrument> instruments, Year built, int form, Map<String, Integer> lines) {
        this.read = read;
        this.uncertainty = new Uncertainty(read);
        this.people = people;
        this.instrumentIds = instrumentIds;
        this.instruments = instruments;
        this.built = built;
        this.form = form;
        this.lines = lines;
    }

    List<Entry> entries(List<Raw.Entry> raw) {
        List<Entry> all = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < raw.size(); i++) {
            Raw.Entry one = raw.get(i);
            all.add(one == null ? null : entry("entries[" + i + "]", one));
            Integer first = one == null || Reading.blank(one.id()) ? null : places.putIfAbsent(one.id(), i);
            if (first != null) {
                wrong("entries[" + i + "].id", "the id " + Faults.quoted(one.id()) + " is used twice, first on line " + lines.get("entries[" + first + "]"), "Give this entry an id of its own");
            }
        }
        sequence(all);
        corrections(all, places);
        return all;
    }

    private Entry entry(String path, Raw.Entry raw) {
        Moment at = read.moment(path + ".at", raw.at());
        Integer seq = read.wholeNumber(path + ".seq", raw.seq(), 1, MOST_SEQ);
        at = at == null || seq == null ? at : new Moment(at.date(), at.time(), at.zone(), seq);
        if (at != null && built != null && at.date().getYear() < built.getValue()) {
            wrong(path + ".at", at + " lies before the machine was built (" + built + ")", "Write the day it was, or look at built again");
        }
        String by = read.known(path + ".by", raw.by(), "one of the people of this record", people);
        boolean closes = read.isWritten(path + ".closed");
        if (closes && !read.isWritten(path + ".reason")) {
            wrong(path, "a defect closed without a reason", "Write reason, in a few words: what was found, and by what");
        }
        boolean examined = EXAMINED.equals(raw.done());
        if (examined && !read.isWritten(path + ".corrects") && !read.isWritten(path + ".reason")) {
            wrong(path, "an examination without its cause", "Write reason with the cause that was found, such as: the noise came from the stand; and note-is: remark where it is no defect");
        } else if (!examined && !closes && read.isWritten(path + ".corrects") != read.isWritten(path + ".reason")) {
            boolean reason = read.isWritten(path + ".reason");
            wrong(path, reason ? "a reason, but nothing is corrected" : "a correction without a reason",
                    reason ? "Write corrects with the id of the earlier entry, or call it note" : "Write reason, in a few words");
        }
        List<Deed> deeds = Arrays.stream(Deed.values()).filter(d -> read.isWritten(path + "." + d.key())).toList();
        if (deeds.size() != 1) {
            wrong(path, deeds.isEmpty() ? "nothing is said: no key tells what was done" : "one entry says one thing, here are " + deeds.stream().map(Deed::key).collect(Collectors.joining(", ")),
                    deeds.isEmpty() ? "Write one of " + String.join(", ", ALL_DEEDS) : "Make an entry of each");
            return new Entry(raw.id(), at, by, null, raw.point(), null, null, null, raw.corrects(), raw.reason(), raw.note(), lines.get(path));
        }
        Deed deed = deeds.get(0);
        checkKeys(path, deed);
        NoteIs noteIs = read.choice(path + ".note-is", raw.noteIs(), NoteIs.class);
        if (noteIs != null && Reading.blank(raw.note()) && Reading.blank(raw.reason())) {
            wrong(path + ".note-is", "there is neither note nor reason", "Write note, or leave note-is out");
        } else if (noteIs != null && !deed.isEvidence() && deed != Deed.DONE) {
            wrong(path + ".note-is", "this does not go with " + deed.key(), "Leave it out; what is wrong is an entry of its own, with defect");
        }
        Entry plain = new Entry(raw.id(), at, by, deed, null, raw.under(deed), null, null, raw.corrects(), raw.reason(), raw.note(), noteIs, Set.of(), lines.get(path));
        return switch (deed) {
            case DONE -> work(path, plain, raw);
            case FOUND_OUT -> foundOut(path, plain, raw);
            case INSPECTED -> inspected(path, plain, raw);
            case DEFECT -> defect(path, plain, raw);
            case CLOSED -> closed(path, plain);
            default -> evidence(path, plain, raw);
        };
    }

    /**
     * In one minute a number is given once: of two entries with the same one nobody could say which came first. Sessions in order
     * number their lines from 1 each.
     */
    private void sequence(List<Entry> all) {
        Map<String, Integer> first = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            Moment at = all.get(i) == null ? null : all.get(i).at();
            int seq = at == null ? 0 : at.seq();
            Integer before = seq == 0 ? null : first.putIfAbsent(seq + " " + at, i);
            if (before != null) {
                wrong("entries[" + i + "].seq", "the seq " + seq + " is used twice, first on line " + lines.get("entries[" + before + "]"), "Leave seq out of what is written by hand; the program numbers its own entries");
            }
        }
    }

    /** The keys that an entry of this kind has besides those that every entry has. */
    static List<String> keysFor(Deed deed) {
        return switch (deed) {
            case MEASURED -> List.of("point", "is", "with");
            case TRIED, SEEN, TOLD, ASSUMED -> List.of("point", "is");
            case DONE -> List.of("point");
            case FOUND_OUT -> List.of("instrument");
            case INSPECTED -> List.of("licence", "inspector", "document");
            case DEFECT -> List.of("point");
            case CLOSED -> List.of();
        };
    }

    /** The keys that an entry of this kind may have besides: work done with an instrument names it, and what was set. */
    static List<String> optionalFor(Deed deed) {
        return deed == Deed.DONE ? List.of("is", "with") : deed == Deed.DEFECT ? List.of("dangers") : List.of();
    }

    private void checkKeys(String path, Deed deed) {
        List<String> wanted = keysFor(deed);
        List<String> optional = optionalFor(deed);
        for (String key : PARTICULAR) {
            boolean written = read.isWritten(path + "." + key);
            if (wanted.contains(key) && !written) {
                read.faults.addIfNew(path + "." + key, "this is missing", missing(key));
            } else if (written && !wanted.contains(key) && !optional.contains(key)) {
                read.faults.addIfNew(path + "." + key, "this does not go with " + deed.key(), "Leave it out" + (wanted.isEmpty() ? "" : "; " + deed.key() + " goes with " + Listing.and(wanted)));
            }
        }
    }

    private static String missing(String key) {
        return switch (key) {
            case "point" -> "Write the place on the machine, such as front-brake/hydraulic/hose";
            case "is" -> "Write what was found";
            case "with" -> "Write the id of the instrument it was read from; what was only looked at is seen";
            case "instrument" -> "Write the id of the instrument";
            case "licence" -> "Write the number of the inspector's licence";
            case "inspector" -> "Write the inspector's name";
            default -> "Write which document was issued";
        };
    }

    private Entry work(String path, Entry plain, Raw.Entry raw) {
        String point = read.point(path + ".point", raw.point());
        String work = read.known(path + ".done", raw.done(), "work this rule book knows", read.words.works().keySet());
        Vocabulary.Tooled tooled = work == null ? null : read.words.tooled().get(work);
        boolean named = read.isWritten(path + ".with") || read.isWritten(path + ".is");
        if (work == null || !named) {
            return with(plain, point, work, null, null, plain.note());
        }
        String key = path + (read.isWritten(path + ".with") ? ".with" : ".is");
        if (form < RecordForm.NEWEST) {
            read.faults.addIfNew(key, "in " + RecordForm.name(form) + " work names no instrument", "Write " + RecordForm.name(RecordForm.NEWEST) + " on the first line to use this");
        } else if (tooled == null) {
            read.faults.addIfNew(key, "this does not go with " + work, "Leave it out; it goes with " + Listing.or(read.words.tooled().keySet().stream().sorted().toList()));
        } else if (!read.isWritten(path + ".with")) {
            wrong(path + ".is", "what it was " + work + " to, without the instrument", "Write with: the id of the " + tooled.with() + " as well");
        } else {
            return tooled(path, with(plain, point, work, null, null, plain.note()), tooled, raw);
        }
        return with(plain, point, work, null, null, plain.note());
    }

    private Entry tooled(String path, Entry work, Vocabulary.Tooled tooled, Raw.Entry raw) {
        String tool = instrument(path + ".with", raw.with());
        String kind = tool == null ? null : instruments.get(tool).kind();
        Unit.Dimension dimension = tooled.unit().dimension();
        if (kind != null && !read.words.instruments().get(kind).leastUncertainty().containsKey(dimension)) {
            wrong(path + ".with", Faults.quoted(tool) + " is " + Reading.article(kind) + ", and " + work.what() + " is done with " + Reading.article(tooled.with()), "Name the " + tooled.with());
            return work;
        }
        Value is = Reading.blank(raw.is()) || read.faults.at(path + ".is") || kind == null ? null : set(path + ".is", dimension, raw.is(), tool);
        return with(work, work.point(), work.what(), is, tool, work.note());
    }

    /** What an instrument was set to, with its uncertainty. */
    private Value set(String path, Unit.Dimension dimension, String text, String tool) {
        Measured written;
        try {
            written = Measured.parse(text);
        } catch (UnreadableQuantity e) {
            read.unreadable(path, text, e, dimension);
            return null;
        }
        Measured complete = read.ofKind(path, written.value(), dimension) ? uncertainty.of(path, written, instruments.get(tool)) : null;
        return complete == null ? null : new Value.Amount(complete);
    }

    private Entry foundOut(String path, Entry plain, Raw.Entry raw) {
        return with(plain, instrument(path + ".instrument", raw.instrument()), raw.foundOut(), null, null, plain.note());
    }

    private Entry inspected(String path, Entry plain, Raw.Entry raw) {
        String result = read.known(path + ".inspected", raw.inspected(), "a result of an inspection", List.of("passed", "refused"));
        String kept = new Inspection(raw.document(), raw.inspector(), raw.note()).toString();
        return with(plain, "machine", result, Reading.blank(raw.licence()) ? null : new Value.Code(raw.licence()), null, kept);
    }

    private Entry evidence(String path, Entry plain, Raw.Entry raw) {
        String point = read.point(path + ".point", raw.point());
        String tool = plain.deed() == Deed.MEASURED ? instrument(path + ".with", raw.with()) : null;
        String aspect = read.known(path + "." + plain.deed().key(), plain.what(), "something this rule book looks at", aspectsFor(plain));
        misplaced(path, point, aspect);
        Value is = aspect == null || Reading.blank(raw.is()) || read.faults.at(path + ".is") ? null
                : value(path, plain.deed(), read.words.aspects().get(aspect), raw.is(), tool);
        return with(plain, point, aspect, is, tool, plain.note());
    }

    /** What no check of any machine reads at this place is refused while its writer can still say where it belongs. */
    private void misplaced(String path, String point, String aspect) {
        Set<String> places = aspect == null ? Set.of() : read.words.aspects().get(aspect).places();
        if (point != null && !places.isEmpty() && !places.contains(point) && read.isNew(path + ".point")) {
            wrong(path + ".point", "no check asks for " + aspect + " at " + Faults.quoted(point), "Write it at " + Listing.or(nearest(point, places))
                    + "; when it belongs to none of these and something is wrong, write defect with what is wrong in your own words");
        }
    }

    private static List<String> nearest(String point, Set<String> places) {
        int most = places.stream().mapToInt(place -> Entry.shared(place, point)).max().orElseThrow();
        return places.stream().filter(place -> Entry.shared(place, point) == most).sorted().limit(MOST_PLACES).toList();
    }

    /** For the advice on a misspelt aspect: something that can be measured where it says measured. */
    private Set<String> aspectsFor(Entry plain) {
        Map<String, Vocabulary.Aspect> all = read.words.aspects();
        if (plain.deed() != Deed.MEASURED || plain.what() == null || all.containsKey(plain.what())) {
            return all.keySet();
        }
        return all.values().stream().filter(a -> a.form() == Vocabulary.Form.AMOUNT).map(Vocabulary.Aspect::name).collect(Collectors.toCollection(TreeSet::new));
    }

    private String instrument(String path, String text) {
        return read.known(path, text, "one of the instruments of this record", instrumentIds);
    }

    private static Entry with(Entry e, String point, String what, Value is, String with, String note) {
        return new Entry(e.id(), e.at(), e.by(), e.deed(), point, what, is, with, e.corrects(), e.reason(), note, e.noteIs(), e.dangers(), e.line());
    }

    private Entry defect(String path, Entry plain, Raw.Entry raw) {
        Entry at = with(plain, read.point(path + ".point", raw.point()), plain.what(), null, null, plain.note());
        if (at.corrects() != null) {
            wrong(path + ".corrects", "a defect corrects nothing", "Leave corrects and reason out, or write what was found as seen, tried or measured");
        }
        Set<Danger> dangers = EnumSet.noneOf(Danger.class);
        List<String> named = raw.dangers() == null ? List.of() : raw.dangers();
        for (int i = 0; i < named.size(); i++) {
            Danger danger = read.choice(path + ".dangers[" + i + "]", named.get(i), Danger.class);
            if (danger != null && !dangers.add(danger)) {
                wrong(path + ".dangers[" + i + "]", danger + " is listed twice", "Keep one");
            }
        }
        return new Entry(at.id(), at.at(), at.by(), at.deed(), at.point(), at.what(), null, null, at.corrects(), at.reason(), at.note(), at.noteIs(), dangers, at.line());
    }

    private Entry closed(String path, Entry plain) {
        if (plain.corrects() != null) {
            wrong(path + ".corrects", "this does not go with closed", "Leave it out; closed names the entry");
        }
        return with(plain, "machine", plain.what(), null, null, plain.note());
    }

    private Value value(String path, Deed deed, Vocabulary.Aspect aspect, String text, String tool) {
        if (deed == Deed.MEASURED && aspect.form() != Vocabulary.Form.AMOUNT) {
            wrong(path + ".measured", aspect.name() + " is not measured with an instrument", "Write seen or tried instead of measured, without with");
            return null;
        }
        return switch (aspect.form()) {
            case AMOUNT -> amount(path + ".is", deed, aspect, text, tool);
            case ANSWER -> answer(path + ".is", aspect, text);
            case DAYS -> read.days(path + ".is", text);
            case CODE -> new Value.Code(text);
        };
    }

    private Value answer(String path, Vocabulary.Aspect aspect, String text) {
        // JSON files say true where a bench says yes.
        String plain = text.equals("true") ? "yes" : text.equals("false") ? "no" : text;
        String said = aspect.answers().contains(text) ? text : aspect.answers().contains(plain) ? plain : text;
        String word = read.known(path, said, "an answer to " + aspect.name(), new TreeSet<>(aspect.answers()));
        return word == null ? null : new Value.Answer(word);
    }

    private Value amount(String path, Deed deed, Vocabulary.Aspect aspect, String text, String tool) {
        Measured written;
        try {
            written = Measured.parse(text);
        } catch (UnreadableQuantity e) {
            read.unreadable(path, text, e, aspect.dimension());
            return null;
        }
        if (!read.ofKind(path, written.value(), aspect.dimension())) {
            return null;
        }
        if (deed != Deed.MEASURED) {
            if (written.uncertainty() != null) {
                wrong(path, "an uncertainty, but " + deed.key(), "Leave the ± out, or write measured with an instrument");
            }
            return new Value.Amount(new Measured(written.value(), null));
        }
        Measured complete = tool == null ? null : uncertainty.of(path, written, instruments.get(tool));
        return complete == null ? null : new Value.Amount(complete);
    }

    private void corrections(List<Entry> all, Map<String, Integer> places) {
        Map<String, String> correctedBy = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            Entry entry = all.get(i);
            if (entry != null && entry.deed() == Deed.CLOSED) {
                closing(all, places, i);
            }
            if (entry == null || Reading.blank(entry.corrects()) || entry.deed() == Deed.CLOSED || entry.deed() == Deed.DEFECT) {
                continue;
            }
            String path = "entries[" + i + "].corrects";
            Integer target = places.get(entry.corrects());
            if (target == null) {
                wrong(path, "there is no entry " + Faults.quoted(entry.corrects()), Choices.advice("Write", entry.corrects(), places.keySet().stream().filter(id -> !id.equals(entry.id())).sorted().toList()));
                continue;
            }
            if (!isEarlier(all, target, i)) {
                wrong(path, entry.corrects() + " is not earlier than this entry", "A correction is a later entry; look at the ids and times of both, and give both a time when they are of one day");
            }
            if (all.get(target) != null && (all.get(target).deed() == Deed.DEFECT || all.get(target).deed() == Deed.CLOSED)) {
                boolean defect = all.get(target).deed() == Deed.DEFECT;
                wrong(path, entry.corrects() + (defect ? " is a defect; a defect cannot be corrected" : " closes a defect and cannot be corrected"),
                        defect ? "Write closed: " + entry.corrects() + " with a reason" : "Write the defect again when it was closed by mistake");
            }
            String other = correctedBy.putIfAbsent(entry.corrects(), entry.id());
            if (other != null) {
                wrong(path, entry.corrects() + " is corrected already by " + other, "Correct " + other);
            }
        }
    }

    private void closing(List<Entry> all, Map<String, Integer> places, int i) {
        Entry entry = all.get(i);
        String path = "entries[" + i + "].closed";
        Integer target = places.get(entry.what());
        List<String> defects = all.stream().filter(e -> e != null && e.deed() == Deed.DEFECT).map(Entry::id).sorted().toList();
        if (Reading.blank(entry.what())) {
            return;
        }
        if (target == null || all.get(target) == null || all.get(target).deed() != Deed.DEFECT) {
            wrong(path, Faults.quoted(entry.what()) + " is not a defect of this record", defects.isEmpty() ? "There is none; leave this entry out" : Choices.advice("Write", entry.what(), defects));
        } else if (!isEarlier(all, target, i)) {
            wrong(path, entry.what() + " is not earlier than this entry", "A defect is closed by a later entry; look at the times of both");
        } else if (read.isNew(path) && entry.by() != null && entry.by().equals(all.get(target).by()) && people != null) {
            ownClosing(path, all.get(target), entry);
        }
        if (target != null && all.get(target) != null) {
            all.set(i, with(entry, all.get(target).point(), entry.what(), null, null, entry.note()));
        }
    }

    private void ownClosing(String path, Entry defect, Entry closing) {
        if (people.size() > 1) {
            wrong(path, defect.id() + " was reported by the same person", "Have another person look, and close the defect under their own name");
        } else if (closing.at() != null && defect.at() != null && !closing.at().date().isAfter(defect.at().date())) {
            wrong(path, defect.id() + " was reported on the same day", "Look again on a later day, and close the defect then");
        }
    }

    /**
     * By time, then by the program's number, and by place in the file where neither tells. A day without a time counts as its end, so that the
     * order is total and no entries can correct each other in a circle.
     */
    private static boolean isEarlier(List<Entry> all, int earlier, int later) {
        Moment first = all.get(earlier).at();
        Moment second = all.get(later).at();
        if (first == null || second == null) {
            return true;
        }
        int order = first.latest().compareTo(second.latest());
        return order < 0 || order == 0 && (second.surelyAfter(first) || !first.surelyAfter(second) && earlier < later);
    }

    private void wrong(String path, String what, String advice) {
        read.faults.add(path, what, advice);
    }
}
