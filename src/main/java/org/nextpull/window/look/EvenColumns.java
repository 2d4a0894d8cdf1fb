package org.nextpull.window.look;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.List;

/** Parts in as many columns as there is room for, from left to right; each row is as high as its highest part. */
public final class EvenColumns implements LayoutManager {
    private int least = 1;
    private int gap;

    /**
     * Sets the sizes.
     *
     * @param leastWide least width of a column in pixels, above 0
     * @param between space between two columns in pixels
     */
    public void size(int leastWide, int between) {
        least = leastWide;
        gap = between;
    }

    /** Height in pixels of all rows at a width in pixels. */
    int heightAt(Container parent, int width) {
        return arrange(parent, width, false);
    }

    @Override
    public void layoutContainer(Container parent) {
        arrange(parent, parent.getWidth(), true);
    }

    /** Goes through all rows from the top, placing their parts when asked to, and gives the height that they take. */
    private int arrange(Container parent, int width, boolean place) {
        List<Component> parts = List.of(parent.getComponents());
        int columns = Math.max(1, (width + gap) / (least + gap));
        int cell = (width - (columns - 1) * gap) / columns;
        int y = 0;
        for (int first = 0; first < parts.size(); first += columns) {
            List<Component> row = parts.subList(first, Math.min(parts.size(), first + columns));
            int high = row.stream()
                    .mapToInt(part -> StackLayout.heightAt(part, cell))
                    .max()
                    .orElse(0);
            for (int column = 0; place && column < row.size(); column++) {
                row.get(column).setBounds(column * (cell + gap), y, cell, high);
            }
            y += high;
        }
        return y;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return new Dimension(parent.getWidth(), heightAt(parent, parent.getWidth()));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void addLayoutComponent(String name, Component part) {
        // every part is placed
    }

    @Override
    public void removeLayoutComponent(Component part) {
        // nothing is kept of a part
    }
}
