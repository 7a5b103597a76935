package chock.record;

import chock.quantity.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The form of a job record as a JSON Schema (draft 2020-12), for editors that complete and underline while somebody
 * types. It is never stricter than {@link RecordReader}, which alone decides: what needs two places of a record to be
 * compared is left to it.
 */
public final class RecordSchema {
    private static final String DAY = "^\\d{4}-\\d{2}-\\d{2}$";
    private static final String MOMENT = "^\\d{4}-\\d{2}-\\d{2}([ T]+\\d{2}:\\d{2})?$";
    private static final String LAID_UP = "^(no|unknown|\\d{4}(-\\d{2}(-\\d{2})?)?)$";
    private static final String MARKED_DAY = "^\\d{4}(-\\d{2}(-\\d{2})?)?$";
    private static final String ID = "^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$";
    private static final String NUMBER = "[-+\\u2212]?\\s*(\\d+(\\.\\d+)?(\\s+\\d+\\s*/\\s*\\d+)?|\\d+\\s*/\\s*\\d+)";
    private static final String AMOUNT = "^" + NUMBER + "\\s*[^\\d\\s].*$";
    private static final List<String> EVIDENCE = Arrays.stream(Deed.values()).filter(Deed::isEvidence).map(Deed::key).toList();

    private final JsonNodeFactory nodes = JsonNodeFactory.instance;
    private final Vocabulary words;

    private RecordSchema(Vocabulary words) {
        this.words = words;
    }

    /** The schema for records that use the words of one rule book. */
    public static ObjectNode schema(Vocabulary words) {
        return new RecordSchema(words).job();
    }

    private ObjectNode job() {
        ObjectNode job = nodes.objectNode();
        job.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        job.put("title", "Job record");
        job.put("description", "All that was written about one machine.");
        ObjectNode keys = nodes.objectNode();
        keys.set("chock", oneOf(RecordForm.names(), "The form of this file; the first is for new records."));
        keys.set("record", text("The record's own number."));
        keys.set("workshop", text("Name of the workshop."));
        keys.set("zone", text("The workshop's time zone, such as Europe/London."));
        keys.set("territory", pattern("^[A-Z]{2}(-[A-Z0-9]{1,3})?$", "ISO 3166 code of where the machine will be ridden, such as GB or US-VA."));
        keys.set("one-person", yesNo("Yes only when one person works alone."));
        ObjectNode seeks = list(oneOf(Arrays.stream(Gate.values()).map(Gate::id).toList(), "A gate."), "The gates asked for.", 1);
        seeks.put("uniqueItems", true);
        keys.set("seeks", seeks);
        keys.set("machine", machine());
        keys.set("maker", maker());
        keys.set("people", list(person(), "Everybody who writes in this record.", 1));
        keys.set("instruments", list(instrument(), "What readings are taken with.", 0));
        keys.set("entries", list(entry(), "What was measured, seen and done, each with its day and writer.", 0));
        keys.set("claims", list(claim(), "What is said of the machine, such as by its seller.", 0));
        keys.set("local-law", localLaw());
        keys.set("sessions", list(session(), "Evidence of one round: time, person and instruments once, below them the places with what was found.", 0));
        job.set("allOf", laterKeys());
        job.set("$defs", nodes.objectNode().set("found", found()));
        return object(job, keys, List.of("local-law", "sessions"));
    }

    /** Of each earlier form: without the keys that a later one brought. */
    private ArrayNode laterKeys() {
        ArrayNode rules = nodes.arrayNode();
        for (int form = 1; form < RecordForm.NEWEST; form++) {
            int before = form;
            ObjectNode when = requires("chock");
            when.set("properties", nodes.objectNode().set("chock", nodes.objectNode().put("const", RecordForm.name(form))));
            ObjectNode then = nodes.objectNode();
            RecordForm.keysSince().forEach((path, since) -> {
                if (since > before) {
                    forbid(then, path, nodes.booleanNode(false));
                }
            });
            for (String field : DescriptionField.names()) {
                List<String> later = DescriptionField.laterWords(field).entrySet().stream().filter(word -> word.getValue() > before).map(Map.Entry::getKey).toList();
                if (!later.isEmpty()) {
                    forbid(then, "machine." + field, nodes.objectNode().set("not", oneOf(later, "Words of a later form.")));
                }
            }
            rules.add(ifThen(when, then));
        }
        return rules;
    }

