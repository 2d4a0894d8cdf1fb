package org.nextpull.window.look;

/** A view that can be given other colours and sizes while it is shown. Called on the event thread. */
public interface Styled {
    void style(Skin skin, TypeScale scale);
}
