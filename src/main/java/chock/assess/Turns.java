package chock.assess;

import chock.rulebook.Card;
import chock.rulebook.Look;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Whose turn it is among the steps that wait for nothing. What one look answers comes together, where the last of its questions
 * would come; it is parted only when something else waits for one of them.
 */
final class Turns {
    /** What one look answers, as far as it is asked and needs the same to be allowed. */
    private record Together(Look look, Card.Needs needs) { }

    private final TreeSet<Task> free;
    private final Set<Task> done = new HashSet<>();
    private final Map<Task, List<Task>> companions = new HashMap<>();
    private List<Task> begun = List.of();

    /**
     * @param order of steps that may come in any order
     * @param looks the look that answers a step, or null
     */
    Turns(Collection<Task> all, Comparator<Task> order, Function<Task, Look> looks) {
        List<Task> inOrder = all.stream().sorted(order).toList();
        Map<Task, Integer> place = new HashMap<>();
        Map<Together, List<Task>> together = new LinkedHashMap<>();
        for (Task task : inOrder) {
            place.put(task, place.size());
            Look look = looks.apply(task);
            companions.put(task, look == null ? List.of(task)
                    : together.computeIfAbsent(new Together(look, task.needs()), key -> new ArrayList<>()));
            if (look != null) {
                companions.get(task).add(task);
            }
        }
        Comparator<Task> whole = Comparator.comparing(task -> companions.get(task).stream().mapToInt(place::get).max().orElseThrow());
        free = new TreeSet<>(whole.thenComparing(place::get));
    }

    void free(Task task) {
        free.add(task);
    }

    /** The next step, or null when none is free. */
    Task next() {
        if (free.isEmpty()) {
            return null;
        }
        // First what the look that has begun answers besides, then what comes whole, and only then what has to be parted.
        Task next = begun.stream().filter(free::contains).findFirst()
                .or(() -> free.stream().filter(this::isWhole).findFirst()).orElseGet(free::first);
        free.remove(next);
        done.add(next);
        begun = companions.get(next);
        return next;
    }

    private boolean isWhole(Task task) {
        return companions.get(task).stream().allMatch(one -> free.contains(one) || done.contains(one));
    }
}