    private static void forbid(ObjectNode at, String path, JsonNode rule) {
        String first = path.split("\\.", 2)[0];
        boolean list = first.endsWith("[]");
        ObjectNode keys = at.withObjectProperty("properties");
        if (path.equals(first)) {
            keys.set(first, rule);
        } else {
            ObjectNode below = keys.withObjectProperty(list ? first.substring(0, first.length() - 2) : first);
            forbid(list ? below.withObjectProperty("items") : below, path.substring(first.length() + 1), rule);
        }
    }

    private ObjectNode machine() {
        ObjectNode keys = nodes.objectNode();
        keys.set("marque", text("Who built it."));
        keys.set("model", text("Model."));
        keys.set("frame-number", text("As stamped, or none."));
        keys.set("engine-number", text("As stamped, or none."));
        keys.set("kind", choice(Machine.Kind.class, "What the law calls it."));
        keys.set("built", whole(MachineReading.least(words, "built"), 9999, "Year it was built."));
        keys.set("first-registered", pattern(DAY, "Day of first registration."));
        keys.set("top-speed", amount(Unit.Dimension.SPEED, "Top speed by the maker."));
        keys.set("seats", whole(MachineReading.least(words, "seats"), MachineReading.most(words, "seats"), "How many people it seats."));
        keys.set("engine", engine());
        keys.set("front-brake", brake());
        keys.set("rear-brake", brake());
        keys.set("linked-brakes", yesNo("Whether one control works both brakes."));
        keys.set("front-wheel", wheel());
        keys.set("rear-wheel", wheel());
        keys.set("drive", choice(Machine.Drive.class, "Final drive."));
        keys.set("volts", whole(MachineReading.least(words, "volts"), MachineReading.most(words, "volts"), "Volts of the battery; 0 when it has none."));
        keys.set("equipment", equipment());
        keys.set("history", choice(Machine.History.class, "Unknown when it was bought in without a record of its work."));
        keys.set("battery", choice(Machine.Battery.class, "What kind of battery it is."));
        keys.set("generator", yesNo("Whether the engine charges the battery; yes where it is not written."));
        keys.set("laid-up-since", pattern(LAID_UP, "Day, month or year since which it stood when it came in; no when it was in use."));
        ObjectNode parts = nodes.objectNode();
        for (Machine.Part part : Machine.Part.values()) {
            parts.set(part.word(), yesNo("Whether it has one."));
        }
        keys.set("parts", object(nodes.objectNode().put("minProperties", 1), parts, Arrays.stream(Machine.Part.values()).map(Machine.Part::word).toList()));
        keys.set("as-built", asBuilt());
        keys.set("changes", list(change(), "What work changed in this description, each with its day; the fields above say how it is now.", 0));
        return object(nodes.objectNode(), keys, List.of("battery", "generator", "laid-up-since", "parts", "as-built", "changes"));
    }

    private ObjectNode asBuilt() {
        ObjectNode facts = nodes.objectNode();
        DescriptionField.names().forEach(field -> facts.set(field, valueOf(field)));
        ObjectNode keys = nodes.objectNode();
        keys.set("document", text("Title of the document about this model, or none."));
        keys.set("page", text("Page or section."));
        keys.set("by", number(ID, "Who wrote it."));
        keys.set("seconded-by", number(ID, "Who compared it with the machine as well."));
        keys.set("facts", object(nodes.objectNode().put("minProperties", 1), facts, DescriptionField.names()));
        keys.set("note", anyText());
        return object(nodes.objectNode().put("description", "What it was built with."), keys, List.of("page", "seconded-by", "note"));
    }

