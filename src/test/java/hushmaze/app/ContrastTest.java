package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation of the colours of writing in both themes. The contrast ratio and the 4.5 it has to reach are those of the Web
 * Content Accessibility Guidelines 2.1, success criterion 1.4.3 and the definition of relative luminance (from memory).
 */
class ContrastTest {
    private static final Pattern COLOUR = Pattern.compile("(-[a-z0-9-]+): (#[0-9a-f]{6});");
    private static final double LEAST = 4.5;

    private static final List<String> WRITING = List.of("-hm-ink", "-hm-quiet", "-hm-good", "-hm-bad", "-hm-look");
    private static final List<String> GROUNDS = List.of("-hm-page", "-hm-card", "-hm-told-pale");

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void writingStandsOutFromItsGround(String theme) throws IOException {
        Map<String, String> colours = colours(theme);
        for (String ground : GROUNDS) {
            for (String ink : WRITING) {
                check(theme, colours, ink, ground);
            }
        }
        check(theme, colours, "-hm-bad", "-hm-bad-pale");
        check(theme, colours, "-hm-look", "-hm-look-pale");
        check(theme, colours, "-hm-ink", "-hm-bad-pale");
        check(theme, colours, "-color-fg-default", "-color-bg-default");
        check(theme, colours, "-color-fg-muted", "-color-bg-subtle");
        // white on filled buttons, with the focus and without
        for (String fill : List.of("-color-accent-emphasis", "-color-accent-6")) {
            assertThat(ratio("#ffffff", colours.get(fill)))
                    .as(theme + ": " + fill)
                    .isGreaterThanOrEqualTo(LEAST);
        }
    }

    private static void check(String theme, Map<String, String> colours, String ink, String ground) {
        assertThat(ratio(colours.get(ink), colours.get(ground)))
                .as(theme + ": " + ink + " on " + ground)
                .isGreaterThanOrEqualTo(LEAST);
    }

    private static Map<String, String> colours(String theme) throws IOException {
        try (InputStream in = ContrastTest.class.getResourceAsStream("/hushmaze/app/" + theme + ".css")) {
            Map<String, String> colours = new HashMap<>();
            Matcher matcher = COLOUR.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            while (matcher.find()) {
                colours.put(matcher.group(1), matcher.group(2));
            }
            return colours;
        }
    }

    private static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int value) {
        double c = value / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
