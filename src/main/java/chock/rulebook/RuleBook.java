package chock.rulebook;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.record.Fault;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.LocalLaw;
import chock.record.MakerFigure;
import chock.record.Plausible;
import chock.record.Vocabulary;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All checks, limits, local codes and reasoning in force, with a version and a digest. */
public final class RuleBook {
    private static final String TRIAL = "changed for trial, from ";

    private static RuleBook shipped;

    private final String version;
    private final String digest;
    private final Library library;
    private final SortedMap<String, Card> cards;
    private final List<Limit> limits;
    private final SortedMap<String, LocalCode> codes;
    private final Vocabulary vocabulary;
    private final RideSheet ride;
    private final RunSheet run;
    private final Set<Gate> complete;
    private final Period reviewEvery;
    private final Period longestRelease;
    private final Supplier<Rules> rules;
    private final Set<String> without;
    private final House house;
    private final Map<String, LaidOut> laidOut;
    private final Coordinates position;
    private final RegisterFile register;
    private final Kept kept;
    private final Map<String, List<Limit>> limitsById;
    private final List<Limit> allLimits;
    private final Map<String, Set<String>> badAnswers = new HashMap<>();

    /**
     * A house in force.
     *
     * @param tightened its limits that stand beside shipped ones
     * @param ruled whether it has rules of its own
     */
    record House(HouseBook book, List<Limit> tightened, List<Asking> askings, boolean ruled) {
        House with(UnaryOperator<Limit> change) {
            return new House(book, tightened.stream().map(change).toList(), askings, ruled);
        }
    }

    RuleBook(String version, String digest, Library library, SortedMap<String, Card> cards, List<Limit> limits, SortedMap<String, LocalCode> codes,
             Vocabulary vocabulary, RideSheet ride, RunSheet run, Set<Gate> complete, Period reviewEvery, Period longestRelease, Supplier<Rules> rules) {
        this(version, digest, library, cards, limits, codes, vocabulary, ride, run, complete, reviewEvery, longestRelease, rules, Set.of(), null, new ConcurrentHashMap<>(), null, null, new Kept());
    }

    private RuleBook(String version, String digest, Library library, SortedMap<String, Card> cards, List<Limit> limits, SortedMap<String, LocalCode> codes,
                     Vocabulary vocabulary, RideSheet ride, RunSheet run, Set<Gate> complete, Period reviewEvery, Period longestRelease, Supplier<Rules> rules, Set<String> without, House house, Map<String, LaidOut> laidOut, Coordinates position, RegisterFile register, Kept kept) {
        this.version = version;
        this.digest = digest;
        this.library = library;
        this.cards = cards;
        this.limits = limits;
        this.codes = codes;
        this.vocabulary = vocabulary;
        this.ride = ride;
        this.run = run;
        this.complete = complete;
        this.reviewEvery = reviewEvery;
        this.longestRelease = longestRelease;
        this.rules = rules;
        this.without = without;
        this.house = house;
        this.laidOut = laidOut;
        this.position = position;
        this.register = register;
        this.kept = kept;
        cards.values().stream().flatMap(card -> card.wants().stream()).forEach(want ->
                badAnswers.computeIfAbsent(want.aspect(), aspect -> new HashSet<>()).addAll(want.bad()));
        this.limitsById = limits.stream().collect(Collectors.groupingBy(Limit::id));
        // Put together here alone: a caller that does it itself forgets one kind, and a release outlives a limit.
        this.allLimits = Stream.of(limits.stream(), codes.values().stream().flatMap(code -> code.limits().stream()), tightened().stream()).flatMap(some -> some).toList();
    }

    /**
     * The rule book inside the program; read once, since nothing in it changes.
     *
     * @throws chock.record.UnusableInput when it is not sound; it never loads half
     */
    public static synchronized RuleBook shipped() {
        if (shipped == null) {
            shipped = RuleBookLoader.shipped();
        }
        return shipped;
    }

    /** What figures can be at all, as the shipped rule book knows it; without reading the rest of it, for a computation that judges nothing. */
    public static Plausible shippedPlausible() {
        return RuleBookLoader.shippedPlausible();
    }

    public String version() {
        return version;
    }

    /** False when one document of a local code says two things of one machine on one day, which a loader refuses. */
    public boolean saysOneThingADay() {
        List<Fault> faults = new ArrayList<>();
        codes.values().forEach(new Conflicts(faults)::twins);
        return faults.isEmpty();
    }

