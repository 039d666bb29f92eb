package hushmaze.sound.quick;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Values computed once and kept, those asked for last; safe for use by several threads, which may compute the same twice. */
final class Kept<K, V> {
    private final Map<K, V> values;
    private final Function<K, V> make;

    Kept(int most, Function<K, V> make) {
        this.make = make;
        values = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    V get(K key) {
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
