package chock.record;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.deser.ValueInstantiator;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.type.LogicalType;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.io.IOException;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;

/** Puts what is written into its places ({@link Raw}) and says what has no place and what is not there. */
final class Binding {
    private final Faults faults;
    private final Map<String, Integer> lines;

    Binding(Faults faults, Map<String, Integer> lines) {
        this.faults = faults;
        this.lines = lines;
    }

    /** The libraries that find what is wrong, made ready only for a record with something wrong in it. */
    private static final class Libraries {
        // One of them greets on standard error when it is first used, which is for messages about the record.
        private static final Logger GREETING = Logger.getLogger("org.hibernate.validator");

        static {
            GREETING.setLevel(Level.WARNING);
        }

        // The message of a constraint is used as it stands, so no expression language is wanted on the class path.
        private static final Validator VALIDATOR = Validation.byDefaultProvider().configure().ignoreXmlConfiguration()
                .messageInterpolator(new ParameterMessageInterpolator()).buildValidatorFactory().getValidator();

        private static final ObjectReader READER = reader();
    }

    /** The record with every value a text or null; null when nothing could be put in its place. */
    Raw.Job bind(JsonNode written) {
        Optional<Raw.Job> straight = StraightBinding.job(written);
        if (straight.isPresent()) {
            RecordForm.refuseLaterKeys(straight.get().chock(), lines, faults);
            return straight.get();
        }
        return bindAndCheck(written);
    }

    /** The same, with everything said that is wrong. */
    Raw.Job bindAndCheck(JsonNode written) {
        Raw.Job job;
        try {
            job = Libraries.READER.withAttribute(Faults.class, faults).readValue(written);
        } catch (JsonMappingException e) {
            faults.add(pathOf(e), "this cannot stand here", "Compare with the record that 'chock new record' prints");
            return null;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory", e);
        }
        Libraries.VALIDATOR.validate(job).forEach(this::report);
        RecordForm.refuseLaterKeys(job.chock(), lines, faults);
        refuseEmpty("", written);
        return job;
    }

    private static ObjectReader reader() {
        JsonMapper mapper = JsonMapper.builder().propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .addHandler(new Misplaced()).build();
        for (LogicalType shape : List.of(LogicalType.POJO, LogicalType.Collection, LogicalType.Map)) {
            mapper.coercionConfigFor(shape).setAcceptBlankAsEmpty(true).setCoercion(CoercionInputShape.EmptyString, CoercionAction.AsNull);
        }
        return mapper.readerFor(Raw.Job.class);
    }

    /** What has a wrong shape or an unknown key, collected instead of thrown. */
    private static final class Misplaced extends DeserializationProblemHandler {

        @Override
        public boolean handleUnknownProperty(DeserializationContext context, JsonParser parser, JsonDeserializer<?> reader,
                                             Object place, String key) throws IOException {
            String path = path(parser.getParsingContext());
            List<String> known = reader.getKnownPropertyNames().stream().map(String::valueOf).sorted().toList();
            faultsOf(context).add(path, "the key " + Faults.quoted(key) + " is not known here", Choices.advice("Write", key, known));
            parser.skipChildren();
            return true;
        }

        @Override
        public Object handleUnexpectedToken(DeserializationContext context, JavaType wanted, JsonToken token,
                                            JsonParser parser, String message) throws IOException {
            return misshapen(faultsOf(context), wanted.getRawClass(), token, parser);
        }

        @Override
        public Object handleMissingInstantiator(DeserializationContext context, Class<?> wanted, ValueInstantiator maker,
                                                JsonParser parser, String message) throws IOException {
            return misshapen(faultsOf(context), wanted, parser.currentToken(), parser);
        }

        private static Faults faultsOf(DeserializationContext context) {
            return (Faults) context.getAttribute(Faults.class);
        }

        private static Object misshapen(Faults faults, Class<?> wanted, JsonToken token, JsonParser parser) throws IOException {
            // Once inside a list or a set of keys, the context is that of the inside.
            JsonStreamContext context = parser.getParsingContext();
            String path = path(token.isStructStart() ? context.getParent() : context);
            String found = token == JsonToken.START_ARRAY ? "a list stands here" : token == JsonToken.START_OBJECT ? "keys stand here" : "a single value stands here";
            if (wanted == String.class) {
                faults.addIfNew(path, found, "Write one value");
            } else if (Map.class.isAssignableFrom(wanted)) {
                faults.addIfNew(path, found, "Write fields of the description and their values, such as front-brake.type: disc");
            } else if (Collection.class.isAssignableFrom(wanted)) {
                faults.addIfNew(path, found, "Write a list: items in [ ], or one to a line, each behind a dash");
            } else {
                faults.addIfNew(path, found, "Write keys and values: " + String.join(", ", keysOf(wanted)));
            }
            parser.skipChildren();
            return null;
        }
    }

    /** The keys of one part of a record, as they are written. */
    static List<String> keysOf(Class<?> part) {
        return Arrays.stream(part.getRecordComponents()).map(c -> key(c.getName())).toList();
    }

    private static String path(JsonStreamContext context) {
        if (context == null || context.inRoot()) {
            return "";
        }
        String above = path(context.getParent());
        if (context.inArray()) {
            return above + "[" + context.getCurrentIndex() + "]";
        }
        return context.getCurrentName() == null ? above : join(above, context.getCurrentName());
    }

    private static String join(String above, String key) {
        return above.isEmpty() ? key : above + "." + key;
    }

    private static String pathOf(JsonMappingException e) {
        String path = "";
        for (JsonMappingException.Reference step : e.getPath()) {
            path = step.getFieldName() == null ? path + "[" + step.getIndex() + "]" : join(path, step.getFieldName());
        }
        return path;
    }

    private void report(ConstraintViolation<Raw.Job> violation) {
        String path = pathOf(violation.getPropertyPath());
        Object value = violation.getInvalidValue();
        boolean empty = value == null || value.toString().isBlank();
        if (!lines.containsKey(path)) {
            faults.addIfNew(path, "this is missing", violation.getMessage());
        } else if (value instanceof Collection<?> || value instanceof Map<?, ?>) {
            faults.addIfNew(path, "the list is empty", violation.getMessage());
        } else if (empty) {
            faults.addIfNew(path, "this is empty", violation.getMessage());
        } else {
            faults.addIfNew(path, Faults.quoted(value.toString()) + " cannot stand here", violation.getMessage());
        }
    }

    private static String pathOf(Path violated) {
        StringBuilder path = new StringBuilder();
        for (Path.Node node : violated) {
            if (node.getIndex() != null) {
                path.append('[').append(node.getIndex()).append(']');
            }
            if (node.getKind() != ElementKind.CONTAINER_ELEMENT) {
                path.append(path.isEmpty() ? "" : ".").append(key(node.getName()));
            }
        }
        return path.toString();
    }

    /** The key in the file of a name in {@link Raw}. */
    static String key(String name) {
        return name.equals("forLimit") ? "for" : PropertyNamingStrategies.KebabCaseStrategy.INSTANCE.translate(name);
    }

    /** Anything else that is written and empty: a key left open is a question left open, also where the key may be left out. */
    private void refuseEmpty(String path, JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(p -> refuseEmpty(join(path, p.getKey()), p.getValue()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                refuseEmpty(path + "[" + i + "]", node.get(i));
            }
        } else if (node.isNull() || node.asText().isBlank()) {
            faults.addIfNew(path, "this is empty", path.endsWith("]") ? "Write it, or take the item out" : "Write it, or leave the key out");
        }
    }
}