    /**
     * This rule book with other limits, for trying what a change would do; it says so in its digest.
     *
     * @param change gives for each limit, local codes' and the house's included, the one to take its place: itself when unchanged
     */
    public RuleBook with(UnaryOperator<Limit> change) {
        SortedMap<String, LocalCode> changed = new TreeMap<>();
        codes.forEach((name, code) -> changed.put(name, code.with(change)));
        return new RuleBook(version, trial(), library, cards, limits.stream().map(change).toList(), changed, vocabulary, ride, run, complete, reviewEvery, longestRelease, rules, without, house == null ? null : house.with(change), laidOut, position, register, new Kept());
    }

    /**
     * This rule book with other cards, for trying what a change would do; it says so in its digest.
     *
     * @param change gives for each card the one to take its place: itself when unchanged; its id stays
     */
    public RuleBook withCards(UnaryOperator<Card> change) {
        SortedMap<String, Card> changed = new TreeMap<>(cards);
        changed.replaceAll((id, card) -> change.apply(card));
        return new RuleBook(version, trial(), library, changed, limits, codes, vocabulary, ride, run, complete, reviewEvery, longestRelease, rules, without, house, new ConcurrentHashMap<>(), position, register, new Kept());
    }

    /** This rule book with other plans of a ride and of a run under a roof, for trying what a change would do; it says so in its digest. */
    public RuleBook withPlans(RideSheet otherRide, RunSheet otherRun) {
        return new RuleBook(version, trial(), library, cards, limits, codes, vocabulary, otherRide, otherRun, complete, reviewEvery, longestRelease, rules, without, house, laidOut, position, register, new Kept());
    }

    /** This rule book with other words for what can be written, for trying what a change would do; it says so in its digest. */
    public RuleBook withVocabulary(Vocabulary other) {
        return new RuleBook(version, trial(), library, cards, limits, codes, other, ride, run, complete, reviewEvery, longestRelease, rules, without, house, laidOut, position, register, new Kept());
    }

    /** This rule book with other reasoning, for trying what a change would do; it says so in its digest. */
    RuleBook reasoningBy(Rules other) {
        return new RuleBook(version, trial(), library, cards, limits, codes, vocabulary, ride, run, complete, reviewEvery, longestRelease, () -> other, without, house, laidOut, position, register, new Kept());
    }

    /**
     * This rule book with one rule asleep, for trying whether anybody would notice; it says so in its digest.
     *
     * @param rule name of a rule; one that is not there changes nothing
     */
    public RuleBook without(String rule) {
        return without(Set.of(rule));
    }

    /** This rule book with several rules asleep; see {@link #without(String)}. */
    public RuleBook without(Set<String> more) {
        Set<String> asleep = new HashSet<>(without);
        asleep.addAll(more);
        return new RuleBook(version, trial(), library, cards, limits, codes, vocabulary, ride, run, complete, reviewEvery, longestRelease, rules, asleep, house, laidOut, position, register, new Kept());
    }

    /**
     * This rule book in a workshop at this place: where the sun sets there is known then. It changes no rule, and so not the digest.
     *
     * @param place where, or null when it is not known
     */
    public RuleBook at(Coordinates place) {
        return new RuleBook(version, digest, library, cards, limits, codes, vocabulary, ride, run, complete, reviewEvery, longestRelease, rules, without, house, laidOut, place, register, kept);
    }

    /** Where the workshop is, or null when that is not known. */
    public Coordinates position() {
        return position;
    }

    /** This rule book at a workshop that keeps a register in this file. It changes no rule, and so not the digest. */
    public RuleBook withRegister(Path file) {
        RegisterFile readable = new RegisterFile(file, vocabulary.instruments().keySet());
        readable.now();
        return new RuleBook(version, digest, library, cards, limits, codes, vocabulary, ride, run, complete, reviewEvery, longestRelease, rules, without, house, laidOut, position, readable, kept);
    }

    /** True when there is a workshop's register at hand. */
    public boolean hasRegister() {
        return register != null;
    }

    /**
     * The digest of the register at hand as it is now, or {@code none}.
     *
     * @throws chock.record.UnusableInput when it cannot be used
     */
    public String registerDigest() {
        return register == null ? "none" : register.now().digest();
    }

