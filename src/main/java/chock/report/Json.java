package chock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** JSON as this program prints it: two blanks of indent, {@code \n}, keys in the order they were put. */
public final class Json {
    private static final ObjectWriter PRETTY = new JsonMapper().writer(new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n")).withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private Json() { }

    /** The node as text, with a line end. */
    public static String pretty(JsonNode node) {
        try {
            return PRETTY.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree in memory can always be written", e);
        }
    }
}