    private ObjectNode valueOf(String field) {
        List<String> values = DescriptionField.valuesOf(field);
        String says = "As built: " + field + ".";
        return values.isEmpty() ? text(says) : values.equals(List.of("yes", "no")) ? yesNo(says) : values.get(0).matches("\\d+") ? whole(0, DescriptionField.MOST, says) : oneOf(values, says);
    }

    private ObjectNode change() {
        ObjectNode keys = nodes.objectNode();
        keys.set("at", pattern(MOMENT, "Day, or day and time, from which the machine was so."));
        keys.set("by", number(ID, "Who writes it."));
        keys.set("field", oneOf(DescriptionField.names(), "The field that changed."));
        keys.set("from", text("Its value before."));
        keys.set("to", text("Its value after."));
        keys.set("because", number(ID, "The entry of the work."));
        keys.set("note", anyText());
        return object(nodes.objectNode(), keys, List.of("note"));
    }

    private ObjectNode engine() {
        ObjectNode keys = nodes.objectNode();
        keys.set("cycle", choice(Machine.Cycle.class, "How the engine works."));
        keys.set("displacement", amount(Unit.Dimension.VOLUME, "Swept volume of all cylinders; 0 cc when electric."));
        keys.set("cylinders", whole(0, MachineReading.most(words, "engine.cylinders"), "How many; 0 when electric."));
        keys.set("oiling", choice(Machine.Oiling.class, "How it is oiled."));
        keys.set("ignition", choice(Machine.Ignition.class, "How the spark is made."));
        keys.set("cooling", choice(Machine.Cooling.class, "How heat is carried off."));
        return object(nodes.objectNode(), keys, List.of());
    }

    private ObjectNode brake() {
        ObjectNode keys = nodes.objectNode();
        keys.set("type", choice(Machine.BrakeType.class, "Kind of brake."));
        keys.set("worked-by", choice(Machine.WorkedBy.class, "How the control reaches it."));
        keys.set("discs", whole(MachineReading.least(words, "discs"), MachineReading.most(words, "discs"), "Number of discs; 0 for a drum or none."));
        keys.set("lining", choice(Machine.Lining.class, "How the friction material is held."));
        keys.set("stop-lamp-switch", yesNo("Whether its control works a stop lamp."));
        return object(nodes.objectNode(), keys, List.of());
    }

    private ObjectNode wheel() {
        ObjectNode keys = nodes.objectNode();
        keys.set("rim", choice(Machine.Rim.class, "What the rim is made of."));
        keys.set("spoked", yesNo("Whether it has wire spokes."));
        keys.set("tube", yesNo("Whether the tyre runs with a tube."));
        return object(nodes.objectNode(), keys, List.of());
    }

    private ObjectNode equipment() {
        ObjectNode keys = nodes.objectNode();
        keys.set("starter", choice(Machine.Starter.class, "How the engine is started."));
        keys.set("carburettors", whole(MachineReading.least(words, "equipment.carburettors"), MachineReading.most(words, "equipment.carburettors"), "How many; 0 when electric or injected."));
        keys.set("fuel-tap", choice(Machine.FuelTap.class, "What shuts the fuel off."));
        keys.set("clutch", choice(Machine.Clutch.class, "How the lever reaches the clutch."));
        keys.set("front-springing", choice(Machine.FrontSpringing.class, "What the front wheel is sprung by."));
        keys.set("rear-springing", choice(Machine.RearSpringing.class, "What the rear wheel is sprung by."));
        keys.set("lamps", yesNo("Whether it has lamps at all."));
        keys.set("indicators", yesNo("Whether it has direction indicators."));
        keys.set("horn", yesNo("Whether it has a horn."));
        keys.set("mirrors", whole(MachineReading.least(words, "equipment.mirrors"), MachineReading.most(words, "equipment.mirrors"), "How many."));
        keys.set("stands", whole(MachineReading.least(words, "equipment.stands"), MachineReading.most(words, "equipment.stands"), "How many."));
        keys.set("speedometer", yesNo("Whether it has a speedometer."));
        return object(nodes.objectNode(), keys, List.of());
    }

