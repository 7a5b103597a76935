package chock.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * A file as it is written: every word as text, so that {@code 0301} stays {@code 0301}, and the line of each. Nothing in
 * a file is ever run, fetched or made into an object here.
 */
final class Written {
    /** Largest file read, in bytes. A record of one machine is some ten thousand. */
    static final int MOST_BYTES = 5_000_000;
    /** How deep lists and keys may be nested; a record needs four. */
    static final int DEEPEST = 12;
    /** Most single values in one file, so that a crowded one cannot fill the memory. */
    static final int MOST_VALUES = 100_000;

    private static final String EMPTY = "the file is empty";
    private static final String START = "Begin with 'chock: job-record/2'; 'chock new record' prints a record to fill in";
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Pattern NO_NUMBER = Pattern.compile("[-+]?(\\.nan|nan|\\.inf|inf|infinity)", Pattern.CASE_INSENSITIVE);

    private final Faults faults;
    private final Map<String, Integer> lines;
    private JsonParser parser;
    private int values;

    /** Thrown when reading cannot go on; the reason is already among the faults. */
    private static final class GivenUp extends IOException {
        private static final long serialVersionUID = 1L;

        @Override
        public synchronized Throwable fillInStackTrace() {
            return this;
        }
    }

    private Written(Faults faults, Map<String, Integer> lines) {
        this.faults = faults;
        this.lines = lines;
    }

    /**
     * Reads a file, with every leaf a text or a null.
     *
     * @param faults receives what is wrong with the file
     * @param lines receives the line of each path
     * @return what is written, or null when the file could not be read to its end
     */
    static JsonNode read(byte[] bytes, Faults faults, Map<String, Integer> lines) {
        try {
            return new Written(faults, lines).document(bytes);
        } catch (GivenUp known) {
            return null;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory", e);
        }
    }

    private JsonNode document(byte[] bytes) throws IOException {
        String text = text(bytes);
        String start = text.stripLeading();
        if (start.isEmpty()) {
            throw giveUp(0, "", EMPTY, START);
        }
        boolean json = start.charAt(0) == '{';
        parser = json ? json(text) : yaml(text);
        try {
            if (next() == null) {
                throw giveUp(0, "", EMPTY, START);
            }
            JsonNode root = value("", 1);
            if (!root.isObject()) {
                throw giveUp(0, "", "the file is not a job record", START);
            }
            if (next() != null) {
                throw giveUp(lineNow(), "", "a second document begins here", "One file holds one record: end the file above this line");
            }
            return root;
        } catch (JsonProcessingException e) {
            JsonLocation where = e.getLocation();
            throw giveUp(where == null ? 0 : Math.max(0, where.getLineNr()), "", SyntaxWords.what(e.getOriginalMessage(), json), SyntaxWords.advice(e.getOriginalMessage(), json));
        }
    }

