package chock.useful;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** What a sound machine gives when it is measured, tried or looked at, and what an unsound one gives. */
final class Bench {
    private static final List<JsonNode> ROWS = rows();

    private Bench() { }

    private static List<JsonNode> rows() {
        try {
            return CardCatalogue.rows(Path.of("src/main/resources/chock/rehearse/ready.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is written and the kind of instrument it was read from, null where nothing is measured. */
    record Result(String is, String with) { }

    /** What is written with work: of a torque the figure and the wrench, of other work nothing. */
    static Result done(String work) {
        return work.equals("torqued") ? new Result("24 N·m", "torque-wrench") : new Result(null, null);
    }

    static Result good(ModelSheet sheet, CardCatalogue.Want want, String place) {
        if (!want.good().isEmpty()) {
            return new Result(want.good().get(0), null);
        }
        JsonNode row = row(sheet, want.aspect(), place);
        return new Result(filled(sheet, row.get("is").asText()), want.verb().equals("measured") ? row.get("with").asText() : null);
    }

    /** Every bad result of this want: the bad answers of the card, or the one amount, day or code of the bench. */
    static List<String> bad(ModelSheet sheet, CardCatalogue.Want want, String place) {
        if (!want.bad().isEmpty() || !want.good().isEmpty()) {
            return want.bad();
        }
        JsonNode row = row(sheet, want.aspect(), place);
        return row.has("bad") ? List.of(filled(sheet, row.get("bad").asText())) : List.of();
    }

    private static JsonNode row(ModelSheet sheet, String aspect, String place) {
        return ROWS.stream().filter(r -> r.path("aspect").asText().equals(aspect)).filter(r -> !r.has("at") || place.matches(r.get("at").asText().replace("*", ".*")))
                .filter(r -> fits(sheet, r.path("only"))).findFirst().orElseThrow(() -> new IllegalStateException("the bench gives nothing for " + aspect + " at " + place));
    }

    private static boolean fits(ModelSheet sheet, JsonNode only) {
        for (Map.Entry<String, JsonNode> field : only.properties()) {
            String said = field.getKey().equals("territory") ? sheet.territory() : sheet.text(field.getKey());
            if (!said.equals(field.getValue().asText())) {
                return false;
            }
        }
        return true;
    }

    private static String filled(ModelSheet sheet, String text) {
        return text.replace("{frame-number}", sheet.text("frame-number")).replace("{engine-number}", sheet.text("engine-number"))
                .replace("{brakes}", String.valueOf(sheet.braked().size())).replace("{switches}", String.valueOf(sheet.switches())).replace("{mirrors}", sheet.text("equipment.mirrors"));
    }
}
