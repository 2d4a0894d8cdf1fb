package org.nextpull.chart;

/**
 * Size of a picture.
 *
 * @param width width of its place on paper or screen, in CSS pixels
 * @param height height of its place
 * @param scale pixels of the picture for each of these, from 0.5 to 8; 2 is sharp on paper
 */
public record ChartSize(int width, int height, double scale) {
    /**
     * Accepts sides from 100 and a scale from 0.5 to 8.
     *
     * @throws IllegalArgumentException when one of them is outside its range
     */
    public ChartSize {
        if (width < 100 || height < 100 || !(scale >= 0.5 && scale <= 8)) {
            throw new IllegalArgumentException("no size for a chart: " + width + " x " + height + " x " + scale);
        }
    }

    /** Half a page of A4 or Letter, at twice the pixels. */
    public static ChartSize paper() {
        return new ChartSize(760, 440, 2);
    }

    /** Width of the picture. */
    public int pixelsWide() {
        return (int) Math.round(width * scale);
    }

    /** Height of the picture. */
    public int pixelsHigh() {
        return (int) Math.round(height * scale);
    }
}
