package chock.assess;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;

/** Rules that never finish are reported, and nobody waits for them. */
class NoEndTest {
    private static final RuleBook SHIPPED = RuleBook.shipped();

    /** A session whose rules fire so often, or as often as they may. */
    private static KieSession session(int fires) {
        return (KieSession) Proxy.newProxyInstance(NoEndTest.class.getClassLoader(), new Class<?>[] {KieSession.class}, (proxy, method, arguments) -> Math.min(fires, (int) arguments[1]));
    }

    @Test
    void aRuleThatTakesItsOwnGroundAwayIsToldOf() {
        assertThatThrownBy(() -> Reasoning.toTheEnd(session(Integer.MAX_VALUE), SHIPPED, 1_000)).isInstanceOf(IllegalStateException.class).hasMessageContaining("never finish");
    }

    @Test
    void underAHouseTheHouseIsNamed() {
        RuleBook house = SHIPPED.with(HouseBook.read(Path.of("docs/examples/house")));
        assertThatThrownBy(() -> Reasoning.toTheEnd(session(Integer.MAX_VALUE), house, 1_000)).isInstanceOf(UnusableInput.class).hasMessageContaining("docs/examples/house").hasMessageContaining("newest rule of this house");
    }

    @Test
    void rulesThatEndAreLeftAlone() {
        assertThatCode(() -> Reasoning.toTheEnd(session(999), SHIPPED, 1_000)).doesNotThrowAnyException();
    }
}
