package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Fault;
import chock.record.Gate;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import chock.record.Vocabulary.Form;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;

/** Reads the files of a rule book strictly, reporting everything wrong in all of them at once. */
final class RuleBookLoader {
    private static final String RIDE = "roadtest/plan.yaml";
    private static final String RUN = "air/plan.yaml";

    private final List<Fault> faults = new ArrayList<>();
    private final SortedMap<String, Card> cards = new TreeMap<>();
    private final List<Limit> limits = new ArrayList<>();
    private final SortedMap<String, LocalCode> codes = new TreeMap<>();
    private final Map<String, Vocabulary.InstrumentKind> instruments = new TreeMap<>();
    private final Map<String, List<String>> places = new LinkedHashMap<>();
    private final Map<String, String> works = new TreeMap<>();
    private final Set<String> disturbing = new TreeSet<>();
    private final Set<String> morePoints = new TreeSet<>();
    private final List<Card.Want> besides = new ArrayList<>();
    private final Set<Gate> complete = EnumSet.noneOf(Gate.class);
    private String version = "";
    private RideSheet ride;
    private RunSheet run;

    static RuleBook shipped() {
        SortedMap<String, String> files = new TreeMap<>();
        resource(RuleCompiler.FILES).lines().forEach(name -> files.put(name, resource("rules/" + name)));
        // Two things that do not wait for each other: the classes of the rules, and the files of cards and limits.
        CompletableFuture<KieBase> rules = CompletableFuture.supplyAsync(RuleBookLoader::compiledRules);
        return new RuleBookLoader().load(files, () -> joined(rules));
    }

