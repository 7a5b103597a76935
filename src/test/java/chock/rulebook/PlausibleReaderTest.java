package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of what can be is read strictly. */
class PlausibleReaderTest {
    private static final String GOOD = """
            amounts:
              - {of: thickness, at: "{end}-brake/shoes", can-be: 0 to 20 mm, usual: 0.3 to 8 mm, hint: Measure the lining alone}
              - {of: hold-time, can-be: above 0 to 7200 s, hint: Write how long}
              - {of: outlets, can-be: 0 to 12 times, whole: yes, hint: Count them}
            dates:
              - {of: date-mark, from: 1930-01-01, hint: Look again}
            pairs:
              - {of: thickness, to: hold-time, ratio: 0 to 1.1, u: yes, otherwise: refuse, hint: Look at both}
            description:
              - {of: seats, can-be: 1 to 9 times, whole: yes, hint: Count them}
            instruments:
              - {kind: caliper, what: length, shows: 0 to 1000 mm, uncertainty: [1 mm, 20 % of the reading], years: 5}
            calibrated: {from: 1980-01-01, years: 10}
            limits:
              - {of: brakes.shoe-lining, can-be: 0.5 to 10 mm, maker: the same}
            """;

    private static List<String> faults(String text) {
        List<Fault> faults = new ArrayList<>();
        Sheet sheet = Sheet.one("rules/evidence/plausible.yaml", text, faults);
        if (sheet != null) {
            new PlausibleReader(Map.of("end", List.of("front", "rear"))).read(sheet);
        }
        return faults.stream().map(f -> f.path() + ": " + f.what() + ". " + f.advice()).toList();
    }

    @Test
    void aSoundTableIsRead() {
        assertThat(faults(GOOD)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0 to 20 mm|20 mm|amounts[0].can-be: '20 mm': write a range and its unit, such as 0 to 30 mm or above 0 to 60 s. ",
        "0 to 20 mm|0 to 20|amounts[0].can-be: '0 to 20': write a range and its unit, such as 0 to 30 mm or above 0 to 60 s. ",
        "0 to 20 mm|0 to 20 mn|amounts[0].can-be: 'mn' is not a unit this program knows. ",
        "0 to 20 mm|20 to 0 mm|amounts[0].can-be: '20 to 0 mm': the second end lies above the first. ",
        "0.3 to 8 mm|0.3 to 80 mm|amounts[0].usual: what is usual for 'thickness' reaches beyond what can be. Write both in one unit, the usual inside the other.",
        "0.3 to 8 mm|0.03 to 0.8 cm|amounts[0].usual: what is usual for 'thickness' reaches beyond what can be. Write both in one unit, the usual inside the other.",
        ", hint: Measure the lining alone|''|amounts[0].hint: the key is missing. Add hint:",
        "'{end}-brake/shoes'|'{ends}-brake/shoes'|amounts[0].at: '{ends}' is not a known word for a place. Known: [end].",
        "of: hold-time, can-be: above 0 to 7200 s|of: thickness, can-be: 0 to 7 mm|amounts[1].of: 'thickness' has a row already for one of these places. Keep one row for each place.",
        "12 times, whole: yes|12 times, whole: often|amounts[2].whole: 'often': write yes or no. ",
        "from: 1930-01-01|from: 1930|dates[0].from: '1930' is not a date. Write it as 2026-11-25.",
        "otherwise: refuse|otherwise: warn|pairs[0].otherwise: 'warn'. Write refuse where both cannot be true, or ask.",
        "to: hold-time|to: hold-times|pairs[0].to: 'hold-times' has no row among the amounts. Add its row, or write machine.volts or machine.top-speed.",
        "ratio: 0 to 1.1|ratio: 0 to 1.1 mm|pairs[0].ratio: '0 to 1.1 mm': write a range of two numbers, such as 0 to 1.35. ",
        "what: length|what: lengths|instruments[0].what: 'lengths': write one of ",
        "what: length|what: mass|instruments[0].shows: a caliper shows mass, not length. Write the range in a unit of mass.",
        "uncertainty: [1 mm, 20 % of the reading]|uncertainty: [much]|instruments[0].uncertainty: 'much': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi. ",
        ", uncertainty: [1 mm, 20 % of the reading]|''|instruments[0].uncertainty: it names none. Write the most that it can have, such as [1 mm] or [20 % of the reading].",
        "years: 5|years: few|instruments[0].years: For input string: ",
        "maker: the same|maker: any|limits[0].maker: 'any': write a range and its unit, such as 0 to 30 mm or above 0 to 60 s. ",
        "calibrated: {from: 1980-01-01, years: 10}|''|calibrated: the key is missing. Add calibrated:",
        "years: 10}|years: 10, months: 2}|calibrated.months: unknown key 'months'. Known here: from, years."})
    void aFaultIsSaidWithItsPlace(String good, String bad, String says) {
        String text = GOOD.replace(good.replace("'{end}-brake/shoes'", "\"{end}-brake/shoes\""), bad.replace("'{ends}-brake/shoes'", "\"{ends}-brake/shoes\""));
        assertThat(text).isNotEqualTo(GOOD);
        assertThat(faults(text)).anyMatch(fault -> fault.startsWith(says.stripTrailing()));
    }
}
