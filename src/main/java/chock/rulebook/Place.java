package chock.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pattern of points, such as <code>{end}-brake/{caliper}/{pad}</code>. A name in braces stands for one of the words
 * listed under it in the table of places; the same name means the same word throughout a card.
 *
 * @param pattern as written
 */
public record Place(String pattern) {
    private static final Pattern NAME = Pattern.compile("\\{([a-z]+)}");

    /** What the names in braces mean at this point, or empty when the point is not of this pattern. */
    public Optional<Map<String, String>> match(String point, Map<String, List<String>> words) {
        Matcher names = NAME.matcher(pattern);
        StringBuilder regex = new StringBuilder();
        List<String> order = new ArrayList<>();
        int at = 0;
        while (names.find()) {
            regex.append(Pattern.quote(pattern.substring(at, names.start())));
            regex.append('(').append(String.join("|", words.get(names.group(1)))).append(')');
            order.add(names.group(1));
            at = names.end();
        }
        regex.append(Pattern.quote(pattern.substring(at)));
        Matcher m = Pattern.compile(regex.toString()).matcher(point);
        if (!m.matches()) {
            return Optional.empty();
        }
        Map<String, String> binding = new LinkedHashMap<>();
        for (int i = 0; i < order.size(); i++) {
            String earlier = binding.put(order.get(i), m.group(i + 1));
            if (earlier != null && !earlier.equals(m.group(i + 1))) {
                return Optional.empty();
            }
        }
        return Optional.of(binding);
    }

    /** Every point this pattern stands for once the bound names are filled in. */
    public List<String> points(Map<String, String> binding, Map<String, List<String>> words) {
        List<String> open = List.of(pattern);
        for (Matcher m = NAME.matcher(open.get(0)); m.find(); m = NAME.matcher(open.get(0))) {
            String name = m.group(1);
            List<String> choices = binding.containsKey(name) ? List.of(binding.get(name)) : words.get(name);
            List<String> next = new ArrayList<>();
            for (String point : open) {
                choices.forEach(word -> next.add(point.replace("{" + name + "}", word)));
            }
            open = next;
        }
        return open;
    }

    /** The names in braces. */
    public List<String> names() {
        return NAME.matcher(pattern).results().map(r -> r.group(1)).distinct().toList();
    }

    @Override
    public String toString() {
        return pattern;
    }
}
