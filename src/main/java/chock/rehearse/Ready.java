package chock.rehearse;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.assess.State;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.MakerFigure;
import chock.record.MakerFigures;
import chock.record.Moment;
import chock.record.Value;
import chock.rulebook.Card;
import chock.rulebook.LaidOut;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * A machine for which everything that was asked has a good result, from the table {@code ready.yaml}: work first, then what was
 * looked at and measured, and once more what the work undid, until the gates have nothing left to ask.
 */
final class Ready {
    private static final int ROUNDS = 12;
    private static final Duration APART = Duration.ofSeconds(20);
    private static final List<JsonNode> TABLE = table();

    private final RuleBook book;
    private final Instant asOf;
    private final List<Entry> entries = new ArrayList<>();
    private final List<MakerFigure> figures;
    private final Set<String> noneFound;
    private JobRecord record;
    private LocalDateTime clock;

    /** @param described a record with nothing written in it */
    Ready(RuleBook book, JobRecord described, Instant asOf) {
        this.book = book;
        this.asOf = asOf;
        this.figures = new ArrayList<>(described.maker().figures());
        this.noneFound = new TreeSet<>(described.maker().noneFound());
        this.record = described.withInstruments(instruments(described));
        this.clock = LocalDateTime.ofInstant(asOf, described.zone()).minusDays(1).with(LocalTime.of(8, 0));
    }

