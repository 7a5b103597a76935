package chock.rehearse;

import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Gate;
import chock.record.Machine;
import chock.record.Value;
import chock.record.NoteIs;
import chock.rulebook.Card;
import chock.rulebook.Coordinates;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The steps in which a scenario speaks. Each is one sentence an inspector would say; {@link StepWords} are its words in braces. */
public final class BenchSteps {
    private final Bench bench;

    BenchSteps(Bench bench) {
        this.bench = bench;
    }

    @Given("a motorcycle with {brake} in front and {brake} behind")
    @Explained(value = "Begins a scenario with a machine: a two-stroke single of 1974 with a kick starter and spoked steel rims, unless said otherwise below.", example = "a motorcycle with one hydraulic disc in front and a rod drum behind")
    public void motorcycle(String front, String rear) {
        draft().frontBrake = Draft.brake(front);
        draft().rearBrake = Draft.brake(rear);
    }

    @Given("the machine is first registered {date}")
    @Explained(value = "The day of first registration, which also sets the year of build.", example = "the machine is first registered 1985-04-01")
    public void registered(LocalDate date) {
        draft().firstRegistered = date;
    }

    @Given("the machine is a {thing}")
    @Explained(value = "Its kind: moped, moped-3w, motorcycle or motorcycle-sidecar.", example = "the machine is a motorcycle-sidecar")
    public void kind(String kind) {
        draft().kind = Draft.word(Machine.Kind.class, kind);
    }

    @Given("the top speed is {quantity}")
    @Explained(value = "The top speed by design.", example = "the top speed is 120 km/h")
    public void topSpeed(Quantity speed) {
        draft().topSpeed = speed;
    }

    @Given("the engine is cooled by {thing}")
    @Explained(value = "How heat is carried off: air or liquid.", example = "the engine is cooled by liquid")
    public void cooled(String by) {
        draft().cooling(Draft.word(Machine.Cooling.class, by));
    }

    @Given("the engine displaces {quantity}")
    @Explained(value = "The swept volume of all cylinders.", example = "the engine displaces 100 cc")
    public void displaces(Quantity volume) {
        draft().displacement(volume);
    }

    @Given("it has {int} seat(s)")
    @Explained(value = "The number of seats.", example = "it has 2 seats")
    public void seats(int seats) {
        draft().seats = seats;
    }

    @Given("the brakes are linked")
    @Explained(value = "One control works both brakes.", example = "the brakes are linked")
    public void linked() {
        draft().linkedBrakes = true;
    }

    @Given("the linings are {thing}")
    @Explained(value = "How pads and shoes hold their friction material: bonded, riveted or sintered.", example = "the linings are riveted")
    public void linings(String lining) {
        Machine.Lining held = Draft.word(Machine.Lining.class, lining);
        draft().frontBrake = lined(draft().frontBrake, held);
        draft().rearBrake = lined(draft().rearBrake, held);
    }

    @Given("the front brake has no stop lamp switch")
    @Explained(value = "The stop lamp is not worked by the front brake.", example = "the front brake has no stop lamp switch")
    public void noFrontSwitch() {
        draft().frontBrake = unswitched(draft().frontBrake);
    }

    @Given("the rear brake has no stop lamp switch")
    @Explained(value = "The stop lamp is not worked by the rear brake.", example = "the rear brake has no stop lamp switch")
    public void noRearSwitch() {
        draft().rearBrake = unswitched(draft().rearBrake);
    }

    @Given("the wheels have {thing} rims")
    @Explained(value = "Spoked wheels with rims of steel or alloy.", example = "the wheels have alloy rims")
    public void rims(String rim) {
        wheels(new Machine.Wheel(Draft.word(Machine.Rim.class, rim), draft().frontWheel.spoked(), draft().frontWheel.tube()));
    }

