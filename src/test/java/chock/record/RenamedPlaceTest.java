package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A place that was renamed: stored records keep the former name, and are read as of today's. */
class RenamedPlaceTest {
    private static final String FORMER = Words.good().replace("point: front-brake/control", "point: front-brake/lever").replace("about: front-brake/hydraulic/hose", "about: front-brake/hose");

    @Test
    void a_stored_record_is_read_as_of_the_new_name() {
        JobRecord record = Words.read(FORMER);
        assertThat(record.entry("e5").orElseThrow().point()).isEqualTo("front-brake/control");
        assertThat(record.claims().get(0).about()).isEqualTo("front-brake/hydraulic/hose");
    }

    @Test
    void what_is_written_now_is_written_under_the_new_name() {
        assertThatThrownBy(() -> RecordReader.read("record.yaml", FORMER.getBytes(StandardCharsets.UTF_8), Words.VOCABULARY, Words.AS_OF, ReadAs.WRITTEN)).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("entries[4].point: 'front-brake/lever' is called front-brake/control today. Write front-brake/control");
    }

    @Test
    void what_the_former_place_carried_came_along() {
        assertThat(Words.VOCABULARY.placeNow("front-brake/lever/pivot")).isEqualTo("front-brake/control/pivot");
        assertThat(Words.VOCABULARY.placeNow("front-brake/levers")).as("another word that begins alike").isEqualTo("front-brake/levers");
        assertThat(Words.VOCABULARY.placeNow("rear-brake")).isEqualTo("rear-brake");
    }
}
