package org.linedrop.study;

/**
 * How far a long study is, and whether to go on. It is asked and told by the thread that called the study only.
 */
public interface Progress {
    /** Nobody looks; ends when the calling thread is interrupted. */
    Progress NONE = (done, all) -> {};

    /**
     * Tells how far it is.
     *
     * @param done how many are done
     * @param all  how many there are
     */
    void at(long done, long all);

    /**
     * Whether to stop. What was done so far is given up.
     *
     * @return true when the calling thread was interrupted, unless it is said otherwise
     */
    default boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }
}