    @Given("the wheels are cast")
    @Explained(value = "Both wheels are cast in alloy.", example = "the wheels are cast")
    public void cast() {
        wheels(new Machine.Wheel(Machine.Rim.ALLOY, false, draft().frontWheel.tube()));
    }

    @Given("the tyres are tubeless")
    @Explained(value = "Both tyres run without a tube.", example = "the tyres are tubeless")
    public void tubeless() {
        wheels(new Machine.Wheel(draft().frontWheel.rim(), draft().frontWheel.spoked(), false));
    }

    @Given("the engine is a {thing}")
    @Explained(value = "Its cycle, two-stroke or four-stroke, with the oiling usual for it.", example = "the engine is a four-stroke")
    public void cycle(String cycle) {
        draft().cycle(Draft.word(Machine.Cycle.class, cycle));
    }

    @Given("the engine has {int} cylinder(s)")
    @Explained(value = "The number of cylinders.", example = "the engine has 2 cylinders")
    public void cylinders(int cylinders) {
        draft().cylinders(cylinders);
    }

    @Given("the engine is oiled by {thing}")
    @Explained(value = "Its oiling: oil-injection, premix, wet-sump, dry-sump or total-loss.", example = "the engine is oiled by premix")
    public void oiling(String oiling) {
        draft().oiling(Draft.word(Machine.Oiling.class, oiling));
    }

    @Given("the ignition is {thing}")
    @Explained(value = "Its ignition: points, magneto or electronic.", example = "the ignition is magneto")
    public void ignition(String ignition) {
        draft().ignition(Draft.word(Machine.Ignition.class, ignition));
    }

    @Given("the machine is electric")
    @Explained(value = "A motor and a battery, and nothing that burns.", example = "the machine is electric")
    public void electric() {
        draft().electric();
    }

    @Given("the final drive is {thing}")
    @Explained(value = "Its final drive: chain, belt or shaft.", example = "the final drive is shaft")
    public void drive(String drive) {
        draft().drive = Draft.word(Machine.Drive.class, drive);
    }

    @Given("the battery is {thing}")
    @Explained(value = "The kind of battery in the description: wet, sealed, lithium, none or unknown.", example = "the battery is sealed")
    public void battery(String kind) {
        draft().battery(Draft.word(Machine.Battery.class, kind));
    }

    @Given("it stood since {thing}")
    @Explained(value = "Since when it stood when it came in: a day, month or year, unknown, or no when it was in use.", example = "it stood since 1998")
    public void stoodSince(String since) {
        boolean day = Character.isDigit(since.charAt(0));
        draft().laidUp(new Machine.LaidUp(!since.equals("unknown"), day ? ((Value.Days) Bench.days(since)).from() : null));
    }

    @Given("the machine has the part {thing}")
    @Explained(value = "A part that most machines do not have, by the word that a record has for it under parts.", example = "the machine has the part reverse-gear")
    public void part(String part) {
        draft().part(Draft.word(Machine.Part.class, part), true);
    }

    @Given("the machine is without the part {thing}")
    @Explained(value = "The description says no to a part under parts.", example = "the machine is without the part parking-brake")
    public void noPart(String part) {
        draft().part(Draft.word(Machine.Part.class, part), false);
    }

    @Given("there is no generator")
    @Explained(value = "Nothing on the machine charges the battery.", example = "there is no generator")
    public void noGenerator() {
        draft().generator(false);
    }

    @Given("the battery has {int} volts")
    @Explained(value = "The nominal voltage; 0 when it has no battery.", example = "the battery has 6 volts")
    public void volts(int volts) {
        draft().volts = volts;
    }

    @Given("the equipment has {thing} {thing}")
    @Explained(value = "Any other part of the machine's description, by its key and in the words of a record.", example = "the equipment has starter electric")
    public void equipment(String key, String value) {
        draft().equip(key, value);
    }

    @Given("the history is {thing}")
    @Explained(value = "Whether the history of the machine is known or unknown.", example = "the history is unknown")
    public void history(String history) {
        draft().history = Draft.word(Machine.History.class, history);
    }

