package chock.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One bench computation that can be asked for by name. */
public final class Figure {
    private final String name;
    private final String purpose;
    private final String source;
    private final List<Parameter> parameters;
    private final Function<Arguments, Map<String, ResultValue>> work;

    Figure(String name, String purpose, String source, List<Parameter> parameters, Function<Arguments, Map<String, ResultValue>> work) {
        this.name = name;
        this.purpose = purpose;
        this.source = source;
        this.parameters = List.copyOf(parameters);
        this.work = work;
    }

    public String name() {
        return name;
    }

    /** What it is for, in a sentence. */
    public String purpose() {
        return purpose;
    }

    public List<Parameter> parameters() {
        return parameters;
    }

    /** Where the computation comes from, and whether that was read or is remembered. */
    public String source() {
        return source;
    }

    /** A call that works: {@code load-index index=58}. */
    public String example() {
        return name + parameters.stream().map(p -> " " + p.name() + "=" + p.example()).collect(Collectors.joining());
    }

    /**
     * Computes. The same arguments give the same result, always.
     *
     * @param args value by parameter name; quantities carry their unit ({@code 36psi}), days are ISO dates
     * @throws BadFigureInput when a parameter is unknown, missing or unreadable, or outside its range
     */
    public FigureResult compute(Map<String, String> args) {
        List<String> known = parameters.stream().map(Parameter::name).toList();
        args.keySet().stream().filter(key -> !known.contains(key)).sorted().findFirst().ifPresent(key -> {
            throw new BadFigureInput(name + " has no parameter '" + key + "'" + Nearest.advice(key, known) + "; it takes " + String.join(", ", known));
        });
        Map<String, String> inputs = new LinkedHashMap<>();
        for (Parameter parameter : parameters) {
            String text = args.get(parameter.name());
            if (text != null && !text.isBlank()) {
                inputs.put(parameter.name(), text.strip());
            } else if (parameter.required()) {
                throw new BadFigureInput(name + " needs " + parameter.name() + ", " + parameter.what() + ": write " + parameter.name() + "=" + parameter.example());
            }
        }
        return new FigureResult(name, inputs, work.apply(new Arguments(inputs)), source);
    }
}
