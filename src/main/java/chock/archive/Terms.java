package chock.archive;

import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.rulebook.Trial;
import chock.signoff.RulePack;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * What an archive is judged by, in a form that can be sent to another machine: there it makes the same rule book.
 *
 * @param asOf the moment of judgement as it was written; there is no "now", since what is judged again must come to the same
 * @param gates ids of the gates to judge; empty for those that each record seeks
 * @param rules the rule book, or null for that inside the program
 * @param house the rules of a house, or null for none
 * @param sets limits under trial, each as {@code LIMIT=VALUE}
 */
public record Terms(String asOf, List<String> gates, SignedRules rules, House house, List<String> sets) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** A house folder with all its text. */
    public record House(String name, String digest, String folder, TreeMap<String, String> files) implements Serializable {
        private static final long serialVersionUID = 1L;

        public static House of(HouseBook book) {
            return new House(book.name(), book.digest(), book.folder(), new TreeMap<>(book.files()));
        }

        private HouseBook book() {
            return new HouseBook(name, digest, folder, files);
        }
    }

    public Terms {
        gates = List.copyOf(gates);
        sets = List.copyOf(sets);
    }

    /** The moment of judgement. */
    public AsOf moment() {
        return AsOf.read(asOf).orElseThrow(() -> UnusableInput.of("--as-of", "'" + asOf + "' is not a date and time", AsOf.ADVICE));
    }

    /** The gates to judge, or null for those that each record seeks. */
    public List<Gate> asked() {
        return gates.isEmpty() ? null : gates.stream().map(id -> Gate.of(id).orElseThrow(() -> UnusableInput.of("--gate", "there is no gate '" + id + "'", ""))).toList();
    }

    /**
     * A rule book, and what is changed in it against the shipped one.
     *
     * @param changes in words; empty when nothing is
     */
    public record InForce(RuleBook book, List<String> changes) { }

    /**
     * The rule book named, or the shipped one, with the house in force and the limits changed. Made anew each time: rules take a
     * while to compile, so keep it.
     *
     * @throws UnusableInput when the rule book named is not signed with a trusted key, the house is not sound, or there is no such limit
     */
    public InForce inForce() {
        List<String> changes = new ArrayList<>();
        RuleBook book = base(changes);
        if (house != null) {
            book = book.with(house.book());
        }
        book.house().ifPresent(one -> changes.add("house " + one.name() + " (" + one.folder() + ")"));
        List<Trial> trials = new ArrayList<>();
        for (String set : sets) {
            try {
                trials.add(Trial.read(set, book));
            } catch (IllegalArgumentException e) {
                throw UnusableInput.of("--set", e.getMessage(), "");
            }
        }
        for (Trial trial : trials) {
            book = book.with(trial.change());
            changes.add(trial.words());
        }
        return new InForce(book, List.copyOf(changes));
    }

    private RuleBook base(List<String> changes) {
        if (rules == null) {
            return RuleBook.shipped();
        }
        RulePack pack = rules.open();
        RuleBook book = pack.load();
        if (house != null && book.house().isPresent()) {
            throw UnusableInput.of("--house", "the rule book already contains the house rules '" + book.house().get().name() + "'", "Leave --house out, or name a rule book without a house");
        }
        changes.add("rule book " + book.version() + " (" + rules.file() + ")");
        return book;
    }

    /** Judges under the rule book in force. */
    public Judging judging() {
        return new Judging(inForce().book(), moment(), asked());
    }

    /** Judges under the shipped rule book, to be compared with {@link #inForce()}. */
    public Judging before() {
        return new Judging(RuleBook.shipped(), moment(), asked());
    }
}
