package chock.report;

import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.quantity.Unit;
import chock.record.Instrument;
import chock.record.SheetTakenIn;
import chock.record.Vocabulary;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * The work that remains for one gate as sessions to fill in, every answer blank. What may be answered stands above each blank in
 * the order of the alphabet, so that no answer is offered first.
 */
public final class SessionSheet {
    private static final int WIDTH = 100;
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("MMddHHmm", Locale.ROOT);

    private final OrderOfWork order;
    private final RuleBook book;
    private final StringBuilder text = new StringBuilder();
    private final String stem;
    private int number;

    /**
     * Steps of one session.
     *
     * @param phase what must be allowed, in words
     * @param turn what kind of steps
     */
    private record Round(String phase, Turn turn, List<Step> steps) { }

    /** Looking comes in a session of its own, since another person may do it; first while parts are apart, before the work that closes them. */
    private enum Turn {
        MENDING("work that mends and puts together."), APART("what is measured, tried and seen while it is apart."), WORK("work."), LOOKING("what is measured, tried and seen.");

        private final String words;

        Turn(String words) {
            this.words = words;
        }
    }

    private SessionSheet(OrderOfWork order, RuleBook book) {
        this.order = order;
        this.book = book;
        this.stem = "w" + STAMP.format(LocalDateTime.ofInstant(order.asOf(), order.record().zone()));
    }

    /** The sheet as YAML, to be filled in and given to {@code chock take-in}. */
    public static String of(OrderOfWork order, RuleBook book) {
        return new SessionSheet(order, book).written();
    }

    private String written() {
        comment("", "What remains for " + order.gate() + " of " + order.record().id() + ". Fill in at, by, with and what was found, each behind its colon. Leave blank what was not done. Then: chock take-in SHEET RECORD");
        text.append("chock: ").append(SheetTakenIn.FORM).append("\nrecord: ").append(inQuotes(order.record().id())).append('\n');
        List<Step> byHand = order.steps().stream().filter(step -> !isLine(step)).toList();
        if (!byHand.isEmpty()) {
            comment("", "Not lines of a session; settle these, or write each as an entry of the record:");
            byHand.forEach(step -> comment("", "- " + step.says()));
        }
        text.append("sessions:\n");
        rounds().forEach(this::round);
        return text.toString();
    }

    /**
     * The steps part by part, as far as no step undoes another: first what mends and what is read apart, then other work, then
     * everything that is looked at. Answers of one look at one part come together.
     */
    public static List<List<Step>> byPlace(OrderOfWork order, RuleBook book) {
        List<List<Step>> screens = new ArrayList<>();
        order.steps().stream().filter(step -> !isLine(step)).forEach(step -> screens.add(List.of(step)));
        for (Round round : new SessionSheet(order, book).rounds()) {
            Map<String, List<Step>> looks = new LinkedHashMap<>();
            Map<String, List<Step>> byPart = new LinkedHashMap<>();
            round.steps.forEach(step -> byPart.computeIfAbsent(step.point().split("/")[0], part -> new ArrayList<>()).add(step));
            byPart.forEach((part, steps) -> steps.forEach(step -> looks.computeIfAbsent(part + " " + step.number(), look -> new ArrayList<>()).add(step)));
            screens.addAll(looks.values());
        }
        return screens;
    }

    private static boolean isLine(Step step) {
        return step.kind() != Kind.SETTLE && step.corrects().isEmpty() && !step.namesDocument();
    }

    /** Within what must be allowed: first the work, in its order, with what is read between, then everything else that is looked at. */
    private List<Round> rounds() {
        Map<Card.Needs, Map<Turn, Round>> rounds = new LinkedHashMap<>();
        List<Step> apart = order.steps().stream().filter(step -> isLine(step) && isReadApart(step)).toList();
        for (Step step : order.steps()) {
            if (isLine(step)) {
                rounds.computeIfAbsent(step.needs(), needs -> new EnumMap<>(Turn.class))
                        .computeIfAbsent(turn(step, apart), turn -> new Round(OrderReport.phase(step.needs(), order.gate()), turn, new ArrayList<>())).steps.add(step);
            }
        }
        return rounds.values().stream().flatMap(turns -> turns.values().stream()).toList();
    }

    private Turn turn(Step step, List<Step> apart) {
        if (!step.kind().isWork()) {
            return isReadApart(step) ? Turn.APART : Turn.LOOKING;
        }
        // A pivot is torqued before its play is read, and the dampers are put back after that.
        boolean before = apart.stream().anyMatch(reading -> reading.point().equals(step.point()) && reading.number() > step.number());
        return !apart.isEmpty() && (step.kind() != Kind.DO || before) ? Turn.MENDING : Turn.WORK;
    }

