package org.nextpull.pull;

/** Has work done while other work goes on. */
@FunctionalInterface
public interface Aside {
    /**
     * Starts a piece of work.
     *
     * @return waits until it is done, and sees what it did; fails where it failed
     */
    Runnable start(Runnable work);
}
