package hushmaze.sound.quick;

/** The ports, turns and sections of one path, looked up once. */
final class ChainParts {
    final int passes;
    final double[] lengths;
    final PortTable inlet;
    final PortTable outlet;
    final TurnTable[] turns;
    final SectionModes[] sections;
    /** For each pass the first one of the same section and length. */
    final int[] alike;
    /** Most modes that are carried at any frequency. */
    final int most;

    ChainParts(PathPlan plan, QuickTables tables) {
        passes = plan.sections().size();
        lengths = plan.lengths();
        inlet = tables.port(plan.inlet());
        outlet = tables.port(plan.outlet());
        turns = new TurnTable[passes - 1];
        sections = new SectionModes[passes];
        for (int i = 0; i < passes; i++) {
            boolean known =
                    i > 0 && plan.sections().get(i).equals(plan.sections().get(i - 1));
            sections[i] =
                    known ? sections[i - 1] : tables.section(plan.sections().get(i), plan.fluids());
        }
        for (int i = 0; i < turns.length; i++) {
            boolean same = i > 0 && plan.turns().get(i).equals(plan.turns().get(i - 1));
            turns[i] = same ? turns[i - 1] : tables.turn(plan.turns().get(i));
        }
        alike = new int[passes];
        for (int i = 0; i < passes; i++) {
            while (sections[alike[i]] != sections[i] || lengths[alike[i]] != lengths[i]) {
                alike[i]++;
            }
        }
        // all passes are equally wide
        most = sections[0].carried(tables.grid().size() - 1);
    }

    /** Columns of the tables of ports, and half those of the tables of turns, at a frequency. */
    int width(int f) {
        return sections[0].carried(f);
    }
}
