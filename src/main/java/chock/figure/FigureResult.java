package chock.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a figure came to.
 *
 * @param name name of the figure
 * @param inputs every parameter as it was written, in the figure's own order
 * @param results every result by name, in a fixed order
 * @param source where the computation comes from
 */
public record FigureResult(String name, Map<String, String> inputs, Map<String, ResultValue> results, String source) {

    public FigureResult {
        inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
    }
}
