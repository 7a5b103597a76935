package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class ReadAsTest {

    @Test
    void aStoredRecordHasNothingNewInIt() {
        assertThat(ReadAs.STORED.isWritten("entries[3].is")).isFalse();
        assertThat(ReadAs.STORED.isWritten("machine.top-speed")).isFalse();
    }

    @Test
    void aRecordThatComesInIsNewAsAWhole() {
        assertThat(ReadAs.WRITTEN.isWritten("entries[3].is")).isTrue();
        assertThat(ReadAs.WRITTEN.isWritten("machine.top-speed")).isTrue();
    }

    @Test
    void ofEntriesAddedOnlyTheLastAreNew() {
        ReadAs as = ReadAs.withEntriesFrom(10);
        assertThat(as.isWritten("entries[9].is")).isFalse();
        assertThat(as.isWritten("entries[10].is")).isTrue();
        assertThat(as.isWritten("entries[10]")).isTrue();
        assertThat(as.isWritten("entries[101].corrects")).isTrue();
        assertThat(as.isWritten("machine.top-speed")).isFalse();
        assertThat(as.isWritten("entries")).isFalse();
    }

    @Test
    void ofAChangedSheetOnlyThePartsNamedAreNew() {
        ReadAs as = ReadAs.withParts(Set.of("maker", "instruments"));
        assertThat(as.isWritten("maker.figures[0].is")).isTrue();
        assertThat(as.isWritten("instruments[2].due")).isTrue();
        assertThat(as.isWritten("machine.marque")).isFalse();
        assertThat(as.isWritten("entries[0].is")).isFalse();
    }
}
