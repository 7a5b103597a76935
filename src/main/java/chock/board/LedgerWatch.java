package chock.board;

import chock.board.store.Signings;
import chock.board.store.Store;
import chock.signoff.LedgerHead;
import chock.signoff.LedgerLine;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Whether the ledger is still the one that the board has seen. The chain of a ledger shows what was altered in it, and neither
 * that its end was cut off nor that it is an older copy: for that somebody has to remember how far it went.
 */
final class LedgerWatch {
    private final Store store;
    private final String workshop;
    private final Clock clock;
    private volatile String alarm = "";

    LedgerWatch(Store store, String workshop, Clock clock) {
        this.store = store;
        this.workshop = workshop;
        this.clock = clock;
    }

    /** What is wrong, one sentence or two; empty when nothing is. */
    String alarm() {
        return alarm;
    }

    /** Holds the ledger against what was seen of it, and remembers how far it goes now where nothing is wrong. */
    boolean fits(List<LedgerLine> lines) {
        Optional<String> why = store.read(all -> missing(all.signings(), lines));
        alarm = why.map(wrong -> "The ledger is not the one this board has seen: " + wrong + ". Nothing is signed or verified here until the newest copy of the ledger is back.").orElse("");
        if (why.isEmpty()) {
            LedgerHead.of(lines).filter(head -> store.read(all -> all.signings().seen(workshop)).map(seen -> seen.line() < head.line()).orElse(true))
                    .ifPresent(head -> store.change(all -> all.signings().see(workshop, seen(head))));
        }
        return why.isEmpty();
    }

    private Signings.Seen seen(LedgerHead head) {
        return new Signings.Seen(head.line(), head.digest(), clock.instant());
    }

    private Optional<String> missing(Signings signings, List<LedgerLine> lines) {
        return signings.seen(workshop).flatMap(seen -> new LedgerHead(seen.line(), seen.digest()).missingIn(lines).map(why -> why + " (seen on " + seen.at().truncatedTo(ChronoUnit.SECONDS) + ")"))
                .or(() -> signings.standing().stream().filter(line -> !isIn(line, lines)).findFirst()
                        .map(line -> "the sign-off at " + line.gate() + " of " + line.machine() + " is kept here as its line " + line.line() + ", and is not there"));
    }

    private static boolean isIn(Signings.Line line, List<LedgerLine> lines) {
        return line.line() <= lines.size() && lines.get(line.line() - 1).text("signOff").equals(line.digest());
    }

    /** Goes by the ledger as it is, though lines of it are lost: what was signed in them is void. Answers how many sign-offs that are. */
    int goBy(List<LedgerLine> lines, Visitor by, String reason) {
        int lost = store.write(all -> {
            List<Signings.Line> gone = all.signings().standing().stream().filter(line -> !isIn(line, lines)).toList();
            gone.forEach(line -> all.signings().undo(line.id(), clock.instant(), "its line is no longer in the ledger"));
            LedgerHead head = LedgerHead.of(lines).orElseThrow(() -> new Refusal(422, "The ledger has no line."));
            all.signings().seeInstead(workshop, seen(head));
            all.events().add(clock.instant(), by.account().id(), "ledger gone by as it is", null, "head " + head + ". " + alarm + " Reason: " + reason + ". " + gone.size() + " sign-offs void");
            return gone.size();
        });
        fits(lines);
        return lost;
    }
}
