package chock.rehearse;

import chock.rulebook.RuleBook;
import io.cucumber.core.backend.ObjectFactory;
import io.cucumber.core.runtime.ObjectFactorySupplier;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Hands the runner of scenarios a fresh bench for each, over one rule book; several threads may run side by side. */
final class BenchMaker implements ObjectFactorySupplier {
    private final RuleBook book;
    private final Map<String, Ready> readyBefore = new ConcurrentHashMap<>();
    private final ThreadLocal<OneAtATime> here = ThreadLocal.withInitial(OneAtATime::new);

    BenchMaker(RuleBook book) {
        this.book = book;
    }

    @Override
    public ObjectFactory get() {
        return here.get();
    }

    /** The bench of the scenario that runs in this thread. */
    Bench bench() {
        return here.get().bench;
    }

    private final class OneAtATime implements ObjectFactory {
        private Bench bench;
        private Map<Class<?>, Object> steps;

        @Override
        public void start() {
            bench = new Bench(book, readyBefore);
            steps = Map.of(BenchSteps.class, new BenchSteps(bench), StepWords.class, new StepWords());
        }

        @Override
        public void stop() {
            bench = null;
            steps = null;
        }

        @Override
        public boolean addClass(Class<?> glue) {
            return true;
        }

        @Override
        public <T> T getInstance(Class<T> kind) {
            return kind.cast(steps.get(kind));
        }
    }
}
