package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.UnusableInput;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A rule book that is not sound does not load, and says where and why. */
class RefusedRuleBookTest {
    private static final String LIMIT = """
            - id: record.licensed-inspection
              of: friction material
              sense: at-least
              value: 1.5 mm
              at-limit: passes
              resolution: 0.1 mm
              from: 2000-01-01
              source: {kind: practice}
              maker: replaces
              local: no
              reviewed: 2026-11-25
            """;
    private static final String CARD = """
            - id: record.licensed-inspection
              question: Is there enough?
              applies: every pad
              gates: [road-test]
              critical: yes
              dangers: [proof]
              place: "{end}-brake/pad"
              wants:
                - {measured: thickness, unit: mm}
              limit: record.licensed-inspection
              holds: 12 months
              undone-by: []
              ends-by: work
              remedy: Fit new ones and measure again.
            """;

    // The compiled rules are the shipped ones; the one card here borrows an id they know.
    private static RuleBook load(String limits, String cards, String code) {
        return load(limits, cards, code, null);
    }

    private static RuleBook load(String limits, String cards, String code, String drl) {
        SortedMap<String, String> files = new TreeMap<>();
        files.put("book.yaml", "version: test\nreview-every: 2 years\nlongest-release: 30 days\ngates: [road-test]\n");
        files.put("evidence/dangers.yaml", "dangers:\n  fire: {what: petrol can burn, closes: [first-start]}\n  proof: {what: not known}\nunless:\n  tank-empty: {says: the tank is empty, shown-by: [{check: record.licensed-inspection}]}\n");
        files.put("evidence/words.yaml", "places: {end: [front, rear]}\ndisturbing: {opened: taken apart}\nother: {bled: freed of air}\npoints: [machine]\n");
        files.put("x/limits.yaml", limits);
        files.put("x/checks.yaml", cards);
        if (code != null) {
            files.put("codes/GB.yaml", code);
        }
        if (drl != null) {
            files.put("x/x.drl", drl);
        }
        return new RuleBookLoader().load(files, () -> RuleBook.shipped().rules());
    }

    @Test
    void whatClearsAFaultIsNamed() {
        String named = CARD.replace("  remedy:", "  cleared-by:\n    - {work: [opened], place: \"{end}-brake/pad\"}\n  remedy:");
        assertThat(load(LIMIT, named, null).cards().values()).singleElement().satisfies(card -> assertThat(card.clearedBy()).singleElement().satisfies(row -> assertThat(row.works()).containsExactly("opened")));
        assertThatThrownBy(() -> load(LIMIT, named.replace("work: [opened], ", ""), null)).isInstanceOf(UnusableInput.class).hasMessageContaining("it names no work. Write work: [adjusted]");
        assertThatThrownBy(() -> load(LIMIT, named.replace("opened]", "oppened]"), null)).isInstanceOf(UnusableInput.class).hasMessageContaining("'oppened' is not a known work");
    }

    private static RuleBook renamed(String row) {
        SortedMap<String, String> files = new TreeMap<>();
        files.put("book.yaml", "version: test\nreview-every: 2 years\nlongest-release: 30 days\ngates: [road-test]\n");
        files.put("evidence/words.yaml", "places: {end: [front, rear]}\ndisturbing: {opened: taken apart}\nother: {bled: freed of air}\nformerly: {" + row + "}\npoints: [machine]\n");
        files.put("evidence/dangers.yaml", "dangers:\n  proof: {what: nothing is known to be wrong}\n");
        files.put("x/limits.yaml", LIMIT);
        files.put("x/checks.yaml", CARD);
        return new RuleBookLoader().load(files, () -> RuleBook.shipped().rules());
    }

    @Test
    void aRenamedPlaceLeadsToOneOfToday() {
        assertThat(renamed("front-brake/linings: front-brake/pad").vocabulary().placeNow("front-brake/linings")).isEqualTo("front-brake/pad");
        assertThatThrownBy(() -> renamed("front-brake/linings: front-brake/padd")).isInstanceOf(UnusableInput.class)
                .hasMessage("rules/evidence/words.yaml:4: formerly.front-brake/linings: 'front-brake/padd' is not a place. Write the name of today, as a card has it.");
        assertThatThrownBy(() -> renamed("machine: front-brake/pad")).isInstanceOf(UnusableInput.class)
                .hasMessage("rules/evidence/words.yaml:4: formerly.machine: 'machine' is a place of today. A former name is never used again: take the row out, or rename the place.");
    }

