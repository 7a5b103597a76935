package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.UnreadableQuantity;
import chock.record.Fault;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * A mapping in a YAML file, read strictly: every key is asked for by name, and what was not asked for is a fault.
 * Faults are collected, not thrown, so that a file reports all of them at once.
 */
public final class Sheet {
    private final String file;
    private final String path;
    private final int line;
    private final Map<String, Outline> fields = new LinkedHashMap<>();
    private final Set<String> asked = new LinkedHashSet<>();
    private final Set<String> offered = new LinkedHashSet<>();
    private final List<Fault> faults;

    private Sheet(String file, String path, Outline outline, List<Fault> faults) {
        this.file = file;
        this.path = path;
        this.line = outline.line();
        this.faults = faults;
        if (outline instanceof Outline.Keys mapping) {
            for (Outline.Key key : mapping.keys()) {
                if (fields.put(key.name(), key.value()) != null) {
                    faults.add(new Fault(file, key.line(), inside(key.name()), "the key stands twice", "Keep one of them."));
                }
            }
        } else {
            faults.add(new Fault(file, line, path, "a mapping is wanted here", "Write key: value pairs."));
        }
    }

    /** Reads a file that is one list of mappings. */
    static List<Sheet> list(String file, String text, List<Fault> faults) {
        return list(file, Outline.of(file, text, faults), faults);
    }

    /** The mappings of a list that has been read; none where there was nothing to read. */
    static List<Sheet> list(String file, Outline outline, List<Fault> faults) {
        if (outline == null) {
            return List.of();
        }
        if (!(outline instanceof Outline.Items list)) {
            faults.add(new Fault(file, outline.line(), "", "a list is wanted here", "Begin each item with a dash."));
            return List.of();
        }
        return items(file, "", list, faults);
    }

    /** Reads a file that is one mapping. */
    public static Sheet one(String file, String text, List<Fault> faults) {
        return one(file, Outline.of(file, text, faults), faults);
    }

    /** The mapping that has been read, or null where there was nothing to read. */
    static Sheet one(String file, Outline outline, List<Fault> faults) {
        return outline == null ? null : new Sheet(file, "", outline, faults);
    }

    private static List<Sheet> items(String file, String path, Outline.Items list, List<Fault> faults) {
        List<Sheet> sheets = new ArrayList<>();
        for (Outline item : list.items()) {
            sheets.add(new Sheet(file, path + "[" + sheets.size() + "]", item, faults));
        }
        return sheets;
    }

    private String inside(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    int line() {
        return line;
    }

    String file() {
        return file;
    }

    /** True when a mapping stands under this key, and not a single value. */
    public boolean isMapping(String key) {
        return fields.get(key) instanceof Outline.Keys;
    }

    /** True when the key is written, whatever stands under it. */
    public boolean has(String key) {
        offered.add(key);
        return fields.containsKey(key);
    }

    /** Says what is wrong under a key. */
    public void fault(String key, String what, String advice) {
        faults.add(new Fault(file, fields.containsKey(key) ? fields.get(key).line() : line, inside(key), what, advice));
    }

    /** The text under a key, or null after a fault. */
    public String text(String key) {
        String text = optional(key);
        if (text == null && !fields.containsKey(key)) {
            fault(key, "the key is missing", "Add " + key + ":");
        }
        return text;
    }

    /** The text under a key, or null when it is not there. */
    public String optional(String key) {
        asked.add(key);
        offered.add(key);
        Outline node = fields.get(key);
        if (node == null) {
            return null;
        }
        if (node instanceof Outline.Text scalar && !scalar.text().isBlank() && !scalar.text().equals("null")) {
            return scalar.text().strip();
        }
        fault(key, "a text is wanted here", "Write one value.");
        return null;
    }

    /** The text under a key, turned into something; what the function refuses becomes a fault. */
    public <T> T as(String key, Function<String, T> reading) {
        String text = text(key);
        return text == null ? null : read(key, text, reading);
    }

    /** As {@link #as}, and null without a fault when the key is not there. */
    public <T> T optionalAs(String key, Function<String, T> reading) {
        String text = optional(key);
        return text == null ? null : read(key, text, reading);
    }

    private <T> T read(String key, String text, Function<String, T> reading) {
        try {
            return reading.apply(text);
        } catch (UnreadableQuantity e) {
            fault(key, e.getMessage(), "");
        } catch (DateTimeException e) {
            fault(key, "'" + text + "' is not a date", "Write it as 2026-11-25.");
        } catch (IllegalArgumentException e) {
            fault(key, e.getMessage() == null ? "'" + text + "' is not understood" : e.getMessage(), "");
        }
        return null;
    }

    Quantity quantity(String key) {
        return as(key, Quantity::parse);
    }

    LocalDate date(String key) {
        return as(key, LocalDate::parse);
    }

    boolean yes(String key) {
        return Boolean.TRUE.equals(as(key, Sheet::yesNo));
    }

    boolean yesOr(String key, boolean otherwise) {
        Boolean value = optionalAs(key, Sheet::yesNo);
        return value == null ? otherwise : value;
    }

    private static Boolean yesNo(String text) {
        return switch (text) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw new IllegalArgumentException("'" + text + "': write yes or no");
        };
    }

