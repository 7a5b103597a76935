package chock.board;

import chock.board.store.Kept;
import chock.board.store.Store;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * A new machine, described like one that is here already. Of the other are taken: what it is, line by line to be read off the new
 * one; its workshop, instruments and gates; and, for the same model alone, what was read in the maker's documents, with the names
 * of those who read it. No entry, no claim and nothing that somebody compared with the other machine.
 */
final class NewMachinePages {
    /** Told of this one machine, so never taken from another. */
    private static final List<String> OWN = List.of("frame-number", "engine-number", "built", "first-registered", "history", "laid-up-since");

    private final Store store;
    private final Shop shop;

    NewMachinePages(Store store, Shop shop) {
        this.store = store;
        this.shop = shop;
    }

    /**
     * The form.
     *
     * @param same other machines with this frame number, which the form then asks about
     */
    record New(Views.Frame frame, String like, String name, List<Line> own, List<Line> described, String number, List<String> same, List<String> faults) { }

    /** @param hint what may be written */
    record Line(int n, String field, String words, String is, String hint) { }

    void on(RoutesConfig routes) {
        routes.get("/new-machine", ctx -> form(ctx, List.of(), List.of()), Action.TAKE_RECORD);
        routes.post("/new-machine", this::make, Action.TAKE_RECORD);
    }

    private Kept like(Context ctx) {
        return shop.find(ctx.method().name().equals("POST") ? Pages.text(ctx, "like") : Pages.query(ctx, "like")).orElseThrow(Refusal::notFound);
    }

    private void form(Context ctx, List<String> same, List<String> faults) {
        Kept like = like(ctx);
        boolean sent = ctx.method().name().equals("POST");
        Map<String, String> fields = leaves("", (ObjectNode) like.sheet().get("machine"));
        List<Line> own = new ArrayList<>();
        OWN.forEach(field -> own.add(new Line(own.size(), field, words(field), sent ? Pages.text(ctx, field) : "", hint(field))));
        List<Line> described = new ArrayList<>();
        fields.forEach((field, is) -> described.add(new Line(own.size() + described.size(), field, words(field), sent ? Pages.text(ctx, field) : is, "")));
        Pages.show(ctx, "newmachine", new New(Pages.frame(ctx, "New machine"), like.id(), like.sheet().at("/machine/marque").asText() + " " + like.sheet().at("/machine/model").asText(), own, described, Pages.text(ctx, "number"), same, faults));
    }

    private static String hint(String field) {
        return switch (field) {
            case "built" -> "year";
            case "first-registered" -> "day, such as 1974-06-14";
            case "history" -> "known or unknown";
            case "laid-up-since" -> "no when it was in use; unknown; or since when, such as 2019-05";
            default -> "read off the machine, or none";
        };
    }

    private static String words(String field) {
        String words = field.replace(".", ", ").replace('-', ' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Every field of the description that is not of this one machine, by its full name. */
    private static Map<String, String> leaves(String above, ObjectNode node) {
        Map<String, String> leaves = new LinkedHashMap<>();
        node.properties().forEach(field -> {
            String name = above + field.getKey();
            if (field.getValue() instanceof ObjectNode below && !name.equals("as-built")) {
                leaves.putAll(leaves(name + ".", below));
            } else if (field.getValue().isValueNode() && !OWN.contains(name)) {
                leaves.put(name, field.getValue().asText());
            }
        });
        return leaves;
    }

    private void make(Context ctx) {
        Kept like = like(ctx);
        String number = Pages.text(ctx, "number").strip();
        String frame = Pages.text(ctx, "frame-number").strip();
        List<String> same = frame.isEmpty() || frame.equals("none") ? List.of() : store.read(lines -> lines.records().withFrame(frame));
        if (!same.isEmpty() && Pages.text(ctx, "another").isEmpty()) {
            ctx.status(409);
            form(ctx, same, List.of());
            return;
        }
        ObjectNode record = record(ctx, like, number);
        try {
            Shop.Done done = shop.take("the new machine", record.toString().getBytes(StandardCharsets.UTF_8), Guard.visitor(ctx).account().id(), null);
            ctx.redirect("/machines/" + Query.encoded(done.machine()), HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            form(ctx, same, RunPages.words(e));
        } catch (Shop.Taken e) {
            ctx.status(409);
            form(ctx, same, List.of(e.getMessage()));
        }
    }

    private static ObjectNode record(Context ctx, Kept like, String number) {
        ObjectNode record = like.sheet().deepCopy();
        ObjectNode machine = (ObjectNode) record.get("machine");
        boolean model = List.of("marque", "model").stream().allMatch(field -> Pages.text(ctx, field).strip().equals(machine.path(field).asText()));
        Set<String> described = leaves("", machine).keySet();
        machine.remove(List.of("changes"));
        OWN.forEach(field -> machine.put(field, Pages.text(ctx, field).strip()));
        described.forEach(field -> put(machine, field, Pages.text(ctx, field).strip()));
        if (!model) {
            machine.remove("as-built");
            ObjectNode maker = record.putObject("maker");
            maker.putArray("figures");
            maker.putArray("none-found");
        } else if (machine.get("as-built") instanceof ObjectNode built) {
            // Compared with the other machine, not with this one; and its numbers are the other's.
            built.remove("seconded-by");
            if (built.get("facts") instanceof ObjectNode facts) {
                facts.remove(OWN);
            }
        }
        record.put("record", number);
        // Read for the other machine: its year and kind decide what a law asks.
        record.remove("local-law");
        record.putArray("claims");
        Set<String> readers = StreamSupport.stream(record.at("/maker/figures").spliterator(), false).flatMap(figure -> java.util.stream.Stream.of(figure.path("by"), figure.path("seconded-by"))).map(JsonNode::asText).collect(Collectors.toSet());
        readers.add(machine.at("/as-built/by").asText());
        ArrayNode people = record.arrayNode();
        record.get("people").forEach(person -> {
            if (readers.contains(person.path("id").asText())) {
                people.add(person);
            }
        });
        Visitor visitor = Guard.visitor(ctx);
        if (!readers.contains(visitor.account().id())) {
            people.addObject().put("id", visitor.account().id()).put("name", visitor.account().name()).put("role", visitor.account().role());
        }
        record.set("people", people);
        record.putArray("entries");
        return record;
    }

    private static void put(ObjectNode machine, String field, String is) {
        String[] path = field.split("\\.");
        ObjectNode at = machine;
        for (int i = 0; i < path.length - 1; i++) {
            at = (ObjectNode) at.get(path[i]);
        }
        at.put(path[path.length - 1], is);
    }
}