    private ObjectNode maker() {
        ObjectNode figure = nodes.objectNode();
        figure.set("for", oneOf(new TreeSet<>(words.limits().keySet()), "The limit it speaks to."));
        figure.set("at", oneOf(words.everyPlaceName(), "The place it is for; left out, it is for every place."));
        figure.set("at-least", pattern(AMOUNT, "Lowest allowed."));
        figure.set("at-most", pattern(AMOUNT, "Highest allowed."));
        figure.set("is", pattern(AMOUNT, "The figure to be met within a tolerance."));
        figure.set("document", text("Title of the manual."));
        figure.set("page", text("Page or section."));
        figure.set("by", number(ID, "Who read it."));
        figure.set("seconded-by", number(ID, "Who read it as well."));
        figure.set("note", anyText());
        ObjectNode figureForm = object(nodes.objectNode(), figure, List.of("at", "at-least", "at-most", "is", "seconded-by", "note"));
        figureForm.set("oneOf", nodes.arrayNode().add(requires("is")).add(nodes.objectNode().set("anyOf", nodes.arrayNode().add(requires("at-least")).add(requires("at-most")))));
        ObjectNode keys = nodes.objectNode();
        keys.set("figures", list(figureForm, "Figures found.", 0));
        keys.set("none-found", list(pattern("^[^\\s@]+(\\s*@\\s*\\S+)?$", "Id of a limit, alone or as 'limit @ place'."), "Looked for and not found.", 0));
        return object(nodes.objectNode(), keys, List.of());
    }

    private ObjectNode localLaw() {
        ObjectNode limit = nodes.objectNode();
        limit.set("limit", lawLimit());
        limit.set("at-least", pattern(AMOUNT, "Lowest allowed."));
        limit.set("at-most", pattern(AMOUNT, "Highest allowed."));
        ObjectNode limitForm = object(nodes.objectNode(), lawRead(limit), List.of("at-least", "at-most", "seconded-by", "note"));
        limitForm.set("anyOf", nodes.arrayNode().add(requires("at-least")).add(requires("at-most")));
        ObjectNode none = nodes.objectNode();
        none.set("limit", lawLimit());
        ObjectNode keys = nodes.objectNode();
        keys.set("limits", list(limitForm, "Numbers it sets.", 0));
        keys.set("sets-none", list(object(nodes.objectNode(), lawRead(none), List.of("seconded-by", "note")), "Searched for and not found.", 0));
        return object(nodes.objectNode().put("description", "The law where the machine will be ridden, where the rule book does not have it."), keys, List.of());
    }

    private ObjectNode lawLimit() {
        return oneOf(words.law().sides().keySet(), "A limit for which local law is asked.");
    }

    private ObjectNode lawRead(ObjectNode keys) {
        keys.set("document", text("Title of the law."));
        keys.set("section", text("Section."));
        keys.set("as-of", pattern(DAY, "Day of the text that was read."));
        keys.set("by", number(ID, "Who read it."));
        keys.set("seconded-by", number(ID, "Who read it as well."));
        keys.set("note", anyText());
        return keys;
    }

    private ObjectNode person() {
        ObjectNode keys = nodes.objectNode();
        keys.set("id", number(ID, "Short id used in entries."));
        keys.set("name", text("Full name."));
        keys.set("role", oneOf(List.of("technician", "inspector", "lead"), "Role."));
        keys.set("note", anyText());
        return object(nodes.objectNode(), keys, List.of("note"));
    }

    private ObjectNode instrument() {
        ObjectNode keys = nodes.objectNode();
        keys.set("id", number(ID, "Short id used in entries."));
        keys.set("kind", oneOf(new TreeSet<>(words.instruments().keySet()), "Kind of instrument."));
        keys.set("uncertainty", pattern("^by-kind$|" + AMOUNT, "Its expanded uncertainty (k = 2), or by-kind."));
        keys.set("calibrated", pattern(DAY, "Day of its last calibration."));
        keys.set("due", pattern(DAY, "Last day on which that calibration counts."));
        keys.set("certificate", text("Number of the certificate that states its uncertainty."));
        keys.set("note", anyText());
        return object(nodes.objectNode(), keys, List.of("certificate", "note"));
    }