    private boolean isReadApart(Step step) {
        return !step.kind().isWork() && step.checks().stream().map(check -> book.cards().get(check)).filter(Objects::nonNull).anyMatch(card -> book.library().assembly().isReadApart(card, step.what()));
    }

    private void round(Round round) {
        comment("  ", round.phase + ": " + round.turn.words);
        text.append("  - id: ").append(stem).append((char) ('a' + number++)).append("\n    at:   # ").append(LocalDateTime.ofInstant(order.asOf(), order.record().zone()).toString(), 0, 10)
                .append(" hh:mm\n    by:   # ").append(String.join(", ", order.record().people().stream().map(person -> person.id()).toList())).append("\n    in-order: yes\n");
        with(round);
        Map<String, List<Step>> byPart = new LinkedHashMap<>();
        round.steps.forEach(step -> byPart.computeIfAbsent(step.point().split("/")[0], part -> new ArrayList<>()).add(step));
        byPart.forEach((part, steps) -> {
            text.append("    ").append(part).append(":\n");
            Set<String> written = new LinkedHashSet<>();
            steps.forEach(step -> line(part, step, written));
        });
    }

    private void with(Round round) {
        Map<String, Unit.Dimension> read = new LinkedHashMap<>();
        for (Step step : round.steps) {
            Vocabulary.Tooled tooled = step.kind() == Kind.DO ? book.vocabulary().tooled().get(step.what()) : null;
            if (tooled != null) {
                read.put(step.what(), tooled.unit().dimension());
            } else if (step.kind() == Kind.MEASURE) {
                read.put(step.what(), book.vocabulary().aspects().get(step.what()).dimension());
            }
        }
        if (!read.isEmpty()) {
            text.append("    with:\n");
            read.forEach((what, dimension) -> text.append("      ").append(what).append(":   # ").append(instruments(dimension)).append('\n'));
        }
    }

    private String instruments(Unit.Dimension dimension) {
        List<String> fit = order.record().instruments().stream().filter(one -> reads(one, dimension)).map(Instrument::id).toList();
        return fit.isEmpty() ? "none of this record reads it" : String.join(", ", fit);
    }

    private boolean reads(Instrument one, Unit.Dimension dimension) {
        Vocabulary.InstrumentKind kind = book.vocabulary().instruments().get(one.kind());
        return kind != null && kind.leastUncertainty().containsKey(dimension);
    }

    private void line(String part, Step step, Set<String> written) {
        String place = step.point().equals(part) ? "" : step.point().substring(part.length() + 1) + " ";
        String key = place + switch (step.kind()) {
            case PUT_RIGHT, PUT_TOGETHER -> "done";
            case DO -> "done " + step.what();
            case TRY -> "tried " + step.what();
            case ASK -> "told " + step.what();
            case LOOK -> "seen " + step.what();
            default -> step.what();
        };
        comment("      ", says(step));
        if (written.add(key)) {
            text.append("      ").append(key).append(":\n");
        }
    }

    private String says(Step step) {
        if (step.kind() == Kind.DO) {
            Vocabulary.Tooled tooled = book.vocabulary().tooled().get(step.what());
            return step.doing() + (tooled == null ? " Write yes." : " Write the figure in " + tooled.unit().symbol() + ", or yes where none was found.");
        }
        Vocabulary.Aspect aspect = step.kind().isWork() ? null : book.vocabulary().aspects().get(step.what());
        if (aspect == null) {
            return step.instruction();
        }
        return switch (aspect.form()) {
            case ANSWER -> String.join(", ", new TreeSet<>(aspect.answers())) + (step.notBy() == null ? "" : " (by somebody other than " + (step.notBy().isEmpty() ? "who does the work" : step.notBy()) + ")");
            case AMOUNT -> step.doing() + " In " + String.join(" or ", units(step)) + ".";
            case DAYS -> step.doing() + " As marked: 2023-05-14, 2023-05 or 2023.";
            case CODE -> step.doing() + " As marked.";
        };
    }

    /** As the cards have it; other units of the kind may be written as well. */
    private Set<String> units(Step step) {
        Set<String> units = new LinkedHashSet<>();
        step.checks().stream().map(check -> book.cards().get(check)).filter(Objects::nonNull).flatMap(card -> card.wants().stream())
                .filter(want -> want.aspect().equals(step.what()) && want.unit() != null).forEach(want -> units.add(want.unit().symbol()));
        return units;
    }

    private static String inQuotes(String id) {
        return "\"" + id.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private void comment(String indent, String words) {
        StringBuilder line = new StringBuilder(indent + "#");
        for (String word : words.replaceAll("\\s+", " ").split(" ")) {
            if (line.length() + 1 + word.length() > WIDTH && line.length() > indent.length() + 1) {
                text.append(line).append('\n');
                line = new StringBuilder(indent + "#");
            }
            line.append(' ').append(word);
        }
        text.append(line).append('\n');
    }
}