    @Given("the engine has no number")
    @Explained(value = "No number is stamped on the engine.", example = "the engine has no number")
    public void engineWithoutNumber() {
        draft().engineNumber = "none";
    }

    @Given("it was built with {field} {thing}")
    @Explained(value = "What the machine was built with, by a field of the description and its value; as it is now unless said otherwise.", example = "it was built with front-brake.type drum")
    public void builtWith(String field, String value) {
        open().builtWith(field, value);
    }

    @Given("it is not written what {field} it was built with")
    @Explained(value = "What is written about the machine as built leaves this field out.", example = "it is not written what drive it was built with")
    public void notWritten(String field) {
        open().checkField(field, null);
        draft().notWritten.add(field);
    }

    @Given("it is not written what it was built with")
    @Explained(value = "Nothing at all is written about the machine as built.", example = "it is not written what it was built with")
    public void nothingWritten() {
        draft().asBuiltWritten = false;
    }

    @Given("no document says what it was built with")
    @Explained(value = "What is written about the machine as built comes from one person and from no document.", example = "no document says what it was built with")
    public void noDocument() {
        draft().document = null;
    }

    @Given("until then its {field} was {thing}")
    @Explained(value = "A dated change of the description, made by the work of the entry before; it is now as described.", example = "until then its front-brake.type was drum")
    public void changed(String field, String from) {
        open().changed(field, from);
    }

    @Given("the record is a job-record\\/1")
    @Explained(value = "The record is of the first form, which cannot carry what the machine was built with, nor name an instrument for work.", example = "the record is a job-record/1")
    public void firstForm() {
        draft().asBuiltWritten = false;
        open().form = 1;
    }

    @Given("the territory is {territory}")
    @Explained(value = "Where it will be ridden; Great Britain unless said otherwise.", example = "the territory is US-VA")
    public void territory(String territory) {
        open().territory = territory;
    }

    @Given("the day is {date}")
    @Explained(value = "The day of judgement; 2026-11-25 unless said otherwise.", example = "the day is 2026-11-20")
    public void day(LocalDate date) {
        open().today = date;
    }

    @Given("the time is {time}")
    @Explained(value = "The time of day of the judgement; 12:00 unless said otherwise.", example = "the time is 22:30")
    public void time(LocalTime time) {
        open().time = time;
    }

    @Given("the workshop is at latitude {quantity} and longitude {quantity}")
    @Explained(value = "Where the workshop is, as the shop's settings say it; nobody says it unless a scenario does.", example = "the workshop is at latitude 52 ° and longitude -1 °")
    public void workshop(Quantity latitude, Quantity longitude) {
        open().workshop = new Coordinates(latitude, longitude);
    }

    @Given("one person works alone")
    @Explained(value = "There is no second person in the workshop.", example = "one person works alone")
    public void onePerson() {
        open().onePerson = true;
    }

    @Given("{writer}{place} {deed} {thing} {reading}{ago}")
    @Explained(value = "An entry of evidence: where, the kind of evidence, what, and what was found.", example = "front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 14 months ago")
    public void evidence(String by, String place, Deed deed, String thing, String reading, Ago ago) {
        open().evidence(by, place, deed, thing, reading, ago);
    }

    @Given("{writer}{place} was {thing}{ago}")
    @Explained(value = "An entry of work done on a part.", example = "tom wrote that front-brake/caliper was refitted")
    public void work(String by, String place, String work, Ago ago) {
        open().work(by, place, work, ago);
    }

    @Given("{writer}{place} was {thing} to {quantity}{ago}")
    @Explained(value = "An entry of work done with an instrument, and what it was set to.", example = "tom wrote that front-wheel/spindle was torqued to 60 N·m 2 days ago")
    public void workWithInstrument(String by, String place, String work, Quantity set, Ago ago) {
        open().work(by, place, work, set, ago);
    }

