package hushmaze.app.verdict;

import java.util.function.Function;
import javafx.util.StringConverter;

/** Shows what is chosen, and never typed, by its name. */
public final class Named {
    private Named() {}

    /** Names by a function; nothing has no name. */
    public static <T> StringConverter<T> by(Function<? super T, String> name) {
        return new StringConverter<>() {
            @Override
            public String toString(T one) {
                return one == null ? "" : name.apply(one);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("what is chosen is not typed");
            }
        };
    }
}
