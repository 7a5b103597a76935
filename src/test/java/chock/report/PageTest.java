package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {
    @Test
    void a_lead_stands_on_the_first_line_and_the_rest_hangs_below_the_words() {
        String text = new Page(false).put(2, "To clear: ", "x".repeat(50) + " " + "y".repeat(30)).toString();
        assertThat(text).isEqualTo("  To clear: " + "x".repeat(50) + "\n" + " ".repeat(12) + "y".repeat(30) + "\n");
    }

    @Test
    void exactly_80_columns_fit_on_one_line() {
        assertThat(new Page(false).put(0, "a".repeat(39) + " " + "b".repeat(40)).toString().lines()).hasSize(1);
        assertThat(new Page(false).put(0, "a".repeat(40) + " " + "b".repeat(40)).toString().lines()).hasSize(2);
    }

    @Test
    void letters_two_columns_wide_and_marks_of_no_width_are_counted_as_such() {
        assertThat(new Page(false).put(0, "車".repeat(40)).toString().lines()).hasSize(1);
        assertThat(new Page(false).put(0, "車".repeat(41)).toString().lines()).hasSize(2);
        assertThat(new Page(false).put(0, "e\u0301".repeat(80)).toString().lines()).hasSize(1);
    }
}