    /**
     * A record as it was read, with what the workshop's register knew of its instruments at that moment; the record itself
     * without a register.
     *
     * @throws chock.record.UnusableInput when the register cannot be used
     */
    public JobRecord heldAgainstRegister(JobRecord record, Instant asOf) {
        return register == null ? record : register.now().appliedTo(record, asOf);
    }

    /** Names of all its rules, asleep or not. */
    public SortedSet<String> ruleNames() {
        return rules().names();
    }

    /**
     * This rule book with the rules of a house in force. Its digest covers both.
     *
     * @throws chock.record.UnusableInput when the house loosens, replaces or contradicts anything, or is not sound in itself
     */
    public RuleBook with(HouseBook book) {
        if (house != null) {
            throw new IllegalStateException("a house is in force already: " + house.book.name());
        }
        return new HouseLoader(this, book).load();
    }

    /** This rule book with what the loader of a house found sound. */
    RuleBook withHouse(House sound, SortedMap<String, Card> houseCards, List<Limit> own, Vocabulary words, Rules compiled) {
        SortedMap<String, Card> allCards = new TreeMap<>(cards);
        allCards.putAll(houseCards);
        List<Limit> withOwn = new ArrayList<>(limits);
        withOwn.addAll(own);
        SortedMap<String, String> digests = new TreeMap<>(Map.of("rule book", digest, "house", sound.book.digest()));
        return new RuleBook(version, RuleBookLoader.digest(digests), library, allCards, List.copyOf(withOwn), codes, words, ride, run, complete, reviewEvery, longestRelease, () -> compiled, without, sound, new ConcurrentHashMap<>(), position, register, new Kept());
    }

    /** The house in force, or empty. */
    public Optional<HouseBook> house() {
        return Optional.ofNullable(house).map(House::book);
    }

    /** Limits of the house that stand beside shipped ones; those of its own checks are among {@link #limits()}. */
    public List<Limit> tightened() {
        return house == null ? List.of() : house.tightened;
    }

    /** True when the house in force has rules of its own, which are code and have to be watched. */
    public boolean houseHasRules() {
        return house != null && house.ruled;
    }

    /** The checks of the house that are asked because this shipped check is asked at this point. */
    public List<Asked> askedWith(String check, String point) {
        if (house == null) {
            return List.of();
        }
        return house.askings.stream().filter(a -> a.with(check)).flatMap(a -> a.points(point, library.places()).stream().map(p -> new Asked(a.card().id(), p))).toList();
    }

    /** What a known fault of a check can do. A check of a house that names no danger has those of the check it is asked with. */
    public List<String> dangersOf(Card card) {
        if (!card.dangers().isEmpty() || house == null) {
            return card.dangers();
        }
        return house.askings().stream().filter(asking -> asking.card().id().equals(card.id()) && asking.with() != null).flatMap(asking -> asking.with().dangers().stream()).distinct().toList();
    }

    /** Which gates a known fault of a check closes though they do not ask for it. */
    public List<Card.AlsoCloses> closings(Card card) {
        if (card.closes() != null) {
            return card.closes();
        }
        Set<Gate> gates = library.dangers().closes(dangersOf(card));
        gates.removeAll(card.gates());
        return gates.isEmpty() ? List.of() : List.of(new Card.AlsoCloses(gates, Set.of(), List.of(), null, false, null));
    }

    /** The checks of the house that are asked of every machine. */
    public List<Asked> askedOfEveryMachine() {
        return house == null ? List.of() : house.askings.stream().filter(a -> a.with() == null).map(a -> new Asked(a.card().id(), a.card().place().pattern())).toList();
    }

    /** How long after the day it was looked up a limit is due to be looked up again. */
    public Period reviewEvery() {
        return reviewEvery;
    }

    /** No release is good for longer than so many days. */
    public Period longestRelease() {
        return longestRelease;
    }

    /** The limits, local codes' and house's included, whose review is past due on this day, the longest overdue first. */
    public List<Overdue> overdue(LocalDate day) {
        return overdue(allLimits, day);
    }

    /** Of these limits those whose review is past due on this day, the longest overdue first. */
    public List<Overdue> overdue(Collection<Limit> some, LocalDate day) {
        return some.stream().filter(l -> l.reviewed() != null).map(l -> new Overdue(l, l.reviewed().plus(reviewEvery))).filter(o -> o.due().isBefore(day))
                .sorted(Comparator.comparing(Overdue::due).thenComparing(o -> o.limit().id()).thenComparing(o -> Conflicts.at(o.limit()))).toList();
    }

