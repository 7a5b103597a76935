package chock.useful;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A machine as a shop describes it, field by field as in the file.
 *
 * @param machine the block {@code machine} of the record
 * @param territory where it will be ridden
 * @param zone the time zone of the shop
 */
record ModelSheet(ObjectNode machine, String territory, String zone) {

    /** A field by its path, such as {@code engine.cycle}. */
    String text(String path) {
        JsonNode node = machine;
        for (String part : path.split("\\.")) {
            node = node.path(part);
        }
        if (node.isMissingNode()) {
            throw new IllegalArgumentException("the description has no field " + path);
        }
        return node.asText();
    }

    boolean is(String path, String... words) {
        return List.of(words).contains(text(path));
    }

    boolean yes(String path) {
        return is(path, "yes");
    }

    int number(String path) {
        return Integer.parseInt(text(path));
    }

    LocalDate registered() {
        return LocalDate.parse(text("first-registered"));
    }

    boolean combustion() {
        return !is("engine.cycle", "electric");
    }

    boolean battery() {
        return number("volts") > 0;
    }

    /** Ends of the machine that have a brake. */
    List<String> braked() {
        return List.of("front", "rear").stream().filter(end -> !is(end + "-brake.type", "none")).toList();
    }

    long switches() {
        return braked().stream().filter(end -> yes(end + "-brake.stop-lamp-switch")).count();
    }

    boolean thirdWheel() {
        return is("kind", "motorcycle-sidecar", "moped-3w");
    }

    /** Every place a template of a card means on this machine, such as {@code {end}-wheel/rim}. */
    List<Spot> spots(String template) {
        List<Spot> spots = new ArrayList<>();
        spread(template, null, spots);
        return spots;
    }

    private void spread(String template, String end, List<Spot> spots) {
        int open = template.indexOf('{');
        if (open < 0) {
            spots.add(new Spot(end, template));
            return;
        }
        String word = template.substring(open + 1, template.indexOf('}', open));
        for (String choice : choices(word, end)) {
            spread(template.replace("{" + word + "}", choice), word.equals("end") ? choice : end, spots);
        }
    }

    private List<String> choices(String word, String end) {
        return switch (word) {
            case "end" -> List.of("front", "rear");
            case "side" -> List.of("left", "right");
            case "pad" -> List.of("inner-pad", "outer-pad");
            case "numbered" -> List.of("frame", "engine");
            case "guarded" -> List.of("front-brake", "rear-brake", "front-wheel", "rear-wheel", "steering", "front-fork", "controls/throttle");
            case "caliper", "disc" -> number(end + "-brake.discs") == 2 ? List.of("left-" + word, "right-" + word) : List.of(word);
            case "cylinder" -> {
                List<String> cylinders = new ArrayList<>();
                for (int i = 1; i <= number("engine.cylinders"); i++) {
                    cylinders.add("cylinder-" + i);
                }
                yield cylinders;
            }
            default -> throw new IllegalArgumentException("no places are known for {" + word + "}");
        };
    }

    /** A place, and the end of the machine it belongs to, or null. */
    record Spot(String end, String place) { }
}
