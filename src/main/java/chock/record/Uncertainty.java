package chock.record;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;

/**
 * Gives a reading its expanded uncertainty U (k = 2): its own, else the instrument's, else the table's for that kind of
 * instrument. Never less than the table gives, unless a certificate states it, for a better guess than the tool allows is no
 * evidence. Even with one, less than a tenth of the table is a slip of the unit and not a better tool (common practice).
 */
final class Uncertainty {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal TEN = BigDecimal.TEN;

    private final Reading read;

    Uncertainty(Reading read) {
        this.read = read;
    }

    /**
     * The reading with its U, or null where it can have none (the reason is among the faults).
     *
     * @param path where the reading stands
     * @param instrument what it was taken with, of a known kind
     */
    Measured of(String path, Measured reading, Instrument instrument) {
        Unit.Dimension dimension = reading.value().unit().dimension();
        if (instrument.kind() == null) {
            return null;
        }
        Vocabulary.InstrumentKind kind = read.words.instruments().get(instrument.kind());
        Quantity table = kind.leastUncertainty().get(dimension);
        if (table == null) {
            read.faults.add(path, Faults.quoted(instrument.id()) + " (" + instrument.kind() + ") cannot measure " + Reading.article(dimension.words()),
                    "Name the instrument it was read from; " + Reading.article(kind.name()) + " measures " + measures(kind));
            return null;
        }
        Quantity least = forReading(table, reading.value());
        String source = "the table gives " + Reading.article(kind.name());
        Quantity stated = statedFor(instrument, kind, reading.value());
        if (stated != null && (instrument.certificate() != null || !less(stated, least))) {
            least = stated;
            source = "the instrument has";
        } else if (stated != null && reading.uncertainty() == null) {
            read.faults.add(path, "the instrument's ± " + stated + " is less than the " + least + " " + source,
                    "Write the uncertainty of this reading: " + reading.value() + " ± " + least + " or more");
            return null;
        }
        return reading.uncertainty() == null ? filledIn(path, reading, least) : checked(path, reading, least, source);
    }

    private Measured filledIn(String path, Measured reading, Quantity least) {
        if (least.value().signum() <= 0) {
            read.faults.add(path, "a percentage of a reading of " + reading.value() + " is no uncertainty", "Write one: " + reading.value() + " ± …");
            return null;
        }
        return new Measured(reading.value(), least);
    }

    private Measured checked(String path, Measured reading, Quantity least, String source) {
        if (less(reading.uncertainty(), least)) {
            read.faults.add(path, "± " + reading.uncertainty() + " is less than the " + least + " " + source,
                    "Write ± " + least + " or more, or leave the ± out");
            return null;
        }
        return reading;
    }

    /** False, with the reason among the faults, when an instrument states zero or less than the table gives for its kind. */
    boolean isCredible(String path, Quantity stated, Vocabulary.InstrumentKind kind, boolean certified) {
        Unit.Dimension dimension = stated.unit().dimension();
        boolean percentage = dimension == Unit.Dimension.RATIO;
        Quantity table = kind.leastUncertainty().get(dimension);
        if (table == null && !percentage) {
            read.faults.add(path, Faults.quoted(stated.toString()) + " is " + Reading.article(dimension.words()) + ", which " + Reading.article(kind.name()) + " cannot measure",
                    "Write it in what it measures (" + measures(kind) + ") or as a percentage of the reading");
        } else if (stated.value().signum() <= 0) {
            read.faults.add(path, "an uncertainty of " + stated, "Write what its certificate states (k = 2), or by-kind");
        } else if (certified && table != null && table.unit().dimension() == dimension && less(stated.times(TEN), table)) {
            read.faults.add(path, "± " + stated + " is less than a tenth of the " + table + " the table gives " + Reading.article(kind.name()),
                    "Read the unit on the certificate again, and write U (k = 2)");
        } else if (!certified && table != null && table.unit().dimension() == dimension && less(stated, table)) {
            read.faults.add(path, "± " + stated + " is less than the " + table + " the table gives " + Reading.article(kind.name()), "Write ± " + table + " or more, by-kind, or the number of its certificate");
        }
        return !read.faults.at(path);
    }

    /** The instrument's own U for this reading, or null when it states none for this kind of unit. */
    private static Quantity statedFor(Instrument instrument, Vocabulary.InstrumentKind kind, Quantity value) {
        Quantity stated = instrument.uncertainty();
        if (stated == null) {
            return null;
        }
        boolean same = stated.unit().dimension() == value.unit().dimension();
        boolean percentage = stated.unit().dimension() == Unit.Dimension.RATIO && !kind.leastUncertainty().containsKey(Unit.Dimension.RATIO);
        return same || percentage ? forReading(stated, value) : null;
    }

    /** A percentage is of the reading, except for readings that are percentages themselves. */
    static Quantity forReading(Quantity uncertainty, Quantity value) {
        if (uncertainty.unit().dimension() != Unit.Dimension.RATIO || value.unit().dimension() == Unit.Dimension.RATIO) {
            return uncertainty;
        }
        BigDecimal share = uncertainty.to(Unit.PER_CENT).value();
        BigDecimal part = value.value().abs().multiply(share).divide(HUNDRED).stripTrailingZeros();
        return new Quantity(part.scale() < 0 ? part.setScale(0) : part, value.unit());
    }

    /** Compares two uncertainties as differences: 1 °C is 1.8 °F, wherever the two scales begin. */
    private static boolean less(Quantity one, Quantity other) {
        return one.differenceTo(other.unit()).value().compareTo(other.value()) < 0;
    }

    private static String measures(Vocabulary.InstrumentKind kind) {
        return String.join(", ", kind.leastUncertainty().keySet().stream().map(Unit.Dimension::words).sorted().toList());
    }
}
