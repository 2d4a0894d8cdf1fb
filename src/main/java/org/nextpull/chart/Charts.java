package org.nextpull.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.ChartEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;

/** Draws plots: as PNG for paper and files, or onto a surface for a window. */
public final class Charts {
    private final ChartSize size;
    private static final int NOTE_HEIGHT = 22;

    private final ChartLook look;
    private final String note;

    public Charts(ChartSize size, ChartLook look) {
        this(size, look, "");
    }

    /**
     * Charts that go away from their text.
     *
     * @param note a line below each PNG that says of what it is; empty for none
     */
    public Charts(ChartSize size, ChartLook look, String note) {
        this.size = size;
        this.look = look;
        this.note = note;
    }

    /** The chart of a plot, as PNG. */
    public byte[] draw(Plot plot) {
        return png(plot.frame(size, look));
    }

    /** The chart of a plot, drawn from the corner of a surface at the size of these charts. */
    public Reading paint(Plot plot, Graphics2D surface) {
        XYChart chart = plot.frame(size, look).chart();
        chart.paint(surface, size.pixelsWide(), size.pixelsHigh());
        return Reading.of(chart);
    }

    private byte[] png(ChartFrame frame) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            if (note.isEmpty()) {
                ChartEncoder.saveChart(frame.chart(), bytes, "png");
            } else {
                ImageIO.write(withNote(BitmapEncoder.getBufferedImage(frame.chart())), "png", bytes);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture in memory can always be written", impossible);
        }
        return bytes.toByteArray();
    }

    private BufferedImage withNote(BufferedImage chart) {
        int below = (int) Math.round(NOTE_HEIGHT * size.scale());
        BufferedImage picture =
                new BufferedImage(chart.getWidth(), chart.getHeight() + below, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = picture.createGraphics();
        surface.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        surface.setColor(look.ground());
        surface.fillRect(0, 0, picture.getWidth(), picture.getHeight());
        surface.drawImage(chart, 0, 0, null);
        surface.setColor(look.ink());
        surface.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, (int) Math.round(11 * size.scale())));
        surface.drawString(note, (int) Math.round(10 * size.scale()), chart.getHeight() + below / 2);
        surface.dispose();
        return picture;
    }

    /** What a drawn chart shows at a place of its picture, so that the value below the pointer can be said. */
    public static final class Reading {
        /** A point further from the pointer than this many pixels is not meant. */
        private static final double NEAR = 24;

        private record Spot(double x, double y, String words) {}

        private final List<Spot> spots;

        private Reading(List<Spot> spots) {
            this.spots = List.copyOf(spots);
        }

        /** Reads a chart that has just been painted. */
        static Reading of(XYChart chart) {
            List<Spot> spots = new ArrayList<>();
            for (XYSeries series : chart.getSeriesCollection()) {
                boolean isArea = series.getXYSeriesRenderStyle()
                        .filter(style -> style == XYSeries.XYSeriesRenderStyle.PolygonArea)
                        .isPresent();
                double[] xs = series.getXData();
                double[] ys = series.getYData();
                for (int index = 0; index < xs.length && !isArea; index++) {
                    if (Double.isFinite(ys[index])) {
                        spots.add(new Spot(
                                chart.getScreenXFromChart(xs[index]),
                                chart.getScreenYFromChart(ys[index], series.getYAxisGroup()),
                                series.getName().strip() + ": " + number(xs[index]) + ", " + number(ys[index])));
                    }
                }
            }
            return new Reading(spots);
        }

        private static String number(double value) {
            int places = Math.abs(value) >= 1000 ? 0 : Math.abs(value) >= 10 ? 1 : 3;
            return String.format(Locale.ROOT, "%." + places + "f", value);
        }

        /**
         * The point nearest to a place.
         *
         * @param x pixels from the left edge of the picture
         * @param y pixels from its upper edge
         * @return name and both values, as {@code pulls: 26.0, 181.1}; empty where no point is near
         */
        public Optional<String> at(double x, double y) {
            Optional<String> found = Optional.empty();
            double nearest = NEAR;
            for (Spot spot : spots) {
                double away = Math.hypot(spot.x() - x, spot.y() - y);
                if (away < nearest) {
                    nearest = away;
                    found = Optional.of(spot.words());
                }
            }
            return found;
        }
    }
}
