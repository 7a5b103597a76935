package chock.note;

import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An amount as it is said: figures, a decimal comma, a fraction of an inch, or words.
 *
 * @param number as it is written in a record, such as {@code 4.2} or {@code 3/64}
 * @param unit or null when none was said
 * @param from first word of it
 * @param to behind its last word
 */
record SpokenAmount(String number, Unit unit, int from, int to) {
    private static final Map<String, Integer> ONES = Map.ofEntries(Map.entry("zero", 0), Map.entry("one", 1), Map.entry("two", 2), Map.entry("three", 3), Map.entry("four", 4), Map.entry("five", 5),
            Map.entry("six", 6), Map.entry("seven", 7), Map.entry("eight", 8), Map.entry("nine", 9), Map.entry("ten", 10), Map.entry("eleven", 11), Map.entry("twelve", 12), Map.entry("thirteen", 13),
            Map.entry("fourteen", 14), Map.entry("fifteen", 15), Map.entry("sixteen", 16), Map.entry("seventeen", 17), Map.entry("eighteen", 18), Map.entry("nineteen", 19));
    private static final Map<String, Integer> TENS = Map.of("twenty", 20, "thirty", 30, "forty", 40, "fifty", 50, "sixty", 60, "seventy", 70, "eighty", 80, "ninety", 90);

    /** The words for numbers. */
    static Set<String> numbers() {
        Set<String> all = new HashSet<>(ONES.keySet());
        all.addAll(TENS.keySet());
        return all;
    }

    /** In the unit, as a record has it; in this unit where none was said. */
    String in(Unit other) {
        return number + " " + (unit == null ? other : unit).symbol();
    }

    SpokenAmount in(Unit said, int end) {
        return new SpokenAmount(number, said, from, end);
    }

    /** Every amount among these words, in order; a unit behind the last of several belongs to all that have none. */
    static List<SpokenAmount> in(List<Word> words, Lexicon lexicon) {
        List<SpokenAmount> all = new ArrayList<>();
        for (int i = 0; i < words.size();) {
            SpokenAmount one = at(words, i);
            if (one == null) {
                i++;
                continue;
            }
            Lexicon.UnitPhrase unit = lexicon.unitAt(words, one.to);
            all.add(unit == null ? one : one.in(unit.unit(), unit.to()));
            i = all.get(all.size() - 1).to;
        }
        for (int i = all.size() - 2; i >= 0; i--) {
            SpokenAmount one = all.get(i);
            SpokenAmount next = all.get(i + 1);
            if (one.unit == null && next.unit != null && next.from - one.to <= 1) {
                all.set(i, one.in(next.unit, one.to));
            }
        }
        return all;
    }

    private static SpokenAmount at(List<Word> words, int i) {
        String word = words.get(i).text();
        if (word.matches("\\d{1,6}(\\.\\d+)?") && words.size() > i + 1 && words.get(i + 1).text().matches("\\d+/\\d+")) {
            return new SpokenAmount(word + " " + words.get(i + 1).text(), null, i, i + 2);
        }
        if (word.matches("\\d{1,6}(\\.\\d+)?|\\d+/\\d+")) {
            return word.endsWith("/0") ? null : new SpokenAmount(word, null, i, i + 1);
        }
        return inWords(words, i);
    }

    private static SpokenAmount inWords(List<Word> words, int from) {
        int i = from;
        Integer whole = null;
        if (TENS.containsKey(words.get(i).text())) {
            whole = TENS.get(words.get(i++).text());
            if (i < words.size() && ONES.getOrDefault(words.get(i).text(), 10) < 10 && ONES.get(words.get(i).text()) > 0) {
                whole += ONES.get(words.get(i++).text());
            }
        } else if (ONES.containsKey(words.get(i).text())) {
            whole = ONES.get(words.get(i++).text());
        }
        if (whole == null || i < words.size() && (words.get(i).text().equals("hundred") || words.get(i).text().equals("thousand") || TENS.containsKey(words.get(i).text()) || ONES.containsKey(words.get(i).text()))) {
            return null;
        }
        if (i + 1 < words.size() && words.get(i).text().equals("point") && ONES.getOrDefault(words.get(i + 1).text(), 10) < 10) {
            StringBuilder decimals = new StringBuilder();
            for (i++; i < words.size() && ONES.getOrDefault(words.get(i).text(), 10) < 10; i++) {
                decimals.append(ONES.get(words.get(i).text()));
            }
            return new SpokenAmount(new BigDecimal(whole + "." + decimals).toPlainString(), null, from, i);
        }
        return new SpokenAmount(String.valueOf(whole), null, from, i);
    }
}