    @Given("{writer}{place} was {thing} with an instrument{ago}")
    @Explained(value = "An entry of work done with an instrument that does not say what it was set to.", example = "front-wheel/spindle was torqued with an instrument")
    public void workWithInstrumentAlone(String by, String place, String work, Ago ago) {
        open().work(by, place, work, null, ago);
    }

    @Given("the instrument for work was found out of tolerance{ago}")
    @Explained(value = "The instrument that work was done with, such as a torque wrench, was later found to read wrongly.", example = "the instrument for work was found out of tolerance 1 day ago")
    public void toolFoundOut(Ago ago) {
        open().toolFoundOut(ago);
    }

    @Given("the calibration of the instrument for work ran out{ago}")
    @Explained(value = "Stands before the first work done with it: when the calibration of that instrument ended.", example = "the calibration of the instrument for work ran out 2 months ago")
    public void toolRanOut(Ago ago) {
        open().toolRanOutOfCalibration(ago);
    }

    @Given("the maker gives no figure for {limit}")
    @Explained(value = "The record says under none-found that the maker gives no such figure; of every limit that is so unless said otherwise.", example = "the maker gives no figure for fasteners.torque")
    public void makerGivesNone(String id) {
        open().makerGivesNone(id);
    }

    @Given("a machine ready for {gates}")
    @Explained(value = "The machine described so far, or the usual one, with a good result for everything that these gates ask of it. Nothing else may have been written before.", example = "a machine ready for first-start, road-test")
    public void ready(Set<Gate> gates) {
        open().ready(List.copyOf(gates));
    }

    @Given("nothing is written for {check}")
    @Explained(value = "Everything written so far that this check asks for is taken out of the record.", example = "nothing is written for brakes.pad-thickness")
    public void nothingWritten(String check) {
        open().takeAway(check);
    }

    @Given("a licensed inspector {thing} it{ago}")
    @Explained(value = "A licensed inspection that passed or refused the machine.", example = "a licensed inspector refused it 2 months ago")
    public void inspected(String result, Ago ago) {
        if (!result.equals("passed") && !result.equals("refused")) {
            throw new NotUnderstood("'" + result + "': write passed or refused");
        }
        open().inspected(result, ago);
    }

    @Given("{person} corrected it to {reading}")
    @Explained(value = "A later entry that corrects the one before: what was read, or the work that was done instead.", example = "tom corrected it to 3.1 mm ± 0.1 mm")
    public void corrected(String by, String reading) {
        open().correct(by, null, reading);
    }

    @Given("{person} corrected it as {deed} to {reading}")
    @Explained(value = "A later entry of another kind that corrects the one before: what was only told, or only looked at.", example = "ida corrected it as told to stops")
    public void correctedOtherwise(String by, Deed deed, String reading) {
        open().correct(by, deed, reading);
    }

    @Given("{person} corrected it: {place} {deed} {thing} {reading}")
    @Explained(value = "A later entry that corrects the one before, and says something else, or the same of another place.", example = "tom corrected it: rear-brake tried walking-pace-stop stops")
    public void correctedByAnother(String by, String place, Deed deed, String thing, String reading) {
        open().correct(by, place, deed, thing, reading);
    }

    @Given("{person} withdrew it {int} minute(s) later as {reading}")
    @Explained(value = "A correction of the entry before, both written at the board, which numbers them.", example = "ida withdrew it 4 minutes later as sound")
    public void withdrew(String by, int minutes, String reading) {
        open().withdraw(by, reading, minutes);
    }

    @Given("{writer}{place} had the defect {string}{ago}")
    @Explained(value = "A defect reported in free words.", example = "tom wrote that front-brake had the defect \"soft after a minute\" 2 days ago")
    public void defect(String by, String place, String words, Ago ago) {
        open().defect(by, place, words, ago);
    }

