package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Fault;
import chock.record.FieldRule;
import chock.record.Gate;
import chock.record.LawWords;
import chock.record.Plausible;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.drools.model.Model;
import org.kie.api.KieBase;

/** Reads the files of a rule book strictly, reporting everything wrong in all of them at once. */
final class RuleBookLoader {
    private static final String RIDE = "roadtest/plan.yaml";
    private static final String RUN = "air/plan.yaml";
    private static final String WORDS = "rules/evidence/words.yaml";
    private static final String PLAUSIBLE = "evidence/plausible.yaml";
    private static final String FIELDS = "evidence/description.yaml";

    private final List<Fault> faults = new ArrayList<>();
    private final SortedMap<String, Card> cards = new TreeMap<>();
    private final List<Limit> limits = new ArrayList<>();
    private final SortedMap<String, LocalCode> codes = new TreeMap<>();
    private final Map<String, Vocabulary.InstrumentKind> instruments = new TreeMap<>();
    private final Map<String, List<String>> places = new LinkedHashMap<>();
    private final Map<String, String> works = new TreeMap<>();
    private final Set<String> disturbing = new TreeSet<>();
    private Library.OfTheDay ofTheDay = new Library.OfTheDay(List.of(), List.of());
    private final Set<String> mendsNothing = new TreeSet<>();
    private final Set<String> morePoints = new TreeSet<>();
    private final Map<String, Vocabulary.Tooled> tooled = new TreeMap<>();
    private final Map<String, String> formerly = new TreeMap<>();
    private Sheet renames;
    private final List<Card.Want> besides = new ArrayList<>();
    private final List<FieldRule> fields = new ArrayList<>();
    private final Set<Gate> complete = EnumSet.noneOf(Gate.class);
    private Dangers dangers = Dangers.NONE;
    private String version = "";
    private Period reviewEvery;
    private Duration withdrawWithin = Duration.ZERO;
    private PlainReasons plainReasons = new PlainReasons(List.of(), List.of());
    private Period longestRelease;
    private Plausible plausible = Plausible.UNSAID;
    private Synonyms synonyms = Synonyms.NONE;
    private RideSheet ride;
    private RunSheet run;
    private Assembly assembly = Assembly.NONE;
    private TradeOrder order = TradeOrder.NONE;
    private Map<String, Look> looks = Map.of();

    private final Set<String> elsewhere;

    RuleBookLoader() {
        this(Set.of());
    }

    /** @param elsewhere points that other systems know, for a rule book cut down to one */
    RuleBookLoader(Set<String> elsewhere) {
        this.elsewhere = elsewhere;
    }

