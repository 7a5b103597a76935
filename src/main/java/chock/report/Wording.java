package chock.report;

import chock.assess.Assessment;
import chock.assess.Changes;
import chock.assess.Claims;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.Points;
import chock.assess.RidePlan;
import chock.assess.RunPlan;
import chock.assess.State;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Claim;
import chock.record.Machine;
import chock.record.Registered;
import chock.rulebook.Overdue;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The words every report shares, so that paper, page and terminal say the same. */
public final class Wording {
    public static final String UNTOUCHED = "if nobody touches the machine before that";
    static final String CLAIMS = "what was said of the machine, held against what was written down; they change no verdict";
    public static final String NOTICE = Assessment.NOTICE;

    private static final MathContext SHOWN = new MathContext(4, RoundingMode.HALF_UP);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private static final int OVERDUE_SHOWN = 5;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter DAY_AND_TIME = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK);

    private Wording() { }

    /** A sign that is told apart by its shape alone. */
    public static String sign(State state) {
        return switch (state) {
            case FAULT -> "X";
            case DOUBT -> "?";
            case STALE -> "~";
            case MISSING -> "_";
            case MET -> "=";
        };
    }

    /** What stands before the remedy: a fault is cleared; what is only missing, stale or doubtful is a job to do. */
    public static String toDo(State state) {
        return state == State.FAULT ? "To clear: " : "To do: ";
    }

    public static String meaning(State state) {
        return switch (state) {
            case FAULT -> "outside the limit, or in bad condition";
            case DOUBT -> "inside the limit but too close to it for the instrument, or readings that disagree";
            case STALE -> "proven once; since undone, too old, or the instrument was not in calibration";
            case MISSING -> "nothing that counts was recorded";
            case MET -> "current evidence proves it";
        };
    }

    public static String counted(State state, long n) {
        return switch (state) {
            case FAULT -> n + (n == 1 ? " fault" : " faults");
            case DOUBT -> n + " in doubt";
            default -> n + " " + state.id();
        };
    }

    /** {@code 2 faults, 1 in doubt, 3 missing; 14 met}. */
    public static String tally(GateVerdict gate) {
        List<String> open = new ArrayList<>();
        if (!gate.ruleBookFaults().isEmpty()) {
            open.add(gate.ruleBookFaults().size() + " left undecided by the rule book");
        }
        for (State state : State.values()) {
            long n = gate.open().stream().filter(f -> f.state() == state).count();
            if (n > 0) {
                open.add(counted(state, n));
            }
        }
        long met = gate.findings().stream().filter(f -> f.state() == State.MET).count();
        return open.isEmpty() ? met + " met" : String.join(", ", open) + "; " + met + " met";
    }

    static String machine(Machine machine) {
        return machine.marque() + " " + machine.model() + ", frame " + machine.frameNumber() + ", engine " + machine.engineNumber();
    }

    /** {@code 2026-11-25 12:00 Europe/London}; seconds are cut off, so a time is never shown later than it is. */
    public static String moment(Instant instant, ZoneId zone) {
        return instant.atZone(zone).format(MINUTE) + " " + zone;
    }

    /** {@code 25 November 2026}, on the workshop's calendar. */
    static String day(Instant instant, ZoneId zone) {
        return day(instant.atZone(zone).toLocalDate());
    }

    static String day(LocalDate day) {
        return day.format(DAY);
    }

    /** {@code 25 November 2026, 12:00}, on the workshop's clock; seconds are cut off. */
    static String dayAndTime(Instant instant, ZoneId zone) {
        return instant.atZone(zone).format(DAY_AND_TIME);
    }

    /** {@code 2026-11-25T12:00:00Z}, on the workshop's clock, to the second. */
    static String iso(Instant instant, ZoneId zone) {
        return instant.truncatedTo(ChronoUnit.SECONDS).atZone(zone).toOffsetDateTime().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }

    static String judged(Assessment assessment) {
        return assessment.record().workshop() + "; judged as of " + moment(assessment.asOf(), assessment.record().zone());
    }

    static String until(Assessment assessment, GateVerdict gate) {
        return "until " + moment(gate.holdsUntil(), assessment.record().zone());
    }

    /** What changes if nobody writes anything more: {@code First to change by itself, 2026-11-26 00:00 Europe/London: tyres.pressure.} */
    static String changes(Assessment assessment, GateVerdict gate) {
        Changes changes = gate.changes();
        if (changes.at() == null) {
            return "Nothing changes by itself.";
        }
        int shown = Math.min(changes.checks().size(), 4);
        int more = changes.checks().size() - shown;
        return "First to change by itself, " + moment(changes.at(), assessment.record().zone()) + ": " + String.join(", ", changes.checks().subList(0, shown))
                + (more == 0 ? "." : " and " + more + " more.");
    }

    static String margin(Quantity margin) {
        int side = margin.value().compareTo(BigDecimal.ZERO);
        return side == 0 ? "exactly at the limit" : (side < 0 ? "outside by " : "inside by ") + shown(margin.abs());
    }

    /** A reading with its U, no more digits than a reader needs; U is rounded up. */
    static String shown(Measured measured) {
        Quantity u = measured.uncertainty().differenceTo(measured.value().unit());
        Quantity rounded = u.value().precision() <= SHOWN.getPrecision() ? u : Quantity.of(new Quantity(u.value().round(new MathContext(2, RoundingMode.UP)), u.unit()).number(), u.unit());
        return shown(measured.value()) + " ± " + rounded;
    }

    /** A worked-out margin can have sixteen digits; a reader needs four. */
    private static Quantity shown(Quantity margin) {
        return margin.value().precision() <= SHOWN.getPrecision() ? margin
                : Quantity.of(new Quantity(margin.value().round(SHOWN), margin.unit()).number(), margin.unit());
    }

    /** The notes of a finding and of all its places, each once. */
    public static Set<String> notes(Finding finding) {
        Set<String> notes = new LinkedHashSet<>(finding.notes());
        finding.places().forEach(place -> notes.addAll(place.notes()));
        return notes;
    }

    /** The other places that are not met, each sentence once, led by its state. */
    public static Set<String> elsewhere(Finding finding) {
        Set<String> said = new LinkedHashSet<>();
        for (Finding.AtPlace place : finding.places()) {
            if (place.state() != State.MET && !(place.state() == finding.state() && place.says().equals(finding.says()))) {
                said.add("Also " + (place.state() == State.DOUBT ? "in doubt" : place.state() == State.FAULT ? "a fault" : place.state().id()) + ": " + place.says());
            }
        }
        return said;
    }

    /** What a finding rests on, in one sentence, or empty. */
    public static String basis(Finding finding) {
        List<String> parts = new ArrayList<>();
        if (finding.margin() != null) {
            parts.add(margin(finding.margin()));
        }
        if (!finding.evidence().isEmpty()) {
            parts.add(entries(finding.evidence()));
        }
        if (finding.limit() != null && !finding.limit().others().isEmpty()) {
            finding.limit().others().stream().filter(other -> !finding.says().contains(other)).forEach(parts::add);
        }
        String all = String.join("; ", parts);
        return all.isEmpty() ? "" : Character.toUpperCase(all.charAt(0)) + all.substring(1) + ".";
    }

    /** {@code rear wheel, tyre: new ("new in May", by seller)}. */
    static String claim(Claims.Weighed weighed) {
        Claim claim = weighed.claim();
        return Points.words(claim.about()) + ": " + claim.kind().word() + " (\"" + claim.says() + "\", by " + claim.by() + ")";
    }

    static String notAsked(GateVerdict gate) {
        int n = gate.notApplicable().size();
        return n == 1 ? "1 check does not apply to this machine." : n + " checks do not apply to this machine.";
    }

    /** A line of the ride plan, with the source of its number. */
    static String line(RidePlan.Line line) {
        return line.source() == null ? line.says() : line.says() + " (" + line.source().words() + ")";
    }

    /** Several lines in one sentence. */
    static String list(List<RidePlan.Line> lines) {
        return String.join("; ", lines.stream().map(Wording::line).toList()) + ".";
    }

    /** {@code Quiet road, faster: up to 50 mph (80 km/h) (common practice)}. */
    static String step(RidePlan.Step step) {
        return step.upTo() == null ? step.title() : step.title() + ": " + line(step.upTo());
    }

    /** Why the ride is held back, where, and by which entries that is known. */
    static String because(RidePlan.Restraint restraint) {
        String where = String.join("; ", restraint.points().stream().map(Points::words).toList());
        return restraint.because() + " (" + where + (restraint.evidence().isEmpty() ? "" : "; " + entries(restraint.evidence())) + ")";
    }

    /** What a restraint asks of the rider, its speed first. */
    static List<String> restraint(RidePlan.Restraint restraint) {
        List<String> all = new ArrayList<>();
        if (restraint.upTo() != null) {
            all.add(line(restraint.upTo()));
        }
        restraint.lines().forEach(line -> all.add(line(line)));
        return all;
    }

    /** The workshop's register of instruments it was held against, with what is not in it, or none. */
    static String register(Assessment assessment) {
        Registered register = assessment.record().register();
        return register == null ? "none; findings about instruments in other records are not known here"
                : register.digest() + (register.unknown().isEmpty() ? "" : "; not in it: " + String.join("; ", register.unknown()));
    }

    /** The house in force with its digest, or none. */
    static String house(Assessment assessment) {
        return assessment.house() == null ? "none" : assessment.house().name();
    }

    /** What to know of limits nobody looked up again in time, or empty. */
    static String overdue(Assessment assessment) {
        List<Overdue> overdue = assessment.overdue();
        if (overdue.isEmpty()) {
            return "";
        }
        int n = overdue.size();
        return n + (n == 1 ? " limit this rests on was" : " limits this rests on were") + " due to be looked up again, the first by " + overdue.get(0).due() + ": "
                + overdue.stream().limit(OVERDUE_SHOWN).map(Overdue::words).distinct().collect(Collectors.joining(", ")) + (n > OVERDUE_SHOWN ? " and others" : "") + ". 'chock rules --overdue' lists all.";
    }

    private static String entries(List<String> ids) {
        return (ids.size() == 1 ? "entry " : "entries ") + String.join(", ", ids);
    }

    /** A figure of the run plan, with the source of a limit. */
    static String figure(RunPlan.Amount figure) {
        return figure.name() + ": " + figure.says() + (figure.source() == null ? "" : " (" + figure.source().words() + ")");
    }
}
