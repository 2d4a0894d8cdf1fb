package org.nextpull.window.page;

import java.awt.Color;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** An alarm over the whole window: one colour, the act, its reason; calm again once the throttle is closed, with what to do next. */
public final class AlarmPanel extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final StackLayout stack;
    private final Prose act = new Prose("Alarm");
    private final Prose reason = new Prose("Alarm because");
    private final Prose keys = new Prose("Alarm keys");
    private transient Signals.AlarmSign sign = Signals.AlarmSign.none();

    /**
     * The panel.
     *
     * @param putAway called when what is to be done next was read
     */
    public AlarmPanel(Runnable putAway) {
        super(new StackLayout());
        stack = (StackLayout) getLayout();
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Alarm over the page");
        add(act);
        add(reason);
        add(keys, StackLayout.Row.yielding(1));
        KeyCommand.of("ENTER", "Enter", "put the alarm away once the throttle is closed", () -> {
                    if (sign.phase() == Signals.AlarmSign.Phase.AFTERWARDS) {
                        putAway.run();
                    }
                })
                .bind(this);
    }

    /** Shows an alarm. */
    public void show(Signals.AlarmSign newSign) {
        sign = newSign;
        boolean acts = sign.phase() == Signals.AlarmSign.Phase.ACT;
        act.say(acts ? sign.act() : sign.afterwards());
        // a number keeps its unit beside it where lines break
        reason.say(sign.reason().replace(" °", "\u00a0°"));
        keys.say(acts ? "" : "Throttle closed. Enter: back to the page.");
        getAccessibleContext().setAccessibleDescription(act.getText() + " " + reason.getText());
        dress();
    }

    @Override
    protected void dress() {
        boolean acts = sign.phase() == Signals.AlarmSign.Phase.ACT;
        setBackground(acts ? skin.fill(Tone.BAD) : skin.ground());
        Color ink = acts ? skin.onFill() : skin.ink();
        setBorder(scale.margin(acts ? 70 : 50, 50, 30, 50));
        stack.gap(scale.space(28));
        act.dress(ink, scale.bold(acts ? 128 : 56));
        reason.dress(ink, scale.bold(acts ? 44 : 28));
        keys.dress(ink, scale.plain(20));
        revalidate();
        repaint();
    }
}
