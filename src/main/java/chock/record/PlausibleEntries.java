package chock.record;

import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds what one entry says against what it can say at all. */
final class PlausibleEntries {
    private static final Pattern DATE_CODE = Pattern.compile("(?:.*\\D)?(\\d{3,5})");
    private static final Pattern LOAD_INDEX = Pattern.compile("(?:.*\\D)?(\\d{1,3})\\s*[A-Z]\\d?");
    private static final Pattern RUN = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:on|off)");
    private static final Pattern YEAR = Pattern.compile("(?<!\\d)(\\d{4})(?!\\d)");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Plausible plausible;
    private final Vocabulary words;

    PlausibleEntries(Vocabulary words) {
        this.words = words;
        this.plausible = words.plausible();
    }

    /** Why this entry cannot be true by itself; empty where it can, and for work. */
    Optional<Impossible> of(Entry entry, Instrument tool) {
        if (entry.is() instanceof Value.Amount amount) {
            return amount(entry, amount.measured(), tool);
        }
        if (entry.is() instanceof Value.Days days && entry.at() != null) {
            return days(entry, days);
        }
        return Optional.empty();
    }

    private Optional<Impossible> amount(Entry entry, Measured measured, Instrument tool) {
        List<Plausible.Row> rows = plausible.rows(entry.what(), entry.point());
        Quantity value = measured.value();
        if (!rows.isEmpty() && rows.stream().noneMatch(row -> row.canBe().contains(value))) {
            Plausible.Row row = rows.get(0);
            return Optional.of(new Impossible(name(entry.what()) + " " + value + " is not possible: it lies " + row.canBe().words(), Impossible.perhaps(value, row) + row.hint()));
        }
        if (!rows.isEmpty() && rows.get(0).whole() && (value.value().stripTrailingZeros().scale() > 0 || value.unit() != rows.get(0).canBe().low().unit())) {
            return Optional.of(new Impossible(name(entry.what()) + " " + value + " is not a whole number", rows.get(0).hint()));
        }
        return tool == null || tool.kind() == null ? Optional.empty() : read(entry, measured, tool, rows);
    }

    private Optional<Impossible> read(Entry entry, Measured measured, Instrument instrument, List<Plausible.Row> rows) {
        Optional<Impossible> shown = shownBy(instrument.kind(), measured);
        Quantity u = measured.uncertainty();
        if (shown.isPresent() || u == null || toolFor(instrument.kind(), measured).isEmpty()) {
            return shown;
        }
        boolean vague = rows.stream().filter(row -> row.usual() != null && row.usual().contains(measured.value())).anyMatch(row -> atMostHalf(u, row.usual()));
        boolean known = rows.stream().anyMatch(row -> row.usual() != null && row.usual().contains(measured.value()));
        return !known || vague ? Optional.empty()
                : Optional.of(new Impossible("± " + u + " tells nothing of " + name(entry.what()) + " " + measured.value(), "Check the decimal point and the unit of the uncertainty, or read it with a better instrument"));
    }

    /** Why no instrument of this kind can have given such a reading; empty where one can, and of a kind of which nothing is known. */
    Optional<Impossible> shownBy(String instrument, Measured measured) {
        Optional<Plausible.Tool> known = toolFor(instrument, measured);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        Plausible.Tool tool = known.get();
        String kind = Reading.article(instrument);
        if (!tool.shows().contains(measured.value())) {
            return Optional.of(new Impossible(kind + " does not show " + measured.value() + ": it reads " + tool.shows().words(), "Name the instrument it was read from, or check the unit"));
        }
        Quantity u = measured.uncertainty();
        if (u != null && tool.mostUncertainty().stream().noneMatch(most -> atMost(u, most, measured.value())) && !isLeast(u, instrument, measured.value())) {
            String most = String.join(" or ", tool.mostUncertainty().stream().map(Plausible.Most::toString).toList());
            return Optional.of(new Impossible("± " + u + " is too much for " + kind + ": " + most + " at most", "Check the decimal point and the unit of the uncertainty, or leave the ± out"));
        }
        return Optional.empty();
    }

    private Optional<Plausible.Tool> toolFor(String instrument, Measured measured) {
        return plausible.tools().getOrDefault(instrument, List.of()).stream().filter(tool -> tool.measures() == measured.value().unit().dimension()).findFirst();
    }

    private static boolean atMost(Quantity u, Plausible.Most most, Quantity value) {
        return (!most.atZero() || value.value().signum() == 0) && notMore(u, most.ofReading() ? new Quantity(value.value().abs().multiply(most.uncertainty().value()).divide(HUNDRED), value.unit()) : most.uncertainty());
    }

    /** What the table of instruments gives as the least can never be too much. */
    private boolean isLeast(Quantity u, String kind, Quantity value) {
        Vocabulary.InstrumentKind known = words.instruments().get(kind);
        Quantity least = known == null ? null : known.leastUncertainty().get(value.unit().dimension());
        return least != null && atMost(u, new Plausible.Most(least, least.unit() == Unit.PER_CENT && value.unit().dimension() != Unit.Dimension.RATIO, false), value);
    }

    private static boolean atMostHalf(Quantity u, Bounds usual) {
        Quantity width = usual.high().minus(usual.low());
        return notMore(u.times(BigDecimal.valueOf(2)), width);
    }

    /** Two uncertainties compared as differences, in the unit of the second. */
    private static boolean notMore(Quantity u, Quantity most) {
        return u.differenceTo(most.unit()).value().compareTo(most.value()) <= 0;
    }

    private Optional<Impossible> days(Entry entry, Value.Days days) {
        Plausible.Mark mark = plausible.dates().get(entry.what());
        if (days.from().isAfter(entry.at().date())) {
            return Optional.of(new Impossible(name(entry.what()) + " " + days + " is later than the day of the entry (" + entry.at().date() + ")", mark == null ? "Look at the mark again" : mark.hint()));
        }
        if (mark != null && days.to().isBefore(mark.from())) {
            return Optional.of(new Impossible(name(entry.what()) + " " + days + " is too old to be true: there were none before " + mark.from(), "Look at the mark again; check two figures of the year"));
        }
        return Optional.empty();
    }

    /** Why a code cannot be marked like this; said only while it is being written, for every check that reads it holds what it cannot read for a doubt. */
    Optional<Impossible> code(Entry entry) {
        if (!(entry.is() instanceof Value.Code code) || entry.at() == null) {
            return Optional.empty();
        }
        return switch (entry.what()) {
            case "date-code" -> dateCode(code.text(), entry.at().date());
            case "service-description" -> serviceDescription(code.text());
            case "part-of-another-year" -> year(code.text(), entry.at().date());
            case "number", "number-in-papers" -> number(code.text());
            case "planned-runs" -> runs(code.text());
            default -> Optional.empty();
        };
    }

    private static Optional<Impossible> dateCode(String text, LocalDate day) {
        Matcher written = DATE_CODE.matcher(text);
        if (!written.matches()) {
            return Optional.empty();
        }
        String digits = written.group(1);
        if (digits.length() == 5) {
            return Optional.of(new Impossible("date code " + digits + " has five figures", "Write the last group on the side wall, which has four, or three on old tyres"));
        }
        int week = Integer.parseInt(digits.substring(0, 2));
        if (week < 1 || week > 53) {
            boolean turned = digits.length() == 4 && isWeek(digits.substring(2));
            return Optional.of(new Impossible("date code " + digits + " names week " + week, turned ? "Write the week first, then the year: perhaps " + digits.substring(2) + digits.substring(0, 2) : "Read it again: week first, then year"));
        }
        // The first full week of a year begins on the 1st to the 7th of January; the earlier is taken, on the side of the writer.
        if (digits.length() == 4) {
            int year = 2000 + Integer.parseInt(digits.substring(2));
            LocalDate begins = LocalDate.of(year, 1, 1).plusWeeks(week - 1L);
            if (begins.isAfter(day) && year < 2090) {
                return Optional.of(new Impossible("date code " + digits + " is week " + week + " of " + year + ", later than the day of the entry (" + day + ")", "Read it again: week first, then year"));
            }
        }
        return Optional.empty();
    }

    private static boolean isWeek(String two) {
        int week = Integer.parseInt(two);
        return week >= 1 && week <= 53;
    }

    private Optional<Impossible> serviceDescription(String text) {
        Plausible.Row index = plausible.description().get("load-index");
        Matcher written = LOAD_INDEX.matcher(text);
        if (index == null || !written.matches() || index.canBe().contains(Quantity.of(written.group(1), Unit.TIMES))) {
            return Optional.empty();
        }
        return Optional.of(new Impossible("load index " + written.group(1) + " is not possible: it lies " + index.canBe().words(), index.hint()));
    }

    private Optional<Impossible> number(String text) {
        return counted("number-length", BigDecimal.valueOf(text.length()), "a number of " + text.length() + " characters");
    }

    private Optional<Impossible> runs(String text) {
        BigDecimal minutes = RUN.matcher(text).results().map(run -> new BigDecimal(run.group(1))).reduce(BigDecimal.ZERO, BigDecimal::add);
        return minutes.signum() == 0 ? Optional.empty() : counted("planned-minutes", minutes, "a run plan of " + minutes.toPlainString() + " min");
    }

    private Optional<Impossible> counted(String key, BigDecimal count, String name) {
        Plausible.Row row = plausible.description().get(key);
        boolean possible = row == null || row.canBe().contains(new Quantity(count, row.canBe().low().unit()));
        return possible ? Optional.empty() : Optional.of(new Impossible(name + " is not possible: it lies " + row.canBe().words(), row.hint()));
    }

    private Optional<Impossible> year(String text, LocalDate day) {
        Plausible.Row built = plausible.description().get("built");
        Matcher years = YEAR.matcher(text);
        while (built != null && years.find()) {
            int year = Integer.parseInt(years.group(1));
            if (year > day.getYear() || !built.canBe().contains(Quantity.of(years.group(1), Unit.TIMES))) {
                return Optional.of(new Impossible("a part of " + year + " is not possible", "Write the year of the part, no later than this entry"));
            }
        }
        return Optional.empty();
    }

    /**
     * Instruments whose certificate cannot be right, each with why.
     *
     * @param entries those that could be read
     * @param today the day judged, for an instrument with which nothing was read; may be null
     */
    Map<String, Impossible> instruments(Iterable<Instrument> instruments, List<Entry> entries, LocalDate today) {
        Map<String, LocalDate> firstUse = new HashMap<>();
        for (Entry entry : entries) {
            if (entry != null && entry.with() != null && entry.at() != null) {
                firstUse.merge(entry.with(), entry.at().date(), (a, b) -> a.isBefore(b) ? a : b);
            }
        }
        Map<String, Impossible> wrong = new HashMap<>();
        for (Instrument instrument : instruments) {
            if (instrument.kind() != null && instrument.calibrated() != null && instrument.due() != null) {
                certificate(instrument, firstUse.getOrDefault(instrument.id(), today)).ifPresent(why -> wrong.put(instrument.id(), why));
            }
        }
        return wrong;
    }

    private Optional<Impossible> certificate(Instrument instrument, LocalDate used) {
        int years = plausible.tools().getOrDefault(instrument.kind(), List.of()).stream().mapToInt(Plausible.Tool::years).max().orElse(Integer.MAX_VALUE);
        Plausible.Calibration calibration = plausible.calibrated();
        String name = instrument.id() + " (" + instrument.kind() + ")";
        if (calibration != null && instrument.calibrated().isBefore(calibration.from())) {
            return Optional.of(new Impossible(name + " is calibrated " + instrument.calibrated() + ", before " + calibration.from(), "Write the day on the certificate, not the day it was made or bought"));
        }
        if (calibration != null && used != null && instrument.calibrated().plusYears(calibration.years()).isBefore(used)) {
            return Optional.of(new Impossible(name + " is calibrated " + instrument.calibrated() + ", more than " + calibration.years() + " years before its first reading (" + used + ")", "Write the day on the latest certificate before that reading"));
        }
        if (years != Integer.MAX_VALUE && instrument.due().isAfter(instrument.calibrated().plusYears(years))) {
            return Optional.of(new Impossible(name + " is due " + instrument.due() + ", more than " + years + (years == 1 ? " year" : " years") + " after its calibration (" + instrument.calibrated() + ")",
                    "Write the last day on which this calibration counts; most last one year"));
        }
        return Optional.empty();
    }

    static String name(String aspect) {
        return aspect.replace('-', ' ');
    }
}
