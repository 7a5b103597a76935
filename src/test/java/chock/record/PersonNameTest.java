package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PersonNameTest {
    @ParameterizedTest
    @ValueSource(strings = {"Ida Marrow", "ida marrow", "Ida  Marrow", "Ida\u00a0Marrow", "Ida\u200bMarrow", "Ida Marrow.", " Ida Marrow ", "\uff29\uff44\uff41 Marrow",
            "Ida-Marrow", "lda Marrow", "1da Marrow", "Ida Marr0w", "Ida\u2060 Marrow", "Ida Marrow\u202e"})
    void one_person_however_it_is_written(String other) {
        assertThat(PersonName.isSame("Ida Marrow", other)).as(other).isTrue();
        assertThat(PersonName.isSame(other, "Ida Marrow")).as(other).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Ida Marlow", "Ada Marrow", "Ida Marrowe", "Tom Fell", "Idá Marrow"})
    void other_people_are_others(String other) {
        assertThat(PersonName.isSame("Ida Marrow", other)).isFalse();
    }

    @Test
    void a_name_keeps_to_one_alphabet() {
        assertThat(PersonName.complaint("Ida Marr\u043ew")).contains("it mixes letters of two alphabets (Latin, Cyrillic)");
        assertThat(PersonName.complaint("T\u03bfm Fell")).contains("it mixes letters of two alphabets (Latin, Greek)");
        assertThat(PersonName.complaint("\u0418\u0434\u0430")).isEmpty();
        assertThat(PersonName.complaint("Zo\u00eb O'Brien-\u0141uk")).isEmpty();
        assertThat(PersonName.complaint("\u7530\u4e2d Ida")).isEmpty();
    }
}
