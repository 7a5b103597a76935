package chock.quantity;

import java.util.Objects;

/**
 * The range a value must lie in; either end may be open.
 *
 * @param low lowest allowed value, or null
 * @param lowPasses whether a value of exactly {@code low} is allowed
 * @param high highest allowed value, or null
 * @param highPasses whether a value of exactly {@code high} is allowed
 */
public record Bounds(Quantity low, boolean lowPasses, Quantity high, boolean highPasses) {

    /** Where a measured value lies. */
    public enum Standing {
        /** Inside by more than the uncertainty. */ INSIDE,
        /** Inside, but by no more than the uncertainty. */ TOO_CLOSE,
        /** Not inside. */ OUTSIDE
    }

    public Bounds {
        if (low == null && high == null) {
            throw new IllegalArgumentException("a bound is needed");
        }
    }

    /**
     * Guard band of one U: a value inside by exactly U is still too close (ILAC-G8:09/2019 4.2.3 with w = U, read in a
     * copy; which side the boundary falls on is our choice, on the safe side). A value without an uncertainty is exact.
     */
    public Standing standing(Measured measured) {
        Objects.requireNonNull(measured);
        if (!contains(measured.value())) {
            return Standing.OUTSIDE;
        }
        Quantity u = measured.uncertainty();
        boolean clear = u == null || (low == null || measured.value().isAboveByMoreThan(low, u))
                && (high == null || high.isAboveByMoreThan(measured.value(), u));
        return clear ? Standing.INSIDE : Standing.TOO_CLOSE;
    }

    public boolean contains(Quantity value) {
        int overLow = low == null ? 1 : value.compareTo(low);
        int underHigh = high == null ? 1 : high.compareTo(value);
        return (overLow > 0 || overLow == 0 && lowPasses) && (underHigh > 0 || underHigh == 0 && highPasses);
    }

    /** Distance to the nearer bound, negative outside, in the value's own unit (as a difference), to 16 significant digits. */
    public Quantity margin(Quantity value) {
        Quantity fromLow = low == null ? null : value.minus(inUnitOf(low, value));
        Quantity fromHigh = high == null ? null : inUnitOf(high, value).minus(value);
        if (fromLow == null) {
            return fromHigh;
        }
        return fromHigh == null || fromLow.compareTo(fromHigh) <= 0 ? fromLow : fromHigh;
    }

    private static Quantity inUnitOf(Quantity bound, Quantity value) {
        return bound.to(value.unit());
    }

    /** The tighter of the two at each end. */
    public Bounds and(Bounds other) {
        Bounds lower = tighterLow(other) ? other : this;
        Bounds upper = tighterHigh(other) ? other : this;
        return new Bounds(lower.low, lower.lowPasses, upper.high, upper.highPasses);
    }

    private boolean tighterLow(Bounds other) {
        if (other.low == null || low == null) {
            return low == null && other.low != null;
        }
        int order = other.low.compareTo(low);
        return order > 0 || order == 0 && lowPasses && !other.lowPasses;
    }

    private boolean tighterHigh(Bounds other) {
        if (other.high == null || high == null) {
            return high == null && other.high != null;
        }
        int order = other.high.compareTo(high);
        return order < 0 || order == 0 && highPasses && !other.highPasses;
    }

    /** True when everything these bounds allow is allowed by the other. */
    public boolean within(Bounds other) {
        return this.and(other).equals(this);
    }

    /** In words: {@code at least 1.5 mm}. */
    public String words() {
        String above = low == null ? null : (lowPasses ? "at least " : "more than ") + low;
        String below = high == null ? null : (highPasses ? "at most " : "less than ") + high;
        if (above == null) {
            return below;
        }
        return below == null ? above : lowPasses && highPasses ? "between " + low + " and " + high : above + " and " + below;
    }
}
