package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found by its place is what would be found by looking at everything. */
class PlacesTest {

    @Test
    void everythingOnAPlaceAboveItAndBelowItIsFoundOnceAndInOrder() {
        List<String> points = Examples.BOOK.vocabulary().points().stream().sorted(Comparator.reverseOrder()).toList();
        Places<String> places = new Places<>(points, point -> point);
        assertThat(points).hasSizeGreaterThan(150);
        for (String one : points) {
            assertThat(places.touching(List.of(one))).as(one)
                    .isEqualTo(points.stream().filter(other -> Entry.covers(one, other) || Entry.covers(other, one)).toList()).contains(one);
        }
    }

    @Test
    void aNameThatOnlyBeginsAlikeIsAnotherPlace() {
        Places<String> places = new Places<>(List.of("engine", "engine/head", "engine/head-nuts", "engine/head/gasket", "engine-2"), point -> point);
        assertThat(places.touching(List.of("engine/head"))).containsExactly("engine", "engine/head", "engine/head/gasket");
        assertThat(places.touching(List.of("engine/head/gasket", "engine-2"))).containsExactly("engine", "engine/head", "engine/head/gasket", "engine-2");
        assertThat(places.touching(List.of("rear-wheel"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"merle-released.yaml", "lark-worked-on-after.yaml", "harrow-prewar-single.yaml"})
    void workIsFoundWhereverItUndoes(String name) throws IOException {
        JobRecord record = Examples.read(name);
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        List<Entry> works = record.entries().stream().filter(e -> e.deed() == Deed.DONE).sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id)).toList();
        List<Wanted> wanted = Examples.BOOK.cards().keySet().stream().flatMap(check -> concluded.required(check).stream()).flatMap(r -> concluded.of(r, Wanted.class).stream()).toList();
        assertThat(wanted).hasSizeGreaterThan(100);
        int found = 0;
        for (Wanted one : wanted) {
            List<Entry> undoing = works.stream().filter(one::isUndoneBy).toList();
            assertThat(concluded.requirements().worksUndoing(one)).as(one.required() + " " + one.name()).extracting(work -> work.entry()).isEqualTo(undoing);
            found += undoing.size();
        }
        assertThat(found).isGreaterThan(20);
    }
}