    @Given("{writer}{place} had the defect {string} with danger {string}{ago}")
    @Explained(value = "A defect reported in free words, and what it can do.", example = "tom wrote that fuel/tank had the defect \"a seam is wet\" with danger \"fire\" 2 days ago")
    public void defect(String by, String place, String words, String danger, Ago ago) {
        open().defect(by, place, words, ago);
        open().danger(danger);
    }

    @Given("{person} closed the defect{ago}")
    @Explained(value = "The defect reported last is closed, with a reason.", example = "ida closed the defect 1 day ago")
    public void closed(String by, Ago ago) {
        open().close(by, ago);
    }

    @Given("its time of day was not recorded")
    @Explained(value = "The entry before has a date and no time of day.", example = "its time of day was not recorded")
    public void untimed() {
        open().forgetTheTime();
    }

    @Given("the reason was {string}")
    @Explained(value = "The reason of the correction before, or the cause found by the examination before; its writer does not say what it is.", example = "the reason was \"it still knocks when hot\"")
    public void reason(String words) {
        open().reason(words, null);
    }

    @Given("the reason was the {thing} {string}")
    @Explained(value = "The same; its writer calls it a remark, and nothing is wrong, or a defect.", example = "the reason was the defect \"big end worn\"")
    public void reason(String is, String words) {
        if (!is.equals("remark") && !is.equals("defect")) {
            throw new NotUnderstood("'" + is + "': write remark or defect");
        }
        open().reason(words, NoteIs.valueOf(is.toUpperCase(Locale.ROOT)));
    }

    @Given("there was the note {string}")
    @Explained(value = "A note on the entry before, which does not say what it is.", example = "there was the note \"goes to the bar after a minute\"")
    public void note(String words) {
        open().note(words, null);
    }

    @Given("there was the remark {string}")
    @Explained(value = "A note on the entry before; its writer says that nothing is wrong.", example = "there was the remark \"tried with cold hands\"")
    public void remark(String words) {
        open().note(words, NoteIs.REMARK);
    }

    @Given("there was the defect {string}")
    @Explained(value = "A note on the entry before; its writer says that it is a defect.", example = "there was the defect \"goes to the bar after a minute\"")
    public void notedDefect(String words) {
        open().note(words, NoteIs.DEFECT);
    }

    @Given("the calibration of the instrument ran out{ago}")
    @Explained(value = "Stands before the first reading: when the instrument's calibration ended.", example = "the calibration of the instrument ran out 2 months ago")
    public void ranOut(Ago ago) {
        open().ranOutOfCalibration(ago);
    }

    @Given("the instrument was found out of tolerance{ago}")
    @Explained(value = "The instrument used last was later found to read wrongly.", example = "the instrument was found out of tolerance 1 day ago")
    public void foundOut(Ago ago) {
        open().foundOut(ago);
    }

    @Given("another instrument is taken from here on")
    @Explained(value = "Later readings are taken with a second instrument.", example = "another instrument is taken from here on")
    public void anotherInstrument() {
        open().takeAnotherInstrument();
    }

    @Given("a {thing} is taken from here on")
    @Explained(value = "Later readings are taken with an instrument of this kind; one without an uncertainty has the least that is believed of the kind.", example = "a steel-rule is taken from here on")
    public void instrument(String kind) {
        open().takeInstrument(kind);
    }

    @Given("the maker says {limit} {sense} {quantity}{at}")
    @Explained(value = "A figure from the maker's manual, for the whole machine or one place.", example = "the maker says brakes.pad-thickness at least 2.0 mm")
    public void maker(String limit, String sense, Quantity value, String place) {
        open().maker(limit, place, sense, value);
    }

    @Given("nobody else has read the maker's figures")
    @Explained(value = "The maker's figures said so far were read by one person, and nobody seconds them.", example = "nobody else has read the maker's figures")
    public void readByOne() {
        open().makerReadByOne();
    }

