package chock.rehearse;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.MakerFigure;
import chock.record.MakerFigures;
import chock.record.Moment;
import chock.record.Person;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Period;
import java.time.Year;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The machine and the record a scenario puts together, and the judgement passed on them. One for each scenario. */
public final class Bench {
    static final String INSPECTOR = "ida";
    static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static RuleBook shipped;

    private final RuleBook book;
    private final List<Entry> entries = new ArrayList<>();
    private final List<MakerFigure> figures = new ArrayList<>();
    private final Set<String> noneFound = new TreeSet<>();
    private final List<Instrument> instruments = new ArrayList<>();
    LocalDate today = LocalDate.of(2026, 11, 25);
    String territory = "GB";
    boolean onePerson;
    final Draft draft = new Draft();
    private LocalDate lastDayOfCalibration;
    private Assessment judged;

    public Bench() {
        this(shipped());
    }

    Bench(RuleBook book) {
        this.book = book;
        book.limits().stream().filter(l -> l.maker() != Limit.Maker.NONE).map(Limit::id).forEach(noneFound::add);
    }

    // Loading is the costly part and the rule book is immutable, so scenarios share it.
    private static synchronized RuleBook shipped() {
        if (shipped == null) {
            shipped = RuleBook.shipped();
        }
        return shipped;
    }

    /** Adds evidence: the verb is the kind of evidence. */
    void evidence(String by, String point, Deed deed, String aspect, String written, Period ago) {
        Vocabulary.Aspect known = book.vocabulary().aspects().get(aspect);
        if (known == null) {
            throw new IllegalArgumentException("no check asks for '" + aspect + "'");
        }
        checkPoint(point);
        Value value = switch (known.form()) {
            case AMOUNT -> new Value.Amount(amount(written, deed));
            case ANSWER -> answer(known, written);
            case DAYS -> days(written);
            case CODE -> new Value.Code(written);
        };
        add(by, deed, point, aspect, value, deed == Deed.MEASURED ? instrument() : null, ago);
    }

    void work(String by, String point, String work, Period ago) {
        if (!book.vocabulary().works().containsKey(work)) {
            throw new IllegalArgumentException("'" + work + "' is not a known work: " + book.vocabulary().works().keySet());
        }
        checkPoint(point);
        add(by, Deed.DONE, point, work, null, null, ago);
    }

    void inspected(String result, Period ago) {
        add(INSPECTOR, Deed.INSPECTED, "machine", result, new Value.Code("L-2231"), null, ago);
    }

    private void checkPoint(String point) {
        if (!book.vocabulary().points().contains(point)) {
            throw new IllegalArgumentException("'" + point + "' is not a known point");
        }
    }

    private static Measured amount(String written, Deed deed) {
        Measured measured = Measured.parse(written);
        if (deed == Deed.MEASURED && measured.uncertainty() == null) {
            throw new IllegalArgumentException("'" + written + "': write the uncertainty, such as 3.1 mm ± 0.1 mm");
        }
        return measured;
    }

    private static Value answer(Vocabulary.Aspect aspect, String written) {
        if (!aspect.answers().contains(written)) {
            throw new IllegalArgumentException("'" + written + "' is no answer to " + aspect.name() + ": " + aspect.answers());
        }
        return new Value.Answer(written);
    }

    static Value days(String written) {
        if (written.matches("\\d{4}")) {
            return new Value.Days(Year.parse(written).atDay(1), Year.parse(written).atMonth(12).atEndOfMonth(), written);
        }
        if (written.matches("\\d{4}-\\d{2}")) {
            return new Value.Days(YearMonth.parse(written).atDay(1), YearMonth.parse(written).atEndOfMonth(), written);
        }
        return new Value.Days(LocalDate.parse(written), LocalDate.parse(written), written);
    }

    // Readings are taken with one instrument, in calibration for forty years, unless a scenario says otherwise.
    private String instrument() {
        if (instruments.isEmpty()) {
            instruments.add(new Instrument("gauge", "caliper", null, today.minusYears(40), lastDayOfCalibration == null ? today.plusYears(1) : lastDayOfCalibration));
        }
        return instruments.get(instruments.size() - 1).id();
    }

    void takeAnotherInstrument() {
        instrument();
        instruments.add(new Instrument("second-gauge", "caliper", null, today.minusYears(1), today.plusYears(1)));
    }

    void ranOutOfCalibration(Period ago) {
        if (!instruments.isEmpty()) {
            throw new IllegalArgumentException("say when its calibration ran out before the first reading");
        }
        lastDayOfCalibration = today.minus(ago);
    }

    void foundOut(Period ago) {
        add(INSPECTOR, Deed.FOUND_OUT, instrument(), "reads high at the master", null, null, ago);
    }

    /** Replaces the last entry by one with another value. */
    void correct(String by, String written) {
        Entry wrong = entries.get(entries.size() - 1);
        evidence(by, wrong.point(), wrong.deed(), wrong.what(), written, Period.ZERO);
        Entry right = entries.remove(entries.size() - 1);
        entries.add(new Entry(right.id(), right.at(), right.by(), right.deed(), right.point(), right.what(), right.is(), right.with(), wrong.id(), "read wrongly", null, 0));
    }

    private void add(String by, Deed deed, String point, String what, Value is, String with, Period ago) {
        LocalDateTime at = LocalDateTime.of(today.minus(ago), LocalTime.of(9, 0)).plusMinutes(entries.size());
        entries.add(new Entry("e" + (entries.size() + 1), new Moment(at.toLocalDate(), at.toLocalTime(), ZONE), by, deed, point, what, is, with, null, null, null, 0));
    }

    void maker(String limit, String point, String sense, String value) {
        Quantity quantity = Quantity.parse(value);
        figures.add(new MakerFigure(limit, point, sense.equals("at least") ? quantity : null, sense.equals("at most") ? quantity : null,
                sense.equals("is") ? quantity : null, "Lark 250 workshop manual", "61", "ida", "tom"));
        noneFound.remove(limit);
    }

    void noWordFromMaker(String limit) {
        if (!noneFound.remove(limit)) {
            throw new IllegalArgumentException("no maker's figure is asked for '" + limit + "'");
        }
    }

    private Assessment judged() {
        if (judged == null) {
            JobRecord record = new JobRecord("scenario", "Hollow Vale Motor Works", ZONE, territory, onePerson, List.of(Gate.values()), draft.machine(),
                    new MakerFigures(figures, List.copyOf(noneFound)), List.of(new Person("ida", "Ida Marrow", "inspector"), new Person("tom", "Tom Fell", "technician")),
                    instruments, List.copyOf(entries), List.of());
            Instant noon = today.atTime(12, 0).atZone(ZONE).toInstant();
            List<Gate> asked = java.util.Arrays.stream(Gate.values()).filter(g -> book.cards().values().stream().anyMatch(c -> c.gates().contains(g))).toList();
            judged = Assessor.assess(record, book, asked, noon);
        }
        return judged;
    }

    /** The finding on a check, or null when it does not apply to this machine. */
    Finding finding(String check) {
        if (!book.cards().containsKey(check)) {
            throw new IllegalArgumentException("no check is called '" + check + "'");
        }
        return judged().gates().stream().flatMap(g -> g.findings().stream()).filter(f -> f.check().equals(check)).findFirst().orElse(null);
    }

    GateVerdict gate(String id) {
        Gate gate = Gate.of(id).orElseThrow(() -> new IllegalArgumentException("'" + id + "' is not a gate"));
        return judged().gates().stream().filter(g -> g.gate() == gate).findFirst().orElseThrow();
    }
}
