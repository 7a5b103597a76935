package chock.report;

import chock.assess.Assessment;
import chock.assess.GateVerdict;
import chock.assess.RunCourse;
import chock.assess.facts.RunLevel.Name;
import chock.figure.RunForecast.Point;
import chock.quantity.Quantity;
import chock.record.Gate;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedRangeXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The course of the air at a run as a picture for paper: black, white and grey, every line told by its stroke and its
 * name. The run stands on the left in minutes, the airing on the right in hours.
 */
public final class RunChart {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 620;
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 14);
    private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 14);
    private static final Stroke COURSE = new BasicStroke(3f);
    private static final Stroke MEAN = dashed(2.2f, 9f, 6f);
    private static final Stroke LIMIT = new BasicStroke(1.2f);
    private static final Stroke LOW = dashed(1.2f, 2f, 4f);
    private static final Color SEE_THROUGH = new Color(0xFF, 0xFF, 0xFF, 0xB0);
    private static final Color RUNNING = new Color(0xD0D0D0);
    /** In ppm. Far above every limit; higher up the limits would lie on top of each other at the foot. */
    private static final double OFF_THE_SCALE = 900;
    private static final double ROOM_ABOVE = 1.12;
    private static final double MINUTES_IN_HOUR = 60;

    private RunChart() { }

    private static Stroke dashed(float width, float on, float off) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {on, off}, 0f);
    }

    /**
     * The picture as an SVG document.
     *
     * @param course what the air does
     * @param about which record and machine, for the line under the title
     */
    public static String svg(RunCourse course, String about) {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Carbon monoxide at a planned run");
        SVGGraphics2D canvas = new SVGGraphics2D(context, false);
        canvas.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
        chart(course, Page.clean(about)).draw(canvas, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        Element root = canvas.getRoot();
        root.setAttribute("viewBox", "0 0 " + WIDTH + " " + HEIGHT);
        Element title = document.createElementNS(SVG, "title");
        title.setTextContent(title(course) + ". " + Page.clean(about));
        root.insertBefore(title, root.getFirstChild());
        return text(root);
    }

    // Not by the library's own writer, which names a document type that some viewers fetch from the network.
    private static String text(Element root) {
        StringWriter text = new StringWriter();
        try {
            TransformerFactory.newInstance().newTransformer().transform(new DOMSource(root), new StreamResult(text));
        } catch (TransformerException e) {
            throw new IllegalStateException("a tree in memory can always be written", e);
        }
        return text + "\n";
    }

    /** The line under the title: which record, which machine, which verdict, as of when. */
    public static String about(Assessment assessment) {
        String verdict = assessment.gates().stream().filter(gate -> gate.gate() == Gate.INDOOR_RUN).map(GateVerdict::verdict).findFirst().orElse("not judged");
        return assessment.record().id() + ", " + assessment.record().machine().marque() + " " + assessment.record().machine().model() + ": " + Gate.INDOOR_RUN + " " + verdict
                + " as of " + Wording.moment(assessment.asOf(), assessment.record().zone());
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("a document without any feature can always be made", e);
        }
    }

    private static String title(RunCourse course) {
        return course.onlyIfTheHoseSlips() ? "Carbon monoxide in the room IF THE HOSE SLIPS at the start" : "Carbon monoxide in the room, as predicted at its worst";
    }

    private static JFreeChart chart(RunCourse course, String about) {
        NumberAxis ppm = new NumberAxis("carbon monoxide, ppm");
        double highest = highest(course);
        double shown = Math.min(highest, OFF_THE_SCALE);
        ppm.setRange(0, shown * ROOM_ABOVE);
        style(ppm);
        CombinedRangeXYPlot both = new CombinedRangeXYPlot(ppm);
        both.setGap(28);
        both.add(near(course), 3);
        if (!course.airing().isEmpty()) {
            both.add(far(course), 2);
        }
        JFreeChart chart = new JFreeChart(title(course), new Font(Font.SANS_SERIF, Font.BOLD, 19), both, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.getTitle().setFont(new Font(Font.SANS_SERIF, Font.BOLD, 19));
        // Set to the left: a viewer's letters are as wide as its own font makes them, and a centre worked out here would be off there.
        chart.getTitle().setHorizontalAlignment(HorizontalAlignment.LEFT);
        chart.addSubtitle(line(about, RectangleEdge.TOP));
        String off = highest > shown ? " The lines go off the scale, up to " + Math.round(highest) + " ppm." : "";
        chart.addSubtitle(line("An aid, never a permission: the meter decides." + off, RectangleEdge.BOTTOM));
        chart.addSubtitle(line("Thick line: highest reading to be expected. Dashed line: mean of the 15 min before. Grey: engine running.", RectangleEdge.BOTTOM));
        chart.setPadding(new RectangleInsets(8, 8, 4, 16));
        style(ppm);
        both.getSubplots().forEach(plot -> dress((XYPlot) plot));
        return chart;
    }

    private static TextTitle line(String words, RectangleEdge edge) {
        TextTitle line = new TextTitle(words, TEXT);
        line.setPosition(edge);
        line.setHorizontalAlignment(HorizontalAlignment.LEFT);
        line.setMargin(2, 0, 2, 0);
        return line;
    }

    private static double highest(RunCourse course) {
        Stream<Double> curves = Stream.concat(course.near().stream(), course.airing().stream()).map(point -> Math.max(point.ppm(), point.quarterHour()));
        return Stream.concat(curves, course.levels().values().stream().map(level -> level.value().doubleValue())).max(Double::compare).orElseThrow();
    }

    private static XYPlot near(RunCourse course) {
        XYPlot plot = plot(course.near(), true, 1, 0, "minutes from the start: the run");
        for (RunCourse.Span run : course.runs()) {
            IntervalMarker band = new IntervalMarker(run.from(), run.to(), RUNNING);
            band.setAlpha(1f);
            plot.addDomainMarker(band, Layer.BACKGROUND);
        }
        labels(course.levels()).forEach((level, label) -> plot.addRangeMarker(level(level, label), Layer.FOREGROUND));
        return plot;
    }

    private static XYPlot far(RunCourse course) {
        double end = course.airing().get(0).minutes();
        XYPlot plot = plot(course.airing(), false, MINUTES_IN_HOUR, end, "hours from its end: airing, doors shut, nobody inside");
        labels(course.levels()).forEach((level, label) -> plot.addRangeMarker(level(level, ""), Layer.FOREGROUND));
        Quantity start = course.levels().get(Name.START);
        course.airing().stream().filter(point -> start != null && point.ppm() <= start.value().doubleValue()).findFirst().ifPresent(back -> {
            ValueMarker clean = new ValueMarker((back.minutes() - end) / MINUTES_IN_HOUR, Color.BLACK, LOW);
            clean.setLabel("come back, if the meter agrees");
            clean.setLabelFont(TEXT);
            clean.setLabelBackgroundColor(SEE_THROUGH);
            clean.setLabelAnchor(RectangleAnchor.TOP_LEFT);
            clean.setLabelTextAnchor(TextAnchor.TOP_RIGHT);
            plot.addDomainMarker(clean, Layer.FOREGROUND);
        });
        return plot;
    }

    /** Limits that share a number share a line. */
    private static Map<Double, String> labels(Map<Name, Quantity> levels) {
        Map<Double, String> labels = new TreeMap<>();
        levels.forEach((name, level) -> labels.merge(level.value().doubleValue(), words(name) + " " + level, (one, other) -> words(name) + ", " + one));
        return labels;
    }

    private static String words(Name name) {
        return switch (name) {
            case CEILING -> "ceiling";
            case QUARTER_HOUR -> "most for the dashed line";
            case STOP -> "STOP AND LEAVE";
            case START -> "start, and come back, at";
            default -> throw new IllegalArgumentException(name + " is not drawn");
        };
    }

    private static ValueMarker level(double at, String label) {
        ValueMarker marker = new ValueMarker(at, Color.BLACK, LIMIT);
        marker.setLabel(label);
        marker.setLabelFont(BOLD);
        marker.setLabelBackgroundColor(SEE_THROUGH);
        marker.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
        marker.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
        return marker;
    }

    private static XYPlot plot(List<Point> points, boolean withMean, double unit, double from, String axis) {
        XYSeries course = new XYSeries("reading");
        XYSeries mean = new XYSeries("mean");
        for (Point point : points) {
            course.add((point.minutes() - from) / unit, point.ppm());
            if (withMean) {
                mean.add((point.minutes() - from) / unit, point.quarterHour());
            }
        }
        XYSeriesCollection both = new XYSeriesCollection(course);
        both.addSeries(mean);
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        lines.setSeriesStroke(0, COURSE);
        lines.setSeriesStroke(1, MEAN);
        lines.setSeriesPaint(0, Color.BLACK);
        lines.setSeriesPaint(1, Color.BLACK);
        lines.setDrawSeriesLineAsPath(true);
        NumberAxis time = new NumberAxis(axis);
        time.setAutoRangeIncludesZero(false);
        time.setLowerMargin(0);
        time.setUpperMargin(0);
        style(time);
        return new XYPlot(both, time, null, lines);
    }

    private static void dress(XYPlot plot) {
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setOutlinePaint(Color.BLACK);
        style((NumberAxis) plot.getDomainAxis());
        plot.getRenderer().setSeriesPaint(0, Color.BLACK);
        plot.getRenderer().setSeriesPaint(1, Color.BLACK);
    }

    private static void style(NumberAxis axis) {
        axis.setLabelFont(TEXT);
        axis.setTickLabelFont(TEXT);
        axis.setLabelPaint(Color.BLACK);
        axis.setTickLabelPaint(Color.BLACK);
        axis.setAxisLinePaint(Color.BLACK);
        axis.setTickMarkPaint(Color.BLACK);
    }
}
