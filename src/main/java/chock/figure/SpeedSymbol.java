package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Speed a tyre is made for, by the symbol in its service description, slowest first: H stands after U. A1 to A8 are from
 * memory (UN R75); B to Y were read in copies that agree. Old tyres marked V were once sold as "over 210 km/h" (from memory).
 */
public enum SpeedSymbol {
    A1(5), A2(10), A3(15), A4(20), A5(25), A6(30), A7(35), A8(40), B(50), C(60), D(65), E(70), F(80), G(90), J(100), K(110),
    L(120), M(130), N(140), P(150), Q(160), R(170), S(180), T(190), U(200), H(210), V(240), W(270), Y(300);

    private final int kmh;

    SpeedSymbol(int kmh) {
        this.kmh = kmh;
    }

    /** Highest speed, in km/h. */
    public Quantity speed() {
        return new Quantity(BigDecimal.valueOf(kmh), Unit.KMH);
    }

    /**
     * The symbol written so, in small or capital letters.
     *
     * @throws BadFigureInput for any other text; Z alone names no speed
     */
    public static SpeedSymbol read(String text) {
        return find(text).orElseThrow(() -> new BadFigureInput("'" + text + "' is not a speed symbol; "
                + (text.strip().toUpperCase(Locale.ROOT).matches("Z|ZR") ? "Z in the size only says over 240 km/h: write the letter of the service description, such as W of (65W)"
                : "write one of " + String.join(" ", symbols()))));
    }

    /** The symbol written so, or empty. */
    public static Optional<SpeedSymbol> find(String text) {
        String tidy = text.strip().toUpperCase(Locale.ROOT);
        return Arrays.stream(values()).filter(symbol -> symbol.name().equals(tidy)).findFirst();
    }

    private static List<String> symbols() {
        return Arrays.stream(values()).map(Enum::name).toList();
    }
}
