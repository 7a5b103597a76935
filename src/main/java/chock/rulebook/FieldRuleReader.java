package chock.rulebook;

import chock.record.DescriptionField;
import chock.record.FieldRule;
import chock.record.ValueTest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Reads what the fields of a machine's description mean: what they deny, and which of their values are unusual. */
final class FieldRuleReader {
    private static final String END = "{end}";

    private final Map<String, List<String>> places;
    private final SortedSet<String> points;
    private final Set<String> aspects;

    /**
     * @param places words behind the names in braces
     * @param points every place the rule book knows
     * @param aspects everything it looks at, or null when that is not known
     */
    FieldRuleReader(Map<String, List<String>> places, SortedSet<String> points, Set<String> aspects) {
        this.places = places;
        this.points = points;
        this.aspects = aspects;
    }

    /** One rule, or one for each end where the field names them with {@code {end}}. */
    List<FieldRule> read(Sheet sheet) {
        String name = sheet.text("field");
        String at = sheet.text("at");
        boolean asBuilt = sheet.yes("as-built");
        Sheet denies = sheet.has("denies") ? sheet.sheet("denies") : null;
        Sheet found = sheet.has("denies-aspects") ? sheet.sheet("denies-aspects") : null;
        List<String> except = sheet.texts("except");
        List<Sheet> unusual = sheet.sheets("unusual");
        sheet.done();
        if (name == null || at == null) {
            return List.of();
        }
        List<FieldRule> rules = new ArrayList<>();
        for (String end : name.contains(END) ? places.get("end") : List.of("")) {
            String field = name.replace(END, end);
            if (!DescriptionField.names().contains(field)) {
                sheet.fault("field", "'" + field + "' is no field of the description that work can change", "Known: " + String.join(", ", DescriptionField.names()) + ".");
                return rules;
            }
            pointed(sheet, "at", at.replace(END, end));
            except.forEach(aspect -> looked(sheet, "except", aspect));
            rules.add(new FieldRule(field, at.replace(END, end), asBuilt, denied(field, denies, end), deniedAspects(field, found), Set.copyOf(except),
                    unusual.stream().map(one -> unusual(field, one, end)).filter(java.util.Objects::nonNull).toList()));
        }
        return rules;
    }

    private Map<String, Set<String>> denied(String field, Sheet denies, String end) {
        Map<String, Set<String>> all = new LinkedHashMap<>();
        for (String value : denies == null ? Set.<String>of() : denies.keys()) {
            valued(denies, field, value);
            Set<String> denied = new LinkedHashSet<>();
            for (String pattern : denies.texts(value)) {
                new Place(pattern.replace(END, end)).points(Map.of(), places).forEach(point -> {
                    pointed(denies, value, point);
                    denied.add(point);
                });
            }
            all.put(value, denied);
        }
        return all;
    }

    private Map<String, Set<String>> deniedAspects(String field, Sheet found) {
        Map<String, Set<String>> all = new LinkedHashMap<>();
        for (String value : found == null ? Set.<String>of() : found.keys()) {
            valued(found, field, value);
            found.texts(value).forEach(aspect -> looked(found, value, aspect));
            all.put(value, new TreeSet<>(found.texts(value)));
        }
        return all;
    }

    private FieldRule.Unusual unusual(String field, Sheet sheet, String end) {
        ValueTest is = tests(sheet, "is", end);
        List<Map<String, ValueTest>> usual = new ArrayList<>();
        for (Sheet one : sheet.sheets("usual")) {
            Map<String, ValueTest> together = new LinkedHashMap<>();
            for (String key : one.keys()) {
                String other = key.replace(END, end);
                if (!other.equals(DescriptionField.BUILT) && !DescriptionField.names().contains(other)) {
                    one.fault(key, "'" + other + "' is no field of the description", "Known: built, " + String.join(", ", DescriptionField.names()) + ".");
                }
                together.put(other, tests(one, key, end));
            }
            usual.add(together);
        }
        String removes = sheet.text("removes");
        sheet.done();
        return is == null || removes == null ? null : new FieldRule.Unusual(is, usual, removes.replace(END, end));
    }

    private static ValueTest tests(Sheet sheet, String key, String end) {
        List<ValueTest> tests = new ArrayList<>();
        for (String text : sheet.texts(key)) {
            try {
                tests.add(ValueTest.parse(text.replace(END, end)));
            } catch (chock.quantity.UnreadableQuantity e) {
                sheet.fault(key, e.getMessage(), "Write a value, or below, up to or above with an amount, or before or from with a year.");
            }
        }
        if (tests.isEmpty()) {
            sheet.fault(key, "no value stands here", "Write [a, b].");
            return null;
        }
        return ValueTest.anyOf(tests);
    }

    private static void valued(Sheet sheet, String field, String value) {
        List<String> known = DescriptionField.valuesOf(field);
        if (!known.isEmpty() && !known.contains(value)) {
            sheet.fault(value, "'" + value + "' is no value of " + field, "Write one of " + String.join(", ", known) + ".");
        }
    }

    private void pointed(Sheet sheet, String key, String point) {
        if (!points.contains(point)) {
            sheet.fault(key, "'" + point + "' is no place this rule book knows", "List it under points in rules/evidence/words.yaml, or mend it.");
        }
    }

    private void looked(Sheet sheet, String key, String aspect) {
        if (aspects != null && !aspects.contains(aspect)) {
            sheet.fault(key, "no check looks at '" + aspect + "'", "Mend the word.");
        }
    }
}
