package org.nextpull.window.bench;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import javax.swing.text.Position;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/** The pulls as a strip of cards in the order of the day; the last card is empty and holds what comes next. */
final class PullStrip extends JList<PullStrip.Card> implements Styled {
    private static final long serialVersionUID = 1;

    private final DefaultListModel<Card> model = new DefaultListModel<>();
    private final CardPainter painter = new CardPainter();

    PullStrip() {
        setModel(model);
        setCellRenderer(painter);
        setLayoutOrientation(JList.HORIZONTAL_WRAP);
        setVisibleRowCount(1);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getAccessibleContext().setAccessibleName("Pulls");
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                showSelected();
            }
        });
        for (String taken : List.of("SPACE", "ctrl A", "ctrl X", "ctrl V")) {
            getInputMap(WHEN_FOCUSED).put(javax.swing.KeyStroke.getKeyStroke(taken), "none");
        }
        setTransferHandler(null);
        getActionMap().remove("copy");
    }

    /** Letters are keys of the page here; none picks a card. */
    @Override
    public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
        return -1;
    }

    /** Shows the pulls. Whoever looked at the last one goes on to the new last one. */
    void show(List<BenchPage.PullCard> cards, Optional<String> next) {
        int before = model.getSize();
        int selected = getSelectedIndex();
        boolean atEnd = selected < 0
                || selected >= before - 1
                || model.get(selected + 1).isNext();
        int count = cards.size() + (next.isPresent() ? 1 : 0);
        for (int index = 0; index < count; index++) {
            Card card =
                    index < cards.size() ? Card.of(cards.get(index)) : Card.next(cards.size() + 1, next.orElseThrow());
            if (index >= model.getSize()) {
                model.addElement(card);
            } else if (!model.get(index).equals(card)) {
                model.set(index, card);
            }
        }
        while (model.getSize() > count) {
            model.remove(model.getSize() - 1);
        }
        if (atEnd && !cards.isEmpty()) {
            setSelectedIndex(cards.size() - 1);
        }
    }

    /** Brings the selected pull into sight, and the next one where it lies behind it. */
    private void showSelected() {
        ensureIndexIsVisible(Math.min(getSelectedIndex() + 1, model.getSize() - 1));
        ensureIndexIsVisible(getSelectedIndex());
    }

    /** The card that is selected; empty when it is that of the next pull. */
    Optional<BenchPage.PullCard> selected() {
        return Optional.ofNullable(getSelectedValue()).flatMap(Card::pull);
    }

    /** Selects the pull of that number. */
    void select(int number) {
        OptionalInt index = java.util.stream.IntStream.range(0, model.getSize())
                .filter(at -> model.get(at)
                        .pull()
                        .filter(card -> card.number() == number)
                        .isPresent())
                .findFirst();
        index.ifPresent(at -> {
            setSelectedIndex(at);
            ensureIndexIsVisible(at);
        });
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        painter.style(skin, scale);
        setBackground(skin.ground());
        setFixedCellWidth(scale.type(96));
        setFixedCellHeight(scale.type(104));
        repaint();
    }

    /**
     * What a place of the strip holds.
     *
     * @param number number of the pull
     * @param pull the pull; empty for the next one
     * @param setting setting of the next pull
     */
    record Card(int number, Optional<BenchPage.PullCard> pull, String setting) {
        static Card of(BenchPage.PullCard card) {
            return new Card(card.number(), Optional.of(card), "");
        }

        static Card next(int number, String setting) {
            return new Card(number, Optional.empty(), setting);
        }

        boolean isNext() {
            return pull.isEmpty();
        }

        /** Read aloud for whoever does not see the strip. */
        @Override
        public String toString() {
            return pull.map(BenchPage.PullCard::spoken).orElse("Next pull: " + setting);
        }
    }
}