    private ObjectNode entry() {
        ObjectNode keys = nodes.objectNode();
        keys.set("id", number(ID, "Its own id."));
        keys.set("at", pattern(MOMENT, "Day, or day and time, in the workshop's time."));
        keys.set("by", number(ID, "Who writes it."));
        keys.set("seq", number("^[1-9]\\d{0,5}$", "Order among entries of one minute; given by the program.").put("minimum", 1).put("maximum", EntryReading.MOST_SEQ));
        keys.set("corrects", number(ID, "The earlier entry it replaces."));
        keys.set("reason", text("Why it corrects; of work 'examined', the cause that was found."));
        keys.set("point", oneOf(words.everyPlaceName(), "The place on the machine."));
        Collection<String> aspects = new TreeSet<>(words.aspects().keySet());
        keys.set("measured", oneOf(new TreeSet<>(words.aspects().values().stream().filter(a -> a.form() == Vocabulary.Form.AMOUNT).map(Vocabulary.Aspect::name).toList()), "Read off an instrument."));
        keys.set("tried", oneOf(aspects, "Tried by the writer."));
        keys.set("seen", oneOf(aspects, "Looked at by the writer."));
        keys.set("told", oneOf(aspects, "Said by somebody else."));
        keys.set("assumed", oneOf(aspects, "Taken for granted."));
        keys.set("done", oneOf(new TreeSet<>(words.works().keySet()), "Work on a part."));
        keys.set("is", text("What was found."));
        keys.set("with", number(ID, "The instrument it was read from."));
        keys.set("instrument", number(ID, "An instrument found out of tolerance."));
        keys.set("found-out", text("How it was found out of tolerance."));
        keys.set("inspected", oneOf(List.of("passed", "refused"), "Result of a licensed inspection."));
        keys.set("licence", text("Number of the inspector's licence."));
        keys.set("inspector", text("Name of the inspector."));
        keys.set("document", text("The document issued."));
        keys.set("defect", text("Something wrong, in free words."));
        keys.set("dangers", list(choice(Danger.class, "A danger."), "What the defect can do.", 0).put("uniqueItems", true));
        keys.set("closed", number(ID, "The defect found closed."));
        keys.set("note", anyText());
        keys.set("note-is", choice(NoteIs.class, "What the note is, or where there is none the reason."));
        List<String> optional = Binding.keysOf(Raw.Entry.class).stream().filter(k -> !List.of("id", "at", "by").contains(k)).toList();
        ObjectNode entry = object(nodes.objectNode(), keys, optional);
        ObjectNode together = nodes.objectNode();
        together.set("corrects", nodes.arrayNode().add("reason"));
        together.set("closed", nodes.arrayNode().add("reason"));
        entry.set("dependentRequired", together);
        ArrayNode exactlyOne = nodes.arrayNode();
        ArrayNode rules = nodes.arrayNode();
        rules.add(ifThen(requires("note-is"), nodes.objectNode().set("anyOf", nodes.arrayNode().add(requires("note")).add(requires("reason")))));
        for (Deed deed : Deed.values()) {
            exactlyOne.add(requires(deed.key()));
            rules.add(ifThen(requires(deed.key()), goesWith(deed)));
        }
        words.aspects().values().stream().sorted(Comparator.comparing(Vocabulary.Aspect::name)).forEach(a -> rules.add(ifThen(asks(a), answeredBy(a))));
        words.works().keySet().stream().sorted().forEach(work -> rules.add(ifThen(does(work), toolOf(work))));
        ObjectNode examined = requires("done");
        examined.set("properties", nodes.objectNode().set("done", nodes.objectNode().put("const", EntryReading.EXAMINED)));
        ObjectNode otherReason = requires("reason");
        otherReason.set("not", examined);
        rules.add(ifThen(examined.deepCopy(), requires("reason")));
        rules.add(ifThen(otherReason, requires("corrects")));
        entry.set("oneOf", exactlyOne);
        entry.set("allOf", rules);
        return entry;
    }