    private static String resource(String name) {
        try (InputStream in = RuleBookLoader.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its part " + name + "; build it again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static KieBase joined(CompletableFuture<KieBase> rules) {
        try {
            return rules.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException own ? own : e;
        }
    }

    private static KieBase compiledRules() {
        List<Model> models = new ArrayList<>();
        for (String name : resource(RuleCompiler.INDEX).lines().toList()) {
            try {
                models.add((Model) Class.forName(name).getDeclaredConstructor().newInstance());
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("the program lacks its compiled rules " + name + "; build it again", e);
            }
        }
        return KieBaseBuilder.createKieBaseFromModel(models);
    }

    /**
     * @param files text by name, such as {@code brakes/limits.yaml}
     * @param compiled the compiled reasoning, asked for when the files have been read
     */
    RuleBook load(SortedMap<String, String> files, Supplier<KieBase> compiled) {
        files.forEach((name, text) -> {
            String shown = "rules/" + name;
            if (name.equals("book.yaml")) {
                Sheet sheet = Sheet.one(shown, text, faults);
                if (sheet != null) {
                    version = sheet.text("version");
                    sheet.texts("gates").forEach(gate -> Gate.of(gate).ifPresentOrElse(complete::add, () -> sheet.fault("gates", "'" + gate + "' is not a gate", "Known: " + List.of(Gate.values()) + ".")));
                    sheet.done();
                }
            } else if (name.equals("evidence/words.yaml")) {
                readWords(Sheet.one(shown, text, faults));
            } else if (name.equals("evidence/instruments.yaml")) {
                Sheet.list(shown, text, faults).forEach(this::readInstrument);
            }
        });
        files.forEach((name, text) -> {
            String shown = "rules/" + name;
            if (name.endsWith("/limits.yaml")) {
                Sheet.list(shown, text, faults).forEach(sheet -> readLimit(sheet));
            } else if (name.endsWith("/checks.yaml")) {
                Sheet.list(shown, text, faults).forEach(this::readCard);
            } else if (name.startsWith("codes/") && name.endsWith(".yaml")) {
                readCode(Sheet.one(shown, text, faults));
            } else if (!name.endsWith(".drl") && !name.equals("book.yaml") && !name.equals(RIDE) && !name.equals(RUN) && !name.startsWith("evidence/")) {
                faults.add(new Fault(shown, 0, "", "a rule book has no use for this file", "Known are checks.yaml, limits.yaml and *.drl in a system's folder, roadtest/plan.yaml, air/plan.yaml, and codes/*.yaml."));
            }
        });
        if (files.containsKey(RIDE)) {
            Sheet sheet = Sheet.one("rules/" + RIDE, files.get(RIDE), faults);
            ride = sheet == null ? null : new RideSheetReader(places, works.keySet(), cards).read(sheet);
        }
        if (files.containsKey(RUN)) {
            Sheet sheet = Sheet.one("rules/" + RUN, files.get(RUN), faults);
            run = sheet == null ? null : RunSheetReader.read(sheet);
        }
        KieBase rules = compiled.get();
        checkSense(rules);
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        Library library = new Library(Map.copyOf(places), works, Set.copyOf(disturbing), besides.stream().map(Card.Want::aspect).collect(Collectors.toUnmodifiableSet()));
        return new RuleBook(version, digest(files), library, cards, List.copyOf(limits), codes, vocabulary(), ride, run, Set.copyOf(complete), rules);
    }

    private void readWords(Sheet sheet) {
        if (sheet == null) {
            return;
        }
        Sheet names = sheet.sheet("places");
        if (names != null) {
            names.keys().forEach(name -> places.put(name, names.texts(name)));
        }
        Sheet disturb = sheet.sheet("disturbing");
        if (disturb != null) {
            disturb.keys().forEach(work -> {
                works.put(work, disturb.text(work));
                disturbing.add(work);
            });
        }
        Sheet others = sheet.sheet("other");
        if (others != null) {
            others.keys().forEach(work -> works.put(work, others.text(work)));
        }
        morePoints.addAll(sheet.texts("points"));
        for (Sheet item : sheet.sheets("besides")) {
            Card.Want read = want(item, null, false, 1);
            if (read != null) {
                besides.add(read);
            }
        }
        sheet.done();
    }

    private void readInstrument(Sheet sheet) {
        String kind = sheet.text("kind");
        Map<Unit.Dimension, Quantity> least = new LinkedHashMap<>();
        for (Sheet row : sheet.sheets("measures")) {
            Unit.Dimension dimension = row.word("what", Unit.Dimension.class);
            Quantity uncertainty = row.quantity("uncertainty");
            if (dimension != null && uncertainty != null) {
                least.put(dimension, uncertainty);
            }
            row.text("known");
            row.done();
        }
        sheet.done();
        if (kind != null) {
            instruments.put(kind, new Vocabulary.InstrumentKind(kind, least));
        }
    }

    private void readLimit(Sheet sheet) {
        String id = sheet.text("id");
        String of = sheet.text("of");
        boolean local = sheet.yes("local");
        Limit.Maker maker = sheet.word("maker", Limit.Maker.class);
        Quantity resolution = sheet.quantity("resolution");
        Limit limit = limit(sheet, id, of, resolution, maker, local, null);
        if (limit != null) {
            limits.stream().filter(l -> l.id().equals(id) && l.from().equals(limit.from())).findFirst()
                    .ifPresent(twin -> sheet.fault("id", "'" + id + "' stands twice from " + limit.from() + " (also " + twin.file() + ":" + twin.line() + ")", "Give the later one its own from date."));
            limits.add(limit);
        }
    }

    private Limit limit(Sheet sheet, String id, String of, Quantity resolution, Limit.Maker maker, boolean local, String territory) {
        Limit.Sense sense = sheet.word("sense", Limit.Sense.class);
        Quantity value = null;
        Quantity upper = null;
        if (sense == Limit.Sense.BETWEEN) {
            List<String> ends = sheet.texts("value");
            if (ends.size() == 2) {
                try {
                    value = Quantity.parse(ends.get(0));
                    upper = Quantity.parse(ends.get(1));
                } catch (IllegalArgumentException e) {
                    sheet.fault("value", e.getMessage(), "");
                }
            } else {
                sheet.fault("value", "between needs two values", "Write value: [2 mm, 3 mm].");
            }
        } else if (sense == Limit.Sense.MAKER_ONLY) {
            Unit unit = sheet.as("unit", text -> Unit.spelled(text).orElseThrow(() -> new IllegalArgumentException("'" + text + "' is not a unit this program knows")));
            value = unit == null ? null : Quantity.of("0", unit);
        } else {
            value = sheet.quantity("value");
        }
        String atLimit = sheet.text("at-limit");
        if (atLimit != null && !Set.of("passes", "fails").contains(atLimit)) {
            sheet.fault("at-limit", "'" + atLimit + "'", "Write passes or fails: codes differ on whether the limit itself is allowed.");
        }
        LocalDate from = sheet.date("from");
        LocalDate registeredFrom = sheet.optionalAs("registered-from", LocalDate::parse);
        LocalDate registeredBefore = sheet.optionalAs("registered-before", LocalDate::parse);
        Source source = source(sheet);
        LocalDate reviewed = sheet.date("reviewed");
        sheet.done();
        if (id == null || sense == null || value == null || from == null || source == null || territory == null && (maker == null || resolution == null)) {
            return null;
        }
        if (resolution != null && sense != Limit.Sense.WITHIN && resolution.unit().dimension() != value.unit().dimension()) {
            sheet.fault("resolution", resolution + " is of another kind than " + value, "Give the step in a unit of " + value.unit().dimension().words() + ".");
        }
        if ((sense == Limit.Sense.WITHIN || sense == Limit.Sense.MAKER_ONLY) && maker != Limit.Maker.NEEDED) {
            sheet.fault("maker", sense.key() + " rests on the maker's figure", "Write maker: needed.");
        }
        return new Limit(id, of, sense, value, upper, "passes".equals(atLimit), resolution, from, registeredFrom, registeredBefore,
                source, reviewed, maker == null ? Limit.Maker.NONE : maker, local, territory, sheet.file(), sheet.line());
    }

    /** The source under its key, or null after a fault. */
    static Source source(Sheet sheet) {
        Sheet s = sheet.sheet("source");
        if (s == null) {
            return null;
        }
        Source.Kind kind = s.word("kind", Source.Kind.class);
        if (kind == Source.Kind.PRACTICE) {
            s.done();
            return new Source(kind, null, null, Source.Known.PRACTICE);
        }
        String document = s.text("document");
        String section = s.optional("section");
        Source.Known known = s.word("known", Source.Known.class);
        s.done();
        return kind == null || document == null || known == null ? null : new Source(kind, document, section, known);
    }

    private void readCode(Sheet sheet) {
        if (sheet == null) {
            return;
        }
        String code = sheet.text("code");
        String name = sheet.text("name");
        List<String> members = sheet.texts("members");
        List<Limit> own = new ArrayList<>();
        for (Sheet item : sheet.sheets("limits")) {
            Limit limit = limit(item, item.text("id"), null, null, null, false, code);
            if (limit != null) {
                own.add(limit);
            }
        }
        Map<String, Source> none = new TreeMap<>();
        for (Sheet item : sheet.sheets("sets-none")) {
            String id = item.text("id");
            Source source = source(item);
            item.done();
            if (id != null && source != null) {
                none.put(id, source);
            }
        }
        sheet.done();
        if (code != null) {
            codes.put(code, new LocalCode(code, name, members, own, none));
        }
    }

    private void readCard(Sheet sheet) {
        String id = sheet.text("id");
        String question = sheet.text("question");
        String applies = sheet.text("applies");
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        List<String> names = sheet.texts("gates");
        if (names.isEmpty()) {
            sheet.fault("gates", "a check belongs to at least one gate", "Write gates: [road-test].");
        }
        for (String name : names) {
            Gate.of(name).ifPresentOrElse(gates::add, () -> sheet.fault("gates", "'" + name + "' is not a gate", "Known: " + List.of(Gate.values()) + "."));
        }
        Card.Needs needs = sheet.has("needs") ? sheet.word("needs", Card.Needs.class) : Card.Needs.STANDING;
        gates.stream().filter(gate -> needs != null && !needs.before(gate)).forEach(gate -> sheet.fault("needs",
                "at " + gate + " nobody may have had this evidence yet", "Ask for it at a later gate, or ask for what can be had before."));
        boolean critical = sheet.yes("critical");
        Place place = placeOf(sheet, "place", sheet.text("place"));
        String limit = sheet.optional("limit");
        Holds holds = sheet.as("holds", Holds::parse);
        List<Card.Want> wants = new ArrayList<>();
        List<Sheet> wanted = sheet.sheets("wants");
        for (Sheet want : wanted) {
            Card.Want read = want(want, limit, critical, wanted.size());
            if (read != null) {
                wants.add(read);
            }
        }
        if (!sheet.has("wants")) {
            sheet.fault("wants", "the key is missing", "Write wants: and a list; [] only when rules of the check decide from the record itself.");
        }
        wants = alone(wants, limit);
        List<Card.Undo> undoneBy = undos(sheet, "undone-by");
        List<Card.Undo> survives = undos(sheet, "survives");
        List<Card.Undo> clearedBy = undos(sheet, "cleared-by");
        clearedBy.stream().filter(row -> row.works().isEmpty()).findFirst().ifPresent(row -> sheet.fault("cleared-by", "it names no work", "Write work: [adjusted]; leave the key out where any work there will do."));
        String remedy = sheet.text("remedy");
        String caution = sheet.optional("caution");
        List<String> formerly = sheet.texts("formerly");
        sheet.done();
        if (id == null || place == null || holds == null || gates.isEmpty()) {
            return;
        }
        Card card = new Card(id, question, applies, gates, needs, critical, place, wants, limit, holds, undoneBy, survives, clearedBy, remedy, caution, formerly, sheet.file(), sheet.line());
        Card twin = cards.put(id, card);
        if (twin != null) {
            sheet.fault("id", "'" + id + "' stands twice (also " + twin.file() + ":" + twin.line() + ")", "Ids are never reused; choose another.");
        }
    }

    private List<Card.Undo> undos(Sheet sheet, String key) {
        List<Card.Undo> undos = new ArrayList<>();
        for (Sheet undo : sheet.sheets(key)) {
            List<String> named = undo.texts("work");
            named.stream().filter(w -> !works.containsKey(w)).forEach(w -> undo.fault("work", "'" + w + "' is not a known work", "Known: " + String.join(", ", works.keySet()) + "."));
            Place at = placeOf(undo, "place", undo.text("place"));
            undo.done();
            if (at != null) {
                undos.add(new Card.Undo(new LinkedHashSet<>(named), at));
            }
        }
        return undos;
    }

    // A single amount or date is held against the card's limit without being told so.
    private static List<Card.Want> alone(List<Card.Want> wants, String limit) {
        List<Card.Want> valued = wants.stream().filter(w -> w.form() == Form.AMOUNT || w.form() == Form.DAYS).toList();
        if (limit == null || valued.size() != 1 || valued.get(0).judged() || wants.stream().anyMatch(w -> w.form() == Form.CODE)) {
            return wants;
        }
        return wants.stream().map(w -> w != valued.get(0) ? w : new Card.Want(w.name(), w.weakest(), w.aspect(), w.form(), w.unit(), w.good(), w.bad(), w.place(), w.holds(), true, w.varies())).toList();
    }

    private Card.Want want(Sheet sheet, String limit, boolean critical, int siblings) {
        Deed weakest = null;
        String aspect = null;
        for (Deed deed : Deed.values()) {
            if ((deed.isEvidence() || deed == Deed.DONE) && sheet.has(deed.key())) {
                if (weakest != null) {
                    sheet.fault(deed.key(), "one kind of evidence at a time", "Write a second want.");
                }
                weakest = deed;
                aspect = sheet.text(deed.key());
            }
        }
        if (weakest == null) {
            sheet.fault("", "says no kind of evidence", "Write measured:, tried:, seen: or done:.");
            sheet.keys();
            return null;
        }
        if (critical && (weakest == Deed.TOLD || weakest == Deed.ASSUMED)) {
            sheet.fault(weakest.key(), "hearsay never closes a safety-critical check", "Ask for measured, tried, seen or done.");
        }
        String name = sheet.optional("name");
        Set<String> good = new LinkedHashSet<>(sheet.texts("good"));
        Set<String> bad = new LinkedHashSet<>(sheet.texts("bad"));
        Form form = sheet.has("form") ? sheet.word("form", Form.class) : weakest == Deed.MEASURED ? Form.AMOUNT : Form.ANSWER;
        Unit unit = sheet.optionalAs("unit", text -> Unit.spelled(text).orElseThrow(() -> new IllegalArgumentException("'" + text + "' is not a unit this program knows")));
        if (form == Form.AMOUNT && unit == null) {
            sheet.fault("unit", "an amount needs a unit", "Write unit: mm.");
        }
        if (form == Form.ANSWER && weakest != Deed.DONE && (good.isEmpty() || bad.isEmpty())) {
            sheet.fault("good", "answers need a good and a bad side", "Write good: [sound] and bad: [cracked].");
        }
        if (weakest == Deed.DONE && !works.containsKey(aspect)) {
            sheet.fault("done", "'" + aspect + "' is not a known work", "Known: " + String.join(", ", works.keySet()) + ".");
        }
        String elsewhere = sheet.optional("place");
        Place place = elsewhere == null ? null : placeOf(sheet, "place", elsewhere);
        Holds holds = sheet.optionalAs("holds", Holds::parse);
        boolean judged = sheet.yesOr("judged", false);
        boolean varies = sheet.yesOr("varies", false);
        sheet.done();
        return new Card.Want(name == null ? aspect : name, weakest, aspect, form, unit, good, bad, place, holds, judged, varies);
    }

    private Place placeOf(Sheet sheet, String key, String pattern) {
        if (pattern == null) {
            return null;
        }
        Place place = new Place(pattern);
        place.names().stream().filter(n -> !places.containsKey(n)).forEach(n -> sheet.fault(key, "'{" + n + "}' is not a known word for a place", "Known: " + places.keySet() + "."));
        return place.names().stream().allMatch(places::containsKey) ? place : null;
    }

    private void checkSense(KieBase rules) {
        if (version == null || version.isBlank()) {
            faults.add(new Fault("rules/book.yaml", 0, "version", "the rule book has no version", "Write version: 1."));
        }
        if (complete.isEmpty()) {
            faults.add(new Fault("rules/book.yaml", 0, "gates", "the rule book is complete for no gate", "Write gates: [road-test]."));
        }
        if (cards.isEmpty()) {
            faults.add(new Fault("rules", 0, "", "a rule book without checks decides nothing", "Add checks."));
        }
        Set<String> ruleNames = new TreeSet<>();
        for (KiePackage pack : rules.getKiePackages()) {
            pack.getRules().forEach(rule -> ruleNames.add(rule.getName()));
        }
        if (ruleNames.isEmpty()) {
            faults.add(new Fault("rules", 0, "", "a rule book without rules decides nothing", "Add rules."));
        }
        Set<String> limitIds = new TreeSet<>();
        limits.forEach(l -> limitIds.add(l.id()));
        for (Card card : cards.values()) {
            if (!ruleNames.contains(card.id())) {
                faults.add(new Fault(card.file(), card.line(), card.id(), "no rule says when this check applies", "Add rule \"" + card.id() + "\" to the system's DRL."));
            }
            if (card.limit() != null && !limitIds.contains(card.limit())) {
                faults.add(new Fault(card.file(), card.line(), card.id(), "its limit '" + card.limit() + "' is not in limits.yaml", "Add the limit."));
            }
            List<String> bound = card.place().names();
            for (Card.Want want : card.wants()) {
                if (want.place() != null && !bound.containsAll(want.place().names())) {
                    faults.add(new Fault(card.file(), card.line(), card.id(), "the place " + want.place() + " of '" + want.name() + "' means several points", "Use only the names in braces of " + card.place() + "."));
                }
            }
        }
        for (LocalCode code : codes.values()) {
            for (Limit limit : code.limits()) {
                if (!limitIds.contains(limit.id())) {
                    faults.add(new Fault(limit.file(), limit.line(), limit.id(), "no check uses a limit of this id", "Known ids stand in rules/*/limits.yaml."));
                }
            }
            code.setsNone().keySet().stream().filter(id -> !limitIds.contains(id)).forEach(id ->
                    faults.add(new Fault("rules/codes/" + code.code() + ".yaml", 0, "sets-none", "no check uses a limit '" + id + "'", "Known ids stand in rules/*/limits.yaml.")));
        }
    }

    private Vocabulary vocabulary() {
        TreeSet<String> points = new TreeSet<>();
        Map<String, Vocabulary.Aspect> aspects = new TreeMap<>();
        for (Card card : cards.values()) {
            for (Place place : placesOf(card)) {
                place.points(Map.of(), places).forEach(point -> addWithParts(points, point));
            }
            card.wants().forEach(want -> addAspect(aspects, want, card.file(), card.line(), card.id()));
        }
        besides.forEach(want -> addAspect(aspects, want, "rules/evidence/words.yaml", 0, "besides"));
        morePoints.forEach(pattern -> new Place(pattern).points(Map.of(), places).forEach(point -> addWithParts(points, point)));
        Map<String, Unit.Dimension> ids = new TreeMap<>();
        limits.forEach(l -> ids.put(l.id(), l.sense() == Limit.Sense.WITHIN ? l.resolution().unit().dimension() : l.value().unit().dimension()));
        return new Vocabulary(points, aspects, works, instruments, ids);
    }

    private static List<Place> placesOf(Card card) {
        List<Place> all = new ArrayList<>(List.of(card.place()));
        card.wants().stream().filter(w -> w.place() != null).forEach(w -> all.add(w.place()));
        card.undoneBy().forEach(u -> all.add(u.place()));
        return all;
    }

    private static void addAspect(Map<String, Vocabulary.Aspect> aspects, Card.Want want, String file, int line, String path) {
        if (want.weakest() != Deed.DONE) {
            Set<String> answers = new TreeSet<>(want.good());
            answers.addAll(want.bad());
            Unit.Dimension dimension = want.unit() == null ? null : want.unit().dimension();
            aspects.merge(want.aspect(), new Vocabulary.Aspect(want.aspect(), want.form(), dimension, answers), (a, b) -> merged(file, line, path, a, b));
        }
    }

    private static Vocabulary.Aspect merged(String file, int line, String path, Vocabulary.Aspect a, Vocabulary.Aspect b) {
        if (a.form() != b.form() || a.dimension() != b.dimension()) {
            throw new UnusableInput(List.of(new Fault(file, line, path, "'" + a.name() + "' is written in another form by another check", "Choose another name for it.")));
        }
        Set<String> answers = new TreeSet<>(a.answers());
        answers.addAll(b.answers());
        return new Vocabulary.Aspect(a.name(), a.form(), a.dimension(), answers);
    }

    private static void addWithParts(Set<String> points, String point) {
        for (int slash = point.indexOf('/'); slash > 0; slash = point.indexOf('/', slash + 1)) {
            points.add(point.substring(0, slash));
        }
        points.add(point);
    }

    private static String digest(SortedMap<String, String> files) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            files.forEach((name, text) -> {
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                sha.update((name + "\n" + bytes.length + "\n").getBytes(StandardCharsets.UTF_8));
                sha.update(bytes);
            });
            return "sha256:" + HexFormat.of().formatHex(sha.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
