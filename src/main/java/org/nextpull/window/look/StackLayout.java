package org.nextpull.window.look;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager2;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Parts below one another, each as wide as the place. Where there is too little height, parts that yield are left out, those of the
 * highest number first; what is over goes to the parts that stretch. Parts whose height follows from their width, as of sentences, are as high as they must be.
 */
public final class StackLayout implements LayoutManager2 {
    /**
     * How high a part is.
     *
     * @param least least height in pixels of a part that stretches
     * @param share what it takes of the height that is over; 0 for a part that keeps its natural height
     * @param yields 0 for a part that always stays, less for one that never is seen
     */
    public record Row(int least, double share, int yields) {
        public static final Row NATURAL = new Row(0, 0, 0);

        public static Row stretching(int least) {
            return new Row(least, 1, 0);
        }

        /** Of no height: there, but not seen. */
        public static Row hidden() {
            return new Row(0, 0, -1);
        }

        /** Of natural height, and left out where there is too little. */
        public static Row yielding(int order) {
            return new Row(0, 0, order);
        }
    }

    /** A part whose height follows from its width. */
    public interface Wide {
        /** Height in pixels at a width in pixels. */
        int heightAt(int width);
    }

    private final Map<Component, Row> rows = new HashMap<>();
    private int gap;

    /** Sets the space between parts, in pixels. */
    public void gap(int pixels) {
        gap = pixels;
    }

    /** Sets how high a part is. */
    public void row(Component part, Row row) {
        rows.put(part, row);
    }

    @Override
    public void addLayoutComponent(Component part, Object row) {
        rows.put(part, row instanceof Row given ? given : Row.NATURAL);
    }

    @Override
    public void addLayoutComponent(String name, Component part) {
        rows.put(part, Row.NATURAL);
    }

    @Override
    public void removeLayoutComponent(Component part) {
        rows.remove(part);
    }

    private Row row(Component part) {
        return rows.getOrDefault(part, Row.NATURAL);
    }

    private int natural(Component part, int width) {
        Row row = row(part);
        if (row.yields() < 0) {
            return 0;
        }
        if (row.share() > 0) {
            return row.least();
        }
        return heightAt(part, width);
    }

    /** The height of a part in pixels at a width in pixels. */
    static int heightAt(Component part, int width) {
        if (part instanceof Wide wide) {
            return wide.heightAt(width);
        }
        if (part instanceof Container inner && inner.getLayout() instanceof StackLayout stack) {
            return stack.heightAt(inner, width);
        }
        return part instanceof Container inner && inner.getLayout() instanceof EvenColumns columns
                ? columns.heightAt(inner, width)
                : part.getPreferredSize().height;
    }

    /** The height of the parts that stand at that width; parts of no height take no gap either. */
    private int height(Map<Component, Integer> heights) {
        int sum = 0;
        for (int high : heights.values()) {
            sum += high > 0 ? high + gap : 0;
        }
        return Math.max(0, sum - gap);
    }

    private static List<Component> shown(Container parent) {
        return Stream.of(parent.getComponents()).filter(Component::isVisible).toList();
    }

    private Map<Component, Integer> natural(Container parent, int width) {
        Map<Component, Integer> heights = new LinkedHashMap<>();
        shown(parent).forEach(part -> heights.put(part, natural(part, width)));
        return heights;
    }

    @Override
    public void layoutContainer(Container parent) {
        Insets insets = parent.getInsets();
        int width = Math.max(1, parent.getWidth() - insets.left - insets.right);
        int room = parent.getHeight() - insets.top - insets.bottom;
        Map<Component, Integer> heights = natural(parent, width);
        List<Component> yielding = new ArrayList<>(
                heights.keySet().stream().filter(part -> row(part).yields() > 0).toList());
        yielding.sort((one, other) -> row(other).yields() - row(one).yields());
        for (Component part : yielding) {
            if (height(heights) > room) {
                heights.put(part, 0);
            }
        }
        int over = Math.max(0, room - height(heights));
        double shares =
                heights.keySet().stream().mapToDouble(part -> row(part).share()).sum();
        int y = insets.top;
        for (Map.Entry<Component, Integer> part : heights.entrySet()) {
            double share = row(part.getKey()).share();
            int high = part.getValue() + (shares > 0 ? (int) (over * share / shares) : 0);
            part.getKey().setBounds(insets.left, y, width, high);
            y += high > 0 ? high + gap : 0;
        }
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        Container above = parent.getParent();
        int wide = above != null && above.getWidth() > 0 ? above.getWidth() : parent.getWidth();
        return new Dimension(wide, heightAt(parent, wide > 0 ? wide : 300));
    }

    private int heightAt(Container parent, int wide) {
        Insets insets = parent.getInsets();
        int width = Math.max(1, wide - insets.left - insets.right);
        return height(natural(parent, width)) + insets.top + insets.bottom;
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        Insets insets = parent.getInsets();
        int width = Math.max(1, parent.getWidth() - insets.left - insets.right);
        Map<Component, Integer> heights = natural(parent, width);
        heights.keySet().removeIf(part -> row(part).yields() > 0);
        return new Dimension(10, height(heights) + insets.top + insets.bottom);
    }

    @Override
    public Dimension maximumLayoutSize(Container target) {
        return new Dimension(Integer.MAX_VALUE, Integer.MAX_VALUE);
    }

    @Override
    public float getLayoutAlignmentX(Container target) {
        return 0;
    }

    @Override
    public float getLayoutAlignmentY(Container target) {
        return 0;
    }

    @Override
    public void invalidateLayout(Container target) {
        // nothing is kept between two layouts
    }
}
