package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.UnusableInput;
import chock.rulebook.Assembled.Implied;
import chock.rulebook.Assembly.Level;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How machines are put together is read strictly: what cannot be right is refused with file, line and what to write instead. */
class AssemblyReaderTest {
    private static final RuleBook BOOK = RuleBook.shipped();

    private static String shipped() {
        return RuleBookLoader.shippedFiles().get("assembly.yaml");
    }

    private static void load(String assembly) {
        SortedMap<String, String> files = new TreeMap<>(RuleBookLoader.shippedFiles());
        files.put("assembly.yaml", assembly);
        new RuleBookLoader().load(files, BOOK::rules);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            work: any, at: rear-wheel/cush-drive, out: [rear-wheel] | work: polished, at: rear-wheel/cush-drive, out: [rear-wheel] | 'polished' is not a known work
            work: any, at: rear-wheel/cush-drive, out: [rear-wheel] | work: any, at: rear-wheel/hub, out: [rear-wheel] | 'rear-wheel/hub' is not a place
            work: any, at: rear-wheel/cush-drive, out: [rear-wheel] | work: any, at: rear-wheel/cush-drive, out: [rear-axle] | 'rear-axle' is not a place
            work: any, at: rear-wheel/cush-drive, out: [rear-wheel] | work: any, at: rear-wheel/cush-drive, off-and-on: [rear-wheel] | unknown key 'off-and-on'
            work: any, at: rear-wheel/cush-drive, out: [rear-wheel] | work: any, at: rear-wheel/cush-drive | it implies nothing
            when: {drive: chain}, off: [transmission/chain] | when: {final-drive: chain}, off: [transmission/chain] | 'final-drive' is not a field of a machine's description
            when: {drive: chain}, off: [transmission/chain] | when: {drive: rope}, off: [transmission/chain] | drive is never 'rope'
            tyres.spindle-lock, | tyres.spindle-latch, | 'tyres.spindle-latch' is not a proof
            tyres.spindle-lock, | tyres.spindle-lock, tyres.spindle-torque, | 'tyres.spindle-torque' has two kinds
            '  tightened: [torque, lock]' | '  tightened: [torque, luck]' | 'luck': write one of
            '  damaged: [substance' | '  dropped: [substance' | 'damaged' is left out
            """)
    void whatCannotBeRightIsRefused(String from, String to, String why) {
        String changed = shipped().replaceFirst(java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to));
        assertThat(changed).isNotEqualTo(shipped());
        assertThatThrownBy(() -> load(changed)).isInstanceOf(UnusableInput.class).hasMessageContaining(why).hasMessageMatching("(?s).*rules/assembly\\.yaml:\\d+.*");
    }

    @Test
    void aProofWithoutAKindIsNamed() {
        assertThatThrownBy(() -> load(shipped().replace("tyres.spindle-lock, ", ""))).isInstanceOf(UnusableInput.class).hasMessageContaining("no kind is named for tyres.spindle-lock lock");
    }

    @Test
    void eachWorkIsFollowedUntilNothingNewTurnsUp() {
        Assembled machine = BOOK.library().assembly().of(Map.of("rear-wheel.tube", "yes", "rear-wheel.spoked", "yes", "rear-brake.type", "drum", "rear-brake.worked-by", "rod", "drive", "chain"));
        Assembled.Reached reached = machine.reached("replaced", "rear-wheel/tube");
        Implied spindle = reached.at("rear-wheel/spindle").get(0);
        assertThat(spindle.chain()).extracting(one -> one.level() + " " + one.place()).containsExactly("out rear-wheel/tyre", "out rear-wheel", "out rear-wheel/spindle");
        assertThat(reached.within("rear-brake")).contains(Level.OUT, Level.OFF, Level.SET);
        assertThat(reached.within("front-wheel")).isEmpty();
        assertThat(machine.reached("inflated", "rear-wheel/tyre").all()).isEmpty();
        assertThat(machine.reached("loosened", "controls/levers").at("controls/levers")).extracting(Implied::level).isEqualTo(List.of(Level.SET));
    }
}