    @Given("the local law sets {limit} {sense} {quantity} in {string}")
    @Explained(value = "The law where it will be ridden as the record has it, under local-law: read by Ida in a text of the year before, and seconded by Tom.", example = "the local law sets tyres.tread-depth at least 1.6 mm in \"Vehicle Order 1967\"")
    public void localLaw(String limit, String sense, Quantity value, String document) {
        open().localLaw(limit, sense, value, document);
    }

    @Given("the local law sets no {limit} in {string}")
    @Explained(value = "That law was searched by two people, and sets no number.", example = "the local law sets no tyres.alignment in \"Vehicle Order 1967\"")
    public void localLawSetsNone(String limit, String document) {
        open().localLaw(limit, null, null, document);
    }

    @Given("the local law sets no other limit in {string}")
    @Explained(value = "That law was searched by two people for every other limit for which local law is asked, and sets no number.", example = "the local law sets no other limit in \"Vehicle Order 1967\"")
    public void localLawSetsNoOther(String document) {
        open().localLawSetsNoOther(document);
    }

    @Given("nobody else has read the local law on {limit}")
    @Explained(value = "What the record has of that law was read by one person, and nobody seconds it.", example = "nobody else has read the local law on tyres.tread-depth")
    public void localLawReadByOne(String limit) {
        open().localLawReadByOne(limit);
    }

    @Given("the record has no local law on {limit}")
    @Explained(value = "What was said of that law for this limit before does not stand in the record.", example = "the record has no local law on tyres.alignment")
    public void noLocalLaw(String limit) {
        open().noLocalLaw(limit);
    }

    @Given("no word from the maker on {limit}")
    @Explained(value = "The record does not even say that no maker's figure was found.", example = "no word from the maker on brakes.pad-thickness")
    public void noWord(String limit) {
        open().noWordFromMaker(limit);
    }

    @Then("{check} is {state}{at}")
    @Explained(value = "The finding on a check, as a whole (its worst place) or at one place.", example = "brakes.pad-thickness is doubt at front-brake/caliper/inner-pad")
    public void outcome(String check, String state, String place) {
        bench.known(check);
        bench.expect(new Expected.Outcome(check, state, place));
    }

    @Then("it says {string}")
    @Explained(value = "Words in the sentence of that finding.", example = "it says \"at least 1.5 mm\"")
    public void says(String part) {
        bench.expectOfTheSame(check -> new Expected.Saying(check, part));
    }

    @Then("it does not say {string}")
    @Explained(value = "Words that stand in no sentence of that finding.", example = "it does not say \"was written down\"")
    public void doesNotSay(String part) {
        bench.expectOfTheSame(check -> new Expected.NotSaying(check, part));
    }

    @Then("it notes {string}")
    @Explained(value = "Words in a note on that finding.", example = "it notes \"older than 5 y\"")
    public void notes(String part) {
        bench.expectOfTheSame(check -> new Expected.Noting(check, part));
    }

    @Then("it notes nothing but {string}")
    @Explained(value = "Words in every note on that finding, which has one at least.", example = "it notes nothing but \"older than 5 y\"")
    public void notesNothingBut(String part) {
        bench.expectOfTheSame(check -> new Expected.NotingOnly(check, part));
    }

    @Then("it notes nothing")
    @Explained(value = "There is no note on that finding.", example = "it notes nothing")
    public void notesNothing() {
        bench.expectOfTheSame(Expected.NotingNothing::new);
    }

    @Then("the limit came from {string}")
    @Explained(value = "Words in the source of the limit that decided.", example = "the limit came from \"common practice\"")
    public void limitFrom(String part) {
        bench.expectOfTheSame(check -> new Expected.LimitFrom(check, part));
    }

    @Then("it is cleared by {string}")
    @Explained(value = "Words in the remedy of that finding.", example = "it is cleared by \"Fit new pads\"")
    public void clearedBy(String part) {
        bench.expectOfTheSame(check -> new Expected.ClearedBy(check, part));
    }

