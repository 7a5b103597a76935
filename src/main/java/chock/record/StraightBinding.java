package chock.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Puts what is written into its places ({@link Raw}) where there is nothing to say about it: every key known and of its
 * shape, nothing empty, everything there that has to be, every constraint kept. Anything else is left to
 * {@link Binding}, which says what is wrong; the libraries it needs for that take long to begin.
 */
final class StraightBinding {
    private static final Pattern FORM = Pattern.compile(Raw.FORM);
    private static final Pattern TERRITORY = Pattern.compile(Raw.TERRITORY);
    private static final Pattern ID = Pattern.compile(Raw.ID);
    private static final Pattern DAY = Pattern.compile(Raw.DAY);
    private static final Pattern YEAR = Pattern.compile(Raw.YEAR);
    private static final Pattern ROLE = Pattern.compile(Raw.ROLE);

    private final ObjectNode keys;
    private int taken;

    /** Thrown when there is something to say. */
    private static final class NotStraight extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotStraight() {
            super(null, null, false, false);
        }
    }

    private StraightBinding(ObjectNode keys) {
        this.keys = keys;
    }

    /** The record with every value a text; empty when there is anything to say about it. */
    static Optional<Raw.Job> job(JsonNode written) {
        try {
            return Optional.of(part(written, StraightBinding::job));
        } catch (NotStraight e) {
            return Optional.empty();
        }
    }

    private static <T> T part(JsonNode written, Function<StraightBinding, T> reading) {
        if (!(written instanceof ObjectNode keys)) {
            throw new NotStraight();
        }
        StraightBinding part = new StraightBinding(keys);
        T read = reading.apply(part);
        if (part.taken != keys.size()) {
            throw new NotStraight();
        }
        return read;
    }

    private JsonNode taken(String key) {
        JsonNode value = keys.get(key);
        if (value != null) {
            taken++;
        }
        return value;
    }

    private JsonNode there(String key) {
        JsonNode value = taken(key);
        if (value == null) {
            throw new NotStraight();
        }
        return value;
    }

    private static String text(JsonNode value) {
        if (!value.isTextual() || isBlank(value.textValue())) {
            throw new NotStraight();
        }
        return value.textValue();
    }

    /** Blank in either of the two ways to say it: a sign that only steers a terminal is no text. */
    private static boolean isBlank(String text) {
        return text.isBlank() || text.trim().isEmpty();
    }

    private String must(String key) {
        return text(there(key));
    }

    private String must(String key, Pattern form) {
        String text = must(key);
        if (!form.matcher(text).matches()) {
            throw new NotStraight();
        }
        return text;
    }

    private String may(String key) {
        JsonNode value = taken(key);
        return value == null ? null : text(value);
    }

    private <T> T part(String key, Function<StraightBinding, T> reading) {
        return part(there(key), reading);
    }

    private static <T> List<T> items(JsonNode value, Function<JsonNode, T> reading) {
        if (!(value instanceof ArrayNode list)) {
            throw new NotStraight();
        }
        List<T> items = new ArrayList<>(list.size());
        list.forEach(item -> items.add(reading.apply(item)));
        return items;
    }

    private <T> List<T> parts(String key, Function<StraightBinding, T> reading) {
        return items(there(key), item -> part(item, reading));
    }

    private static <T> List<T> some(List<T> items) {
        if (items.isEmpty()) {
            throw new NotStraight();
        }
        return items;
    }

    private List<String> texts(String key) {
        return items(there(key), StraightBinding::text);
    }

    private Raw.Job job() {
        JsonNode law = keys.get("local-law");
        return new Raw.Job(must("chock", FORM), must("record"), must("workshop"), must("zone"), must("territory", TERRITORY),
                must("one-person"), some(texts("seeks")), part("machine", StraightBinding::machine),
                part("maker", StraightBinding::maker), some(parts("people", StraightBinding::person)),
                parts("instruments", StraightBinding::instrument), parts("entries", StraightBinding::entry),
                parts("claims", StraightBinding::claim), law == null ? null : part("local-law", StraightBinding::localLaw), null);
    }

    private Raw.Machine machine() {
        JsonNode built = keys.get("as-built");
        JsonNode changes = keys.get("changes");
        return new Raw.Machine(must("marque"), must("model"), must("frame-number"), must("engine-number"), must("kind"),
                must("built", YEAR), must("first-registered", DAY), must("top-speed"), must("seats"),
                part("engine", StraightBinding::engine), part("front-brake", StraightBinding::brake),
                part("rear-brake", StraightBinding::brake), must("linked-brakes"),
                part("front-wheel", StraightBinding::wheel), part("rear-wheel", StraightBinding::wheel), must("drive"),
                must("volts"), part("equipment", StraightBinding::equipment), must("history"),
                may("battery"), may("generator"), may("laid-up-since"), keys.has("parts") ? words("parts") : null,
                built == null ? null : part("as-built", StraightBinding::asBuilt),
                changes == null ? null : parts("changes", StraightBinding::change));
    }

    private Raw.AsBuilt asBuilt() {
        return new Raw.AsBuilt(must("document"), may("page"), must("by"), may("seconded-by"), words("facts"), may("note"));
    }

    private Map<String, String> words(String key) {
        if (!(there(key) instanceof ObjectNode fields) || fields.isEmpty()) {
            throw new NotStraight();
        }
        Map<String, String> facts = new LinkedHashMap<>();
        fields.properties().forEach(field -> facts.put(field.getKey(), text(field.getValue())));
        return facts;
    }

    private Raw.Change change() {
        return new Raw.Change(must("at"), must("by"), must("field"), must("from"), must("to"), must("because"), may("note"));
    }

    private Raw.Engine engine() {
        return new Raw.Engine(must("cycle"), must("displacement"), must("cylinders"), must("oiling"), must("ignition"),
                must("cooling"));
    }

    private Raw.Brake brake() {
        return new Raw.Brake(must("type"), must("worked-by"), must("discs"), must("lining"), must("stop-lamp-switch"));
    }

    private Raw.Wheel wheel() {
        return new Raw.Wheel(must("rim"), must("spoked"), must("tube"));
    }

    private Raw.Equipment equipment() {
        return new Raw.Equipment(must("starter"), must("carburettors"), must("fuel-tap"), must("clutch"),
                must("front-springing"), must("rear-springing"), must("lamps"), must("indicators"), must("horn"),
                must("mirrors"), must("stands"), must("speedometer"));
    }

    private Raw.Maker maker() {
        return new Raw.Maker(parts("figures", StraightBinding::figure), texts("none-found"));
    }

    private Raw.Figure figure() {
        return new Raw.Figure(must("for"), may("at"), may("at-least"), may("at-most"), may("is"), must("document"),
                must("page"), must("by"), may("seconded-by"), may("note"));
    }

    private Raw.LocalLaw localLaw() {
        return new Raw.LocalLaw(parts("limits", StraightBinding::lawLimit), parts("sets-none", StraightBinding::lawNone));
    }

    private Raw.LawLimit lawLimit() {
        return new Raw.LawLimit(must("limit"), may("at-least"), may("at-most"), must("document"), must("section"), must("as-of", DAY), must("by"),
                may("seconded-by"), may("note"));
    }

    private Raw.LawNone lawNone() {
        return new Raw.LawNone(must("limit"), must("document"), must("section"), must("as-of", DAY), must("by"), may("seconded-by"), may("note"));
    }

    private Raw.Person person() {
        return new Raw.Person(must("id", ID), must("name"), must("role", ROLE), may("note"));
    }

    private Raw.Instrument instrument() {
        return new Raw.Instrument(must("id", ID), must("kind"), must("uncertainty"), must("calibrated", DAY),
                must("due", DAY), may("certificate"), may("note"));
    }

    private Raw.Claim claim() {
        return new Raw.Claim(must("claim"), must("about"), must("says"), must("by"), texts("supported-by"), may("note"));
    }

    private Raw.Entry entry() {
        JsonNode dangers = keys.get("dangers");
        return new Raw.Entry(must("id", ID), must("at"), must("by"), may("seq"), may("corrects"), may("reason"),
                may("point"), may("measured"), may("tried"), may("seen"), may("told"), may("assumed"), may("done"),
                may("is"), may("with"), may("instrument"), may("found-out"), may("inspected"), may("licence"),
                may("inspector"), may("document"), may("defect"), dangers == null ? null : texts("dangers"),
                may("closed"), may("note"), may("note-is"));
    }
}
