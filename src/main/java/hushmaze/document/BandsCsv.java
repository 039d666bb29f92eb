package hushmaze.document;

import hushmaze.assess.BandResult;
import hushmaze.assess.PathResult;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The bands of a path as comma-separated values: third octaves, then octaves. */
public final class BandsCsv {
    private static final List<String> HEAD = List.of(
            "nominalHz",
            "centreHz",
            "fraction",
            "noiseDb",
            "allowedDb",
            "neededDb",
            "estimateDb",
            "quickDb",
            "waveDb",
            "wallsDb",
            "lowDb",
            "likelyDb",
            "highDb",
            "levelDb");

    private BandsCsv() {}

    /** The whole file. */
    public static String of(PathResult result) {
        return Csv.line(HEAD)
                + Stream.of(result.thirds(), result.octaves())
                        .flatMap(List::stream)
                        .map(BandsCsv::line)
                        .collect(Collectors.joining());
    }

    private static String line(BandResult b) {
        return Csv.line(Stream.concat(
                        Stream.of(
                                Csv.number(b.band().nominalHz()),
                                Csv.number(b.band().centreHz()),
                                Integer.toString(b.band().fraction())),
                        Stream.of(
                                        b.noise(),
                                        b.allowed(),
                                        b.needed(),
                                        b.estimate(),
                                        b.quick(),
                                        b.wave(),
                                        b.walls(),
                                        b.low(),
                                        b.likely(),
                                        b.high(),
                                        b.level())
                                .map(Csv::number))
                .toList());
    }
}