    private static JsonParser json(String text) throws IOException {
        // NaN and its like are let through here only to be refused below with their line and path.
        return JsonFactory.builder().enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS).build().createParser(text);
    }

    private static JsonParser yaml(String text) throws IOException {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(MOST_BYTES + 1);
        return YAMLFactory.builder().loaderOptions(options).build().createParser(text);
    }

    private JsonToken next() throws IOException {
        return parser.nextToken();
    }

    private JsonNode value(String path, int depth) throws IOException {
        lines.putIfAbsent(path, lineNow());
        refuseReferences(path);
        if (++values > MOST_VALUES) {
            throw giveUp(lineNow(), "", "the file holds more than 100,000 values", "A record is of one machine; split the file");
        }
        JsonToken token = parser.currentToken();
        if (token.isStructStart() && depth > DEEPEST) {
            throw giveUp(lineNow(), path, "nested more than " + DEEPEST + " deep", "A record needs four levels; look for a bracket or an indentation too many");
        }
        return switch (token) {
            case START_OBJECT -> keys(path, depth);
            case START_ARRAY -> items(path, depth);
            case VALUE_NULL -> NODES.nullNode();
            default -> leaf(path);
        };
    }

    private JsonNode keys(String path, int depth) throws IOException {
        ObjectNode node = NODES.objectNode();
        while (next() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String below = path.isEmpty() ? key : path + "." + key;
            int line = lineNow();
            refuseReferences(below);
            next();
            if (node.has(key)) {
                faults.add(line, below, "the key stands twice, first on line " + lines.get(below), "Keep one of the two");
                parser.skipChildren();
            } else {
                lines.putIfAbsent(below, line);
                node.set(key, value(below, depth + 1));
            }
        }
        return node;
    }

    private JsonNode items(String path, int depth) throws IOException {
        ArrayNode node = NODES.arrayNode();
        while (next() != JsonToken.END_ARRAY) {
            node.add(value(path + "[" + node.size() + "]", depth + 1));
        }
        return node;
    }

    private JsonNode leaf(String path) throws IOException {
        String text = parser.getText();
        if (NO_NUMBER.matcher(text).matches()) {
            faults.addIfNew(path, Faults.quoted(text) + " is not a number", "Write what was read, in figures");
        }
        return NODES.textNode(text.strip());
    }

    /** Anchors, aliases and tags make a file mean something other than what the eye reads, so they are refused. */
    private void refuseReferences(String path) throws IOException {
        if (!(parser instanceof YAMLParser yaml) || faults.at(path)) {
            return;
        }
        if (yaml.isCurrentAlias()) {
            faults.add(path, "an alias (*) stands here", "Write the value itself out in full");
        } else if (yaml.getObjectId() != null) {
            faults.add(path, "an anchor (&) stands here", "Leave it out; quote the value if it begins with &");
        } else if (yaml.getTypeId() != null) {
            faults.add(path, "a tag (!) stands here", "Leave it out; quote the value if it begins with !");
        }
    }

    private int lineNow() {
        return parser.currentTokenLocation().getLineNr();
    }

    private GivenUp giveUp(int line, String path, String what, String advice) {
        faults.add(line, path, what, advice);
        return new GivenUp();
    }

    private String text(byte[] bytes) throws GivenUp {
        if (bytes.length > MOST_BYTES) {
            throw giveUp(0, "", "the file is " + bytes.length + " bytes; at most 5 MB (" + MOST_BYTES + " bytes) are read", "A record is of one machine; keep pictures and papers beside it");
        }
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE) || everySecondIsZero(bytes)) {
            throw giveUp(0, "", "the file is in UTF-16", "Save it as UTF-8");
        }
        int from = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        for (int i = from; i < bytes.length; i++) {
            if (bytes[i] >= 0 && bytes[i] < ' ' && bytes[i] != '\n' && bytes[i] != '\r' && bytes[i] != '\t' || bytes[i] == 127) {
                throw giveUp(lineAt(bytes, i), "", "this is not a text file: byte " + bytes[i] + " stands in it", "Save it as plain text in UTF-8");
            }
        }
        ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        try {
            return decoder.decode(in).toString();
        } catch (CharacterCodingException e) {
            throw giveUp(lineAt(bytes, in.position()), "", "a character here is not UTF-8", "Save the file as UTF-8");
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        return bytes.length >= mark.length && Arrays.equals(Arrays.copyOf(bytes, mark.length), toBytes(mark));
    }

    private static byte[] toBytes(int... mark) {
        byte[] bytes = new byte[mark.length];
        for (int i = 0; i < mark.length; i++) {
            bytes[i] = (byte) mark[i];
        }
        return bytes;
    }

    /** UTF-16 without its mark: in plain western text every other byte is zero. */
    private static boolean everySecondIsZero(byte[] bytes) {
        return bytes.length >= 4 && (bytes[0] == 0 && bytes[2] == 0 && bytes[1] != 0 && bytes[3] != 0
                || bytes[1] == 0 && bytes[3] == 0 && bytes[0] != 0 && bytes[2] != 0);
    }

    private static int lineAt(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}
