package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the documents show is what the program prints. Between {@code <!-- sample: … -->} and {@code <!-- end of sample -->}
 * stands the output of that command; run with {@code -Dchock.approve=true} to write it anew, then read the difference.
 */
class DocumentSamplesTest {
    private static final Pattern SAMPLE = Pattern.compile("(<!-- sample: (.+?) -->\n```(?:text|json)\n)(.*?)(```\n<!-- end of sample -->)", Pattern.DOTALL);

    private static String withoutDigest(String text) {
        // The digest changes with every word of the rule book; the documents show that there is one.
        return text.replaceAll("sha256:[0-9a-f]{64}", "sha256:" + "0".repeat(64));
    }

    @Test
    void everySampleIsWhatTheProgramPrints() throws IOException {
        List<Path> documents = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            docs.filter(f -> f.toString().endsWith(".md")).sorted().forEach(documents::add);
        }
        int samples = 0;
        for (Path document : documents) {
            String text = Files.readString(document);
            Matcher m = SAMPLE.matcher(text);
            StringBuilder renewed = new StringBuilder();
            while (m.find()) {
                samples++;
                String printed = withoutDigest(Run.of(m.group(2).split(" ")).out());
                m.appendReplacement(renewed, Matcher.quoteReplacement(m.group(1) + printed + m.group(4)));
            }
            m.appendTail(renewed);
            if (Boolean.getBoolean("chock.approve")) {
                Files.writeString(document, renewed);
            } else {
                assertThat(renewed.toString()).as(document.toString()).isEqualTo(text);
            }
        }
        assertThat(samples).as("samples in the documents").isPositive();
    }
}