    private ObjectNode session() {
        ObjectNode keys = nodes.objectNode();
        keys.set("id", number("^" + Sessions.ID + "$", "Its own id; the ids of its entries begin with it."));
        keys.set("at", pattern(MOMENT, "Day, or day and time, in the workshop's time."));
        keys.set("by", number(ID, "Who writes it."));
        keys.set("in-order", yesNo("Yes when its lines were done in the order in which they are written."));
        ObjectNode instruments = nodes.objectNode().put("type", "object").put("minProperties", 1).put("description", "What is read, and with which instrument.");
        instruments.set("additionalProperties", number(ID, "The instrument."));
        keys.set("with", instruments);
        ObjectNode session = object(nodes.objectNode(), keys, List.of("in-order", "with"));
        // One of them is offered by an editor as soon as somebody types a letter of it.
        new TreeSet<>(words.points().stream().map(point -> point.split("/")[0]).toList()).forEach(place -> keys.set(place, aFind()));
        session.put("minProperties", Sessions.HEADER.size() - 1);
        return session.set("additionalProperties", aFind());
    }

    private ObjectNode aFind() {
        return nodes.objectNode().put("$ref", "#/$defs/found");
    }

    /** Below a place: other places, and what was found, each a text; of work also a list. */
    private ObjectNode found() {
        ObjectNode below = nodes.objectNode().put("type", "object").put("minProperties", 1);
        below.set("additionalProperties", aFind());
        ArrayNode ways = nodes.arrayNode().add(below).add(text("What was found.")).add(list(text("Work done."), "Works done.", 1));
        return nodes.objectNode().put("description", "A place with what was found there; [place] [kind] what: answer.").set("anyOf", ways);
    }

    private ObjectNode claim() {
        ObjectNode keys = nodes.objectNode();
        keys.set("claim", choice(Claim.Kind.class, "What is claimed."));
        keys.set("about", oneOf(words.everyPlaceName(), "The place on the machine."));
        keys.set("says", text("The claim in the words it was made in."));
        keys.set("by", text("Who claims it."));
        keys.set("supported-by", list(number(ID, "An entry."), "The entries it rests on.", 0).put("uniqueItems", true));
        keys.set("note", anyText());
        return object(nodes.objectNode(), keys, List.of("note"));
    }

    private ObjectNode goesWith(Deed deed) {
        List<String> wanted = EntryReading.keysFor(deed);
        ObjectNode then = requires(wanted.toArray(String[]::new));
        ObjectNode keys = nodes.objectNode();
        EntryReading.PARTICULAR.stream().filter(k -> !wanted.contains(k) && !EntryReading.optionalFor(deed).contains(k)).forEach(k -> keys.put(k, false));
        then.set("properties", keys);
        return then;
    }

    /** True of an entry that says something about this aspect, in whatever way. */
    private ObjectNode asks(Vocabulary.Aspect aspect) {
        ArrayNode ways = nodes.arrayNode();
        for (String key : EVIDENCE) {
            ObjectNode way = requires(key);
            way.set("properties", nodes.objectNode().set(key, nodes.objectNode().put("const", aspect.name())));
            ways.add(way);
        }
        return nodes.objectNode().set("anyOf", ways);
    }

    private ObjectNode does(String work) {
        ObjectNode when = requires(Deed.DONE.key());
        when.set("properties", nodes.objectNode().set(Deed.DONE.key(), nodes.objectNode().put("const", work)));
        return when;
    }

    /** Work done with an instrument may name it and what was set; other work may not. */
    private ObjectNode toolOf(String work) {
        ObjectNode keys = nodes.objectNode();
        Vocabulary.Tooled tooled = words.tooled().get(work);
        if (tooled == null) {
            keys.put("is", false).put("with", false);
        } else {
            keys.set("is", amount(tooled.unit().dimension(), "What it was " + work + " to."));
        }
        ObjectNode then = nodes.objectNode().set("properties", keys);
        return tooled == null ? then : then.set("dependentRequired", nodes.objectNode().set("is", nodes.arrayNode().add("with")));
    }

