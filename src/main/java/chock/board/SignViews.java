package chock.board;

import chock.board.Views.Choice;
import chock.board.Views.Frame;
import chock.board.Views.Link;
import java.util.List;

/** What the pages of the sign-offs are filled with. */
final class SignViews {
    private SignViews() { }

    /** How a sign-off stands: the word first, then why or until when. */
    record Stands(String id, String machine, String gate, String word, String says, String by) {
        boolean good() {
            return word.equals("stands");
        }
    }

    /**
     * On the page of a machine.
     *
     * @param sign where to sign the gate looked at, or empty
     * @param papers what can be printed
     * @param letter the same on Letter
     */
    record Panel(List<Stands> signOffs, String sign, String gate, List<Link> papers, List<Link> letter) { }

    /**
     * The page to sign at.
     *
     * @param until how long it would be good, or empty when the gate is held
     * @param held what holds it, or empty
     * @param signer in whose name, or empty when nobody can sign
     * @param lacks why nobody can, or empty
     * @param caution what stands first at this gate
     * @param cautions where people get hurt, from the findings
     * @param once what makes the same form sign once
     */
    record Sign(Frame frame, String id, String name, String gate, long version, String means, String until, String held, String signer, String lacks, List<String> caution, List<String> cautions, String once, String complaint) { }

    /** A list of sign-offs. */
    record Listed(Frame frame, String machine, List<Choice> states, List<Stands> signOffs, String before, String after) { }

    /** One thing looked at. */
    record Thing(String sign, String thing, String word, String says) { }

    /**
     * What holds of a sign-off.
     *
     * @param word {@code Holds}, {@code Does not hold} and so on
     * @param sentence what it comes to
     */
    record Found(String word, boolean holds, String title, String sentence, List<Thing> things) { }

    /** @param found null before anything was looked at */
    record Verify(Frame frame, Found found, String complaint, Link more) { }

    record SignOff(Frame frame, Stands stands, String machine, String name, Found found, List<Link> links) { }

    /** A line of the ledger; machine and sign-off may be empty. */
    record Line(int number, String at, String kind, String says, String machine) { }

    /**
     * What a lead typed to withdraw.
     *
     * @param complaint why nothing was withdrawn, or empty
     */
    record Withdraw(String check, String ruleBook, boolean alsoNotAsked, String reason, String complaint) {
        static final Withdraw NOTHING = new Withdraw("", "", false, "", "");
    }

    /** @param withdraw null for whoever cannot withdraw */
    record Ledger(Frame frame, String machine, boolean holds, String sound, String complaint, List<Line> lines, String before, String after, Withdraw withdraw) { }
}
