package chock.assess;

import chock.assess.facts.Correction;
import chock.assess.facts.Work;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.rulebook.RideSheet;
import chock.rulebook.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The road test of one machine as a ride: its steps in order, what holds it back, when to stop, what to look at on return.
 *
 * @param rideable whether it may be ridden now: the gate is released and the machine has a brake
 * @param says in a sentence, what the plan is good for
 * @param restraints what holds the ride back on this machine
 * @param steps every step, also those left out; empty when the machine is not to be ridden at all
 * @param stop when to stop at once
 * @param back what to look at on return
 */
public record RidePlan(boolean rideable, String says, List<Restraint> restraints, List<Step> steps, List<Line> stop, List<Line> back) {

    /**
     * @param says the words, with the number in its place
     * @param amount the number, or null
     * @param source where it comes from; null when there is no number, or when it is the machine's own
     */
    public record Line(String says, Quantity amount, Source source) { }

    /**
     * @param because in a sentence without full stop
     * @param points where
     * @param evidence ids of the entries it was recognised by
     * @param upTo the speed it allows, or null
     */
    public record Restraint(String id, String because, List<String> points, List<String> evidence, Line upTo, List<Line> lines) { }

    /**
     * @param upTo the speed not to be passed, or null when nothing is ridden, or the step is left out
     * @param leftOut why it is left out, or null
     * @param feel what to feel for
     */
    public record Step(String id, String title, Line upTo, String leftOut, List<Line> doing, List<Line> feel) { }

    /** The plan, or empty when road-test was not judged or the rule book has no plan. */
    public static Optional<RidePlan> of(JobRecord record, Assessment assessment) {
        Optional<GateVerdict> gate = assessment.gates().stream().filter(g -> g.gate() == Gate.ROAD_TEST).findFirst();
        return assessment.ride() == null || gate.isEmpty() ? Optional.empty() : Optional.of(of(assessment.ride(), record, gate.get()));
    }

    private static RidePlan of(RideSheet sheet, JobRecord record, GateVerdict gate) {
        Machine machine = record.machine();
        if (machine.ends().stream().allMatch(end -> end.brake().type() == Machine.BrakeType.NONE)) {
            return new RidePlan(false, "A road test makes no sense for a machine without a brake: there is no ride to plan.", List.of(), List.of(), List.of(), List.of());
        }
        List<RideSheet.Restraint> written = new ArrayList<>();
        List<Restraint> restraints = new ArrayList<>();
        for (RideSheet.Restraint restraint : sheet.restraints()) {
            if (restraint.only() == null || restraint.only().fits(machine)) {
                held(restraint, record, gate).ifPresent(held -> {
                    written.add(restraint);
                    restraints.add(held);
                });
            }
        }
        List<Line> back = new ArrayList<>(lines(sheet.back(), machine));
        written.forEach(restraint -> back.addAll(lines(restraint.back(), machine)));
        String says = gate.released() ? "In this order, each step only when nothing was felt in the one before."
                : "Not to be ridden while road-test is blocked. This is the ride for the day it is released.";
        return new RidePlan(gate.released(), says, List.copyOf(restraints), steps(sheet, written, machine), lines(sheet.stop(), machine), List.copyOf(back));
    }

    private static Optional<Restraint> held(RideSheet.Restraint restraint, JobRecord record, GateVerdict gate) {
        return restraint.check() == null ? heldByWork(restraint, record) : heldByCheck(restraint, record, gate);
    }

    private static Optional<Restraint> heldByWork(RideSheet.Restraint restraint, JobRecord record) {
        List<Entry> settling = record.entries().stream().filter(e -> e.deed() == Deed.DONE && e.what().equals(restraint.until()) && !corrected(e, record)).toList();
        List<Entry> fresh = record.entries().stream().filter(e -> isAfter(restraint, e, record.machine()) && !correctedAway(e, record))
                .filter(e -> settling.stream().noneMatch(s -> touches(s.point(), e.point()) && s.at().surelyAfter(e.at()))).toList();
        if (!fresh.isEmpty()) {
            return Optional.of(restraint(restraint, restraint.because(), fresh.stream().map(Entry::point), fresh.stream().map(Entry::id), record.machine()));
        }
        List<String> unknown = record.machine().history() == Machine.History.KNOWN ? List.of() : unsettled(restraint, settling, record.machine());
        return unknown.isEmpty() ? Optional.empty()
                : Optional.of(restraint(restraint, restraint.because() + ", or may be: history unknown", unknown.stream(), Stream.of(), record.machine()));
    }

    private static boolean isAfter(RideSheet.Restraint restraint, Entry entry, Machine machine) {
        return entry.deed() == Deed.DONE && restraint.after().stream()
                .anyMatch(a -> a.works().contains(entry.what()) && points(restraint, a, machine).anyMatch(point -> touches(entry.point(), point)));
    }

    // A drum brake has no pads to be new, whatever was done to the brake at that end.
    private static Stream<String> points(RideSheet.Restraint restraint, RideSheet.After after, Machine machine) {
        return after.points().stream().filter(point -> restraint.only() == null || restraint.only().fitsAt(point, machine));
    }