    private String trial() {
        return digest.startsWith(TRIAL) ? digest : TRIAL + digest;
    }

    /** True of a rule book with anything changed for trying what that would do. */
    public boolean isOnTrial() {
        return digest.startsWith(TRIAL);
    }

    /** Names of the rules that sleep; empty unless this is a rule book for trying. */
    public Set<String> asleep() {
        return without;
    }

    /** {@code sha256:} over every file of the rule book, in order of name. */
    public String digest() {
        return digest;
    }

    public Library library() {
        return library;
    }

    /** Every check, by id. */
    public SortedMap<String, Card> cards() {
        return cards;
    }

    /** The limits of this rule book and of the house's own checks. Local codes and limits a house tightens are not among them; see {@link #allLimits()}. */
    public List<Limit> limits() {
        return limits;
    }

    /** Every limit under all its dates: of this rule book, then of local codes, then those a house tightens. */
    public List<Limit> allLimits() {
        return allLimits;
    }

    /** Local codes by ISO 3166 code. */
    public SortedMap<String, LocalCode> codes() {
        return codes;
    }

    /** True when a check calls this answer bad; no answer is bad to one check and good to another. */
    public boolean isBad(String aspect, String answer) {
        return badAnswers.getOrDefault(aspect, Set.of()).contains(answer);
    }

    public Vocabulary vocabulary() {
        return vocabulary;
    }

    /** The run under a roof with its caution, or empty when this rule book has no plan of it. */
    public Optional<RunSheet> run() {
        return Optional.ofNullable(run);
    }

    /** The road test as a ride, or empty when this rule book has no plan of it. */
    public Optional<RideSheet> ride() {
        return Optional.ofNullable(ride);
    }

    /** A card laid out at a point; worked out once and kept, for it is the same for every machine. */
    public LaidOut laidOut(Card card, String point) {
        return laidOut.computeIfAbsent(card.id() + " " + point, key -> LaidOut.of(card, point, library.places(), library.assembly()));
    }

    /** The gates this rule book is complete for; it releases at no other. */
    public Set<Gate> gates() {
        return complete;
    }

    /** The compiled reasoning. */
    public Rules rules() {
        return rules.get();
    }

    /** What was worked out about descriptions of machines under this rule book. */
    public Kept kept() {
        return kept;
    }

    /** A limit under all its dates and territories, the house's own among them. */
    public List<Limit> limitsNamed(String id) {
        return allLimits.stream().filter(l -> l.id().equals(id)).toList();
    }

