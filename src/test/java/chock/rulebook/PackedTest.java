package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What the build packs for a quick start is the rule book that stands in the files, and nothing else. */
class PackedTest {
    private static final RuleBook SHIPPED = RuleBook.shipped();

    @Test
    void packedAndUnpackedIsTheSameOutline() throws IOException {
        Packed packed = RuleBookLoader.pack(RuleBookLoader.shippedFiles());

        assertThat(packed.outlines()).containsKeys("book.yaml", "brakes/checks.yaml", "brakes/limits.yaml", "codes/GB.yaml", "air/plan.yaml");
        assertThat(Packed.read(new ByteArrayInputStream(packed.bytes()))).isEqualTo(packed);
    }

    @Test
    void theProgramStartsWithWhatTheBuildPacked() throws IOException {
        try (var in = getClass().getClassLoader().getResourceAsStream(Packed.NAME)) {
            assertThat(in).as("left by the build").isNotNull();
            assertThat(Packed.read(in)).isEqualTo(RuleBookLoader.pack(RuleBookLoader.shippedFiles()));
        }
    }

    @Test
    void theRuleBookIsTheOneInTheFiles() {
        RuleBook read = new RuleBookLoader().load(RuleBookLoader.shippedFiles(), SHIPPED::rules);

        assertThat(SHIPPED.digest()).isEqualTo(read.digest());
        assertThat(SHIPPED.version()).isEqualTo(read.version());
        assertThat(SHIPPED.cards()).hasSizeGreaterThan(250).usingRecursiveComparison().isEqualTo(read.cards());
        assertThat(SHIPPED.limits()).hasSizeGreaterThan(100).isEqualTo(read.limits());
        assertThat(SHIPPED.codes()).hasSizeGreaterThan(2).isEqualTo(read.codes());
        assertThat(SHIPPED.library()).isEqualTo(read.library());
        assertThat(SHIPPED.vocabulary()).usingRecursiveComparison().isEqualTo(read.vocabulary());
        assertThat(SHIPPED.gates()).isEqualTo(read.gates());
        assertThat(SHIPPED.ride()).isEqualTo(read.ride());
        assertThat(SHIPPED.run()).isEqualTo(read.run());
        assertThat(SHIPPED.reviewEvery()).isEqualTo(read.reviewEvery());
        assertThat(SHIPPED.longestRelease()).isEqualTo(read.longestRelease()).isEqualTo(java.time.Period.ofDays(30));
    }
}
