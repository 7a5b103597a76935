package chock.board;

import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Vocabulary;
import chock.report.AnswerOrder;
import chock.rulebook.Applied;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One question of the bench: a place, and what is asked there.
 *
 * @param key place and what is asked; the fields of the form are named by it
 * @param deed what an answer is written as
 * @param form how an answer is written; null of work
 * @param answers what may be answered, in an order that says nothing about good and bad; empty where something is read or marked
 * @param unit unit meant where none is chosen, or null
 * @param limit the limit a reading is held against, or null
 * @param tooled what the work is done with, or null
 * @param checks checks that the answer bears on
 */
record BenchQuestion(String key, String point, String what, Deed deed, Vocabulary.Form form, List<String> answers, Unit unit, Applied limit, Vocabulary.Tooled tooled, List<String> checks) {
    private static final Map<Unit.Dimension, List<Unit>> BENCH_UNITS = Map.of(Unit.Dimension.LENGTH, List.of(Unit.MM, Unit.INCH), Unit.Dimension.PRESSURE, List.of(Unit.PSI, Unit.BAR, Unit.KPA),
            Unit.Dimension.TEMPERATURE, List.of(Unit.DEGREES_CELSIUS, Unit.DEGREES_FAHRENHEIT), Unit.Dimension.TORQUE, List.of(Unit.NEWTON_METRE, Unit.POUND_FOOT), Unit.Dimension.SPEED, List.of(Unit.MPH, Unit.KMH),
            Unit.Dimension.MASS, List.of(Unit.KG, Unit.POUND), Unit.Dimension.RESISTANCE, List.of(Unit.OHMS, Unit.KILOHMS), Unit.Dimension.CURRENT, List.of(Unit.MILLIAMPERES, Unit.AMPERES),
            Unit.Dimension.DURATION, List.of(Unit.SECONDS, Unit.MINUTES), Unit.Dimension.VOLUME, List.of(Unit.CC, Unit.LITRES));

    /** Whether a step is answered on the screen: not what is settled elsewhere, corrects an entry, names a document, or is work nobody can name yet. */
    static boolean isFor(Step step) {
        return step.kind() != Kind.SETTLE && step.what() != null && step.corrects().isEmpty() && !step.namesDocument();
    }

    static BenchQuestion of(Step step, RuleBook book) {
        Vocabulary words = book.vocabulary();
        Deed deed = switch (step.kind()) {
            case MEASURE -> Deed.MEASURED;
            case TRY -> Deed.TRIED;
            case LOOK -> Deed.SEEN;
            case ASK -> Deed.TOLD;
            default -> Deed.DONE;
        };
        Vocabulary.Aspect aspect = deed == Deed.DONE ? null : words.aspects().get(step.what());
        List<Card.Want> wants = step.checks().stream().map(book.cards()::get).filter(Objects::nonNull).flatMap(card -> card.wants().stream()).filter(want -> want.aspect().equals(step.what())).toList();
        List<String> answers = aspect == null ? List.of() : AnswerOrder.mixed(step.what(), wants.isEmpty() ? aspect.answers().stream() : wants.stream().flatMap(want -> Stream.concat(want.good().stream(), want.bad().stream())));
        Vocabulary.Tooled tooled = deed == Deed.DONE ? words.tooled().get(step.what()) : null;
        return new BenchQuestion(Entry.key(step.point(), step.what()), step.point(), step.what(), deed, aspect == null ? null : aspect.form(), answers, tooled == null ? unit(step, wants, aspect) : tooled.unit(), step.limit(), tooled, step.checks());
    }

    private static Unit unit(Step step, List<Card.Want> wants, Vocabulary.Aspect aspect) {
        if (aspect == null || aspect.form() != Vocabulary.Form.AMOUNT) {
            return null;
        }
        if (step.limit() != null) {
            return step.limit().bounds().low() != null ? step.limit().bounds().low().unit() : step.limit().bounds().high().unit();
        }
        return wants.stream().map(Card.Want::unit).filter(Objects::nonNull).findFirst().orElse(null);
    }

    /** Whether an instrument is named with the answer. */
    boolean namesInstrument() {
        return deed == Deed.MEASURED || tooled != null;
    }

    /** Kind of unit that the instrument has to read. */
    Unit.Dimension dimension() {
        return unit == null ? null : unit.dimension();
    }

    /** The units to choose from, the one meant first. */
    List<Unit> units() {
        if (unit == null || unit == Unit.TIMES) {
            return List.of();
        }
        return Stream.concat(Stream.of(unit), BENCH_UNITS.getOrDefault(unit.dimension(), List.of()).stream()).distinct().toList();
    }

    /** How the answer is given: {@code answer}, {@code amount}, {@code days}, {@code code}, {@code torque} or {@code work}. */
    String kind() {
        if (deed == Deed.DONE) {
            return tooled == null ? "work" : "torque";
        }
        return switch (form) {
            case AMOUNT -> "amount";
            case ANSWER -> "answer";
            case DAYS -> "days";
            case CODE -> "code";
        };
    }
}
