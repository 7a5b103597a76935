package chock.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How a result is printed. */
enum Format {
    TEXT, JSON, HTML, CSV;

    private static final List<Format> REPORTS = List.of(TEXT, JSON, HTML);

    private static Format of(String word, List<Format> known) {
        return known.stream().filter(f -> f.word().equals(word)).findFirst().orElseThrow(() -> new TypeConversionException(
                "'" + word + "' is not one of " + String.join(", ", known.stream().map(Format::word).toList())));
    }

    /** The format of a report; empty when the word is none. */
    static Optional<Format> ofReport(String word) {
        return REPORTS.stream().filter(f -> f.word().equals(word)).findFirst();
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Reads the format of a report. */
    static final class OfReport implements ITypeConverter<Format> {
        @Override
        public Format convert(String word) {
            return of(word, REPORTS);
        }
    }

    /** Reads the format of anything but a report. */
    static final class OfList implements ITypeConverter<Format> {
        @Override
        public Format convert(String word) {
            return of(word, List.of(TEXT, JSON));
        }
    }

    /** Reads the format of a table. */
    static final class OfTable implements ITypeConverter<Format> {
        @Override
        public Format convert(String word) {
            return of(word, List.of(TEXT, JSON, CSV));
        }
    }
}
