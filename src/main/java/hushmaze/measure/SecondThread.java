package hushmaze.measure;

import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Does part of the work on the same samples on a thread of its own, lot after lot in the order they are handed over. There are few lots,
 * which are filled again and again; whoever is faster waits. Closing it ends the thread.
 */
final class SecondThread implements AutoCloseable {
    /** Samples of a lot, at most. */
    static final int LOT = 8 * ThirdOctaveBank.BLOCK;

    private static final int LOTS = 4;

    /** What is done with a lot. */
    interface Work {
        /** @param count of its samples */
        void take(double[] lot, int count);
    }

    private final Lock lock = new ReentrantLock();
    private final Condition changed = lock.newCondition();
    private final double[][] lots = new double[LOTS][LOT];
    private final int[] counts = new int[LOTS];
    private final Work work;
    private final Thread thread;
    private long handed;
    private long done;
    private boolean closed;
    private Throwable failure;

    SecondThread(Work work) {
        this.work = work;
        this.thread = new Thread(this::run, "hushmaze-bands");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * The next lot to fill.
     *
     * @throws IllegalStateException if the work has failed
     */
    double[] free() {
        awaitWaiting(LOTS - 1);
        return lots[(int) (handed % LOTS)];
    }

    /** Hands over the lot that was free, with so many samples. */
    void hand(int count) {
        lock.lock();
        try {
            counts[(int) (handed % LOTS)] = count;
            handed++;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /**
     * Waits until all lots are done.
     *
     * @throws IllegalStateException if the work has failed
     */
    void finish() {
        awaitWaiting(0);
    }

    private void awaitWaiting(int most) {
        lock.lock();
        try {
            while (failure == null && handed - done > most) {
                changed.awaitUninterruptibly();
            }
            if (failure != null) {
                throw new IllegalStateException(failure);
            }
        } finally {
            lock.unlock();
        }
    }

    private void run() {
        try {
            while (awaitLot()) {
                int place = (int) (done % LOTS);
                work.take(lots[place], counts[place]);
                end(null);
            }
        } catch (RuntimeException | Error e) {
            end(e);
        }
    }

    /** Whether there is one. */
    private boolean awaitLot() {
        lock.lock();
        try {
            while (!closed && handed == done) {
                changed.awaitUninterruptibly();
            }
            return !closed;
        } finally {
            lock.unlock();
        }
    }

    private void end(Throwable problem) {
        lock.lock();
        try {
            done++;
            failure = problem;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /** Ends the thread after the lot it is at, and waits for that. */
    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
        boolean interrupted = false;
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
