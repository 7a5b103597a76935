package chock.cli;

import chock.rehearse.Boundaries;
import chock.rehearse.Coverage;
import chock.rehearse.Shake;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What scenarios leave open, for a script. */
final class RehearsalJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private RehearsalJson() { }

    static JsonNode of(Coverage coverage) {
        ArrayNode rows = NODES.arrayNode();
        for (Coverage.Row row : coverage.rows()) {
            ObjectNode node = rows.addObject();
            node.put("check", row.check());
            ObjectNode states = node.putObject("states");
            for (String state : Coverage.STATES) {
                ObjectNode one = states.putObject(state);
                one.put("canBe", row.may().get(state));
                ArrayNode where = one.putArray("scenarios");
                row.where().get(state).forEach(where::add);
            }
            ArrayNode holes = node.putArray("leftOut");
            row.holes().forEach(holes::add);
        }
        return rows;
    }

    static JsonNode of(Boundaries boundaries) {
        ArrayNode rows = NODES.arrayNode();
        for (Boundaries.Row row : boundaries.rows()) {
            ObjectNode node = rows.addObject();
            node.put("limit", row.limit()).put("end", row.end()).put("where", row.where()).put("record", row.from()).put("inside", row.inside()).put("outside", row.outside());
            ArrayNode cases = node.putArray("tried");
            row.cases().forEach(c -> cases.addObject().put("reading", c.reading()).put("expected", c.expected()).put("found", c.found()));
        }
        return rows;
    }

    static JsonNode of(Shake.Shaken shaken) {
        ObjectNode node = NODES.objectNode();
        node.put("changes", shaken.changes());
        ArrayNode unnoticed = node.putArray("unnoticed");
        shaken.unnoticed().forEach(u -> unnoticed.addObject().put("subject", u.subject()).put("change", u.what()).put("where", u.where()).put("write", u.toWrite()));
        ArrayNode idle = node.putArray("onlyForHouses");
        shaken.idle().forEach(idle::add);
        return node;
    }
}
