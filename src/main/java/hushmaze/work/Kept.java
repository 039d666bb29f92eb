package hushmaze.work;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Values worked out once and kept, those asked for last; safe for use by several threads, which may work out the same twice.
 *
 * @param <K> what a value follows from, and nothing else
 * @param <V> values
 */
public final class Kept<K, V> {
    private final Map<K, V> values;

    /** @param most values that are kept */
    public Kept(int most) {
        values = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** The value of a key, made if it is not there; what cannot be made is not kept. */
    public V get(K key, Function<? super K, ? extends V> make) {
        synchronized (values) {
            V value = values.get(key);
            if (value != null) {
                return value;
            }
        }
        V made = make.apply(key);
        synchronized (values) {
            values.put(key, made);
        }
        return made;
    }
}