    @Test
    void aSoundBookLoads() {
        assertThat(load(LIMIT, CARD, null).cards()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            value: 1.5 mm                | value: 1.5 furlong          | rules/x/limits.yaml:4: [0].value: '1.5 furlong': 'furlong' is not a unit this program knows
            value: 1.5 mm                | value: 1.5                  | the unit is missing
            sense: at-least              | sense: about                | rules/x/limits.yaml:3: [0].sense: 'about': write one of at-least, at-most, between, within, maker-only
            at-limit: passes             | at-limit: maybe             | Write passes or fails
            resolution: 0.1 mm           | resolution: 0.1 V           | 0.1 V is of another kind than 1.5 mm
            from: 2000-01-01             | from: 1.1.2000              | '1.1.2000' is not a date. Write it as 2026-11-25.
            source: {kind: practice}     | source: {kind: law}         | [0].source.document: the key is missing. Add document:
            source: {kind: practice}     | colour: red                 | unknown key 'colour'
            maker: replaces              | maker: perhaps              | 'perhaps': write one of replaces, needed, none
            local: no                    | local: never                | 'never': write yes or no
            reviewed: 2026-11-25         | value: 2 mm                 | the key stands twice
            sense: at-least              | sense: within               | Write maker: needed.
            of: friction material        | of:                         | a text is wanted here
            """)
    void aWrongLimitIsRefused(String right, String wrong, String message) {
        assertThat(LIMIT).contains(right);
        assertThatThrownBy(() -> load(LIMIT.replace(right, wrong), CARD, null)).isInstanceOf(UnusableInput.class).hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            gates: [road-test]                    | gates: [moon-shot]                    | 'moon-shot' is not a gate
            gates: [road-test]                    | gates: []                             | a check belongs to at least one gate
            holds: 12 months                      | holds: a while                        | write 'until undone', 'same day', '2 hours', 'until sunset, else 2 hours', '30 days', '12 months' or '2 years'
            holds: 12 months                      | holds: until sunset                   | 'until sunset': write 'until undone', 'same day', '2 hours', 'until sunset, else 2 hours'
            holds: 12 months                      | holds: until sunset, else 2 days      | 'until sunset, else 2 days': write
            {measured: thickness, unit: mm}       | {measured: thickness, unit: mm, covers: yes} | wants[0].covers: only a duration covers the time before it was written. Leave it out, or ask for a duration, such as unit: min.
            undone-by: []                         | together: {within: 1 mm, of: [thickness]} | '1 mm' is no time apart. Write a duration above zero, such as 1 h.
            undone-by: []                         | together: {within: 0 h, of: [thickness]} | '0 h' is no time apart
            undone-by: []                         | together: {within: 1 h}               | it names no want. Name the wants that belong together, such as of: [winding, temperature].
            undone-by: []                         | together: {within: 1 h, of: [depth]}  | 'depth' is no want of this card. Known: thickness.
            {measured: thickness, unit: mm}       | {measured: thickness}                 | an amount needs a unit
            {measured: thickness, unit: mm}       | {told: thickness, form: code}         | hearsay never closes a safety-critical check
            {measured: thickness, unit: mm}       | {seen: state, good: [sound]}          | answers need a good and a bad side
            {measured: thickness, unit: mm}       | {done: polished}                      | 'polished' is not a known work
            {measured: thickness, unit: mm}       | {unit: mm}                            | says no kind of evidence
            limit: record.licensed-inspection     | limit: no.such                        | its limit 'no.such' is not in limits.yaml
            "{end}-brake/pad"                     | "{corner}-brake/pad"                  | '{corner}' is not a known word for a place
            id: record.licensed-inspection        | id: no.rule                           | no rule says when this check applies
            undone-by: []                         | undone-by: [{work: [sung], place: machine}] | 'sung' is not a known work
            remedy: Fit new ones and measure again. | cure: none                          | the key is missing. Add remedy:
            """)
    void aWrongCardIsRefused(String right, String wrong, String message) {
        assertThat(CARD).contains(right);
        assertThatThrownBy(() -> load(LIMIT, CARD.replaceFirst(java.util.regex.Pattern.quote(right), java.util.regex.Matcher.quoteReplacement(wrong)), null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining(message);
    }

    @Test
    void noGateMayNeedWhatOnlyALaterOnePermits() {
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("gates: [road-test]", "gates: [road-test]\n  needs: riding"), null))
                .hasMessageContaining("[0].needs: at road-test nobody may have had this evidence yet");
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("gates: [road-test]", "gates: [first-start, hand-over]\n  needs: engine-running"), null))
                .hasMessageContaining("at first-start nobody may have had this evidence yet");
        assertThat(load(LIMIT, CARD.replace("gates: [road-test]", "gates: [hand-over]\n  needs: riding"), null).cards()).hasSize(1);
    }

    @Test
    void everythingWrongIsReportedAtOnce() {
        assertThatThrownBy(() -> load(LIMIT.replace("1.5 mm", "1.5"), CARD.replace("12 months", "ever"), "code: GB\nname: Great Britain\nlimits: []\nsets-none: []\nmood: bad\n"))
                .isInstanceOfSatisfying(UnusableInput.class, e -> assertThat(e.faults()).hasSizeGreaterThanOrEqualTo(3));
    }

    @Test
    void aCodeThatSpeaksOfAnUnknownLimitIsRefused() {
        assertThatThrownBy(() -> load(LIMIT, CARD, "code: GB\nname: Great Britain\nlimits: []\nsets-none:\n  - {id: no.such, source: {kind: practice}}\n"))
                .hasMessageContaining("no check uses a limit 'no.such'");
    }

    @Test
    void twoOfOneIdAreRefusedNamingBothPlaces() {
        assertThatThrownBy(() -> load(LIMIT + LIMIT, CARD, null)).hasMessageContaining("stands twice from 2000-01-01 (also rules/x/limits.yaml:1)");
        assertThatThrownBy(() -> load(LIMIT, CARD + CARD, null)).hasMessageContaining("stands twice (also rules/x/checks.yaml:1)");
    }

    @Test
    void whatIsNotYamlAndWhatHasNoUseIsRefused() {
        assertThatThrownBy(() -> load("- id: [", CARD, null)).hasMessageContaining("rules/x/limits.yaml:1: not readable as YAML");
        assertThatThrownBy(() -> load("", CARD, null)).hasMessageContaining("the file is empty");
        assertThatThrownBy(() -> load("id: x", CARD, null)).hasMessageContaining("a list is wanted here");
    }

    private static String row(String value, String more) {
        return "  - {id: record.licensed-inspection, " + value + ", at-limit: passes, from: 2000-01-01, " + more + "source: {kind: law, document: Act, known: read}, reviewed: 2026-11-25}\n";
    }

    @Test
    void limitsThatLeaveNothingAreRefusedNamingBothPlaces() {
        String gb = "code: GB\nname: Great Britain\nlimits:\n";
        assertThatThrownBy(() -> load(LIMIT, CARD, gb + row("sense: at-most, value: 1.2 mm", "")))
                .hasMessage("rules/codes/GB.yaml:4: record.licensed-inspection: at most 1.2 mm contradicts at least 1.5 mm (rules/x/limits.yaml:1): nothing can be both. Look both up again, and mend the wrong one.");
        assertThat(load(LIMIT, CARD, gb + row("sense: at-most, value: 1.5 mm", "")).codes()).hasSize(1);
        assertThatThrownBy(() -> load(LIMIT, CARD, gb + row("sense: at-least, value: 1.2 bar", "")))
                .hasMessageContaining("1.2 bar is of another kind than 1.5 mm (rules/x/limits.yaml:1). Give it in a unit of length.");
        assertThatThrownBy(() -> load(LIMIT.replace("sense: at-least", "sense: between").replace("value: 1.5 mm", "value: [3 mm, 2 mm]"), CARD, null))
                .hasMessageContaining("nothing lies between 3 mm and 2 mm. Write the lower number first.");
    }

    @Test
    void twoValuesOfOneDocumentForTheSameMachinesAreRefused() {
        String gb = "code: GB\nname: Great Britain\nlimits:\n";
        assertThatThrownBy(() -> load(LIMIT, CARD, gb + row("sense: at-least, value: 1.6 mm", "") + row("sense: at-least, value: 1.7 mm", "registered-from: 1990-01-01, ")))
                .hasMessage("rules/codes/GB.yaml:5: record.licensed-inspection: at least 1.7 mm and at least 1.6 mm (rules/codes/GB.yaml:4) from one document apply to the same machines from 2000-01-01. "
                        + "Give the later one its own from date, or keep their dates of registration apart.");
        String apart = row("sense: at-least, value: 1.6 mm", "registered-before: 1990-01-01, ") + row("sense: at-least, value: 1.7 mm", "registered-from: 1990-01-01, ");
        assertThat(load(LIMIT, CARD, gb + apart).codes().get("GB").limits()).hasSize(2);
        String second = row("sense: at-least, value: 1.7 mm", "").replace("document: Act", "document: Order");
        assertThat(load(LIMIT, CARD, gb + row("sense: at-least, value: 1.6 mm", "") + second).codes().get("GB").limits()).hasSize(2);
    }

    @Test
    void rowsThatPointNowhereAreRefused() {
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("undone-by: []", "undone-by: [{work: [opened], place: rear-break}]"), null))
                .hasMessage("rules/x/checks.yaml:1: record.licensed-inspection: undone-by names rear-break, and no check asks at such a place. Mend the place, or list it under points in rules/evidence/words.yaml.");
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("undone-by: []", "undone-by: []\n  survives: [{work: [opened], place: machine}]"), null))
                .hasMessageContaining("survives names machine, where no work undoes this check anyway");
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("undone-by: []", "undone-by: [{work: [opened], place: machine, only: [presure]}]"), null))
                .hasMessageContaining("undone-by: only names 'presure', and the card wants no such thing");
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("undone-by: []", "undone-by: []\n  survives: [{work: [opened], place: machine, only: [pressure]}]"), null))
                .hasMessageContaining("unknown key 'only'");
        assertThat(load(LIMIT, CARD.replace("undone-by: []", "undone-by: [{work: [opened], place: machine}]"), null).cards()).hasSize(1);
    }

    @Test
    void rulesWithoutCardsAndLimitsAreRefused() {
        String rule = "package rules.x;\n\nrule \"record.licensed-inspection\"\nwhen\nthen\n  insertLogical(new Required(\"record.licensed-inspection\", \"front-brake/pad\"));\nend\n";
        assertThat(load(LIMIT, CARD, null, rule).cards()).hasSize(1);
        assertThatThrownBy(() -> load(LIMIT, CARD, null, rule.replace("rule \"record.licensed-inspection", "rule \"record.licenced-inspection")))
                .hasMessage("rules/x/x.drl:3: the rule \"record.licenced-inspection\" belongs to no check. Name it after the check's id, with a dash and a word where there are several; or write the card. "
                        + "The cards of this system stand in rules/x/checks.yaml.");
        assertThatThrownBy(() -> load(LIMIT, CARD, null, rule.replace("Required(\"record.licensed-inspection", "Required(\"record.licenced-inspection")))
                .hasMessageContaining("rules/x/x.drl:6: the rule speaks of 'record.licenced-inspection', which has no card");
        assertThatThrownBy(() -> load(LIMIT, CARD, null, rule.replace("/pad\"", "/pad\", \"record.other\"")))
                .hasMessageContaining("rules/x/x.drl:6: the rule asks for the limit 'record.other', which no limits.yaml has");
        assertThatThrownBy(() -> load(LIMIT, CARD, null, rule.replace("front-brake/pad", "front-brake/pads")))
                .hasMessage("rules/x/x.drl:6: the rule asks for record.licensed-inspection at 'front-brake/pads', and its card at {end}-brake/pad (rules/x/checks.yaml:1). Did you mean front-brake/pad?");
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("id: record.licensed-inspection", "id: no.rule"), null))
                .hasMessageContaining("Add rule \"no.rule\" to rules/x/x.drl.");
    }

    @Test
    void aUnitThatTheLimitDoesNotHaveIsRefused() {
        assertThatThrownBy(() -> load(LIMIT, CARD.replace("unit: mm", "unit: psi"), null))
                .hasMessage("rules/x/checks.yaml:1: record.licensed-inspection: thickness is wanted in psi, and the limit record.licensed-inspection is 1.5 mm (rules/x/limits.yaml:1). "
                        + "Write unit: mm, or name the limit that is meant.");
        assertThat(load(LIMIT, CARD.replace("unit: mm", "unit: in"), null).cards()).hasSize(1);
    }
}
