package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RecordFormTest {

    private static String former() {
        return Words.good().replace("job-record/2", "job-record/1").replaceAll(", seq: \\d+|, is: 24 N·m, with: wrench-1", "");
    }

    @Test
    void both_forms_are_read_and_the_record_says_which() {
        assertThat(RecordForm.names()).containsExactly("job-record/2", "job-record/1");
        assertThat(Words.read(Words.good()).form()).isEqualTo(2);
        assertThat(Words.read(former()).form()).isEqualTo(1);
    }

    @Test
    void each_key_that_the_second_form_brought_is_refused_in_the_first() {
        assertThat(RecordForm.keysSince()).containsEntry("entries[].seq", 2).containsEntry("sessions", 2).doesNotContainKey("entries[].id");
        assertThatThrownBy(() -> Words.read(Words.good().replace("job-record/2", "job-record/1"))).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("entries[13].seq: 'seq' is a key of job-record/2, and this file is job-record/1. Write job-record/2 on the first line to use this");
    }

    @Test
    void a_key_that_no_form_has_is_not_known_in_either() {
        for (String text : new String[] {former(), Words.good()}) {
            assertThatThrownBy(() -> Words.read(text.replace("done: bled", "done: bled, seqq: 3"))).hasMessageContaining("the key 'seqq' is not known here");
        }
    }

    @Test
    void entries_of_one_minute_that_the_program_numbered_may_correct_each_other_in_that_order_only() {
        String good = Words.good().replace("at: 2026-11-23 09:30, seq: 7", "at: 2026-11-23 09:31, seq: 7");
        String forwards = good.replace("seen: date-mark, is: 2022-05-14}", "seen: date-mark, is: 2022-05-14, corrects: e14, reason: slip}");
        assertThat(Words.read(forwards).entry("e15").orElseThrow().corrects()).isEqualTo("e14");
        // In the file e14 stands first; only its number says that it came later.
        assertThatThrownBy(() -> Words.read(forwards.replace("seq: 7", "seq: 9"))).hasMessageContaining("e14 is not earlier than this entry");
    }
}
