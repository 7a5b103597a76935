package chock.rehearse;

import chock.quantity.Quantity;
import chock.record.Gate;
import chock.rulebook.RideSheet;
import chock.rulebook.RideSheet.After;
import chock.rulebook.RideSheet.Ceiling;
import chock.rulebook.RideSheet.Restraint;
import chock.rulebook.RunSheet;
import chock.rulebook.RuleBook;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Every small change of the plans of a ride and of a run under a roof: a line, a step, a figure, and the machines or runs they are for. */
final class PlanChanges {
    private final String plan;
    private final Gate gate;
    private final List<Change> all = new ArrayList<>();

    private PlanChanges(String plan, Gate gate) {
        this.plan = plan;
        this.gate = gate;
    }

    /** Those of both plans, or none where a rule book has none. */
    static List<Change> of(RuleBook book) {
        PlanChanges ride = new PlanChanges("roadtest.plan", Gate.ROAD_TEST);
        PlanChanges run = new PlanChanges("air.plan", Gate.INDOOR_RUN);
        book.ride().ifPresent(ride::ride);
        book.run().ifPresent(run::run);
        return Stream.concat(ride.all.stream(), run.all.stream()).toList();
    }

    private void ride(RideSheet ride) {
        List<RideSheet.Step> steps = ride.steps();
        ofList(steps, step -> "step " + step.id(), other -> planned(new RideSheet(other, ride.restraints(), ride.stop(), ride.back())));
        ofEach(steps, other -> new RideSheet(other, ride.restraints(), ride.stop(), ride.back()), this::step);
        ofList(ride.restraints(), restraint -> "restraint " + restraint.id(), other -> planned(new RideSheet(steps, other, ride.stop(), ride.back())));
        ofEach(ride.restraints(), other -> new RideSheet(steps, other, ride.stop(), ride.back()), this::restraint);
        lines("stop", ride.stop(), other -> planned(new RideSheet(steps, ride.restraints(), other, ride.back())));
        lines("back", ride.back(), other -> planned(new RideSheet(steps, ride.restraints(), ride.stop(), other)));
    }

    private void step(RideSheet.Step step, Function<RideSheet.Step, RideSheet> put) {
        speeds(step.id(), step.upTo(), other -> put.apply(new RideSheet.Step(step.id(), step.title(), other, step.doing(), step.feel())));
        lines(step.id(), step.doing(), other -> planned(put.apply(new RideSheet.Step(step.id(), step.title(), step.upTo(), other, step.feel()))));
        lines(step.id() + " feel", step.feel(), other -> planned(put.apply(new RideSheet.Step(step.id(), step.title(), step.upTo(), step.doing(), other))));
    }

    private void restraint(Restraint r, Function<Restraint, RideSheet> put) {
        speeds(r.id(), r.upTo(), other -> put.apply(new Restraint(r.id(), r.because(), r.only(), r.after(), r.until(), r.check(), r.metWithout(), other, r.lines(), r.back())));
        if (r.only() != null) {
            add(r.id() + " for every machine", planned(put.apply(new Restraint(r.id(), r.because(), null, r.after(), r.until(), r.check(), r.metWithout(), r.upTo(), r.lines(), r.back()))));
        }
        if (r.metWithout() != null) {
            add(r.id() + " never met without " + r.metWithout(), planned(put.apply(new Restraint(r.id(), r.because(), r.only(), r.after(), r.until(), r.check(), "nothing", r.upTo(), r.lines(), r.back()))));
        }
        if (r.until() != null) {
            add(r.id() + " never " + r.until(), planned(put.apply(new Restraint(r.id(), r.because(), r.only(), r.after(), "nothing", r.check(), r.metWithout(), r.upTo(), r.lines(), r.back()))));
        }
        ofEach(r.after(), other -> put.apply(new Restraint(r.id(), r.because(), r.only(), other, r.until(), r.check(), r.metWithout(), r.upTo(), r.lines(), r.back())), (after, in) -> {
            for (String work : after.works()) {
                Set<String> fewer = new LinkedHashSet<>(after.works());
                fewer.remove(work);
                add(r.id() + " not after " + work + " at " + after.points().stream().sorted().findFirst().orElse(""), planned(in.apply(new After(fewer, after.points()))));
            }
            for (String point : after.points()) {
                Set<String> fewer = new LinkedHashSet<>(after.points());
                fewer.remove(point);
                add(r.id() + " not after work at " + point, planned(in.apply(new After(after.works(), fewer))));
            }
        });
        lines(r.id(), r.lines(), other -> planned(put.apply(new Restraint(r.id(), r.because(), r.only(), r.after(), r.until(), r.check(), r.metWithout(), r.upTo(), other, r.back()))));
        lines(r.id() + " back", r.back(), other -> planned(put.apply(new Restraint(r.id(), r.because(), r.only(), r.after(), r.until(), r.check(), r.metWithout(), r.upTo(), r.lines(), other))));
    }

