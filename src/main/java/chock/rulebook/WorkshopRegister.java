package chock.rulebook;

import chock.record.Calibration;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Fault;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Person;
import chock.record.Registered;
import chock.record.UnusableInput;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The instruments and people of a workshop: every calibration of each instrument, and what was found out about it. What is
 * found out about an instrument reaches every record that used it, not only the record somebody wrote it into.
 *
 * @param digest {@code sha256:…} of the file
 * @param tools by id
 * @param people names by id; empty when the register lists none
 */
public record WorkshopRegister(String digest, SortedMap<String, Tool> tools, Map<String, String> people) {
    private static final String FORM = "instruments/1";
    /** Begins the ids of what comes from a register; no id in a record file can hold a colon. */
    private static final String MARK = "register:";

    /**
     * An instrument.
     *
     * @param calibrations earliest first
     * @param found what was found out about it, earliest first
     */
    record Tool(String id, String kind, List<Calibration> calibrations, List<Found> found) { }

    /** An instrument found out of tolerance on a day. */
    record Found(LocalDate on, String by, String says) { }

    /**
     * Reads a register.
     *
     * @param file how it is called in messages
     * @param kinds kinds of instrument the rule book knows
     * @throws UnusableInput with every fault, each with its line
     */
    static WorkshopRegister read(String file, String text, Collection<String> kinds) {
        List<Fault> faults = new ArrayList<>();
        SortedMap<String, Tool> tools = new TreeMap<>();
        SortedMap<String, String> people = new TreeMap<>();
        Sheet sheet = Sheet.one(file, text, faults);
        if (sheet != null) {
            sheet.as("chock", word -> {
                if (!word.equals(FORM)) {
                    throw new IllegalArgumentException("'" + word + "': write " + FORM + ", the only form this program reads");
                }
                return word;
            });
            sheet.sheets("instruments").forEach(one -> tool(one, kinds, tools));
            sheet.sheets("people").forEach(one -> person(one, people));
            sheet.done();
            if (tools.isEmpty() && faults.isEmpty()) {
                sheet.fault("instruments", "no instrument is listed", "List at least one, with its calibrations.");
            }
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new WorkshopRegister(RuleBookLoader.digest(new TreeMap<>(Map.of("instruments", text))), Collections.unmodifiableSortedMap(tools), Collections.unmodifiableSortedMap(people));
    }

    private static void tool(Sheet sheet, Collection<String> kinds, SortedMap<String, Tool> tools) {
        String id = sheet.text("id");
        String kind = sheet.as("kind", word -> {
            if (!kinds.contains(word)) {
                throw new IllegalArgumentException("'" + word + "' is not a kind of instrument this rule book knows");
            }
            return word;
        });
        sheet.optional("note");
        List<Calibration> calibrations = new ArrayList<>();
        sheet.sheets("calibrations").forEach(one -> calibration(one, calibrations));
        List<Found> found = new ArrayList<>();
        sheet.sheets("found-out").forEach(one -> found(one, found));
        sheet.done();
        if (calibrations.isEmpty()) {
            sheet.fault("calibrations", "no calibration is listed", "List each as {on: 2026-03-02, due: 2027-03-02}.");
        }
        if (id != null && tools.containsKey(id)) {
            sheet.fault("id", "the instrument '" + id + "' is listed twice", "Keep one, with all its calibrations.");
        } else if (id != null) {
            calibrations.sort(Comparator.comparing(Calibration::on));
            found.sort(Comparator.comparing(Found::on));
            tools.put(id, new Tool(id, kind, List.copyOf(calibrations), List.copyOf(found)));
        }
    }

    private static void calibration(Sheet sheet, List<Calibration> into) {
        LocalDate on = sheet.date("on");
        LocalDate due = sheet.date("due");
        sheet.optional("certificate");
        sheet.done();
        if (on != null && due != null && due.isBefore(on)) {
            sheet.fault("due", "due " + due + ", before it was calibrated (" + on + ")", "Look at both again on the certificate.");
        } else if (on != null && due != null) {
            into.add(new Calibration(on, due));
        }
    }

    private static void found(Sheet sheet, List<Found> into) {
        LocalDate on = sheet.date("on");
        String by = sheet.text("by");
        String says = sheet.text("says");
        sheet.done();
        if (on != null && by != null && says != null) {
            into.add(new Found(on, by, says));
        }
    }

    private static void person(Sheet sheet, SortedMap<String, String> into) {
        String id = sheet.text("id");
        String name = sheet.text("name");
        sheet.done();
        if (id != null && name != null && into.put(id, name) != null) {
            sheet.fault("id", "the person '" + id + "' is listed twice", "Keep one.");
        }
    }

    /**
     * The record with what this register knows by that moment: the calibrations of its instruments, and as an entry each what
     * was found out about an instrument that the record used.
     */
    public JobRecord appliedTo(JobRecord record, Instant asOf) {
        if (record.register() != null) {
            return record;
        }
        LocalDate today = asOf.atZone(record.zone()).toLocalDate();
        List<Entry> entries = new ArrayList<>(record.entries());
        record.instruments().stream().filter(i -> tools.containsKey(i.id()) && record.entries().stream().anyMatch(e -> i.id().equals(e.with())))
                .forEach(i -> found(tools.get(i.id()), record, today, entries));
        List<Instrument> instruments = record.instruments().stream().map(i -> tools.containsKey(i.id()) ? known(i, tools.get(i.id()), today) : i).toList();
        return record.withEntries(List.copyOf(entries)).withInstruments(instruments).heldAgainst(new Registered(digest, unknown(record)));
    }

    private static void found(Tool tool, JobRecord record, LocalDate today, List<Entry> into) {
        for (int n = 0; n < tool.found().size(); n++) {
            Found found = tool.found().get(n);
            if (!found.on().isAfter(today)) {
                into.add(new Entry(MARK + tool.id() + ":" + (n + 1), new Moment(found.on(), null, record.zone()), found.by(), Deed.FOUND_OUT, tool.id(), found.says(), null, null, null, null, null, 0));
            }
        }
    }

    /** The register decides when an instrument was calibrated, not what a record once said of it. */
    private static Instrument known(Instrument instrument, Tool tool, LocalDate today) {
        List<Calibration> sofar = tool.calibrations().stream().filter(c -> !c.on().isAfter(today)).toList();
        return sofar.isEmpty() ? instrument : instrument.with(sofar);
    }

    private List<String> unknown(JobRecord record) {
        List<String> unknown = new ArrayList<>();
        for (Instrument instrument : record.instruments()) {
            Tool tool = tools.get(instrument.id());
            if (tool == null) {
                unknown.add("instrument " + instrument.id());
            } else if (!tool.kind().equals(instrument.kind())) {
                unknown.add("instrument " + instrument.id() + " as a " + instrument.kind() + " (the register has a " + tool.kind() + ")");
            }
        }
        for (Person person : people.isEmpty() ? List.<Person>of() : record.people()) {
            String name = people.get(person.id());
            if (!person.name().equals(name)) {
                unknown.add("person " + person.id() + ", " + person.name() + (name == null ? "" : " (the register has " + name + ")"));
            }
        }
        return List.copyOf(unknown);
    }
}
