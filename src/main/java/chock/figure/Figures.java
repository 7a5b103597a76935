package chock.figure;

import java.util.List;
import java.util.stream.Stream;

/** Every figure that can be asked for by name. Amounts are shown rounded half up to six significant digits, ages as in {@link TyreDate#years}. */
public final class Figures {
    private static final List<Figure> ALL = Stream.of(WheelFigures.ALL, EngineFigures.ALL, RoadFigures.ALL, AirFigures.ALL).flatMap(List::stream).toList();

    private Figures() { }

    /** Names of all figures, in the order of a bench: tyres, brakes, drive and engine, the road, the air. */
    public static List<String> names() {
        return ALL.stream().map(Figure::name).toList();
    }

    /**
     * The figure with this name.
     *
     * @throws BadFigureInput when there is none; the message names the nearest
     */
    public static Figure named(String name) {
        return ALL.stream().filter(figure -> figure.name().equals(name)).findFirst().orElseThrow(() -> new BadFigureInput(
                "there is no figure '" + name + "'" + Nearest.advice(name, names()) + "; known are " + String.join(", ", names())));
    }
}
