package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class MomentTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static Moment at(String time, int seq) {
        return new Moment(DAY, time == null ? null : LocalTime.parse(time), LONDON, seq);
    }

    private static void order(Moment one, Moment other, boolean oneFirst) {
        assertThat(other.surelyAfter(one)).as("%s seq %d before %s seq %d", one, one.seq(), other, other.seq()).isEqualTo(oneFirst);
        assertThat(one.surelyAfter(other)).as("the other way round").isFalse();
    }

    @Test
    void entries_of_one_minute_keep_the_order_in_which_the_program_numbered_them() {
        order(at("09:54", 141), at("09:54", 142), true);
    }

    @Test
    void without_a_number_on_both_neither_of_one_minute_is_later() {
        order(at("09:54", 0), at("09:54", 0), false);
        order(at("09:54", 141), at("09:54", 0), false);
        order(at("09:54", 0), at("09:54", 142), false);
    }

    @Test
    void the_clock_decides_before_the_number() {
        order(at("09:54", 142), at("09:55", 141), true);
        order(at("09:54", 142), at("09:55", 0), true);
    }

    @Test
    void a_number_gives_no_order_to_a_day_without_a_time() {
        order(at(null, 1), at(null, 2), false);
        order(at("23:59", 1), at(null, 2), false);
        order(at("00:00", 2), at(null, 1), false);
    }
}
