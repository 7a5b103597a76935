package chock.cli;

import chock.report.PaperSize;
import chock.report.Papers;
import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** What every command that makes a paper is told: in which form, for which sheet, and where to. */
final class PaperOptions {
    @Spec(Spec.Target.MIXEE) private CommandSpec spec;

    @Option(names = "--format", paramLabel = "FORMAT", converter = FormWord.class, description = "text, html or pdf; of a work sheet also yaml. Default: as the name behind --out ends, else text.")
    private Form form;

    @Option(names = "--out", paramLabel = "FILE", description = "File to write; a PDF goes only to a file. Default: standard output.")
    private String out;

    @Option(names = "--force", description = "Write over a file that is there already; never over a record, a key, a sign-off, a ledger or a store.")
    private boolean force;

    @Option(names = "--paper", paramLabel = "SIZE", converter = SizeWord.class, defaultValue = "a4", description = "a4 or letter. Default: a4.")
    private PaperSize size;

    /** How a paper comes. */
    enum Form { TEXT, HTML, PDF, YAML }

    /** @throws ParameterException when the paper could not be put where it was asked for */
    void ready() {
        ready(false);
    }

    /** @param yaml whether this paper comes as YAML as well */
    void ready(boolean yaml) {
        if (form() == Form.YAML && !yaml) {
            throw new ParameterException(spec.commandLine(), "This paper comes as text, html or pdf.");
        }
    }

    boolean isYaml() {
        return form() == Form.YAML;
    }

    private Form form() {
        Form asked = form != null ? form : Arrays.stream(Form.values()).filter(f -> out != null && out.toLowerCase(Locale.ROOT).endsWith("." + word(f))).findFirst().orElse(Form.TEXT);
        if (asked == Form.PDF && out == null) {
            throw new ParameterException(spec.commandLine(), "A PDF goes into a file; add --out FILE.pdf.");
        }
        return asked;
    }

    /** Makes the paper where it was asked for. Only behind these suppliers lie templates, fonts and PDF. */
    void put(Bench bench, Instant made, Supplier<String> text, Function<PaperSize, String> html) {
        switch (form()) {
            case TEXT -> put(bench, text.get());
            case HTML -> put(bench, html.apply(size));
            case PDF -> bench.write(out, Papers.pdf(html.apply(size), made), force);
            case YAML -> throw new IllegalStateException("asked for before");
        }
    }

    void put(Bench bench, String words) {
        if (out == null) {
            bench.print(words);
        } else {
            bench.write(out, words, force);
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static <E extends Enum<E>> E of(String word, E[] all) {
        return Arrays.stream(all).filter(value -> word(value).equals(word)).findFirst().orElseThrow(() -> new TypeConversionException(
                "'" + word + "' is not one of " + String.join(", ", Arrays.stream(all).map(PaperOptions::word).toList())));
    }

    static final class FormWord implements ITypeConverter<Form> {
        @Override
        public Form convert(String word) {
            return of(word, Form.values());
        }
    }

    static final class SizeWord implements ITypeConverter<PaperSize> {
        @Override
        public PaperSize convert(String word) {
            return of(word, PaperSize.values());
        }
    }
}
