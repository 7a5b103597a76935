package chock.board;

import chock.assess.Assessment;
import chock.board.store.Signings;
import chock.board.store.Store;
import chock.signoff.LedgerLine;
import chock.signoff.SignOff;
import chock.signoff.Withdrawal;
import chock.signoff.Withdrawals;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** What a lead withdrew, and what of it the store still has to learn. */
final class Withdrawn {
    private final chock.signoff.Shop workshop;
    private final Store store;
    private final Clock clock;
    /** The last line in the ledger that withdrew something and that every sign-off was held against. */
    private int done;

    Withdrawn(chock.signoff.Shop workshop, Store store, Clock clock) {
        this.workshop = workshop;
        this.store = store;
        this.clock = clock;
    }

    private List<Withdrawal> in(List<LedgerLine> ledger) {
        return ledger.stream().anyMatch(line -> line.kind().equals("withdrawn")) ? Withdrawals.all(workshop) : List.of();
    }

    /**
     * Ends the sign-offs in the store that rest on what was withdrawn. Those whose line in the ledger does not say what they rest
     * on are here as they were signed.
     *
     * @param more true when sign-offs came in since
     */
    void end(List<LedgerLine> ledger, boolean more) {
        List<Withdrawal> all = in(ledger);
        int last = all.isEmpty() ? 0 : all.get(all.size() - 1).line();
        if (all.isEmpty() || last == done && !more) {
            return;
        }
        for (Signings.Line line : store.read(lines -> lines.signings().standing())) {
            SignOff signOff = SignOff.written(store.read(lines -> lines.signings().text(line.id())).getBytes(StandardCharsets.US_ASCII)).orElseThrow();
            Withdrawals.why(all, signOff, workshop.zone()).ifPresent(why -> store.change(lines -> lines.signings().undo(line.id(), clock.instant(), why)));
        }
        done = last;
    }

    /** Who withdrew what a release judged now rests on, in words. */
    Optional<String> why(List<LedgerLine> ledger, Assessment assessment) {
        return Withdrawals.why(in(ledger), assessment, workshop.zone());
    }
}