    private static List<JsonNode> table() {
        try (InputStream in = Ready.class.getResourceAsStream("ready.yaml")) {
            List<JsonNode> rows = new ArrayList<>();
            new YAMLMapper().readTree(in).forEach(rows::add);
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Instrument> instruments(JobRecord described) {
        return book.vocabulary().instruments().keySet().stream().map(kind -> new Instrument("of-" + kind, kind, null, day(described).minusMonths(6), day(described).plusMonths(6))).toList();
    }

    private LocalDate day(JobRecord described) {
        return asOf.atZone(described.zone()).toLocalDate();
    }

    JobRecord record() {
        return record;
    }

    /** What the wants of a card are found by among the entries of this machine. */
    static Set<String> keysOf(RuleBook book, Card card, JobRecord record, Instant asOf) {
        Assessment judged = Assessor.assess(record, book, List.copyOf(card.gates()), asOf);
        Set<String> keys = new HashSet<>();
        judged.gates().stream().flatMap(g -> g.findings().stream()).filter(f -> f.check().equals(card.id())).flatMap(f -> f.places().stream())
                .forEach(place -> keys.addAll(book.laidOut(card, place.point()).keys()));
        return keys;
    }

    /**
     * @throws NotUnderstood when something is asked of this machine that has no good result in the table, or that later work keeps undoing
     */
    Ready madeFor(List<Gate> gates) {
        makersFigures();
        List<Finding> open = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            open = open(gates);
            if (open.isEmpty()) {
                return this;
            }
            // What the weather and the day bring has to be written shortly before.
            if (round == 1) {
                clock = LocalDateTime.ofInstant(asOf, record.zone()).minusMinutes(90);
            }
            answer(open);
        }
        Finding first = open.get(0);
        throw new NotUnderstood("this machine cannot be made ready: " + first.check() + " is " + first.state().id() + ": " + first.says());
    }

    private List<Finding> open(List<Gate> gates) {
        Map<String, Finding> open = new LinkedHashMap<>();
        Assessor.assess(record, book, gates, asOf).gates().stream().flatMap(g -> g.findings().stream()).filter(f -> f.state() != State.MET).forEach(f -> open.putIfAbsent(f.check(), f));
        return new ArrayList<>(open.values());
    }

    /** One thing to write, once for all checks that want it. */
    private record Item(Card card, Card.Want want, String place) {
        boolean isWork() {
            return want.weakest() == Deed.DONE;
        }
    }

    private void answer(List<Finding> open) {
        Map<String, Item> items = new LinkedHashMap<>();
        for (Finding finding : open) {
            Card card = book.cards().get(finding.check());
            for (Finding.AtPlace place : finding.places()) {
                if (place.state() == State.MET) {
                    continue;
                }
                LaidOut laid = book.laidOut(card, place.point());
                for (int i = 0; i < card.wants().size(); i++) {
                    Item item = new Item(card, card.wants().get(i), laid.points().get(i));
                    items.merge(laid.keys().get(i), item, (one, other) -> other.want().weakest().compareTo(one.want().weakest()) < 0 ? other : one);
                }
            }
        }
        // As a fitter works: what is read apart, then the work that closes it, then what is tried.
        items.values().stream().sorted(Comparator.comparing((Item i) -> i.card().needs())
                .thenComparing(i -> !book.library().assembly().isReadApart(i.card(), i.want().aspect())).thenComparing(i -> !i.isWork())).forEach(this::write);
        open.stream().filter(f -> book.cards().get(f.check()).wants().isEmpty()).flatMap(f -> f.places().stream()).filter(place -> place.state() != State.MET).forEach(place -> lookAgain(place.point(), items.keySet()));
        record = record.withEntries(List.copyOf(entries));
    }

    // Some work wants somebody else to look at the part afterwards, whatever there is to look at.
    private void lookAgain(String part, Set<String> written) {
        Map<String, Entry> looks = new LinkedHashMap<>();
        entries.stream().filter(e -> e.deed().isEvidence() && Entry.covers(part, e.point()) && !isReadApart(e)).forEach(e -> looks.put(Entry.key(e.point(), e.what()), e));
        looks.keySet().removeAll(written);
        looks.values().forEach(e -> {
            clock = clock.plus(APART);
            entries.add(new Entry("r" + (entries.size() + 1), written(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), null, null, null, 0));
        });
    }

    // Looking at the part once more takes nothing apart again.
    private boolean isReadApart(Entry entry) {
        return book.cards().values().stream().anyMatch(card -> book.library().assembly().isReadApart(card, entry.what()));
    }

    private void write(Item item) {
        Card.Want want = item.want();
        Value is = null;
        String with = null;
        if (!item.isWork() && !want.good().isEmpty()) {
            is = new Value.Answer(want.good().iterator().next());
        } else if (!item.isWork()) {
            JsonNode row = row(want.aspect(), item.place());
            with = want.weakest() == Deed.MEASURED ? "of-" + row.get("with").asText() : null;
            is = value(want, filled(row.get("is").asText()), with);
        } else if (book.vocabulary().tooled().containsKey(want.aspect())) {
            with = "of-" + book.vocabulary().tooled().get(want.aspect()).with();
            is = new Value.Amount(new Measured(Quantity.parse("24 N·m"), null));
        }
        clock = clock.plus(APART);
        entries.add(new Entry("r" + (entries.size() + 1), written(), item.isWork() && !record.onePerson() ? "tom" : Bench.INSPECTOR,
                item.isWork() ? Deed.DONE : want.weakest(), item.place(), want.aspect(), is, with, null, null, null, 0));
    }

    // Numbered as the program numbers its own entries, for there are several in one minute.
    private Moment written() {
        return new Moment(clock.toLocalDate(), clock.toLocalTime().truncatedTo(ChronoUnit.MINUTES), record.zone(), entries.size() + 1);
    }

    private Value value(Card.Want want, String written, String with) {
        return switch (want.form()) {
            case AMOUNT -> new Value.Amount(amount(written, with));
            case DAYS -> Bench.days(written);
            case ANSWER -> new Value.Answer(written);
            default -> new Value.Code(written);
        };
    }

    private Measured amount(String written, String with) {
        Measured read = Measured.parse(written);
        if (with == null || read.uncertainty() != null) {
            return read;
        }
        return new Measured(read.value(), book.vocabulary().instruments().get(with.substring("of-".length())).leastOf(read.value()).orElseThrow());
    }

    private JsonNode row(String aspect, String place) {
        return TABLE.stream().filter(r -> r.path("aspect").asText().equals(aspect) && (!r.has("at") || place.matches(r.get("at").asText().replace("*", ".*"))) && fits(r.path("only")))
                .findFirst().orElseThrow(() -> new NotUnderstood("ready.yaml has no good result for " + aspect + " at " + place));
    }

    private boolean fits(JsonNode only) {
        return only.properties().stream().allMatch(field -> said(field.getKey()).equals(field.getValue().asText()));
    }

    private String said(String field) {
        return field.equals("territory") ? record.territory() : record.machine().fields().getOrDefault(field, "");
    }

    private String filled(String text) {
        Map<String, String> fields = record.machine().fields();
        long brakes = record.machine().ends().stream().filter(e -> e.brake().type() != Machine.BrakeType.NONE).count();
        long switches = record.machine().ends().stream().filter(e -> e.brake().stopLampSwitch()).count();
        return text.replace("{frame-number}", record.machine().frameNumber()).replace("{engine-number}", record.machine().engineNumber()).replace("{brakes}", String.valueOf(brakes))
                .replace("{switches}", String.valueOf(switches)).replace("{mirrors}", fields.get("equipment.mirrors"));
    }

    // A pressure, or a mixture, that only the maker can know.
    private void makersFigures() {
        for (JsonNode row : TABLE) {
            if (!row.has("maker")) {
                continue;
            }
            String limit = row.get("maker").asText();
            if (fits(row.path("only")) && figures.stream().noneMatch(f -> f.limit().equals(limit) && Objects.equals(f.point(), row.path("at").asText(null)))) {
                figures.add(new MakerFigure(limit, row.path("at").asText(null), null, null, Quantity.parse(row.get("is").asText()), "Lark 250 workshop manual", "61", Bench.INSPECTOR, "tom"));
                noneFound.remove(limit);
            }
        }
        JobRecord r = record;
        record = new JobRecord(r.id(), r.workshop(), r.zone(), r.territory(), r.onePerson(), r.seeks(), r.machine(), new MakerFigures(List.copyOf(figures), List.copyOf(noneFound)), r.people(),
                r.instruments(), r.entries(), r.claims(), r.form()).with(r.localLaw());
    }
}
