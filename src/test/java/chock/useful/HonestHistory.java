package chock.useful;

import chock.record.DescriptionField;
import chock.useful.CardCatalogue.Card;
import chock.useful.CardCatalogue.Want;
import chock.useful.CardCatalogue.Work;
import chock.useful.HonestRecord.Line;
import chock.useful.ModelSheet.Spot;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Writes the complete record of an honest shop for one machine, as a fitter goes about it: what is read while parts are apart, the
 * work that closes them, then everything else looked at and measured, then the run
 * and the ride where they are sought, what these undo once more, and on the day itself what holds for a day only.
 */
final class HonestHistory {
    /** The day everything is judged, at noon. */
    static final LocalDate DAY = LocalDate.of(2026, 12, 15);
    /** Work that is itself asked for, in the order a shop does it. */
    private static final List<String> TURNS = List.of("replaced", "drained", "filled", "bled", "heat-cycled", "ridden", "bedded", "torqued");
    private static final int ROUNDS = 6;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final ModelSheet sheet;
    private final Asked.Intent intent;
    private final boolean onePerson;
    private final List<Item> items = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private LocalDateTime clock;

    /** One want of a card at one place of this machine; the end is null where the card is about the machine as a whole, and the card was asked at a place that may be another. */
    record Item(Card card, Want want, String place, String end, String asked) {
        String key() {
            return place + " " + want.aspect();
        }

        /** A work that the card names as undoing what was found there. */
        boolean isUndoneBy(Line work, ModelSheet sheet) {
            return isTouched(work, sheet, row -> row.kinds().contains(work.what()));
        }

        private boolean isTouched(Line work, ModelSheet sheet, Predicate<Work> which) {
            return card.undoneBy().stream().filter(row -> row.bearsOn(want)).filter(which).flatMap(row -> sheet.spots(row.place()).stream())
                    .filter(spot -> end == null || spot.end() == null || spot.end().equals(end)).anyMatch(spot -> within(spot.place(), work.place()));
        }

        /** A reading for which this had to be opened, on the same end of the machine. */
        boolean isOpenedFor(Line reading, ModelSheet sheet) {
            return CardCatalogue.SHIPPED.opening(card, want, reading.is()).stream().filter(read -> read.aspect().equals(reading.what())).flatMap(read -> sheet.spots(read.place()).stream())
                    .filter(spot -> end == null || spot.end() == null || spot.end().equals(end)).anyMatch(spot -> spot.place().equals(reading.place()));
        }

        private static boolean within(String part, String place) {
            return place.equals(part) || place.startsWith(part + "/");
        }
    }

    private HonestHistory(ModelSheet sheet, List<String> gates, boolean onePerson) {
        this.sheet = sheet;
        this.intent = new Asked.Intent(gates);
        this.onePerson = onePerson;
    }

    static HonestRecord of(ModelSheet sheet, List<String> gates, boolean onePerson) {
        return new HonestHistory(sheet, gates, onePerson).written();
    }

    /** Everything the cards of these gates want of this machine, a want once for each card that has it. */
    static List<Item> wanted(ModelSheet sheet, List<String> gates) {
        Asked.Intent intent = new Asked.Intent(gates);
        List<Item> items = new ArrayList<>();
        for (Card card : CardCatalogue.SHIPPED.cards()) {
            if (card.gates().stream().noneMatch(gates::contains)) {
                continue;
            }
            for (Spot spot : sheet.spots(card.place())) {
                if (Asked.of(card.applies(), sheet, spot.end(), intent)) {
                    card.wants().forEach(want -> items.add(new Item(card, want, bound(sheet, card, want, spot), spot.end(), spot.place())));
                }
            }
        }
        return items;
    }

    /** The place of a want, on the same part as the card is asked at. */
    private static String bound(ModelSheet sheet, Card card, Want want, Spot spot) {
        if (want.place().equals(card.place())) {
            return spot.place();
        }
        return sheet.spots(want.place()).stream().filter(s -> s.end() == null || s.end().equals(spot.end()))
                .max(Comparator.comparingInt(s -> shared(s.place(), spot.place()))).orElseThrow().place();
    }

    private static int shared(String one, String other) {
        int i = 0;
        while (i < Math.min(one.length(), other.length()) && one.charAt(i) == other.charAt(i)) {
            i++;
        }
        return i;
    }