    static RuleBook shipped() {
        // Two things that do not wait for each other: the classes of the rules, and the files of cards and limits.
        Rules rules = comingRules();
        try (InputStream packed = RuleBookLoader.class.getClassLoader().getResourceAsStream(Packed.NAME)) {
            return packed == null ? new RuleBookLoader().load(shippedFiles(), () -> rules) : new RuleBookLoader().unpack(Packed.read(new BufferedInputStream(packed)), () -> rules);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The table of what figures can be, without the rest. */
    static Plausible shippedPlausible() {
        RuleBookLoader loader = new RuleBookLoader();
        loader.readWords(Sheet.one(WORDS, resource(WORDS), loader.faults));
        return new PlausibleReader(loader.places).read(Sheet.one("rules/" + PLAUSIBLE, resource("rules/" + PLAUSIBLE), loader.faults));
    }

    /** The text of every file of the shipped rule book, by name. */
    static SortedMap<String, String> shippedFiles() {
        SortedMap<String, String> files = new TreeMap<>();
        resource(RuleCompiler.FILES).lines().forEach(name -> files.put(name, resource("rules/" + name)));
        return files;
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

    private static Rules comingRules() {
        RuleKinds kinds = kinds();
        CompletableFuture<List<Model>> models = CompletableFuture.supplyAsync(RuleBookLoader::models);
        CompletableFuture<KieBase> asking = models.thenApplyAsync(all -> Rules.asking(all, kinds));
        CompletableFuture<KieBase> proving = models.thenApplyAsync(all -> Rules.proving(all, kinds));
        return Rules.coming(() -> joined(asking), () -> joined(proving), RuleBookLoader::models, kinds);
    }

    static RuleKinds kinds() {
        return RuleKinds.read(resource(RuleKinds.FILE));
    }

    /**
     * Some rules, and those that are compiled just now.
     *
     * @param made what the compiler made of them
     */
    static Rules with(Rules before, Map<String, byte[]> made) {
        return before.and(modelsOf(made), kindsOf(made));
    }

    static RuleKinds kindsOf(Map<String, byte[]> made) {
        return RuleKinds.read(new String(made.get(RuleKinds.FILE), StandardCharsets.UTF_8));
    }

    /** What the compiler made just now of some rules, without the others. */
    static List<Model> modelsOf(Map<String, byte[]> compiled) {
        ClassLoader inMemory = new Compiled(compiled);
        List<Model> models = new ArrayList<>();
        new String(compiled.get(RuleCompiler.INDEX), StandardCharsets.UTF_8).lines().forEach(name -> {
            try {
                models.add((Model) inMemory.loadClass(name).getDeclaredConstructor().newInstance());
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("the rules just compiled cannot be loaded: " + name, e);
            }
        });
        return models;
    }

    /** Classes of rules compiled just now. What is compiled here comes before a class of the same name inside the program. */
    private static final class Compiled extends ClassLoader {
        private final Map<String, byte[]> classes;

        Compiled(Map<String, byte[]> classes) {
            super(RuleBookLoader.class.getClassLoader());
            this.classes = classes;
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                byte[] bytes = classes.get(name.replace('.', '/') + ".class");
                if (bytes == null) {
                    return super.loadClass(name, resolve);
                }
                Class<?> loaded = findLoadedClass(name);
                return loaded == null ? defineClass(name, bytes, 0, bytes.length) : loaded;
            }
        }
    }

    static List<Model> models() {
        List<Model> models = new ArrayList<>();
        for (String name : resource(RuleCompiler.INDEX).lines().toList()) {
            try {
                models.add((Model) Class.forName(name).getDeclaredConstructor().newInstance());
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("the program lacks its compiled rules " + name + "; build it again", e);
            }
        }
        return models;
    }

    /**
     * @param files text by name, such as {@code brakes/limits.yaml}
     * @param compiled the compiled reasoning, asked for when the files have been read
     */
    RuleBook load(SortedMap<String, String> files, Supplier<Rules> compiled) {
        SortedMap<String, String> named = new TreeMap<>();
        files.forEach((name, text) -> named.put("rules/" + name, text));
        List<Fault> open = Conflicts.leftOpen(named);
        if (!open.isEmpty()) {
            throw new UnusableInput(open);
        }
        read(files.keySet(), name -> Outline.of("rules/" + name, files.get(name), faults));
        Rules rules = compiled.get();
        checkSense(rules);
        Conflicts conflicts = new Conflicts(faults);
        conflicts.limits(limits, codes.values(), List.of());
        conflicts.rules(shownRules(files), cards, Map.of(), limits.stream().map(Limit::id).collect(Collectors.toSet()), places);
        conflicts.units(cards.values(), limits);
        Set<String> known = Conflicts.known(cards.values(), morePoints, places);
        known.addAll(elsewhere);
        conflicts.undoRows(cards.values(), known, places,
                "Mend the place, or list it under points in rules/evidence/words.yaml.");
        return book(digest(files), () -> rules);
    }

    /** The rule book the build found sound and packed: not compared again, and its rules waited for only when they are wanted. */
    private RuleBook unpack(Packed packed, Supplier<Rules> compiled) {
        read(packed.outlines().keySet(), packed.outlines()::get);
        return book(packed.digest(), compiled);
    }

    /** A former name that is a place still would change what is written there today; a new name that is none leads nowhere. */
    private void checkRenames(Set<String> points) {
        formerly.forEach((former, now) -> {
            if (points.contains(former)) {
                renames.fault(former, "'" + former + "' is a place of today", "A former name is never used again: take the row out, or rename the place.");
            } else if (!points.contains(now)) {
                renames.fault(former, "'" + now + "' is not a place", "Write the name of today, as a card has it.");
            }
        });
    }

    private RuleBook book(String digest, Supplier<Rules> rules) {
        if (faults.isEmpty() && renames != null) {
            checkRenames(vocabulary().points());
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        Library library = new Library(Map.copyOf(places), works, Set.copyOf(disturbing), Set.copyOf(mendsNothing), dangers, ofTheDay, besides.stream().map(Card.Want::aspect).collect(Collectors.toUnmodifiableSet()), assembly, order, looks, synonyms, withdrawWithin, plainReasons);
        return new RuleBook(version, digest, library, cards, List.copyOf(limits), codes, vocabulary(), ride, run, Set.copyOf(complete), reviewEvery, longestRelease, rules);
    }

    private void read(Set<String> files, Function<String, Outline> outline) {
        files.forEach(name -> {
            String shown = "rules/" + name;
            if (name.equals("book.yaml")) {
                Sheet sheet = Sheet.one(shown, outline.apply(name), faults);
                if (sheet != null) {
                    version = sheet.text("version");
                    reviewEvery = sheet.as("review-every", RuleBookLoader::period);
                    longestRelease = sheet.as("longest-release", RuleBookLoader::days);
                    sheet.texts("gates").forEach(gate -> Gate.of(gate).ifPresentOrElse(complete::add, () -> sheet.fault("gates", "'" + gate + "' is not a gate", "Known: " + List.of(Gate.values()) + ".")));
                    sheet.done();
                }
            } else if (name.equals("evidence/words.yaml")) {
                readWords(Sheet.one(shown, outline.apply(name), faults));
            } else if (name.equals("evidence/instruments.yaml")) {
                Sheet.list(shown, outline.apply(name), faults).forEach(this::readInstrument);
            } else if (name.equals(DangerReader.FILE)) {
                dangers = DangerReader.read(Sheet.one(shown, outline.apply(name), faults));
            } else if (name.equals(Synonyms.FILE)) {
                synonyms = Synonyms.read(Sheet.one(shown, outline.apply(name), faults));
            }
        });
        if (files.contains(PLAUSIBLE)) {
            Sheet sheet = Sheet.one("rules/" + PLAUSIBLE, outline.apply(PLAUSIBLE), faults);
            plausible = sheet == null ? plausible : new PlausibleReader(places).read(sheet);
        }
        files.forEach(name -> {
            String shown = "rules/" + name;
            if (name.endsWith("/limits.yaml")) {
                Sheet.list(shown, outline.apply(name), faults).forEach(sheet -> readLimit(sheet));
            } else if (name.endsWith("/checks.yaml")) {
                Sheet.list(shown, outline.apply(name), faults).forEach(this::readCard);
            } else if (name.startsWith("codes/") && name.endsWith(".yaml")) {
                readCode(Sheet.one(shown, outline.apply(name), faults));
            } else if (!name.endsWith(".drl") && !name.equals("book.yaml") && !name.equals(AssemblyReader.FILE) && !name.equals(UndoingReader.FILE) && !name.equals(OrderReader.FILE) && !name.equals(LookReader.FILE) && !name.equals(RIDE) && !name.equals(RUN) && !name.startsWith("evidence/")) {
                faults.add(new Fault(shown, 0, "", "a rule book has no use for this file", "Known are checks.yaml, limits.yaml and *.drl in a system's folder, assembly.yaml, undoing.yaml, order.yaml, looks.yaml, roadtest/plan.yaml, air/plan.yaml, and codes/*.yaml."));
            }
        });
        if (files.contains(UndoingReader.FILE)) {
            Sheet sheet = Sheet.one("rules/" + UndoingReader.FILE, outline.apply(UndoingReader.FILE), faults);
            Set<String> points = elsewhere.isEmpty() ? Conflicts.known(cards.values(), morePoints, places) : null;
            if (sheet != null) {
                cards.putAll(new UndoingReader(new CardReader(places, works, dangers, false), places, cards, points).read(sheet));
            }
        }
        if (files.contains(FIELDS)) {
            Vocabulary known = vocabulary();
            SortedSet<String> points = new TreeSet<>(known.points());
            points.addAll(elsewhere);
            // A rule book cut down to one system does not know what the others look at.
            FieldRuleReader reader = new FieldRuleReader(places, points, elsewhere.isEmpty() ? known.aspects().keySet() : null);
            Sheet.list("rules/" + FIELDS, outline.apply(FIELDS), faults).forEach(sheet -> fields.addAll(reader.read(sheet)));
        }
        if (files.contains(AssemblyReader.FILE)) {
            Sheet sheet = Sheet.one("rules/" + AssemblyReader.FILE, outline.apply(AssemblyReader.FILE), faults);
            // A rule book cut down to one system does not know what the others look at.
            Set<String> points = elsewhere.isEmpty() ? vocabulary().points() : null;
            assembly = sheet == null ? assembly : new AssemblyReader(places, works.keySet(), disturbing, cards, points).read(sheet);
        }
        if (files.contains(OrderReader.FILE)) {
            Set<String> points = elsewhere.isEmpty() ? Conflicts.known(cards.values(), morePoints, places) : null;
            order = new OrderReader(places, cards, points).read(Sheet.list("rules/" + OrderReader.FILE, outline.apply(OrderReader.FILE), faults));
        }
        if (files.contains(LookReader.FILE)) {
            Set<String> asked = elsewhere.isEmpty() ? LookReader.asked(cards.values(), places) : null;
            looks = new LookReader(places, asked).read(Sheet.list("rules/" + LookReader.FILE, outline.apply(LookReader.FILE), faults));
        }
        if (files.contains(RIDE)) {
            Sheet sheet = Sheet.one("rules/" + RIDE, outline.apply(RIDE), faults);
            ride = sheet == null ? null : new RideSheetReader(places, works.keySet(), cards).read(sheet);
        }
        if (files.contains(RUN)) {
            Sheet sheet = Sheet.one("rules/" + RUN, outline.apply(RUN), faults);
            run = sheet == null ? null : RunSheetReader.read(sheet);
        }
    }

    private static Period period(String text) {
        Period period = Holds.parse(text).period();
        if (period == null) {
            throw new IllegalArgumentException("'" + text + "': write how long, such as 2 years");
        }
        return period;
    }

    private static Period days(String text) {
        Period period = period(text);
        if (period.toTotalMonths() != 0) {
            throw new IllegalArgumentException("'" + text + "': write it in days, such as 30 days");
        }
        return period;
    }

    private static SortedMap<String, String> shownRules(SortedMap<String, String> files) {
        SortedMap<String, String> shown = new TreeMap<>();
        files.forEach((name, text) -> {
            if (name.endsWith(".drl")) {
                shown.put("rules/" + name, text);
            }
        });
        return shown;
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
        plainReasons = new PlainReasons(sheet.texts("plain-reasons"), sheet.texts("plain-things"));
        Quantity slip = sheet.has("withdraw-within") ? sheet.quantity("withdraw-within") : null;
        if (slip != null && slip.unit().dimension() != Unit.Dimension.DURATION) {
            sheet.fault("withdraw-within", slip + " is no duration", "Write it in minutes, such as 10 min.");
        } else if (slip != null) {
            withdrawWithin = Duration.ofSeconds(slip.to(Unit.SECONDS).value().longValue());
        }
        sheet.sheets("tooled").forEach(this::readTooled);
        if (sheet.has("formerly")) {
            Sheet renamed = sheet.sheet("formerly");
            renamed.keys().forEach(name -> formerly.put(name, renamed.text(name)));
            renames = renamed;
        }
        for (String work : sheet.texts("mends-nothing")) {
            if (works.containsKey(work)) {
                mendsNothing.add(work);
            } else {
                sheet.fault("mends-nothing", "'" + work + "' is not a known work", "Write it under disturbing or other as well.");
            }
        }
        morePoints.addAll(sheet.texts("points"));
        if (sheet.has("of-the-day")) {
            Sheet day = sheet.sheet("of-the-day");
            ofTheDay = new Library.OfTheDay(day.texts("places"), day.texts("except"));
            day.done();
        }
        for (Sheet item : sheet.sheets("besides")) {
            Card.Want read = reader().want(item, false);
            if (read != null) {
                besides.add(read);
            }
        }
        sheet.done();
    }

    private void readTooled(Sheet sheet) {
        String work = sheet.as("work", text -> {
            if (!works.containsKey(text)) {
                throw new IllegalArgumentException("'" + text + "': write a kind of work listed above");
            }
            return text;
        });
        String with = sheet.text("with");
        Unit unit = sheet.as("is", text -> Quantity.parse("1 " + text).unit());
        LocalDate from = sheet.date("from");
        String noneFound = sheet.text("none-found");
        sheet.done();
        if (work != null && with != null && unit != null && from != null && noneFound != null) {
            tooled.put(work, new Vocabulary.Tooled(work, with, unit, from, noneFound));
        }
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
        Limit limit = LimitReader.general(sheet);
        if (limit != null) {
            limits.stream().filter(l -> l.id().equals(limit.id()) && l.from().equals(limit.from())).findFirst()
                    .ifPresent(twin -> sheet.fault("id", "'" + limit.id() + "' stands twice from " + limit.firstDay() + " (also " + twin.file() + ":" + twin.line() + ")", "Give the later one its own from date."));
            limits.add(limit);
        }
    }

    private void readCode(Sheet sheet) {
        if (sheet == null) {
            return;
        }
        String code = sheet.text("code");
        String name = sheet.text("name");
        boolean union = sheet.yesOr("union", false);
        List<String> members = sheet.texts("members");
        List<String> except = sheet.texts("except");
        List<Limit> own = new ArrayList<>();
        for (Sheet item : sheet.sheets("limits")) {
            Limit limit = LimitReader.local(item, code);
            if (limit != null) {
                own.add(limit);
            }
        }
        Map<String, Source> none = new TreeMap<>();
        for (Sheet item : sheet.sheets("sets-none")) {
            String id = item.text("id");
            Source source = LimitReader.source(item);
            item.done();
            if (id != null && source != null) {
                none.put(id, source);
            }
        }
        sheet.done();
        if (code != null) {
            codes.put(code, new LocalCode(code, name, union, members, except, own, none));
        }
    }

    private void checkSense(Rules rules) {
        if (version == null || version.isBlank()) {
            faults.add(new Fault("rules/book.yaml", 0, "version", "the rule book has no version", "Write version: 1."));
        }
        if (complete.isEmpty()) {
            faults.add(new Fault("rules/book.yaml", 0, "gates", "the rule book is complete for no gate", "Write gates: [road-test]."));
        }
        if (cards.isEmpty()) {
            faults.add(new Fault("rules", 0, "", "a rule book without checks decides nothing", "Add checks."));
        }
        Set<String> ruleNames = rules.names();
        if (ruleNames.isEmpty()) {
            faults.add(new Fault("rules", 0, "", "a rule book without rules decides nothing", "Add rules."));
        }
        if (elsewhere.isEmpty()) {
            DangerReader.check(dangers, cards, faults);
        }
        Set<String> limitIds = new TreeSet<>();
        limits.forEach(l -> limitIds.add(l.id()));
        for (Card card : cards.values()) {
            if (!ruleNames.contains(card.id())) {
                faults.add(new Fault(card.file(), card.line(), card.id(), "no rule says when this check applies", "Add rule \"" + card.id() + "\" to " + drl(card) + "."));
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
        limits.forEach(this::checkPlausible);
        codes.values().forEach(code -> code.limits().forEach(this::checkPlausible));
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

    private void checkPlausible(Limit limit) {
        limit.impossible(plausible).ifPresent(why -> faults.add(new Fault(limit.file(), limit.line(), limit.id(), why, "Look at the source again: check the unit and the decimal point.")));
    }

    /** Where the rules of a card's system stand. */
    private static String drl(Card card) {
        String folder = card.file().substring(0, card.file().lastIndexOf('/'));
        return folder + folder.substring(folder.lastIndexOf('/')) + ".drl";
    }

    private void readCard(Sheet sheet) {
        Card card = reader().read(sheet);
        Card twin = card == null ? null : cards.put(card.id(), card);
        if (twin != null) {
            sheet.fault("id", "'" + card.id() + "' stands twice (also " + twin.file() + ":" + twin.line() + ")", "Ids are never reused; choose another.");
        }
    }

    private CardReader reader() {
        return new CardReader(places, works, dangers, false);
    }

    private Vocabulary vocabulary() {
        Words words = new Words(places).and(cards.values(), limits);
        besides.forEach(want -> words.addAspect(want, null, "rules/evidence/words.yaml", 0, "besides"));
        morePoints.forEach(pattern -> words.addPoints(new Place(pattern)));
        return words.vocabulary(works, instruments, plausible, tooled, formerly, List.copyOf(fields), law());
    }

    /** What a record may say of a law that is not here. */
    private LawWords law() {
        SortedMap<String, List<String>> sides = new TreeMap<>();
        limits.stream().filter(Limit::local).forEach(limit -> sides.put(limit.id(), switch (limit.sense()) {
            case AT_LEAST -> List.of("at-least");
            case AT_MOST -> List.of("at-most");
            default -> List.of("at-least", "at-most");
        }));
        return new LawWords(sides, codes.values().stream().filter(code -> !code.union()).map(LocalCode::area).toList(),
                codes.values().stream().filter(LocalCode::union).map(LocalCode::code).collect(Collectors.toSet()));
    }

    /**
     * What a start of the program may read in place of these files.
     *
     * @throws UnusableInput when they are not sound; then nothing may be packed, and the program refuses them when it starts
     */
    static Packed pack(SortedMap<String, String> files) {
        new RuleBookLoader().load(files, RuleBookLoader::comingRules);
        SortedMap<String, Outline> outlines = new TreeMap<>();
        files.forEach((name, text) -> {
            if (name.endsWith(".yaml")) {
                outlines.put(name, Outline.of(name, text, new ArrayList<>()));
            }
        });
        return new Packed(digest(files), outlines);
    }

    /** {@code sha256:} over names, lengths and texts, in order of name. */
    static String digest(SortedMap<String, String> files) {
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
