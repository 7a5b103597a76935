package chock.rehearse;

import chock.record.Spelling;
import io.cucumber.cucumberexpressions.CaptureGroupTransformer;
import io.cucumber.cucumberexpressions.Expression;
import io.cucumber.cucumberexpressions.ExpressionFactory;
import io.cucumber.cucumberexpressions.ParameterType;
import io.cucumber.cucumberexpressions.ParameterTypeRegistry;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The steps there are, as they explain themselves.
 *
 * @param steps every step, expectations last, in the order of their words
 * @param words what may stand for the words in braces, by word
 */
record StepList(List<Step> steps, Map<String, Word> words) {
    private static final int MOST = 3;
    /** Above this share of words that do not fit, two sentences are not about the same thing. */
    private static final double STRANGE = 0.35;
    private static final double STRANGEST = 0.5;
    /** What fits worse than the best by more than this is not shown beside it. */
    private static final double MUCH_STRANGER = 0.1;

    /**
     * One step.
     *
     * @param expression its wording, with words in braces
     * @param says what it means
     * @param example one line of it
     * @param isExpectation whether it says what is expected
     */
    record Step(Expression expression, String says, String example, boolean isExpectation) {
        String wording() {
            return expression.getSource();
        }

        boolean matches(String line) {
            return expression.match(line) != null;
        }
    }

    /**
     * A word in braces.
     *
     * @param may what may stand for it, in words
     * @param example one thing that may
     * @param pattern its form
     */
    record Word(String may, String example, Pattern pattern) { }

    static StepList known() {
        ParameterTypeRegistry registry = new ParameterTypeRegistry(Locale.ENGLISH);
        Map<String, Word> words = new LinkedHashMap<>();
        for (Method method : sorted(StepWords.class)) {
            io.cucumber.java.ParameterType form = method.getAnnotation(io.cucumber.java.ParameterType.class);
            if (form != null) {
                Explained explained = method.getAnnotation(Explained.class);
                words.put(method.getName(), new Word(explained.value(), explained.example(), Pattern.compile(form.value())));
                registry.defineParameterType(new ParameterType<>(method.getName(), List.of(form.value()), String.class, (CaptureGroupTransformer<String>) groups -> groups[0], false, false));
            }
        }
        ExpressionFactory expressions = new ExpressionFactory(registry);
        List<Step> steps = new ArrayList<>();
        for (Method method : sorted(BenchSteps.class)) {
            Explained explained = method.getAnnotation(Explained.class);
            String wording = wording(method);
            if (wording != null) {
                steps.add(new Step(expressions.createExpression(wording), explained.value(), explained.example(), method.isAnnotationPresent(Then.class)));
            }
        }
        steps.sort(Comparator.comparing(Step::isExpectation).thenComparing(Step::wording));
        return new StepList(List.copyOf(steps), words);
    }

    private static String wording(Method method) {
        Given given = method.getAnnotation(Given.class);
        Then then = method.getAnnotation(Then.class);
        return given != null ? given.value() : then != null ? then.value() : null;
    }

    // The order in which a class lists its methods is not fixed.
    private static List<Method> sorted(Class<?> kind) {
        return Arrays.stream(kind.getDeclaredMethods()).sorted(Comparator.comparing(Method::getName)).toList();
    }

    boolean knows(String line) {
        return steps.stream().anyMatch(step -> step.matches(line));
    }

    /** The lines somebody may have meant, nearest first, ready to be pasted; at most three. */
    List<String> nearest(String keyword, String line) {
        record Near(String line, double strangeness) { }
        List<Near> near = steps.stream().map(step -> new Fit(step, line.strip().split("\\s+")))
                .filter(fit -> fit.strangeness() <= STRANGEST && fit.line() != null)
                .map(fit -> new Near(keyword + " " + fit.line(), fit.strangeness()))
                .sorted(Comparator.comparingDouble(Near::strangeness)).toList();
        // What is stranger than strange is worth one guess, and only where it speaks of the same thing.
        if (!near.isEmpty() && near.get(0).strangeness > STRANGE) {
            String of = keyword + " " + line.strip().split("\\s+")[0] + " ";
            return near.stream().map(Near::line).filter(guess -> guess.startsWith(of)).limit(1).toList();
        }
        return near.stream().filter(n -> n.strangeness <= STRANGE && n.strangeness <= near.get(0).strangeness + MUCH_STRANGER).map(Near::line).distinct().limit(MOST).toList();
    }

    /** How well a line fits a step, word by word, and the line with what does not fit replaced. */
    private final class Fit {
        private final Step step;
        private final String[] said;
        private final List<String> parts;
        private final double[][] cost;
        private final int[][] took;

        Fit(Step step, String[] said) {
            this.step = step;
            this.said = said;
            // {writer} stands before the place without a blank, and what may be left out stands behind without one.
            String spaced = step.wording().replace("{writer}", "{writer} ").replace("{at}", " {at}").replace("{ago}", " {ago}").replaceAll("\\(s\\)", "");
            this.parts = List.of(spaced.split("\\s+"));
            this.cost = new double[said.length + 1][parts.size() + 1];
            this.took = new int[said.length + 1][parts.size() + 1];
            fill();
        }

