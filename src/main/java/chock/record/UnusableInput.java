package chock.record;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be relied on, with everything that is wrong in it. */
public final class UnusableInput extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Fault> faults;

    public UnusableInput(Collection<Fault> faults) {
        super(faults.stream().sorted().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = faults.stream().sorted().distinct().toList();
    }

    public static UnusableInput of(String file, String what, String advice) {
        return new UnusableInput(List.of(new Fault(file, 0, "", what, advice)));
    }

    public List<Fault> faults() {
        return faults;
    }
}
