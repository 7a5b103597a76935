package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Unit;
import chock.record.Plausible;
import chock.record.Vocabulary;
import chock.record.Vocabulary.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every amount, count, day, instrument and limit of the rule book has its row, and every row is used. */
class PlausibleTableTest {
    private final RuleBook book = RuleBook.shipped();
    private final Vocabulary words = book.vocabulary();
    private final Plausible plausible = words.plausible();

    private Set<String> aspects(Form form) {
        return words.aspects().values().stream().filter(a -> a.form() == form).map(Vocabulary.Aspect::name).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyAmountHasARowAndEveryRowAnAmount() {
        assertThat(plausible.amounts().keySet()).isNotEmpty().containsExactlyInAnyOrderElementsOf(aspects(Form.AMOUNT));
    }

    @Test
    void everyMarkedDayHasARowAndEveryRowAMark() {
        assertThat(plausible.dates().keySet()).isNotEmpty().containsExactlyInAnyOrderElementsOf(aspects(Form.DAYS));
    }

    @Test
    void aRowIsInAUnitOfItsKind() {
        plausible.amounts().forEach((aspect, rows) -> rows.forEach(row ->
                assertThat(row.canBe().low().unit().dimension()).as(aspect).isEqualTo(words.aspects().get(aspect).dimension())));
    }

    @Test
    void whatIsCountedInPiecesIsWholeButForTheTwoFactors() {
        List<String> counted = plausible.amounts().values().stream().flatMap(List::stream).filter(row -> row.canBe().low().unit() == Unit.TIMES && !row.whole()).map(Plausible.Row::of).toList();
        assertThat(counted).as("not counted, but a factor").containsExactly("mixing-factor");
    }

    @Test
    void onlyWhatHasASignMayBeNegative() {
        Set<String> negative = plausible.amounts().values().stream().flatMap(List::stream).filter(row -> row.canBe().low().value().signum() < 0).map(Plausible.Row::of).collect(Collectors.toCollection(TreeSet::new));
        assertThat(negative).containsExactly("air-temperature", "altitude", "beam-fall", "coil-temperature", "timing-off-the-mark");
    }

    @Test
    void whereThePlaceDecidesEveryPlaceAskedAtHasARow() {
        List<String> holes = new ArrayList<>();
        Set<String> asked = new TreeSet<>();
        for (Card card : book.cards().values()) {
            for (Card.Want want : card.wants()) {
                if (want.form() == Form.AMOUNT) {
                    (want.place() == null ? card.place() : want.place()).points(Map.of(), book.library().places()).forEach(point -> {
                        asked.add(want.aspect() + " " + point);
                        if (plausible.amounts().get(want.aspect()).stream().noneMatch(row -> row.points().isEmpty() || row.points().contains(point))) {
                            holes.add(want.aspect() + " " + point);
                        }
                    });
                }
            }
        }
        assertThat(holes).as("asked there, and no row is for that place").isEmpty();
        List<String> idle = plausible.amounts().values().stream().flatMap(List::stream).flatMap(row -> row.points().stream().map(point -> row.of() + " " + point)).filter(key -> !asked.contains(key)).toList();
        assertThat(idle).as("a row for a place where nothing is asked").isEmpty();
    }

    @Test
    void everyInstrumentHasARowForEveryKindItMeasuresAndNoOther() {
        Set<String> known = words.instruments().values().stream().flatMap(kind -> kind.leastUncertainty().keySet().stream().map(d -> kind.name() + " " + d)).collect(Collectors.toCollection(TreeSet::new));
        Set<String> rows = plausible.tools().entrySet().stream().flatMap(e -> e.getValue().stream().map(tool -> e.getKey() + " " + tool.measures())).collect(Collectors.toCollection(TreeSet::new));
        assertThat(rows).isNotEmpty().isEqualTo(known);
    }

    @Test
    void everyLimitHasARowAndEveryRowALimit() {
        Set<String> ids = book.limits().stream().map(Limit::id).collect(Collectors.toCollection(TreeSet::new));
        assertThat(new TreeSet<>(plausible.limits().keySet())).isNotEmpty().isEqualTo(ids);
    }

    @Test
    void aMakersFigureHasARangeWhereOneIsAskedFor() {
        List<String> without = book.limits().stream().filter(l -> l.maker() != Limit.Maker.NONE && plausible.limits().get(l.id()).maker() == null).map(Limit::id).distinct().toList();
        List<String> idle = book.limits().stream().filter(l -> l.maker() == Limit.Maker.NONE && plausible.limits().get(l.id()).maker() != null).map(Limit::id).distinct().toList();
        assertThat(without).as("asks for the maker's figure, and any figure would do").isEmpty();
        assertThat(idle).as("a range for a maker's figure that is never asked for").isEmpty();
    }

    @Test
    void noLimitOfTheRuleBookOrALawLiesOutside() {
        List<Limit> all = Stream.concat(book.limits().stream(), book.codes().values().stream().flatMap(code -> code.limits().stream())).toList();
        assertThat(all).isNotEmpty();
        assertThat(all.stream().flatMap(l -> l.impossible(plausible).stream())).isEmpty();
    }

    @Test
    void aHintIsAnImperativeWithoutAFullStop() {
        List<String> hints = new ArrayList<>();
        plausible.amounts().values().forEach(rows -> rows.forEach(row -> hints.add(row.hint())));
        plausible.description().values().forEach(row -> hints.add(row.hint()));
        plausible.pairs().forEach(pair -> hints.add(pair.hint()));
        plausible.dates().values().forEach(mark -> hints.add(mark.hint()));
        assertThat(hints).isNotEmpty().allMatch(hint -> Character.isUpperCase(hint.charAt(0)) && !hint.endsWith("."));
    }

    @Test
    void aLimitTriedOutIsHeldAgainstItsRow() {
        assertThatThrownBy(() -> Trial.read("brakes.pad-thickness=150 mm", book)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("150 mm is not possible for brakes.pad-thickness: it lies between 0.5 mm and 10 mm: check the unit and the decimal point");
        assertThat(Trial.read("brakes.pad-thickness=3 mm", book)).isNotNull();
    }
}
