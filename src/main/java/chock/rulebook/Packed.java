package chock.rulebook;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The outlines of a rule book that was found sound, with its digest, in a form that is quick to read: what the build leaves
 * for the start of the program. It says nothing that the files do not say.
 *
 * @param digest of the files
 * @param outlines of the files in YAML, by name such as {@code brakes/limits.yaml}
 */
record Packed(String digest, SortedMap<String, Outline> outlines) {
    static final String NAME = "META-INF/chock/rule-book";
    private static final int TEXT = 0;
    private static final int ITEMS = 1;
    private static final int KEYS = 2;

    byte[] bytes() throws IOException {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(body);
        out.writeInt(outlines.size());
        for (Map.Entry<String, Outline> file : outlines.entrySet()) {
            out.writeShort(number(file.getKey(), numbers));
            write(file.getValue(), out, numbers);
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        DataOutputStream head = new DataOutputStream(whole);
        head.writeUTF(digest);
        head.writeShort(numbers.size());
        for (String text : numbers.keySet()) {
            head.writeUTF(text);
        }
        body.writeTo(head);
        return whole.toByteArray();
    }

    private static int number(String text, Map<String, Integer> numbers) {
        int number = numbers.computeIfAbsent(text, t -> numbers.size());
        if (number > Short.MAX_VALUE) {
            throw new IllegalStateException("the rule book holds more different texts than its packed form can number");
        }
        return number;
    }

    private static void write(Outline outline, DataOutputStream out, Map<String, Integer> numbers) throws IOException {
        int kind = outline instanceof Outline.Text ? TEXT : outline instanceof Outline.Items ? ITEMS : KEYS;
        out.writeByte(kind);
        out.writeShort(outline.line());
        if (outline instanceof Outline.Text text) {
            out.writeShort(number(text.text(), numbers));
        } else if (outline instanceof Outline.Items list) {
            out.writeShort(list.items().size());
            for (Outline item : list.items()) {
                write(item, out, numbers);
            }
        } else if (outline instanceof Outline.Keys mapping) {
            out.writeShort(mapping.keys().size());
            for (Outline.Key key : mapping.keys()) {
                out.writeShort(key.line());
                out.writeShort(number(key.name(), numbers));
                write(key.value(), out, numbers);
            }
        }
    }

    static Packed read(InputStream bytes) throws IOException {
        DataInputStream in = new DataInputStream(bytes);
        String digest = in.readUTF();
        String[] texts = new String[in.readShort()];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = in.readUTF();
        }
        SortedMap<String, Outline> outlines = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            outlines.put(texts[in.readShort()], outline(in, texts));
        }
        return new Packed(digest, outlines);
    }

    private static Outline outline(DataInputStream in, String[] texts) throws IOException {
        int kind = in.readByte();
        int line = in.readShort();
        if (kind == TEXT) {
            return new Outline.Text(line, texts[in.readShort()]);
        }
        int size = in.readShort();
        if (kind == ITEMS) {
            List<Outline> items = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                items.add(outline(in, texts));
            }
            return new Outline.Items(line, items);
        }
        List<Outline.Key> keys = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            int at = in.readShort();
            keys.add(new Outline.Key(at, texts[in.readShort()], outline(in, texts)));
        }
        return new Outline.Keys(line, keys);
    }
}
