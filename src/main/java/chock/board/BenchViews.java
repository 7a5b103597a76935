package chock.board;

import java.util.List;

/** What the pages of the bench are filled with. */
final class BenchViews {
    private BenchViews() { }

    /**
     * Where a round begins.
     *
     * @param goOn what to go on with, or empty
     */
    record Start(Views.Frame frame, String id, String name, String at, String who, List<Views.Choice> gates, List<Views.Choice> parts, List<Reading> readings, int unknown, String goOn, String nothing, List<String> faults) { }

    /**
     * A kind of reading and what it may be taken with.
     *
     * @param what its name in a record
     */
    record Reading(int n, String what, String words, List<Views.Choice> instruments) { }

    /**
     * One step.
     *
     * @param turn names this sending
     * @param keys the questions on the screen, one a line
     * @param place where it is, for the drawing
     * @param count where in the round it is
     * @param note what else to know, such as a deadline of the engine running
     * @param told what the last entry did
     */
    record Step(Views.Frame frame, String id, String name, String at, String turn, String keys, String title, String where, String place, String count, List<String> says, String note, List<String> cautions, List<Question> questions,
                String told, boolean fault, List<String> faults, boolean mayWithdraw) { }

    /**
     * One question on the screen.
     *
     * @param legend what is asked; empty where the title says it
     * @param kind as {@link BenchQuestion#kind()}
     * @param units to choose from; empty where none is written
     * @param bar the limit drawn, or empty
     * @param with instrument taken before in this round, in words, or empty
     * @param reads whether an instrument is named
     * @param u uncertainty of a reading near the limit, in the limit's unit, or empty
     * @param hint what may be written
     */
    record Question(int n, String key, String legend, String kind, List<Views.Choice> answers, String is, List<Views.Choice> units, String bar, boolean reads, String with, List<Views.Choice> instruments, String u, String hint, boolean left) { }

    /** Nothing is left to ask. */
    record Done(Views.Frame frame, String id, String name, String at, String gate, int written, int skipped, List<String> elsewhere, List<String> cycle, String told, boolean fault) { }

    /** Entries made at the wrong machine. */
    record Wrong(Views.Frame frame, String id, String name, String at, List<String> entries, String reason, List<String> faults) { }
}