    /** One of the words of an enumeration, spelled in lower case with dashes. */
    public <E extends Enum<E>> E word(String key, Class<E> type) {
        return as(key, text -> wordOf(text, type));
    }

    static <E extends Enum<E>> E wordOf(String text, Class<E> type) {
        return wordOf(text, List.of(type.getEnumConstants()));
    }

    /** One of these words of a type alone. */
    static <E extends Enum<E>> E wordOf(String text, List<E> known) {
        for (E constant : known) {
            if (constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-').equals(text)) {
                return constant;
            }
        }
        List<String> words = known.stream().map(c -> c.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')).toList();
        throw new IllegalArgumentException("'" + text + "': write one of " + String.join(", ", words));
    }

    /** The texts under a key; a single text counts as a list of one. Empty when the key is not there. */
    List<String> texts(String key) {
        asked.add(key);
        offered.add(key);
        Outline node = fields.get(key);
        if (node == null) {
            return List.of();
        }
        if (node instanceof Outline.Text scalar) {
            return List.of(scalar.text());
        }
        if (node instanceof Outline.Items list && list.items().stream().allMatch(n -> n instanceof Outline.Text)) {
            return list.items().stream().map(n -> ((Outline.Text) n).text()).toList();
        }
        fault(key, "a list of texts is wanted here", "Write [a, b].");
        return List.of();
    }

    /** The mappings of a list under a key; empty when the key is not there. */
    public List<Sheet> sheets(String key) {
        asked.add(key);
        offered.add(key);
        Outline node = fields.get(key);
        if (node == null) {
            return List.of();
        }
        if (node instanceof Outline.Items list) {
            return items(file, inside(key), list, faults);
        }
        fault(key, "a list is wanted here", "Begin each item with a dash.");
        return List.of();
    }

    /** The mapping under a key, or null after a fault. */
    public Sheet sheet(String key) {
        asked.add(key);
        offered.add(key);
        Outline node = fields.get(key);
        if (node == null) {
            fault(key, "the key is missing", "Add " + key + ":");
            return null;
        }
        return new Sheet(file, inside(key), node, faults);
    }

    /** Every key of this mapping, each asked for. */
    Set<String> keys() {
        asked.addAll(fields.keySet());
        offered.addAll(fields.keySet());
        return fields.keySet();
    }

    /** Faults every key that was not asked for. Call it last. */
    public void done() {
        fields.keySet().stream().filter(key -> !asked.contains(key)).toList().forEach(key -> fault(key, "unknown key '" + key + "'",
                "Known here: " + String.join(", ", offered) + "."));
    }
}
