package chock.signoff;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;

/** JSON for people to look at, with a line end. */
final class Pretty {
    private Pretty() { }

    static byte[] bytes(JsonNode node) {
        DefaultIndenter two = new DefaultIndenter("  ", "\n");
        try {
            return (new JsonMapper().writer(new DefaultPrettyPrinter().withObjectIndenter(two).withArrayIndenter(two)).writeValueAsString(node) + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree in memory can always be written", e);
        }
    }
}