    private HonestRecord written() {
        items.addAll(wanted(sheet, intent.gates()));
        clock = DAY.minusDays(8).atTime(9, 0);
        List<Item> apart = of(i -> !i.want().isWork() && i.card().wants().stream().anyMatch(want -> CardCatalogue.SHIPPED.isReadApart(i.card(), want)));
        of(i -> i.want().isWork() && i.card().needs().equals("standing") && (i.want().aspect().equals("replaced") || apart.stream().anyMatch(read -> read.isUndoneBy(line("", clock, i), sheet))))
                .forEach(i -> write(i, 6));
        looks(apart);
        clock = clock.plusMinutes(30);
        List<Item> work = of(i -> i.want().isWork() && i.card().needs().equals("standing"));
        work.sort(Comparator.comparingInt(i -> TURNS.indexOf(i.want().aspect())));
        work.forEach(i -> write(i, 6));
        clock = clock.plusMinutes(30);
        looks(of(i -> !i.want().isWork() && i.card().needs().equals("standing") && !forTheDay(i)));
        clock = DAY.atTime(7, 0);
        if (intent.seeks("road-test", "hand-over")) {
            running();
        }
        again();
        List<Item> today = of(this::forTheDay).stream().filter(i -> i.card().needs().equals("standing")).toList();
        clock = DAY.atTime(LocalTime.NOON).minusMinutes(today.stream().map(Item::key).distinct().count() + 1);
        Set<String> written = new HashSet<>();
        today.stream().filter(i -> written.add(i.key())).forEach(i -> append(i, 1));
        return new HonestRecord(sheet, intent.gates(), head(), List.copyOf(lines), DAY.atTime(LocalTime.NOON));
    }

    private List<Item> of(Predicate<Item> which) {
        return new ArrayList<>(items.stream().filter(which).toList());
    }

    private boolean forTheDay(Item item) {
        return Stream.of("same day", "hour", "sunset").anyMatch(item.want().holds()::contains);
    }

    /** Part by part: what one card wants there, and right after it what another card wants together with some of it. Nobody goes home in the middle of that. */
    private void looks(List<Item> open) {
        while (!open.isEmpty()) {
            List<Item> together = new ArrayList<>(List.of(open.get(0)));
            for (int i = 0; i < together.size(); i++) {
                Item one = together.get(i);
                open.stream().filter(o -> !together.contains(o) && (o.key().equals(one.key()) || o.card() == one.card() && Objects.equals(o.asked(), one.asked()))).forEach(together::add);
            }
            open.removeAll(together);
            if (clock.getHour() >= 17) {
                clock = clock.plusDays(1).with(LocalTime.of(8, 0));
            }
            together.forEach(i -> write(i, 3));
        }
    }

    private void running() {
        for (String needs : List.of("engine-running", "riding")) {
            if (needs.equals("riding") && intent.seeks("hand-over")) {
                of(i -> forTheDay(i) && i.card().gates().contains("road-test")).forEach(i -> write(i, 1));
            }
            List<Item> now = of(i -> i.card().needs().equals(needs));
            now.stream().filter(i -> i.want().isWork()).sorted(Comparator.comparingInt((Item i) -> TURNS.indexOf(i.want().aspect()))).forEach(i -> write(i, 5));
            now.stream().filter(i -> !i.want().isWork()).forEach(i -> write(i, 1));
        }
    }

    /** What later work undid is done and looked at once more. */
    private void again() {
        clock = clock.plusMinutes(1);
        for (int round = 0; round < ROUNDS; round++) {
            List<Item> undone = of(i -> !forTheDay(i) && isUndone(i));
            undone.sort(Comparator.comparing((Item i) -> !i.want().isWork()));
            if (undone.isEmpty()) {
                return;
            }
            Set<String> written = new HashSet<>();
            undone.stream().filter(i -> written.add(i.key())).forEach(i -> append(i, 1));
        }
        throw new IllegalStateException("work and what it undoes go round in a circle: " + of(i -> !forTheDay(i) && isUndone(i)).stream().map(Item::key).distinct().toList());
    }