    @Then("it holds until {date}")
    @Explained(value = "The last day on which that finding stays met if nobody touches the machine.", example = "it holds until 2027-11-25")
    public void holdsUntil(LocalDate day) {
        bench.expectOfTheSame(check -> new Expected.HoldsUntil(check, day, null));
    }

    @Then("it holds until {date} at {time}")
    @Explained(value = "The last minute in which that finding stays met if nobody touches the machine.", example = "it holds until 2026-11-25 at 13:59")
    public void holdsUntil(LocalDate day, LocalTime minute) {
        bench.expectOfTheSame(check -> new Expected.HoldsUntil(check, day, minute));
    }

    @Then("it does not lapse by itself")
    @Explained(value = "That finding stays met until somebody works on the machine.", example = "it does not lapse by itself")
    public void neverLapses() {
        bench.expectOfTheSame(Expected.NeverLapsing::new);
    }

    @Then("it holds {gates} and no other gate")
    @Explained(value = "The gates at which that check keeps the machine: those that ask for it, and those that its known fault closes.", example = "it holds road-test, hand-over and no other gate")
    public void holdsGates(Set<Gate> gates) {
        bench.expectOfTheSame(check -> new Expected.Holding(check, gates));
    }

    @Then("it holds no gate")
    @Explained(value = "That check keeps the machine at no gate.", example = "it holds no gate")
    public void holdsNoGate() {
        bench.expectOfTheSame(check -> new Expected.Holding(check, Set.of()));
    }

    @Then("it is safety-critical")
    @Explained(value = "Somebody gets hurt when that check is wrong.", example = "it is safety-critical")
    public void critical() {
        bench.expectOfTheSame(check -> new Expected.Critical(check, true));
    }

    @Then("it is not safety-critical")
    @Explained(value = "Nobody gets hurt when that check is wrong.", example = "it is not safety-critical")
    public void notCritical() {
        bench.expectOfTheSame(check -> new Expected.Critical(check, false));
    }

    @Then("for {gate} nothing but {checks} is proven {needs}")
    @Explained(value = "All the checks of the remaining work for a gate that can be proven only so: with the engine running, or by riding.", example = "for hand-over nothing but brakes.bedded, handover.ridden is proven by riding")
    public void onlyNeeding(Gate gate, Set<String> checks, Card.Needs needs) {
        checks.forEach(bench::known);
        bench.expect(new Expected.OnlyNeeding(gate, checks, needs));
    }

    @Then("for {gate} nothing is proven {needs}")
    @Explained(value = "The remaining work for a gate holds nothing that can be proven only so.", example = "for road-test nothing is proven with the engine running")
    public void nothingNeeding(Gate gate, Card.Needs needs) {
        bench.expect(new Expected.OnlyNeeding(gate, Set.of(), needs));
    }

    @Then("the {gate} is blocked by {check} alone")
    @Explained(value = "That check keeps the machine at the gate, and nothing else does.", example = "the road-test is blocked by brakes.pad-thickness alone")
    public void blockedAlone(Gate gate, String check) {
        bench.known(check);
        bench.expect(new Expected.Alone(gate, check));
    }

    @Then("the first step to {gate} is {string}")
    @Explained(value = "Words in the first step of the remaining work for a gate.", example = "the first step to road-test is \"Measure thickness\"")
    public void firstStep(Gate gate, String part) {
        bench.expect(new Expected.FirstStep(gate, part));
    }

    @Then("for {gate} {place} is to be {thing} first")
    @Explained(value = "The work that the first step of the remaining work for a gate names, and the part it is done on.",
            example = "for road-test front-brake/cable is to be replaced first")
    public void firstWork(Gate gate, String place, String work) {
        bench.expect(new Expected.FirstWork(gate, place, work));
    }

