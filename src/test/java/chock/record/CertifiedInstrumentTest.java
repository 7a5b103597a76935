package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** A caliper of this table is believed to ± 0.1 mm, and a better one to what its certificate states. */
class CertifiedInstrumentTest {
    private static String caliper(String uncertainty, String more) {
        return Words.good().replace("kind: caliper, uncertainty: by-kind, calibrated: 2026-03-02, due: 2027-03-02",
                "kind: caliper, uncertainty: " + uncertainty + ", calibrated: 2026-03-02, due: 2027-03-02" + more);
    }

    @Test
    void theCertificateReplacesTheTable() {
        JobRecord record = Words.read(caliper("0.03 mm", ", certificate: K-118").replace("is: 3.1 mm ± 0.2 mm", "is: 3.1 mm"));
        assertThat(record.instrument("cal-1").orElseThrow().certificate()).isEqualTo("K-118");
        Value.Amount amount = (Value.Amount) record.entry("e1").orElseThrow().is();
        assertThat(amount.measured().uncertainty()).isEqualTo(Quantity.parse("0.03 mm"));
    }

    @Test
    void aReadingMayStateAsLittleAsTheCertificate() {
        String good = caliper("0.03 mm", ", certificate: K-118");
        assertThat(Words.read(good.replace("3.1 mm ± 0.2 mm", "3.1 mm ± 0.03 mm")).entry("e1")).isPresent();
        assertThatThrownBy(() -> Words.read(good.replace("3.1 mm ± 0.2 mm", "3.1 mm ± 0.02 mm")))
                .hasMessageContaining("± 0.02 mm is less than the 0.03 mm the instrument has");
    }

    @Test
    void withoutOneTheTableHolds() {
        assertThatThrownBy(() -> Words.read(caliper("0.03 mm", "")))
                .hasMessageContaining("± 0.03 mm is less than the 0.1 mm the table gives a caliper. Write ± 0.1 mm or more, by-kind, or the number of its certificate");
    }

    @Test
    void aTenthOfTheTableIsASlip() {
        assertThat(Words.read(caliper("0.01 mm", ", certificate: K-118")).instrument("cal-1")).isPresent();
        assertThatThrownBy(() -> Words.read(caliper("0.009 mm", ", certificate: K-118")))
                .hasMessageContaining("± 0.009 mm is less than a tenth of the 0.1 mm the table gives a caliper. Read the unit on the certificate again");
    }
}
