package hushmaze.quantity;

/** What kind of thing a number measures. */
public enum Dimension {
    LENGTH("a length"),
    AREA("an area"),
    VOLUME("a volume"),
    FLOW("an airflow"),
    VELOCITY("a velocity"),
    PRESSURE("a pressure"),
    MASS("a mass"),
    FORCE("a force"),
    DENSITY("a density"),
    FLOW_RESISTIVITY("a flow resistivity"),
    MASS_PER_AREA("a mass per area"),
    FLOW_RESISTANCE("a flow resistance"),
    POWER("a power"),
    CONDUCTANCE("a conductance of heat"),
    TEMPERATURE("a temperature"),
    LEVEL("a level"),
    FREQUENCY("a frequency"),
    FRACTION("a fraction"),
    CONCENTRATION("a concentration");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** "a length", "an airflow": for messages. */
    public String words() {
        return words;
    }
}