    private void lines(String at, List<RideSheet.Line> lines, Function<List<RideSheet.Line>, UnaryOperator<RuleBook>> put) {
        ofList(lines, line -> at + ": '" + line.say() + "'", put);
        for (int i = 0; i < lines.size(); i++) {
            RideSheet.Line line = lines.get(i);
            String what = at + ": '" + line.say() + "' ";
            if (line.only() != null) {
                add(what + "for every machine", put.apply(with(lines, i, new RideSheet.Line(line.say(), line.amount(), line.source(), null, line.step()))));
            }
            if (line.step() != null) {
                add(what + "for the whole ride", put.apply(with(lines, i, new RideSheet.Line(line.say(), line.amount(), line.source(), line.only(), null))));
            }
            if (line.amount() != null) {
                for (Quantity other : around(line.amount())) {
                    add(what + line.amount() + " becomes " + other, put.apply(with(lines, i, new RideSheet.Line(line.say(), other, line.source(), line.only(), line.step()))));
                }
            }
        }
    }

    private void speeds(String at, Ceiling upTo, Function<Ceiling, RideSheet> put) {
        if (upTo != null) {
            for (Quantity other : around(upTo.speed())) {
                add(at + " up to " + upTo.speed() + " becomes " + other, planned(put.apply(new Ceiling(other, upTo.source()))));
            }
            add(at + " at any speed", planned(put.apply(null)));
        }
    }

    private static List<Quantity> around(Quantity amount) {
        BigDecimal last = amount.value().ulp();
        return List.of(new Quantity(amount.value().add(last), amount.unit()), new Quantity(amount.value().subtract(last), amount.unit()));
    }

    private static UnaryOperator<RuleBook> planned(RideSheet other) {
        return book -> book.withPlans(other, book.run().orElse(null));
    }

    private void run(RunSheet run) {
        ofList(run.caution(), words -> "caution: '" + words + "'", other -> planned(new RunSheet(other, run.parts())));
        ofList(run.parts(), part -> "part " + part.id(), other -> planned(new RunSheet(run.caution(), other)));
        ofEach(run.parts(), other -> new RunSheet(run.caution(), other), (part, put) -> {
            add(part.id() + " numbered: " + (part.numbered() ? "no" : "yes"), planned(put.apply(new RunSheet.Part(part.id(), part.title(), !part.numbered(), part.whenRefused(), part.lines()))));
            add(part.id() + " when-refused: " + (part.whenRefused() ? "no" : "yes"), planned(put.apply(new RunSheet.Part(part.id(), part.title(), part.numbered(), !part.whenRefused(), part.lines()))));
            Function<List<RunSheet.Line>, UnaryOperator<RuleBook>> lines = other -> planned(put.apply(new RunSheet.Part(part.id(), part.title(), part.numbered(), part.whenRefused(), other)));
            ofList(part.lines(), line -> part.id() + ": '" + line.say() + "'", lines);
            for (int i = 0; i < part.lines().size(); i++) {
                RunSheet.Line line = part.lines().get(i);
                if (line.only() != null) {
                    add(part.id() + ": '" + line.say() + "' for every run", lines.apply(with(part.lines(), i, new RunSheet.Line(line.say(), null))));
                }
            }
        });
    }

    private static UnaryOperator<RuleBook> planned(RunSheet other) {
        return book -> book.withPlans(book.ride().orElse(null), other);
    }

    /** Each left out, and each exchanged with the next. */
    private <T> void ofList(List<T> list, Function<T, String> name, Function<List<T>, UnaryOperator<RuleBook>> put) {
        for (int i = 0; i < list.size(); i++) {
            List<T> fewer = new ArrayList<>(list);
            T gone = fewer.remove(i);
            add(name.apply(gone) + " left out", put.apply(fewer));
            if (i + 1 < list.size() && areSeenTogether(gone, list.get(i + 1))) {
                List<T> turned = new ArrayList<>(list);
                turned.set(i, list.get(i + 1));
                turned.set(i + 1, gone);
                add(name.apply(gone) + " after the next", put.apply(turned));
            }
        }
    }

    // Lines for different machines or runs stand in no order that anybody sees.
    private static boolean areSeenTogether(Object one, Object next) {
        if (one instanceof RideSheet.Line line && next instanceof RideSheet.Line other) {
            return (line.only() == null || other.only() == null || line.only() == other.only()) && Objects.equals(line.step(), other.step());
        }
        if (one instanceof RunSheet.Line line && next instanceof RunSheet.Line other) {
            return line.only() == null || other.only() == null || line.only() == other.only();
        }
        return !(one instanceof RunSheet.Part part && next instanceof RunSheet.Part other)
                || part.lines().stream().anyMatch(line -> other.lines().stream().anyMatch(another -> areSeenTogether(line, another)));
    }

    private static <T, S> void ofEach(List<T> list, Function<List<T>, S> whole, BiConsumer<T, Function<T, S>> change) {
        for (int i = 0; i < list.size(); i++) {
            int at = i;
            change.accept(list.get(at), other -> whole.apply(with(list, at, other)));
        }
    }

    private static <T> List<T> with(List<T> list, int at, T other) {
        List<T> changed = new ArrayList<>(list);
        changed.set(at, other);
        return changed;
    }

    private void add(String what, UnaryOperator<RuleBook> made) {
        all.add(new Change(Change.Kind.PLAN, false, plan, what, "rules/" + plan.replace('.', '/') + ".yaml", "the whole plan of a machine to which it matters",
                scenario -> scenario.isAboutThePlan(gate), made));
    }
}