    // Of a machine without known history every work counts as done on an unknown day: only what was settled since we know it is settled.
    private static List<String> unsettled(RideSheet.Restraint restraint, List<Entry> settling, Machine machine) {
        Set<String> parts = new TreeSet<>();
        restraint.after().forEach(a -> points(restraint, a, machine).forEach(point -> parts.add(point.replaceFirst("/.*", ""))));
        return parts.stream().filter(part -> settling.stream().noneMatch(s -> Entry.covers(part, s.point()))).toList();
    }

    private static Optional<Restraint> heldByCheck(RideSheet.Restraint restraint, JobRecord record, GateVerdict gate) {
        List<Finding.AtPlace> places = gate.findings().stream().filter(f -> f.check().equals(restraint.check())).flatMap(f -> f.places().stream())
                .filter(place -> place.state() != State.MET || place.evidence().stream().anyMatch(id -> isOf(restraint.metWithout(), id, record))).toList();
        return places.isEmpty() ? Optional.empty() : Optional.of(restraint(restraint, restraint.because(), places.stream().map(Finding.AtPlace::point),
                places.stream().flatMap(place -> place.evidence().stream()), record.machine()));
    }

    private static boolean isOf(String aspect, String id, JobRecord record) {
        return record.entry(id).map(entry -> entry.what().equals(aspect)).orElse(false);
    }

    private static Restraint restraint(RideSheet.Restraint restraint, String because, Stream<String> points, Stream<String> evidence, Machine machine) {
        Line upTo = restraint.upTo() == null ? null : upTo(restraint.upTo().speed(), restraint.upTo().source());
        List<RideSheet.Line> general = restraint.lines().stream().filter(line -> line.step() == null).toList();
        return new Restraint(restraint.id(), because, points.distinct().sorted().toList(), evidence.distinct().sorted().toList(), upTo, lines(general, machine));
    }

    private static boolean touches(String one, String other) {
        return Entry.covers(one, other) || Entry.covers(other, one);
    }

    // As everywhere, work is corrected away only by another person; work that lifts a restraint must stand without any doubt.
    private static boolean correctedAway(Entry work, JobRecord record) {
        return record.lastCorrectionOf(work.id()).filter(last -> new Correction(work.id(), last).mayReplace(new Work(work))).isPresent();
    }

    private static boolean corrected(Entry work, JobRecord record) {
        return record.lastCorrectionOf(work.id()).isPresent();
    }

    /** The lowest speed that anything but the step itself allows, with its reason. */
    private record Cap(Quantity speed, Source source, String because) { }

    private static List<Step> steps(RideSheet sheet, List<RideSheet.Restraint> restraints, Machine machine) {
        Cap cap = new Cap(machine.topSpeed(), null, "the machine goes no faster");
        for (RideSheet.Restraint restraint : restraints) {
            if (restraint.upTo() != null && restraint.upTo().speed().compareTo(cap.speed) < 0) {
                cap = new Cap(restraint.upTo().speed(), restraint.upTo().source(), restraint.because().substring(0, 1).toLowerCase(Locale.ROOT) + restraint.because().substring(1));
            }
        }
        List<Step> steps = new ArrayList<>();
        Quantity ridden = null;
        for (RideSheet.Step step : sheet.steps()) {
            boolean leftOut = step.upTo() != null && ridden != null && ridden.compareTo(cap.speed) >= 0;
            if (leftOut) {
                steps.add(new Step(step.id(), step.title(), null, cap.because + " (" + upTo(cap.speed, null).says() + ")", List.of(), List.of()));
                continue;
            }
            Line upTo = null;
            if (step.upTo() != null) {
                boolean capped = cap.speed.compareTo(step.upTo().speed()) < 0;
                ridden = capped ? cap.speed : step.upTo().speed();
                upTo = capped ? upTo(cap.speed, cap.source) : upTo(step.upTo().speed(), step.upTo().source());
            }
            List<Line> doing = new ArrayList<>(lines(step.doing(), machine));
            restraints.forEach(r -> doing.addAll(lines(r.lines().stream().filter(line -> step.id().equals(line.step())).toList(), machine)));
            steps.add(new Step(step.id(), step.title(), upTo, null, List.copyOf(doing), lines(step.feel(), machine)));
        }
        return List.copyOf(steps);
    }

    private static Line upTo(Quantity speed, Source source) {
        return new Line("up to " + shown(speed), speed, source);
    }

    private static List<Line> lines(List<RideSheet.Line> lines, Machine machine) {
        return lines.stream().filter(line -> line.only() == null || line.only().fits(machine)).map(RidePlan::line).toList();
    }

    private static Line line(RideSheet.Line line) {
        return new Line(line.amount() == null ? line.say() : line.say().replace("{amount}", shown(line.amount())), line.amount(), line.source());
    }

    // Not every speedometer counts miles. A speed is rounded down and a distance up, so that neither way is less careful.
    private static String shown(Quantity amount) {
        return switch (amount.unit()) {
            case MPH -> amount + " (" + whole(amount.to(Unit.KMH), RoundingMode.DOWN) + ")";
            case MILE -> amount + " (" + whole(amount.to(Unit.KM), RoundingMode.UP) + ")";
            default -> amount.toString();
        };
    }

    private static Quantity whole(Quantity amount, RoundingMode mode) {
        BigDecimal value = amount.value().setScale(0, mode);
        return new Quantity(value, amount.unit());
    }
}