    /** The days after the first, up to and including the last, on which any limit comes into force: shipped, of a local code, or of the house. */
    public SortedSet<LocalDate> limitsFrom(LocalDate after, LocalDate last) {
        return allLimits.stream().map(Limit::from).filter(from -> from.isAfter(after) && !from.isAfter(last)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The local codes that cover a territory. */
    public List<LocalCode> codesOf(String territory) {
        return codes.values().stream().filter(c -> c.covers(territory)).toList();
    }

    /**
     * Which limit applies: the maker's figure replaces common practice, the law where the machine will be ridden and the
     * house always apply as well, and the strictest decides. Nothing applies when something asked for is not there.
     *
     * @param id id of the limit
     * @param point the place
     * @param record the job record, for the maker's figures, the territory and the first registration
     * @param day the day of judgement
     */
    public LimitFor limitFor(String id, String point, JobRecord record, LocalDate day) {
        Optional<Limit> inForce = latest(limitsById.getOrDefault(id, List.of()), id, day);
        if (inForce.isEmpty()) {
            return new LimitFor(null, "the rule book has no limit '" + id + "' in force on " + day, "Judge it on a later day.", List.of());
        }
        Limit base = inForce.get();
        List<Limit> rests = new ArrayList<>(List.of(base));
        codesOf(record.territory()).forEach(code -> rests.addAll(code.inForce(id, record.machine(), day)));
        Optional<Limit> houses = latest(tightened(), id, day);
        houses.ifPresent(rests::add);
        Optional<LocalLaw.Line> recorded = record.localLaw().of(id);
        Optional<MakerFigure> maker = record.maker().figure(id, point);
        if (base.maker() != Limit.Maker.NONE && maker.isEmpty()) {
            if (!record.maker().saysNone(id, point)) {
                return new LimitFor(null, "the record gives no maker's figure for " + id + " and does not say that none was found",
                        "Look up the maker's figure for " + id + " and enter it, or write under none-found that there is none.", rests);
            }
            if (base.maker() == Limit.Maker.NEEDED) {
                return new LimitFor(null, "no maker's figure for " + id + ", and nothing else can stand in for it", "Find the maker's figure for " + id + ".", rests);
            }
        }
        Optional<String> impossible = maker.flatMap(vocabulary.plausible()::refuses);
        if (impossible.isPresent()) {
            return new LimitFor(null, "the maker's figure cannot be right: " + impossible.get() + "; look it up again in " + maker.get().document() + ", " + maker.get().page(),
                    "Look the maker's figure up again, and correct it.", rests);
        }
        Optional<String> impossibleLaw = recorded.flatMap(vocabulary.plausible()::refuses);
        if (impossibleLaw.isPresent()) {
            return new LimitFor(null, "the local law of the record cannot be right: " + impossibleLaw.get() + "; look it up again in " + recorded.get().document() + ", " + recorded.get().section(),
                    "Look that law up again, and correct it under local-law.", rests);
        }
        List<Candidate> candidates = new ArrayList<>();
        List<String> others = new ArrayList<>();
        if (maker.isEmpty()) {
            candidates.add(new Candidate(base.bounds(), base.source()));
        } else {
            withMaker(base, maker.get(), record, candidates, others);
        }
        rests.stream().filter(l -> l.territory() != null).forEach(l -> candidates.add(new Candidate(l.bounds(), l.source())));
        // However loose, it stands beside all that is known without it.
        LocalCode law = RecordedLaw.code(record);
        law.inForce(id, record.machine(), day).forEach(l -> candidates.add(new Candidate(l.bounds(), l.source())));
        houses.ifPresent(h -> candidates.add(new Candidate(h.sense() == Limit.Sense.WITHIN ? makersBounds(h, maker.orElseThrow()) : h.bounds(), h.source())));
        if (law.setsNone().containsKey(id)) {
            others.add("no number set by the law of " + record.territory() + " (" + law.setsNone().get(id).words() + ")");
        }
        Applied applied = strictest(id, base.sense(), candidates, others);
        return lawGap(base, record).map(gap -> new LimitFor(applied, gap.says, gap.toDo, rests)).orElseGet(() -> new LimitFor(applied, null, null, rests));
    }

    /** What is not known of the law, and what to do about that. */
    private record LawGap(String says, String toDo) { }

    private Optional<LawGap> lawGap(Limit base, JobRecord record) {
        String id = base.id();
        String territory = record.territory();
        if (!base.local()) {
            return Optional.empty();
        }
        List<LocalCode> local = codesOf(territory);
        boolean byRecord = mayRecordLaw(territory);
        Optional<LocalLaw.Line> line = record.localLaw().of(id).filter(one -> byRecord);
        if (line.isPresent() && !line.get().isSeconded()) {
            String where = line.get().document() + ", " + line.get().section();
            return Optional.of(new LawGap("the law of " + territory + " for it was read by " + record.nameOf(line.get().by()) + " alone (" + where + "); a second reader is needed",
                    "Let a second person read " + where + ", and write who it was as seconded-by under local-law."));
        }
        if (line.isPresent() || local.stream().anyMatch(code -> code.settles(id))) {
            return Optional.empty();
        }
        return Optional.of(new LawGap("no local code for it in this rule book (territory " + territory + "); ask the licensed inspector",
                "Ask the licensed inspector there: the law of " + territory + " is not in this rule book." + (byRecord ? " Then write what it says of " + id
                        + " under local-law: limits:, or under sets-none: where it was searched and sets no number; with document, section, as-of, by and seconded-by." : "")));
    }

    /** True where a record may have the law: not where a code in this rule book is that law, nor for a union, which leaves law to its parts. */
    private boolean mayRecordLaw(String territory) {
        return codesOf(territory).stream().allMatch(code -> code.union() && !code.code().equals(territory));
    }

    /** The law of the place that is not in this rule book, as the record has it, in words; empty where it has none or may not have it. */
    public Optional<String> recordedLaw(JobRecord record) {
        return record.localLaw().isEmpty() || !mayRecordLaw(record.territory()) ? Optional.empty() : Optional.of(RecordedLaw.words(record));
    }

    /** True when a limit wants the law of the place, and neither a code nor the record, read by two, settles it. */
    public boolean lacksLaw(String id, JobRecord record, LocalDate day) {
        return latest(limitsById.getOrDefault(id, List.of()), id, day).flatMap(base -> lawGap(base, record)).isPresent();
    }

    private static Optional<Limit> latest(List<Limit> limits, String id, LocalDate day) {
        return limits.stream().filter(l -> l.id().equals(id) && !l.from().isAfter(day)).max(Comparator.comparing(Limit::from));
    }

    /** True when local codes set this limit, and none of them for such a machine: older than the law, or slower. */
    public boolean exemptByLaw(String id, JobRecord record) {
        List<Limit> rows = Stream.concat(codesOf(record.territory()).stream(), Stream.of(RecordedLaw.code(record))).flatMap(c -> c.limits().stream()).filter(l -> l.id().equals(id)).toList();
        return !rows.isEmpty() && rows.stream().noneMatch(l -> l.meets(record.machine()));
    }

    private record Candidate(Bounds bounds, Source source) {
        String words() {
            return bounds.words() + " (" + source.words() + ")";
        }
    }

    private static void withMaker(Limit base, MakerFigure figure, JobRecord record, List<Candidate> candidates, List<String> others) {
        Source source = new Source(Source.Kind.MAKER, figure.document(), figure.page(), Source.Known.READ);
        Candidate makers = new Candidate(makersBounds(base, figure), source);
        if (base.sense() == Limit.Sense.WITHIN || base.sense() == Limit.Sense.MAKER_ONLY) {
            candidates.add(makers);
            return;
        }
        Candidate own = new Candidate(base.bounds(), base.source());
        boolean looser = !makers.bounds.within(own.bounds);
        if (base.source().kind() != Source.Kind.PRACTICE) {
            candidates.add(own);
            candidates.add(makers);
        } else if (looser && figure.secondedBy() == null) {
            candidates.add(own);
            others.add(makers.words() + " is looser and was read by one person only");
        } else {
            candidates.add(makers);
            others.add("in place of " + own.words());
            if (looser) {
                others.add("looser on the word of " + record.nameOf(figure.by()) + " and " + record.nameOf(figure.secondedBy()) + ", as the record names them");
            }
        }
    }

    // A manual that gives one end of a range says nothing of the other: there our own end stays.
    private static Bounds makersBounds(Limit base, MakerFigure figure) {
        if (base.sense() == Limit.Sense.WITHIN && figure.nominal() != null) {
            BigDecimal share = base.value().value().movePointLeft(2);
            return new Bounds(figure.nominal().times(BigDecimal.ONE.subtract(share)), true, figure.nominal().times(BigDecimal.ONE.add(share)), true);
        }
        Quantity low = figure.nominal() != null ? figure.nominal() : figure.atLeast();
        Quantity high = figure.nominal() != null ? figure.nominal() : figure.atMost();
        return switch (base.sense()) {
            case AT_LEAST -> low == null ? base.bounds().and(new Bounds(null, false, high, true)) : new Bounds(low, true, figure.atMost(), true);
            case AT_MOST -> high == null ? base.bounds().and(new Bounds(low, true, null, false)) : new Bounds(figure.atLeast(), true, high, true);
            case BETWEEN -> new Bounds(low == null ? base.value() : low, true, high == null ? base.upper() : high, true);
            case WITHIN, MAKER_ONLY -> new Bounds(low, true, high, true);
        };
    }

    private static Applied strictest(String id, Limit.Sense sense, List<Candidate> candidates, List<String> others) {
        Bounds all = candidates.get(0).bounds;
        Candidate decides = candidates.get(0);
        for (Candidate next : candidates.subList(1, candidates.size())) {
            Bounds both = all.and(next.bounds);
            boolean weightier = next.source.kind() == Source.Kind.LAW && decides.source.kind() != Source.Kind.LAW && next.bounds.equals(all);
            if (!both.equals(all) || weightier) {
                decides = next;
            }
            all = both;
        }
        Source source = decides.source;
        for (Candidate candidate : candidates) {
            if (candidate != decides) {
                others.add("also " + candidate.words());
            }
        }
        return new Applied(id, all, sense, source, List.copyOf(others));
    }
}
