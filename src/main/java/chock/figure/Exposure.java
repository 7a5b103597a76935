package chock.figure;

import chock.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * What somebody breathes who stays in the room for the whole shift, in ppm to 12 significant digits.
 *
 * <p>The 8-h value is the sum over everything divided by 8 h, also where the plan is longer (29 CFR 1910.1000(d), read);
 * who leaves earlier breathes less, and this does not know it. The 15-min and 1-h values are the highest means over any
 * such window, found exactly: between switches a window's mean rises until the concentration at its two ends is the same.
 *
 * @param peak highest concentration at any moment
 * @param max15Min highest mean over 15 min
 * @param max1H highest mean over 1 h
 * @param twa8H time-weighted average over 8 h
 */
public record Exposure(Quantity peak, Quantity max15Min, Quantity max1H, Quantity twa8H) {
    private static final double SHIFT = 480;
    private static final double LONGEST_WINDOW = 60;

    /**
     * The exposure in this room when the engine runs by this plan, from the background, and stands for the rest of the shift.
     *
     * @throws BadFigureInput when more carbon monoxide than room comes out
     */
    public static Exposure of(RoomAir room, RunPlan plan) {
        Course course = new Course(room, plan);
        return new Exposure(RoomAir.ppm(course.peak()), RoomAir.ppm(course.highestMean(15)), RoomAir.ppm(course.highestMean(LONGEST_WINDOW)),
                RoomAir.ppm(course.until(course.shiftEnds()) / SHIFT));
    }

    /** Concentration over time, piece by piece. */
    private static final class Course {
        private final RoomAir room;
        private final List<Piece> pieces = new ArrayList<>();
        private final double end;

        /** @param before integral of the concentration up to {@code from} */
        private record Piece(double from, double start, boolean running, double before) { }

        Course(RoomAir room, RunPlan plan) {
            this.room = room;
            double from = 0;
            double start = room.background();
            double before = 0;
            for (RunPlan.Phase phase : plan.phases()) {
                double minutes = phase.minutes().doubleValue();
                pieces.add(new Piece(from, start, phase.running(), before));
                before += minutes * room.mean(start, minutes, phase.running());
                start = room.after(start, minutes, phase.running());
                from += minutes;
            }
            pieces.add(new Piece(from, start, false, before));
            end = from;
        }

        double shiftEnds() {
            return Math.max(SHIFT, end);
        }

        /** Concentration only turns where the engine starts or stops. */
        double peak() {
            return pieces.stream().mapToDouble(Piece::start).max().orElseThrow();
        }

        double highestMean(double window) {
            List<Double> turns = new ArrayList<>();
            for (Piece piece : pieces) {
                turns.add(piece.from);
                turns.add(Math.max(0, piece.from - window));
            }
            List<Double> starts = turns.stream().distinct().sorted().toList();
            double highest = 0;
            for (int i = 0; i < starts.size(); i++) {
                highest = Math.max(highest, mean(starts.get(i), window));
                if (i + 1 < starts.size()) {
                    highest = Math.max(highest, mean(levelStart(starts.get(i), starts.get(i + 1), window), window));
                }
            }
            return highest;
        }

        /** Start, between these two, of the window whose ends are level; the first where there is none. */
        private double levelStart(double from, double to, double window) {
            double atFrom = at(from + window) - at(from);
            double atTo = at(to + window) - at(to);
            if (!(atFrom > 0 && atTo < 0)) {
                return from;
            }
            // both ends follow e^(−λt) here, so their difference does: from atFrom down to atTo
            double share = atFrom / (atFrom - atTo);
            double exchanged = room.exchanged() * (to - from);
            double way = exchanged < 1e-9 ? share : -StrictMath.log1p(share * StrictMath.expm1(-exchanged)) / exchanged;
            return from + way * (to - from);
        }

        private double mean(double from, double window) {
            return (until(from + window) - until(from)) / window;
        }

        private double at(double time) {
            Piece piece = piece(time);
            return room.after(piece.start, time - piece.from, piece.running);
        }

        /** Integral of the concentration from the start. */
        double until(double time) {
            Piece piece = piece(time);
            double minutes = time - piece.from;
            return piece.before + minutes * room.mean(piece.start, minutes, piece.running);
        }

        private Piece piece(double time) {
            Piece found = pieces.get(0);
            for (Piece piece : pieces) {
                if (piece.from <= time) {
                    found = piece;
                }
            }
            return found;
        }
    }
}