    private ObjectNode answeredBy(Vocabulary.Aspect aspect) {
        ObjectNode is = switch (aspect.form()) {
            case AMOUNT -> amount(aspect.dimension(), "An amount, with ± and its uncertainty where it is measured.");
            case ANSWER -> answers(aspect);
            case DAYS -> number(MARKED_DAY, "A day, month or year as marked.");
            case CODE -> text("As marked.");
        };
        return nodes.objectNode().set("properties", nodes.objectNode().set("is", is));
    }

    private ObjectNode object(ObjectNode into, ObjectNode keys, List<String> optional) {
        into.put("type", "object");
        into.set("properties", keys);
        ArrayNode required = nodes.arrayNode();
        keys.fieldNames().forEachRemaining(k -> {
            if (!optional.contains(k)) {
                required.add(k);
            }
        });
        into.set("required", required);
        into.put("additionalProperties", false);
        return into;
    }

    private ObjectNode requires(String... keys) {
        ArrayNode required = nodes.arrayNode();
        for (String key : keys) {
            required.add(key);
        }
        return nodes.objectNode().set("required", required);
    }

    private ObjectNode ifThen(ObjectNode when, ObjectNode then) {
        ObjectNode rule = nodes.objectNode();
        rule.set("if", when);
        rule.set("then", then);
        return rule;
    }

    private ObjectNode list(ObjectNode items, String says, int least) {
        ObjectNode list = nodes.objectNode().put("type", "array").put("description", says);
        list.set("items", items);
        return least == 0 ? list : list.put("minItems", least);
    }

    private ObjectNode oneOf(Collection<String> choices, String says) {
        ObjectNode node = nodes.objectNode().put("description", says);
        ArrayNode all = nodes.arrayNode();
        choices.forEach(all::add);
        return node.set("enum", all);
    }

    private ObjectNode choice(Class<? extends Enum<?>> kind, String says) {
        return oneOf(Reading.spellings(kind), says);
    }

    /** Editors read a bare yes as a word or as true, by their version of YAML. */
    private ObjectNode yesNo(String says) {
        ObjectNode node = oneOf(List.of("yes", "no", "true", "false"), says);
        ((ArrayNode) node.get("enum")).add(true).add(false);
        return node;
    }

    /** Any text that is not blank; a bare number is a text to the reader. */
    private ObjectNode text(String says) {
        ObjectNode node = nodes.objectNode().put("description", says).put("pattern", "\\S");
        return node.set("type", nodes.arrayNode().add("string").add("number").add("boolean"));
    }

    private ObjectNode anyText() {
        return text("Free words, without influence.");
    }

    private ObjectNode pattern(String pattern, String says) {
        return nodes.objectNode().put("description", says).put("type", "string").put("pattern", pattern);
    }

    /** Each answer, and what an editor may make of it when it stands there without quotes. */
    private ObjectNode answers(Vocabulary.Aspect aspect) {
        ObjectNode node = oneOf(new TreeSet<>(aspect.answers()), "What was found.");
        ArrayNode all = (ArrayNode) node.get("enum");
        for (String answer : new TreeSet<>(aspect.answers())) {
            if (answer.equals("yes") || answer.equals("no")) {
                all.add(answer.equals("yes"));
            } else if (answer.matches("\\d{1,9}(\\.\\d{1,9})?")) {
                all.add(new java.math.BigDecimal(answer));
            }
        }
        return node;
    }

    /** A number or an id, which may be all digits, quoted or not. */
    private ObjectNode number(String pattern, String says) {
        ObjectNode node = nodes.objectNode().put("description", says).put("pattern", pattern);
        return node.set("type", nodes.arrayNode().add("string").add("integer"));
    }

    /** A whole number, quoted or not; quoted, only its digits are looked at. */
    private ObjectNode whole(int least, int most, String says) {
        return number("^\\d{1," + String.valueOf(most).length() + "}$", says).put("minimum", least).put("maximum", most);
    }

    private ObjectNode amount(Unit.Dimension kind, String says) {
        return pattern(AMOUNT, kind == null ? says : says + " In " + Listing.or(Unit.symbolsOf(kind)) + ".");
    }
}
