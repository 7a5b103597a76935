package chock.report;

import chock.quantity.Quantity;
import chock.record.Gate;
import chock.rulebook.Card;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import chock.rulebook.Source;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;

/** The rule book for scripts. Numbers are decimal strings, days are ISO dates. */
public final class CatalogueJson {
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private CatalogueJson() { }

    /** Every check. */
    public static ObjectNode of(RuleBook book) {
        ObjectNode node = MAKE.objectNode();
        node.putObject("rulebook").put("version", book.version()).put("digest", book.digest()).set("house",
                book.house().<JsonNode>map(house -> MAKE.objectNode().put("name", house.name()).put("digest", house.digest())).orElse(NullNode.instance));
        ArrayNode codes = node.putArray("codes");
        book.codes().values().forEach(code -> codes.addObject().put("code", code.code()).put("name", code.name()).set("members", texts(code.members())));
        ArrayNode checks = node.putArray("checks");
        book.cards().values().forEach(card -> checks.add(of(card, book)));
        return node;
    }

    /** One check. */
    public static ObjectNode of(Card card, RuleBook book) {
        ObjectNode node = MAKE.objectNode().put("check", card.id()).put("question", card.question()).put("applies", card.applies());
        node.set("gates", texts(card.gates().stream().sorted().map(Gate::id).toList()));
        node.put("critical", card.critical()).put("place", card.place().pattern());
        ArrayNode wants = node.putArray("wants");
        card.wants().forEach(want -> wants.add(want(want).put("latestDecides", CheckInWords.latestDecides(card, want, book))));
        ArrayNode limits = node.putArray("limits");
        CheckInWords.limits(card, book).forEach(limit -> limits.add(limit(limit)));
        ArrayNode none = node.putArray("setsNone");
        book.codes().values().stream().filter(code -> card.limit() != null && code.setsNone().containsKey(card.limit()))
                .forEach(code -> none.addObject().put("territory", code.code()).set("source", source(code.setsNone().get(card.limit()))));
        node.put("holds", card.holds().words());
        if (card.together() != null) {
            node.putObject("together").put("within", card.together().within().toString()).set("of", sorted(card.together().wants()));
        }
        ArrayNode undone = node.putArray("undoneBy");
        card.undoneBy().forEach(undo -> {
            ObjectNode row = undone.addObject().put("place", undo.place().pattern());
            row.set("work", sorted(undo.works()));
            row.set("only", sorted(undo.only()));
        });
        ArrayNode survives = node.putArray("survives");
        card.survives().forEach(row -> survives.addObject().put("place", row.place().pattern()).set("work", sorted(row.works())));
        ArrayNode cleared = node.putArray("clearedBy");
        card.clearedBy().forEach(row -> cleared.addObject().put("place", row.place().pattern()).set("work", sorted(row.works())));
        dangers(card, book, node);
        node.put("remedy", card.remedy()).put("caution", card.caution());
        node.set("formerly", texts(card.formerly()));
        return node;
    }

    private static void dangers(Card card, RuleBook book, ObjectNode node) {
        node.set("dangers", texts(book.dangersOf(card)));
        ArrayNode closes = node.putArray("alsoCloses");
        for (Card.AlsoCloses row : book.closings(card)) {
            ObjectNode one = closes.addObject();
            one.set("gates", texts(row.gates().stream().sorted().map(Gate::id).toList()));
            one.set("only", texts(List.copyOf(row.only())));
            one.set("at", texts(row.at()));
            one.put("over", row.over() == null ? null : row.over().toString()).put("belowTheLimit", row.below()).put("unless", row.unless());
        }
        node.put("endsBy", card.endsBy().name().toLowerCase(Locale.ROOT));
    }

    /** One check, with the scenarios that show what it means. */
    public static ObjectNode of(Card card, RuleBook book, SortedMap<String, List<String>> scenarios) {
        ObjectNode node = of(card, book);
        ArrayNode shown = node.putArray("scenarios");
        scenarios.forEach((file, names) -> names.forEach(name -> shown.addObject().put("file", file).put("name", name)));
        return node;
    }

    /** The limits due to be looked up again. */
    public static ObjectNode overdue(RuleBook book, LocalDate day) {
        ObjectNode node = MAKE.objectNode().put("asOf", day.toString()).put("reviewEvery", book.reviewEvery().toString());
        ArrayNode overdue = node.putArray("overdue");
        book.overdue(day).forEach(o -> overdue.add(limit(o.limit()).put("due", day(o.due())).put("file", o.limit().file()).put("line", o.limit().line())));
        return node;
    }

    private static ObjectNode want(Card.Want want) {
        ObjectNode node = MAKE.objectNode().put("name", want.name()).put("weakest", want.weakest().key()).put("aspect", want.aspect());
        node.put("form", want.form() == null ? null : want.form().name().toLowerCase(Locale.ROOT));
        node.put("unit", want.unit() == null ? null : want.unit().symbol());
        node.set("good", sorted(want.good()));
        node.set("bad", sorted(want.bad()));
        node.put("place", want.place() == null ? null : want.place().pattern());
        node.put("holds", want.holds() == null ? null : want.holds().words());
        node.put("covers", want.covers());
        return node;
    }

    private static ObjectNode limit(Limit limit) {
        ObjectNode node = MAKE.objectNode().put("id", limit.id()).put("territory", limit.territory()).put("sense", limit.sense().key());
        node.put("value", decimal(limit.value())).put("upper", decimal(limit.upper()));
        node.put("unit", limit.value() == null ? null : limit.value().unit().symbol()).put("passesAtLimit", limit.passesAtLimit());
        node.put("from", limit.isAlways() ? null : day(limit.from())).put("registeredFrom", day(limit.registeredFrom())).put("registeredBefore", day(limit.registeredBefore()));
        node.put("fasterThan", limit.fasterThan() == null ? null : limit.fasterThan().toString());
        node.put("largerThan", limit.largerThan() == null ? null : limit.largerThan().toString());
        node.put("reviewed", day(limit.reviewed()));
        node.set("source", source(limit.source()));
        return node;
    }

    private static ObjectNode source(Source source) {
        return MAKE.objectNode().put("kind", source.kind().name().toLowerCase(Locale.ROOT)).put("document", source.document())
                .put("section", source.section()).put("known", source.known() == null ? null : source.known().words());
    }

    private static String decimal(Quantity quantity) {
        return quantity == null ? null : quantity.value().toPlainString();
    }

    private static String day(LocalDate day) {
        return day == null ? null : day.toString();
    }

    private static ArrayNode sorted(Collection<String> words) {
        return texts(words.stream().sorted().toList());
    }

    private static ArrayNode texts(Collection<String> words) {
        ArrayNode node = MAKE.arrayNode();
        words.forEach(node::add);
        return node;
    }
}