    @Then("the run ends at {quantity}")
    @Explained(value = "The reading of the meter at which the plan of a run under a roof ends it.", example = "the run ends at 100 ppm")
    public void runEndsAt(Quantity reading) {
        bench.expect(new Expected.RunEndsAt(reading));
    }

    @Then("the {gate} is planned as")
    @Explained(value = "The plan of the ride at road-test, or of the run under a roof at indoor-run: every line of it, below the step between two lines of three quotation marks.", example = "the road-test is planned as")
    public void planned(Gate gate, String lines) {
        if (gate != Gate.ROAD_TEST && gate != Gate.INDOOR_RUN) {
            throw new NotUnderstood("only road-test and indoor-run have a plan");
        }
        bench.expect(new Expected.Planned(gate, lines.lines().map(String::strip).filter(line -> !line.isEmpty()).toList()));
    }

    @Then("the ride is held back because {string}")
    @Explained(value = "Everything that holds the ride back, in the words of its plan; semicolons between several.", example = "the ride is held back because \"The top end is fresh; A tyre is new\"")
    public void heldBack(String because) {
        bench.expect(new Expected.HeldBack(List.of(because.split("; "))));
    }

    @Then("nothing holds the ride back")
    @Explained(value = "The plan of the ride has no restraint for this machine.", example = "nothing holds the ride back")
    public void notHeldBack() {
        bench.expect(new Expected.HeldBack(List.of()));
    }

    @Then("the {gate} is released")
    @Explained(value = "The verdict at a gate: every check that applies is met.", example = "the on-show is released")
    public void released(Gate gate) {
        bench.expect(new Expected.Verdict(gate, "released"));
    }

    @Then("the {gate} is blocked")
    @Explained(value = "The verdict at a gate: something holds the machine.", example = "the road-test is blocked")
    public void blocked(Gate gate) {
        bench.expect(new Expected.Verdict(gate, "blocked"));
    }

    @Then("the {gate} is closed by {check}")
    @Explained(value = "A known fault of that check holds the gate, whether the gate asks for the check or not.", example = "the first-start is closed by engine.knock")
    public void closedBy(Gate gate, String check) {
        bench.known(check);
        bench.expect(new Expected.Closes(gate, check, true));
    }

    @Then("the {gate} is not closed by {check}")
    @Explained(value = "No known fault of that check holds the gate.", example = "the non-runner is not closed by engine.knock")
    public void notClosedBy(Gate gate, String check) {
        bench.known(check);
        bench.expect(new Expected.Closes(gate, check, false));
    }

    @Then("the {gate} is released until {date}")
    @Explained(value = "The last day a release is good for.", example = "the on-show is released until 2026-12-25")
    public void releasedUntil(Gate gate, LocalDate day) {
        bench.expect(new Expected.ReleasedUntil(gate, day, null));
    }

    @Then("the {gate} is released until {date} because of {check}")
    @Explained(value = "The last day a release is good for, and the check that lapses then.", example = "the on-show is released until 2026-11-25 because of show.battery")
    public void releasedUntilBecause(Gate gate, LocalDate day, String check) {
        bench.known(check);
        bench.expect(new Expected.ReleasedUntil(gate, day, check));
    }

    private static Machine.Brake lined(Machine.Brake b, Machine.Lining lining) {
        return b.type() == Machine.BrakeType.NONE ? b : new Machine.Brake(b.type(), b.workedBy(), b.discs(), lining, b.stopLampSwitch());
    }

    private static Machine.Brake unswitched(Machine.Brake b) {
        return new Machine.Brake(b.type(), b.workedBy(), b.discs(), b.lining(), false);
    }

    private void wheels(Machine.Wheel wheel) {
        draft().frontWheel = wheel;
        draft().rearWheel = wheel;
    }

    private Draft draft() {
        return open().draft;
    }

    private Bench open() {
        if (!bench.isOpen()) {
            throw new NotUnderstood("say everything about the machine before the first Then: it was judged there, and this would count for nothing");
        }
        return bench;
    }
}