        // took: how many words the part at the end took; -1 when the last word fits nothing.
        private void fill() {
            for (int i = 0; i <= said.length; i++) {
                for (int j = 0; j <= parts.size(); j++) {
                    if (i == 0 && j == 0) {
                        continue;
                    }
                    cost[i][j] = i > 0 ? cost[i - 1][j] + 0.9 : Double.MAX_VALUE;
                    took[i][j] = -1;
                    for (int words = 0; j > 0 && words <= i; words++) {
                        double with = cost[i - words][j - 1] + cost(parts.get(j - 1), String.join(" ", Arrays.copyOfRange(said, i - words, i)), words);
                        if (with < cost[i][j]) {
                            cost[i][j] = with;
                            took[i][j] = words;
                        }
                    }
                }
            }
        }

        private double cost(String part, String text, int count) {
            if (!part.startsWith("{")) {
                return count == 0 ? 1 : count > 1 ? Double.MAX_VALUE : (double) slips(part, text) / Math.max(part.length(), text.length());
            }
            if (count == 0) {
                return isOptional(part) ? 0 : 0.8;
            }
            return fits(part, text) ? 0.2 * count : meant(part, text) != null ? 0.4 * count : 1.2 * count;
        }

        private int slips(String part, String text) {
            int longest = Math.max(part.length(), text.length());
            return part.equals(text) ? 0 : Spelling.nearest(text, List.of(part)).isEmpty() ? longest : Math.max(1, longest / 4);
        }

        private boolean isOptional(String part) {
            return part.equals("{writer}") || part.equals("{at}") || part.equals("{ago}");
        }

        private boolean fits(String part, String text) {
            String name = part.substring(1, part.length() - 1);
            return switch (name) {
                case "int" -> text.matches("\\d+");
                case "string" -> text.matches("\"[^\"]+\"");
                case "writer" -> text.matches("(ida|tom) wrote that");
                case "at", "ago" -> words.get(name).pattern().matcher(" " + text).matches();
                default -> words.get(name).pattern().matcher(text).matches();
            };
        }

        /** The nearest of the few words that may stand there, or null. */
        private String meant(String part, String text) {
            Word word = words.get(part.substring(1, part.length() - 1));
            if (word == null || !word.pattern().pattern().matches("[a-z -]+(\\|[a-z -]+)+")) {
                return null;
            }
            return Spelling.nearest(text, List.of(word.pattern().pattern().split("\\|"))).stream().findFirst().orElse(null);
        }

        double strangeness() {
            return cost[said.length][parts.size()] / Math.max(said.length, parts.size());
        }

        /** The line with what does not fit replaced, or the example of the step; null when nothing but words in braces would fit. */
        String line() {
            List<String> line = new ArrayList<>();
            int i = said.length;
            for (int j = parts.size(); j > 0 || i > 0; ) {
                if (took[i][j] < 0) {
                    i--;
                    continue;
                }
                String text = String.join(" ", Arrays.copyOfRange(said, i - took[i][j], i));
                i -= took[i][j];
                String part = parts.get(--j);
                if (!part.startsWith("{")) {
                    line.add(0, part.equals(text) || step.matches(text) ? text : part);
                } else if (!text.isEmpty()) {
                    line.add(0, fits(part, text) || meant(part, text) == null ? text : meant(part, text));
                }
            }
            String mended = String.join(" ", line);
            boolean hasWordsOfItsOwn = parts.stream().anyMatch(p -> !p.startsWith("{"));
            return step.matches(mended) ? mended : hasWordsOfItsOwn ? step.example() : null;
        }
    }

    /** The page that explains them. */
    String page() {
        StringBuilder page = new StringBuilder("""
                # The steps of a scenario

                Written from the steps themselves; not to be edited. `chock rehearse` runs scenarios that speak in them.

                A scenario describes a machine and what was written about it, and then says what Chock has to find. A word in braces stands for something of yours; the second table says what. Steps begin with Given, And or Then; after the first Then nothing more can be said of the machine.

                ```gherkin
                Feature: Friction material

                  @brakes.pad-thickness
                  Rule: Every disc pad keeps enough friction material

                    Scenario Outline: on both sides of the limit
                      Given a motorcycle with one hydraulic disc in front and a rod drum behind
                      And front-brake/caliper/inner-pad measured thickness <thickness>
                      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

                      Examples:
                        | thickness       | state |
                        | 1.4 mm ± 0.1 mm | fault |
                        | 1.6 mm ± 0.1 mm | doubt |
                        | 1.7 mm ± 0.1 mm | met   |
                ```
                """);
        table(page, "What is so", "Given", false);
        table(page, "What is found", "Then", true);
        page.append("\n## Words in braces\n| word | what may stand there | example |\n|---|---|---|\n");
        words.forEach((name, word) -> page.append("| `{").append(name).append("}` | ").append(word.may()).append(" | `").append(word.example()).append("` |\n"));
        page.append("| `{int}` | a whole number | `2` |\n| `{string}` | words in quotation marks | `\"at least 1.5 mm\"` |\n");
        return page.toString();
    }

    private void table(StringBuilder page, String title, String keyword, boolean expectations) {
        page.append("\n## ").append(title).append("\n| step | means | example |\n|---|---|---|\n");
        steps.stream().filter(s -> s.isExpectation() == expectations).forEach(s ->
                page.append("| ").append(keyword).append(" `").append(s.wording()).append("` | ").append(s.says()).append(" | `").append(s.example()).append("` |\n"));
    }
}
