package chock.board;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * A limit drawn as a bar: hatched is outside, the heavy tick is the limit, the block is the reading with its uncertainty. Drawn in
 * the unit of the limit, true to scale.
 */
final class LimitBar {
    private static final int WIDTH = 340;
    private static final int TOP = 26;
    private static final int HEIGHT = 20;
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final Bounds bounds;
    private final Unit unit;
    private final BigDecimal from;
    private final BigDecimal to;

    LimitBar(Bounds bounds) {
        this.bounds = bounds;
        this.unit = (bounds.low() == null ? bounds.high() : bounds.low()).unit();
        BigDecimal low = bounds.low() == null ? null : bounds.low().value();
        BigDecimal high = bounds.high() == null ? null : bounds.high().to(unit).value();
        BigDecimal end = low == null ? high : low;
        BigDecimal room = low != null && high != null ? high.subtract(low) : end.signum() == 0 ? BigDecimal.TEN : end.abs();
        this.from = low != null ? low.subtract(room.multiply(HALF)) : high.signum() > 0 ? BigDecimal.ZERO : high.subtract(room);
        this.to = high != null ? high.add(room.multiply(HALF)) : low.add(room);
    }

    Unit unit() {
        return unit;
    }

    /**
     * The bar.
     *
     * @param reading what was read, or null
     * @param uncertainty its U, or null
     */
    String svg(Quantity reading, Quantity uncertainty) {
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, "<svg class=\"bar\" viewBox=\"0 0 %d 66\" role=\"img\" aria-label=\"Limit: %s\" data-from=\"%s\" data-to=\"%s\" data-low=\"%s\" data-high=\"%s\">", WIDTH, bounds.words(), plain(from), plain(to),
                bounds.low() == null ? "" : plain(bounds.low().value()), bounds.high() == null ? "" : plain(bounds.high().to(unit).value())));
        svg.append("<rect class=\"track\" x=\"1\" y=\"").append(TOP).append("\" width=\"").append(WIDTH - 2).append("\" height=\"").append(HEIGHT).append("\"/>");
        if (bounds.low() != null) {
            outside(svg, BigDecimal.ZERO, at(bounds.low().value()));
            tick(svg, at(bounds.low().value()), (bounds.lowPasses() ? "at least " : "more than ") + bounds.low().number(), 12);
        }
        if (bounds.high() != null) {
            BigDecimal high = at(bounds.high().to(unit).value());
            outside(svg, high, BigDecimal.valueOf(WIDTH));
            tick(svg, high, (bounds.highPasses() ? "at most " : "less than ") + bounds.high().to(unit).number(), 12);
        }
        svg.append("<rect class=\"band\" y=\"").append(TOP - 3).append("\" height=\"").append(HEIGHT + 6).append('"');
        if (reading == null) {
            svg.append(" x=\"0\" width=\"0\"/>");
        } else {
            BigDecimal half = uncertainty == null ? BigDecimal.ZERO : uncertainty.differenceTo(unit).value();
            BigDecimal left = at(reading.to(unit).value().subtract(half));
            BigDecimal right = at(reading.to(unit).value().add(half));
            BigDecimal wide = right.subtract(left).max(BigDecimal.valueOf(4));
            svg.append(String.format(Locale.ROOT, " x=\"%s\" width=\"%s\"/>", plain(left.min(BigDecimal.valueOf(WIDTH).subtract(wide))), plain(wide)));
        }
        svg.append("<text class=\"end\" x=\"1\" y=\"62\">").append(plain(from)).append("</text><text class=\"end\" x=\"").append(WIDTH - 1).append("\" y=\"62\" text-anchor=\"end\">").append(plain(to)).append(unit == Unit.TIMES ? "" : " " + unit.symbol()).append("</text>");
        return svg.append("</svg>").toString();
    }

    private static void outside(StringBuilder svg, BigDecimal left, BigDecimal right) {
        if (right.compareTo(left) > 0) {
            svg.append(String.format(Locale.ROOT, "<rect class=\"out\" x=\"%s\" y=\"%d\" width=\"%s\" height=\"%d\" fill=\"url(#p-hatch)\"/>", plain(left), TOP, plain(right.subtract(left)), HEIGHT));
        }
    }

    private static void tick(StringBuilder svg, BigDecimal at, String words, int y) {
        String anchor = at.doubleValue() < 60 ? "start" : at.doubleValue() > WIDTH - 60 ? "end" : "middle";
        svg.append(String.format(Locale.ROOT, "<path class=\"line\" d=\"M%s,%d v%d\"/><text class=\"at\" x=\"%s\" y=\"%d\" text-anchor=\"%s\">%s</text>", plain(at), TOP - 5, HEIGHT + 10, plain(at), y, anchor, words));
    }

    /** Where a value lies on the bar, held at its ends. */
    private BigDecimal at(BigDecimal value) {
        BigDecimal along = value.subtract(from).multiply(BigDecimal.valueOf(WIDTH)).divide(to.subtract(from), MathContext.DECIMAL64);
        return along.max(BigDecimal.ZERO).min(BigDecimal.valueOf(WIDTH));
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(new MathContext(5, RoundingMode.HALF_UP)).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }
}