    private boolean isUndone(Item item) {
        int last = -1;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).key().equals(item.key())) {
                last = i;
            }
        }
        int since = last;
        return last >= 0 && lines.subList(since + 1, lines.size()).stream().anyMatch(l -> !l.key().equals(item.key()) && (l.isWork() ? item.isUndoneBy(l, sheet) : item.isOpenedFor(l, sheet)));
    }

    private void write(Item item, int minutes) {
        if (lines.stream().noneMatch(l -> l.key().equals(item.key()))) {
            append(item, minutes);
        }
    }

    private void append(Item item, int minutes) {
        lines.add(line("e" + (lines.size() + 1), clock, item));
        clock = clock.plusMinutes(minutes);
        if (clock.getHour() >= 20) {
            clock = clock.plusDays(1).with(LocalTime.of(8, 0));
        }
    }

    private Line line(String id, LocalDateTime at, Item item) {
        boolean work = item.want().isWork();
        Bench.Result good = work ? Bench.done(item.want().aspect()) : Bench.good(sheet, strongest(item), item.place());
        return new Line(id, at, work && !onePerson ? "tom" : "ida", item.place(), strongest(item).verb(), item.want().aspect(), good.is(), good.with(), Map.of());
    }

    /** Where two cards want the same thing, the one that wants it measured is served. */
    private Want strongest(Item item) {
        return items.stream().filter(i -> i.key().equals(item.key())).map(Item::want).min(Comparator.comparingInt(w -> List.of("done", "measured", "tried", "seen", "told").indexOf(w.verb()))).orElseThrow();
    }

    private ObjectNode head() {
        ObjectNode head = JSON.createObjectNode().put("chock", "job-record/2").put("record", sheet.text("model").replace(' ', '-')).put("workshop", "Hollow Vale Motor Works").put("zone", sheet.zone())
                .put("territory", sheet.territory()).put("one-person", onePerson ? "yes" : "no");
        ArrayNode seeks = head.putArray("seeks");
        intent.gates().forEach(seeks::add);
        ObjectNode machine = sheet.machine().deepCopy();
        ObjectNode built = machine.putObject("as-built").put("document", "Model sheet").put("page", "1").put("by", "ida");
        ObjectNode facts = built.putObject("facts");
        DescriptionField.names().stream().filter(field -> !field.startsWith("parts.")).forEach(field -> facts.put(field, sheet.text(field)));
        head.set("machine", machine);
        maker(head.putObject("maker"));
        ArrayNode people = head.putArray("people");
        people.addObject().put("id", "ida").put("name", "Ida Marrow").put("role", "inspector");
        if (!onePerson) {
            people.addObject().put("id", "tom").put("name", "Tom Fell").put("role", "technician");
        }
        ArrayNode instruments = head.putArray("instruments");
        CardCatalogue.SHIPPED.instruments().forEach(kind -> instruments.addObject().put("id", kind).put("kind", kind).put("uncertainty", "by-kind").put("calibrated", "2026-03-02").put("due", "2027-03-02"));
        head.putArray("claims");
        return head;
    }

    private void maker(ObjectNode maker) {
        ArrayNode figures = maker.putArray("figures");
        ArrayNode none = maker.putArray("none-found");
        Map<String, List<String>> known = new LinkedHashMap<>();
        known.put("tyres.pressure", sheet.thirdWheel() ? List.of("front-wheel/tyre 26 psi", "rear-wheel/tyre 29 psi", "third-wheel 29 psi") : List.of("front-wheel/tyre 26 psi", "rear-wheel/tyre 29 psi"));
        known.put("oil.premix", sheet.is("engine.oiling", "premix") ? List.of("4 %") : List.of());
        CardCatalogue.SHIPPED.makerLimits().keySet().forEach(limit -> {
            List<String> values = known.getOrDefault(limit, List.of());
            if (values.isEmpty()) {
                none.add(limit);
            }
            for (String value : values) {
                ObjectNode figure = figures.addObject().put("for", limit);
                String[] parts = value.split(" ", 2);
                boolean placed = parts[0].contains("-wheel");
                if (placed) {
                    figure.put("at", parts[0]);
                }
                figure.put("is", placed ? parts[1] : value).put("document", "Workshop manual").put("page", "12").put("by", "ida");
            }
        });
    }
}
