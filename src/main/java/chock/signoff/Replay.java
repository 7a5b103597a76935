package chock.signoff;

import chock.assess.Assessor;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;

/** Judges a signed record again by the rule book it was signed by, where the workshop keeps that. */
final class Replay {
    /** Compiling the rules of a whole rule book takes up to half a minute of processor time. */
    private static final Duration LONGEST = Duration.ofMinutes(3);

    private final Shop shop;
    private final History history;
    private final SignOff signOff;

    Replay(Shop shop, History history, SignOff signOff) {
        this.shop = shop;
        this.history = history;
        this.signOff = signOff;
    }

    /**
     * What came of it.
     *
     * @param says what follows on the name of the rule book
     */
    record Result(Verification.Holds holds, String says) { }

    /** @param signed reads the record as it was signed, by the words of a rule book */
    Result run(Function<RuleBook, JobRecord> signed) {
        Optional<RulePack> kept;
        try {
            kept = RulePacks.find(shop, history, signOff.ruleBook().digest());
        } catch (UnusableInput e) {
            return undone("the file of that rule book cannot be used (" + first(e) + ")");
        }
        if (kept.isEmpty()) {
            return undone("that rule book is not kept here, and this version of chock has another");
        }
        RulePack pack = kept.get();
        CompletableFuture<Rejudged> judged = new CompletableFuture<>();
        Thread judging = new Thread(() -> {
            try {
                judged.complete(judge(pack, signed));
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                judged.completeExceptionally(e);
            }
        }, "judging again");
        // Its rules are code that may never end; the program does not wait for it when it ends itself.
        judging.setDaemon(true);
        judging.start();
        try {
            return told(pack, judged.get(LONGEST.toSeconds(), TimeUnit.SECONDS).differences(signOff));
        } catch (TimeoutException e) {
            return undone("judging by it took longer than " + LONGEST.toMinutes() + " minutes and was given up");
        } catch (ExecutionException e) {
            return undone(Program.name() + " cannot judge by it; it was packed with " + pack.madeBy() + " (" + (e.getCause() instanceof UnusableInput wrong ? first(wrong) : e.getCause().getClass().getSimpleName()) + ")");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return undone("judging again was interrupted");
        }
    }

    private Rejudged judge(RulePack pack, Function<RuleBook, JobRecord> signed) {
        RuleBook book = shop.equip(pack.load());
        JobRecord record = signed.apply(book);
        RuleBook there = book.at(signOff.place() == null ? null : signOff.place().position());
        return new Rejudged(record, Assessor.assess(record, there, List.of(Gate.of(signOff.gate()).orElseThrow()), signOff.judged()), book);
    }

    private static Result told(RulePack pack, List<String> differences) {
        String kept = ", which is kept here (signed by " + pack.signedBy() + " with " + pack.madeBy() + "); ";
        if (differences.isEmpty()) {
            return new Result(Verification.Holds.YES, kept + "judged again by it, the gate is released with the same findings.");
        }
        String what = String.join(", ", differences);
        return pack.madeBy().equals(Program.name()) ? new Result(Verification.Holds.NO, kept + "judged again by it, this is not as signed: " + what + ".")
                : new Result(Verification.Holds.NOT_LOOKED_AT, kept + "judged again by it with " + Program.name() + ", this differs: " + what + ". The version of chock may be the cause: verify with " + pack.madeBy() + ".");
    }

    private static Result undone(String why) {
        return new Result(Verification.Holds.NOT_LOOKED_AT, "; not judged again: " + why + ".");
    }

    private static String first(UnusableInput e) {
        return e.faults().get(0).toString();
    }
}
