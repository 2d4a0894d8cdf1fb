package org.nextpull.chart;

/**
 * Size of a picture.
 *
 * @param width width of its place on paper or screen, in CSS pixels
 * @param height height of its place
 * @param scale pixels of the picture for each of these; 2 is sharp on paper
 */
public record ChartSize(int width, int height, int scale) {
    public ChartSize {
        if (width < 100 || height < 100 || scale < 1 || scale > 8) {
            throw new IllegalArgumentException("no size for a chart: " + width + " x " + height + " x " + scale);
        }
    }

    /** Half a page of A4 or Letter, at twice the pixels. */
    public static ChartSize paper() {
        return new ChartSize(760, 440, 2);
    }

    int pixelsWide() {
        return width * scale;
    }

    int pixelsHigh() {
        return height * scale;
    }
}
