package chock.record;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** The forms of a record file, by the first line of the file, and the keys that each of them brought. Every form stays readable. */
public final class RecordForm {
    /** The form of new records. */
    public static final int NEWEST = 2;

    private static final String NAME = "job-record/";

    private RecordForm() { }

    /** Put together when it is asked for: a record of the newest form never asks. */
    private static final class Later {
        private static final SortedMap<String, Integer> KEYS =
                Collections.unmodifiableSortedMap(since("", Raw.Job.class, new TreeMap<>()));
    }

    /** The first line of a file of a form says {@code chock: } and this. */
    public static String name(int form) {
        return NAME + form;
    }

    /** Every form that can be read, the newest first. */
    static List<String> names() {
        return IntStream.iterate(NEWEST, form -> form > 0, form -> form - 1).mapToObj(RecordForm::name).toList();
    }

    /** @return 0 for the name of no form */
    static int of(String name) {
        return name != null && names().contains(name) ? Integer.parseInt(name.substring(NAME.length())) : 0;
    }

    /** The keys that a form after the first brought, as paths without numbers ({@code entries[].seq}), each with that form. */
    static SortedMap<String, Integer> keysSince() {
        return Later.KEYS;
    }

    /** Refuses what a later form brought in a file of an earlier one: its author may not know what it means there. */
    static void refuseLaterKeys(String chock, Map<String, Integer> lines, Faults faults) {
        int form = of(chock);
        if (form == 0 || form == NEWEST) {
            return;
        }
        for (String path : lines.keySet().stream().filter(path -> since(path) > form).sorted(java.util.Comparator.comparing(lines::get)).toList()) {
            faults.addIfNew(path, Faults.quoted(path.substring(path.lastIndexOf('.') + 1)) + " is a key of " + name(since(path)) + ", and this file is " + chock,
                    "Write " + name(since(path)) + " on the first line to use this");
        }
    }

    /** Refuses a word of the description that a later form brought, in a file of an earlier one. */
    static void refuseLaterWords(String chock, Machine machine, Faults faults) {
        int form = of(chock);
        if (form == 0 || form == NEWEST || faults.any()) {
            return;
        }
        machine.fields().forEach((field, word) -> {
            int since = DescriptionField.laterWords(field).getOrDefault(word, 1);
            if (since > form) {
                faults.add("machine." + field, Faults.quoted(word) + " is a word of " + name(since) + ", and this file is " + chock, "Write " + name(since) + " on the first line to use this");
            }
        });
    }

    private static int since(String path) {
        String key = path.substring(path.lastIndexOf('.') + 1);
        // Most keys of a file are of the first form; their paths need not be taken apart.
        return Later.KEYS.keySet().stream().noneMatch(known -> known.endsWith(key)) ? 1 : Later.KEYS.getOrDefault(path.replaceAll("\\[\\d+]", "[]"), 1);
    }

    private static SortedMap<String, Integer> since(String above, Class<?> part, SortedMap<String, Integer> into) {
        for (RecordComponent component : part.getRecordComponents()) {
            String path = (above.isEmpty() ? "" : above + ".") + Binding.key(component.getName());
            Since since = component.getAnnotation(Since.class);
            Type type = component.getGenericType();
            if (since != null) {
                into.put(path, since.value());
            } else if (type instanceof ParameterizedType list && list.getActualTypeArguments()[0] instanceof Class<?> item && item.isRecord()) {
                since(path + "[]", item, into);
            } else if (component.getType().isRecord()) {
                since(path, component.getType(), into);
            }
        }
        return into;
    }
}
