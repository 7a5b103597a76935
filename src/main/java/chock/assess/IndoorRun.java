package chock.assess;

import chock.assess.facts.RunAir;
import chock.assess.facts.RunLevel;
import chock.rulebook.Applied;
import chock.rulebook.RunSheet;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the plan of a run under a roof is made of.
 *
 * @param sheet the plan as the rule book writes it down, with its caution; null when it does not
 * @param air what is known of the air, or null when nothing can be predicted
 * @param levels the limits it is held against, by name
 */
public record IndoorRun(RunSheet sheet, RunAir air, Map<RunLevel.Name, Applied> levels) {

    static IndoorRun of(RunSheet sheet, Conclusions concluded) {
        Map<RunLevel.Name, Applied> levels = new TreeMap<>();
        concluded.levels().stream().filter(level -> !level.limit().lacks()).forEach(level -> levels.put(level.name(), level.limit().applied()));
        RunAir air = worst(concluded.air());
        return new IndoorRun(sheet, air == null || air.peak().isEmpty() ? null : air, levels);
    }

    // Readings that contradict each other give several. The plan is made for the worst, and never depends on the engine's order.
    private static RunAir worst(List<RunAir> all) {
        return all.stream().max(Comparator.comparing((RunAir air) -> air.peak().isEmpty())
                .thenComparing(air -> air.peak().map(peak -> peak.value().value()).orElse(BigDecimal.ZERO))
                .thenComparing(air -> String.join(" ", air.from().stream().map(current -> current.id()).toList()))).orElse(null);
    }
}
