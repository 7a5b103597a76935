package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Tightening torque of a metric bolt where its maker gives none: preload 0.75 × proof load, torque = nut factor × diameter
 * × preload (read in copies). Nut factor 0.20 plain and dry, 0.17 zinc plated, 0.15 oiled (read). Such a torque is good to
 * about ± 30 %, never replaces a maker's figure, and is too much for a thread in cast aluminium.
 *
 * @param torque in N·m, to 16 significant digits
 * @param preload in N
 */
public record BoltTorque(Quantity torque, Quantity preload) {
    private static final BigDecimal SHARE_OF_PROOF = new BigDecimal("0.75");
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);
    private static final BigDecimal SLIPPERIEST = new BigDecimal("0.10");
    private static final BigDecimal ROUGHEST = new BigDecimal("0.30");

    /** Pitches in mm, the coarse one first (ISO 261, from memory). */
    private static final Map<Integer, List<BigDecimal>> PITCHES = Map.ofEntries(
            pitches(4, "0.7 0.5"), pitches(5, "0.8 0.5"), pitches(6, "1 0.75"), pitches(7, "1 0.75"), pitches(8, "1.25 1 0.75"),
            pitches(10, "1.5 1.25 1 0.75"), pitches(12, "1.75 1.5 1.25 1"), pitches(14, "2 1.5 1.25 1"), pitches(16, "2 1.5 1"),
            pitches(18, "2.5 2 1.5 1"), pitches(20, "2.5 2 1.5 1"), pitches(22, "2.5 2 1.5 1"), pitches(24, "3 2 1.5 1"));

    /** Proof loads of coarse 8.8 bolts in N as the standard rounds them (ISO 898-1, from memory); a printed torque table follows them exactly. */
    private static final Map<Integer, BigDecimal> PROOF_LOADS_8_8 = Map.of(6, new BigDecimal(11_600), 8, new BigDecimal(21_200),
            10, new BigDecimal(33_700), 12, new BigDecimal(48_900));

    /** Strength class of a bolt with its proof stress in MPa (ISO 898-1; 8.8 read in a copy, the others from memory). */
    public enum StrengthClass {
        C4_6("4.6", 225, 225), C5_6("5.6", 280, 280), C5_8("5.8", 380, 380), C6_8("6.8", 440, 440), C8_8("8.8", 580, 600),
        C10_9("10.9", 830, 830), C12_9("12.9", 970, 970);

        private final String marking;
        private final int toM16;
        private final int aboveM16;

        StrengthClass(String marking, int toM16, int aboveM16) {
            this.marking = marking;
            this.toM16 = toM16;
            this.aboveM16 = aboveM16;
        }

        /**
         * The class as it stands on the head.
         *
         * @throws BadFigureInput for any other text
         */
        public static StrengthClass read(String marking) {
            List<String> known = Arrays.stream(values()).map(c -> c.marking).toList();
            return Arrays.stream(values()).filter(c -> c.marking.equals(marking)).findFirst().orElseThrow(() -> new BadFigureInput("class '"
                    + marking + "' is not known; write what stands on the head, one of " + String.join(", ", known)));
        }
    }

    private static Map.Entry<Integer, List<BigDecimal>> pitches(int diameter, String pitches) {
        return Map.entry(diameter, Arrays.stream(pitches.split(" ")).map(BigDecimal::new).toList());
    }

    /**
     * Torque and preload.
     *
     * @param size thread such as {@code M8}, M4 to M24
     * @param pitch a standard pitch of that size
     * @param strength class of the bolt; a nut or thread must carry it too
     * @param nutFactor 0.10 to 0.30
     * @throws BadFigureInput when the thread is not a standard one or the nut factor is outside its range
     */
    public static BoltTorque of(String size, Quantity pitch, StrengthClass strength, BigDecimal nutFactor) {
        int diameter = diameter(size);
        BigDecimal mm = Amounts.above0("pitch", pitch, Unit.MM);
        List<BigDecimal> known = PITCHES.get(diameter);
        if (known.stream().noneMatch(p -> p.compareTo(mm) == 0)) {
            throw new BadFigureInput("pitch is " + pitch + "; M" + diameter + " is cut with "
                    + String.join(", ", known.stream().map(BigDecimal::toPlainString).toList()) + " mm");
        }
        if (nutFactor.compareTo(SLIPPERIEST) < 0 || nutFactor.compareTo(ROUGHEST) > 0) {
            throw new BadFigureInput("nut-factor is " + nutFactor + "; it lies between " + SLIPPERIEST + " and " + ROUGHEST + ", 0.20 dry, 0.15 oiled");
        }
        BigDecimal preload = proofLoad(diameter, mm, strength).multiply(SHARE_OF_PROOF);
        BigDecimal torque = preload.multiply(nutFactor).multiply(BigDecimal.valueOf(diameter)).divide(THOUSAND, MathContext.DECIMAL64);
        return new BoltTorque(new Quantity(torque, Unit.NEWTON_METRE), new Quantity(preload, Unit.NEWTONS));
    }

    private static int diameter(String size) {
        int diameter = size.matches("[Mm][0-9]{1,2}") ? Integer.parseInt(size.substring(1)) : 0;
        if (!PITCHES.containsKey(diameter)) {
            throw new BadFigureInput("size '" + size + "' is not a thread of the table; write one of "
                    + String.join(", ", PITCHES.keySet().stream().sorted().map(d -> "M" + d).toList()));
        }
        return diameter;
    }

    private static BigDecimal proofLoad(int diameter, BigDecimal pitch, StrengthClass strength) {
        if (strength == StrengthClass.C8_8 && pitch.compareTo(PITCHES.get(diameter).get(0)) == 0 && PROOF_LOADS_8_8.containsKey(diameter)) {
            return PROOF_LOADS_8_8.get(diameter);
        }
        int stress = diameter <= 16 ? strength.toM16 : strength.aboveM16;
        return stressArea(diameter, pitch).multiply(BigDecimal.valueOf(stress)).round(new MathContext(3));
    }

    /** π/4 × (d − 0.9382 × pitch)² in mm² (ISO 898-1, from memory), to three digits as tables print it. */
    static BigDecimal stressArea(int diameter, BigDecimal pitch) {
        double core = diameter - 0.9382 * pitch.doubleValue();
        return new BigDecimal(Math.PI / 4 * core * core, new MathContext(3));
    }
}
