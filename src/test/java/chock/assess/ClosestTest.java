package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked values of JCGM 106 and ILAC-G8 themselves are held in {@code ConformityTest}; here is what becomes of them in a verdict. */
class ClosestTest {
    private static List<Closest> closest(String name) throws IOException {
        return Closest.of(Examples.judge(Examples.read(name)));
    }

    @Test
    void theLeastSureComesFirst() throws IOException {
        List<Closest> all = closest("lark-too-close.yaml");
        assertThat(all).hasSizeGreaterThan(20).isSortedAccordingTo((a, b) -> a.conformity().value().compareTo(b.conformity().value()));
        // 1.1 mm ± 0.2 mm, at least 1.0 mm: one standard uncertainty inside, Φ(1) = 84.13 %
        assertThat(all.get(0).check()).isEqualTo("tyres.tread-depth");
        assertThat(all.get(0).conformity().rounded(2).value()).isEqualByComparingTo("84.13");
        assertThat(all.get(0).state()).isEqualTo(State.DOUBT);
    }

    /** The guard band of one U is two standard uncertainties: what is met is at least Φ(2) = 97.72 % sure of each end (ILAC-G8:09/2019, below 2.5 % risk; read in a copy). */
    @Test
    void whatIsMetIsSure() throws IOException {
        List<Closest> met = closest("merle-released.yaml");
        assertThat(met).hasSizeGreaterThan(30).allMatch(c -> c.state() == State.MET);
        assertThat(met).allSatisfy(c -> {
            boolean twoEnds = c.limit().bounds().low() != null && c.limit().bounds().high() != null;
            assertThat(c.conformity().value()).as(c.check()).isGreaterThan(new BigDecimal(twoEnds ? "95.44" : "97.72"));
        });
    }

    @Test
    void aFaultIsMoreLikelyThanNotOne() throws IOException {
        assertThat(closest("lark-faults.yaml")).filteredOn(c -> c.state() == State.FAULT).isNotEmpty().allMatch(c -> c.conformity().value().compareTo(new BigDecimal(50)) <= 0);
    }
}
